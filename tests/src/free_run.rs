//! The truth: a truck that rolls down a road as it was built, held by its retarder alone.
//!
//! Forces are the solver's, which closed forms and printed values check. Place, speed and gain of speed are
//! computed here, on the alignment itself in steps of 5 m, without any recording, filter, grid or plan.
//! Curves are left out.

use crate::generate::Alignment;
use solver::motion::{Air, Trip};
use solver::plan::{Descent, HOLD_SHARE, Leg};
use solver::truck::{Gear, Stage, Warmth};
use solver::units::{Grade, Metres, MetresPerSecond};

/// Length of a step, m.
const STEP_M: f64 = 5.0;

/// Spacing of the places at which a hold is tried, m.
const EVERY_M: f64 = 20.0;

/// Speed that a held truck may gain, m/s (5 km/h).
const SLACK: f64 = 5.0 / 3.6;

/// What the driver is told: a gear, a stage and a speed, from one place to another, m along the true road.
#[derive(Clone, Copy, Debug)]
pub struct Told {
    /// From here.
    pub from_m: f64,
    /// To here.
    pub to_m: f64,
    /// The gear.
    pub gear: Gear,
    /// The stage.
    pub stage: Stage,
    /// The speed.
    pub speed: MetresPerSecond,
}

impl Told {
    /// The legs of a descent; `scale` turns a grid point into metres of the true road.
    #[must_use]
    pub fn legs(descent: &Descent, scale: f64) -> Vec<Self> {
        let leg = |leg: &Leg| Self {
            from_m: leg.from as f64 * scale,
            to_m: leg.slows_from as f64 * scale,
            gear: leg.gear,
            stage: leg.stage,
            speed: leg.speed,
        };
        descent.legs.iter().map(leg).collect()
    }

    /// The advice with another stage.
    #[must_use]
    pub fn at_stage(self, stage: Stage) -> Self {
        Self { stage, ..self }
    }
}

/// A stretch on which the truck is faster than told.
#[derive(Clone, Copy, Debug)]
pub struct Gain {
    /// Where it begins, m along the true road.
    pub from_m: f64,
    /// Where the truck is back at its speed.
    pub to_m: f64,
    /// Where it is fastest.
    pub peak_m: f64,
    /// Gain of speed, km/h.
    pub kmh: f64,
}

/// Every stretch on which the truck becomes faster than told, in order. A leg begins at the speed told for
/// it, or at the speed with which the truck arrives from a slower leg.
#[must_use]
pub fn gains(trip: Trip<'_>, road: &Alignment, legs: &[Told]) -> Vec<Gain> {
    let mut found = Vec::new();
    let mut speed = 0.0_f64;
    for (index, told) in legs.iter().enumerate() {
        let up = index > 0 && legs[index - 1].speed < told.speed;
        speed = if up { speed.max(told.speed.0) } else { told.speed.0 };
        let mut now: Option<Gain> = None;
        let steps = ((told.to_m - told.from_m) / STEP_M).ceil().max(0.0) as usize;
        for step in 0..steps {
            let at_m = told.from_m + STEP_M * step as f64;
            speed = rolled(trip, road, told, at_m, speed);
            if speed > told.speed.0 {
                let kmh = (speed - told.speed.0) * 3.6;
                let gain = now.get_or_insert(Gain { from_m: at_m, to_m: at_m, peak_m: at_m, kmh: 0.0 });
                gain.to_m = at_m + STEP_M;
                if kmh > gain.kmh {
                    (gain.kmh, gain.peak_m) = (kmh, at_m + STEP_M);
                }
            } else {
                found.extend(now.take());
            }
        }
        found.extend(now);
    }
    found
}

/// Speed of the truck at the end of a leg that slows for the next. It slows from where it is told, by the
/// strongest stage, in the lowest gear between the two that the engine speed allows.
#[must_use]
pub fn slowed(trip: Trip<'_>, road: &Alignment, fast: &Told, next: &Told) -> MetresPerSecond {
    let strongest = trip.strongest_stage();
    let mut speed = fast.speed.0;
    let steps = ((next.from_m - fast.to_m) / STEP_M).round().max(0.0) as usize;
    for step in 0..steps {
        let bears = trip.lowest_gear_within(MetresPerSecond(speed), 1.0).unwrap_or(fast.gear);
        let gear = bears.min(fast.gear).max(next.gear);
        let slowing = Told { gear, stage: strongest, speed: next.speed, ..*fast };
        speed = rolled(trip, road, &slowing, fast.to_m + STEP_M * step as f64, speed);
    }
    MetresPerSecond(speed)
}

/// Speed that the truck gains while nothing holds it for this time, km/h.
#[must_use]
pub fn gained_free(trip: Trip<'_>, road: &Alignment, told: &Told, seconds: f64) -> f64 {
    let grade = Grade(road.mean_grade(told.from_m, told.from_m + (told.speed.0 * seconds).max(STEP_M)));
    let air = trip.air(Metres(road.height_m(told.from_m)));
    let push = trip.demand(told.speed, grade, air).0 / trip.truck.mass().0;
    push.max(0.0) * seconds * 3.6
}

/// The most that the truck gains anywhere, km/h.
#[must_use]
pub fn most(gains: &[Gain]) -> f64 {
    gains.iter().map(|gain| gain.kmh).fold(0.0, f64::max)
}

/// Speed after a step; never below the speed told, which the driver keeps.
fn rolled(trip: Trip<'_>, road: &Alignment, told: &Told, at_m: f64, speed: f64) -> f64 {
    let grade = Grade(road.mean_grade(at_m, at_m + STEP_M));
    let air = trip.air(Metres(road.height_m(at_m + 0.5 * STEP_M)));
    let way = STEP_M / grade.sin_cos().1;
    let mass = trip.truck.inertial_mass(told.gear).0;
    let push = |v: f64| {
        let v = MetresPerSecond(v);
        trip.demand(v, grade, air).0 - held(trip, told, (v, grade, air), Grip::Road, Warmth::SUSTAINED)
    };
    let after = |force: f64| (speed * speed + 2.0 * force / mass * way).max(0.0).sqrt();
    // The force in the middle of the step: exact to second order.
    let middle = 0.5 * (speed + after(push(speed)).max(told.speed.0));
    after(push(middle)).max(told.speed.0)
}

/// Grip at which driven axles slip.
#[derive(Clone, Copy)]
pub(crate) enum Grip {
    /// The share of the grip on which a plan may count.
    Plan,
    /// The whole grip: the lever stays where it is, and the road knows nothing of a plan's share.
    Road,
}

/// Holding force at the stage told, or at the strongest below it that the driven axles grip. Above the
/// highest engine speed it stays as there.
pub(crate) fn held(
    trip: Trip<'_>,
    told: &Told,
    (speed, grade, air): (MetresPerSecond, Grade, Air),
    grip: Grip,
    warmth: Warmth,
) -> f64 {
    let truck = trip.truck;
    let ceiling = truck.road_speed(told.gear, truck.highest_engine_speed());
    let turning = MetresPerSecond(speed.0.min(ceiling.0));
    let stages = truck.stages().rev().filter(|stage| *stage <= told.stage);
    let gripping = stages.map(|stage| {
        let grip = match grip {
            Grip::Plan if !stage.is_off() => trip.grip_for_retarding(grade),
            Grip::Plan | Grip::Road => trip.grip_for_motoring(grade),
        };
        (truck.holding_force(told.gear, stage, turning, air.ambient, warmth).0, grip.0)
    });
    gripping.filter(|(force, grip)| force <= grip).map(|(force, _)| force).next().unwrap_or(0.0)
}

/// The fastest whole km/h, with its lowest gear, at which the retarder holds every place of a stretch of the
/// true road with this reserve, and 5 km/h above it as well. A plan need not be faster, and has no reason to
/// be slower.
#[must_use]
pub fn held_everywhere(
    trip: Trip<'_>,
    road: &Alignment,
    (from_m, to_m): (f64, f64),
    reserve: f64,
) -> Option<(Gear, MetresPerSecond)> {
    let truck = trip.truck;
    let stage = trip.strongest_stage();
    let (lowest, highest) = (truck.lowest_engine_speed(stage), truck.highest_engine_speed() * HOLD_SHARE);
    let steps = ((to_m - from_m) / EVERY_M).floor() as usize;
    let holds = |gear: Gear, speed: MetresPerSecond| {
        (0..steps).map(|step| from_m + EVERY_M * step as f64).all(|at_m| {
            let grade = Grade(road.mean_grade(at_m, at_m + EVERY_M));
            let air = trip.air(Metres(road.height_m(at_m)));
            let told = Told { from_m, to_m, gear, stage, speed };
            [speed, MetresPerSecond(speed.0 + SLACK)].into_iter().all(|v| {
                held(trip, &told, (v, grade, air), Grip::Plan, Warmth::SUSTAINED)
                    >= (1.0 + reserve) * trip.demand(v, grade, air).0
            })
        })
    };
    let top = (trip.top_speed().kmh() + 1e-9).floor() as u32;
    (5..=top).rev().map(|kmh| MetresPerSecond::from_kmh(f64::from(kmh))).find_map(|speed| {
        let in_range = |gear: &Gear| {
            truck.is_coupled(*gear) && (lowest..=highest).contains(&truck.engine_speed(*gear, speed))
        };
        truck.gears().filter(in_range).find(|gear| holds(*gear, speed)).map(|gear| (gear, speed))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::generate::Tangent;
    use crate::trucks::preset;
    use solver::day::Day;
    use solver::motion::{Answer, control_speed};
    use solver::truck::Preset;

    /// On an even grade the truck settles at the closed form's speed, and with too little force it runs away.
    #[test]
    fn it_settles_at_the_control_speed() {
        let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        let road = Alignment::new(600.0, &[Tangent { length_m: 6_000.0, grade: -0.06, curve_m: 0.0 }]);
        let gear = truck.gears().nth(5).expect("ten gears");
        let mut seen = 0;
        for stage in truck.stages() {
            let speed = MetresPerSecond::from_kmh(20.0);
            let gained =
                most(&gains(trip, &road, &[Told { from_m: 0.0, to_m: 6_000.0, gear, stage, speed }]));
            // It is fastest where the air is thinnest, between these two heights.
            let at = |height| control_speed(trip, gear, stage, Grade(-0.06), Metres(height));
            match (at(240.0), at(600.0)) {
                (Answer::Settles { speed: low, .. }, Answer::Settles { speed: high, .. }) => {
                    seen += 1;
                    assert!((low.kmh()..=high.kmh() + 1e-6).contains(&(20.0 + gained)), "{gained}");
                }
                (Answer::Overruns { .. }, _) => assert!(gained > 30.0, "{gained}"),
                (Answer::Settles { .. } | Answer::MoreThanNeeded | Answer::NotUsable(_), _) => {}
            }
        }
        assert!(seen > 0);
    }
}
