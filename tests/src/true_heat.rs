//! The truth about the service brakes: their work on a road as it was built, driven as told.

use crate::free_run::{Grip, Told, held};
use crate::generate::Alignment;
use solver::motion::{BrakeHeat, Trip};
use solver::plan::Snub;
use solver::truck::Warmth;
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, Seconds, Watts};

/// Length of a step, m.
const STEP_M: f64 = 2.0;

/// Speed that the truck may gain before the service brakes hold it, m/s (5 km/h).
const SLACK: f64 = 5.0 / 3.6;

/// Acceleration with which a driver returns to the speed told where the hill does not do it, m/s².
const COMES_BACK: f64 = 0.3;

/// Results of a way down.
#[derive(Clone, Copy, Debug)]
pub struct Heated {
    /// Hottest service brakes, °C.
    pub hottest: f64,
    /// Hottest after one hard stop at the worst place, °C.
    pub after_stop: f64,
}

/// Drives legs with the strongest stage and the service brakes, from the brake temperature at the crest. A
/// retarder on the shaft stays cold and gives most, which favours the plan. With snubs, the brakes come on at
/// the speed told and take it to the end of the snub in the time told. Without, the truck may gain 5 km/h and
/// is held there.
#[must_use]
pub fn heated(
    trip: Trip<'_>,
    road: &Alignment,
    legs: &[Told],
    snub: Option<Snub>,
    at_crest: Celsius,
) -> Heated {
    let mut brakes = BrakeHeat::uniform(at_crest);
    let mut found = Heated { hottest: at_crest.0, after_stop: f64::NEG_INFINITY };
    let (mut speed, mut snubbing) = (f64::INFINITY, false);
    for told in legs {
        speed = speed.min(told.speed.0);
        let steps = ((told.to_m - told.from_m) / STEP_M).ceil().max(0.0) as usize;
        for step in 0..steps {
            let at_m = told.from_m + STEP_M * step as f64;
            let grade = Grade(road.mean_grade(at_m, at_m + STEP_M));
            let air = trip.air(Metres(road.height_m(at_m)));
            let now = MetresPerSecond(speed);
            let mass = trip.truck.inertial_mass(told.gear).0;
            let holds = |now| held(trip, told, (now, grade, air), Grip::Road, Warmth::COLD);
            let push = trip.demand(now, grade, air).0 - holds(now);
            let time = Seconds(STEP_M / speed);
            let mut braking = 0.0;
            if let Some(snub) = snub {
                snubbing |= speed >= told.speed.0 && push > 0.0;
                if snubbing {
                    let slowing = (snub.from.0 - snub.to.0) / snub.on.0;
                    braking = (push + mass * slowing).max(0.0);
                    speed -= slowing * time.0;
                    snubbing = speed > snub.to.0;
                } else {
                    let pace = if push > 0.0 { push / mass } else { COMES_BACK };
                    speed = (speed + pace * time.0).min(told.speed.0);
                }
            } else {
                let next = (speed + push / mass * time.0).max(told.speed.0);
                let most = told.speed.0 + SLACK;
                braking = if next > most { push } else { 0.0 };
                speed = next.min(most);
            }
            brakes = brakes.after(trip, Watts(braking * now.0), now, time);
            found.hottest = found.hottest.max(brakes.hottest(trip).0);
            let stop = brakes.hottest_after_stop(trip, MetresPerSecond(speed), grade);
            found.after_stop = found.after_stop.max(stop.0);
        }
    }
    found
}
