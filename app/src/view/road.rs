//! The road as recorded: how good its heights are, what was repaired, what is left blank.

use super::of_result;
use super::part::list;
use crate::browser;
use crate::state::{State, Worked};
use crate::words::words;
use leptos::prelude::*;
use std::sync::Arc;

/// The panel with the road's facts.
pub(super) fn facts(state: State) -> AnyView {
    let w = words();
    let content = of_result(state, move |worked| content(state, &worked));
    view! {
        <details
            class="card panel"
            open=browser::is_wide()
            hidden=move || state.worked.with(Option::is_none)
            data-testid="road-panel"
        >
            <summary><h2>{w.road_head()}</h2></summary>
            {content}
        </details>
    }
    .into_any()
}

fn content(state: State, worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    let road = &worked.road;
    let blank = road.unassessed.iter().map(|span| w.unassessed(span, road.step_m, units));
    let blank_head = (!road.unassessed.is_empty()).then(|| w.unassessed_head(road.unassessed.len()));
    view! {
        <p data-testid="quality">{w.quality(road, units)}</p>
        <h3 class="warn">{blank_head}</h3>
        {list("", "unassessed", blank.collect())}
        {findings(worked)}
        <p class="about">{w.places(road.places.len())}</p>
        <p class="about">{w.stays_here()}</p>
    }
    .into_any()
}

fn findings(worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let found = &worked.road.findings;
    if found.is_empty() {
        return view! { <p data-testid="findings">{w.no_findings()}</p> }.into_any();
    }
    let items = found.iter().map(|finding| w.finding(finding));
    view! {
        <details class="more" data-testid="findings">
            <summary>{w.findings_head(found.len())}</summary>
            {list("", "", items.collect())}
        </details>
    }
    .into_any()
}
