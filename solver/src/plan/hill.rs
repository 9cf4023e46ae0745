//! The demand of a hill: how much must be held, all the way, so that little is left to the service brakes.
//!
//! Work that the retarder does not hold goes into a bucket: the height left to the service brakes, or to
//! speed. The bucket empties where the retarder has more than it needs. The hill's demand is the least hold
//! that keeps the bucket below a bound. It is one physical measure for every truck, whatever the spacing of
//! the points: a bump of two metres does not choose the gear of twenty kilometres, but three hundred metres
//! that are four points too steep do.

use super::ground::Ground;
use crate::motion::Trip;

/// Work that may be left to the service brakes at one place, K of the hottest axle group. Assumed: some 16 m
/// of height at 36 t.
pub(super) const TOUCH_K: f64 = 15.0;

/// The bound is also no more than this share of the hill's fall: a small hill must not fit into the bucket.
/// Assumed.
const FREE_SHARE: f64 = 0.2;

/// Length over which grades are averaged for the choice of gear, m, but never more than half of the hill. Two
/// recordings of one road differ by 1.6 points of grade over 500 m, by 1.0 over 1 km, and by less over this
/// length. The free run sees what is steeper for less.
const OVER_M: f64 = 2_000.0;

/// Halvings in the search for the demand: to a hundred-thousandth of a grade.
const HALVINGS: usize = 18;

/// A stretch of road for a truck, cell by cell.
pub(super) struct Hill<'a> {
    pub(super) trip: Trip<'a>,
    pub(super) ground: &'a Ground,
    /// Grid point where it begins.
    pub(super) from: usize,
    pub(super) step_m: f64,
    /// Fall of each cell less the rolling resistance, m, averaged for the choice of gear.
    pub(super) pushes: Vec<f64>,
    /// Fall of each cell less the rolling resistance, m, as a truck feels it.
    pub(super) fine: Vec<f64>,
    /// Height that may be left to the service brakes at one place, m.
    bound_m: f64,
}

/// The demand, and where it arises.
#[derive(Debug, Clone, Copy)]
pub(super) struct Asked {
    /// Fall to be held, m for each metre of road.
    pub(super) holds: f64,
    /// Grid points between which the bucket fills.
    pub(super) from: usize,
    pub(super) to: usize,
}

impl<'a> Hill<'a> {
    pub(super) fn of(trip: Trip<'a>, ground: &'a Ground, from: usize, to: usize) -> Self {
        let step_m = ground.step_m();
        let rolling = trip.truck.spec().rolling_resistance * step_m;
        let less = |falls: Vec<f64>| falls.into_iter().map(|fall| fall - rolling).collect();
        let over_m = OVER_M.min(0.5 * (to - from) as f64 * step_m);
        Self {
            trip,
            ground,
            from,
            step_m,
            pushes: less(ground.falls(from, to, over_m)),
            fine: less(ground.fine(from, to)),
            bound_m: (TOUCH_K * joules_per_kelvin(trip) / trip.weight().0)
                .min(FREE_SHARE * ground.fall(from, to).max(0.0)),
        }
    }

    pub(super) fn cells(&self) -> usize {
        self.pushes.len()
    }

    /// The least hold between two cells that keeps the buckets below their bound.
    pub(super) fn asks(&self, from: usize, to: usize) -> Asked {
        let steepest = self.pushes[from..to].iter().chain(&self.fine[from..to]).copied().fold(0.0, f64::max);
        let (mut low, mut high) = (0.0, steepest / self.step_m);
        let mut place = self.overflows(from, to, low);
        if place.is_none() {
            high = 0.0;
        } else {
            for _ in 0..HALVINGS {
                let middle = 0.5 * (low + high);
                match self.overflows(from, to, middle) {
                    Some(at) => (low, place) = (middle, Some(at)),
                    None => high = middle,
                }
            }
        }
        let (start, end) = place.unwrap_or((from, to));
        Asked { holds: high, from: self.from + start, to: self.from + end }
    }

    /// Where a bucket passes its bound: the cell where it began to fill, and the cell where it overflows.
    fn overflows(&self, from: usize, to: usize, holds: f64) -> Option<(usize, usize)> {
        let mut buckets = Buckets::empty(from);
        (from..to).find_map(|cell| {
            let full = buckets.fill(self, cell, holds);
            full.map(|start| (start, cell + 1))
        })
    }
}

/// Two buckets on the way down. One has what the averages leave to the service brakes. The other has what the
/// road as felt leaves where it stands off the average by more than the heights may be off.
pub(super) struct Buckets {
    average: (f64, usize),
    pitch: (f64, usize),
    /// Height by which the pitch falls more than the average, m.
    excess: f64,
}

impl Buckets {
    pub(super) fn empty(cell: usize) -> Self {
        Self { average: (0.0, cell), pitch: (0.0, cell), excess: 0.0 }
    }

    /// Fill of the bucket of the averages; 1 at its bound.
    pub(super) fn share(&self, hill: &Hill<'_>) -> f64 {
        self.average.0 / hill.bound_m
    }

    /// Whether the bucket of the averages is empty.
    pub(super) fn are_empty(&self) -> bool {
        self.average.0 <= 0.0
    }

    /// Goes on by a cell. Where a bucket passes its bound, gives the cell where it began to fill.
    pub(super) fn fill(&mut self, hill: &Hill<'_>, cell: usize, holds: f64) -> Option<usize> {
        let held = holds * hill.step_m;
        self.average.0 += hill.pushes[cell] - held;
        self.pitch.0 += hill.fine[cell] - held;
        self.excess += hill.fine[cell] - hill.pushes[cell];
        if self.average.0 <= 0.0 {
            self.average = (0.0, cell + 1);
        } else if self.average.0 > hill.bound_m {
            return Some(self.average.1);
        }
        if self.pitch.0 <= 0.0 {
            (self.pitch, self.excess) = ((0.0, cell + 1), 0.0);
        } else if self.pitch.0 > hill.bound_m {
            let (from, to) = (hill.from + self.pitch.1, hill.from + cell + 1);
            if hill.ground.stands_out(self.excess, from, to) {
                return Some(self.pitch.1);
            }
        }
        None
    }
}

/// Work of the service brakes that warms the hottest axle group by one kelvin, J.
pub(super) fn joules_per_kelvin(trip: Trip<'_>) -> f64 {
    let groups = trip.truck.spec().axle_groups.iter().filter(|group| group.effort_share > 0.0);
    groups.map(|group| trip.truck.heat_capacity(group) / group.effort_share).fold(f64::INFINITY, f64::min)
}
