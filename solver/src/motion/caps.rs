//! The backward pass: how fast each point of a road may be entered.

use super::forces::{Air, Trip};
use super::step::Hold;
use crate::constants::{LEAST_SLOWING, SERVICE_SLOWING, WALKING_SPEED};
use crate::road::{Curve, Place, PlaceKind, Road};
use crate::truck::Gear;
use crate::units::{Grade, MetresPerSecond};

/// The first hold that ends behind a cell: the one that the cell lies in, or the next on the way.
pub(super) fn hold_ahead(holds: &[Hold], cell: usize) -> Option<&Hold> {
    holds.get(holds.partition_point(|hold| hold.to <= cell))
}

/// The hold that a cell lies in.
pub(super) fn hold_at(holds: &[Hold], cell: usize) -> Option<&Hold> {
    hold_ahead(holds, cell).filter(|hold| hold.from <= cell)
}

/// The highest speed at each grid point of `from..=to` that still lets the truck keep what follows.
pub(super) fn entry_caps(trip: Trip<'_>, road: &Road, from: usize, to: usize, holds: &[Hold]) -> Vec<f64> {
    let limit = trip.top_speed().0;
    // No plan holds a speed above the limit. A ride that departs from the plan may.
    let asked = |cell: usize| hold_at(holds, cell).map_or(limit, |hold| hold.speed.0);
    // Crest and foot belong to the descent: its speed is reached at the crest and kept to the foot.
    let mut caps: Vec<f64> = (from..=to)
        .map(|point| asked(point).min(point.checked_sub(1).map_or(f64::INFINITY, asked)))
        .collect();
    for (cap, bound) in caps.iter_mut().zip(bounds(trip, road, from, to)) {
        *cap = cap.min(bound);
    }
    for stop in brake_check_stops(trip, road, from, to) {
        caps[stop - from] = WALKING_SPEED;
    }
    for k in (0..to - from).rev() {
        if caps[k] <= caps[k + 1] {
            continue;
        }
        let cell = from + k;
        let grade = Grade(road.grades()[cell]);
        let air = trip.air_on(road, cell);
        let gear = hold_at(holds, cell).map(|hold| hold.gear);
        let slowing = slowing_without_brakes(trip, MetresPerSecond(caps[k + 1]), gear, grade, air);
        let way = road.step_m() / grade.sin_cos().1;
        let slowing = if slowing < LEAST_SLOWING { SERVICE_SLOWING } else { slowing };
        let allowed = (caps[k + 1] * caps[k + 1] + 2.0 * slowing * way).sqrt();
        caps[k] = caps[k].min(allowed);
    }
    caps
}

/// Speeds that curves and posted limits allow at each grid point of `from..=to`; infinite without one.
pub(super) fn bounds(trip: Trip<'_>, road: &Road, from: usize, to: usize) -> Vec<f64> {
    let mut bounds = vec![f64::INFINITY; to - from + 1];
    let mut lower = |(first, last): (usize, usize), speed: MetresPerSecond| {
        for bound in &mut bounds[first.max(from) - from..=last.min(to) - from] {
            *bound = bound.min(speed.0);
        }
    };
    for (curve, speed) in curves_between(trip, road, from, to) {
        lower((curve.from, curve.to), speed);
    }
    let lower_limits = road.limits().iter().filter(|limit| limit.speed() < trip.top_speed());
    for limit in lower_limits.filter_map(|limit| limit.within(from, to)) {
        lower((limit.from, limit.to), limit.speed());
    }
    bounds
}

/// Grid points behind `from` at which the day asks the truck to stand for a brake check.
pub(super) fn brake_check_stops<'a>(
    trip: Trip<'_>,
    road: &'a Road,
    from: usize,
    to: usize,
) -> impl Iterator<Item = usize> + use<'a> {
    let stands = trip.day.brake_check_stop_min > 0.0;
    let asked = move |place: &&Place| {
        stands && place.kind == PlaceKind::BrakeCheck && place.index > from && place.index <= to
    };
    road.places().iter().filter(asked).map(|place| place.index)
}

/// The curves that reach into `from..=to`, each with the speed at which it may be taken.
pub(crate) fn curves_between<'a>(
    trip: Trip<'a>,
    road: &'a Road,
    from: usize,
    to: usize,
) -> impl Iterator<Item = (&'a Curve, MetresPerSecond)> {
    let first = road.curves().partition_point(|curve| curve.to < from);
    let within = road.curves()[first..].iter().take_while(move |curve| curve.from <= to);
    within.map(move |curve| (curve, trip.curve_speed(curve.radius_m)))
}

/// Deceleration at full stage in the gear of the hold, or in the lowest gear that does not overspeed;
/// negative where the hill is stronger.
fn slowing_without_brakes(
    trip: Trip<'_>,
    speed: MetresPerSecond,
    held_in: Option<Gear>,
    grade: Grade,
    air: Air,
) -> f64 {
    let Some(gear) = held_in.or_else(|| trip.lowest_gear_within(speed, 1.0)) else {
        return 0.0;
    };
    let holding = trip.retarding(gear, speed, grade, air);
    (holding - trip.demand(speed, grade, air)).0 / trip.truck.inertial_mass(gear).0
}
