//! Control speed against its own inverse. SAE J1489 (1987, rev. 2000) defines it as the speed that
//! is stable with no service brake, and states a vehicle by the largest grade for each gear; the
//! inverse and the tolerance are our own, so this is consistency and no value from outside.

use solver::motion::{Answer, Trip, Unusable, control_speed};
use solver::truck::{Gear, Preset, Stage};
use solver::units::Metres;
use tests::held_grade::held_grade;
use tests::trucks::{preset, standard_day};

const SEA: Metres = Metres(0.0);
/// m/s.
const TOLERANCE: f64 = 1e-6;
/// Of how many gears, stages and engine speeds each preset holds a grade, so that none goes
/// unnoticed out of the comparison.
const FOUND: [usize; Preset::ALL.len()] = [143, 168, 168, 126, 168, 168, 130, 147, 80, 253, 141, 80];

/// A vehicle stated by the largest grade for each gear, and turned round: ours returns the
/// speed, for every preset, gear and stage at several engine speeds.
#[test]
fn is_found_again_from_the_grade_held_at_it() {
    for (kind, expected) in Preset::ALL.into_iter().zip(FOUND) {
        let truck = preset(kind);
        let mut found = 0;
        for gear in truck.gears() {
            for stage in truck.stages().filter(|stage| *stage != Stage::OFF) {
                for share in [0.5, 0.6, 0.75, 0.9, 0.99] {
                    if let Some(error) = inverted(kind, gear, stage, share) {
                        found += 1;
                        let name = kind.key();
                        assert!(error <= TOLERANCE, "{name}: {gear:?}, {stage:?}, {share}: off by {error}");
                    }
                }
            }
        }
        assert_eq!(found, expected, "{}: control speeds found again", kind.key());
    }
}

/// Error of the control speed, m/s, on the grade held at this share of the highest engine
/// speed; infinite for an answer that is wrong. `None` where no grade is that steep, or where
/// ours rightly says that the driven axles do not grip on it, or the gear is not locked up.
fn inverted(kind: Preset, gear: Gear, stage: Stage, share: f64) -> Option<f64> {
    let (truck, day) = (preset(kind), standard_day());
    let trip = Trip { truck: &truck, day: &day };
    let speed = truck.road_speed(gear, truck.highest_engine_speed() * share);
    if truck.engine_speed(gear, speed) <= truck.lowest_engine_speed(stage) * (1.0 + 1e-9) {
        // The lock-up of a converter opens there, or the speed is the edge of the range: rounded both ways.
        return None;
    }
    let grade = held_grade(trip, gear, stage, speed, SEA)?;
    match control_speed(trip, gear, stage, grade, SEA) {
        // Torque that falls with speed may hold a grade at two speeds: ours is the lower, stable one.
        Answer::Settles { speed: found, .. } if found < speed => {
            let again = held_grade(trip, gear, stage, found, SEA)?;
            Some((again.0 - grade.0).abs())
        }
        Answer::Settles { speed: found, .. } | Answer::Overruns { above: Some(found) } => {
            Some((found.0 - speed.0).abs())
        }
        Answer::NotUsable(Unusable::Grip) => {
            let grips = trip.holding(gear, stage, speed, trip.air(SEA)) <= trip.grip_for_retarding(grade);
            grips.then_some(f64::INFINITY)
        }
        // Behind an open converter nothing settles.
        Answer::NotUsable(Unusable::Unlocked) => None,
        Answer::MoreThanNeeded
        | Answer::Overruns { above: None }
        | Answer::NotUsable(Unusable::Slippery | Unusable::CutOut) => Some(f64::INFINITY),
    }
}
