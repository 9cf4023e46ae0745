//! What a driver is asked first.

use super::silhouette::{Body, drawing};
use crate::browser;
use crate::entries::InShort;
use crate::format::{self, Units};
use crate::state::State;
use crate::view::choice::choice;
use crate::view::day;
use crate::view::entry::gross_mass;
use crate::words::words;
use leptos::prelude::*;
use solver::truck::{AxleGroup, Preset, TruckSpec};

/// Most trucks of one's own that have a tile; all of them stand in their row.
const MOST_TILES: usize = 7;

/// All questions.
pub(super) fn questions(state: State) -> AnyView {
    let w = words();
    view! {
        <section class="driver-question">
            <h3>{w.which_truck()}</h3>
            {tiles(state)}
            {mine(state)}
        </section>
        <section class="driver-question heavy">
            <h3>{w.how_heavy()}</h3>
            {gross_mass(state, day::load(state))}
            {day::mass_stays(state)}
        </section>
        <section class="driver-question">
            <h3>{w.which_retarder()}</h3>
            {retarder(state)}
        </section>
        <div class="side-by-side">
            <section class="driver-question">
                <h3>{w.what_surface()}</h3>
                {day::surface(state)}
            </section>
            <section class="driver-question">
                <h3>{w.service_brakes_label()}</h3>
                {day::service_brakes(state)}
            </section>
        </div>
    }
    .into_any()
}

fn tiles(state: State) -> AnyView {
    let w = words();
    let presets = Preset::ALL.map(|preset| {
        let pressed =
            move || state.entered.entries.with(|entries| entries.preset.as_deref() == Some(preset.key()));
        let spec = preset.spec();
        tile(
            state,
            format!("preset-{}", preset.key()),
            w.truck_type(preset).to_owned(),
            Box::new(move |units| w.preset(preset, units).to_owned()),
            spec.gross_mass_kg,
            drawing(&spec.axle_groups, Body::of_preset(preset)),
            Box::new(pressed),
            Box::new(move || state.take_preset(preset)),
        )
    });
    let own = move || {
        let kept = state
            .entered
            .trucks
            .with(|trucks| trucks.kept.iter().take(MOST_TILES).cloned().collect::<Vec<_>>());
        kept.into_iter().map(|truck| own_tile(state, truck)).collect_view()
    };
    let go = move |_| browser::go_to("own-trucks");
    view! {
        <div class="tiles" role="group" aria-label=w.which_truck() data-testid="entry-preset">
            {presets.into_iter().collect_view()}
            {own}
            <button type="button" class="tile" data-testid="my-trucks" on:click=go>
                <svg viewBox="0 0 92 36" aria-hidden="true"><path class="plus" d="M46 10v16M38 18h16"></path></svg>
                <span>{w.my_trucks()}</span>
            </button>
        </div>
    }
    .into_any()
}

fn own_tile(state: State, truck: TruckSpec) -> AnyView {
    let groups: &[AxleGroup] = &truck.axle_groups;
    let picture = drawing(groups, Body::of_groups(groups));
    let (name, mass, other) = (truck.name.clone(), truck.gross_mass_kg, truck.clone());
    let pressed = move || state.entered.entries.with(|entries| entries.truck == other);
    let take = move || state.take_own_truck(truck.clone());
    let in_full = name.clone();
    let in_full = Box::new(move |_| in_full.clone());
    tile(state, "own-tile".to_owned(), name, in_full, mass, picture, Box::new(pressed), Box::new(take))
}

#[allow(clippy::too_many_arguments, reason = "two callers, each with all of them")]
fn tile(
    state: State,
    testid: String,
    name: String,
    in_full: Box<dyn Fn(Units) -> String + Send + Sync>,
    mass_kg: f64,
    picture: String,
    pressed: Box<dyn Fn() -> bool + Send + Sync>,
    take: Box<dyn Fn()>,
) -> AnyView {
    view! {
        <button
            type="button"
            class="tile"
            title=move || in_full(state.units.get())
            data-testid=testid
            aria-pressed=move || if pressed() { "true" } else { "false" }
            on:click=move |_| take()
        >
            <svg viewBox="0 0 92 36" aria-hidden="true" inner_html=picture></svg>
            <span class="name">{name}", "<span class="weighs">{move || format::mass(mass_kg, state.units.get())}</span></span>
        </button>
    }
    .into_any()
}

/// While nobody said whose truck this is: that it is an example, and the button that says so.
fn mine(state: State) -> AnyView {
    let w = words();
    let asked = Memo::new(move |_| state.asks_for_truck());
    let line = move || {
        asked.get().then(|| {
            view! {
                <p class="not-yours" data-testid="is-it-yours">
                    <strong>{w.example_truck()}</strong>" "
                    <button type="button" class="button small" data-testid="this-is-mine" on:click=move |_| state.confirm_truck()>
                        {w.this_is_mine()}
                    </button>
                </p>
            }
        })
    };
    line.into_any()
}

fn retarder(state: State) -> AnyView {
    let w = words();
    let kind = move || state.entered.entries.with(|entries| entries.truck.retarder.kind());
    let options = InShort::ALL.into_iter().zip(w.retarder_answers());
    let options = options.map(|(it, text)| (Some(it), it.key(), text)).collect();
    let take = move |it: Option<InShort>| {
        let Some(it) = it else { return };
        let now = untrack(kind);
        state.change_truck(|entries| entries.take_retarder(it.kind(now)));
    };
    // Of two together, and of a table, the buttons do not tell which.
    let more = Memo::new(move |_| matches!(InShort::of(kind()), None | Some(InShort::Both)));
    let which = move || {
        more.get().then(|| {
            view! {
                <p class="which-two" data-testid="which-two">
                    {move || w.retarder(kind())}" "
                    <button type="button" class="button small" on:click=move |_| browser::go_to("entry-retarder")>
                        {w.retarder_change()}
                    </button>
                </p>
            }
        })
    };
    view! {
        <div class="apart">{choice(w.which_retarder(), "retarder", options, move || InShort::of(kind()), take)}</div>
        {which}
    }
    .into_any()
}
