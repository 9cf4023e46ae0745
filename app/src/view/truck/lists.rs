//! What is chosen from a list or by buttons.

use crate::entries::{AtEngine, OnShaft, answers};
use crate::state::State;
use crate::view::choice::helped_choice;
use crate::view::pick::helped_pick;
use crate::words::words;
use leptos::prelude::*;
use solver::limits::bounds;
use solver::truck::{RetarderKind, TYRE_SIZES, Transmission, TyreSize, gear_sets};

/// Common gear sets; the gears themselves stand below and can be typed.
pub(super) fn gear_set(state: State) -> AnyView {
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
        let at =
            state.entered.entries.with(|entries| sets.iter().position(|set| entries.truck.gears == *set));
        at.map_or_else(String::new, |at| at.to_string())
    });
    let choose = move |key: String| {
        if let Some(set) = key.parse::<usize>().ok().and_then(|at| sets.get(at)) {
            state.change_truck(|entries| entries.take_gears(set));
        }
    };
    let texts = [w.gear_set_label(), w.gear_set_hint()];
    helped_pick("entry-gear_set", texts, w.own_gears(), options, chosen.into(), choose)
}

/// Tyre sizes whose rolling radius is printed; those of one radius are one choice, for nothing else is taken
/// of them.
fn sizes_by_radius() -> Vec<(String, String)> {
    let mut found: Vec<(f64, String, String)> = Vec::new();
    for it in TYRE_SIZES {
        let radius = it.rolling_radius_m();
        match found.iter_mut().find(|(known, ..)| (known - radius).abs() < 1e-4) {
            Some((.., sizes)) => *sizes = format!("{sizes}, {}", it.size),
            None => found.push((radius, it.size.to_owned(), it.size.to_owned())),
        }
    }
    found.into_iter().map(|(_, key, sizes)| (key, sizes)).collect()
}

/// The choice of tyres.
pub(super) fn tyre(state: State) -> AnyView {
    let w = words();
    let options = Signal::derive(sizes_by_radius);
    let chosen = Memo::new(move |_| {
        let radius = state.entered.entries.with(|entries| entries.truck.rolling_radius_m);
        let same = |it: &&TyreSize| (it.rolling_radius_m() - radius).abs() < 1e-4;
        TYRE_SIZES.iter().find(same).map_or_else(String::new, |it| it.size.to_owned())
    });
    let choose = move |size: String| {
        if let Some(it) = TYRE_SIZES.iter().find(|it| it.size == size) {
            state.change_truck(|entries| entries.take_tyres(it));
        }
    };
    let texts = [w.tyre_label(), w.tyre_hint()];
    helped_pick("entry-tyre", texts, w.own_tyre(), options, chosen.into(), choose)
}

fn kind(state: State) -> (OnShaft, AtEngine) {
    answers(state.entered.entries.with(|entries| entries.truck.retarder.kind()))
}

fn take(state: State, kind: RetarderKind) {
    state.change_truck(|entries| entries.take_retarder(kind));
}

/// What holds back on the shaft.
pub(super) fn on_shaft(state: State) -> AnyView {
    let w = words();
    let options = Signal::derive(move || {
        OnShaft::ALL.map(|it| (it.key().to_owned(), w.on_shaft(it).to_owned())).to_vec()
    });
    let chosen = Memo::new(move |_| kind(state).0.key().to_owned());
    let choose = move |key: String| {
        if let Some(it) = OnShaft::ALL.into_iter().find(|it| it.key() == key) {
            take(state, it.with(untrack(|| kind(state).1)));
        }
    };
    let texts = [w.retarder_label(), w.on_shaft_hint()];
    helped_pick("entry-retarder", texts, "", options, chosen.into(), choose)
}

/// Whether there is an engine brake as well; not asked where a table says it all.
pub(super) fn at_engine(state: State) -> AnyView {
    let w = words();
    let asked = Memo::new(move |_| !kind(state).0.is_table());
    let options = AtEngine::ALL.map(|it| (it, it.key(), w.at_engine(it)));
    let row = move || {
        let choose = move |it: AtEngine| take(state, untrack(|| kind(state).0).with(it));
        let texts = [w.at_engine_label(), w.at_engine_hint()];
        helped_choice(texts, "engine-brake", options.to_vec(), move || kind(state).1, choose)
    };
    (move || asked.get().then(row)).into_any()
}

/// Positions of the retarder's lever; not asked without one.
pub(super) fn lever(state: State) -> AnyView {
    let w = words();
    let shares = move || state.entered.entries.with(|entries| entries.truck.retarder.shares().to_vec());
    let asked = Memo::new(move |_| !shares().is_empty());
    let options = Signal::derive(move || {
        let all = 1..=bounds::STAGES;
        all.map(|it| (it.to_string(), it.to_string())).collect::<Vec<_>>()
    });
    let chosen = Memo::new(move |_| {
        let shares = shares();
        let positions = shares.len() as f64;
        let even = |(at, share): (usize, &f64)| (share - (at + 1) as f64 / positions).abs() < 5e-3;
        let is_even = shares.iter().enumerate().all(even);
        if is_even { shares.len().to_string() } else { String::new() }
    });
    let row = move || {
        let choose = move |key: String| {
            if let Ok(positions) = key.parse::<u8>() {
                state.change_truck(|entries| entries.take_lever(positions));
            }
        };
        let texts = [w.lever_label(), w.lever_hint()];
        helped_pick("entry-lever", texts, w.own_lever(), options, chosen.into(), choose)
    };
    (move || asked.get().then(row)).into_any()
}

/// The shape of an engine brake's power; not asked without one.
pub(super) fn shape(state: State) -> AnyView {
    let w = words();
    let by_exponent = move || {
        state.entered.entries.with(|entries| Some(entries.truck.retarder.brake()?.curve().exponent.is_some()))
    };
    let asked = Memo::new(move |_| by_exponent().is_some());
    let options = [(false, "declared"), (true, "exponent")].map(|(it, key)| (it, key, w.shape(it)));
    let row = move || {
        let choose = move |it: bool| state.change_truck(|entries| entries.take_shape(it));
        let texts = [w.shape_label(), w.shape_hint()];
        helped_choice(texts, "shape", options.to_vec(), move || by_exponent() == Some(true), choose)
    };
    (move || asked.get().then(row)).into_any()
}

pub(super) fn transmission(state: State) -> AnyView {
    let w = words();
    let all = [
        (Transmission::Manual, "manual"),
        (Transmission::Automated, "automated"),
        (Transmission::CONVERTER, "converter"),
    ];
    let options = all.map(|(it, key)| (key, key, w.transmission(it)));
    let chosen = move || {
        state.entered.entries.with(|entries| match entries.truck.transmission {
            Transmission::Manual => "manual",
            Transmission::Automated => "automated",
            Transmission::TorqueConverter { .. } => "converter",
        })
    };
    let choose = move |key: &'static str| {
        let found = all.into_iter().find(|(_, it)| *it == key);
        if let Some((it, _)) = found.filter(|_| untrack(chosen) != key) {
            state.change_truck(|entries| entries.take_transmission(it));
        }
    };
    let texts = [w.transmission_label(), w.transmission_hint()];
    helped_choice(texts, "transmission", options.to_vec(), chosen, choose)
}
