//! Runs of one value along the road, in pixels.
//!
//! Where several values fall into one pixel column the most severe is drawn: a short hot
//! stretch of a long road is never hidden by the cool road around it. A band too narrow to be read
//! goes to its more severe neighbour, and one that is more severe than both is widened: nothing
//! shimmers while zooming, and nothing severe is lost.

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
    settled(tile(values, step_m, window, across, merge), merge)
}

/// No band is narrower where a neighbour can take it or make room, px.
pub(crate) const NARROWEST_PX: f64 = 4.0;

/// Bands of which none is too narrow to be read. `severe` gives the more severe of two values.
fn settled(all: Vec<Band>, severe: impl Fn(Option<u8>, Option<u8>) -> Option<u8>) -> Vec<Band> {
    let worse = |a: &Band, b: &Band| severe(a.value, b.value) == a.value;
    let mut kept: Vec<Band> = Vec::with_capacity(all.len());
    for band in all {
        push(&mut kept, band);
        // The last but one knows both its neighbours now; when it goes, so does the one before. Ends: each
        // round has one band less.
        while let [.., before, narrow, last] = &mut kept[..] {
            let neighbour = if worse(before, last) { *before } else { *last };
            if narrow.width() >= NARROWEST_PX || worse(narrow, &neighbour) {
                break;
            }
            let last = Band { x0: if neighbour == *before { narrow.x1 } else { narrow.x0 }, ..*last };
            before.x1 = last.x0;
            kept.truncate(kept.len() - 2);
            push(&mut kept, last);
        }
    }
    settle_ends(&mut kept, worse);
    widen(&mut kept, worse);
    kept
}

/// Adds a band, or lengthens the last one of its value.
fn push(kept: &mut Vec<Band>, band: Band) {
    match kept.last_mut() {
        Some(last) if last.value == band.value => last.x1 = band.x1,
        Some(_) | None => kept.push(band),
    }
}

/// The first and the last have one neighbour.
fn settle_ends(kept: &mut Vec<Band>, worse: impl Fn(&Band, &Band) -> bool) {
    if let [first, second, ..] = &mut kept[..]
        && first.width() < NARROWEST_PX
        && worse(second, first)
    {
        second.x0 = first.x0;
        kept.remove(0);
    }
    if let [.., before, last] = &mut kept[..]
        && last.width() < NARROWEST_PX
        && worse(before, last)
    {
        before.x1 = last.x1;
        kept.pop();
    }
}

/// Widens what is too narrow and more severe than its neighbours, as far as they can make room.
fn widen(kept: &mut [Band], worse: impl Fn(&Band, &Band) -> bool) {
    for index in 0..kept.len() {
        let lacks = NARROWEST_PX - kept[index].width();
        if lacks <= 0.0 {
            continue;
        }
        let gives = |other: Option<&Band>| {
            let milder = other.filter(|it| worse(&kept[index], it));
            milder.map_or(0.0, |it| (it.width() - NARROWEST_PX).max(0.0))
        };
        let room = [gives(index.checked_sub(1).and_then(|it| kept.get(it))), gives(kept.get(index + 1))];
        let before = (0.5 * lacks).max(lacks - room[1]).min(room[0]);
        let after = (lacks - before).min(room[1]);
        if before > 0.0 {
            kept[index - 1].x1 -= before;
            kept[index].x0 -= before;
        }
        if after > 0.0 {
            kept[index + 1].x0 += after;
            kept[index].x1 += after;
        }
    }
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

    /// A value every few px: `(width, value)`.
    fn drawn(widths: &[(usize, u8)], worse: impl Fn(u8, u8) -> u8) -> Vec<(f64, f64, u8)> {
        let mut values: Vec<Option<u8>> = Vec::new();
        for (width, value) in widths {
            values.extend(vec![Some(*value); *width]);
        }
        values.push(None);
        let window = Window::whole((values.len() - 1) as f64);
        let across = Scale::new((0.0, window.to), (0.0, window.to));
        let all = bands(&values, 1.0, window, &across, worse);
        check_tiling(&all, 0.0, window.to);
        all.iter().map(|it| (it.x0, it.x1, it.value.expect("all are known"))).collect()
    }

    #[test]
    fn a_narrow_band_goes_to_its_more_severe_neighbour() {
        assert_eq!(drawn(&[(50, 2), (3, 1), (50, 3)], u8::max), [(0.0, 50.0, 2), (50.0, 103.0, 3)]);
        assert_eq!(drawn(&[(50, 3), (3, 1), (50, 2)], u8::max), [(0.0, 53.0, 3), (53.0, 103.0, 2)]);
        assert_eq!(drawn(&[(50, 3), (3, 1), (50, 3)], u8::max), [(0.0, 103.0, 3)]);
        assert_eq!(drawn(&[(2, 1), (50, 3), (2, 0)], u8::max), [(0.0, 54.0, 3)]);
        let shimmering: Vec<_> = (0..40).map(|it| (2, 1 + it % 2)).collect();
        assert_eq!(drawn(&shimmering, u8::max).len(), 1);
    }

    #[test]
    fn a_narrow_severe_band_is_widened_and_no_more() {
        assert_eq!(
            drawn(&[(50, 1), (2, 3), (50, 1)], u8::max),
            [(0.0, 49.0, 1), (49.0, 53.0, 3), (53.0, 102.0, 1)]
        );
        assert_eq!(drawn(&[(1, 3), (50, 1)], u8::max), [(0.0, 4.0, 3), (4.0, 51.0, 1)]);
        // Of gears the lowest is the severe one.
        assert_eq!(drawn(&[(50, 9), (2, 3), (50, 9)], u8::min)[1], (49.0, 53.0, 3));
    }

    #[test]
    fn what_is_wide_enough_stays_as_it_is() {
        let wide = [(4, 1), (20, 3), (5, 2), (90, 0)];
        assert_eq!(drawn(&wide, u8::max).len(), 4);
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
