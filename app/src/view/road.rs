//! The road as recorded: how good its heights are, what was repaired, what is left blank.

use super::of_result;
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
    let blank = road.unassessed.iter().map(|span| view! { <li>{w.unassessed(span, road.step_m, units)}</li> });
    let blank = (!road.unassessed.is_empty()).then(|| {
        view! {
            <h3 class="warn">{w.unassessed_head(road.unassessed.len())}</h3>
            <ul data-testid="unassessed">{blank.collect_view()}</ul>
        }
    });
    view! {
        <p data-testid="quality">{w.quality(road, units)}</p>
        {blank}
        {findings(worked)}
        <p class="about">{w.places(road.places.len())}</p>
        <p class="about">{w.stays_here()}</p>
    }
    .into_any()
}

fn findings(worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let list = &worked.road.findings;
    if list.is_empty() {
        return view! { <p data-testid="findings">{w.no_findings()}</p> }.into_any();
    }
    let items = list.iter().map(|finding| view! { <li>{w.finding(finding)}</li> });
    view! {
        <details class="more" data-testid="findings">
            <summary>{w.findings_head(list.len())}</summary>
            <ul>{items.collect_view()}</ul>
        </details>
    }
    .into_any()
}
