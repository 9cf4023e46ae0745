//! What no smoother removes: heights of the hill above a tunnel, of the valley below a bridge,
//! and steps that do not come back.
//!
//! Terrain data know the ground, not the road. Up and down again (or down and up) within a
//! short way, steeper than any road for trucks, with a straight line between that a road could
//! have: that is a tunnel (a bridge), and the line is used. What has no partner is not believed.

use super::finding::{Finding, FindingKind, Unassessed};
use super::profile::Profile;
use crate::order::ascending;
use std::ops::Range;

/// Slopes are taken over this length, metres.
const SLOPE_M: f64 = 30.0;
/// A flank is at least this steep …
const FLANK_GRADE: f64 = 0.16;
/// … and climbs by this much more than the steepest road would, metres: noise does not.
const FLANK_EXCESS_M: f64 = 6.0;
/// From a flank outwards, it goes on while steeper than this.
const FOOT_GRADE: f64 = 0.12;
/// Longest tunnel or bridge that is looked for, metres.
const LONGEST_M: f64 = 3_000.0;
/// Most flanks that are tried as the partner of one.
const MOST_PARTNERS: usize = 64;
/// The straight replacement is no steeper than this.
const LINE_GRADE: f64 = 0.10;
/// Heights stand off the straight replacement by this at least, metres …
const OFF_LINE_M: f64 = 8.0;
/// … and by this share of its length: a real crest, rounder than that, is never cut off.
const OFF_LINE_SHARE: f64 = 0.045;
/// A flank without a partner is a step if it is this steep …
const STEP_GRADE: f64 = 0.25;
/// … and this high, metres.
const STEP_RISE_M: f64 = 12.0;
/// To either side of a step heights are not believed, metres.
const BESIDE_STEP_M: f64 = 50.0;
/// Longer than this, metres …
const STEEP_M: f64 = 300.0;
/// … no road for trucks is steeper than this (common practice, no source).
const STEEP_GRADE: f64 = 0.15;

/// A run of grid points that is too steep for a road.
#[derive(Clone, Debug)]
struct Flank {
    from: usize,
    to: usize,
    rises: bool,
}

/// Replaces tunnels and bridges by straight lines and marks steps and impossible grades as not
/// assessed; returns the heights to be filtered, and whether anything was bridged. Each case is
/// a finding with its place.
pub(super) fn mend(profile: &mut Profile, findings: &mut Vec<Finding>) -> (Vec<f64>, bool) {
    let mut heights = profile.heights_m.clone();
    let mut bridged = false;
    for span in profile.spans() {
        let mut flanks = find_flanks(profile, &heights, &span);
        bridged |= bridge(profile, &mut heights, &mut flanks, findings);
        mark_steps(profile, &heights, &flanks, findings);
    }
    for span in profile.spans() {
        mark_too_steep(profile, &heights, &span, findings);
    }
    (heights, bridged)
}

/// Slope of the stretch of [`SLOPE_M`] around each cell.
fn find_flanks(profile: &Profile, heights: &[f64], span: &Range<usize>) -> Vec<Flank> {
    let width = profile.cells_in(SLOPE_M);
    let length_m = width as f64 * profile.step_m;
    let slope = |i: usize| (heights[i + width] - heights[i]) / length_m;
    let mut flanks: Vec<Flank> = Vec::new();
    if span.len() < width {
        return flanks;
    }
    for i in span.start..=span.end - width {
        let grade = slope(i);
        if grade.abs() < FLANK_GRADE {
            continue;
        }
        let rises = grade > 0.0;
        match flanks.last_mut() {
            Some(flank) if flank.rises == rises && flank.to >= i => flank.to = i + width,
            Some(_) | None => flanks.push(Flank { from: i, to: i + width, rises }),
        }
    }
    for flank in &mut flanks {
        widen(flank, heights, span);
    }
    flanks.retain(|flank| {
        let run_m = (flank.to - flank.from) as f64 * profile.step_m;
        (heights[flank.to] - heights[flank.from]).abs() - LINE_GRADE * run_m >= FLANK_EXCESS_M
    });
    flanks
}

/// Trims level ends, then goes outwards to the feet.
fn widen(flank: &mut Flank, heights: &[f64], span: &Range<usize>) {
    let sign = if flank.rises { 1.0 } else { -1.0 };
    let rise = |i: usize| sign * (heights[i + 1] - heights[i]);
    while flank.from + 1 < flank.to && rise(flank.from) <= 0.0 {
        flank.from += 1;
    }
    while flank.to > flank.from + 1 && rise(flank.to - 1) <= 0.0 {
        flank.to -= 1;
    }
    // A grid step is close to 10 m; the foot needs no better.
    let foot = FOOT_GRADE * 10.0;
    while flank.from > span.start && rise(flank.from - 1) > foot {
        flank.from -= 1;
    }
    while flank.to < span.end && rise(flank.to) > foot {
        flank.to += 1;
    }
}

/// Bridges pairs of flanks that fit, the shortest first; partners leave the list. True if any.
fn bridge(
    profile: &Profile,
    heights: &mut [f64],
    flanks: &mut Vec<Flank>,
    findings: &mut Vec<Finding>,
) -> bool {
    let mut pairs: Vec<(usize, usize)> = Vec::new();
    for (i, first) in flanks.iter().enumerate() {
        for (j, second) in flanks.iter().enumerate().skip(i + 1).take(MOST_PARTNERS) {
            if second.rises != first.rises && fits(profile, heights, first, second) {
                pairs.push((i, j));
            }
        }
    }
    let shortest_first = ascending(pairs.iter().map(|(i, j)| (flanks[*j].to - flanks[*i].from) as f64));
    let mut used = vec![false; flanks.len()];
    let mut bridged: Vec<Finding> = Vec::new();
    for (i, j) in shortest_first.into_iter().map(|index| pairs[index]) {
        // Whatever lies between is bridged with them.
        if used[i..=j].iter().any(|used| *used) {
            continue;
        }
        used[i..=j].fill(true);
        let (from, to) = (flanks[i].from, flanks[j].to);
        let off = off_line(heights, from, to);
        straighten(heights, from, to);
        bridged.push(tell_bridge(profile, from, to, off));
    }
    let along = ascending(bridged.iter().map(|finding| finding.from_m.unwrap_or(0.0)));
    findings.extend(along.into_iter().map(|index| bridged[index].clone()));
    let any = !bridged.is_empty();
    let mut keep = used.iter().map(|used| !used);
    flanks.retain(|_| keep.next().unwrap_or(true));
    any
}

fn fits(profile: &Profile, heights: &[f64], first: &Flank, second: &Flank) -> bool {
    let (from, to) = (first.from, second.to);
    if to <= from || second.from < first.from {
        return false;
    }
    let length_m = (to - from) as f64 * profile.step_m;
    let grade = (heights[to] - heights[from]) / length_m;
    let least_m = OFF_LINE_M.max(OFF_LINE_SHARE * length_m);
    length_m <= LONGEST_M && grade.abs() <= LINE_GRADE && off_line(heights, from, to).abs() >= least_m
}

/// The largest distance of the heights from the straight line between two grid points, metres;
/// positive above it.
fn off_line(heights: &[f64], from: usize, to: usize) -> f64 {
    let slope = (heights[to] - heights[from]) / (to - from) as f64;
    let mut worst = 0.0f64;
    for (i, height) in heights[from..=to].iter().enumerate() {
        let off = height - (heights[from] + slope * i as f64);
        if off.abs() > worst.abs() {
            worst = off;
        }
    }
    worst
}

fn straighten(heights: &mut [f64], from: usize, to: usize) {
    let (first, slope) = (heights[from], (heights[to] - heights[from]) / (to - from) as f64);
    for (i, height) in heights[from..to].iter_mut().enumerate() {
        *height = first + slope * i as f64;
    }
}

fn tell_bridge(profile: &Profile, from: usize, to: usize, off: f64) -> Finding {
    let kind = if off > 0.0 {
        FindingKind::TunnelBridged { rise_m: off }
    } else {
        FindingKind::ViaductBridged { drop_m: -off }
    };
    place(profile, kind, from, to)
}

fn place(profile: &Profile, kind: FindingKind, from: usize, to: usize) -> Finding {
    let along = |i: usize| Some(i as f64 * profile.step_m);
    Finding { kind, count: 1, from_m: along(from), to_m: along(to) }
}

fn mark_steps(profile: &mut Profile, heights: &[f64], flanks: &[Flank], findings: &mut Vec<Finding>) {
    let beside = profile.cells_in(BESIDE_STEP_M);
    for flank in flanks {
        let rise = (heights[flank.to] - heights[flank.from]).abs();
        let grade = rise / ((flank.to - flank.from) as f64 * profile.step_m);
        if rise < STEP_RISE_M || grade < STEP_GRADE {
            continue;
        }
        let from = flank.from.saturating_sub(beside);
        let to = (flank.to + beside).min(profile.why.len());
        withdraw(profile, from..to, Unassessed::Step, findings);
    }
}

/// Marks cells as not assessed and says so.
fn withdraw(profile: &mut Profile, cells: Range<usize>, why: Unassessed, findings: &mut Vec<Finding>) {
    findings.push(place(profile, FindingKind::NotAssessed { why }, cells.start, cells.end));
    for reason in &mut profile.why[cells] {
        *reason = reason.or(Some(why));
    }
}

fn mark_too_steep(profile: &mut Profile, heights: &[f64], span: &Range<usize>, findings: &mut Vec<Finding>) {
    let width = profile.cells_in(STEEP_M);
    let limit = STEEP_GRADE * width as f64 * profile.step_m;
    let mut run: Option<Range<usize>> = None;
    if span.len() < width {
        return;
    }
    for i in span.start..=span.end - width {
        if (heights[i + width] - heights[i]).abs() <= limit {
            continue;
        }
        match &mut run {
            Some(cells) if cells.end >= i => cells.end = i + width,
            Some(cells) => {
                let done = std::mem::replace(cells, i..i + width);
                withdraw(profile, done, Unassessed::TooSteep, findings);
            }
            None => run = Some(i..i + width),
        }
    }
    if let Some(cells) = run {
        withdraw(profile, cells, Unassessed::TooSteep, findings);
    }
}
