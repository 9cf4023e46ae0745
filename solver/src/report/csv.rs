//! The descents as a table for other programs: comma-separated values (RFC 4180), UTF-8.

use crate::constants::MPH;
use crate::plan::{Choice, Descent, Leg, Plan, Proof, Verdict};
use std::fmt::Write;

/// Metres in a mile. Exact.
const MILE: f64 = 1_609.344;

/// One row for each descent in road order, under stable English names with their units. `marker` turns a
/// distance from the start of the road, m, into what a marker or odometer shows there, m. Without a safe
/// speed, gear, stage and speeds are empty. Of several gears they are those of the slowest leg. `legs` has
/// all, each as `gear@km` where the gear is engaged: `7@0.50 4@3.20`.
#[must_use]
pub fn descents(plan: &Plan, marker: &dyn Fn(f64) -> f64) -> String {
    let mut out = String::from(
        "descent,from_km,to_km,from_mile,to_mile,drop_m,mean_percent,steepest_km_percent,sustained_percent,\
         verdict,gear,stage,hold_kmh,hold_mph,engine_rpm,reserve_percent,hottest_after_stop_c,legs\r\n",
    );
    for d in &plan.descents {
        let (from, to) = (marker(d.crest.0), marker(d.foot.0));
        // Writing into a String cannot fail.
        let _ = write!(
            out,
            "{},{:.2},{:.2},{:.2},{:.2},{:.0},{:.1},{:.1},{:.1},{}",
            d.number,
            from / 1e3,
            to / 1e3,
            from / MILE,
            to / MILE,
            d.drop.0,
            d.mean.0 * 100.0,
            d.steepest_km().0 * 100.0,
            d.sustained.grade.0 * 100.0,
            verdict(&d.choice)
        );
        let _ = match &d.choice {
            Choice::Held(a) => write!(
                out,
                ",{},{},{:.0},{:.0},{:.0},{:.0},{:.0},{}\r\n",
                a.gear.number(),
                a.stage.number(),
                whole(a.speed.kmh()),
                whole(a.speed.0 / MPH),
                a.engine_speed.0,
                whole(a.margin * 100.0),
                a.hottest_after_stop.0.ceil(),
                legs(d, marker)
            ),
            Choice::NoSafeSpeed(_) => write!(out, ",,,,,,,,\r\n"),
        };
    }
    out
}

fn legs(descent: &Descent, marker: &dyn Fn(f64) -> f64) -> String {
    let place = |leg: &Leg| leg.change.map_or(descent.crest.0, |change| change.at.0);
    let one = |leg: &Leg| format!("{}@{:.2}", leg.gear.number(), marker(place(leg)) / 1e3);
    descent.legs.iter().map(one).collect::<Vec<_>>().join(" ")
}

/// Rounded down, since a hold speed must not be exceeded. The small addend keeps whole speeds whole.
fn whole(value: f64) -> f64 {
    (value + 1e-6).floor()
}

fn verdict(choice: &Choice) -> &'static str {
    match choice.verdict() {
        Verdict::RetarderHolds => match choice.advice().map(|advice| advice.proof) {
            Some(Proof::OnAverage) => "holds it on the average",
            Some(Proof::Touches) => "holds it and service brakes touch",
            Some(Proof::Holds | Proof::NeedsBrakes) | None => "retarder holds it",
        },
        Verdict::LittleInReserve => "holds little in reserve",
        Verdict::NeedsServiceBrakes => "needs service brakes",
        Verdict::NoSafeSpeed => "no safe speed found",
    }
}
