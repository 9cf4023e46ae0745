//! One entry: name, mark, field, unit, range, and what is wrong with it.

use crate::entries::Field;
use crate::format::{NO_BREAK, Units, parse_number, shown_as, typed, whole};
use crate::state::{State, WorthTold};
use crate::words::words;
use leptos::prelude::*;
use solver::limits::{self, Entry, Quantity};

/// The field of one entry; nothing where the truck does not have it.
pub(super) fn entry(state: State, field: Field) -> AnyView {
    let has = Memo::new(move |_| state.entered.entries.with(|entries| entries.has(field)));
    (move || has.get().then(|| field_view(state, field, Around::nothing()))).into_any()
}

/// The field of the gross mass between two buttons that make it lighter or heavier, with what stands beside.
pub(super) fn gross_mass(state: State, beside: AnyView) -> AnyView {
    let [before, after] = [false, true].map(|up| step(state, up));
    field_view(state, Field::Number(Entry::GrossMass), Around { before, after, beside })
}

/// What stands around a field: in its box, and behind the box.
struct Around {
    before: AnyView,
    after: AnyView,
    beside: AnyView,
}

impl Around {
    fn nothing() -> Self {
        let [before, after, beside] = [(); 3].map(IntoAny::into_any);
        Self { before, after, beside }
    }
}

/// One of those buttons: to the next whole step.
fn step(state: State, up: bool) -> AnyView {
    let w = words();
    let shown = move || shown_as(Quantity::Mass, state.units.get());
    let label = move || {
        let by = format!("{}{NO_BREAK}{}", whole(step_of(state.units.get())), shown().unit);
        if up { w.heavier_by(&by) } else { w.lighter_by(&by) }
    };
    let take = move |_| {
        let (shown, step) = untrack(|| (shown(), step_of(state.units.get())));
        let now = state.entered.entries.with_untracked(|entries| entries.get(Entry::GrossMass));
        let next = now.and_then(|now| next_step(parse_number(&shown.text(now))?, step, up));
        let in_range = |next: &f64| limits::of(Entry::GrossMass).check(shown.stored(*next)).is_ok();
        if let Some(next) = next.filter(in_range) {
            state.type_in(Field::Number(Entry::GrossMass), typed(next));
        }
    };
    let (testid, sign) = if up { ("heavier-step", "+") } else { ("lighter-step", "−") };
    view! {
        <button type="button" class="step" data-testid=testid aria-label=label title=label on:click=take>
            <span aria-hidden="true">{sign}</span>
        </button>
    }
    .into_any()
}

/// t or lb.
fn step_of(units: Units) -> f64 {
    match units {
        Units::Metric => 1.0,
        Units::Imperial => 2_000.0,
    }
}

/// The next whole step above or below; `None` at 0.
fn next_step(now: f64, step: f64, up: bool) -> Option<f64> {
    /// A number that was entered in other units may lie a hair beside a step.
    const HAIR: f64 = 1e-3;
    let steps = now / step;
    let next = if up { (steps + HAIR).floor() + 1.0 } else { (steps - HAIR).ceil() - 1.0 };
    (next > 0.0).then_some(next * step)
}

fn field_view(state: State, field: Field, around: Around) -> AnyView {
    let Around { before, after, beside } = around;
    let w = words();
    let at = state.field(field);
    let id = format!("entry-{}", field.key());
    let (about, wrong) = (format!("{id}-about"), format!("{id}-wrong"));
    let described = format!("{about} {wrong}");
    let assumed = Memo::new(move |_| state.entered.entries.with(|entries| entries.is_assumed(field)));
    let is_wrong = Memo::new(move |_| at.problem.get().is_some());
    let problem = move || {
        let text = at.text.get();
        at.problem.get().map(|problem| w.problem(problem, &text, state.units.get()))
    };
    let is_list = !matches!(field, Field::Number(_));
    view! {
        <div class="entry" class:wrong=move || is_wrong.get() class:list=is_list>
            <label for=id.clone()>
                {move || label_in(field, state.units.get())}
                {move || assumed.get().then(|| view! {
                    <span class="assumed" title=w.assumed_sentence()>{w.assumed()}</span>
                })}
            </label>
            <span class="box">
                {before}
                {input(state, field, id, described)}
                <span class="unit">{move || unit(field, state)}</span>
                {after}
            </span>
            {beside}
            <p class="about" id=about>{move || about_text(field, state)}</p>
            <p class="problem" id=wrong role="status">{problem}</p>
            {follows(state, field)}
            {worth(state, field)}
        </div>
    }
    .into_any()
}

/// The axle ratio that follows from an engine speed.
fn follows(state: State, field: Field) -> Option<AnyView> {
    (field == Field::Number(Entry::TopGearSpeed)).then(|| {
        let text = move || {
            let ratio = state
                .entered
                .entries
                .with(|entries| entries.text(Field::Number(Entry::AxleRatio), Units::Metric));
            words().is_axle_ratio(&ratio)
        };
        view! { <p class="worth" data-testid="told-axle-ratio">{text}</p> }.into_any()
    })
}

/// What a wrong value costs on the road shown; nothing for an entry of the day.
fn worth(state: State, field: Field) -> Option<AnyView> {
    let Field::Number(entry) = field else { return None };
    limits::off(entry)?;
    let w = words();
    let text = move || match state.worth_of(entry) {
        WorthTold::NoPlan => w.worth_waits().to_owned(),
        WorthTold::NoDescent => w.worth_no_descent().to_owned(),
        WorthTold::AtWork => w.worth_at_work().to_owned(),
        WorthTold::Told(it) => w.worth(&it, state.units.get()),
        WorthTold::Cannot => w.worth_not().to_owned(),
    };
    let testid = format!("worth-{}", field.key());
    Some(view! { <p class="worth" data-testid=testid>{text}</p> }.into_any())
}

/// Lists stand in a box of two lines, so that all gears are seen.
fn input(state: State, field: Field, id: String, described: String) -> AnyView {
    let at = state.field(field);
    let invalid = move || if at.problem.get().is_some() { "true" } else { "false" };
    let typed = move |text| state.type_in(field, text);
    match field {
        Field::Number(_) => view! {
            <input
                id=id.clone()
                data-testid=id
                type="text"
                inputmode="decimal"
                autocomplete="off"
                aria-describedby=described
                aria-invalid=invalid
                prop:value=move || at.text.get()
                on:input=move |event| typed(event_target_value(&event))
            />
        }
        .into_any(),
        Field::Gears | Field::Stages | Field::Table => view! {
            <textarea
                id=id.clone()
                data-testid=id
                rows=match field {
                    Field::Gears => "2",
                    Field::Table => "6",
                    Field::Stages | Field::Number(_) => "1",
                }
                autocomplete="off"
                spellcheck="false"
                aria-describedby=described
                aria-invalid=invalid
                prop:value=move || at.text.get()
                on:input=move |event| typed(event_target_value(&event))
            ></textarea>
        }
        .into_any(),
    }
}

/// What a field is called.
pub(super) fn label_in(field: Field, units: Units) -> &'static str {
    let w = words();
    match field {
        Field::Number(entry) => w.entry_in(entry, units),
        Field::Gears => w.gears(),
        Field::Stages => w.stages(),
        Field::Table => w.retarder_table(),
    }
}

fn unit(field: Field, state: State) -> &'static str {
    match field {
        Field::Number(entry) => shown_as(limits::of(entry).quantity, state.units.get()).unit,
        Field::Gears | Field::Table => "",
        Field::Stages => "%",
    }
}

fn about_text(field: Field, state: State) -> String {
    let w = words();
    match field {
        Field::Number(entry) => {
            let limit = limits::of(entry);
            let shown = shown_as(limit.quantity, state.units.get());
            let (low, high) = shown.range(limit);
            let range = w.range(&low, &high, shown.unit);
            format!("{range}. {}", w.hint(entry))
        }
        Field::Gears => w.gears_hint().to_owned(),
        Field::Stages => w.stages_hint().to_owned(),
        Field::Table => w
            .retarder_table_hint(state.entered.entries.with(|entries| entries.truck.retarder.kind()))
            .to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::next_step;

    #[test]
    fn steps_of_the_mass_are_whole_tonnes() {
        let cases = [
            (36.287, true, Some(37.0)),
            (36.287, false, Some(36.0)),
            (36.0, true, Some(37.0)),
            (36.0, false, Some(35.0)),
            // As a number of pounds comes back.
            (36.000_03, true, Some(37.0)),
            (35.999_97, true, Some(37.0)),
            (36.000_03, false, Some(35.0)),
            (0.7, false, None),
        ];
        for (now, up, next) in cases {
            assert_eq!(next_step(now, 1.0, up), next, "{now} {up}");
        }
        assert_eq!(next_step(80_000.3, 2_000.0, true), Some(82_000.0));
    }
}
