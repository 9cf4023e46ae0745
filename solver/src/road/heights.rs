//! The heights of a line: heights that stand for “unknown”, and single heights that stick out.

use super::clean::Line;
use super::finding::{Finding, FindingKind};

/// Heights of exactly zero mean “unknown” where the other heights are at least this far from zero, metres.
const ZERO_OFF_M: f64 = 20.0;
/// Longest stretch on which a segment's heights may stay constant, metres. Beyond it the segment has no
/// heights.
const CONSTANT_M: f64 = 1_500.0;
/// Pairs of neighbours that predict a height. One wrong neighbour spoils one pair only.
const PAIRS: usize = 3;
/// Neighbours farther away than this predict nothing, metres.
const NEIGHBOUR_M: f64 = 100.0;
/// A spike sticks out by at least this, metres.
const SPIKE_M: f64 = 6.0;
/// A spike sticks out by at least this share of the distance to its neighbours: crests and sags curve.
const SPIKE_GRADE: f64 = 0.12;
/// A spike sticks out by at least this many times the usual deviation around it (Hampel's rule, with 1.4826
/// from a median deviation to a standard deviation. Source: Hampel 1974, JASA 69, 383–393).
const SPIKE_SIGMAS: f64 = 5.0;
const MEDIAN_TO_SIGMA: f64 = 1.4826;
/// Points to either side that give the usual deviation.
const AROUND: usize = 10;

/// Removes heights that stand for “unknown”, then spikes. They become NaN in the line.
pub(super) fn clean(line: &mut Line, findings: &mut Vec<Finding>) {
    clear_unknown(line, findings);
    clear_spikes(line, findings);
}

/// Whether all known heights have one value.
pub(super) fn is_constant(line: &Line) -> bool {
    let mut known = line.fixes.iter().map(|fix| fix.height_m).filter(|h| h.is_finite());
    match known.next() {
        None => false,
        Some(first) => known.all(|h| h.to_bits() == first.to_bits()),
    }
}

/// Number of points with a height.
pub(super) fn count(line: &Line) -> usize {
    line.fixes.iter().filter(|fix| fix.height_m.is_finite()).count()
}

fn clear_unknown(line: &mut Line, findings: &mut Vec<Finding>) {
    let n = line.fixes.len();
    let (mut cleared, mut first) = (0, None);
    let mut i = 0;
    // Each pass moves `i` behind the run it has examined.
    while i < n {
        let height = line.fixes[i].height_m;
        let mut end = i + 1;
        while end < n && line.fixes[end].height_m.to_bits() == height.to_bits() {
            end += 1;
        }
        if height.is_finite() && stands_for_unknown(line, i, end) {
            for fix in &mut line.fixes[i..end] {
                fix.height_m = f64::NAN;
            }
            cleared += end - i;
            first = first.or(Some((line.along_m[i], line.along_m[end - 1])));
        }
        i = end;
    }
    if let Some((from, to)) = first {
        findings.push(Finding {
            kind: FindingKind::ZeroHeights,
            count: cleared,
            from_m: Some(from),
            to_m: Some(to),
        });
    }
}

/// Whether a run of equal heights means “unknown”: it is zero and its neighbours are far from zero, or it is
/// longer than even a level road stays without the least change.
fn stands_for_unknown(line: &Line, from: usize, end: usize) -> bool {
    let height = line.fixes[from].height_m;
    let before = from.checked_sub(1).map(|i| line.fixes[i].height_m);
    let after = line.fixes.get(end).map(|fix| fix.height_m);
    let far = |h: Option<f64>| h.is_none_or(|h| !(h - height).abs().lt(&ZERO_OFF_M));
    if height.abs() < f64::MIN_POSITIVE {
        return far(before) && far(after) && (before.is_some() || after.is_some());
    }
    // A level stretch whose ends meet their neighbours is real.
    let long = line.along_m[end - 1] - line.along_m[from] >= CONSTANT_M && end - from >= 20;
    long && far(before) && far(after)
}

/// Deviation of a height from its neighbours' prediction, and the distance of those neighbours.
fn deviation(line: &Line, i: usize) -> Option<(f64, f64)> {
    let (s, h) = (line.along_m[i], line.fixes[i].height_m);
    let mut foretold = [(0.0, 0.0); PAIRS];
    let mut found = 0;
    for k in 1..=PAIRS {
        if k > i || i + k >= line.fixes.len() {
            break;
        }
        let (sa, sb) = (line.along_m[i - k], line.along_m[i + k]);
        let (ha, hb) = (line.fixes[i - k].height_m, line.fixes[i + k].height_m);
        if s - sa > NEIGHBOUR_M || sb - s > NEIGHBOUR_M || !ha.is_finite() || !hb.is_finite() {
            break;
        }
        foretold[found] = (h - (ha + (hb - ha) * (s - sa) / (sb - sa)), (s - sa).max(sb - s));
        found += 1;
    }
    if found < 2 || !h.is_finite() {
        return None;
    }
    let pairs = &foretold[..found];
    // The middle of three, the smaller of two: the cautious choice, since it removes less.
    let rank = (found - 1) / 2;
    let below = |pair: &(f64, f64)| pairs.iter().filter(|other| other.0.abs() < pair.0.abs()).count();
    let no_more = |pair: &(f64, f64)| pairs.iter().filter(|other| other.0.abs() <= pair.0.abs()).count();
    pairs.iter().find(|pair| below(pair) <= rank && rank < no_more(pair)).copied()
}

/// Whether both neighbours lie on one side by at least half of the deviation. The edge of a step, or of a
/// hill above a tunnel, has a neighbour at its own height.
fn stands_alone(line: &Line, i: usize, deviation_m: f64) -> bool {
    let h = line.fixes[i].height_m;
    let sign = deviation_m.signum();
    [i - 1, i + 1].into_iter().all(|k| sign * (h - line.fixes[k].height_m) >= 0.5 * deviation_m.abs())
}

fn clear_spikes(line: &mut Line, findings: &mut Vec<Finding>) {
    let n = line.fixes.len();
    let off: Vec<Option<(f64, f64)>> = (0..n).map(|i| deviation(line, i)).collect();
    let (mut count, mut first, mut largest_m) = (0, None, 0.0f64);
    let mut around: Vec<f64> = Vec::with_capacity(2 * AROUND + 1);
    for i in 0..n {
        let Some((deviation_m, reach_m)) = off[i] else {
            continue;
        };
        if deviation_m.abs() < SPIKE_M + SPIKE_GRADE * reach_m || !stands_alone(line, i, deviation_m) {
            continue;
        }
        around.clear();
        let window = &off[i.saturating_sub(AROUND)..n.min(i + AROUND + 1)];
        around.extend(window.iter().flatten().map(|(d, _)| d.abs()));
        let middle = around.len() / 2;
        let usual = *around.select_nth_unstable_by(middle, f64::total_cmp).1;
        if deviation_m.abs() > SPIKE_SIGMAS * MEDIAN_TO_SIGMA * usual {
            line.fixes[i].height_m = f64::NAN;
            count += 1;
            first = first.or(Some(line.along_m[i]));
            largest_m = largest_m.max(deviation_m.abs());
        }
    }
    if count > 0 {
        findings.push(Finding {
            kind: FindingKind::SpikesRemoved { largest_m },
            count,
            from_m: first,
            to_m: None,
        });
    }
}
