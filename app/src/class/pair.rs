//! The screen of two rides: as planned, and with one thing otherwise.

use super::desk::Class;
use super::moment::{Moment, NOTHING};
use super::ridden::{self, Wanted};
use super::way;
use crate::format;
use crate::words::words;
use leptos::prelude::*;
use solver::study::Slip;

/// Height of the profile, px of its own.
const PROFILE: f64 = 140.0;

/// The screen of two rides.
pub(super) fn view(class: Class) -> AnyView {
    let c = words();
    let body = move || {
        let slip = class.slip.get();
        let rides = ridden::wanted(class, beside(slip));
        let name = |slip: Slip| c.slip(slip, class.state.units.get());
        view! {
            // At the end both trucks are at the end: what it came to takes the place of the road.
            <div class:arrived=move || has_ended(class)>{way::profile(class, rides, PROFILE)}</div>
            {row(class, rides, 0, name(Slip::Planned))}
            {row(class, rides, 1, name(slip))}
            {end(class, rides, slip)}
        }
    };
    view! {
        <section class="pair" data-testid="pair-screen">
            {choice(class)}
            {body}
            {way::controls(class)}
        </section>
    }
    .into_any()
}

/// The plan and a ride beside it.
fn beside(slip: Slip) -> &'static [Slip] {
    match slip {
        Slip::Planned => &[Slip::Planned],
        Slip::GearHigh => &[Slip::Planned, Slip::GearHigh],
        Slip::Heavier => &[Slip::Planned, Slip::Heavier],
        Slip::Faster => &[Slip::Planned, Slip::Faster],
        Slip::StageLost => &[Slip::Planned, Slip::StageLost],
        Slip::HotBrakes => &[Slip::Planned, Slip::HotBrakes],
    }
}

/// The choice of what the second truck does differently.
fn choice(class: Class) -> AnyView {
    let c = words();
    let options = Slip::ALL.into_iter().filter(|slip| *slip != Slip::Planned).map(|slip| {
        view! {
            <button
                type="button"
                data-testid=format!("slip-{slip:?}")
                aria-pressed=move || if class.slip.get() == slip { "true" } else { "false" }
                on:click=move |_| {
                    class.clock.step(f64::NEG_INFINITY);
                    class.slip.set(slip);
                }
            >
                {move || c.slip(slip, class.state.units.get())}
            </button>
        }
    });
    view! { <div class="slips" role="group" aria-label=c.slips()>{options.collect_view()}</div> }.into_any()
}

/// One truck of the two, in a row of figures.
fn row(class: Class, rides: Memo<Wanted>, which: usize, name: String) -> AnyView {
    let c = words();
    let units = move || class.state.units.get();
    let now: Memo<Option<Moment>> = Memo::new(move |_| {
        rides.with(|it| it.rides().get(which).and_then(|ride| ride.at(class.clock.time.get())))
    });
    let said = move |text: &dyn Fn(&Moment) -> String| {
        now.with(|it| it.as_ref().map_or_else(|| NOTHING.to_owned(), text))
    };
    let limit = move || {
        class.state.shown.worked.with(|it| it.as_ref().map_or(f64::INFINITY, |it| it.day.heat_limit_c))
    };
    let over = move || now.with(|it| it.as_ref().is_some_and(|it| it.after_stop > limit()));
    view! {
        <div class="pair-row" class:otherwise=which == 1 data-testid=format!("pair-row-{which}")>
            <h2><svg class="pair-mark" class:otherwise=which == 1 viewBox="-14 -24 28 26" aria-hidden="true"><path class="ride-mark" class:otherwise=which == 1 d="M0 0L-13 -22H13Z"></path></svg>{name}</h2>
            <dl>
                <div><dt>{c.gauge_gear()}</dt><dd>{move || said(&Moment::gear_text)}</dd></div>
                <div><dt>{c.gauge_stage()}</dt><dd>{move || said(&Moment::stage_text)}</dd></div>
                <div><dt>{c.gauge_speed()}</dt><dd>{move || said(&|it| it.speed_text(units()))}</dd></div>
                <div><dt>{c.gauge_brakes()}</dt><dd>{move || said(&|it| it.temperature_text(units()))}</dd></div>
                <div class:over=over><dt>{c.class_after_stop()}</dt><dd>{move || said(&|it| it.after_stop_text(units()))}</dd></div>
            </dl>
        </div>
    }
    .into_any()
}

/// Whether both trucks are at the end.
fn has_ended(class: Class) -> bool {
    let ends = class.clock.ends.get();
    ends > 0.0 && class.clock.time.get() >= ends
}

/// Where the two rides begin to differ, and how they ended once both trucks are at the end.
fn end(class: Class, rides: Memo<Wanted>, slip: Slip) -> AnyView {
    let c = words();
    let units = move || class.state.units.get();
    let parted = Memo::new(move |_| rides.with(Wanted::parted_m));
    let done = Memo::new(move |_| has_ended(class));
    let text = move || {
        rides.with(|it| {
            let [right, wrong] = it.rides() else { return Vec::new() };
            if !done.get() {
                let part = parted
                    .get()
                    .map_or(c.nowhere_apart().to_owned(), |at| c.they_part(&format::place(at, units())));
                return vec![part];
            }
            c.pair_end(&right.end, &wrong.end, slip, units())
        })
    };
    view! {
        <div class="pair-end" role="status" data-testid="pair-end">
            {move || text().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
        </div>
    }
    .into_any()
}
