//! The bar: the road, the views, the truck. On a phone the views are a row at the foot.

use super::chart::{Look, colour_select};
use super::result::of_result;
use crate::browser;
use crate::format::{self, Units};
use crate::state::{Origin, State, View, Worked};
use crate::words::words;
use leptos::prelude::*;
use std::sync::Arc;

/// The bar.
pub(super) fn bar(state: State, look: Look) -> AnyView {
    let w = words();
    view! {
        <header class="top">
            <h1 title=w.purpose()>"Steadygrade"</h1>
            {of_result(state, move |worked| road_button(state, &worked))}
            {reverse(state)}
            {colour_select(look)}
            <nav class="views" aria-label=w.sections()>
                {IN_BAR.map(|view| to_view(state, view, "view")).into_iter().collect_view()}
                {to_class()}
            </nav>
            <a class="boxed" href="#truck" data-testid="to-truck">
                <span class="unseen">{move || w.truck_button(&truck(state).join(" · "))}</span>
                <b aria-hidden="true">{move || truck(state)[0].clone()}</b>
                <span aria-hidden="true">{move || truck(state)[1].clone()}</span>
            </a>
            {to_view(state, View::More, "view")}
        </header>
    }
    .into_any()
}

/// The views in the bar; the last one stands behind the truck.
const IN_BAR: [View; 4] = [View::Road, View::Descents, View::Two, View::Card];

/// The views as a row at the foot of a phone, with truck and day among them.
pub(super) fn tabs(state: State) -> AnyView {
    let w = words();
    let truck = view! {
        <a href="#truck" data-testid="tab-truck" aria-current=move || state.entered.drawer.get().then_some("page")>
            {mark("M2 5h9v9H2zM11 8h4l3 3v3h-7zM5 14.2a1.8 1.8 0 1 0 .01 0zM14 14.2a1.8 1.8 0 1 0 .01 0z")}
            {w.truck_tab()}
        </a>
    };
    view! {
        <nav class="tabs" aria-label=w.sections()>
            {[View::Road, View::Descents].map(|view| to_view(state, view, "tab")).into_iter().collect_view()}
            {truck}
            {[View::Card, View::More].map(|view| to_view(state, view, "tab")).into_iter().collect_view()}
        </nav>
    }
    .into_any()
}

/// Words of a view.
pub(super) fn name(view: View) -> &'static str {
    let [road, descents, two, card, more] = words().view_names();
    match view {
        View::Road => road,
        View::Descents => descents,
        View::Two => two,
        View::Card => card,
        View::More => more,
    }
}

fn to_view(state: State, view: View, testid: &str) -> AnyView {
    let path = match view {
        View::Road => "M1 16 7 6l4 6 2-3 6 7z",
        View::Descents => "M2 5h2M7 5h11M2 10h2M7 10h11M2 15h2M7 15h11",
        View::Two => "M1 8 6 3l4 5M10 17l5-7 4 7",
        View::Card => "M4 2h12v16H4zM7 6h6M7 10h6M7 14h4",
        View::More => "M3 10h2M9 10h2M15 10h2",
    };
    view! {
        <a
            href=format!("#{}", view.key())
            data-testid=format!("{testid}-{}", view.key())
            aria-current=move || (state.views.front.get() == view).then_some("page")
        >
            {mark(path)}
            {name(view)}
        </a>
    }
    .into_any()
}

/// The way to the class view, where there is one beside the page.
pub(super) fn to_class() -> Option<AnyView> {
    let page = browser::named("class-page")?;
    Some(view! { <a href=page data-testid="class-page">{words().to_class()}</a> }.into_any())
}

/// A small drawing beside a word.
pub(super) fn mark(path: &'static str) -> AnyView {
    view! { <svg class="icon" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true"><path d=path></path></svg> }
        .into_any()
}

/// The road: name, length, heights at its ends. It opens the panel of the road.
fn road_button(state: State, worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let open = state.views.road;
    let units = state.units.get_untracked();
    let (start_m, end_m) = worked.ends_m();
    let name = worked.name().to_owned();
    let invented = (worked.origin != Origin::Given).then(|| w.demo_mark());
    let turned = worked.road.reversed.then(|| w.reversed_mark());
    let marks = invented.into_iter().chain(turned).map(|mark| view! { <em>{mark}</em> }).collect_view();
    let length = format::distance(worked.road.length_m, units);
    let spoken = format!("{}, {length}, {}", super::two::name(worked), w.ends_spoken(start_m, end_m, units));
    view! {
        <button
            type="button"
            class="boxed road-name"
            data-testid="road-button"
            aria-expanded=move || if open.get() { "true" } else { "false" }
            aria-controls="road-panel"
            on:click=move |_| open.update(|it| *it = !*it)
        >
            <span class="unseen">{w.road_button(&spoken)}</span>
            <b data-testid="road-name" aria-hidden="true">{name}</b>
            <span data-testid="road-ends" aria-hidden="true">
                {length} <span class="heights">{format!(" · {}", w.ends(start_m, end_m, units))}</span> {marks}
            </span>
        </button>
    }
    .into_any()
}

fn reverse(state: State) -> AnyView {
    let w = words();
    let reversed = move || state.shown.worked.with(|it| it.as_ref().is_some_and(|it| it.road.reversed));
    view! {
        <button
            type="button"
            class="button reverse"
            data-testid="reverse"
            disabled=move || state.shown.worked.with(Option::is_none)
            aria-pressed=move || if reversed() { "true" } else { "false" }
            on:click=move |_| state.reverse()
        >
            <span class="arrows" aria-hidden="true">"⇄"</span>
            <span class="word">{w.reverse()}</span>
        </button>
    }
    .into_any()
}

/// Truck and day as entered, in two lines.
pub(super) fn truck(state: State) -> [String; 2] {
    let w = words();
    let units: Units = state.units.get();
    state.entered.entries.with(|entries| {
        let (truck, day) = (&entries.truck, &entries.day);
        let mass = format::mass(truck.gross_mass_kg, units);
        let retarder = w.retarder(truck.retarder.kind());
        let air = format::entered_temperature(day.air_c, units);
        [format!("{mass} · {retarder}"), format!("{} · {} · {air}", w.surface(day.surface), w.load(day.load))]
    })
}
