//! How far the heights can be trusted, and what follows from it.

use super::profile::cells_in;
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// Windows whose mean grades are compared, metres.
const WINDOW_M: f64 = 100.0;
/// Length around a place over which the mean grade decides whether it is hilly, metres.
const AROUND_M: f64 = 1_000.0;
/// Least mean grade of a hilly place.
const HILLY_GRADE: f64 = 0.02;
/// Highest roughness of good heights and of fair heights, percentage points.
const GOOD_POINTS: f64 = 3.5;
const FAIR_POINTS: f64 = 6.0;

/// How far a road's grades can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Class {
    /// As from a barometric recorder: grades hold over 200 m.
    Good,
    /// Receiver heights and fair terrain data: grades hold over 500 m.
    Fair,
    /// Grades hold over 1 km at best, and are advisory only.
    Poor,
}

impl Class {
    fn from_roughness(points: f64) -> Class {
        if points <= GOOD_POINTS {
            Class::Good
        } else if points <= FAIR_POINTS {
            Class::Fair
        } else {
            Class::Poor
        }
    }

    /// Shortest length over which a grade may be quoted, metres.
    pub fn base_length_m(self) -> f64 {
        match self {
            Class::Good => 200.0,
            Class::Fair => 500.0,
            Class::Poor => 1_000.0,
        }
    }

    /// Half-width of a grade over the base length, as a fraction.
    ///
    /// Good and fair: two independent sources of one road differed by 0.9–1.3 points over 100 m, 0.34–0.42
    /// over 500 m, 0.24–0.26 over 1 km (own measurement on public tracks). Poor: own choice, advisory only.
    fn base_plus_minus(self) -> f64 {
        match self {
            Class::Good => 0.008,
            Class::Fair => 0.010,
            Class::Poor => 0.020,
        }
    }

    /// Half-width of a mean grade over `length_m`, as a fraction.
    ///
    /// It falls with length to the power 0.7, which fits the values measured at 100 m, 500 m and 1 km.
    pub fn plus_minus(self, length_m: f64) -> f64 {
        self.base_plus_minus() * libm::pow(self.base_length_m() / length_m.max(1.0), 0.7)
    }

    /// Length of the vertical curve that rounds a bend of the filtered line, metres. Own choice by the errors
    /// on generated roads: up to this length they fall, by up to 3 %, and beyond it they rise again.
    pub(super) fn vertical_curve_m(self) -> f64 {
        match self {
            Class::Good => 40.0,
            Class::Fair | Class::Poor => 80.0,
        }
    }

    /// Shortest segment of one grade, metres.
    pub(super) fn shortest_segment_m(self) -> f64 {
        match self {
            Class::Good => 150.0,
            Class::Fair => 300.0,
            Class::Poor => 500.0,
        }
    }

    /// Saving in squared deviation that justifies one more segment, square metres, summed over grid points. A
    /// bend of 1 % between two stretches of 300 m saves 11 m², a bend of 0.5 % 3 m².
    pub(super) fn segment_cost_m2(self) -> f64 {
        match self {
            Class::Good => 2.0,
            Class::Fair => 6.0,
            Class::Poor => 20.0,
        }
    }
}

/// Roughness of the heights before and after filtering, and the class that follows.
///
/// Roughness is the 90th percentile of the difference between the mean grades of neighbouring 100 m windows,
/// on hilly parts, in percentage points. Recorders have 2.5–2.8, bad data 5–26.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Quality {
    /// Roughness of the cleaned heights before filtering, tunnels and bridges aside, percentage points.
    pub roughness_before: f64,
    /// Roughness of the filtered heights, percentage points.
    pub roughness_after: f64,
    /// Class, from the heights before filtering: the filter hides what is wrong and does not mend it.
    pub class: Class,
}

impl Quality {
    /// `from_terrain`: tunnels or bridges were found, so the heights come from a terrain model. Such heights
    /// are never good, however smooth: they miss cuttings and embankments, too.
    pub(super) fn new(roughness_before: f64, roughness_after: f64, from_terrain: bool) -> Quality {
        let class = match Class::from_roughness(roughness_before) {
            Class::Good if from_terrain => Class::Fair,
            Class::Good => Class::Good,
            Class::Fair => Class::Fair,
            Class::Poor => Class::Poor,
        };
        Quality { roughness_before, roughness_after, class }
    }

    /// Weight of a bend in the trend filter, metres on the 10 m grid: 30 for smooth heights, ten times as
    /// much for every point of roughness above 3.2, 350 at most.
    ///
    /// Own choice by the errors on generated roads: recorders (R near 2) come out best at 15 to 30, receivers
    /// (4.8) and terrain (6.6) at 200 to 400. The weight has no step, so that a little more roughness never
    /// makes another road. Terrain data may be smooth and wrong, so class fair or poor gets at least the
    /// weight of 3.5 points.
    pub(super) fn lambda_m(self) -> f64 {
        let least: f64 = match self.class {
            Class::Good => 30.0,
            Class::Fair | Class::Poor => 60.0,
        };
        let wanted = 30.0 * libm::pow(10.0, (self.roughness_before - 3.2) / 1.0);
        wanted.clamp(least, 350.0)
    }
}

/// Roughness of heights over the assessed spans (ranges of cells), percentage points; 0 where no span is long
/// enough.
pub(super) fn roughness(heights_m: &[f64], spans: &[Range<usize>], step_m: f64) -> f64 {
    let window = cells_in(WINDOW_M, step_m);
    let length_m = window as f64 * step_m;
    let (mut hilly, mut all) = (Vec::new(), Vec::new());
    for span in spans {
        let heights = &heights_m[span.start..=span.end];
        if heights.len() <= 2 * window {
            continue;
        }
        for i in window..heights.len() - window {
            let before = (heights[i] - heights[i - window]) / length_m;
            let after = (heights[i + window] - heights[i]) / length_m;
            let change = 100.0 * (after - before).abs();
            all.push(change);
            if is_hilly(heights, i, step_m) {
                hilly.push(change);
            }
        }
    }
    if hilly.len() >= 2 * window { percentile_90(&mut hilly) } else { percentile_90(&mut all) }
}

fn is_hilly(heights_m: &[f64], i: usize, step_m: f64) -> bool {
    let half = cells_in(0.5 * AROUND_M, step_m);
    let (from, to) = (i.saturating_sub(half), (i + half).min(heights_m.len() - 1));
    let grade = (heights_m[to] - heights_m[from]) / ((to - from) as f64 * step_m);
    grade.abs() >= HILLY_GRADE
}

fn percentile_90(values: &mut [f64]) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    let rank = ((values.len() - 1) as f64 * 0.9).round() as usize;
    *values.select_nth_unstable_by(rank, f64::total_cmp).1
}
