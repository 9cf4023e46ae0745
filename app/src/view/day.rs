//! The day's entries.

use super::choice::{choice, labelled_choice};
use super::entry::entry;
use crate::browser;
use crate::entries::Field;
use crate::format;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;

/// Its numbers.
pub(super) const FIELDS: [Entry; 8] = [
    Entry::SpeedLimit,
    Entry::BrakesAtStart,
    Entry::AirTemperature,
    Entry::Headwind,
    Entry::Reserve,
    Entry::HeatLimit,
    Entry::BrakeCheckStop,
    Entry::Superelevation,
];

/// What is seldom entered: which way down leads, and the numbers.
pub(super) fn rest(state: State) -> AnyView {
    view! {
        {lead(state)}
        {FIELDS.into_iter().map(|it| entry(state, Field::Number(it))).collect_view()}
    }
    .into_any()
}

/// That the mass is still that of a loaded truck: the load takes stages away on slippery roads, all else
/// follows from the mass.
pub(super) fn mass_stays(state: State) -> AnyView {
    let w = words();
    let told = move || {
        let mass = state.entered.entries.with(|it| it.weighs_as_laden().then_some(it.truck.gross_mass_kg))?;
        let mass = format::mass(mass, state.units.get());
        let go = move |_| browser::go_to("entry-gross_mass");
        Some(view! {
            {w.mass_stays(&mass)}" "
            <button type="button" class="link" data-testid="to-mass" on:click=go>{w.entry(Entry::GrossMass)}</button>
        })
    };
    view! { <p class="problem" role="status" data-testid="mass-stays">{told}</p> }.into_any()
}

/// The surface.
pub(super) fn surface(state: State) -> AnyView {
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
    choice(w.what_surface(), "surface", options.collect(), chosen, choose)
}

/// What is loaded.
pub(super) fn load(state: State) -> AnyView {
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
    choice(w.load_label(), "load", options.collect(), chosen, choose)
}

/// What the service brakes may do.
pub(super) fn service_brakes(state: State) -> AnyView {
    let w = words();
    let options = vec![
        (ServiceBrakes::InReserve, "reserve", w.service_brakes(ServiceBrakes::InReserve)),
        (ServiceBrakes::MaySnub, "snub", w.service_brakes(ServiceBrakes::MaySnub)),
    ];
    let chosen = move || state.entered.entries.with(|entries| entries.day.service_brakes);
    let choose = move |it| state.change_day(|day| day.service_brakes = it);
    choice(w.service_brakes_label(), "service-brakes", options, chosen, choose)
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
