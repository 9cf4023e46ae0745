//! Braked axles: how many in each group, and with which brakes.

use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::limits::bounds;
use solver::truck::{AxleGroup, AxlePlace, BrakeKind};

/// Most steered, and most driven, axles that are offered.
const MOST_IN_FRONT: u8 = 4;

const BRAKES: [(BrakeKind, &str); 2] = [(BrakeKind::Drum, "drum"), (BrakeKind::Disc, "disc")];

/// A row a group; a trailer can be put on where there is none.
pub(super) fn groups(state: State) -> AnyView {
    let w = words();
    let places = Memo::new(move |_| {
        let mut places: Vec<AxlePlace> = state
            .entered
            .entries
            .with(|entries| entries.truck.axle_groups.iter().map(|it| it.place).collect());
        if !places.contains(&AxlePlace::Trailer) && places.len() < bounds::AXLE_GROUPS {
            places.push(AxlePlace::Trailer);
        }
        places
    });
    let rows = move || {
        let row = |(index, place): (usize, AxlePlace)| row(state, index, place);
        places.get().into_iter().enumerate().map(row).collect_view()
    };
    view! {
        <div class="entry axle-rows" role="group" aria-label=w.axle_groups()>
            {rows}
            <p class="about">{w.axles_hint()}</p>
        </div>
    }
    .into_any()
}

fn row(state: State, index: usize, place: AxlePlace) -> AnyView {
    let w = words();
    let group = Memo::new(move |_| {
        state
            .entered
            .entries
            .with(|entries| entries.truck.axle_groups.get(index).map(|it| (it.axles, it.brake)))
    });
    let brake = move || group.get().map_or(BrakeKind::Drum, |(_, brake)| brake);
    let (least, most) = match place {
        AxlePlace::Steer | AxlePlace::Drive => (1, MOST_IN_FRONT),
        AxlePlace::Trailer => (0, bounds::AXLES_OF_GROUP),
    };
    let axles = move || group.get().map_or(0, |(axles, _)| axles);
    let options = move || {
        let option = |it: u8| {
            let text = if it == 0 { w.without_trailer().to_owned() } else { it.to_string() };
            view! { <option value=it.to_string()>{text}</option> }.into_any()
        };
        (least..=most.max(axles())).map(option).collect_view()
    };
    let count = move |event| {
        if let Ok(axles) = event_target_value(&event).parse::<u8>() {
            let as_others =
                state.entered.entries.with_untracked(|entries| entries.truck.axle_groups.last().copied());
            let own = group.get_untracked().map(|(_, brake)| brake);
            let brake = own.or(as_others.map(|it: AxleGroup| it.brake)).unwrap_or(BrakeKind::Drum);
            state.change_truck(|entries| entries.take_axles(index, axles, brake));
        }
    };
    let kind = move |event| {
        let key = event_target_value(&event);
        if let Some((brake, _)) = BRAKES.into_iter().find(|(_, it)| *it == key) {
            let axles = untrack(axles);
            state.change_truck(|entries| entries.take_axles(index, axles, brake));
        }
    };
    let id = format!("axles-{index}");
    let has_some = Memo::new(move |_| axles() > 0);
    let kinds = move || {
        has_some.get().then(|| {
            let option = |(it, key): (BrakeKind, &'static str)| {
                view! { <option value=key>{w.brake(it)}</option> }.into_any()
            };
            let chosen = move || BRAKES.into_iter().find(|(it, _)| *it == brake()).map(|(_, key)| key);
            view! {
                <select data-testid=format!("brakes-{index}") aria-label=w.brakes_of(place) prop:value=chosen on:change=kind>
                    {BRAKES.map(option).into_iter().collect_view()}
                </select>
            }
        })
    };
    view! {
        <div class="axle-row">
            <label for=id.clone()>{w.axles_of(place)}</label>
            <select id=id.clone() data-testid=id prop:value=move || axles().to_string() on:change=count>{options}</select>
            {kinds}
        </div>
    }
    .into_any()
}
