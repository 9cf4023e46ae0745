//! The strip of the whole road, with the window on it.

use super::bands::bands;
use super::decimate::{clip, lines};
use super::markup::Markup;
use super::path::Path;
use super::reading::Reading;
use super::scale::Scale;
use super::scene::{HATCHES, Prepared, hatch_id};
use super::window::Window;

/// Height of the strip, px.
pub(crate) const HEIGHT: f64 = 48.0;
/// What can be caught of a handle on either side of it, px: a finger is wide.
const HANDLE_PX: f64 = 16.0;

/// Metres of the whole road to px of the strip.
#[must_use]
pub(crate) fn across(length: f64, ends: (f64, f64)) -> Scale {
    Scale::new((0.0, length), ends)
}

/// Draws the whole road, filled by the same reading as the profile.
#[must_use]
pub(crate) fn draw(prepared: &Prepared, ends: (f64, f64), ids: &str) -> Markup {
    let mut layer = Markup::default();
    let picture = &prepared.picture;
    let whole = Window::whole(picture.length_m());
    let across = across(whole.to, ends);
    let (low, high) = picture.heights_in(whole);
    let up = Scale::new((low - 0.12 * (high - low).max(60.0), high.max(low + 60.0)), (HEIGHT, 4.0));
    let line: Vec<(f64, f64)> = lines(&picture.heights_m, picture.step(), whole, &across, &up).concat();
    let tones = &prepared.fill_tones;
    let reading = tones.reading();
    let all = bands(&prepared.fill, picture.step(), whole, &across, |a, b| reading.worse(a, b));
    let areas = |wanted: &dyn Fn(u8) -> bool| {
        let mut path = Path::default();
        for band in all.iter().filter(|band| band.value.is_some_and(wanted)) {
            path.area(&clip(&line, band.x0, band.x1), HEIGHT);
        }
        path
    };
    for value in tones.used() {
        layer.path(&tones.filled(*value), &areas(&|it| it == *value));
    }
    if reading == Reading::Stage {
        for stage in 1..=HATCHES {
            let path = areas(&|it| it > 0 && it.min(HATCHES) == stage);
            layer.patterned("hatched", &hatch_id(ids, stage), &path);
        }
    }
    let mut road = Path::default();
    road.polyline(&line);
    layer.path("road-line thin", &road);
    layer
}

/// What of the strip is held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Grip {
    /// The beginning of the window.
    From,
    /// Its end.
    To,
    /// The window, at this distance from its beginning, m.
    Body(f64),
    /// A new window is drawn from here, m.
    New(f64),
}

/// What a pointer catches that goes down at `x`, px.
#[must_use]
pub(crate) fn grip_at(x: f64, window: Window, across: &Scale) -> Grip {
    let (x0, x1) = (across.at(window.from), across.at(window.to));
    let at = across.back(x);
    let (near_from, near_to) = ((x - x0).abs(), (x - x1).abs());
    if near_from.min(near_to) <= HANDLE_PX {
        // Of two handles close to each other the one on the pointer's side is meant.
        if near_from < near_to || (near_from <= near_to && x < x0) { Grip::From } else { Grip::To }
    } else if window.is_whole(across.domain().1) || !window.shows(at) {
        Grip::New(at)
    } else {
        Grip::Body(at - window.from)
    }
}

/// The window after what is held was drawn to `x`, px.
#[must_use]
pub(crate) fn drawn(grip: Grip, x: f64, window: Window, across: &Scale) -> Window {
    let length = across.domain().1;
    let at = across.back(x);
    match grip {
        Grip::From => window.with_from(at, length),
        Grip::To => window.with_to(at, length),
        Grip::Body(offset) => window.moved(at - offset - window.from, length),
        Grip::New(began) => Window::between(began, at, length),
    }
}

#[cfg(test)]
mod tests {
    use super::{Grip, across, drawn, grip_at};
    use crate::chart::window::Window;

    const LENGTH: f64 = 100_000.0;
    const ENDS: (f64, f64) = (0.0, 1000.0);

    #[test]
    fn what_is_caught() {
        let scale = across(LENGTH, ENDS);
        let window = Window { from: 20_000.0, to: 60_000.0 };
        assert_eq!(grip_at(205.0, window, &scale), Grip::From);
        assert_eq!(grip_at(590.0, window, &scale), Grip::To);
        assert_eq!(grip_at(400.0, window, &scale), Grip::Body(20_000.0));
        assert_eq!(grip_at(900.0, window, &scale), Grip::New(90_000.0));
        assert_eq!(grip_at(400.0, Window::whole(LENGTH), &scale), Grip::New(40_000.0));
    }

    #[test]
    fn drawing_never_leaves_the_road() {
        let scale = across(LENGTH, ENDS);
        let window = Window { from: 20_000.0, to: 60_000.0 };
        for grip in [Grip::From, Grip::To, Grip::Body(5_000.0), Grip::New(99_900.0), Grip::New(40_000.0)] {
            for x in [-500.0, 0.0, 333.0, 999.9, 5_000.0] {
                let it = drawn(grip, x, window, &scale);
                assert!(
                    it.from >= 0.0 && it.to <= LENGTH + 1e-6 && it.length() >= 299.9,
                    "{grip:?} {x} {it:?}"
                );
            }
        }
        let moved = drawn(Grip::Body(20_000.0), 500.0, window, &scale);
        assert!((moved.from - 30_000.0).abs() < 1e-6 && (moved.length() - 40_000.0).abs() < 1e-6);
    }
}
