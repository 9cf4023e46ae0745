//! From the points of a course to one line along the ground: stops merged, jumps left out, the track
//! steadied, gaps marked.

use super::bounds;
use super::document::Fix;
use super::finding::{Finding, FindingKind};
use super::steady;
use crate::order::ascending;

/// Points to look ahead for the way back from a jump.
const LOOK_AHEAD: usize = 20;
/// A distant point counts as a jump only where the way past it is shorter than this share of the way there,
/// and of the way back.
const SPIKE_SHARE: f64 = 0.25;
/// Shortest jump between regular points, metres.
const SPIKE_M: f64 = 50.0;
/// A jump is at least this many times the usual spacing.
const SPIKE_SPACINGS: f64 = 5.0;
/// Most points at an end that are taken for a false start.
const STRAY_POINTS: usize = 5;

/// The cleaned points of a course with their distance along it.
#[derive(Clone, Debug)]
pub(super) struct Line {
    pub(super) fixes: Vec<Fix>,
    /// Distance of each point from the first, metres.
    pub(super) along_m: Vec<f64>,
    /// True at points that begin a new segment of the file.
    pub(super) joints: Vec<usize>,
}

impl Line {
    pub(super) fn length_m(&self) -> f64 {
        self.along_m.last().copied().unwrap_or(0.0)
    }
}

/// Joins the segments, merges stops and leaves out jumps; each repair is a finding. Then steadies the track,
/// so that the noise left does not lengthen the road.
pub(super) fn clean<'a>(parts: impl Iterator<Item = &'a [Fix]>, findings: &mut Vec<Finding>) -> Line {
    let mut fixes: Vec<Fix> = Vec::new();
    let mut joints: Vec<usize> = Vec::new();
    for part in parts {
        if !fixes.is_empty() {
            joints.push(fixes.len());
        }
        fixes.extend_from_slice(part);
    }
    let keep = mark_jumps(&fixes);
    let mut line = merge(&fixes, &keep.keep, &joints);
    let rejected = keep.keep.iter().filter(|kept| !**kept).count();
    line.along_m = measure(&line.fixes);
    let merged = fixes.len() - rejected - line.fixes.len();
    report(&line, merged, rejected, keep.first, &fixes, findings);
    steady::steady(&mut line);
    line.along_m = measure(&line.fixes);
    line
}

struct Marks {
    keep: Vec<bool>,
    /// Index of the first point left out.
    first: Option<usize>,
}

/// Marks points that jump away from the track and come back.
fn mark_jumps(fixes: &[Fix]) -> Marks {
    let n = fixes.len();
    let mut keep = vec![true; n];
    let steps: Vec<f64> = fixes.windows(2).map(|pair| pair[0].distance_m(&pair[1])).collect();
    let usual = median(&steps);
    strays(&steps, &mut keep);
    let mut last = keep.iter().position(|kept| *kept).unwrap_or(0);
    let mut i = last + 1;
    // Each pass moves `i` on by at least one point.
    while i < n {
        if !keep[i] {
            i += 1;
            continue;
        }
        let away = if last + 1 == i { steps[last] } else { fixes[last].distance_m(&fixes[i]) };
        let returned = if away > bounds::GAP_M {
            let reach = (SPIKE_SHARE * away).max(2.0 * SPIKE_M);
            (i + 1..n.min(i + 1 + LOOK_AHEAD)).find(|j| fixes[last].distance_m(&fixes[*j]) < reach)
        } else if away > SPIKE_M.max(SPIKE_SPACINGS * usual) && i + 1 < n {
            let back = fixes[i].distance_m(&fixes[i + 1]);
            let past = fixes[last].distance_m(&fixes[i + 1]);
            (back > SPIKE_M && past < SPIKE_SHARE * away.min(back)).then_some(i + 1)
        } else {
            None
        };
        match returned {
            Some(j) => {
                keep[i..j].fill(false);
                last = j;
            }
            None => last = i,
        }
        i = last + 1;
    }
    let first = keep.iter().position(|kept| !*kept);
    Marks { keep, first }
}

/// Drops a few points at either end that lie far from all others: a false start or finish.
fn strays(steps: &[f64], keep: &mut [bool]) {
    let n = keep.len();
    if n < 4 * STRAY_POINTS {
        return;
    }
    if let Some(k) = (0..STRAY_POINTS).rev().find(|k| steps[*k] > bounds::JOIN_M) {
        keep[..=k].fill(false);
    }
    if let Some(k) = (0..STRAY_POINTS).rev().find(|k| steps[n - 2 - k] > bounds::JOIN_M) {
        keep[n - 1 - k..].fill(false);
    }
}

/// Merges points nearer than [`bounds::MERGE_M`] into the first of them, with the mean of their heights. The
/// last point keeps its place, so that no length is lost.
fn merge(fixes: &[Fix], keep: &[bool], joints: &[usize]) -> Line {
    let mut line = Line { fixes: Vec::with_capacity(fixes.len()), along_m: Vec::new(), joints: Vec::new() };
    let (mut sum, mut heights) = (0.0, 0usize);
    let mut joint = joints.iter().copied().peekable();
    for (i, fix) in fixes.iter().enumerate().filter(|(i, _)| keep[*i]) {
        // Bounded by the number of segments.
        while joint.next_if(|at| *at <= i).is_some() {
            if line.joints.last() != Some(&line.fixes.len()) {
                line.joints.push(line.fixes.len());
            }
        }
        let near = line.fixes.last().is_some_and(|last| quick_near(last, fix));
        if !near {
            (sum, heights) = (0.0, 0);
        }
        if fix.height_m.is_finite() {
            sum += fix.height_m;
            heights += 1;
        }
        match line.fixes.last_mut() {
            Some(last) if near => {
                if heights > 0 {
                    last.height_m = sum / heights as f64;
                }
            }
            Some(_) | None => line.fixes.push(*fix),
        }
    }
    let made = line.fixes.len();
    line.joints.retain(|at| *at > 0 && *at < made);
    line
}

fn quick_near(a: &Fix, b: &Fix) -> bool {
    // A ten-thousandth of a degree of latitude is 11 m, so most points need no cosine.
    (a.lat_deg - b.lat_deg).abs() < 1e-4 && a.distance_m(b) < bounds::MERGE_M
}

fn measure(fixes: &[Fix]) -> Vec<f64> {
    let mut along = Vec::with_capacity(fixes.len());
    let mut sum = 0.0;
    for (i, fix) in fixes.iter().enumerate() {
        if i > 0 {
            sum += fixes[i - 1].distance_m(fix);
        }
        along.push(sum);
    }
    along
}

fn median(values: &[f64]) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    let mut sorted = values.to_vec();
    let middle = sorted.len() / 2;
    *sorted.select_nth_unstable_by(middle, f64::total_cmp).1
}

fn report(
    line: &Line,
    merged: usize,
    rejected: usize,
    first: Option<usize>,
    fixes: &[Fix],
    findings: &mut Vec<Finding>,
) {
    if !line.joints.is_empty() {
        let gap = |at: &usize| line.along_m[*at] - line.along_m[*at - 1];
        let widest_m = line.joints.iter().map(gap).fold(0.0, f64::max);
        findings.push(Finding {
            kind: FindingKind::SegmentsJoined { widest_m },
            count: line.joints.len(),
            from_m: Some(line.along_m[line.joints[0] - 1]),
            to_m: None,
        });
    }
    if merged > 0 {
        findings.push(Finding { kind: FindingKind::StopsMerged, count: merged, from_m: None, to_m: None });
    }
    if let Some(first) = first {
        // The place along the road of the last kept point before the jump.
        let before = fixes[..first]
            .iter()
            .rev()
            .take(LOOK_AHEAD)
            .find_map(|fix| line.fixes.iter().position(|kept| kept.is_at(fix)));
        findings.push(Finding {
            kind: FindingKind::JumpsRejected,
            count: rejected,
            from_m: Some(before.map_or(0.0, |at| line.along_m[at])),
            to_m: None,
        });
    }
}

/// The spacing that half of the length exceeds, metres.
pub(super) fn spacing_m(along_m: &[f64]) -> f64 {
    let steps: Vec<f64> = along_m.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let half = 0.5 * along_m.last().copied().unwrap_or(0.0);
    let mut sum = 0.0;
    for index in ascending(steps.iter().copied()) {
        sum += steps[index];
        if sum >= half {
            return steps[index];
        }
    }
    0.0
}
