//! What a hill asks for: how much must be held, all the way, so that little falls to the service brakes.
//!
//! What the retarder does not hold goes into a bucket: the height that falls to the service brakes, or
//! to speed. It empties where the retarder has more than it needs. The hill asks for what keeps the
//! bucket below a bound. One physical measure for every truck, whatever the spacing of the points: a
//! bump of two metres does not choose the gear of twenty kilometres, three hundred metres four points
//! too steep do.

use super::ground::Ground;
use crate::motion::Trip;

/// What may fall to the service brakes at one place, K of the hottest axle group. Assumed: at 36 t
/// some 16 m of height.
pub(super) const TOUCH_K: f64 = 15.0;

/// The gear is chosen on grades over this length, m, and never on more than half of the hill. Two
/// recordings of one road differ by 1.6 points of grade over 500 m, by 1.0 over 1 km, and by less over
/// this; what is steeper for less is seen by the free run.
const OVER_M: f64 = 2_000.0;

/// Halvings of what is asked for: to a hundred-thousandth of a grade.
const HALVINGS: usize = 18;

/// The fall of a stretch, cell by cell, that the gear is chosen for.
pub(super) struct Hill {
    /// Grid point where it begins.
    pub(super) from: usize,
    pub(super) step_m: f64,
    /// Fall of each cell less the rolling resistance, m.
    pub(super) pushes: Vec<f64>,
    /// What may fall to the service brakes at one place, m of height.
    pub(super) bound_m: f64,
}

/// What is asked for, and where.
#[derive(Debug, Clone, Copy)]
pub(super) struct Asked {
    /// Fall to be held, m for each metre of road.
    pub(super) holds: f64,
    /// Grid points between which the bucket fills.
    pub(super) from: usize,
    pub(super) to: usize,
}

impl Hill {
    pub(super) fn of(trip: Trip<'_>, ground: &Ground, from: usize, to: usize) -> Self {
        let step_m = ground.step_m();
        let rolling = trip.truck.spec().rolling_resistance * step_m;
        let pushes = ground.falls(from, to, over_m(from, to, step_m));
        let pushes = pushes.into_iter().map(|fall| fall - rolling).collect();
        Self { from, step_m, pushes, bound_m: touch_m(trip) }
    }

    /// The least that must be held so that the bucket stays below its bound.
    pub(super) fn asks(&self) -> Asked {
        self.asks_between(0, self.pushes.len())
    }

    /// The same for a part, by cells of the hill.
    pub(super) fn asks_between(&self, from: usize, to: usize) -> Asked {
        let pushes = &self.pushes[from..to];
        let steepest = pushes.iter().copied().fold(0.0, f64::max) / self.step_m;
        let (mut low, mut high) = (0.0, steepest);
        if self.overflows(pushes, 0.0).is_none() {
            high = 0.0;
        } else {
            for _ in 0..HALVINGS {
                let middle = 0.5 * (low + high);
                if self.overflows(pushes, middle).is_some() { low = middle } else { high = middle }
            }
        }
        let (start, end) = self.overflows(pushes, low).unwrap_or((0, pushes.len()));
        Asked { holds: high, from: self.from + from + start, to: self.from + from + end }
    }

    /// Where the bucket passes its bound: the cell where it began to fill, and the one where it did.
    fn overflows(&self, pushes: &[f64], holds: f64) -> Option<(usize, usize)> {
        let held = holds * self.step_m;
        let (mut bucket, mut start) = (0.0, 0);
        for (cell, push) in pushes.iter().enumerate() {
            bucket += push - held;
            if bucket <= 0.0 {
                (bucket, start) = (0.0, cell + 1);
            } else if bucket > self.bound_m {
                return Some((start, cell + 1));
            }
        }
        None
    }
}

/// The length over which grades of a stretch are averaged, m.
pub(super) fn over_m(from: usize, to: usize, step_m: f64) -> f64 {
    OVER_M.min(0.5 * (to - from) as f64 * step_m)
}

/// [`TOUCH_K`] as a height.
pub(super) fn touch_m(trip: Trip<'_>) -> f64 {
    TOUCH_K * joules_per_kelvin(trip) / trip.weight().0
}

/// Work of the service brakes that warms the hottest axle group by one kelvin, J.
pub(super) fn joules_per_kelvin(trip: Trip<'_>) -> f64 {
    let groups = trip.truck.spec().axle_groups.iter().filter(|group| group.effort_share > 0.0);
    groups.map(|group| group.heat_capacity() / group.effort_share).fold(f64::INFINITY, f64::min)
}
