//! What held today: a steady speed that was seen, and what it says of the retarder.

use super::entry::entry;
use super::part::text_field;
use crate::entries::Field;
use crate::format::{self, parse_number, shown_as};
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::limits::{Entry, Quantity};
use solver::study::Seen;
use solver::units::{Grade, Metres, MetresPerSecond, RevPerMin};

/// The fields: gear, stage, engine speed, steady speed, grade, place.
const FIELDS: [&str; 6] = ["gear", "stage", "engine", "speed", "grade", "place"];

/// What is seen is entered here; below it what it came to, and the entry that it changes.
pub(super) fn measured(state: State) -> AnyView {
    let w = words();
    let texts = FIELDS.map(|_| RwSignal::new(String::new()));
    let missing = RwSignal::new(false);
    let unit = move |index: usize| {
        let units = state.units.get();
        match index {
            2 => "/min",
            3 => shown_as(Quantity::Speed, units).unit,
            4 => "%",
            5 => units.distance(),
            _ => "",
        }
    };
    let field = move |index: usize| {
        let (id, label, text) = (format!("seen-{}", FIELDS[index]), w.measured_fields()[index], texts[index]);
        let unit = Signal::derive(move || unit(index));
        let typed = move |it| text.set(it);
        view! { <div class="entry">{text_field(id, label, "decimal", text.into(), unit, Box::new(typed))}</div> }
            .into_any()
    };
    let work_out = move |_| {
        let seen = read(state, &texts.map(|text| text.get_untracked()));
        missing.set(seen.is_none());
        state.studied.measured.set(None);
        if let Some(seen) = seen {
            state.measure(seen);
        }
    };
    view! {
        <p class="about">{w.measured_sentence()}</p>
        {(0..FIELDS.len()).map(field).collect_view()}
        <p class="about">{w.measured_place_hint()}</p>
        <div class="buttons">
            <button type="button" class="button small" data-testid="measure" on:click=work_out>{w.measure()}</button>
        </div>
        <p class="problem" role="status">{move || missing.get().then(|| w.measured_missing())}</p>
        {result(state)}
        {entry(state, Field::Number(Entry::RetardingScale))}
    }
    .into_any()
}

/// Without one nothing can be tuned.
pub(super) fn no_retarder(state: State) -> bool {
    state.entered.entries.with(|entries| entries.get(Entry::RetardingScale).is_none())
}

/// What came of it, and the buttons that plan with it or no longer do.
fn result(state: State) -> impl IntoView {
    let w = words();
    let content = move || {
        let units = state.units.get();
        match state.studied.measured.get()? {
            Ok(it) => {
                let take = move |_| {
                    state.change_truck(|entries| entries.truck.set(Entry::RetardingScale, it.scale));
                };
                let button = view! {
                    <button type="button" class="button small" data-testid="use-measured" on:click=take>
                        {w.use_measured()}
                    </button>
                };
                Some(vec![
                    view! { <p data-testid="measured">{w.measured(&it, units)}</p> }.into_any(),
                    button.into_any(),
                ])
            }
            Err(why) => Some(vec![
                view! { <p class="problem" data-testid="not-measured">{w.not_measured(&why)}</p> }.into_any(),
            ]),
        }
    };
    let in_use = move || {
        let scale = state.entered.entries.with(|entries| entries.get(Entry::RetardingScale))?;
        ((scale - 1.0).abs() > 1e-9).then(|| {
            let undo = move |_| state.change_truck(|entries| entries.truck.set(Entry::RetardingScale, 1.0));
            view! {
                <p>{w.scale_in_use(&format::share(scale))}</p>
                <button type="button" class="button small" data-testid="undo-measured" on:click=undo>
                    {w.undo_measured()}
                </button>
            }
        })
    };
    view! { <div role="status">{content}</div>{in_use} }
}

/// What was typed; `None` where something is missing or no number.
fn read(state: State, texts: &[String]) -> Option<Seen> {
    let units = state.units.get_untracked();
    let number = |index: usize| texts.get(index).and_then(|text| parse_number(text));
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "checked to be a small whole number"
    )]
    let whole = |index: usize| {
        let value = number(index)?;
        ((0.0..=64.0).contains(&value) && (value - value.round()).abs() < 1e-9).then_some(value as u8)
    };
    let place = number(5).map(|at| at * units.metres_per_distance());
    let (grade, height) = match place {
        Some(at_m) => grade_at(state, at_m)?,
        None => (Grade(-number(4)?.abs() / 100.0), Metres(0.0)),
    };
    Some(Seen {
        gear: whole(0)?,
        stage: whole(1)?,
        engine_speed: RevPerMin(number(2)?),
        speed: MetresPerSecond(number(3)? * units.metres_per_second_per_speed()),
        grade,
        height,
    })
}

/// Grade of the stretch that a place of the road shown lies on, and its height.
fn grade_at(state: State, at_m: f64) -> Option<(Grade, Metres)> {
    state.shown.worked.with_untracked(|worked| {
        let worked = worked.as_ref()?;
        let on_it = |it: &&solver::road::GradeSegment| {
            worked.place_m(it.from) <= at_m && at_m <= worked.place_m(it.to)
        };
        let segment = worked.road.segments.iter().find(on_it)?;
        let height = worked.picture.heights_m.get(segment.from)?;
        Some((Grade(segment.grade), Metres(f64::from(*height))))
    })
}
