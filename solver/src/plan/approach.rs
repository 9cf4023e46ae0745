//! The way to the next crest: the speed and heat that the truck brings to it.

use crate::motion::{BrakeHeat, Run, State, Trip, crawl, pulling_gear};
use crate::road::Road;
use crate::units::{Celsius, Grade, Metres, MetresPerSecond};

/// Stretch before a crest on which a driver slows for it, m. Each candidate is driven from here, so that the
/// heat of slowing down counts. 2 km stop any truck from any speed.
const SLOWING_M: f64 = 2_000.0;

/// Length over which the grade at the start of a road is taken, m.
const FIRST_M: f64 = 200.0;

/// [`SLOWING_M`] in cells of a road.
pub(super) fn slowing_cells(road: &Road) -> usize {
    (SLOWING_M / road.step_m()) as usize
}

/// A truck on its way: its place, speed and warmth.
#[derive(Debug, Clone, Copy)]
pub(super) struct Approach {
    /// Grid index.
    pub(super) at: usize,
    /// State there.
    pub(super) state: State,
}

impl Approach {
    /// At the start of the road.
    pub(super) fn from_start(trip: Trip<'_>, road: &Road) -> Self {
        Self { at: 0, state: Self::start_state(trip, road) }
    }

    /// State at the first point of a road. A road does not begin there: the truck arrives at the speed that
    /// it would keep there, with the brakes as entered.
    pub(super) fn start_state(trip: Trip<'_>, road: &Road) -> State {
        let first = ((FIRST_M / road.step_m()) as usize).clamp(1, road.cells());
        let grade = Grade(road.mean_grade(0, first).max(0.0));
        let height = Metres(road.heights_m()[0]);
        let speed = crawl(trip, grade, height).map_or(MetresPerSecond(0.0), |(_, speed)| speed);
        let brakes = BrakeHeat::uniform(Celsius(trip.day.brakes_at_start_c));
        State::settled(speed, pulling_gear(trip, speed).0, brakes)
    }

    /// Drives on to where slowing for a crest begins. Does nothing where that place is passed already.
    pub(super) fn drive_towards(&mut self, trip: Trip<'_>, road: &Road, crest: usize) {
        let until = crest.saturating_sub(slowing_cells(road));
        if until > self.at {
            self.state = Run::along(trip, road, self.at, until, &[], self.state).end;
            self.at = until;
        }
    }
}
