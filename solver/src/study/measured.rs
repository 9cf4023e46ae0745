//! What held today: from a steady speed on a known grade to what the retarder really gives.

use crate::limits::{self, Entry};
use crate::motion::Trip;
use crate::truck::{Gear, Stage, Warmth};
use crate::units::{Grade, Metres, MetresPerSecond, RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// Engine speed seen and engine speed of gear and road speed may differ by this share.
/// Assumed: two gauges and a worn tyre.
const GAUGES: f64 = 0.08;

/// Halvings in the search for the factor.
const HALVINGS: usize = 40;

/// What was measured.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Measured {
    /// Engine speed of gear and road speed.
    pub engine_speed: RevPerMin,
    /// Power that held the truck back at engine and propeller shaft, motoring included.
    pub power: Watts,
    /// The same as the truck's data have it.
    pub assumed: Watts,
    /// Factor on the retarder's part that brings the two together, on top of the one in use.
    pub factor: f64,
    /// The scale that the truck would have with it.
    pub scale: f64,
}

/// Why nothing can be told from it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum NotMeasured {
    /// No gear or stage of that number.
    NoSuchStage,
    /// The stage was off, or the truck has no retarder.
    Off,
    /// The grade does not push the truck at that speed.
    NotPushed,
    /// Engine speed and road speed do not fit the gear: the engine would turn this fast.
    GaugesDiffer(RevPerMin),
    /// The factor is out of what a retarder can be off by: gear, grade or mass are not as
    /// entered, or the service brakes helped.
    OutOfReach(f64),
}

/// What a steady speed with gear and stage on a grade at a height says of the retarder, with no
/// service brake and no throttle. Air and mass are those of the trip.
///
/// # Errors
/// [`NotMeasured`] says why it tells nothing.
pub fn measured(
    trip: Trip<'_>,
    gear: u8,
    stage: u8,
    engine_speed: RevPerMin,
    speed: MetresPerSecond,
    grade: Grade,
    height: Metres,
) -> Result<Measured, NotMeasured> {
    let gear = trip.truck.gears().find(|it| it.number() == gear).ok_or(NotMeasured::NoSuchStage)?;
    let stage = trip.truck.stages().find(|it| it.number() == stage).ok_or(NotMeasured::NoSuchStage)?;
    if stage == Stage::OFF {
        return Err(NotMeasured::Off);
    }
    let turning = trip.truck.engine_speed(gear, speed);
    if (turning.0 - engine_speed.0).abs() > GAUGES * turning.0 {
        return Err(NotMeasured::GaugesDiffer(turning));
    }
    let air = trip.air(height);
    let demand = trip.demand(speed, grade, air);
    if demand.0 <= 0.0 {
        return Err(NotMeasured::NotPushed);
    }
    let with = |factor: f64| trip.truck.with_retarding(factor);
    let surplus = |factor: f64| {
        with(factor).holding_force(gear, stage, speed, air.altitude_factor, Warmth::SUSTAINED) - demand
    };
    let (mut low, mut high) = (0.0, 4.0);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if surplus(middle).0 < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    let scale = trip.truck.spec().retarding_scale * high;
    let range = limits::of(Entry::RetardingScale);
    if range.check(scale).is_err() {
        return Err(NotMeasured::OutOfReach(scale));
    }
    let power = |factor: f64| holding_power(&with(factor), gear, stage, speed, turning, air.altitude_factor);
    Ok(Measured { engine_speed: turning, power: power(high), assumed: power(1.0), factor: high, scale })
}

fn holding_power(
    truck: &crate::truck::Truck,
    gear: Gear,
    stage: Stage,
    speed: MetresPerSecond,
    turning: RevPerMin,
    altitude: f64,
) -> Watts {
    let at_engine = truck.retarding_power(stage, turning) * altitude;
    at_engine + truck.shaft_power(gear, stage, speed, Warmth::SUSTAINED)
}
