//! The list of descents, worst first or along the road, each opening to its details.

use super::choice::choice;
use super::detail::detail;
use super::verdict::chip;
use crate::format::{self, Units};
use crate::state::{State, Worked};
use crate::words::words;
use ::words::down;
use leptos::prelude::*;
use solver::plan::{Choice, Descent};
use std::sync::Arc;

/// How the list is ordered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Order {
    /// Worst first.
    Worst,
    /// As they come.
    Road,
}

/// The section of the descents.
pub(super) fn descents(state: State) -> AnyView {
    let w = words();
    let order = RwSignal::new(Order::Worst);
    let orders = vec![(Order::Worst, "worst", w.worst_first()), (Order::Road, "road", w.road_order())];
    let content = move || {
        let units = state.units.get();
        let order = order.get();
        state.shown.listed.get().map(|worked| list(state, &worked, order, units))
    };
    let head =
        move || state.shown.listed.with(|it| it.as_ref().map(|it| w.descents_head(it.plan.descents.len())));
    let few = move || state.shown.listed.with(|it| it.as_ref().is_none_or(|it| it.plan.descents.len() < 2));
    view! {
        <section
            class="card descents"
            id="descents"
            aria-label=w.descents_section()
            hidden=move || state.shown.listed.with(Option::is_none)
        >
            <div class="section-head">
                <h2>{head}</h2>
                <div hidden=few>
                    {choice(w.order(), "order", orders, move || order.get(), move |it| order.set(it))}
                </div>
            </div>
            {content}
            {export(state)}
        </section>
    }
    .into_any()
}

fn list(state: State, worked: &Arc<Worked>, order: Order, units: Units) -> AnyView {
    let w = words();
    let ordered: Vec<&Descent> = match order {
        Order::Worst => worked.plan.worst_first(),
        Order::Road => worked.plan.descents.iter().collect(),
    };
    let heads = w.columns().into_iter().map(|head| view! { <span>{head}</span> });
    let rows = ordered.into_iter().map(|descent| row(state, worked, descent, units));
    view! {
        <div class="heads" aria-hidden="true">{heads.collect_view()}</div>
        <ol class="rows">{rows.collect_view()}</ol>
        <p class="totals" data-testid="totals">{w.totals(&worked.plan.totals, units)}</p>
    }
    .into_any()
}

fn row(state: State, worked: &Arc<Worked>, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let number = descent.number;
    let open = move || state.shown.chosen_descent.get() == Some(number);
    let toggle = move |_| {
        let closed = state.shown.chosen_descent.get_untracked() != Some(number);
        state.shown.chosen_descent.set(closed.then_some(number));
    };
    let worked = worked.clone();
    // The descent is found again by its number: it lives in the shared plan, not here.
    let details = move || {
        let found = worked.plan.descents.iter().find(|descent| descent.number == number);
        found.filter(|_| open()).map(|descent| detail(state, &worked, descent, units))
    };
    let figures = figures(descent, units);
    let legs =
        descent.choice.advice().filter(|_| down::in_legs(descent)).map(|it| w.gears_down(descent, it, units));
    view! {
        <li class="descent" class:open=open data-testid="descent-row">
            <div class="row">
                <h3>
                    <button
                        type="button"
                        data-testid=format!("descent-{number}")
                        aria-expanded=move || if open() { "true" } else { "false" }
                        aria-label=w.details_of(number)
                        on:click=toggle
                    >
                        <span class="number">{number}</span>
                        <span class="word">{w.descent(number)}</span>
                    </button>
                </h3>
                <dl>{figures}</dl>
                {chip(&descent.choice)}
            </div>
            {legs.map(|legs| view! { <p class="legs">{legs}</p> })}
            {details}
        </li>
    }
    .into_any()
}

/// The figures of a row, in the order of the columns behind the first: of several gears those of the
/// slowest leg.
fn figures(descent: &Descent, units: Units) -> Vec<AnyView> {
    let dash = || "–".to_owned();
    let (gear, stage, hold, heat) = match &descent.choice {
        Choice::Held(advice) => {
            let (gear, stage, speed) = down::slowest(descent, advice);
            (
                gear.number().to_string(),
                words().short_stage(stage.number()),
                format::hold_speed(speed.0, units),
                format::temperature(advice.hottest_after_stop.0, units),
            )
        }
        Choice::NoSafeSpeed(_) => (dash(), dash(), dash(), dash()),
    };
    let values = [
        format::distance(descent.crest.0, units),
        format::length(descent.foot.0 - descent.crest.0, units),
        format::height(descent.drop.0, units),
        format::grade(descent.mean.0),
        format::grade(descent.sustained.grade.0),
        gear,
        stage,
        hold,
        heat,
    ];
    let labels = words().columns().into_iter().skip(1);
    let keys = ["from", "length", "drop", "mean", "asked", "gear", "stage", "hold", "heat"];
    let figure = |((label, value), key): ((&'static str, String), &'static str)| {
        view! { <div class=key><dt>{label}</dt><dd>{value}</dd></div> }.into_any()
    };
    labels.zip(values).zip(keys).map(figure).collect()
}

fn export(state: State) -> impl IntoView {
    let w = words();
    view! {
        <div class="export">
            <button
                type="button"
                class="button"
                data-testid="export"
                disabled=move || !state.can_export()
                on:click=move |_| state.export()
            >
                {w.export()}
            </button>
            <p>{w.export_sentence()}</p>
            <button
                type="button"
                class="button"
                data-testid="save-project"
                disabled=move || !state.can_export()
                on:click=move |_| state.save_project()
            >
                {w.save_project()}
            </button>
            <p>{w.project_sentence()}</p>
        </div>
    }
}
