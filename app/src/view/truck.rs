//! The truck's entries but for its mass: gearbox, engine, retarder, and what it rolls on.

mod axles;
mod lists;

use super::chart::power_table;
use super::entry::entry;
use super::part::list;
use crate::entries::Field;
use crate::format::shown_as;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use lists::{at_engine, gear_set, lever, on_shaft, shape, transmission, tyre};
use solver::limits::{Entry, Quantity};
use solver::truck::Truck;

pub(super) const GEARBOX: [Entry; 5] =
    [Entry::TopGearSpeed, Entry::AxleRatio, Entry::ShiftsUpSpeed, Entry::LockUpGear, Entry::LockUpSpeed];

pub(super) const ENGINE: [Entry; 5] = [
    Entry::Displacement,
    Entry::RatedPower,
    Entry::HighestEngineSpeed,
    Entry::GovernedSpeed,
    Entry::LowestEngineSpeed,
];

pub(super) const RETARDER: [Entry; 13] = [
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
];

pub(super) const ROLLING: [Entry; 7] = [
    Entry::DriveAxleMass,
    Entry::RollingRadius,
    Entry::RollingResistance,
    Entry::DragArea,
    Entry::AxleEfficiency,
    Entry::RolloverThreshold,
    Entry::WheelInertia,
];

fn numbers(state: State, entries: &[Entry]) -> AnyView {
    entries.iter().map(|it| entry(state, Field::Number(*it))).collect_view().into_any()
}

/// Gearbox and axle ratio.
pub(super) fn gearbox(state: State) -> AnyView {
    view! {
        {transmission(state)}
        {gear_set(state)}
        {entry(state, Field::Gears)}
        {numbers(state, &GEARBOX)}
    }
    .into_any()
}

/// The engine, with its curves.
pub(super) fn engine(state: State) -> AnyView {
    view! { {numbers(state, &ENGINE)} {curves(state)} }.into_any()
}

/// The retarder in full.
pub(super) fn retarder(state: State) -> AnyView {
    view! {
        {on_shaft(state)}
        {at_engine(state)}
        {lever(state)}
        {shape(state)}
        {entry(state, Field::Stages)}
        {entry(state, Field::Table)}
        {numbers(state, &RETARDER)}
    }
    .into_any()
}

/// Tyres, axles and brakes, and what else resists.
pub(super) fn rolling(state: State) -> AnyView {
    let w = words();
    let shares = move || {
        let all = state.entered.entries.with(|entries| entries.truck.axle_groups.clone());
        list("axles", "axle-groups", all.iter().map(|it| w.braked_axles(it)).collect())
    };
    view! {
        {tyre(state)}
        {axles::groups(state)}
        {shares}
        {numbers(state, &ROLLING)}
    }
    .into_any()
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
