//! The truck's form: what stands on plates, then what its driver knows; the rest is assumed and folded.

mod axles;
mod lists;

use super::chart::power_table;
use super::entry::entry;
use super::part::list;
use super::trucks::trucks;
use crate::browser;
use crate::entries::{EntryProblem, Field};
use crate::format::shown_as;
use crate::state::State;
use crate::words::words;
use leptos::ev::Event;
use leptos::prelude::*;
use lists::{at_engine, gear_set, lever, on_shaft, presets, shape, transmission, tyre};
use solver::limits::{Entry, Quantity};
use solver::truck::{Preset, Truck};

/// On plates and in papers.
const ENGINE: [Entry; 2] = [Entry::Displacement, Entry::RatedPower];

/// In the driver's head, behind the lists.
const SPEEDS: [Entry; 2] = [Entry::HighestEngineSpeed, Entry::GovernedSpeed];

/// The entries that are in sight when the panel is open.
const IN_SIGHT: [Entry; 6] = [
    Entry::GrossMass,
    Entry::Displacement,
    Entry::RatedPower,
    Entry::TopGearSpeed,
    Entry::HighestEngineSpeed,
    Entry::GovernedSpeed,
];

/// Folded away; a truck has some of them.
const REST: [Entry; 26] = [
    Entry::RetarderPeakPower,
    Entry::RetarderPeakSpeed,
    Entry::RetarderExponent,
    Entry::RetarderCutOut,
    Entry::RetarderDelay,
    Entry::ShaftTorque,
    Entry::ShaftSpeed,
    Entry::ShortPower,
    Entry::ShortTime,
    Entry::SustainedPower,
    Entry::SustainedSpeed,
    Entry::HotShare,
    Entry::WarmUpTime,
    Entry::RetardingScale,
    Entry::LockUpGear,
    Entry::LockUpSpeed,
    Entry::ShiftsUpSpeed,
    Entry::LowestEngineSpeed,
    Entry::AxleRatio,
    Entry::DriveAxleMass,
    Entry::RollingRadius,
    Entry::RollingResistance,
    Entry::DragArea,
    Entry::AxleEfficiency,
    Entry::RolloverThreshold,
    Entry::WheelInertia,
];

/// The truck's panel.
pub(super) fn truck(state: State) -> AnyView {
    let w = words();
    let together = move || {
        let problem = state.entered.entries.with(|entries| entries.problem());
        problem.map(|problem| w.problem(EntryProblem::Truck(problem), "", state.units.get()))
    };
    let name = move || preset_name(state);
    let open = browser::is_wide();
    state.show_worths("truck", &IN_SIGHT, open);
    let toggled = move |event: Event| state.show_worths("truck", &IN_SIGHT, browser::is_open(&event));
    view! {
        <details class="card panel" id="truck" open=open data-testid="truck-panel" on:toggle=toggled>
            <summary><h2>{w.truck_head()}</h2><span class="now">{name}</span></summary>
            {presets(state)}
            <h3>{w.on_plate()}</h3>
            {number(state, Entry::GrossMass)}
            {axles::groups(state)}
            {tyre(state)}
            {ENGINE.map(|it| number(state, it)).into_iter().collect_view()}
            <h3>{w.in_head()}</h3>
            {transmission(state)}
            {gear_set(state)}
            {number(state, Entry::TopGearSpeed)}
            {on_shaft(state)}
            {at_engine(state)}
            {lever(state)}
            {SPEEDS.map(|it| number(state, it)).into_iter().collect_view()}
            <p class="problem" role="status" id="truck-problem" tabindex="-1" data-testid="truck-problem">{together}</p>
            {curves(state)}
            {rest(state)}
            {trucks(state)}
            <p class="about">{w.kept_here()}</p>
        </details>
    }
    .into_any()
}

fn number(state: State, it: Entry) -> AnyView {
    entry(state, Field::Number(it))
}

/// What is assumed until somebody enters it.
fn rest(state: State) -> AnyView {
    let w = words();
    let toggled = move |event: Event| state.show_worths("rest", &REST, browser::is_open(&event));
    let shares = move || {
        let all = state.entered.entries.with(|entries| entries.truck.axle_groups.clone());
        list("axles", "axle-groups", all.iter().map(|it| w.braked_axles(it)).collect())
    };
    view! {
        <details class="more" data-testid="more-entries" on:toggle=toggled>
            <summary>{w.more_entries()}</summary>
            <p class="about">{w.rest_sentence()}</p>
            {entry(state, Field::Gears)}
            {entry(state, Field::Table)}
            {entry(state, Field::Stages)}
            {shape(state)}
            {REST.map(|it| number(state, it)).into_iter().collect_view()}
            <h3>{w.axle_groups()}</h3>
            {shares}
            <p class="about">{w.assumed_sentence()}</p>
        </details>
    }
    .into_any()
}

fn preset_name(state: State) -> &'static str {
    let preset = state.entered.entries.with(|entries| entries.preset.as_deref().and_then(Preset::by_key));
    preset.map_or(words().own_truck(), |preset| words().preset(preset, state.units.get()))
}

/// Pulling and holding power by engine speed; nothing while the entries do not fit together.
fn curves(state: State) -> impl IntoView {
    let w = words();
    let spec = Memo::new(move |_| state.entered.entries.with(|entries| entries.truck.clone()));
    let truck = move || {
        let units = state.units.get();
        Some((Truck::new(spec.get()).ok()?, units, shown_as(Quantity::Power, units).unit))
    };
    let figure = move || {
        let (truck, units, unit) = truck()?;
        let drawn = crate::chart::engine(&truck, units);
        let about = w.curves_about(unit);
        Some(view! {
            <figure class="engine" data-testid="engine-curves">
                <svg viewBox="0 0 300 170" role="img" aria-label=w.curves_name() inner_html=drawn></svg>
                <figcaption>{about}</figcaption>
            </figure>
        })
    };
    view! { {figure} {power_table(Box::new(truck))} }
}
