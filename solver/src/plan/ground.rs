//! The road as the plan reads it: its fall, from recorded heights under plain averages.
//!
//! The filtered heights are for showing. Two recordings differ in what the filter keeps of a pitch, and so
//! would plans made from filtered heights.

use crate::road::{Doubt, Road, Unassessed};

/// Length over which a truck feels a grade, m: a truck is about 20 m long, and points lie 10 to 50 m apart.
const FINE_M: f64 = 60.0;

/// An unknown stretch is taken as steep as the road over this length before or behind it, m.
const BESIDE_M: f64 = 200.0;

/// Length over which the steepest possible road is checked, m.
const NO_ROAD_M: f64 = 100.0;

/// Steepest grade of a road for trucks over that length (common practice, no source). Steeper heights belong
/// to the ground beside the road.
const NO_ROAD: f64 = 0.20;

/// Pitches within this distance of such ground are doubted too, m. Assumed.
const BESIDE_WALL_M: f64 = 500.0;

/// A height beyond this many σ of the heights' doubt counts as real.
const SIGMAS: f64 = 6.0;

/// What the plan knows of a road's heights.
pub(super) struct Ground {
    step_m: f64,
    /// Fall of the road up to each grid point, m. Where heights are unknown, it falls as the ends say, and at
    /// least as steeply as beside.
    down: Vec<f64>,
    /// σ of a height difference, m, for a number of cells: see [`Road::doubt`].
    doubt: Doubt,
    /// Cells that begin a stretch steeper than a road can be.
    walls: Vec<usize>,
    /// The fastest speed at which each cell may be held, m/s; empty where only the road itself limits it.
    at_most: Vec<f64>,
}

impl Ground {
    /// `at_most`: see [`super::alone::fastest`].
    pub(super) fn of(road: &Road, at_most: Vec<f64>) -> Self {
        let heights = road.surface_m();
        let mut falls: Vec<f64> = heights.windows(2).map(|pair| pair[0] - pair[1]).collect();
        let step_m = road.step_m();
        let beside = cells(BESIDE_M, step_m);
        let mean = |from: usize, to: usize| (heights[from] - heights[to]) / (to - from) as f64;
        for span in blanks(road) {
            let (from, to) = (span.0, span.1);
            // At an end of the file nothing says how the road goes on.
            if from == 0 || to == road.cells() {
                continue;
            }
            let before = mean(from.saturating_sub(beside), from);
            let behind = mean(to, (to + beside).min(road.cells()));
            let own = if span.2 { f64::NEG_INFINITY } else { mean(from, to) };
            let steepest = own.max(before).max(behind);
            for fall in &mut falls[from..to] {
                *fall = fall.max(steepest);
                if span.2 {
                    *fall = steepest;
                }
            }
        }
        let mut down = Vec::with_capacity(heights.len());
        let mut sum = 0.0;
        down.push(0.0);
        for fall in falls {
            sum += fall;
            down.push(sum);
        }
        let width = cells(NO_ROAD_M, step_m);
        let steepest = NO_ROAD * width as f64 * step_m;
        let is_wall = |cell: &usize| (down[cell + width] - down[*cell]).abs() > steepest;
        let walls = (0..down.len().saturating_sub(width)).filter(is_wall).collect();
        Self { step_m, down, doubt: road.doubt(), walls, at_most }
    }

    pub(super) fn step_m(&self) -> f64 {
        self.step_m
    }

    /// The fastest speeds at which the cells of a stretch may be held, m/s.
    pub(super) fn at_most(&self, from: usize, to: usize) -> f64 {
        self.at_most.get(from..to).into_iter().flatten().copied().fold(f64::INFINITY, f64::min)
    }

    /// Number of cells.
    pub(super) fn cells(&self) -> usize {
        self.down.len() - 1
    }

    /// Fall from one grid point to a later one, m.
    pub(super) fn fall(&self, from: usize, to: usize) -> f64 {
        self.down[to] - self.down[from]
    }

    /// Fall of each cell of `from..to` in a plain average over about this length, m.
    pub(super) fn falls(&self, from: usize, to: usize, over_m: f64) -> Vec<f64> {
        let half = cells(0.5 * over_m, self.step_m);
        (from..to)
            .map(|cell| {
                let (a, b) = (cell.saturating_sub(half), (cell + 1 + half).min(self.cells()));
                self.fall(a, b) / (b - a) as f64
            })
            .collect()
    }

    /// Fall of each cell as a truck feels it, m.
    pub(super) fn fine(&self, from: usize, to: usize) -> Vec<f64> {
        self.falls(from, to, FINE_M - self.step_m)
    }

    /// One standard deviation of a height difference over a length, m, of most of the road.
    pub(super) fn sigma_m(&self, length_m: f64) -> f64 {
        self.doubt.usual_sigma_m(length_m)
    }

    /// Whether so much height between two grid points is more than heights of this road may be off.
    pub(super) fn stands_out(&self, height_m: f64, from: usize, to: usize) -> bool {
        let length_m = (to - from) as f64 * self.step_m;
        if height_m <= SIGMAS * self.doubt.usual_sigma_m(length_m) {
            return false;
        }
        let beside = cells(BESIDE_WALL_M, self.step_m);
        let first = self.walls.partition_point(|wall| *wall + beside < from);
        self.walls.get(first).is_none_or(|wall| *wall > to + beside)
    }
}

fn cells(length_m: f64, step_m: f64) -> usize {
    ((length_m / step_m).round() as usize).max(1)
}

/// Stretches that are not assessed, touching ones joined; and whether the heights jump there, so that their
/// difference says nothing.
fn blanks(road: &Road) -> Vec<(usize, usize, bool)> {
    let mut found: Vec<(usize, usize, bool)> = Vec::new();
    for span in road.unassessed() {
        let jumps = span.why == Unassessed::Step;
        match found.last_mut() {
            Some(last) if last.1 == span.from => {
                last.1 = span.to;
                last.2 |= jumps;
            }
            Some(_) | None => found.push((span.from, span.to, jumps)),
        }
    }
    found
}
