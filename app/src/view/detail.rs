//! One descent in full.

use super::table::table;
use crate::format::{self, Units};
use crate::state::Worked;
use crate::words::words;
use leptos::prelude::*;
use solver::plan::Descent;
use std::sync::Arc;

/// Everything that is known of a descent.
pub(super) fn detail(worked: &Arc<Worked>, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let day = &worked.day;
    let advice = descent.choice.advice();
    view! {
        <div class="detail" data-testid=format!("detail-{}", descent.number)>
            <div class="detail-grid">
                {sign(descent, units)}
                <dl class="facts">
                    {fact(w.advice_label(), vec![w.advice(descent, units), w.chosen_for(descent, units)])}
                    {fact(w.governs_label(), vec![w.governs(descent, day, units)])}
                    {advice.map(|advice| {
                        let snub = w.snub(advice, units);
                        let lines = [Some(w.at_crest(descent, units)), Some(w.brake_heat(advice, day, units)), snub];
                        fact(w.heat_label(), lines.into_iter().flatten().collect())
                    })}
                    {fact(w.other_mode_label(day), vec![w.other_mode(descent, day, units)])}
                    {fact(w.heavier_label(), vec![w.heavier(descent.heavier.as_ref(), units)])}
                    {fact(w.climb_label(), vec![w.climb(descent, units)])}
                    {reliefs(worked, descent, units)}
                    {stages(worked, descent, units)}
                    {descent.cut_short.then(|| fact("", vec![w.cut_short().to_owned()]))}
                </dl>
            </div>
            {table(descent, units)}
        </div>
    }
    .into_any()
}

fn fact(label: &'static str, lines: Vec<String>) -> AnyView {
    let lines = lines.into_iter().map(|line| view! { <p>{line}</p> });
    view! { <div><dt>{label}</dt><dd>{lines.collect_view()}</dd></div> }.into_any()
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

fn reliefs(worked: &Arc<Worked>, descent: &Descent, units: Units) -> Option<AnyView> {
    let w = words();
    let lines: Vec<String> = descent
        .reliefs
        .iter()
        .map(|relief| w.relief(worked.place_m(relief.from), worked.place_m(relief.to), units))
        .collect();
    (!lines.is_empty()).then(|| fact(w.relief_label(), lines))
}

/// Spans too short to be told in tenths are left to the picture.
const SHORTEST_TOLD_M: f64 = 100.0;

fn stages(worked: &Arc<Worked>, descent: &Descent, units: Units) -> Option<AnyView> {
    let w = words();
    let lines: Vec<String> = descent
        .stages
        .iter()
        .map(|span| (span.stage, worked.place_m(span.from), worked.place_m(span.to)))
        .filter(|(_, from_m, to_m)| to_m - from_m >= SHORTEST_TOLD_M)
        .map(|(stage, from_m, to_m)| w.stage_span(stage, from_m, to_m, units))
        .collect();
    (!lines.is_empty()).then(|| fact(w.way_label(), lines))
}
