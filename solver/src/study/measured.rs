//! What held today: a steady speed on a known grade tells what the retarder really gives.

use crate::limits::{self, Entry};
use crate::motion::{Trip, crossing};
use crate::truck::{Stage, Truck, Warmth};
use crate::units::{Grade, Metres, MetresPerSecond, RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// Largest difference, as a share, between the engine speed seen and that of gear and road speed. Assumed:
/// two gauges and a worn tyre.
const GAUGES: f64 = 0.08;

/// Largest factor looked for.
const STRONGEST: f64 = 4.0;

/// What a driver saw on a grade, with no service brake and no throttle.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Seen {
    /// Number of the gear.
    pub gear: u8,
    /// Number of the stage.
    pub stage: u8,
    /// Engine speed.
    pub engine_speed: RevPerMin,
    /// Steady speed.
    pub speed: MetresPerSecond,
    /// Grade, negative downhill.
    pub grade: Grade,
    /// Height above the sea.
    pub height: Metres,
}

/// Result of an observation.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Measured {
    /// Engine speed of gear and road speed.
    pub engine_speed: RevPerMin,
    /// Power that held the truck back at engine and propeller shaft, motoring included.
    pub power: Watts,
    /// That power according to the truck's data.
    pub assumed: Watts,
    /// Factor on the retarder's part that makes both equal, on top of the scale in use.
    pub factor: f64,
    /// The truck's scale with this factor.
    pub scale: f64,
}

/// Why the observation tells nothing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum NotMeasured {
    /// No gear or stage of that number.
    NoSuchStage,
    /// The stage was off, or the truck has no retarder.
    Off,
    /// The grade does not push the truck at that speed.
    NotPushed,
    /// Engine speed and road speed do not fit the gear, in which the engine would turn at this speed.
    GaugesDiffer(RevPerMin),
    /// The factor is larger or smaller than a retarder can be off. Gear, grade or mass are not as entered, or
    /// the service brakes helped.
    OutOfReach(f64),
}

/// What a steady speed tells about the retarder. Air and mass are those of the trip.
///
/// # Errors
/// [`NotMeasured`] says why it tells nothing.
pub fn measured(trip: Trip<'_>, seen: Seen) -> Result<Measured, NotMeasured> {
    let Seen { speed, .. } = seen;
    let gear = trip.truck.gears().find(|it| it.number() == seen.gear).ok_or(NotMeasured::NoSuchStage)?;
    let stage = trip.truck.stages().find(|it| it.number() == seen.stage).ok_or(NotMeasured::NoSuchStage)?;
    if stage == Stage::OFF {
        return Err(NotMeasured::Off);
    }
    let turning = trip.truck.engine_speed(gear, speed);
    if (turning.0 - seen.engine_speed.0).abs() > GAUGES * turning.0 {
        return Err(NotMeasured::GaugesDiffer(turning));
    }
    let air = trip.air(seen.height);
    let demand = trip.demand(speed, seen.grade, air);
    if demand.0 <= 0.0 {
        return Err(NotMeasured::NotPushed);
    }
    let with = |factor: f64| trip.truck.with_retarding(factor);
    let surplus = |factor: f64| {
        let truck = with(factor);
        // The retarder may still have been cold, when it gives more than it can sustain. Counting it as cold
        // measures less of it, which is the cautious side.
        (truck.holding_force(gear, stage, speed, air.ambient, Warmth::COLD) - demand).0
    };
    let factor = crossing(surplus, 0.0, STRONGEST);
    let scale = trip.truck.spec().retarding_scale * factor;
    if limits::of(Entry::RetardingScale).check(scale).is_err() {
        return Err(NotMeasured::OutOfReach(scale));
    }
    let power = |truck: &Truck| {
        let at_engine = truck.retarding_power(stage, turning) * air.ambient.altitude_factor;
        at_engine + truck.shaft_power(gear, stage, speed, air.ambient, Warmth::SUSTAINED)
    };
    Ok(Measured {
        engine_speed: turning,
        power: power(&with(factor)),
        assumed: power(trip.truck),
        factor,
        scale,
    })
}
