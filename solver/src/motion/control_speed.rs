//! Control speed: where the retarder alone balances a hill in one gear.

use super::forces::Trip;
use crate::truck::{Gear, Stage};
use crate::units::{Grade, Metres, MetresPerSecond, RevPerMin};
use serde::{Deserialize, Serialize};

/// What a gear and stage do on a grade. None of the answers is an error.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// The truck settles at this speed, with no service brake and no throttle.
    Settles {
        /// Road speed.
        speed: MetresPerSecond,
        /// Engine speed.
        engine_speed: RevPerMin,
    },
    /// It holds back more than needed over the whole range of engine speed: a lower stage or a higher gear
    /// would be enough.
    MoreThanNeeded,
    /// It overruns: it needs the service brakes or a lower gear.
    Overruns {
        /// The speed above which it overruns, where it holds below; `None` where it overruns at every speed
        /// of the gear. It cannot slow a truck that has become faster than this.
        above: Option<MetresPerSecond>,
    },
    /// It must not or cannot be used.
    NotUsable(Unusable),
}

/// Why a gear and stage are not usable.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Unusable {
    /// The surface is too slippery to recommend a stage.
    Slippery,
    /// Where the truck settles, the driven axles would need more grip than they have.
    Grip,
    /// The retarder is off up to the highest allowed engine speed.
    CutOut,
    /// The torque converter does not lock up in this gear.
    Unlocked,
}

/// Samples of the engine-speed range in the search for the lowest crossing.
const SAMPLES: usize = 64;
/// Halvings of the bracket: 2⁻⁵⁰ of a sample is below the last bit of any road speed.
const HALVINGS: usize = 50;

/// What `gear` with `stage` does on `grade` at `height`.
///
/// The control speed is the lowest speed at which holding force less demand rises through zero, with the
/// demand greater everywhere below. A much higher root, where air drag takes over, is no control speed. Where
/// the gear holds more than needed at the lowest engine speed but not further up, nothing slows a truck that
/// has become faster. The answer is then `Overruns`, with the speed above which it does.
#[must_use]
pub fn control_speed(trip: Trip<'_>, gear: Gear, stage: Stage, grade: Grade, height: Metres) -> Answer {
    if stage != Stage::OFF && trip.grip_for_retarding(grade).0 <= 0.0 {
        return Answer::NotUsable(Unusable::Slippery);
    }
    let low = trip.truck.lowest_engine_speed(stage);
    let high = trip.truck.highest_engine_speed();
    if !trip.truck.is_coupled(gear) {
        return Answer::NotUsable(Unusable::Unlocked);
    }
    if low >= high {
        return Answer::NotUsable(Unusable::CutOut);
    }
    let air = trip.air(height);
    let slowest = trip.truck.road_speed(gear, low).0;
    let fastest = trip.truck.road_speed(gear, high).0;
    let surplus = |v: f64| {
        let speed = MetresPerSecond(v);
        trip.holding(gear, stage, speed, air).0 - trip.demand(speed, grade, air).0
    };
    let speed_at = |k: usize| slowest + (fastest - slowest) * (k as f64 / SAMPLES as f64);
    let held_at = |k: usize| surplus(speed_at(k)) >= 0.0;
    if held_at(0) {
        return match (1..=SAMPLES).find(|k| !held_at(*k)) {
            None => Answer::MoreThanNeeded,
            Some(lost) => {
                let lacking = |v: f64| -surplus(v);
                let above = crossing(lacking, speed_at(lost - 1), speed_at(lost));
                Answer::Overruns { above: Some(MetresPerSecond(above)) }
            }
        };
    }
    let Some(first) = (1..=SAMPLES).find(|k| held_at(*k)) else {
        return Answer::Overruns { above: None };
    };
    let speed = MetresPerSecond(crossing(surplus, speed_at(first - 1), speed_at(first)));
    let grip =
        if stage == Stage::OFF { trip.grip_for_motoring(grade) } else { trip.grip_for_retarding(grade) };
    if trip.holding(gear, stage, speed, air) > grip {
        return Answer::NotUsable(Unusable::Grip);
    }
    Answer::Settles { speed, engine_speed: trip.truck.engine_speed(gear, speed) }
}

/// Bisection on a bracket with `surplus(low) < 0 ≤ surplus(high)`; gives `high` where the bracket has no
/// crossing.
pub(crate) fn crossing(surplus: impl Fn(f64) -> f64, mut low: f64, mut high: f64) -> f64 {
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if surplus(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}
