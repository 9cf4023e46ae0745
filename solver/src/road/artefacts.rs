//! Faults that no smoother removes: heights of the hill above a tunnel, of the valley below a bridge, and
//! steps that do not come back.
//!
//! Terrain data know the ground, not the road. Two cliffs, up and down (or down and up), with a straight line
//! between them that a road could follow, are a tunnel (a bridge), and the line is used. A cliff without a
//! partner is a jump, and is taken out. Whatever a road could have is left alone, however steep, and is
//! planned for.

use super::cliffs::{self, Cliff};
use super::finding::{Finding, FindingKind, Unassessed};
use super::profile::Profile;
use crate::order::ascending;
use std::ops::Range;

/// Longest tunnel or bridge that is looked for, metres.
const LONGEST_M: f64 = 3_000.0;
/// Most cliffs that are tried as the partner of one.
const MOST_PARTNERS: usize = 64;
/// The straight replacement is no steeper than this.
const LINE_GRADE: f64 = 0.12;
/// Heights stand off the straight replacement by at least this much, metres.
const OFF_LINE_M: f64 = 8.0;
/// Heights stand off by at least this share of the replacement's length. A real crest is rounder and is never
/// cut off.
const OFF_LINE_SHARE: f64 = 0.045;
/// Each of the two cliffs makes up at least this share of the height off the line. A hill above a tunnel
/// stands on its cliffs; a crest stands on flanks that a road can have, with at most a short cliff of noise
/// in them.
const CLIFF_SHARE: f64 = 0.5;
/// The lower cliff has at least this share of the higher one's height. Where a tunnel opens onto a bridge,
/// the cliff between belongs to both.
const LIKE_SHARE: f64 = 0.6;
/// Least grade at which a cliff without a partner is a step.
const STEP_GRADE: f64 = 0.25;
/// Least height at which a cliff without a partner is a step, metres.
const STEP_RISE_M: f64 = 12.0;
/// Heights within this distance of a step are not believed, metres.
const BESIDE_STEP_M: f64 = 50.0;
/// Largest such distance, metres.
const MOST_BESIDE_STEP_M: f64 = 300.0;
/// The distance grows until the step, spread over it, is no steeper than this.
const SPREAD_GRADE: f64 = 0.15;

/// Heights with what cannot be a road taken out.
pub(super) struct Mended {
    /// Heights to be filtered; NaN where unknown, or taken out.
    pub(super) heights_m: Vec<f64>,
    /// Whether anything was bridged.
    pub(super) bridged: bool,
    /// Stretches that were bridged, taken out or filled between points far apart, as ranges of cells.
    pub(super) faults: Vec<Range<usize>>,
}

/// Replaces tunnels and bridges by straight lines and takes steps out. Each case is a finding with
/// its place.
pub(super) fn mend(profile: &mut Profile, findings: &mut Vec<Finding>) -> Mended {
    let mut heights = profile.heights_m.clone();
    let (mut bridges, mut steps) = (Vec::new(), Vec::new());
    for span in profile.spans() {
        let cliffs = cliffs::find(&heights, &span, profile.step_m);
        let pairs = pair(profile, &heights, &cliffs);
        for (i, j) in &pairs {
            let bridge = cliffs[*i].from..cliffs[*j].to;
            findings.push(tell_bridge(profile, &bridge, off_line(&heights, &bridge)));
            straighten(&mut heights, &bridge);
            bridges.push(bridge);
        }
        let alone = |k: &usize| !pairs.iter().any(|(i, j)| (*i..=*j).contains(k));
        for cliff in (0..cliffs.len()).filter(alone).map(|k| &cliffs[k]) {
            steps.extend(step(profile, &heights, cliff, &span));
        }
    }
    for cells in &steps {
        findings.push(place(profile, FindingKind::NotAssessed { why: Unassessed::Step }, cells));
        for reason in &mut profile.why[cells.clone()] {
            *reason = reason.or(Some(Unassessed::Step));
        }
    }
    // The heights within become NaN only now: steps of neighbouring cliffs may overlap.
    for cells in &steps {
        heights[cells.start + 1..cells.end].fill(f64::NAN);
    }
    let bridged = !bridges.is_empty();
    bridges.extend(steps);
    bridges.extend(profile.drawn.iter().cloned());
    Mended { heights_m: heights, bridged, faults: bridges }
}

/// Pairs of cliffs that fit, in the order of the road. The shortest are taken first. No cliff is in two pairs
/// or between the cliffs of another.
fn pair(profile: &Profile, heights: &[f64], cliffs: &[Cliff]) -> Vec<(usize, usize)> {
    let mut pairs: Vec<(usize, usize)> = Vec::new();
    for (i, first) in cliffs.iter().enumerate() {
        for (j, second) in cliffs.iter().enumerate().skip(i + 1).take(MOST_PARTNERS) {
            if second.rises != first.rises && fits(profile, heights, first, second) {
                pairs.push((i, j));
            }
        }
    }
    let shortest_first = ascending(pairs.iter().map(|(i, j)| (cliffs[*j].to - cliffs[*i].from) as f64));
    let mut used = vec![false; cliffs.len()];
    let mut taken: Vec<(usize, usize)> = Vec::new();
    for (i, j) in shortest_first.into_iter().map(|index| pairs[index]) {
        // Whatever lies between two cliffs is bridged with them, but the foot of a neighbour must not be.
        let apart = |k: &(usize, usize)| cliffs[k.1].to < cliffs[i].from || cliffs[j].to < cliffs[k.0].from;
        if used[i..=j].iter().any(|used| *used) || !taken.iter().all(apart) {
            continue;
        }
        used[i..=j].fill(true);
        taken.push((i, j));
    }
    let along = ascending(taken.iter().map(|(first, _)| *first as f64));
    along.into_iter().map(|index| taken[index]).collect()
}

fn fits(profile: &Profile, heights: &[f64], first: &Cliff, second: &Cliff) -> bool {
    if second.to <= first.from || second.from < first.from {
        return false;
    }
    let bridge = first.from..second.to;
    let length_m = bridge.len() as f64 * profile.step_m;
    let grade = (heights[bridge.end] - heights[bridge.start]) / length_m;
    let off_m = off_line(heights, &bridge).abs();
    // Measured against the line: on a falling road one of the two is lower and the other higher.
    let off_m_of = |cliff: &Cliff| {
        let run_m = (cliff.to - cliff.from) as f64 * profile.step_m;
        (heights[cliff.to] - heights[cliff.from] - grade * run_m).abs()
    };
    let (one_m, other_m) = (off_m_of(first), off_m_of(second));
    let lower_m = one_m.min(other_m);
    length_m <= LONGEST_M
        && grade.abs() <= LINE_GRADE
        && off_m >= OFF_LINE_M.max(OFF_LINE_SHARE * length_m)
        && lower_m >= CLIFF_SHARE * off_m
        && lower_m >= LIKE_SHARE * one_m.max(other_m)
}

/// The largest distance of the heights from the straight line between two grid points, metres; positive above
/// the line.
fn off_line(heights: &[f64], cells: &Range<usize>) -> f64 {
    let first = heights[cells.start];
    let slope = (heights[cells.end] - first) / cells.len() as f64;
    let mut worst = 0.0f64;
    for (i, height) in heights[cells.start..=cells.end].iter().enumerate() {
        let off = height - (first + slope * i as f64);
        if off.abs() > worst.abs() {
            worst = off;
        }
    }
    worst
}

fn straighten(heights: &mut [f64], cells: &Range<usize>) {
    let first = heights[cells.start];
    let slope = (heights[cells.end] - first) / cells.len() as f64;
    for (i, height) in heights[cells.clone()].iter_mut().enumerate() {
        *height = first + slope * i as f64;
    }
}

fn tell_bridge(profile: &Profile, cells: &Range<usize>, off: f64) -> Finding {
    let kind = if off > 0.0 {
        FindingKind::TunnelBridged { rise_m: off }
    } else {
        FindingKind::ViaductBridged { drop_m: -off }
    };
    place(profile, kind, cells)
}

fn place(profile: &Profile, kind: FindingKind, cells: &Range<usize>) -> Finding {
    let along = |i: usize| Some(i as f64 * profile.step_m);
    Finding { kind, count: 1, from_m: along(cells.start), to_m: along(cells.end) }
}

/// The cells taken out for a cliff without a partner; empty where a road might be as steep.
fn step(profile: &Profile, heights: &[f64], cliff: &Cliff, span: &Range<usize>) -> Option<Range<usize>> {
    let rise_m = cliff.rise_m(heights);
    let length_m = (cliff.to - cliff.from) as f64 * profile.step_m;
    if rise_m < STEP_RISE_M || rise_m < STEP_GRADE * length_m {
        return None;
    }
    let widest = profile.cells_in(MOST_BESIDE_STEP_M);
    let beside =
        |cells: usize| cliff.from.saturating_sub(cells).max(span.start)..(cliff.to + cells).min(span.end);
    let gentle = |cells: &Range<usize>| {
        let rise_m = (heights[cells.end] - heights[cells.start]).abs();
        rise_m <= SPREAD_GRADE * cells.len() as f64 * profile.step_m
    };
    let narrowest = profile.cells_in(BESIDE_STEP_M);
    (narrowest..=widest).map(beside).find(gentle).or_else(|| Some(beside(widest)))
}

#[cfg(test)]
mod tests {
    use super::mend;
    use crate::road::finding::{FindingKind, Unassessed};
    use crate::road::profile::Profile;

    /// A road on a grid of 10 m from grades in per cent, and what is found on it.
    fn mended(grades: &[(usize, f64)]) -> (Profile, Vec<f64>, Vec<FindingKind>) {
        let mut heights_m = vec![500.0];
        for (cells, grade) in grades {
            for _ in 0..*cells {
                heights_m.push(heights_m[heights_m.len() - 1] + 0.1 * grade);
            }
        }
        let cells = heights_m.len() - 1;
        let positions = Vec::new();
        let mut profile =
            Profile { step_m: 10.0, heights_m, positions, why: vec![None; cells], drawn: Vec::new() };
        let mut findings = Vec::new();
        let mended = mend(&mut profile, &mut findings);
        (profile, mended.heights_m, findings.into_iter().map(|finding| finding.kind).collect())
    }

    #[test]
    fn a_pass_a_dam_and_a_pitch_stay() {
        for grades in [
            vec![(100, -3.0), (70, 10.0), (70, -10.0), (100, -3.0)],
            vec![(100, -2.0), (60, -13.0), (20, 0.0), (60, 13.0), (100, -2.0)],
            vec![(100, 0.0), (25, -17.0), (25, 17.0), (100, 0.0)],
            vec![(100, -2.0), (40, -17.0), (100, -2.0)],
        ] {
            let (profile, heights, findings) = mended(&grades);
            assert!(findings.is_empty(), "{grades:?}: {findings:?}");
            assert_eq!(heights, profile.heights_m);
        }
    }

    #[test]
    fn a_tunnel_and_a_bridge_with_road_between_are_two() {
        let tunnel = [(50, -2.0), (6, 80.0), (30, 0.0), (6, -85.0)];
        let bridge = [(20, -2.0), (6, -70.0), (10, 0.0), (6, 66.0), (50, -2.0)];
        let (_, heights, findings) = mended(&[tunnel.as_slice(), &bridge].concat());
        let [FindingKind::TunnelBridged { .. }, FindingKind::ViaductBridged { .. }] = findings[..] else {
            panic!("{findings:?}");
        };
        assert!(heights.windows(2).all(|pair| (pair[1] - pair[0]).abs() < 0.5), "a road again");
    }

    #[test]
    fn no_cliff_belongs_to_a_tunnel_and_to_a_bridge() {
        let grades = [(100, -2.0), (6, 90.0), (40, 0.0), (12, -95.0), (40, 0.0), (6, 90.0), (100, -2.0)];
        let (profile, _, findings) = mended(&grades);
        let step = FindingKind::NotAssessed { why: Unassessed::Step };
        assert!(!findings.is_empty() && findings.iter().all(|kind| *kind == step), "{findings:?}");
        assert!(profile.why[110].is_some() && profile.why[150].is_some());
    }
}
