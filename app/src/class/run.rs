//! The screen of the run: one truck, as planned, with what acts on it.

use super::desk::Class;
use super::moment::{Moment, largest_force};
use super::ridden::{self, Ridden};
use super::{gauges, way};
use crate::format::{self, Units};
use crate::words::words;
use leptos::prelude::*;
use solver::study::Slip;

/// Height of the profile, px of its own.
const PROFILE: f64 = 150.0;
/// The drawing of the truck, px of its own.
const TRUCK: (f64, f64) = (1_200.0, 190.0);
/// Where the wheels of the truck stand, px of the drawing.
const GROUND: f64 = 130.0;
/// The longest arrow, px.
const LONGEST: f64 = 360.0;
/// Arrows shorter than this are not drawn, px.
const SHORTEST: f64 = 3.0;

/// Height of each force's arrow and label, forwards and backwards, px of its own: hill, engine,
/// retarder, service brakes, resistance. On a rise the hill holds back too, and then stands above the
/// others there.
const ROWS: [[f64; 2]; 5] = [[44.0, 12.0], [76.0, 76.0], [44.0, 44.0], [76.0, 76.0], [108.0, 108.0]];

/// The screen of the run.
pub(super) fn view(class: Class) -> AnyView {
    let rides = ridden::wanted(class, &[Slip::Planned]);
    let now = Memo::new(move |_| {
        rides.with(|it| it.rides().first().and_then(|ride| ride.at(class.clock.time.get())))
    });
    view! {
        <section class="run" data-testid="run-screen">
            {way::profile(class, rides, PROFILE)}
            {move || rides.with(|it| it.rides().first().map(|ride| truck(class, ride, now)))}
            {gauges::all(class, now)}
            {way::controls(class)}
        </section>
    }
    .into_any()
}

/// The truck on its slope, what pushes it before it and what holds it back behind it.
fn truck(class: Class, ride: &Ridden, now: Memo<Option<Moment>>) -> AnyView {
    let largest = largest_force(&ride.lanes);
    let units = move || class.state.units.get();
    let slope = move || {
        let it = now.get()?;
        let weight = ride_weight(class);
        // Gravity along the road is weight times the sine.
        let sine = (it.gravity / weight).clamp(-0.3, 0.3);
        sine.is_finite().then(|| sine.asin().to_degrees())
    };
    let turned = move || format!("rotate({:.2} 600 {GROUND})", slope().unwrap_or(0.0));
    let c = words();
    let arrows: Vec<AnyView> = vec![
        arrow("gravity", c.arrow_hill(), ROWS[0], now, largest, units, |it| it.gravity),
        arrow("pulled", c.arrow_engine(), ROWS[1], now, largest, units, |it| it.pulled),
        arrow("held", c.arrow_retarder(), ROWS[2], now, largest, units, |it| -it.held),
        arrow("braked", c.arrow_service(), ROWS[3], now, largest, units, |it| -it.braked),
        arrow("resistance", c.arrow_resistance(), ROWS[4], now, largest, units, |it| -it.resistance),
    ];
    view! {
        <svg class="truck-picture" viewBox=format!("0 0 {} {}", TRUCK.0, TRUCK.1) role="img" aria-label=c.truck_about() data-testid="truck">
            <g transform=turned>
                <line class="truck-road" x1="-60" y1=GROUND x2="1260" y2=GROUND></line>
                <path class="truck-body" d="M512 40H648V112H512Z"></path>
                <path class="truck-body" d="M656 56H684L704 82V112H656Z"></path>
                <path class="truck-glass" d="M672 62H682L696 82H672Z"></path>
                {[532, 560, 588, 664, 692].map(|x| view! { <circle class="truck-wheel" cx=x cy="118" r="12"></circle> })}
                {arrows}
            </g>
        </svg>
    }
    .into_any()
}

fn ride_weight(class: Class) -> f64 {
    let mass =
        class.state.shown.worked.with(|worked| worked.as_ref().map_or(1.0, |it| it.truck.gross_mass_kg));
    mass * solver::constants::GRAVITY
}

/// One force: forwards from the nose where positive, backwards from the tail where negative.
fn arrow(
    key: &'static str,
    name: &'static str,
    rows: [f64; 2],
    now: Memo<Option<Moment>>,
    largest: f64,
    units: impl Fn() -> Units + Copy + Send + Sync + 'static,
    force: fn(&Moment) -> f64,
) -> AnyView {
    let value = move || now.get().map_or(0.0, |it| force(&it));
    let length = move || (value() / largest * LONGEST).clamp(-LONGEST, LONGEST);
    let shown = move || length().abs() >= SHORTEST;
    let y = move || if length() < 0.0 { rows[1] } else { rows[0] };
    let tail = move || if length() < 0.0 { 500.0 } else { 716.0 };
    let shaft = move || format!("M{:.1} {}H{:.1}", tail(), y(), tail() + length());
    let head = move || {
        let tip = tail() + length();
        let back = if length() < 0.0 { 16.0 } else { -16.0 };
        let y = y();
        format!("M{:.1} {:.1}L{tip:.1} {y}L{:.1} {:.1}", tip + back, y - 9.0, tip + back, y + 9.0)
    };
    let anchor = move || if length() < 0.0 { "end" } else { "start" };
    let beside = move || tail() + length() + if length() < 0.0 { -12.0 } else { 12.0 };
    let text = move || format!("{name} {}", format::force(value().abs(), units()));
    view! {
        <g class=format!("arrow arrow-{key}") visibility=move || if shown() { "visible" } else { "hidden" } data-testid=format!("arrow-{key}")>
            <path class="shaft" d=shaft></path>
            <path class="head" d=head></path>
            <text x=beside y=move || y() + 10.0 text-anchor=anchor>{text}</text>
        </g>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::ROWS;

    /// Labels are 30 px high. The engine does not pull while something holds back, and pulls forwards
    /// only; retarder and service brakes hold back only.
    #[test]
    fn forces_that_act_together_stand_apart() {
        let [hill, engine, retarder, brakes, resistance] = ROWS;
        let backwards = [hill[1], retarder[1], brakes[1], resistance[1]];
        let forwards = [hill[0], engine[0], resistance[0]];
        for rows in [&backwards[..], &forwards[..]] {
            for (at, row) in rows.iter().enumerate() {
                assert!(rows[..at].iter().all(|other| (other - row).abs() >= 32.0), "{rows:?}");
            }
        }
    }
}
