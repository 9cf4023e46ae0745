//! Long straights of a drawn route.
//!
//! A drawn route has points where it bends and none on its straights. There, a step of more than 300 m is no
//! gap if the road runs on in one direction and on one grade on both sides. A recording has points near each
//! other everywhere; a hole in it stays a hole.

use super::bounds;
use super::clean::Line;
use super::track;

/// Longest straight, metres (assumed).
const LONGEST_M: f64 = 1_000.0;
/// Least number of other long steps; a drawing has steps of every length.
const OTHERS: usize = 3;
/// Length from which another step counts as long, as a share of the step. A recording has one spacing, and
/// holes.
const OTHERS_SHARE: f64 = 0.3;
/// Directions on both sides agree with that of the straight within this, degrees.
const AGREE_DEG: f64 = 10.0;
/// Directions are taken over at least this length, metres.
const DIRECTION_M: f64 = 20.0;
/// Grades on both sides agree with that of the straight within this (assumed).
const AGREE_GRADE: f64 = 0.04;
/// Grades are taken over at least this length, metres.
const GRADE_M: f64 = 150.0;

/// Steps longer than [`bounds::GAP_M`] across which the road is known nevertheless: the index of the first
/// point of each.
pub(super) fn straights(line: &Line) -> Vec<usize> {
    let steps: Vec<f64> = line.along_m.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let long: Vec<f64> = steps.iter().copied().filter(|it| *it > OTHERS_SHARE * bounds::GAP_M).collect();
    let drawn = |step_m: f64| long.iter().filter(|it| **it > OTHERS_SHARE * step_m).nth(OTHERS).is_some();
    let known = |i: &usize| {
        let step_m = steps[*i];
        step_m > bounds::GAP_M && step_m <= LONGEST_M && drawn(step_m) && runs_on(line, *i)
    };
    (0..steps.len()).filter(known).collect()
}

/// Whether the road continues evenly before and behind the step from this point to the next.
fn runs_on(line: &Line, first: usize) -> bool {
    let second = first + 1;
    let (before, behind) = (back(line, first, DIRECTION_M), ahead(line, second, DIRECTION_M));
    let (Some(before), Some(behind)) = (before, behind) else {
        return false;
    };
    let agrees = |a: usize, b: usize| {
        let turn = heading(line, a, b) - heading(line, first, second);
        turn.abs().min(360.0 - turn.abs()) <= AGREE_DEG
    };
    let (foot, head) = (back(line, first, GRADE_M), ahead(line, second, GRADE_M));
    let (Some(foot), Some(head)) = (foot, head) else {
        return false;
    };
    let straight = grade(line, first, second);
    // Where a height is missing, NaN is near nothing.
    let near = |a: usize, b: usize| (grade(line, a, b) - straight).abs() <= AGREE_GRADE;
    agrees(before, first) && agrees(second, behind) && near(foot, first) && near(second, head)
}

/// The last point that lies a length before another, without a gap between.
fn back(line: &Line, from: usize, length_m: f64) -> Option<usize> {
    let whole = |i: usize| line.along_m[i + 1] - line.along_m[i] <= bounds::GAP_M;
    (0..from).rev().take_while(|i| whole(*i)).find(|i| line.along_m[from] - line.along_m[*i] >= length_m)
}

/// The first point that lies a length behind another, without a gap between.
fn ahead(line: &Line, from: usize, length_m: f64) -> Option<usize> {
    let whole = |i: usize| line.along_m[i] - line.along_m[i - 1] <= bounds::GAP_M;
    (from + 1..line.along_m.len())
        .take_while(|i| whole(*i))
        .find(|i| line.along_m[*i] - line.along_m[from] >= length_m)
}

/// Direction from a point to another, degrees from −180 to 180.
fn heading(line: &Line, from: usize, to: usize) -> f64 {
    let (a, b) = (&line.fixes[from], &line.fixes[to]);
    let (meridian, parallel) = track::radii_m(0.5 * (a.lat_deg + b.lat_deg));
    let north = (b.lat_deg - a.lat_deg) * meridian;
    let east = track::turn_deg(a.lon_deg, b.lon_deg) * parallel;
    libm::atan2(east, north).to_degrees()
}

fn grade(line: &Line, from: usize, to: usize) -> f64 {
    (line.fixes[to].height_m - line.fixes[from].height_m) / (line.along_m[to] - line.along_m[from])
}
