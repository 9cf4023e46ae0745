//! Candidates: which speeds and gears are tried, and what a gear has to spare.

use crate::constants::SPEED_SLACK;
use crate::motion::{Air, Trip};
use crate::truck::{Gear, Stage};
use crate::units::{Grade, MetresPerSecond};

/// Share of the highest allowed engine speed at which a speed is held: the rest is kept for a
/// short steep stretch. Assumed.
pub const HOLD_SHARE: f64 = 0.95;

/// Step of the hold speeds tried, km/h.
const SPEED_STEP_KMH: f64 = 1.0;

/// Slowest hold speed tried, km/h. Slower than this no truck is driven down a public road.
pub(super) const SLOWEST_KMH: f64 = 5.0;

/// Hold speeds from fast to slow: whole km/h at or below the top speed.
pub(super) fn speeds(trip: Trip<'_>) -> impl Iterator<Item = MetresPerSecond> {
    let top = (trip.top_speed().kmh() / SPEED_STEP_KMH + 1e-9).floor();
    let steps = (top - SLOWEST_KMH / SPEED_STEP_KMH).max(0.0) as usize;
    (0..=steps).map(move |k| MetresPerSecond::from_kmh((top - k as f64) * SPEED_STEP_KMH))
}

/// Holding force over demand, less 1; infinite where the grade does not push. On snow and ice what is held
/// a little above the speed counts where it is less: there the engine turns faster, and motoring alone may
/// be more than the driven axles grip.
pub(super) fn margin(trip: Trip<'_>, gear: Gear, speed: MetresPerSecond, grade: Grade, air: Air) -> f64 {
    let demand = trip.demand(speed, grade, air).0;
    if demand <= 0.0 {
        return f64::INFINITY;
    }
    let held = |speed| trip.retarding(gear, speed, grade, air).0;
    let least = if trip.day.retarding_share() > 0.0 {
        held(speed)
    } else {
        let ceiling = trip.truck.road_speed(gear, trip.truck.highest_engine_speed()).0;
        held(speed).min(held(MetresPerSecond((speed.0 + SPEED_SLACK).min(ceiling).max(speed.0))))
    };
    least / demand - 1.0
}

/// Share of the lowest useful engine speed at which the engine still turns over: a curve slower
/// than that asks for another gear, and gears are not changed on a descent. Assumed.
const STILL_TURNS: f64 = 0.60;

/// Whether the engine still turns over in this gear at a speed.
pub(super) fn turns_over(trip: Trip<'_>, gear: Gear, speed: MetresPerSecond) -> bool {
    let lowest = trip.truck.lowest_engine_speed(Stage::OFF) * STILL_TURNS;
    trip.truck.engine_speed(gear, speed) >= lowest
}

/// A speed that must be held on a grade.
#[derive(Clone, Copy)]
pub(super) struct Point {
    pub(super) speed: MetresPerSecond,
    pub(super) grade: Grade,
}

/// The point at which a gear has least to spare, and that margin.
pub(super) fn least_margin(trip: Trip<'_>, gear: Gear, points: &[Point], air: Air) -> (Point, f64) {
    let mut least = (points[0], f64::INFINITY);
    for point in points {
        let margin = margin(trip, gear, point.speed, point.grade, air);
        if margin < least.1 {
            least = (*point, margin);
        }
    }
    least
}

/// The highest gear whose margin is at least `wanted` at each of the points, the first of which is
/// the hold speed: there the engine must be in its range; in a curve at `slowest` it must turn over.
/// With the gear comes the point at which it has least to spare.
pub(super) fn best_gear(
    trip: Trip<'_>,
    points: &[Point],
    air: Air,
    wanted: f64,
    slowest: MetresPerSecond,
) -> Option<(Gear, Point, f64)> {
    let speed = points[0].speed;
    let lowest = trip.truck.lowest_engine_speed(trip.strongest_stage());
    let highest = trip.truck.highest_engine_speed() * HOLD_SHARE;
    trip.truck
        .gears()
        .rev()
        .filter(|gear| (lowest..=highest).contains(&trip.truck.engine_speed(*gear, speed)))
        .filter(|gear| turns_over(trip, *gear, slowest))
        .map(|gear| {
            let (at, margin) = least_margin(trip, gear, points, air);
            (gear, at, margin)
        })
        .find(|(_, _, margin)| *margin >= wanted)
}

/// The largest margin at any speed and gear tried; `None` where no gear is in its range.
pub(super) fn best_reserve(trip: Trip<'_>, grade: Grade, air: Air) -> Option<f64> {
    let at = |speed| best_gear_of_all(trip, speed, grade, air);
    speeds(trip).filter_map(at).max_by(f64::total_cmp)
}

fn best_gear_of_all(trip: Trip<'_>, speed: MetresPerSecond, grade: Grade, air: Air) -> Option<f64> {
    let gear = trip.lowest_gear_within(speed, HOLD_SHARE)?;
    let lowest = trip.truck.lowest_engine_speed(trip.strongest_stage());
    (trip.truck.engine_speed(gear, speed) >= lowest).then(|| margin(trip, gear, speed, grade, air))
}

/// Gear and speed at which the retarder alone holds a grade with the reserve asked for, heat
/// left aside; `None` where it never does.
pub(super) fn held_by_margin(trip: Trip<'_>, grade: Grade, air: Air) -> Option<(Gear, MetresPerSecond)> {
    speeds(trip).find_map(|speed| {
        let found = best_gear(trip, &[Point { speed, grade }], air, trip.day.reserve, speed);
        found.map(|(gear, _, _)| (gear, speed))
    })
}
