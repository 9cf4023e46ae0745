//! Gears and speeds, ordered by how much they hold.
//!
//! Work is counted as height: a force F along a way equals F/(m·g) metres of fall for each metre of road. So
//! the hold of a gear at a speed is one number, and so is the demand of a hill.

use crate::constants::SPEED_SLACK;
use crate::motion::{Air, Trip};
use crate::truck::{Gear, Stage};
use crate::units::{Grade, MetresPerSecond};

/// Largest share of the highest allowed engine speed at which a speed is held. The rest is kept for a short
/// steep stretch. Assumed.
pub const HOLD_SHARE: f64 = 0.95;

/// Slowest hold speed tried, km/h. Below it no truck is driven down a public road.
pub(super) const SLOWEST_KMH: f64 = 5.0;

/// The grade on which the grip of the driven axles is taken; grip is 1 % less there than on the level.
const ON_GRADE: Grade = Grade(-0.14);

/// One speed, in the gear that holds most at it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rung {
    pub(super) speed: MetresPerSecond,
    pub(super) gear: Gear,
    /// Fall that is held, resistance of the air included, m for each metre of road.
    pub(super) holds: f64,
    /// Fall that is held with the day's reserve left over.
    pub(super) with_reserve: f64,
    /// The gear's part of the fall held, without the air.
    pub(super) by_gear: f64,
}

/// Speeds that a truck can hold, in the air of one place.
pub(super) struct Ladder<'a> {
    trip: Trip<'a>,
    air: Air,
    stage: Stage,
    /// From fast to slow, in whole km/h. Speeds at which no gear is in its range are left out.
    pub(super) rungs: Vec<Rung>,
}

impl<'a> Ladder<'a> {
    /// A ladder without speeds, with no stage stronger than this one.
    pub(super) fn bare(trip: Trip<'a>, air: Air, stage: Stage) -> Self {
        Self { trip, air, stage, rungs: Vec::new() }
    }

    pub(super) fn of(trip: Trip<'a>, air: Air) -> Self {
        let mut ladder = Self::bare(trip, air, trip.strongest_stage());
        let top = (trip.top_speed().kmh() + 1e-9).floor();
        let mut kmh = top;
        while kmh >= SLOWEST_KMH {
            let speed = MetresPerSecond::from_kmh(kmh);
            ladder.rungs.extend(ladder.strongest(speed));
            kmh -= 1.0;
        }
        ladder
    }

    /// Gears whose range includes a speed, from low to high.
    fn in_range(&self, speed: MetresPerSecond) -> impl DoubleEndedIterator<Item = Gear> + '_ {
        let truck = self.trip.truck;
        let lowest = truck.lowest_engine_speed(self.trip.strongest_stage());
        let highest = truck.highest_engine_speed() * HOLD_SHARE;
        truck.gears().filter(move |gear| {
            truck.is_coupled(*gear) && (lowest..=highest).contains(&truck.engine_speed(*gear, speed))
        })
    }

    fn strongest(&self, speed: MetresPerSecond) -> Option<Rung> {
        let mut best: Option<Rung> = None;
        for gear in self.in_range(speed) {
            let rung = self.rung(gear, speed);
            if best.is_none_or(|best| rung.by_gear > best.by_gear) {
                best = Some(rung);
            }
        }
        best
    }

    fn rung(&self, gear: Gear, speed: MetresPerSecond) -> Rung {
        let here = self.parts(gear, speed);
        let above = self.parts_above(gear, speed, here);
        let least = |reserve: f64| sum(here, reserve).min(sum(above, reserve));
        let by_gear = here.0.min(above.0);
        Rung { speed, gear, holds: least(0.0), with_reserve: least(self.trip.day.reserve), by_gear }
    }

    /// Hold of a gear at a speed or a little above it, whichever is less. A hold that vanishes when the truck
    /// gets a little faster is not counted on.
    pub(super) fn holds(&self, gear: Gear, speed: MetresPerSecond, reserve: f64) -> f64 {
        let here = self.parts(gear, speed);
        sum(here, reserve).min(sum(self.parts_above(gear, speed, here), reserve))
    }

    /// Fall that gear and air hold at a speed, m for each metre of road.
    pub(super) fn held(&self, gear: Gear, speed: MetresPerSecond, reserve: f64) -> f64 {
        sum(self.parts(gear, speed), reserve)
    }

    /// The parts of the hold a little above a speed. Where only there the stage would pass the grip of the
    /// driven axles, it still gives what they grip.
    fn parts_above(&self, gear: Gear, speed: MetresPerSecond, here: (f64, f64)) -> (f64, f64) {
        let (held, air) = self.parts(gear, above(speed));
        let full = self.trip.holding(gear, self.stage, above(speed), self.air);
        let slips = full > self.trip.grip_for_retarding(ON_GRADE) && !self.stage.is_off();
        (if slips { held.max(here.0) } else { held }, air)
    }

    /// The parts of the hold: gear and air.
    fn parts(&self, gear: Gear, speed: MetresPerSecond) -> (f64, f64) {
        let trip = self.trip;
        let ceiling = trip.truck.road_speed(gear, trip.truck.highest_engine_speed());
        // Above the highest engine speed the hold is taken as at that speed.
        let turning = MetresPerSecond(speed.0.min(ceiling.0));
        let force = if self.stage == trip.strongest_stage() {
            trip.retarding(gear, turning, ON_GRADE, self.air)
        } else {
            trip.holding(gear, self.stage, turning, self.air)
        };
        (force / trip.weight(), trip.air_drag(speed, self.air) / trip.weight())
    }

    /// The highest gear at a speed that holds enough, or the one that holds most.
    pub(super) fn highest(&self, rung: &Rung, enough: impl Fn(Gear) -> bool) -> Gear {
        self.in_range(rung.speed).rev().find(|gear| enough(*gear)).unwrap_or(rung.gear)
    }

    pub(super) fn rung_at(&self, speed: MetresPerSecond) -> Option<&Rung> {
        self.rungs.iter().find(|rung| (rung.speed.0 - speed.0).abs() < 1e-6)
    }
}

fn above(speed: MetresPerSecond) -> MetresPerSecond {
    MetresPerSecond(speed.0 + SPEED_SLACK)
}

fn sum((gear, air): (f64, f64), reserve: f64) -> f64 {
    gear / (1.0 + reserve) + air
}
