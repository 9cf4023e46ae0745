//! The truck's entries: what changes from load to load first, the rest folded.

use super::choice::choice;
use super::entry::entry;
use super::part::list;
use super::trucks::trucks;
use crate::browser;
use crate::entries::Field;
use crate::format::shown_as;
use crate::state::State;
use crate::words::{EntryProblem, words};
use leptos::prelude::*;
use solver::limits::{Entry, Quantity};
use solver::truck::{Preset, RetarderKind, Transmission, Truck};

const FAST: [Field; 3] = [Field::Number(Entry::GrossMass), Field::Gears, Field::Number(Entry::AxleRatio)];

/// Behind the choice of the retarder; a truck has some of them.
const STRENGTH: [Field; 4] = [
    Field::Number(Entry::RetarderPeakPower),
    Field::Number(Entry::ShaftTorque),
    Field::Number(Entry::SustainedPower),
    Field::Table,
];

const REST: [Field; 24] = [
    Field::Stages,
    Field::Number(Entry::ShaftSpeed),
    Field::Number(Entry::ShortPower),
    Field::Number(Entry::ShortTime),
    Field::Number(Entry::SustainedSpeed),
    Field::Number(Entry::HotShare),
    Field::Number(Entry::WarmUpTime),
    Field::Number(Entry::RetarderDelay),
    Field::Number(Entry::RetardingScale),
    Field::Number(Entry::LockUpGear),
    Field::Number(Entry::LockUpSpeed),
    Field::Number(Entry::HighestEngineSpeed),
    Field::Number(Entry::LowestEngineSpeed),
    Field::Number(Entry::RetarderPeakSpeed),
    Field::Number(Entry::RetarderCutOut),
    Field::Number(Entry::RetarderExponent),
    Field::Number(Entry::DriveAxleMass),
    Field::Number(Entry::Displacement),
    Field::Number(Entry::RollingRadius),
    Field::Number(Entry::RollingResistance),
    Field::Number(Entry::DragArea),
    Field::Number(Entry::AxleEfficiency),
    Field::Number(Entry::RolloverThreshold),
    Field::Number(Entry::WheelInertia),
];

/// The truck's panel.
pub(super) fn truck(state: State) -> AnyView {
    let w = words();
    let together = move || {
        let problem = state.entries.with(|entries| entries.problem());
        problem.map(|problem| w.problem(EntryProblem::Truck(problem), "", state.units.get()))
    };
    let name = move || preset_name(state);
    view! {
        <details class="card panel" open=browser::is_wide() data-testid="truck-panel">
            <summary><h2>{w.truck_head()}</h2><span class="now">{name}</span></summary>
            {presets(state)}
            {FAST.into_iter().map(|field| entry(state, field)).collect_view()}
            {retarder(state)}
            {STRENGTH.into_iter().map(|field| entry(state, field)).collect_view()}
            <p class="problem" role="status" data-testid="truck-problem">{together}</p>
            {curves(state)}
            <details class="more" data-testid="more-entries">
                <summary>{w.more_entries()}</summary>
                {transmission(state)}
                {REST.into_iter().map(|field| entry(state, field)).collect_view()}
                {axle_groups(state)}
                <p class="about">{w.assumed_sentence()}</p>
            </details>
            {trucks(state)}
            <p class="about">{w.kept_here()}</p>
        </details>
    }
    .into_any()
}

fn preset_name(state: State) -> &'static str {
    let preset = state.entries.with(|entries| entries.preset.as_deref().and_then(Preset::by_key));
    preset.map_or(words().own_truck(), |preset| words().preset(preset, state.units.get()))
}

fn presets(state: State) -> impl IntoView {
    let w = words();
    let key = Memo::new(move |_| state.entries.with(|entries| entries.preset.clone()).unwrap_or_default());
    let option = move |preset: Preset| {
        view! { <option value=preset.key()>{move || w.preset(preset, state.units.get())}</option> }.into_any()
    };
    let choose = move |event| {
        if let Some(preset) = Preset::by_key(&event_target_value(&event)) {
            state.take_preset(preset);
        }
    };
    view! {
        <div class="entry">
            <label for="entry-preset">{w.preset_label()}</label>
            <select id="entry-preset" data-testid="entry-preset" prop:value=move || key.get() on:change=choose>
                <option value="" disabled>{w.own_truck()}</option>
                {Preset::ALL.into_iter().map(option).collect_view()}
            </select>
        </div>
    }
}

/// Pulling and holding power by engine speed; nothing while the entries do not fit together.
fn curves(state: State) -> impl IntoView {
    let w = words();
    let truck = Memo::new(move |_| state.entries.with(|entries| entries.truck.clone()));
    move || {
        let truck = Truck::new(truck.get()).ok()?;
        let units = state.units.get();
        let drawn = crate::chart::engine(&truck, units);
        let about = w.curves_about(shown_as(Quantity::Power, units).unit);
        Some(view! {
            <figure class="engine" data-testid="engine-curves">
                <svg viewBox="0 0 300 170" role="img" aria-label=w.curves_name() inner_html=drawn></svg>
                <figcaption>{about}</figcaption>
            </figure>
        })
    }
}

fn retarder(state: State) -> impl IntoView {
    let w = words();
    let kind = Memo::new(move |_| state.entries.with(|entries| entries.truck.retarder.kind()));
    let option =
        move |it: RetarderKind| view! { <option value=it.key()>{w.retarder(it)}</option> }.into_any();
    let choose = move |event| {
        if let Some(kind) = RetarderKind::by_key(&event_target_value(&event)) {
            state.change_truck(|entries| entries.take_retarder(kind));
        }
    };
    view! {
        <div class="entry">
            <label for="entry-retarder">{w.retarder_label()}</label>
            <select
                id="entry-retarder"
                data-testid="entry-retarder"
                prop:value=move || kind.get().key()
                on:change=choose
            >
                {RetarderKind::ALL.into_iter().map(option).collect_view()}
            </select>
        </div>
    }
}

fn transmission(state: State) -> impl IntoView {
    let w = words();
    let all = [
        (Transmission::Manual, "manual"),
        (Transmission::Automated, "automated"),
        (Transmission::CONVERTER, "converter"),
    ];
    let options = all.map(|(it, key)| (key, key, w.transmission(it)));
    let chosen = move || {
        state.entries.with(|entries| match entries.truck.transmission {
            Transmission::Manual => "manual",
            Transmission::Automated => "automated",
            Transmission::TorqueConverter { .. } => "converter",
        })
    };
    let choose = move |key: &'static str| {
        let found = all.into_iter().find(|(_, it)| *it == key);
        if let Some((it, _)) = found.filter(|_| chosen() != key) {
            state.change_truck(|entries| entries.take_transmission(it));
        }
    };
    view! {
        <div class="entry">
            <span class="label">{w.transmission_label()}</span>
            {choice(w.transmission_label(), "transmission", options.to_vec(), chosen, choose)}
        </div>
    }
}

fn axle_groups(state: State) -> impl IntoView {
    let w = words();
    let groups = move || {
        let lines = state
            .entries
            .with(|entries| entries.truck.axle_groups.iter().map(|it| w.axle_group(it)).collect());
        list("axles", "axle-groups", lines)
    };
    view! { <h3>{w.axle_groups()}</h3>{groups} }
}
