//! The truck's entries: what changes from load to load first, the rest folded.

use super::choice::labelled_choice;
use super::entry::entry;
use super::part::list;
use super::pick::pick;
use super::trucks::trucks;
use crate::browser;
use crate::chart::power_table;
use crate::entries::{EntryProblem, Field};
use crate::format::shown_as;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::limits::{Entry, Quantity};
use solver::truck::{Preset, RetarderKind, TYRE_SIZES, Transmission, Truck, TyreSize, gear_sets};

/// Behind the mass and the gear sets: what a driver knows of the driveline.
const FAST: [Field; 3] = [Field::Gears, Field::Number(Entry::AxleRatio), Field::Number(Entry::Displacement)];

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
    Field::Number(Entry::ShiftsUpSpeed),
    Field::Number(Entry::LowestEngineSpeed),
    Field::Number(Entry::RetarderPeakSpeed),
    Field::Number(Entry::RetarderCutOut),
    Field::Number(Entry::RetarderExponent),
    Field::Number(Entry::DriveAxleMass),
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
        <details class="card panel" id="truck" open=browser::is_wide() data-testid="truck-panel">
            <summary><h2>{w.truck_head()}</h2><span class="now">{name}</span></summary>
            {presets(state)}
            {entry(state, Field::Number(Entry::GrossMass))}
            {gear_set(state)}
            {FAST.into_iter().map(|field| entry(state, field)).collect_view()}
            {retarder(state)}
            {STRENGTH.into_iter().map(|field| entry(state, field)).collect_view()}
            <p class="problem" role="status" id="truck-problem" tabindex="-1" data-testid="truck-problem">{together}</p>
            {curves(state)}
            <details class="more" data-testid="more-entries">
                <summary>{w.more_entries()}</summary>
                {transmission(state)}
                {tyre(state)}
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

fn presets(state: State) -> AnyView {
    let w = words();
    let name = move |preset: Preset, units| (preset.key().to_owned(), w.preset(preset, units).to_owned());
    let options = Signal::derive(move || Preset::ALL.map(|it| name(it, state.units.get())).to_vec());
    let chosen = Memo::new(move |_| state.entries.with(|entries| entries.preset.clone()).unwrap_or_default());
    let choose = move |key: String| {
        if let Some(preset) = Preset::by_key(&key) {
            state.take_preset(preset);
        }
    };
    pick("entry-preset".to_owned(), w.preset_label(), w.own_truck(), options, chosen.into(), choose)
}

/// Common gear sets; the gears themselves stand below and can be typed.
fn gear_set(state: State) -> AnyView {
    let w = words();
    let sets: [&'static [f64]; 7] = [
        &gear_sets::SIX_CONVERTER,
        &gear_sets::NINE,
        &gear_sets::TEN_OVERDRIVE,
        &gear_sets::TEN_DIRECT,
        &gear_sets::TWELVE,
        &gear_sets::THIRTEEN,
        &gear_sets::EIGHTEEN,
    ];
    let options = Signal::derive(move || {
        let one = |(index, set): (usize, &&[f64])| {
            let top = set.last().copied().unwrap_or(1.0);
            (index.to_string(), w.gear_set(set.len(), top < 0.99))
        };
        sets.iter().enumerate().map(one).collect()
    });
    let chosen = Memo::new(move |_| {
        let at = state.entries.with(|entries| sets.iter().position(|set| entries.truck.gears == *set));
        at.map_or_else(String::new, |at| at.to_string())
    });
    let choose = move |key: String| {
        if let Some(set) = key.parse::<usize>().ok().and_then(|at| sets.get(at)) {
            state.change_truck(|entries| {
                entries.truck.gears = set.to_vec();
                entries.preset = None;
            });
        }
    };
    pick("entry-gear_set".to_owned(), w.gear_set_label(), w.own_gears(), options, chosen.into(), choose)
}

/// Tyre sizes whose rolling radius is printed.
fn tyre(state: State) -> AnyView {
    let w = words();
    let options =
        Signal::derive(move || TYRE_SIZES.map(|it| (it.size.to_owned(), it.size.to_owned())).to_vec());
    let chosen = Memo::new(move |_| {
        let radius = state.entries.with(|entries| entries.truck.rolling_radius_m);
        let same = |it: &&TyreSize| (it.rolling_radius_m() - radius).abs() < 1e-4;
        TYRE_SIZES.iter().find(same).map_or_else(String::new, |it| it.size.to_owned())
    });
    let choose = move |size: String| {
        if let Some(it) = TYRE_SIZES.iter().find(|it| it.size == size) {
            state.change_truck(|entries| {
                entries.truck.set(Entry::RollingRadius, it.rolling_radius_m());
                entries.preset = None;
            });
        }
    };
    pick("entry-tyre".to_owned(), w.tyre_label(), w.own_tyre(), options, chosen.into(), choose)
}

/// Pulling and holding power by engine speed; nothing while the entries do not fit together.
fn curves(state: State) -> impl IntoView {
    let w = words();
    let spec = Memo::new(move |_| state.entries.with(|entries| entries.truck.clone()));
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

fn retarder(state: State) -> AnyView {
    let w = words();
    let options = Signal::derive(move || {
        RetarderKind::ALL.map(|it| (it.key().to_owned(), w.retarder(it).to_owned())).to_vec()
    });
    let chosen =
        Memo::new(move |_| state.entries.with(|entries| entries.truck.retarder.kind().key().to_owned()));
    let choose = move |key: String| {
        if let Some(kind) = RetarderKind::by_key(&key) {
            state.change_truck(|entries| entries.take_retarder(kind));
        }
    };
    pick("entry-retarder".to_owned(), w.retarder_label(), "", options, chosen.into(), choose)
}

fn transmission(state: State) -> AnyView {
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
    labelled_choice(w.transmission_label(), "transmission", options.to_vec(), chosen, choose)
}

fn axle_groups(state: State) -> impl IntoView {
    let w = words();
    let groups = move || {
        let lines = state
            .entries
            .with(|entries| entries.truck.axle_groups.iter().map(|it| w.braked_axles(it)).collect());
        list("axles", "axle-groups", lines)
    };
    view! { <h3>{w.axle_groups()}</h3>{groups} }
}
