//! All other entries, in rows that open where they are.

use crate::browser;
use crate::entries::Field;
use crate::format::{self, NO_BREAK, shown_as, stands_apart};
use crate::state::State;
use crate::view::truck::{self, ENGINE, GEARBOX, RETARDER, ROLLING};
use crate::view::{day, measured, trucks};
use crate::words::words;
use leptos::prelude::*;
use solver::limits::{self, Entry};
use solver::truck::TYRE_SIZES;

/// Lists of numbers that stand in a row, as its fields do.
const GEARS: [Field; 1] = [Field::Gears];
const SHARES: [Field; 2] = [Field::Stages, Field::Table];

/// What is tuned by what was measured.
const TUNE: [Entry; 1] = [Entry::RetardingScale];

/// The rows.
pub(super) fn experts(state: State) -> AnyView {
    let w = words();
    let [gearbox, engine, retarder, rolling, tune] = w.expert_rows();
    let no_retarder = Signal::derive(move || measured::no_retarder(state));
    let shown = Signal::derive(|| false);
    view! {
        <section class="driver-question">
            <h3>{w.experts()}</h3>
            <p class="about-experts">{w.experts_about()}</p>
            <div class="experts">
                {row(state, "expert-gearbox", gearbox, Signal::derive(move || gears(state)), &GEARBOX, &GEARS, truck::gearbox(state), shown)}
                {row(state, "expert-engine", engine, Signal::derive(move || of_engine(state)), &ENGINE, &[], truck::engine(state), shown)}
                {row(state, "expert-retarder", retarder, Signal::derive(move || power(state)), &RETARDER, &SHARES, truck::retarder(state), shown)}
                {row(state, "expert-rolling", rolling, Signal::derive(move || rolls_on(state)), &ROLLING, &[], truck::rolling(state), shown)}
                {row(state, "day-panel", w.day_head(), Signal::derive(move || air(state)), &day::FIELDS, &[], day::rest(state), shown)}
                {row(state, "measured-panel", tune, Signal::derive(move || w.measured_head().to_owned()), &TUNE, &[], measured::measured(state), no_retarder)}
                {row(state, "own-trucks", w.own_trucks(), Signal::derive(move || w.trucks_now().to_owned()), &[], &[], trucks::trucks(state), shown)}
            </div>
        </section>
    }
    .into_any()
}

/// One row; its summary has the test id as id, too.
#[allow(clippy::too_many_arguments, reason = "each is told once, by the list above")]
fn row(
    state: State,
    testid: &'static str,
    name: &'static str,
    now: Signal<String>,
    entries: &'static [Entry],
    lists: &'static [Field],
    content: AnyView,
    hidden: Signal<bool>,
) -> AnyView {
    let unfolded = RwSignal::new(false);
    Effect::new(move |_| {
        state.show_worths(testid, entries, state.entered.drawer.get() && unfolded.get() && !hidden.get());
    });
    let assumed = Memo::new(move |_| {
        let any = |it: &Entry| Field::Number(*it);
        state.entered.entries.with(|all| entries.iter().map(any).any(|it| all.has(it) && all.is_assumed(it)))
    });
    let wrong = Memo::new(move |_| {
        let numbers = entries.iter().map(|it| Field::Number(*it));
        numbers.chain(lists.iter().copied()).any(|it| state.field(it).problem.with(Option::is_some))
    });
    view! {
        <details
            class="expert"
            class:wrong=move || wrong.get()
            data-testid=testid
            hidden=move || hidden.get()
            on:toggle=move |event| unfolded.set(browser::is_open(&event))
        >
            <summary id=testid>
                <span class="name">{name}</span>
                <span class="now">{move || now.get()}{move || assumed.get().then_some("*")}</span>
            </summary>
            <div class="fields">{content}</div>
        </details>
    }
    .into_any()
}

/// An entry with its unit; nothing where the truck does not have it.
fn said(state: State, entry: Entry) -> Option<String> {
    let shown = shown_as(limits::of(entry).quantity, state.units.get());
    let value = state.entered.entries.with(|entries| entries.get(entry))?;
    let gap = stands_apart(shown.unit).then_some(NO_BREAK);
    Some(shown.text(value).chars().chain(gap).chain(shown.unit.chars()).collect())
}

fn joined(parts: [Option<String>; 2]) -> String {
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

fn gears(state: State) -> String {
    let count = state.entered.entries.with(|entries| entries.truck.gears.len());
    words().gears_now(count, &said(state, Entry::AxleRatio).unwrap_or_default())
}

fn of_engine(state: State) -> String {
    joined([Entry::Displacement, Entry::HighestEngineSpeed].map(|it| said(state, it)))
}

fn power(state: State) -> String {
    let w = words();
    let stages = state.entered.entries.with(|entries| entries.truck.retarder.shares().len());
    let power = [Entry::RetarderPeakPower, Entry::ShaftTorque].into_iter().find_map(|it| said(state, it));
    let stages = (stages > 0).then(|| w.so_many_stages(stages));
    match joined([power, stages]) {
        none if none.is_empty() => {
            state.entered.entries.with(|it| w.retarder(it.truck.retarder.kind()).to_owned())
        }
        told => told,
    }
}

fn rolls_on(state: State) -> String {
    state.entered.entries.with(|entries| {
        let radius = entries.truck.rolling_radius_m;
        let size = TYRE_SIZES.iter().find(|it| (it.rolling_radius_m() - radius).abs() < 1e-4);
        let axles = entries.truck.axle_groups.iter().map(|it| usize::from(it.axles)).sum();
        joined([size.map(|it| it.size.to_owned()), Some(words().axles_now(axles))])
    })
}

fn air(state: State) -> String {
    let (day, units) = (state.entered.entries.with(|entries| entries.day), state.units.get());
    let [air, brakes] = [day.air_c, day.brakes_at_start_c].map(|it| format::entered_temperature(it, units));
    words().day_now(&air, &brakes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_entry_has_one_place_in_the_drawer() {
        let rows: [&[Entry]; 6] = [&GEARBOX, &ENGINE, &RETARDER, &ROLLING, &day::FIELDS, &TUNE];
        let mut placed: Vec<&str> = rows.concat().into_iter().map(Entry::key).collect();
        placed.push(Entry::GrossMass.key());
        let mut all: Vec<&str> = limits::ALL.map(|limit| limit.entry.key()).to_vec();
        placed.sort_unstable();
        all.sort_unstable();
        assert_eq!(placed, all);
        assert_eq!(placed.len() + GEARS.len() + SHARES.len(), Field::COUNT);
    }
}
