//! Takes quick errors of place out of a track, before its length is measured.
//!
//! A trembling track is longer than its road, and its grades come out too flat: points 3 m apart with errors
//! of 1 m that last for 20 m are 1.7 % longer. Each point moves onto a parabola through the points around it,
//! since a parabola follows a bend. The residual decides how far the parabola reaches. Where it exceeds the
//! usual noise of the track, as in a hairpin, a shorter parabola is used; where none fits, the point stays.

use super::bounds;
use super::clean::Line;
use super::track;
use crate::order::ascending;

/// Reach of a parabola to either side, metres, the widest first. Own choice by lengths and radii on generated
/// roads.
const REACHES_M: [f64; 3] = [60.0, 30.0, 15.0];
/// Effective number of points below which nothing is told about noise.
const FEWEST: f64 = 4.5;
/// A residual up to this many times the usual one is noise.
const USUAL: f64 = 2.2;
/// The usual residual is the one at this share of the places: a quarter of a road is straight enough.
const STRAIGHT_SHARE: f64 = 0.25;
/// Places that are examined for the usual residual.
const SAMPLES: usize = 2_000;
/// Noise below this is left alone, metres.
const QUIET_M: f64 = 0.05;
/// Noise above this is taken out fully, metres. Between the two it is taken out in part, so that there is no
/// step.
const NOISY_M: f64 = 0.15;

/// A parabola through the points around one of them.
#[derive(Clone, Copy)]
struct Fit {
    /// Shift of the point itself, metres east and north.
    off_m: (f64, f64),
    /// Residual, metres.
    rest_m: f64,
}

/// Moves the points of a line. Its distances must be measured anew afterwards.
pub(super) fn steady(line: &mut Line) {
    let runs = runs(line);
    let usual = REACHES_M.map(|reach_m| usual_rest(line, &runs, reach_m));
    // The shortest parabola that tells anything gives the noise.
    let Some(noise_m) = usual.iter().rev().flatten().copied().next() else {
        return;
    };
    let part = ((noise_m - QUIET_M) / (NOISY_M - QUIET_M)).clamp(0.0, 1.0);
    if part <= 0.0 {
        return;
    }
    let moved: Vec<Option<(f64, f64)>> = (0..line.fixes.len())
        .map(|i| {
            let fits = REACHES_M.iter().zip(usual).filter_map(|(reach_m, usual)| {
                let fit = fit(line, &runs, i, *reach_m)?;
                (fit.rest_m <= USUAL * usual?).then_some(fit.off_m)
            });
            fits.into_iter().next()
        })
        .collect();
    for (fix, off_m) in line.fixes.iter_mut().zip(moved) {
        let Some((east_m, north_m)) = off_m else {
            continue;
        };
        let (meridian, parallel) = track::radii_m(fix.lat_deg);
        fix.lat_deg += part * (north_m / meridian).to_degrees();
        fix.lon_deg = track::turn_deg(0.0, fix.lon_deg + part * (east_m / parallel).to_degrees());
    }
}

/// For each point, the first and last point of the run that it belongs to, with no gap between. A recording
/// that was stopped and started again at one place continues its run.
fn runs(line: &Line) -> Vec<(usize, usize)> {
    let n = line.fixes.len();
    let mut runs = Vec::with_capacity(n);
    let mut from = 0;
    for i in 1..=n {
        if i == n || line.along_m[i] - line.along_m[i - 1] > bounds::GAP_M {
            runs.resize(i, (from, i - 1));
            from = i;
        }
    }
    runs
}

/// Residuals of parabolas with this reach on the straighter parts of the line.
fn usual_rest(line: &Line, runs: &[(usize, usize)], reach_m: f64) -> Option<f64> {
    let n = line.fixes.len();
    let rests: Vec<f64> = (0..n)
        .step_by(n.div_ceil(SAMPLES).max(1))
        .filter_map(|i| fit(line, runs, i, reach_m))
        .map(|fit| fit.rest_m)
        .collect();
    let order = ascending(rests.iter().copied());
    let rank = (rests.len() as f64 * STRAIGHT_SHARE) as usize;
    order.get(rank).map(|index| rests[*index])
}

/// The parabola around a point; `None` where too few points lie around it. Towards the ends of a run the
/// reach shrinks to what one side has; the very ends stay.
fn fit(line: &Line, runs: &[(usize, usize)], i: usize, reach_m: f64) -> Option<Fit> {
    let (first, last) = runs[i];
    let along = |k: usize| line.along_m[k] - line.along_m[i];
    let reach_m = reach_m.min(-along(first)).min(along(last));
    if reach_m < REACHES_M[REACHES_M.len() - 1] {
        return None;
    }
    let here = &line.fixes[i];
    let (meridian, parallel) = track::radii_m(here.lat_deg);
    let mut sums = Sums::default();
    let before = (first..i).rev().take_while(|k| -along(*k) < reach_m);
    let after = (i..=last).take_while(|k| along(*k) < reach_m);
    for k in before.chain(after) {
        let fix = &line.fixes[k];
        let east_m = track::turn_deg(here.lon_deg, fix.lon_deg).to_radians() * parallel;
        let north_m = (fix.lat_deg - here.lat_deg).to_radians() * meridian;
        sums.add(along(k) / reach_m, east_m, north_m);
    }
    sums.fit()
}

/// Weighted sums for a parabola in two coordinates.
#[derive(Default)]
struct Sums {
    weights2: f64,
    powers: [f64; 5],
    east: [f64; 3],
    north: [f64; 3],
    squares: f64,
}

impl Sums {
    /// Adds a point at a share `u` of the reach, −1 to 1; distant points count less.
    fn add(&mut self, u: f64, east_m: f64, north_m: f64) {
        let weight = (1.0 - u * u) * (1.0 - u * u);
        self.weights2 += weight * weight;
        let mut power = weight;
        for k in 0..5 {
            self.powers[k] += power;
            if k < 3 {
                self.east[k] += power * east_m;
                self.north[k] += power * north_m;
            }
            power *= u;
        }
        self.squares += weight * (east_m * east_m + north_m * north_m);
    }

    fn fit(&self) -> Option<Fit> {
        let points = self.powers[0] * self.powers[0] / self.weights2;
        if points < FEWEST {
            return None;
        }
        let (east, north) = (self.solve(self.east)?, self.solve(self.north)?);
        let told = |by: [f64; 3], of: [f64; 3]| by[0] * of[0] + by[1] * of[1] + by[2] * of[2];
        let left = (self.squares - told(east, self.east) - told(north, self.north)).max(0.0);
        let rest_m = (left / self.powers[0] * points / (points - 3.0)).sqrt();
        Some(Fit { off_m: (east[0], north[0]), rest_m })
    }

    /// The parabola's coefficients by Cramer's rule on the 3 × 3 normal equations.
    fn solve(&self, right: [f64; 3]) -> Option<[f64; 3]> {
        let [a, b, c, d, e] = self.powers;
        let [x, y, z] = right;
        let (ce, be, bd) = (c * e - d * d, b * e - c * d, b * d - c * c);
        let whole = a * ce - b * be + c * bd;
        // All points lie at two places, or nearly so.
        if whole <= 1e-9 * a * a * a {
            return None;
        }
        let first = x * ce - y * be + z * bd;
        let second = -x * be + y * (a * e - c * c) - z * (a * d - b * c);
        let third = x * bd - y * (a * d - b * c) + z * (a * c - b * b);
        Some([first / whole, second / whole, third / whole])
    }
}
