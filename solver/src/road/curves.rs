//! Curves of the road in plan: radius and direction from the cleaned track.
//!
//! A circle is fitted to the points of a window around each cell: over 30 m inside a hairpin, or nearly one;
//! over 50 m elsewhere; over 90 m where that is not tight. The windows are chosen by the radii of generated
//! roads: wider ones blur bends of 60 to 120 m. Recorded points cut corners, so fitted radii err to the small
//! side, which is the slow side. A radius is an estimate.

use super::hairpins;
use super::profile::cells_in;
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// Turn of a sharp bend, degrees. It is fitted over the narrow window.
const SHARP_DEG: f64 = 135.0;
/// Length within which a sharp bend turns by that much, metres.
const SHARP_M: f64 = 80.0;
/// Windows of the fit, metres; odd multiples of the grid, so that a cell lies in the middle.
const TIGHT_M: f64 = 30.0;
const USUAL_M: f64 = 50.0;
const WIDE_M: f64 = 90.0;
/// The wide window is used where the usual one gives a larger radius than this, metres.
const NOT_TIGHT_M: f64 = 120.0;
/// Larger radii are no curve for a truck, metres.
const LARGEST_M: f64 = 500.0;
/// A bend with a smaller turn is a wiggle of the recording, degrees.
const LEAST_TURN_DEG: f64 = 8.0;
/// Rounds of the fit; five are usual.
const MOST_ROUNDS: usize = 25;

/// Direction in which a curve turns, seen in the direction of travel.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Turn {
    /// To the left.
    Left,
    /// To the right.
    Right,
}

impl Turn {
    pub(super) fn opposite(self) -> Turn {
        match self {
            Turn::Left => Turn::Right,
            Turn::Right => Turn::Left,
        }
    }
}

/// A curve of the road.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Curve {
    /// Grid index of its start.
    pub from: usize,
    /// Grid index of its end; greater than `from`.
    pub to: usize,
    /// Radius, metres, at most 500: the median of the tightest third of its cells.
    pub radius_m: f64,
    /// Direction in which it turns.
    pub turn: Turn,
    /// Whether it is a turn of 150° or more with a radius under 30 m, or the longest part of one.
    pub hairpin: bool,
}

/// The curves of a road. `plan` has its points, metres east and north; `known` says for each cell whether the
/// file has points there.
pub(super) fn find(plan: &[(f64, f64)], known: &[bool], step_m: f64) -> Vec<Curve> {
    let cells = known.len();
    let turns = turns(plan, known);
    let sharp = mark_sharp(&turns, cells, step_m);
    let width = |length_m: f64| cells_in(length_m, step_m) | 1;
    let fit = |cell: usize, width: usize| {
        let half = width / 2;
        let range = cell.checked_sub(half)?..cell + half + 1;
        let whole = range.end <= cells && known[range.clone()].iter().all(|known| *known);
        whole.then(|| circle_radius(&plan[range.start..=range.end])).flatten()
    };
    let radius = |cell: usize| {
        if sharp[cell] {
            return fit(cell, width(TIGHT_M));
        }
        let usual = fit(cell, width(USUAL_M))?;
        if usual > NOT_TIGHT_M { fit(cell, width(WIDE_M)).or(Some(usual)) } else { Some(usual) }
    };
    let radii: Vec<f64> = (0..cells).map(|cell| radius(cell).unwrap_or(f64::INFINITY)).collect();
    let mut curves = gather(&radii, &turns, &sharp);
    for hairpin in hairpins::find(&turns, step_m) {
        mark_hairpin(&mut curves, &hairpin);
    }
    curves
}

/// Marks the curve that has most of a hairpin.
fn mark_hairpin(curves: &mut [Curve], hairpin: &Range<usize>) {
    let shared = |curve: &Curve| curve.to.min(hairpin.end).saturating_sub(curve.from.max(hairpin.start));
    if let Some(curve) = curves.iter_mut().max_by_key(|curve| shared(curve)).filter(|it| shared(it) > 0) {
        curve.hairpin = true;
    }
}

/// Change of heading at each inner point, radians, left positive; 0 beside unknown cells.
fn turns(plan: &[(f64, f64)], known: &[bool]) -> Vec<f64> {
    let cells = known.len();
    let heading = |cell: usize| {
        let ((ax, ay), (bx, by)) = (plan[cell], plan[cell + 1]);
        libm::atan2(by - ay, bx - ax)
    };
    let full = 2.0 * std::f64::consts::PI;
    let mut turns = vec![0.0; cells + 1];
    for point in 1..cells {
        if known[point - 1] && known[point] {
            let turn = heading(point) - heading(point - 1);
            turns[point] = turn - full * (turn / full).round();
        }
    }
    turns
}

/// Marks cells of windows of [`SHARP_M`] that turn by [`SHARP_DEG`], if the cell itself turns that way.
fn mark_sharp(turns: &[f64], cells: usize, step_m: f64) -> Vec<bool> {
    let width = cells_in(SHARP_M, step_m).min(cells);
    let mut sharp = vec![false; cells];
    for from in 0..=cells - width {
        // The turns at the inner points of the window's cells.
        let inner = &turns[from + 1..from + width];
        let sum: f64 = inner.iter().sum();
        if sum.abs() >= SHARP_DEG.to_radians() {
            for (point, turn) in (from + 1..).zip(inner) {
                if turn * sum > 0.0 {
                    sharp[point - 1] = true;
                    sharp[point] = true;
                }
            }
        }
    }
    sharp
}

/// Joins neighbouring cells that turn in one direction into curves.
fn gather(radii: &[f64], turns: &[f64], sharp: &[bool]) -> Vec<Curve> {
    let side = |cell: usize| {
        let turn = turns[cell] + turns[cell + 1];
        let curved = radii[cell] <= LARGEST_M && turn.abs() > 0.0;
        curved.then(|| (if turn > 0.0 { Turn::Left } else { Turn::Right }, sharp[cell]))
    };
    let mut curves = Vec::new();
    let mut from = 0;
    for cell in 1..=radii.len() {
        let ended = cell == radii.len() || side(cell) != side(from);
        if !ended {
            continue;
        }
        if let Some((turn, _)) = side(from) {
            let sum: f64 = turns[from..=cell].iter().sum();
            if sum.abs() >= LEAST_TURN_DEG.to_radians() {
                let radius_m = tight(&radii[from..cell]);
                curves.push(Curve { from, to: cell, radius_m, turn, hairpin: false });
            }
        }
        from = cell;
    }
    curves
}

/// The median of the smallest third: one odd window does not make a curve tighter.
fn tight(radii: &[f64]) -> f64 {
    let order = crate::order::ascending(radii.iter().copied());
    radii[order[order.len().div_ceil(3) / 2]]
}

/// Radius of the circle that fits points best, metres; `None` where they lie on a line.
///
/// Taubin's algebraic fit: G. Taubin 1991, IEEE PAMI 13(11); the Newton form of N. Chernov, "Circular and
/// Linear Regression", 2010 (value and form from memory). It has little bias on short arcs. The minimum-norm
/// fit returns small circles even on straights.
fn circle_radius(points: &[(f64, f64)]) -> Option<f64> {
    let n = points.len() as f64;
    let (mut mx, mut my) = (0.0, 0.0);
    for (x, y) in points {
        mx += x / n;
        my += y / n;
    }
    let (mut xx, mut yy, mut xy, mut xz, mut yz, mut zz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    for (x, y) in points {
        let (x, y) = (x - mx, y - my);
        let z = x * x + y * y;
        xx += x * x / n;
        yy += y * y / n;
        xy += x * y / n;
        xz += x * z / n;
        yz += y * z / n;
        zz += z * z / n;
    }
    let z = xx + yy;
    let det = xx * yy - xy * xy;
    // Points less than a millimetre in a kilometre off their line are a straight.
    if det <= 1e-12 * z * z {
        return None;
    }
    let variance = zz - z * z;
    let (a3, a2) = (4.0 * z, -3.0 * z * z - zz);
    let a1 = variance * z + 4.0 * det * z - xz * xz - yz * yz;
    let a0 = xz * (xz * yy - yz * xy) + yz * (yz * xx - xz * xy) - variance * det;
    let (mut root, mut value) = (0.0, a0);
    for _ in 0..MOST_ROUNDS {
        let slope = a1 + root * (2.0 * a2 + root * 3.0 * a3);
        let next = root - value / slope;
        let there = a0 + next * (a1 + next * (a2 + next * a3));
        if !next.is_finite() || there.abs() >= value.abs() {
            break;
        }
        (root, value) = (next, there);
    }
    let bottom = 2.0 * (root * root - root * z + det);
    let (cx, cy) = ((xz * (yy - root) - yz * xy) / bottom, (yz * (xx - root) - xz * xy) / bottom);
    let radius = (cx * cx + cy * cy + z).sqrt();
    radius.is_finite().then_some(radius)
}

#[cfg(test)]
mod tests {
    use super::{Turn, circle_radius, find};

    /// Points every 10 m along pieces of (length, turn per metre, left positive).
    fn line(pieces: &[(f64, f64)]) -> Vec<(f64, f64)> {
        let (mut x, mut y, mut heading) = (0.0, 0.0, 0.3_f64);
        let mut points = vec![(x, y)];
        for (length, curvature) in pieces {
            for step in 1..=(length * 10.0) as usize {
                heading += curvature * 0.1;
                x += 0.1 * libm::cos(heading);
                y += 0.1 * libm::sin(heading);
                if step % 100 == 0 {
                    points.push((x, y));
                }
            }
        }
        points
    }

    #[test]
    fn points_on_a_circle_give_its_radius() {
        let on = |radius: f64| -> Vec<(f64, f64)> {
            (0..7)
                .map(|k| 0.1 * f64::from(k))
                .map(|a| (radius * libm::cos(a), radius * libm::sin(a)))
                .collect()
        };
        for radius in [12.0, 60.0, 300.0] {
            let found = circle_radius(&on(radius)).expect("a circle");
            assert!((found / radius - 1.0).abs() < 1e-6, "{radius}: {found}");
        }
        assert_eq!(circle_radius(&[(0.0, 0.0), (10.0, 5.0), (20.0, 10.0), (30.0, 15.0)]), None);
    }

    #[test]
    fn curves_of_a_clean_line_are_found_with_side_and_radius() {
        let plan =
            line(&[(300.0, 0.0), (150.0, 1.0 / 100.0), (300.0, 0.0), (60.0, -1.0 / 20.0), (300.0, 0.0)]);
        let curves = find(&plan, &vec![true; plan.len() - 1], 10.0);
        let [wide, tight] = &curves[..] else { panic!("two curves: {curves:?}") };
        assert_eq!((wide.turn, wide.hairpin), (Turn::Left, false));
        assert!((wide.radius_m - 100.0).abs() < 5.0, "{wide:?}");
        assert_eq!((tight.turn, tight.hairpin), (Turn::Right, true));
        assert!((tight.radius_m - 20.0).abs() < 2.0, "{tight:?}");
    }

    #[test]
    fn a_straight_has_none_and_none_is_seen_across_a_gap() {
        let straight = line(&[(2_000.0, 0.0)]);
        assert!(find(&straight, &vec![true; straight.len() - 1], 10.0).is_empty());
        let corner = line(&[(500.0, 0.0), (0.1, 10.0), (500.0, 0.0)]);
        let mut known = vec![true; corner.len() - 1];
        let middle = known.len() / 2;
        known[middle - 2..middle + 2].fill(false);
        assert!(find(&corner, &known, 10.0).is_empty());
    }
}
