//! The profile with the trucks on it, and the clock's buttons.

use super::clock::RATES;
use super::desk::Class;
use super::moment::duration;
use super::ridden::Wanted;
use crate::browser::frame::place_on;
use crate::chart::ride::{Profile, WIDTH};
use crate::words::words;
use leptos::ev::PointerEvent;
use leptos::html::Div;
use leptos::prelude::*;

/// The profile with a mark for the truck of each ride. A press on it goes there.
pub(super) fn profile(class: Class, rides: Memo<Wanted>, height: f64) -> AnyView {
    let state = class.state;
    let c = words();
    let frame = NodeRef::<Div>::new();
    Effect::new(move |_| {
        let ends = rides.with(|it| it.rides().iter().map(|ride| duration(&ride.lanes)).fold(0.0, f64::max));
        class.clock.ends.set(ends);
        class.clock.to(class.clock.time.get_untracked());
    });
    let drawn = Memo::new(move |_| {
        state.shown.worked.with(|it| it.as_ref().map(|it| Profile::new(&it.picture, height)))
    });
    let layer = move || {
        let units = state.units.get();
        let profile = drawn.get()?;
        state.shown.worked.with(|it| it.as_ref().map(|it| profile.draw(&it.picture, units).into_string()))
    };
    let place = move |which: usize| {
        let at = rides.with(|it| it.rides().get(which).and_then(|ride| ride.at(class.clock.time.get())))?;
        let profile = drawn.get()?;
        state.shown.worked.with(|it| it.as_ref().map(|it| profile.point(&it.picture, at.at_m)))
    };
    let mark = move |which: usize| {
        let (x, y) = place(which).unwrap_or((-99.0, -99.0));
        format!("translate({x:.1} {y:.1})")
    };
    // Where two rides begin to differ.
    let parted = Memo::new(move |_| rides.with(Wanted::parted_m));
    let part = move || {
        let (at, profile) = (parted.get()?, drawn.get()?);
        let x = profile.x(at);
        Some(
            view! { <line class="ride-part" data-testid="ride-part" x1=x x2=x y1="4" y2=height - 38.0></line> },
        )
    };
    let go = move |event: PointerEvent| {
        let (Some(element), Some(profile)) = (frame.get_untracked(), drawn.get_untracked()) else { return };
        let (x, _) = place_on(&element, f64::from(event.client_x()), f64::from(event.client_y()));
        let at = profile.distance(x * WIDTH / f64::from(element.client_width()).max(1.0));
        let time = rides.with_untracked(|it| it.rides().first().and_then(|ride| ride.time_at(at)));
        if let Some(time) = time {
            class.clock.to(time);
        }
    };
    view! {
        <div class="ride-profile" node_ref=frame on:pointerup=go data-testid="ride-profile">
            <svg viewBox=format!("0 0 {WIDTH} {height}") role="img" aria-label=c.profile_about()>
                <g aria-hidden="true" inner_html=move || layer().unwrap_or_default()></g>
                {part}
                <path class="ride-mark" data-testid="ride-mark" transform=move || mark(0) d="M0 0L-13 -22H13Z"></path>
                <path class="ride-mark otherwise" transform=move || mark(1) d="M0 0L-13 -22H13Z"></path>
            </svg>
            <p role="status">{move || rides.with(|it| match it {
                Wanted::Waiting => c.driving(),
                Wanted::Cannot => c.no_ride(),
                Wanted::There(_) => "",
            })}</p>
        </div>
    }
    .into_any()
}

/// Start and stop, from the start, slower and faster.
pub(super) fn controls(class: Class) -> AnyView {
    let c = words();
    let clock = class.clock;
    let rate = move || c.rate(RATES[clock.rate.get()]);
    view! {
        <div class="ride-controls">
            <button type="button" data-testid="play" on:click=move |_| clock.press()>
                {move || if clock.goes.get() { c.stop() } else { c.class_start() }}
            </button>
            <button type="button" data-testid="step" on:click=move |_| clock.step(clock.stride())>{c.class_step()}</button>
            <button type="button" data-testid="from-start" on:click=move |_| clock.step(f64::NEG_INFINITY)>{c.anew()}</button>
            <button type="button" aria-label=c.slower() data-testid="slower" on:click=move |_| clock.faster(-1)><span aria-hidden="true">"−"</span></button>
            <output data-testid="rate">{rate}</output>
            <button type="button" aria-label=c.faster() data-testid="faster" on:click=move |_| clock.faster(1)><span aria-hidden="true">"+"</span></button>
        </div>
    }
    .into_any()
}
