//! Pulling: which gear, how hard, how fast up a hill.

use super::forces::Trip;
use crate::constants::WALKING_SPEED;
use crate::truck::Gear;
use crate::units::{Grade, Metres, MetresPerSecond, Newtons};

/// The strongest pull at a speed, and the gear that gives it. In first gear below its lowest engine speed the
/// clutch slips, and the pull at the lowest speed of the curve is given. Where the truck is faster than the
/// engine can pull it, the pull is zero in the highest gear.
#[must_use]
pub fn pulling_gear(trip: Trip<'_>, speed: MetresPerSecond) -> (Gear, Newtons) {
    let truck = trip.truck;
    let mut best: Option<(Gear, Newtons)> = None;
    for gear in truck.gears() {
        let pull = truck.pulling_force(gear, speed);
        if best.is_none_or(|(_, strongest)| pull > strongest) {
            best = Some((gear, pull));
        }
    }
    let (gear, pull) = best.unwrap_or_else(|| unreachable!("a truck has at least one gear"));
    if pull.0 > 0.0 {
        return (gear, pull);
    }
    let slipping = pull_in(trip, gear, speed);
    if slipping.0 > 0.0 {
        return (gear, slipping);
    }
    (truck.gears().next_back().unwrap_or(gear), Newtons(0.0))
}

/// The pull of a gear at full load. In the lowest gear, where the wheels turn slower than the engine can, it
/// is the pull of a slipping clutch.
#[must_use]
pub(super) fn pull_in(trip: Trip<'_>, gear: Gear, speed: MetresPerSecond) -> Newtons {
    let pull = trip.truck.pulling_force(gear, speed);
    if pull.0 > 0.0 {
        return pull;
    }
    let first = trip.truck.spec().full_load.first().map_or(0.0, |p| p.engine_speed_rpm);
    let starting = trip.truck.road_speed(gear, crate::units::RevPerMin(first));
    let lowest = trip.truck.gears().next() == Some(gear);
    if lowest && speed < starting { trip.truck.pulling_force(gear, starting * (1.0 + 1e-9)) } else { pull }
}

/// The highest gear that pulls at least `need` at this speed with a useful engine speed, or
/// the strongest gear where none does.
#[must_use]
pub(super) fn cruising_gear(trip: Trip<'_>, speed: MetresPerSecond, need: Newtons) -> Gear {
    let truck = trip.truck;
    let useful = |gear: &Gear| {
        let engine = truck.engine_speed(*gear, speed);
        engine.0 >= truck.spec().lowest_rpm && engine <= truck.governed_speed()
    };
    let enough = |gear: &Gear| truck.pulling_force(*gear, speed) >= need;
    truck
        .gears()
        .rev()
        .find(|gear| useful(gear) && enough(gear))
        .unwrap_or_else(|| pulling_gear(trip, speed).0)
}

/// Steps between walking speed and the limit in the search for the crawl speed.
const CRAWL_STEPS: usize = 400;

/// The highest speed that a gear keeps up a long grade at full load, not above the day's
/// limit, and that gear; `None` where no gear climbs it.
#[must_use]
pub fn crawl(trip: Trip<'_>, grade: Grade, height: Metres) -> Option<(Gear, MetresPerSecond)> {
    let (limit, air) = (trip.top_speed().0, trip.air(height));
    (0..=CRAWL_STEPS).find_map(|k| {
        let speed = MetresPerSecond(limit - (limit - WALKING_SPEED) * (k as f64 / CRAWL_STEPS as f64));
        let need = -trip.demand(speed, grade, air);
        let (_, pull) = pulling_gear(trip, speed);
        (pull >= need).then(|| (cruising_gear(trip, speed, need), speed))
    })
}
