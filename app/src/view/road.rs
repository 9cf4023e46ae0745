//! The road as recorded: how good its heights are, what was repaired, what is left blank.

use super::result::of_result;
use crate::browser;
use crate::format::Units;
use crate::state::{State, Worked};
use crate::words::words;
use leptos::prelude::*;
use solver::road::{Finding, FindingKind};
use std::sync::Arc;

/// The panel with the road's facts.
pub(super) fn facts(state: State) -> AnyView {
    let w = words();
    let content = of_result(state, move |worked| content(state, &worked));
    view! {
        <details
            class="card panel"
            open=browser::is_wide()
            hidden=move || state.shown.worked.with(Option::is_none)
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
    let blank = road.unassessed.iter().map(|span| {
        let place = (worked.place_m(span.from), Some(worked.place_m(span.to)));
        placed(state, Some(place), w.unassessed(span), units)
    });
    let blank: Vec<AnyView> = blank.collect();
    let blank_head = (!road.unassessed.is_empty()).then(|| w.unassessed_head(road.unassessed.len()));
    view! {
        <p data-testid="quality">{w.quality(road, units)}</p>
        <h3 class="warn">{blank_head}</h3>
        {(!blank.is_empty()).then(|| view! { <ul data-testid="unassessed">{blank}</ul> })}
        {findings(state, worked)}
        <p class="about">{w.stays_here()}</p>
    }
    .into_any()
}

/// A sentence with its place on the road as a button that shows it.
fn placed(state: State, place: Option<(f64, Option<f64>)>, sentence: String, units: Units) -> AnyView {
    let w = words();
    let button = place.map(|(from_m, to_m)| {
        let text = w.where_found(from_m, to_m, units);
        let label = w.show_place(&text);
        let show = move |_| {
            // Set anew even where it is the same: somebody may have moved on since.
            state.shown.look_at.set(None);
            state.shown.look_at.set(Some((from_m, to_m.unwrap_or(from_m))));
            browser::show_element("road");
        };
        view! {
            <button type="button" class="place" data-testid="show-place" aria-label=label on:click=show>{text}</button>
        }
    });
    view! { <li>{button}{sentence}</li> }.into_any()
}

fn findings(state: State, worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    // Stretches without assessment stand above with their reason.
    let told = |finding: &&Finding| !matches!(finding.kind, FindingKind::NotAssessed { .. });
    let found: Vec<&Finding> = worked.road.findings.iter().filter(told).collect();
    if found.is_empty() {
        return view! { <p data-testid="findings">{w.no_findings()}</p> }.into_any();
    }
    let items = found.iter().copied().map(|finding| {
        let place = finding.from_m.map(|from_m| (from_m, finding.to_m));
        placed(state, place, w.finding(finding), units)
    });
    let items: Vec<AnyView> = items.collect();
    view! {
        <details class="more" data-testid="findings">
            <summary>{w.findings_head(found.len())}</summary>
            <ul>{items}</ul>
        </details>
    }
    .into_any()
}
