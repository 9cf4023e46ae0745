//! The line between picture and answer: what takes trust from the answer, or changes it, because of the road
//! itself; and what of the answer is missing.

use super::{bar, road, study};
use crate::format::Units;
use crate::outline;
use crate::state::{State, Worked};
use crate::words::words;
use leptos::prelude::*;
use solver::plan::Note;
use std::sync::Arc;

/// The line, below the picture or, where there is no room, at the head of the answer. It takes no room where
/// there is nothing to say.
pub(super) fn notice(state: State, below: bool) -> AnyView {
    let here = Memo::new(move |_| state.views.room_below.get() == below);
    let told = move || {
        let units = state.units.get();
        state.shown.worked.get().map(|worked| lines(state, &worked, units))
    };
    let line =
        move || here.get().then(|| view! { <div class="notice-line" data-testid="notice">{told}</div> });
    line.into_any()
}

fn lines(state: State, worked: &Arc<Worked>, units: Units) -> AnyView {
    let w = words();
    let first = worked.road.unassessed.first().map(|it| (worked.place_m(it.from), worked.place_m(it.to)));
    let blank = worked.blank().zip(first).map(|(blank, (from_m, to_m))| {
        let show = move |_| state.look_at_stretch(from_m, to_m);
        let text = w.blank(&blank, units);
        view! {
            <li data-testid="blank">
                {bar::mark(WARNING)}
                <span>{text}</span>
                <button type="button" class="button small" data-testid="show-blank" on:click=show>{w.show_blank()}</button>
            </li>
        }
        .into_any()
    });
    // Of what is blank the first line tells more than its note.
    let notes = worked.plan.notes.iter().filter(|it| is_of_road(**it) && **it != Note::PartlyUnassessed);
    let notes = notes.map(|note| {
        let remedy = (*note == Note::StartsInDescent).then(|| format!(" {}", w.enter_brake_heat()));
        view! { <li data-testid="doubts">{bar::mark(WARNING)}<span>{w.note(*note, units)}{remedy}</span></li> }
            .into_any()
    });
    let part = road::part(state, worked).map(|part| view! { <li>{part}</li> }.into_any());
    let missing = study::missing(state)
        .map(|it| view! { <li data-testid="study-missing">{bar::mark(WARNING)}{it}</li> }.into_any());
    let of_road = blank.into_iter().chain(notes).chain(climbs(state, worked, units)).chain(part);
    let all: Vec<AnyView> = of_road.chain(missing).collect();
    view! { <ul>{all}</ul> }.into_any()
}

const WARNING: &str = "M10 2 19 18H1zM10 8v5M10 15v1";

/// Of a road that climbs the way it is shown: that it does, and the way to turn it.
fn climbs(state: State, worked: &Arc<Worked>, units: Units) -> Option<AnyView> {
    let w = words();
    let ends = worked.ends_m();
    outline::climbs(ends, worked.plan.totals.fall.0).then(|| {
        view! {
            <li data-testid="climbs">
                <span>{w.climbs(ends.0, ends.1, units)}</span>
                <button type="button" class="button small" data-testid="reverse-climb" on:click=move |_| state.reverse()>
                    {w.reverse()}
                </button>
            </li>
        }
        .into_any()
    })
}

/// Whether a note is about the road rather than about the way down: such notes stand below the picture.
pub(super) fn is_of_road(note: Note) -> bool {
    match note {
        Note::StartsInDescent | Note::PartlyUnassessed | Note::PoorHeights | Note::HotElsewhere { .. } => {
            true
        }
        Note::StagesWithheld(_)
        | Note::WetCap
        | Note::HoldByHand
        | Note::ShiftsUpByItself
        | Note::CannotClimb => false,
    }
}
