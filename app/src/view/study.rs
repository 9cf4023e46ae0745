//! What follows from the plan: how sure it is, what if. It comes a moment after the answer.

use super::part::fact;
use crate::format::{self, Units};
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::order::ascending;
use solver::plan::Descent;
use solver::study::{SlowFor, Slowing};

/// Most things to slow for that are told at once.
const MOST_TOLD: usize = 12;

/// How sure the plan of a descent is, and what is left when the retarder is lost; in short, or
/// in full. Nothing where nothing is advised: there is no plan to be sure of, and whoever reads what
/// the brakes could still do may take it for leave to go down.
pub(super) fn sure_and_lost(state: State, descent: &Descent, units: Units, in_full: bool) -> AnyView {
    let w = words();
    if descent.choice.advice().is_none() {
        return ().into_any();
    }
    let descent = descent.clone();
    let (number, crest_m, foot_m) = (descent.number, descent.crest.0, descent.foot.0);
    (move || {
        let sure = state.studied.sureness.get().and_then(|all| {
            let own = all.descents.get(number - 1)?;
            Some(if in_full {
                w.sure(own, &descent, all.runs, units)
            } else {
                vec![w.sure_in_short(own, &descent, all.runs)]
            })
        });
        let progress =
            state.studied.progress.get().map(|share| vec![w.studying(&format::share(f64::from(share)))]);
        let at_work = progress.is_some();
        let lost = state.studied.study.get().and_then(|study| {
            let own = study.lost.get(number - 1)?;
            Some(w.lost(own, crest_m, foot_m, units))
        });
        let done = state.studied.study.with(Option::is_some) && !at_work;
        let too_long = done.then(|| vec![w.too_long_to_be_sure().to_owned()]);
        // A place is kept for what is still worked out, so that the page does not move.
        let lost = lost.or_else(|| at_work.then(|| vec![w.not_yet().to_owned()]));
        let shown = match progress {
            Some(progress) if sure.is_none() => (w.sure_label(), "studying", Some(progress)),
            Some(_) | None => (w.sure_label(), "sure", sure.or(too_long)),
        };
        let shown = [shown, (w.lost_label(), "lost", lost)];
        shown.into_iter().filter_map(|(label, id, lines)| Some(fact(label, id, lines?))).collect_view()
    })
    .into_any()
}

/// The section of what lies ahead: where to slow, and brakes out of adjustment.
pub(super) fn ahead(state: State) -> AnyView {
    let w = words();
    let content = move || {
        let units = state.units.get();
        let study = state.studied.study.get()?;
        // Of a descent that nobody is to go down it is not said how to slow on it.
        let advised: Vec<Slowing> = state.shown.worked.with(|worked| {
            let closed = worked.iter().flat_map(|it| &it.plan.descents);
            let closed: Vec<&Descent> = closed.filter(|it| it.choice.advice().is_none()).collect();
            let on = |it: &Slowing, descent: &&Descent| (descent.crest.0..=descent.foot.0).contains(&it.at.0);
            study.slowing.iter().filter(|it| !closed.iter().any(|descent| on(it, descent))).cloned().collect()
        });
        let adjustment = (!study.adjustment.is_empty())
            .then(|| fact(w.adjustment_label(), "adjustment", w.adjustment(&study.adjustment, units)));
        let slowing = (!advised.is_empty()).then(|| slowing(&advised, units));
        Some(view! {
            {slowing}
            <dl class="facts wide">{adjustment}</dl>
        })
    };
    view! {
        <section class="card ahead" id="ahead" hidden=move || state.studied.study.with(Option::is_none)>{content}</section>
    }
    .into_any()
}

/// Places, and the curves that a truck must slow for most, in road order.
fn slowing(all: &[Slowing], units: Units) -> AnyView {
    let w = words();
    let weight = |it: &Slowing| match it.what {
        SlowFor::Curve(_) => -it.brakes_need.0,
        SlowFor::Limit | SlowFor::Stop(_) | SlowFor::Town(_) | SlowFor::BrakeCheck(_) => f64::NEG_INFINITY,
    };
    let mut chosen = ascending(all.iter().map(weight));
    chosen.truncate(MOST_TOLD);
    // Back into the order of the road, which is that of the list.
    let told = (0..all.len()).filter(|index| chosen.contains(index));
    let rows = told.map(|index| row(w.slowing(&all[index], units))).collect_view();
    let more = all.len().saturating_sub(MOST_TOLD);
    let heads = w.slowing_heads().map(|head| view! { <th scope="col">{head}</th> }.into_any());
    view! {
        <h2 id="ahead-head">{w.slowing_label()}</h2>
        <p>{w.slowing_sentence()}</p>
        <div class="wide-table" tabindex="0" role="region" aria-labelledby="ahead-head">
            <table class="gear-table" data-testid="slowing" aria-labelledby="ahead-head">
                <thead><tr>{heads.into_iter().collect_view()}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        {(more > 0).then(|| view! { <p>{w.slowing_more(more)}</p> })}
    }
    .into_any()
}

fn row(cells: [String; 6]) -> AnyView {
    let cells = cells.map(|text| view! { <td>{text}</td> }.into_any());
    view! { <tr>{cells.into_iter().collect_view()}</tr> }.into_any()
}
