//! The run along the road: speed, pulling and holding forces, brake heat, and the books of work.
//!
//! Two passes. The backward pass limits the speed at each point to what the road ahead allows, slowing with
//! the retarder and, where that is too little, the service brakes. The forward pass applies gravity, full
//! load and holding force. Steps are the cells of the road, near 10 m.

use super::caps::{bounds, brake_check_stops, entry_caps, hold_ahead, hold_at};
use super::driver::{Driver, Scene};
use super::forces::Trip;
use super::ledger::Ledger;
use super::step::{Hold, Sample, State};
use crate::constants::WALKING_SPEED;
use crate::road::Road;
use crate::truck::Truck;
use crate::units::{Celsius, Grade, MetresPerSecond, Seconds};

/// Distance before a crest at which a driver begins to prepare for the descent, m. Assumed.
const READY_M: f64 = 500.0;

/// The highest speed, m/s, at each grid point of a road that still lets the truck keep what follows: the
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
    /// State at the start; slower than asked where the road ahead demands it.
    pub start: State,
    /// State at the end.
    pub end: State,
    /// The truck was slower than walking speed somewhere: it cannot climb this road.
    pub stalled: bool,
}

impl Run {
    /// Drives the cells `from..to` of a road. `holds` are in road order and do not overlap;
    /// outside them the day's limit caps the speed.
    #[must_use]
    pub fn along(trip: Trip<'_>, road: &Road, from: usize, to: usize, holds: &[Hold], start: State) -> Self {
        Course { trip, road, from, to, holds, then: None }.freely(start, &mut |_| ())
    }

    /// Drives the whole road; `watch` receives the state at the end of each cell.
    #[must_use]
    pub fn watched(
        trip: Trip<'_>,
        road: &Road,
        holds: &[Hold],
        start: State,
        watch: &mut dyn FnMut(&State),
    ) -> Self {
        Course { trip, road, from: 0, to: road.cells(), holds, then: None }.freely(start, watch)
    }

    /// Drives the whole road as a driver who keeps to a card: no point is entered faster than `caps` says,
    /// whatever this truck and this day would allow. See [`caps`].
    #[must_use]
    pub fn by_card(trip: Trip<'_>, road: &Road, caps: &[f64], holds: &[Hold], start: State) -> Self {
        Self::by_card_then(trip, road, caps, holds, start, None)
    }

    /// As [`Run::by_card`], with another truck in its place from a cell on: the same truck after a failure
    /// there.
    #[must_use]
    pub fn by_card_then(
        trip: Trip<'_>,
        road: &Road,
        caps: &[f64],
        holds: &[Hold],
        start: State,
        then: Option<(usize, &Truck)>,
    ) -> Self {
        let course = Course { trip, road, from: 0, to: road.cells(), holds, then };
        course.drive(caps, start, NO_LIMIT, &mut |_| ()).0
    }

    /// As [`Run::along`], or `None` as soon as one hard stop would take the service brakes above `limit`.
    /// `watch` receives the state at the end of each cell.
    #[must_use]
    pub fn within(
        trip: Trip<'_>,
        road: &Road,
        cells: std::ops::Range<usize>,
        holds: &[Hold],
        start: State,
        limit: Celsius,
        watch: &mut dyn FnMut(&State),
    ) -> Option<Self> {
        let course = Course { trip, road, from: cells.start, to: cells.end, holds, then: None };
        let (run, kept) = course.drive(&course.caps(), start, limit, watch);
        kept.then_some(run)
    }

    /// Hottest service brakes on the way.
    #[must_use]
    pub fn hottest(&self) -> Celsius {
        Celsius(self.samples.iter().map(|s| s.hottest.0).fold(f64::NEG_INFINITY, f64::max))
    }

    /// Hottest service brakes after one hard stop at the worst place.
    #[must_use]
    pub fn hottest_after_stop(&self) -> Celsius {
        Celsius(self.samples.iter().map(|s| s.after_stop.0).fold(f64::NEG_INFINITY, f64::max))
    }
}

/// A limit that no brake temperature reaches.
const NO_LIMIT: Celsius = Celsius(f64::INFINITY);

/// What is driven: part of a road, with its holds.
#[derive(Clone, Copy)]
struct Course<'a> {
    trip: Trip<'a>,
    road: &'a Road,
    from: usize,
    to: usize,
    holds: &'a [Hold],
    /// The truck that takes the first one's place, and the cell from which on it does.
    then: Option<(usize, &'a Truck)>,
}

impl Course<'_> {
    fn caps(&self) -> Vec<f64> {
        entry_caps(self.trip, self.road, self.from, self.to, self.holds)
    }

    fn freely(&self, start: State, watch: &mut dyn FnMut(&State)) -> Run {
        self.drive(&self.caps(), start, NO_LIMIT, watch).0
    }

    /// The forward pass, and whether `limit` was kept. The pass ends where it was not.
    fn drive(
        &self,
        caps: &[f64],
        start: State,
        limit: Celsius,
        watch: &mut dyn FnMut(&State),
    ) -> (Run, bool) {
        let Course { trip, road, from, to, holds, then } = *self;
        let bounds = bounds(trip, road, from, to);
        let stops: Vec<usize> = brake_check_stops(trip, road, from, to).collect();
        let ready = (READY_M / road.step_m()) as usize;
        let rest = Seconds(trip.day.brake_check_stop_min * 60.0);
        let speed = MetresPerSecond(start.speed.0.min(caps[0]).max(WALKING_SPEED));
        let start = State { speed, ..start };
        let mut driver = Driver { trip, state: start, ledger: Ledger::EMPTY, stalled: false };
        let mut samples: Vec<Sample> = Vec::with_capacity(to - from);
        let mut kept = true;
        for cell in from..to {
            if let Some((_, truck)) = then.filter(|(at, _)| *at == cell) {
                driver.trip = Trip { truck, ..trip };
            }
            let scene = Scene {
                grade: Grade(road.grades()[cell]),
                air: trip.air_on(road, cell),
                step: road.step_m(),
                hold: hold_at(holds, cell),
                ahead: hold_ahead(holds, cell).filter(|hold| hold.from <= cell + ready),
                cap: caps[cell + 1 - from],
                bound: bounds[cell + 1 - from],
            };
            let sample = if road.assessed()[cell] {
                driver.step(&scene)
            } else {
                driver.pass_unknown(&scene);
                driver.stand_in()
            };
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
        // A truck that stands at the end arrives when the stand is over.
        if let Some(last) = samples.last_mut() {
            last.time = driver.ledger.time;
        }
        let Driver { state: end, ledger, stalled, .. } = driver;
        (Run { samples, ledger, start, end, stalled }, kept)
    }
}
