//! The screen of two rides: as planned, and with one thing otherwise.

use super::moment::Moment;
use super::ridden::{self, Wanted};
use super::{Class, way};
use crate::format;
use crate::words::{class_words, words};
use leptos::prelude::*;
use solver::study::Slip;

/// Height of the profile, px of its own.
const PROFILE: f64 = 150.0;

/// The screen.
pub(super) fn view(class: Class) -> AnyView {
    let c = class_words();
    let body = move || {
        let slip = class.slip.get();
        let rides = ridden::wanted(class, beside(slip));
        view! {
            {way::profile(class, rides, PROFILE)}
            {row(class, rides, 0, c.slip(Slip::Planned))}
            {row(class, rides, 1, c.slip(slip))}
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

/// What is done otherwise.
fn choice(class: Class) -> AnyView {
    let c = class_words();
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
                {c.slip(slip)}
            </button>
        }
    });
    view! { <div class="slips" role="group" aria-label=c.slips()>{options.collect_view()}</div> }.into_any()
}

/// One truck of the two, in a row of figures.
fn row(class: Class, rides: Memo<Wanted>, which: usize, name: &'static str) -> AnyView {
    let (c, w) = (class_words(), words());
    let units = move || class.state.units.get();
    let now: Memo<Option<Moment>> = Memo::new(move |_| {
        rides.with(|it| it.rides().get(which).and_then(|ride| ride.at(class.clock.time.get())))
    });
    let figure =
        move |tell: &dyn Fn(&Moment) -> String| now.with(|it| it.as_ref().map_or("–".to_owned(), tell));
    let temperature = move |celsius: f64| {
        if celsius.is_finite() { format::temperature(celsius, units()) } else { "–".to_owned() }
    };
    let gear = move || figure(&|it| it.gear.map_or("–".to_owned(), |gear| gear.to_string()));
    let stage = move || {
        figure(&|it| {
            it.stage
                .map_or("–".to_owned(), |stage| if stage == 0 { w.table_stage(0) } else { stage.to_string() })
        })
    };
    let speed = move || {
        figure(&|it| {
            if it.speed.is_finite() { format::met_speed(it.speed, units()) } else { "–".to_owned() }
        })
    };
    let brakes = move || figure(&|it| temperature(it.temperature));
    let after = move || figure(&|it| temperature(it.after_stop));
    let limit =
        move || class.state.worked.with(|it| it.as_ref().map_or(f64::INFINITY, |it| it.day.heat_limit_c));
    let over = move || now.with(|it| it.as_ref().is_some_and(|it| it.after_stop > limit()));
    view! {
        <div class="pair-row" class:otherwise=which == 1 data-testid=format!("pair-row-{which}")>
            <h2><svg class="pair-mark" class:otherwise=which == 1 viewBox="-14 -24 28 26" aria-hidden="true"><path class="ride-mark" class:otherwise=which == 1 d="M0 0L-13 -22H13Z"></path></svg>{name}</h2>
            <dl>
                <div><dt>{c.gauge_gear()}</dt><dd>{gear}</dd></div>
                <div><dt>{c.gauge_stage()}</dt><dd>{stage}</dd></div>
                <div><dt>{c.gauge_speed()}</dt><dd>{speed}</dd></div>
                <div><dt>{c.gauge_brakes()}</dt><dd>{brakes}</dd></div>
                <div class:over=over><dt>{c.after_stop()}</dt><dd>{after}</dd></div>
            </dl>
        </div>
    }
    .into_any()
}

/// Where they part; and how it ended, once both are there.
fn end(class: Class, rides: Memo<Wanted>, slip: Slip) -> AnyView {
    let c = class_words();
    let units = move || class.state.units.get();
    let parted = Memo::new(move |_| rides.with(Wanted::parted_m));
    let done = move || class.clock.ends.get() > 0.0 && class.clock.time.get() >= class.clock.ends.get();
    let done = Memo::new(move |_| done());
    let text = move || {
        rides.with(|it| {
            let [right, wrong] = it.rides() else { return Vec::new() };
            if !done.get() {
                let part = parted.get().map_or(c.nowhere_apart().to_owned(), |at| c.they_part(at, units()));
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
