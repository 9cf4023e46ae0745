//! The day's entries.

use super::choice::labelled_choice;
use super::entry::entry;
use crate::browser;
use crate::entries::Field;
use crate::format;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;

const FIELDS: [Entry; 8] = [
    Entry::SpeedLimit,
    Entry::BrakesAtStart,
    Entry::AirTemperature,
    Entry::Headwind,
    Entry::Reserve,
    Entry::HeatLimit,
    Entry::BrakeCheckStop,
    Entry::Superelevation,
];

/// The day's panel.
pub(super) fn day(state: State) -> AnyView {
    let w = words();
    let now = move || {
        let day = state.entered.entries.with(|entries| entries.day);
        format!("{}, {}", w.surface(day.surface), w.service_brakes(day.service_brakes))
    };
    // The load takes stages away on slippery roads; all else follows from the mass.
    let mass_stays = move || {
        let mass = state.entered.entries.with(|it| it.weighs_as_laden().then_some(it.truck.gross_mass_kg))?;
        let mass = format::mass(mass, state.units.get());
        let go = move |_| browser::go_to("entry-gross_mass");
        Some(view! {
            {w.mass_stays(&mass)}" "
            <a href="#entry-gross_mass" data-testid="to-mass" on:click=go>{w.entry(Entry::GrossMass)}</a>
        })
    };
    view! {
        <details class="card panel" open=browser::is_wide() data-testid="day-panel">
            <summary><h2>{w.day_head()}</h2><span class="now">{now}</span></summary>
            {surface(state)}
            {load(state)}
            <p class="problem" role="status" data-testid="mass-stays">{mass_stays}</p>
            {service_brakes(state)}
            {lead(state)}
            {FIELDS.into_iter().map(|it| entry(state, Field::Number(it))).collect_view()}
            <button type="button" class="button small" data-testid="usual-day" on:click=move |_| state.take_usual_day()>
                {w.usual_day()}
            </button>
        </details>
    }
    .into_any()
}

fn surface(state: State) -> AnyView {
    let w = words();
    let options = Surface::ALL.into_iter().map(|surface| {
        let key = match surface {
            Surface::Dry => "dry",
            Surface::Wet => "wet",
            Surface::Snow => "snow",
            Surface::Ice => "ice",
        };
        (surface, key, w.surface(surface))
    });
    let chosen = move || state.entered.entries.with(|entries| entries.day.surface);
    let choose = move |surface| state.change_day(|day| day.surface = surface);
    labelled_choice(w.surface_label(), "surface", options.collect(), chosen, choose)
}

fn load(state: State) -> AnyView {
    let w = words();
    let options = Load::ALL.into_iter().map(|load| {
        let key = match load {
            Load::Laden => "laden",
            Load::Empty => "empty",
            Load::NoTrailer => "no-trailer",
        };
        (load, key, w.load(load))
    });
    let chosen = move || state.entered.entries.with(|entries| entries.day.load);
    let choose = move |load| state.change_day(|day| day.load = load);
    labelled_choice(w.load_label(), "load", options.collect(), chosen, choose)
}

fn service_brakes(state: State) -> AnyView {
    let w = words();
    let options = vec![
        (ServiceBrakes::InReserve, "reserve", w.service_brakes(ServiceBrakes::InReserve)),
        (ServiceBrakes::MaySnub, "snub", w.service_brakes(ServiceBrakes::MaySnub)),
    ];
    let chosen = move || state.entered.entries.with(|entries| entries.day.service_brakes);
    let choose = move |it| state.change_day(|day| day.service_brakes = it);
    labelled_choice(w.service_brakes_label(), "service-brakes", options, chosen, choose)
}

fn lead(state: State) -> AnyView {
    let w = words();
    let options = Lead::ALL.into_iter().map(|lead| {
        let key = match lead {
            Lead::Usual => "usual",
            Lead::OneGear => "one-gear",
            Lead::Untouched => "untouched",
        };
        (lead, key, w.lead(lead))
    });
    let chosen = move || state.entered.entries.with(|entries| entries.day.lead);
    let choose = move |lead| state.change_day(|day| day.lead = lead);
    let choice = labelled_choice(w.lead_label(), "lead", options.collect(), chosen, choose);
    view! {
        {choice}
        <p class="about" data-testid="lead-hint">{move || w.lead_hint(chosen())}</p>
    }
    .into_any()
}
