//! What follows from the plan: how sure it is, what if. It comes a moment after the answer.

use super::part::fact;
use crate::format::Units;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::order::ascending;
use solver::study::{SlowFor, Slowing};

/// Most things to slow for that are told at once.
const MOST_TOLD: usize = 8;

/// A descent by its number, and where it lies, m.
#[derive(Debug, Clone, Copy)]
pub(super) struct Where {
    pub(super) number: usize,
    pub(super) crest_m: f64,
    pub(super) foot_m: f64,
}

/// How sure the plan of a descent is, and what is left when the retarder is lost.
pub(super) fn sure_and_lost(state: State, at: Where, units: Units) -> AnyView {
    let w = words();
    let content = move || {
        let sureness = state.sureness.get();
        let study = state.study.get();
        let sure = sureness.and_then(|all| {
            let own = all.descents.get(at.number - 1)?;
            Some(w.sure(own, all.runs, units))
        });
        let progress = state.studying.get().map(|share| vec![w.studying(share)]);
        let lost = study.and_then(|study| {
            let own = study.lost.get(at.number - 1)?;
            Some(w.lost(own, at.crest_m, at.foot_m, units))
        });
        let shown = [(w.sure_label(), "sure", sure.or(progress)), (w.lost_label(), "lost", lost)];
        shown.into_iter().filter_map(|(label, id, lines)| Some(fact(label, id, lines?))).collect_view()
    };
    view! { {content} }.into_any()
}

/// What lies ahead on a descent that asks for a lower speed.
pub(super) fn slowing_on(state: State, at: Where, units: Units) -> AnyView {
    (move || {
        let study = state.study.get()?;
        let on_it = |it: &&Slowing| it.at.0 > at.crest_m && it.at.0 <= at.foot_m + 1_000.0;
        slowing(study.slowing.iter().filter(on_it), units)
    })
    .into_any()
}

/// Brakes out of adjustment, and what lies ahead on the whole road.
pub(super) fn on_the_road(state: State, units: Units) -> AnyView {
    let w = words();
    (move || {
        let study = state.study.get()?;
        let adjustment = (!study.adjustment.is_empty())
            .then(|| fact(w.adjustment_label(), "adjustment", w.adjustment(&study.adjustment, units)));
        Some(vec![adjustment, slowing(study.slowing.iter(), units)].into_iter().flatten().collect_view())
    })
    .into_any()
}

/// Places first, then the curves that a truck must slow for most, in road order.
fn slowing<'a>(all: impl Iterator<Item = &'a Slowing>, units: Units) -> Option<AnyView> {
    let w = words();
    let all: Vec<&Slowing> = all.collect();
    let weight = |it: &&Slowing| match it.what {
        SlowFor::Curve(_) => -it.brakes_need.0,
        SlowFor::Stop(_) | SlowFor::Town(_) | SlowFor::BrakeCheck(_) => f64::NEG_INFINITY,
    };
    let mut chosen = ascending(all.iter().map(weight));
    chosen.truncate(MOST_TOLD);
    // Back into the order of the road, which is that of the list.
    let told = (0..all.len()).filter(|index| chosen.contains(index));
    let mut lines: Vec<String> = told.map(|index| w.slowing(all[index], units)).collect();
    if all.len() > lines.len() {
        lines.push(w.slowing_more(all.len() - lines.len()));
    }
    (!lines.is_empty()).then(|| fact(w.slowing_label(), "slowing", lines))
}
