//! The run along the road: speed, what pulls and holds, brake heat, and the books of work.
//!
//! Two passes. Backward: no point is entered faster than what follows allows, slowing with
//! the retarder and, where that is too little, the service brakes. Forward: gravity, full
//! load, holding force. Steps are the cells of the road, near 10 m.

use super::caps::{entry_caps, hold_ahead, hold_at};
use super::driver::{Driver, Scene};
use super::forces::Trip;
use super::ledger::Ledger;
use super::step::{Hold, Sample, State};
use crate::constants::WALKING_SPEED;
use crate::road::Road;
use crate::units::{Celsius, Grade, MetresPerSecond};

/// A run over part of a road.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// One sample a cell.
    pub samples: Vec<Sample>,
    /// The books.
    pub ledger: Ledger,
    /// State at the start: slower than asked where the road must be entered slower.
    pub start: State,
    /// State at the end.
    pub end: State,
    /// Slower than walking speed somewhere: the truck cannot climb this.
    pub stalled: bool,
}

impl Run {
    /// Drives the cells `from..to` of a road. `holds` are in road order and do not overlap;
    /// outside them the day's limit caps the speed.
    #[must_use]
    pub fn along(trip: Trip<'_>, road: &Road, from: usize, to: usize, holds: &[Hold], start: State) -> Self {
        let (run, _) = Self::until(trip, road, from, to, holds, start, Celsius(f64::INFINITY));
        run
    }

    /// The same, or `None` as soon as one hard stop would take the service brakes above `limit`.
    #[must_use]
    pub fn within(
        trip: Trip<'_>,
        road: &Road,
        from: usize,
        to: usize,
        holds: &[Hold],
        start: State,
        limit: Celsius,
    ) -> Option<Self> {
        let (run, kept) = Self::until(trip, road, from, to, holds, start, limit);
        kept.then_some(run)
    }

    fn until(
        trip: Trip<'_>,
        road: &Road,
        from: usize,
        to: usize,
        holds: &[Hold],
        start: State,
        limit: Celsius,
    ) -> (Self, bool) {
        let caps = entry_caps(trip, road, from, to, holds);
        let speed = MetresPerSecond(start.speed.0.min(caps[0]).max(WALKING_SPEED));
        let start = State { speed, ..start };
        let mut driver = Driver { trip, state: start, ledger: Ledger::EMPTY, stalled: false };
        let mut samples: Vec<Sample> = Vec::with_capacity(to - from);
        let mut kept = true;
        for cell in from..to {
            if !road.assessed()[cell] {
                samples.push(driver.stand_in());
                continue;
            }
            let scene = Scene {
                grade: Grade(road.grades()[cell]),
                air: trip.air_on(road, cell),
                step: road.step_m(),
                hold: hold_at(holds, cell),
                ahead: hold_ahead(holds, cell),
                cap: caps[cell + 1 - from],
            };
            let sample = driver.step(&scene);
            samples.push(sample);
            if sample.after_stop > limit {
                kept = false;
                break;
            }
        }
        (Self { samples, ledger: driver.ledger, start, end: driver.state, stalled: driver.stalled }, kept)
    }

    /// Hottest service brakes on the way.
    #[must_use]
    pub fn hottest(&self) -> Celsius {
        Celsius(self.samples.iter().map(|s| s.hottest.0).fold(f64::NEG_INFINITY, f64::max))
    }

    /// Hottest they would be after one hard stop at the worst place.
    #[must_use]
    pub fn hottest_after_stop(&self) -> Celsius {
        Celsius(self.samples.iter().map(|s| s.after_stop.0).fold(f64::NEG_INFINITY, f64::max))
    }
}
