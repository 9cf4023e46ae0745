//! Control speed against its own inverse. SAE J1489 (1987, rev. 2000) defines it as the speed that is stable
//! with no service brake, and states a vehicle by the largest grade for each gear. The inverse and the
//! tolerance are our own, so this shows consistency and holds no value from outside.

use solver::motion::{Answer, Trip, Unusable, control_speed};
use solver::truck::{Gear, Preset, Stage};
use solver::units::Metres;
use tests::held_grade::held_grade;
use tests::trucks::{preset, standard_day};

const SEA: Metres = Metres(0.0);
/// m/s.
const TOLERANCE: f64 = 1e-6;
/// Number of gears, stages and engine speeds at which each preset holds a grade, so that none drops out of
/// the comparison unnoticed.
const FOUND: [usize; Preset::ALL.len()] = [143, 168, 168, 126, 168, 168, 130, 147, 80, 253, 141, 80];

/// A vehicle stated by the largest grade for each gear, and inverted: our control speed returns the speed,
/// for every preset, gear and stage at several engine speeds.
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

/// Error of the control speed, m/s, on the grade held at this share of the highest engine speed; infinite for
/// a wrong answer. `None` where no grade is that steep, where the answer rightly says that the driven axles
/// do not grip, or where the gear is not locked up.
fn inverted(kind: Preset, gear: Gear, stage: Stage, share: f64) -> Option<f64> {
    let (truck, day) = (preset(kind), standard_day());
    let trip = Trip { truck: &truck, day: &day };
    let speed = truck.road_speed(gear, truck.highest_engine_speed() * share);
    if truck.engine_speed(gear, speed) <= truck.lowest_engine_speed(stage) * (1.0 + 1e-9) {
        // Here a converter's lock-up opens, or the range of speeds ends; rounding may put the speed on either
        // side.
        return None;
    }
    let grade = held_grade(trip, gear, stage, speed, SEA)?;
    match control_speed(trip, gear, stage, grade, SEA) {
        // Torque that falls with speed may hold a grade at two speeds; the answer is the lower, stable one.
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
