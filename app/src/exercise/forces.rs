//! The forces of an exercise, figure by figure.

use solver::motion::{Air, Trip};
use solver::truck::{Gear, Stage};
use solver::units::{Grade, Kilograms, Metres, MetresPerSecond, Newtons, RevPerMin};

/// A truck on a grade in still or moving air: what is given for every force.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hill {
    /// Gross mass.
    pub mass: Kilograms,
    /// Grade, negative.
    pub grade: Grade,
    /// Rolling resistance coefficient.
    pub rolling: f64,
    /// Drag area, m².
    pub drag_area_m2: f64,
    /// The air there.
    pub air: Air,
    /// Headwind; a tailwind is negative.
    pub headwind: MetresPerSecond,
}

impl Hill {
    pub(super) fn of(trip: Trip<'_>, grade: Grade, height: Metres) -> Self {
        let spec = trip.truck.spec();
        Self {
            mass: trip.truck.mass(),
            grade,
            rolling: spec.rolling_resistance,
            drag_area_m2: spec.drag_area_m2,
            air: trip.air(height),
            headwind: trip.day.headwind(),
        }
    }
}

/// What pushes and resists at one speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Forces {
    /// Speed against the air.
    pub against: MetresPerSecond,
    /// Gravity along the road, positive downhill.
    pub gravity: Newtons,
    /// Rolling resistance.
    pub rolling: Newtons,
    /// Air resistance; negative in a tailwind faster than the truck.
    pub air: Newtons,
    /// What is left to hold back: gravity less rolling less air.
    pub demand: Newtons,
}

impl Forces {
    pub(super) fn at(trip: Trip<'_>, hill: &Hill, speed: MetresPerSecond) -> Self {
        Self {
            against: speed + hill.headwind,
            gravity: trip.gravity(hill.grade),
            rolling: trip.rolling(hill.grade),
            air: trip.air_drag(speed, hill.air),
            demand: trip.demand(speed, hill.grade, hill.air),
        }
    }
}

/// What a gear and stage hold at one speed, against the forces there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    /// Road speed.
    pub speed: MetresPerSecond,
    /// Engine speed.
    pub engine_speed: RevPerMin,
    /// Holding force that lasts.
    pub holding: Newtons,
    /// The forces.
    pub forces: Forces,
}

impl Held {
    pub(super) fn at(trip: Trip<'_>, hill: &Hill, gear: Gear, stage: Stage, speed: MetresPerSecond) -> Self {
        Self {
            speed,
            engine_speed: trip.truck.engine_speed(gear, speed),
            holding: trip.holding(gear, stage, speed, hill.air),
            forces: Forces::at(trip, hill, speed),
        }
    }

    /// Holding force less demand.
    #[must_use]
    pub fn surplus(&self) -> Newtons {
        self.holding - self.forces.demand
    }

    /// Holding force over demand, less 1.
    #[must_use]
    pub fn reserve(&self) -> f64 {
        self.holding / self.forces.demand - 1.0
    }
}
