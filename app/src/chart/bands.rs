//! Runs of one value along the road, in pixels.
//!
//! Where several values fall into one pixel column the most severe is drawn: a short hot
//! stretch of a long road is never hidden by the cool road around it.

use super::scale::Scale;
use super::window::Window;

/// A run of one value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Band {
    /// Where it begins, px.
    pub(crate) x0: f64,
    /// Where it ends, px.
    pub(crate) x1: f64,
    /// The value; `None` where nothing is known.
    pub(crate) value: Option<u8>,
}

impl Band {
    /// Width, px.
    #[must_use]
    pub(crate) fn width(&self) -> f64 {
        self.x1 - self.x0
    }

    /// Middle, px.
    #[must_use]
    pub(crate) fn middle(&self) -> f64 {
        0.5 * (self.x0 + self.x1)
    }
}

/// Bands of `values` in `window`: they tile it from end to end, as far as there are values, without gap or overlap, and
/// neighbours differ.
///
/// A value holds from its grid point to the next. `worse` says which of two values is the
/// more severe; any known value is drawn over `None` in the same column, unknown stretches
/// being drawn on their own by [`blanks`].
#[must_use]
pub(crate) fn bands(
    values: &[Option<u8>],
    step_m: f64,
    window: Window,
    across: &Scale,
    worse: impl Fn(u8, u8) -> u8,
) -> Vec<Band> {
    let merge = |a: Option<u8>, b: Option<u8>| match (a, b) {
        (Some(a), Some(b)) => Some(worse(a, b)),
        (Some(one), None) | (None, Some(one)) => Some(one),
        (None, None) => None,
    };
    tile(values, step_m, window, across, merge)
}

/// Stretches of `window` where `values` is `None`, each drawn at least one pixel wide.
#[must_use]
pub(crate) fn blanks(values: &[Option<u8>], step_m: f64, window: Window, across: &Scale) -> Vec<Band> {
    let merge = |a: Option<u8>, b: Option<u8>| match (a, b) {
        (Some(known), Some(_)) => Some(known),
        (None, Some(_)) | (Some(_), None) | (None, None) => None,
    };
    let level: Vec<Option<u8>> = values.iter().map(|value| value.map(|_| 0)).collect();
    let all = tile(&level, step_m, window, across, merge);
    all.into_iter().filter(|band| band.value.is_none()).collect()
}

fn tile(
    values: &[Option<u8>],
    step_m: f64,
    window: Window,
    across: &Scale,
    merge: impl Fn(Option<u8>, Option<u8>) -> Option<u8>,
) -> Vec<Band> {
    let mut all = Vec::new();
    let cells = values.len().saturating_sub(1);
    if cells == 0 || step_m <= 0.0 || window.length() <= 0.0 {
        return all;
    }
    // A window may go on behind the road, where a longer one stands beside it.
    let length = cells as f64 * step_m;
    if window.from >= length {
        return all;
    }
    let first = ((window.from / step_m).floor().max(0.0) as usize).min(cells - 1);
    let end = ((window.to / step_m).ceil().max(0.0) as usize).clamp(first + 1, cells);
    let (left, right) = across.range();
    let right = if window.to > length { across.at(length).clamp(left, right) } else { right };
    let columns = ((right - left).max(1.0)) as usize;
    let count = end - first;
    // Fewer cells than columns: each is as wide as it is. Otherwise a column takes whole
    // cells, and every cell belongs to exactly one column.
    let parts = count.min(columns);
    for part in 0..parts {
        let low = first + part * count / parts;
        let high = first + (part + 1) * count / parts;
        let value = values[low..high].iter().copied().reduce(&merge).flatten();
        let x1 = if part + 1 == parts { right } else { across.at(high as f64 * step_m) };
        extend(&mut all, left, x1.clamp(left, right), value);
    }
    all
}

/// Lengthens the last band to `x1`, or begins another there where the value changes.
fn extend(all: &mut Vec<Band>, left: f64, x1: f64, value: Option<u8>) {
    match all.last_mut() {
        Some(last) if last.value == value => last.x1 = x1,
        Some(last) => {
            let x0 = last.x1;
            all.push(Band { x0, x1, value });
        }
        None => all.push(Band { x0: left, x1, value }),
    }
}

#[cfg(test)]
mod tests {
    use super::{Band, bands, blanks};
    use crate::chart::scale::Scale;
    use crate::chart::window::Window;

    const STEP: f64 = 10.0;

    fn check_tiling(all: &[Band], left: f64, right: f64) {
        assert!((all[0].x0 - left).abs() < 1e-9);
        assert!((all[all.len() - 1].x1 - right).abs() < 1e-9);
        for pair in all.windows(2) {
            assert!((pair[0].x1 - pair[1].x0).abs() < 1e-9, "{pair:?}");
            assert_ne!(pair[0].value, pair[1].value);
        }
        assert!(all.iter().all(|band| band.width() >= 0.0));
    }

    #[test]
    fn bands_end_with_the_road() {
        let values = [Some(1), Some(1), Some(2), Some(2), Some(2)];
        let window = Window { from: 0.0, to: 80.0 };
        let across = Scale::new((0.0, 80.0), (0.0, 800.0));
        let all = bands(&values, 10.0, window, &across, u8::max);
        assert_eq!(all.last().map(|band| (band.x1, band.value)), Some((400.0, Some(2))));
        let behind = Window { from: 50.0, to: 80.0 };
        assert!(bands(&values, 10.0, behind, &across, u8::max).is_empty());
    }

    #[test]
    fn bands_tile_every_window() {
        let values: Vec<Option<u8>> =
            (0..5_000_u32).map(|i| if i % 400 < 30 { None } else { Some((i / 13 % 7) as u8) }).collect();
        let length = 4_999.0 * STEP;
        for window in [
            Window::whole(length),
            Window { from: 123.4, to: 456.7 },
            Window { from: 0.0, to: 300.0 },
            Window { from: length - 301.0, to: length },
        ] {
            let across = Scale::new((window.from, window.to), (84.0, 984.0));
            check_tiling(&bands(&values, STEP, window, &across, u8::max), 84.0, 984.0);
        }
    }

    #[test]
    fn the_most_severe_value_of_a_column_is_drawn() {
        for place in [0_usize, 7, 24_999, 49_990] {
            let mut heat = vec![Some(0_u8); 50_000];
            heat[place] = Some(3);
            let window = Window::whole(49_999.0 * STEP);
            let across = Scale::new((window.from, window.to), (0.0, 300.0));
            let all = bands(&heat, STEP, window, &across, u8::max);
            let hot: Vec<_> = all.iter().filter(|b| b.value == Some(3)).collect();
            assert_eq!(hot.len(), 1, "at {place}");
            assert!(hot[0].width() >= 0.9, "{}", hot[0].width());
            // Of gears the lowest is the severe one.
            let mut gear = vec![Some(9_u8); 50_000];
            gear[place] = Some(3);
            let low = bands(&gear, STEP, window, &across, u8::min);
            assert_eq!(low.iter().filter(|b| b.value == Some(3)).count(), 1);
        }
    }

    #[test]
    fn a_short_unknown_stretch_is_still_shown() {
        let mut values = vec![Some(1_u8); 50_000];
        values[31_000] = None;
        let window = Window::whole(49_999.0 * STEP);
        let across = Scale::new((window.from, window.to), (0.0, 300.0));
        let all = blanks(&values, STEP, window, &across);
        assert_eq!(all.len(), 1);
        assert!(all[0].width() >= 0.9);
    }

    #[test]
    fn a_change_is_drawn_where_it_happens() {
        let mut values = vec![Some(8_u8); 101];
        for value in &mut values[40..] {
            *value = Some(6);
        }
        let window = Window::whole(1000.0);
        let across = Scale::new((0.0, 1000.0), (0.0, 1000.0));
        let all = bands(&values, STEP, window, &across, u8::min);
        assert_eq!(all.len(), 2);
        assert!((all[0].x1 - 400.0).abs() < 1e-9);
    }
}
