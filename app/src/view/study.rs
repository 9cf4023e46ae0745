//! What follows from the plan: how sure it is, what if. It comes a moment after the answer.

use super::part::fact;
use crate::format::{self, Units};
use crate::state::{Stage, State};
use crate::words::words;
use leptos::prelude::*;
use solver::order::ascending;
use solver::plan::Descent;
use solver::study::{SlowFor, Slowing};

/// Most things to slow for that are told at once.
const MOST_TOLD: usize = 12;

/// How sure the plan of a descent is: short answer and text. A place is kept for what is still worked out.
pub(super) fn sure(state: State, descent: &Descent, units: Units) -> Signal<(String, Vec<String>)> {
    let w = words();
    let descent = descent.clone();
    Signal::derive(move || {
        let sure = state.studied.sureness.get().and_then(|all| {
            let own = all.descents.get(descent.number - 1)?;
            Some((w.short_sure(own, all.runs), w.sure(own, &descent, all.runs, units)))
        });
        sure.unwrap_or_else(|| match state.studied.stage.get() {
            Stage::AtWork(share) => {
                let share = format::share(f64::from(share));
                (share.clone(), vec![w.studying(&share)])
            }
            Stage::Through => (String::from("–"), vec![w.too_long_to_be_sure().to_owned()]),
            Stage::Failed => not_known(),
            Stage::Idle => not_yet(),
        })
    })
}

/// What is left when the retarder is lost on a descent: short answer and text.
pub(super) fn lost(state: State, descent: &Descent, units: Units) -> Signal<(String, Vec<String>)> {
    let w = words();
    let (number, crest_m, foot_m) = (descent.number, descent.crest.0, descent.foot.0);
    Signal::derive(move || {
        let lost = state.studied.study.get().and_then(|study| {
            let own = study.lost.get(number - 1)?;
            Some((w.short_lost(own, crest_m, foot_m, units), w.lost(own, crest_m, foot_m, units)))
        });
        lost.unwrap_or_else(|| match state.studied.stage.get() {
            Stage::Idle | Stage::AtWork(_) => not_yet(),
            Stage::Through | Stage::Failed => not_known(),
        })
    })
}

fn not_yet() -> (String, Vec<String>) {
    (String::from("…"), vec![words().not_yet().to_owned()])
}

/// The study worker did not answer: silence would read as all clear.
fn not_known() -> (String, Vec<String>) {
    let w = words();
    (w.not_worked_out().to_owned(), vec![w.not_worked_out_sentence().to_owned()])
}

/// That part of the answer is missing, and the way to ask for it again; `None` while nothing is.
pub(super) fn missing(state: State) -> Option<AnyView> {
    let w = words();
    (state.studied.stage.get() == Stage::Failed).then(|| {
        view! {
            <span>{w.study_missing()}</span>
            <button type="button" class="button small" data-testid="study-again" on:click=move |_| state.study_again()>
                {w.try_again()}
            </button>
        }
        .into_any()
    })
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
    let nothing =
        move || state.studied.study.with(Option::is_none) && state.studied.stage.get() != Stage::Failed;
    view! {
        <section class="card ahead" id="ahead" hidden=nothing>
            {content}
            {move || missing(state).map(|it| view! { <p class="missing">{it}</p> })}
        </section>
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
