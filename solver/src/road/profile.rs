//! The line on a uniform grid: a height and a position at each grid point, and which cells are known.

use super::bounds;
use super::clean::Line;
use super::drawn;
use super::finding::{Finding, FindingKind, Unassessed};
use super::track;
use std::ops::Range;

/// A road on its grid, before filtering.
#[derive(Clone, Debug)]
pub(super) struct Profile {
    pub(super) step_m: f64,
    /// Heights at grid points, metres; NaN where unknown.
    pub(super) heights_m: Vec<f64>,
    /// Latitude and longitude at grid points, degrees.
    pub(super) positions: Vec<(f64, f64)>,
    /// For each cell, the reason why it is not assessed, if there is one.
    pub(super) why: Vec<Option<Unassessed>>,
    /// Long straights of a drawn route, filled between their ends, as ranges of cells.
    pub(super) drawn: Vec<Range<usize>>,
}

impl Profile {
    /// The runs of assessed cells, as ranges of cells; their grid points are `start..=end`.
    pub(super) fn spans(&self) -> Vec<Range<usize>> {
        spans(&self.why)
    }

    /// Number of cells nearest to a length, at least one.
    pub(super) fn cells_in(&self, length_m: f64) -> usize {
        cells_in(length_m, self.step_m)
    }
}

/// Number of cells nearest to a length, at least one.
pub(super) fn cells_in(length_m: f64, step_m: f64) -> usize {
    ((length_m / step_m).round() as usize).max(1)
}

/// The runs of cells with no reason against them.
pub(super) fn spans(why: &[Option<Unassessed>]) -> Vec<Range<usize>> {
    let mut found: Vec<Range<usize>> = Vec::new();
    for (cell, reason) in why.iter().enumerate() {
        match (reason, found.last_mut()) {
            (Some(_), _) => {}
            (None, Some(span)) if span.end == cell => span.end = cell + 1,
            (None, _) => found.push(cell..cell + 1),
        }
    }
    found
}

/// Resamples a line of at least two points to steps of about [`bounds::STEP_M`].
pub(super) fn resample(line: &Line, findings: &mut Vec<Finding>) -> Profile {
    let length = line.length_m();
    let cells = ((length / bounds::STEP_M).round() as usize).max(1);
    let step_m = length / cells as f64;
    let mut profile = Profile {
        step_m,
        heights_m: vec![f64::NAN; cells + 1],
        positions: place(line, step_m, cells),
        why: vec![None; cells],
        drawn: Vec::new(),
    };
    let straights = drawn::straights(line);
    mark_gaps(line, &straights, &mut profile);
    fill_heights(line, &straights, &mut profile, findings);
    profile
}

fn place(line: &Line, step_m: f64, cells: usize) -> Vec<(f64, f64)> {
    let mut positions = Vec::with_capacity(cells + 1);
    let mut i = 0;
    for k in 0..=cells {
        let s = k as f64 * step_m;
        // Moves over each point of the line once in all.
        while i + 2 < line.along_m.len() && line.along_m[i + 1] < s {
            i += 1;
        }
        let (a, b) = (&line.fixes[i], &line.fixes[i + 1]);
        let (sa, sb) = (line.along_m[i], line.along_m[i + 1]);
        let t = ((s - sa) / (sb - sa)).clamp(0.0, 1.0);
        let lat = a.lat_deg + (b.lat_deg - a.lat_deg) * t;
        let lon = a.lon_deg + track::turn_deg(a.lon_deg, b.lon_deg) * t;
        positions.push((lat, track::turn_deg(0.0, lon)));
    }
    positions
}

/// Marks the cells that a stretch touches, metres along the line.
fn mark(profile: &mut Profile, from_m: f64, to_m: f64, reason: Unassessed) {
    let cells = profile.why.len();
    // A tiny margin, so that a stretch that ends on a grid point does not take the next cell.
    let hair = 1e-6;
    let from = ((from_m / profile.step_m + hair).floor().max(0.0) as usize).min(cells - 1);
    let to = ((to_m / profile.step_m - hair).ceil().max(1.0) as usize).min(cells);
    for why in &mut profile.why[from..to.max(from + 1)] {
        *why = why.or(Some(reason));
    }
}

fn mark_gaps(line: &Line, straights: &[usize], profile: &mut Profile) {
    for (i, pair) in line.along_m.windows(2).enumerate() {
        if pair[1] - pair[0] <= bounds::GAP_M {
            continue;
        }
        if straights.binary_search(&i).is_ok() {
            let cell = |at_m: f64| ((at_m / profile.step_m) as usize).min(profile.why.len() - 1);
            profile.drawn.push(cell(pair[0])..cell(pair[1]) + 1);
        } else {
            mark(profile, pair[0], pair[1], Unassessed::Gap);
        }
    }
}

/// Straight lines between neighbouring heights; nothing across gaps and long stretches without heights.
fn fill_heights(line: &Line, straights: &[usize], profile: &mut Profile, findings: &mut Vec<Finding>) {
    let known: Vec<usize> = (0..line.fixes.len()).filter(|i| line.fixes[*i].height_m.is_finite()).collect();
    let (Some(first), Some(last)) = (known.first(), known.last()) else {
        mark(profile, 0.0, line.length_m(), Unassessed::NoHeights);
        return;
    };
    if line.along_m[*first] > 0.0 {
        mark(profile, 0.0, line.along_m[*first], Unassessed::NoHeights);
    }
    if line.along_m[*last] < line.length_m() {
        mark(profile, line.along_m[*last], line.length_m(), Unassessed::NoHeights);
    }
    let (mut filled, mut first_fill, mut longest_m) = (0, None, 0.0f64);
    for pair in known.windows(2) {
        let (a, b) = (pair[0], pair[1]);
        let (sa, sb) = (line.along_m[a], line.along_m[b]);
        let drawn = b == a + 1 && straights.binary_search(&a).is_ok();
        if b > a + 1 || drawn {
            if sb - sa > bounds::FILL_M && !drawn {
                mark(profile, sa, sb, Unassessed::NoHeights);
                write_ends(line, profile, a, b);
                continue;
            }
            filled += 1;
            first_fill = first_fill.or(Some((sa, sb)));
            longest_m = longest_m.max(sb - sa);
        } else if sb - sa > bounds::GAP_M {
            write_ends(line, profile, a, b);
            continue;
        }
        write_between(line, profile, a, b);
    }
    if let Some((from, to)) = first_fill {
        findings.push(Finding {
            kind: FindingKind::HeightsFilled { longest_m },
            count: filled,
            from_m: Some(from),
            to_m: Some(to),
        });
    }
}

/// Writes the heights at both ends of each unknown stretch to the grid point beside it, where that has none
/// yet. So a single height between two gaps is not lost.
fn write_ends(line: &Line, profile: &mut Profile, a: usize, b: usize) {
    for i in [a, b] {
        let point = ((line.along_m[i] / profile.step_m).round() as usize).min(profile.why.len());
        if !profile.heights_m[point].is_finite() {
            profile.heights_m[point] = line.fixes[i].height_m;
        }
    }
}

fn write_between(line: &Line, profile: &mut Profile, a: usize, b: usize) {
    let (sa, sb) = (line.along_m[a], line.along_m[b]);
    let (ha, hb) = (line.fixes[a].height_m, line.fixes[b].height_m);
    let cells = profile.why.len();
    let from = (sa / profile.step_m - 1e-6).ceil().max(0.0) as usize;
    let to = ((sb / profile.step_m + 1e-6).floor().max(0.0) as usize).min(cells);
    // Bounded by the grid.
    for k in from..=to {
        let t = ((k as f64 * profile.step_m - sa) / (sb - sa)).clamp(0.0, 1.0);
        profile.heights_m[k] = ha + (hb - ha) * t;
    }
}
