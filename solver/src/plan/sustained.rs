//! The steepest sustained grade of a descent: what its gear is chosen for.

use super::answer::Sustained;
use super::ask::Ask;
use crate::constants::{GRAVITY, SPEED_SLACK};
use crate::units::{Grade, Metres, MetresPerSecond};

/// By how much the retarder is taken to fall short when it is asked over which distance that
/// would matter. Assumed; the reserve asked for by default.
const SHORTFALL: f64 = 0.15;

/// Rounds in the search for the length of the steepest sustained stretch.
const SUSTAINED_ROUNDS: usize = 16;

impl Ask<'_> {
    /// The steepest sustained grade at a hold speed: the largest mean over the distance in
    /// which a truck whose retarder falls short by 15 % gains 5 km/h, never shorter than the
    /// road's heights allow to be quoted.
    pub(super) fn sustained(&self, speed: MetresPerSecond) -> Sustained {
        self.sustained_between(self.stretch.from, self.stretch.to, speed)
    }

    /// The same for a part of the descent, between two grid points.
    pub(super) fn sustained_between(&self, from: usize, to: usize, speed: MetresPerSecond) -> Sustained {
        let road = self.road;
        let whole = (to - from) as f64 * road.step_m();
        let height = self.stretch.highest;
        let air = self.trip.air(height);
        let gain = speed.0 * SPEED_SLACK + 0.5 * SPEED_SLACK * SPEED_SLACK;
        let over = |length: f64| {
            let (start, grade) = road.steepest(from, to, length)?;
            let from = Metres(start as f64 * road.step_m());
            Some(Sustained { from, length: Metres(length), grade: Grade(grade), height })
        };
        let all = Sustained {
            from: Metres(from as f64 * road.step_m()),
            length: Metres(whole),
            grade: Grade(road.mean_grade(from, to)),
            height,
        };
        // From the shortest that may be quoted upwards: the first length over which the truck would gain
        // that much. From the mean of the whole downwards, a steep pitch in a mild hill is never seen.
        let mut length = road.base_length_m().min(whole);
        let mut found = over(length).unwrap_or(all);
        for _ in 0..SUSTAINED_ROUNDS {
            let push = self.trip.demand(speed, found.grade, air).0 / self.trip.truck.mass().0;
            let needed = (gain / (SHORTFALL * push.max(1e-3 * GRAVITY))).min(whole);
            if needed < length + 0.5 * road.step_m() {
                break;
            }
            length = needed;
            found = over(length).unwrap_or(found);
        }
        found
    }
}
