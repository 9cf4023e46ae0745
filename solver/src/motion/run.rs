//! The run along the road: speed, what pulls and holds, brake heat, and the books of work.
//!
//! Two passes. Backward: no point is entered faster than what follows allows, slowing with
//! the retarder and, where that is too little, the service brakes. Forward: gravity, full
//! load, holding force. Steps are the cells of the road, near 10 m.

use super::caps::{brake_check_stops, entry_caps, hold_ahead, hold_at};
use super::driver::{Driver, Scene};
use super::forces::Trip;
use super::ledger::Ledger;
use super::step::{Hold, Sample, State};
use crate::constants::WALKING_SPEED;
use crate::road::Road;
use crate::units::{Celsius, Grade, MetresPerSecond, Seconds};

/// So far before its crest a driver makes ready for a descent, m. Assumed.
const READY_M: f64 = 500.0;

/// The highest speed, m/s, at each grid point of a road from which what follows can be kept: the
/// backward pass by itself.
#[must_use]
pub fn caps(trip: Trip<'_>, road: &Road, holds: &[Hold]) -> Vec<f64> {
    entry_caps(trip, road, 0, road.cells(), holds)
}

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
        let (run, _) = Self::until(trip, road, from, to, holds, start, Celsius(f64::INFINITY), &mut |_| ());
        run
    }

    /// The whole road, with `watch` told the state at the end of each cell.
    #[must_use]
    pub fn watched(
        trip: Trip<'_>,
        road: &Road,
        holds: &[Hold],
        start: State,
        watch: &mut dyn FnMut(&State),
    ) -> Self {
        let limit = Celsius(f64::INFINITY);
        let (run, _) = Self::until(trip, road, 0, road.cells(), holds, start, limit, watch);
        run
    }

    /// The whole road as a driver takes it who keeps to a card: points are entered no faster than
    /// `caps` has them, whatever this truck and this day would allow. See [`caps`].
    #[must_use]
    pub fn by_card(trip: Trip<'_>, road: &Road, caps: &[f64], holds: &[Hold], start: State) -> Self {
        let limit = Celsius(f64::INFINITY);
        let (run, _) = Self::under(trip, road, (0, road.cells()), caps, holds, start, limit, &mut |_| ());
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
        let (run, kept) = Self::until(trip, road, from, to, holds, start, limit, &mut |_| ());
        kept.then_some(run)
    }

    #[allow(clippy::too_many_arguments, reason = "one run, driven in four ways")]
    fn until(
        trip: Trip<'_>,
        road: &Road,
        from: usize,
        to: usize,
        holds: &[Hold],
        start: State,
        limit: Celsius,
        watch: &mut dyn FnMut(&State),
    ) -> (Self, bool) {
        let caps = entry_caps(trip, road, from, to, holds);
        Self::under(trip, road, (from, to), &caps, holds, start, limit, watch)
    }

    #[allow(clippy::too_many_arguments, reason = "one run, driven in four ways")]
    fn under(
        trip: Trip<'_>,
        road: &Road,
        (from, to): (usize, usize),
        caps: &[f64],
        holds: &[Hold],
        start: State,
        limit: Celsius,
        watch: &mut dyn FnMut(&State),
    ) -> (Self, bool) {
        let stops: Vec<usize> = brake_check_stops(trip, road, from, to).collect();
        let ready = (READY_M / road.step_m()) as usize;
        let rest = Seconds(trip.day.brake_check_stop_min * 60.0);
        let speed = MetresPerSecond(start.speed.0.min(caps[0]).max(WALKING_SPEED));
        let start = State { speed, ..start };
        let mut driver = Driver { trip, state: start, ledger: Ledger::EMPTY, stalled: false };
        let mut samples: Vec<Sample> = Vec::with_capacity(to - from);
        let mut kept = true;
        for cell in from..to {
            if !road.assessed()[cell] {
                samples.push(driver.stand_in());
                watch(&driver.state);
                continue;
            }
            let scene = Scene {
                grade: Grade(road.grades()[cell]),
                air: trip.air_on(road, cell),
                step: road.step_m(),
                hold: hold_at(holds, cell),
                ahead: hold_ahead(holds, cell).filter(|hold| hold.from <= cell + ready),
                cap: caps[cell + 1 - from],
            };
            let sample = driver.step(&scene);
            samples.push(sample);
            if stops.contains(&(cell + 1)) {
                driver.rest(rest);
            }
            watch(&driver.state);
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
