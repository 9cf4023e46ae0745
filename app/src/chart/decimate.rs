//! Lines of many points drawn in few: per pixel column the first, lowest, highest and last
//! value in the order in which they occur.
//!
//! No peak and no trough is ever dropped: what is drawn stays within [`STRAIGHT_PX`] of the
//! line through all points, which is less than a path's numbers tell apart.

use super::scale::Scale;
use super::window::Window;

/// The line of `values` (one a grid point, `step_m` apart) inside `window`, in px, in as
/// many pieces as gaps leave: a value that is not finite ends a piece.
///
/// `across` maps metres to px, `up` the values. Pieces of a single point are left out.
#[must_use]
pub(crate) fn lines(
    values: &[f32],
    step_m: f64,
    window: Window,
    across: &Scale,
    up: &Scale,
) -> Vec<Vec<(f64, f64)>> {
    let mut pieces = Vec::new();
    let mut piece = Piece::default();
    for index in covered(values.len(), step_m, window) {
        let value = f64::from(values[index]);
        if value.is_finite() {
            piece.add(across.at(index as f64 * step_m), up.at(value));
        } else {
            piece.finish(&mut pieces);
        }
    }
    piece.finish(&mut pieces);
    pieces
}

/// Grid points needed to draw `window`: all inside and one beyond either end.
#[must_use]
pub(crate) fn covered(count: usize, step_m: f64, window: Window) -> std::ops::Range<usize> {
    if count == 0 || step_m <= 0.0 {
        return 0..0;
    }
    let first = (window.from / step_m).floor().max(0.0) as usize;
    let last = (window.to / step_m).ceil().max(0.0) as usize;
    first.min(count - 1)..(last + 1).min(count)
}

/// Points of a line that stay nearer than this to a straight one are not needed, px.
const STRAIGHT_PX: f64 = 0.05;

/// The line without the points that a straight one between those kept passes within
/// [`STRAIGHT_PX`]. `points` rise in x; the first and the last are kept.
fn straightened(points: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut kept = vec![points[0]];
    let mut anchor = points[0];
    // Slopes from the anchor that pass every point since within the tolerance.
    let mut slopes = (f64::NEG_INFINITY, f64::INFINITY);
    for pair in points.windows(2) {
        let (before, point) = (pair[0], pair[1]);
        let run = point.0 - anchor.0;
        let slope = (point.1 - anchor.1) / run;
        if slope < slopes.0 || slope > slopes.1 {
            kept.push(before);
            anchor = before;
            slopes = (f64::NEG_INFINITY, f64::INFINITY);
        }
        let (run, rise) = (point.0 - anchor.0, point.1 - anchor.1);
        slopes = (slopes.0.max((rise - STRAIGHT_PX) / run), slopes.1.min((rise + STRAIGHT_PX) / run));
    }
    kept.push(points[points.len() - 1]);
    kept
}

/// The part of a line between `x0` and `x1`, with its ends interpolated. `points` rise in x.
#[must_use]
pub(crate) fn clip(points: &[(f64, f64)], x0: f64, x1: f64) -> Vec<(f64, f64)> {
    let begin = points.partition_point(|p| p.0 < x0);
    let end = points.partition_point(|p| p.0 <= x1);
    let mut part = Vec::with_capacity(end.saturating_sub(begin) + 2);
    if let Some(edge) = between(points, begin, x0) {
        part.push(edge);
    }
    if begin < end {
        part.extend_from_slice(&points[begin..end]);
    }
    if let Some(edge) = between(points, end, x1) {
        part.push(edge);
    }
    part
}

/// The point at `x` on the stretch that ends at point number `next`.
fn between(points: &[(f64, f64)], next: usize, x: f64) -> Option<(f64, f64)> {
    let after = points.get(next)?;
    let before = points.get(next.checked_sub(1)?)?;
    let width = after.0 - before.0;
    if width <= 0.0 {
        return Some((x, after.1));
    }
    Some((x, before.1 + (x - before.0) / width * (after.1 - before.1)))
}

/// One unbroken piece, and the pixel column that is being filled.
#[derive(Default)]
struct Piece {
    points: Vec<(f64, f64)>,
    column: Option<Column>,
}

struct Column {
    pixel: f64,
    first: (f64, f64),
    least: (f64, f64),
    most: (f64, f64),
    last: (f64, f64),
}

impl Piece {
    fn add(&mut self, x: f64, y: f64) {
        let pixel = x.floor();
        match &mut self.column {
            Some(column) if (column.pixel - pixel).abs() < 0.5 => {
                if y < column.least.1 {
                    column.least = (x, y);
                }
                if y > column.most.1 {
                    column.most = (x, y);
                }
                column.last = (x, y);
            }
            Some(_) | None => {
                self.flush();
                let point = (x, y);
                self.column = Some(Column { pixel, first: point, least: point, most: point, last: point });
            }
        }
    }

    fn flush(&mut self) {
        let Some(column) = self.column.take() else { return };
        let (early, late) = if column.least.0 <= column.most.0 {
            (column.least, column.most)
        } else {
            (column.most, column.least)
        };
        for point in [column.first, early, late, column.last] {
            // A point is repeated where the first or last is also the lowest or highest.
            if self.points.last().is_none_or(|p| p.0 < point.0) {
                self.points.push(point);
            }
        }
    }

    fn finish(&mut self, pieces: &mut Vec<Vec<(f64, f64)>>) {
        self.flush();
        let points = std::mem::take(&mut self.points);
        if points.len() > 1 {
            pieces.push(straightened(&points));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{clip, lines};
    use crate::chart::scale::Scale;
    use crate::chart::window::Window;

    const STEP: f64 = 10.0;

    fn drawn(values: &[f32], window: Window) -> Vec<Vec<(f64, f64)>> {
        let across = Scale::new((window.from, window.to), (0.0, 900.0));
        let up = Scale::new((0.0, 1000.0), (0.0, 1000.0));
        lines(values, STEP, window, &across, &up)
    }

    #[test]
    fn every_peak_survives_wherever_it_lies() {
        let length = 50_000;
        for peak in [0, 1, 17, 4_999, 25_001, 49_998, 49_999] {
            let mut values: Vec<f32> = (0..length).map(|i| (i % 97) as f32).collect();
            values[peak] = 777.0;
            values[(peak + 5_000) % length] = -333.0;
            let all = drawn(&values, Window::whole((length - 1) as f64 * STEP));
            let points: Vec<_> = all.concat();
            assert!(points.iter().any(|p| (p.1 - 777.0).abs() < 1e-3), "peak {peak}");
            assert!(points.iter().any(|p| (p.1 + 333.0).abs() < 1e-3), "trough {peak}");
            assert!(points.len() <= 4 * 902, "{}", points.len());
        }
    }

    #[test]
    fn what_is_left_out_lies_on_the_line() {
        let values: Vec<f32> = (0..9_000_u16)
            .map(|i| {
                400.0 + 300.0 * (f32::from(i) / 700.0).sin() + if i % 1_500 > 1_300 { 20.0 } else { 0.0 }
            })
            .collect();
        let length = 8_999.0 * STEP;
        let all = drawn(&values, Window::whole(length));
        let points = &all[0];
        assert!(points.len() < 1_500, "{}", points.len());
        // Every value lies between what is drawn on either side of its pixel column.
        for (index, value) in values.iter().enumerate() {
            let x = index as f64 * STEP / length * 900.0;
            let near = clip(points, x.floor() - 1.0, x.floor() + 2.0);
            let low = near.iter().fold(f64::INFINITY, |least, it| least.min(it.1));
            let high = near.iter().fold(f64::NEG_INFINITY, |most, it| most.max(it.1));
            let value = f64::from(*value);
            assert!(low - 0.06 <= value && value <= high + 0.06, "{index}: {value} in {low}..{high}");
        }
    }

    #[test]
    fn points_rise_in_x_and_few_points_are_all_kept() {
        let values: Vec<f32> =
            (0..60).map(|i| if i % 2 == 0 { (i % 11) as f32 } else { -((i % 7) as f32) - 1.0 }).collect();
        let all = drawn(&values, Window::whole(590.0));
        assert_eq!(all.len(), 1);
        assert_eq!(all[0].len(), 60);
        assert!(all[0].windows(2).all(|pair| pair[0].0 < pair[1].0));
    }

    #[test]
    fn gaps_break_the_line() {
        let mut values = vec![5.0_f32; 100];
        values[40] = f32::NAN;
        let all = drawn(&values, Window::whole(990.0));
        assert_eq!(all.len(), 2);
        let end = all[0].last().expect("a piece has points");
        assert!((end.0 - 390.0 / 990.0 * 900.0).abs() < 1e-9);
    }

    #[test]
    fn clipping_interpolates_its_ends() {
        let line = [(0.0, 0.0), (10.0, 10.0), (20.0, 0.0)];
        assert_eq!(clip(&line, 5.0, 15.0), vec![(5.0, 5.0), (10.0, 10.0), (15.0, 5.0)]);
        assert_eq!(clip(&line, 2.0, 4.0), vec![(2.0, 2.0), (4.0, 4.0)]);
        assert_eq!(clip(&line, 0.0, 20.0).len(), 3);
    }
}
