//! Stretches with one grade: the filtered heights as few straight lines, none of them too short.

use super::profile::cells_in;
use super::quality::Class;
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// Spacing of the places at which bends are sought, metres.
const BREAK_M: f64 = 50.0;
/// Longest single segment, metres: it bounds the search.
const LONGEST_M: f64 = 10_000.0;
/// Within this distance of a stretch that was bridged or taken out, grades are less certain, metres.
const BESIDE_FAULT_M: f64 = 200.0;

/// A stretch of the road with one grade.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct GradeSegment {
    /// Grid index of its start.
    pub from: usize,
    /// Grid index of its end; greater than `from`.
    pub to: usize,
    /// Rise over horizontal distance; negative is downhill.
    pub grade: f64,
    /// Half-width of the grade's uncertainty, as a fraction.
    pub plus_minus: f64,
    /// Length over which this grade holds, metres: that of the segment.
    pub base_m: f64,
}

/// Splits the assessed spans (ranges of cells) into segments.
///
/// The ends of each span keep the filtered heights exactly, so that the segments' drops add up to the whole
/// drop. Dynamic programming finds the best breaks (least squares per segment plus a cost per segment).
/// Grades come from one continuous refit with bends at the breaks.
pub(super) fn split(
    heights_m: &[f64],
    spans: &[Range<usize>],
    step_m: f64,
    class: Class,
) -> Vec<GradeSegment> {
    let mut segments = Vec::new();
    for span in spans {
        let heights = &heights_m[span.start..=span.end];
        let knots = find_breaks(heights, step_m, class);
        let levels = refit(heights, &knots);
        for (pair, level) in knots.windows(2).zip(levels.windows(2)) {
            let base_m = (pair[1] - pair[0]) as f64 * step_m;
            segments.push(GradeSegment {
                from: span.start + pair[0],
                to: span.start + pair[1],
                grade: (level[1] - level[0]) / base_m,
                plus_minus: class.plus_minus(base_m),
                base_m,
            });
        }
    }
    segments
}

/// Widens the half-width of grades near stretches that were bridged or taken out (ranges of cells): where
/// heights were wrong, those beside are seldom quite right. A segment wholly within reach gets twice its
/// half-width, others in proportion (assumed).
pub(super) fn doubt_beside(segments: &mut [GradeSegment], faults: &[Range<usize>], step_m: f64) {
    let beside = cells_in(BESIDE_FAULT_M, step_m);
    let near = |cell: usize| faults.iter().any(|it| it.start <= cell + beside && cell < it.end + beside);
    for segment in segments {
        let cells = (segment.from..segment.to).filter(|cell| near(*cell)).count();
        segment.plus_minus *= 1.0 + cells as f64 / (segment.to - segment.from) as f64;
    }
}

/// Sums from the start of a span; they give the least-squares line over any part of it.
struct Sums {
    h: Vec<f64>,
    ih: Vec<f64>,
    hh: Vec<f64>,
}

impl Sums {
    fn new(heights_m: &[f64]) -> Sums {
        let n = heights_m.len();
        // The chord is subtracted: small numbers keep the sums exact.
        let (first, slope) = chord(heights_m);
        let mut sums = Sums { h: vec![0.0; n + 1], ih: vec![0.0; n + 1], hh: vec![0.0; n + 1] };
        for (i, height) in heights_m.iter().enumerate() {
            let h = height - first - slope * i as f64;
            sums.h[i + 1] = sums.h[i] + h;
            sums.ih[i + 1] = sums.ih[i] + i as f64 * h;
            sums.hh[i + 1] = sums.hh[i] + h * h;
        }
        sums
    }

    /// Squared deviation from the best straight line over points `a..=b`.
    fn cost(&self, a: usize, b: usize) -> f64 {
        let n = (b - a + 1) as f64;
        let h = self.h[b + 1] - self.h[a];
        let middle = 0.5 * (a + b) as f64;
        let ih = self.ih[b + 1] - self.ih[a] - middle * h;
        let hh = self.hh[b + 1] - self.hh[a] - h * h / n;
        // Σ(i − mean)² of n consecutive whole numbers.
        let ii = n * (n * n - 1.0) / 12.0;
        (hh - ih * ih / ii).max(0.0)
    }
}

fn chord(heights_m: &[f64]) -> (f64, f64) {
    let last = heights_m.len() - 1;
    (heights_m[0], (heights_m[last] - heights_m[0]) / last as f64)
}

/// Grid indices of the segments' ends within a span, first and last included.
fn find_breaks(heights_m: &[f64], step_m: f64, class: Class) -> Vec<usize> {
    let end = heights_m.len() - 1;
    let stride = cells_in(BREAK_M, step_m);
    let nodes: Vec<usize> =
        (0..end).step_by(stride).filter(|i| i + stride <= end || *i == 0).chain([end]).collect();
    let shortest = cells_in(class.shortest_segment_m(), step_m);
    if end < 2 * shortest {
        return vec![0, end];
    }
    let sums = Sums::new(heights_m);
    let (penalty, longest) = (class.segment_cost_m2(), cells_in(LONGEST_M, step_m));
    let mut best = vec![f64::INFINITY; nodes.len()];
    let mut from = vec![0usize; nodes.len()];
    best[0] = 0.0;
    for j in 1..nodes.len() {
        // Bounded by the longest segment.
        for i in (0..j).rev() {
            let cells = nodes[j] - nodes[i];
            if cells > longest {
                break;
            }
            // What remains before must be reachable; the first start always is.
            if cells < shortest || !best[i].is_finite() {
                continue;
            }
            let cost = best[i] + sums.cost(nodes[i], nodes[j]) + penalty;
            if cost < best[j] {
                (best[j], from[j]) = (cost, i);
            }
        }
    }
    let mut knots = vec![end];
    let mut j = nodes.len() - 1;
    // Each pass goes back by one segment.
    while j > 0 {
        j = from[j];
        knots.push(nodes[j]);
    }
    knots.reverse();
    knots
}

/// Heights at the knots of the continuous line of straight pieces that fits best, with both ends fixed. Hat
/// functions; the normal matrix is tridiagonal.
fn refit(heights_m: &[f64], knots: &[usize]) -> Vec<f64> {
    let k = knots.len();
    let (first, last) = (heights_m[0], heights_m[heights_m.len() - 1]);
    if k <= 2 {
        return vec![first, last];
    }
    let (offset, slope) = chord(heights_m);
    let (mut diagonal, mut beside, mut right) = (vec![0.0; k], vec![0.0; k], vec![0.0; k]);
    for (s, pair) in knots.windows(2).enumerate() {
        let width = (pair[1] - pair[0]) as f64;
        // The knot itself belongs to the piece that begins there.
        for (i, height) in heights_m.iter().enumerate().take(pair[1]).skip(pair[0]) {
            let h = height - offset - slope * i as f64;
            let v = (i - pair[0]) as f64 / width;
            let u = 1.0 - v;
            diagonal[s] += u * u;
            diagonal[s + 1] += v * v;
            beside[s] += u * v;
            right[s] += u * h;
            right[s + 1] += v * h;
        }
    }
    // The ends are fixed at the chord, which is zero there, so only the inner knots are unknown.
    let mut levels = vec![0.0; k];
    let (mut upper, mut value) = (vec![0.0; k], vec![0.0; k]);
    for s in 1..k - 1 {
        let lower = if s > 1 { beside[s - 1] } else { 0.0 };
        let pivot = diagonal[s] - lower * upper[s - 1];
        upper[s] = if s + 1 < k - 1 { beside[s] / pivot } else { 0.0 };
        value[s] = (right[s] - lower * value[s - 1]) / pivot;
    }
    for s in (1..k - 1).rev() {
        levels[s] = value[s] - upper[s] * levels[s + 1];
    }
    for (level, knot) in levels.iter_mut().zip(knots) {
        *level += offset + slope * *knot as f64;
    }
    (levels[0], levels[k - 1]) = (first, last);
    levels
}
