//! One descent in full.

use super::part::fact;
use super::study::sure_and_lost;
use super::table::table;
use crate::format::{self, Units};
use crate::state::{State, Worked};
use crate::words::words;
use ::words::Curves;
use ::words::down;
use leptos::prelude::*;
use solver::day::Day;
use solver::plan::{Descent, StageSpan};
use std::sync::Arc;

/// Everything that is known of a descent.
pub(super) fn detail(state: State, worked: &Arc<Worked>, descent: &Descent, units: Units) -> AnyView {
    view! {
        <div class="detail" data-testid=format!("detail-{}", descent.number)>
            <div class="detail-grid">
                {sign(descent, units)}
                <dl class="facts">
                    {facts(worked, descent, units)}
                    {sure_and_lost(state, descent, units, true)}
                </dl>
            </div>
            {table(descent, units)}
        </div>
    }
    .into_any()
}

fn facts(worked: &Arc<Worked>, descent: &Descent, units: Units) -> Vec<AnyView> {
    let w = words();
    let day = &worked.day;
    let heat = descent.choice.advice().map(|advice| {
        let snub = w.snub(advice, units);
        [Some(w.at_crest(descent, units)), Some(w.brake_heat(advice, day, units)), snub]
            .into_iter()
            .flatten()
            .collect()
    });
    let reliefs =
        down::easings(descent).map(|it| w.relief(worked.place_m(it.from), worked.place_m(it.to), units));
    let blanks = down::blanks(descent, &worked.road.unassessed);
    let blanks = blanks.map(|(from, to)| format::span(worked.place_m(from), worked.place_m(to), units));
    let mut unknown: Vec<String> = blanks.map(|span| w.not_assessed_on(&span)).collect();
    unknown.extend(descent.cut_short.then(|| w.cut_short().to_owned()));
    // No way down is told where nobody is to go down.
    let way = descent.choice.advice().map_or_else(Vec::new, |_| stages(worked, descent, units));
    let [one_gear, untouched] = other_ways(descent, units);
    let mut advice = vec![w.advice(descent, units), w.chosen_for(descent, units)];
    advice.extend(w.touched(descent, units));
    let all = [
        (w.advice_label(), advice),
        ("", unknown),
        (w.legs_label(), w.legs(descent, worked.road.step_m, units)),
        (w.touches_label(), w.touches(descent, units)),
        (w.grades_label(), w.grades(descent, worked.road.base_length_m, units)),
        (w.governs_label(descent), vec![w.governs(descent, day, units)]),
        (w.change_label(), changes(descent, day, units)),
        (w.curves_label(), curves(worked, descent, units)),
        (w.heat_label(), heat.unwrap_or_default()),
        (w.one_gear_label(), one_gear),
        (w.untouched_label(), untouched),
        (w.other_mode_label(day.service_brakes), vec![w.other_mode(descent, day, units)]),
        (w.heavier_label(), vec![w.heavier(descent.heavier.as_ref(), units)]),
        (w.climb_label(), vec![w.climb(descent, units)]),
        (w.carried_label(), descent.carried.map(|it| w.carried(it, units)).into_iter().collect()),
        (w.relief_label(), reliefs.collect()),
        (w.way_label(), way),
    ];
    all.into_iter()
        .filter(|(_, lines)| !lines.is_empty())
        .map(|(label, lines)| fact(label, "", lines))
        .collect()
}

/// One gear all the way, where another way leads, and the way that never touches the service brakes;
/// nothing where no speed is safe.
pub(super) fn other_ways(descent: &Descent, units: Units) -> [Vec<String>; 2] {
    let w = words();
    descent.choice.advice().map_or_else(Default::default, |advice| {
        [w.one_gear(descent, advice, units).into_iter().collect(), vec![w.untouched(descent, advice, units)]]
    })
}

/// Its curves that ask for less than its speed; nothing where there are none.
pub(super) fn curves(worked: &Worked, descent: &Descent, units: Units) -> Vec<String> {
    let curves = Curves::of(&worked.plan, descent, worked.road.step_m);
    curves.map_or_else(Vec::new, |curves| words().curves(&curves, units))
}

/// What would let the retarder hold it with the reserve; nothing where it does.
pub(super) fn changes(descent: &Descent, day: &Day, units: Units) -> Vec<String> {
    descent.change.as_ref().map(|change| words().change(change, day.reserve, units)).unwrap_or_default()
}

/// The descent as a road sign would state it: whole numbers on a board.
fn sign(descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let (grade, length) = format::as_sign(descent.mean.0, descent.foot.0 - descent.crest.0, units);
    let spoken = w.sign(&grade, &length);
    view! {
        <figure class="sign" data-testid="sign">
            <div class="board" role="img" aria-label=spoken>
                <svg viewBox="0 0 48 22" width="48" height="22" aria-hidden="true">
                    <path d="M2 3 46 19H2z"></path>
                </svg>
                <span class="grade">{grade}</span>
                <span class="long">{length}</span>
            </div>
            <figcaption>{w.sign_label()}</figcaption>
        </figure>
    }
    .into_any()
}

/// Spans too short to be told in tenths are left to the picture.
const SHORTEST_TOLD_M: f64 = 100.0;

fn stages(worked: &Arc<Worked>, descent: &Descent, units: Units) -> Vec<String> {
    let placed = |span: &StageSpan| (span.stage, worked.place_m(span.from), worked.place_m(span.to));
    let told = descent.stages.iter().map(placed).filter(|(_, from_m, to_m)| to_m - from_m >= SHORTEST_TOLD_M);
    told.map(|(stage, from_m, to_m)| words().stage_span(stage, from_m, to_m, units)).collect()
}
