//! The gauges of a run: a figure each, and a bar with its limit where there is one.

use super::desk::Class;
use super::moment::{Moment, NOTHING};
use crate::words::words;
use leptos::prelude::*;

/// Width of a bar, px of its own.
const BAR: f64 = 100.0;
/// A bar ends so far beyond its limit.
const BEYOND: f64 = 1.15;

/// All gauges of one truck.
pub(super) fn all(class: Class, now: Memo<Option<Moment>>) -> AnyView {
    let c = words();
    let units = move || class.state.units.get();
    let said = move |text: &dyn Fn(&Moment) -> String| {
        now.with(|it| it.as_ref().map_or_else(|| NOTHING.to_owned(), text))
    };
    let highest =
        move || class.state.shown.worked.with(|it| it.as_ref().map_or(0.0, |it| it.truck.highest_rpm));
    let limit = move || class.state.shown.worked.with(|it| it.as_ref().map_or(0.0, |it| it.day.heat_limit_c));
    let engine = Memo::new(move |_| now.get().map_or(f64::NAN, |it| it.engine_speed) / (highest() * BEYOND));
    let heat = Memo::new(move |_| now.get().map_or(f64::NAN, |it| it.temperature) / (limit() * BEYOND));
    let after = Memo::new(move |_| now.get().map_or(f64::NAN, |it| it.after_stop) / (limit() * BEYOND));
    view! {
        <dl class="gauges" data-testid="gauges">
            <div><dt>{c.gauge_speed()}</dt><dd>{move || said(&|it| it.speed_text(units()))}</dd></div>
            <div><dt>{c.gauge_gear()}</dt><dd data-testid="gauge-gear">{move || said(&Moment::gear_text)}</dd></div>
            <div><dt>{c.gauge_stage()}</dt><dd>{move || said(&Moment::stage_text)}</dd></div>
            <div><dt>{c.gauge_engine()}</dt><dd>{move || said(&Moment::engine_speed_text)}</dd>{bar(engine, None)}</div>
            <div><dt>{c.gauge_power()}</dt><dd>{move || said(&|it| it.power_text(units()))}</dd></div>
            <div><dt>{c.gauge_brakes()}</dt><dd data-testid="gauge-brakes">{move || said(&|it| it.temperature_text(units()))}</dd>{bar(heat, Some(after))}</div>
        </dl>
    }
    .into_any()
}

/// A bar with its limit, and where it would be after a hard stop.
fn bar(share: Memo<f64>, after: Option<Memo<f64>>) -> AnyView {
    let width = move |share: f64| if share.is_finite() { (share * BAR).clamp(0.0, BAR) } else { 0.0 };
    let over = move || share.get() * BEYOND > 1.0 || after.is_some_and(|it| it.get() * BEYOND > 1.0);
    view! {
        <svg class="bar" class:over=over viewBox=format!("0 0 {BAR} 10") preserveAspectRatio="none" aria-hidden="true">
            <rect class="bar-ground" width=BAR height="10"></rect>
            {after.map(|after| view! { <rect class="bar-after" width=move || width(after.get()) height="10"></rect> })}
            <rect class="bar-now" width=move || width(share.get()) height="10"></rect>
            <rect class="bar-limit" x=BAR / BEYOND width="1.2" height="10"></rect>
        </svg>
    }
    .into_any()
}
