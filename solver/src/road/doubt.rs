//! How far a height difference may be off.
//!
//! Residuals of the filter say almost nothing about it: errors of heights last for hundreds of metres, as
//! hills do. How much the recorded heights bend over 300 m says more. On 71 pairs of public recordings of one
//! road it correlates with their difference (0.8; class and residuals below 0.5). It cannot tell real steps
//! of a road from bad heights; then the doubt is too large.

use super::profile::cells_in;
use serde::{Deserialize, Serialize};

/// The bend is taken over twice this length, metres.
const BEND_M: f64 = 300.0;

/// σ of a height difference over a length, as a share of the bend: length in metres, share. Fitted to
/// the 71 pairs; the difference of two recordings is √2 times the error of one.
const SHARES: [(f64, f64); 10] = [
    (20.0, 0.034),
    (50.0, 0.083),
    (100.0, 0.16),
    (200.0, 0.29),
    (350.0, 0.44),
    (500.0, 0.53),
    (750.0, 0.62),
    (1_000.0, 0.69),
    (1_500.0, 0.81),
    (2_000.0, 0.89),
];

/// Factor from a median deviation to a standard deviation.
const MEDIAN_TO_SIGMA: f64 = 1.4826;
/// Bend of a road too short to show its own, metres: the median of public recordings.
const USUAL_BEND_M: f64 = 8.6;
/// The ripple is taken over twice this length, metres.
const RIPPLE_M: f64 = 50.0;
/// Three heights with independent errors make a second difference √6 times as large as one error; the
/// difference of two heights is √2 times as large.
const RIPPLE_SHARE: f64 = 0.577_350_269_189_625_8;

/// How far height differences of a road may be off.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Doubt {
    /// Root of the mean square of z(s) − 2·z(s + 300 m) + z(s + 600 m) of the recorded heights,
    /// metres. 4.6, 8.6 and 22 m at the 5th, 50th and 95th percentile of public recordings.
    pub bend_m: f64,
    /// Bend that most of the road has, metres: 1.4826 times the median size. One pitch on a smooth road does
    /// not move it.
    pub usual_bend_m: f64,
    /// Root of the mean square of the second difference over 50 m, metres. It shows errors that change from
    /// one terrain cell to the next, which the bend over 300 m hardly sees. Without it, on generated
    /// receivers and terrain data 81 and 63 % of differences over 50 m lay within 2 σ.
    pub ripple_m: f64,
}

impl Doubt {
    /// The doubt of heights that are known exactly.
    pub const NONE: Self = Self { bend_m: 0.0, usual_bend_m: 0.0, ripple_m: 0.0 };

    pub(super) fn is_finite(self) -> bool {
        [self.bend_m, self.usual_bend_m, self.ripple_m].iter().all(|it| it.is_finite())
    }

    /// The doubt of heights on a grid; heights that are not finite are passed over.
    pub(super) fn of(heights_m: &[f64], step_m: f64) -> Self {
        let over = |length_m: f64| bend(heights_m, cells_in(length_m, step_m));
        Self {
            bend_m: over(BEND_M).unwrap_or(USUAL_BEND_M),
            usual_bend_m: usual_bend(heights_m, cells_in(BEND_M, step_m)).unwrap_or(USUAL_BEND_M),
            ripple_m: over(RIPPLE_M).unwrap_or(0.0),
        }
    }

    /// One standard deviation of a height difference over a length, metres; constant beyond 2 km.
    #[must_use]
    pub fn sigma_m(self, length_m: f64) -> f64 {
        (self.bend_m * share(length_m)).max(self.rippled_m(length_m))
    }

    /// One standard deviation for most of the road, metres.
    #[must_use]
    pub fn usual_sigma_m(self, length_m: f64) -> f64 {
        (self.usual_bend_m * share(length_m)).max(self.rippled_m(length_m))
    }

    /// The part of errors that last for less than 50 m; for shorter lengths it goes with the root of the
    /// length.
    fn rippled_m(self, length_m: f64) -> f64 {
        RIPPLE_SHARE * self.ripple_m * (length_m / RIPPLE_M).clamp(0.0, 1.0).sqrt()
    }
}

/// Second differences over `width` cells, as far as their heights are known.
fn bends(heights_m: &[f64], width: usize) -> impl Iterator<Item = f64> {
    let bend = move |i: usize| heights_m[i] - 2.0 * heights_m[i + width] + heights_m[i + 2 * width];
    (0..heights_m.len().saturating_sub(2 * width)).map(bend).filter(|bend| bend.is_finite())
}

/// Root of the mean square of the second difference over `width` cells; `None` where there are too few
/// heights.
pub(super) fn bend(heights_m: &[f64], width: usize) -> Option<f64> {
    let (mut sum, mut count) = (0.0, 0usize);
    for bend in bends(heights_m, width) {
        sum += bend * bend;
        count += 1;
    }
    (count > 0).then(|| (sum / count as f64).sqrt())
}

/// Second difference over `width` cells from the median size; `None` where there are too few heights.
fn usual_bend(heights_m: &[f64], width: usize) -> Option<f64> {
    let mut sizes: Vec<f64> = bends(heights_m, width).map(f64::abs).collect();
    let middle = sizes.len().checked_sub(1)? / 2;
    Some(MEDIAN_TO_SIGMA * *sizes.select_nth_unstable_by(middle, f64::total_cmp).1)
}

/// [`SHARES`] between its rows.
fn share(length_m: f64) -> f64 {
    let mut before = (0.0, 0.0);
    for (length, share) in SHARES {
        if length_m <= length {
            let way = (length_m - before.0) / (length - before.0);
            return before.1 + (share - before.1) * way.max(0.0);
        }
        before = (length, share);
    }
    before.1
}
