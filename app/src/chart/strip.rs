//! The strip of the whole road, with the window on it.

use super::bands::bands;
use super::cursor::Wish;
use super::decimate::{clip, lines};
use super::markup::Markup;
use super::path::Path;
use super::picture::RoadPicture;
use super::reading::Reading;
use super::scale::Scale;
use super::scene::{HATCHES, Prepared, hatch_id};
use super::window::Window;

/// Width of what can be caught of a handle, px: a finger in a glove is wide.
pub(crate) const HANDLE_PX: f64 = 48.0;

/// Steps of an arrow key from one end of the road to the other.
const KEY_STEPS: f64 = 200.0;

/// Metres of the whole road to px of the strip.
#[must_use]
pub(crate) fn across(length: f64, ends: (f64, f64)) -> Scale {
    Scale::new((0.0, length), ends)
}

/// Draws the whole road, filled by the same reading as the profile.
#[must_use]
pub(crate) fn draw(prepared: &Prepared, ends: (f64, f64), height: f64, ids: &str) -> Markup {
    let mut layer = Markup::default();
    let picture = &prepared.picture;
    let whole = Window::whole(picture.length_m());
    let across = across(whole.to, ends);
    let (low, high) = picture.heights_in(whole);
    let up = Scale::new((low - 0.12 * (high - low).max(60.0), high.max(low + 60.0)), (height, 4.0));
    let line: Vec<(f64, f64)> = lines(&picture.heights_m, picture.step(), whole, &across, &up).concat();
    let tones = &prepared.fill_tones;
    let reading = tones.reading();
    let all = bands(&prepared.fill, picture.step(), whole, &across, |a, b| reading.worse(a, b));
    let areas = |wanted: &dyn Fn(u8) -> bool| {
        let mut path = Path::default();
        for band in all.iter().filter(|band| band.value.is_some_and(wanted)) {
            path.area(&clip(&line, band.x0, band.x1), height);
        }
        path
    };
    let mut ground = Path::default();
    ground.area(&line, height);
    layer.path("ground", &ground);
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

/// Where what can be caught of each handle begins, px: half of it lies on either side, but a
/// third of a narrow window is left to be moved, and all of it lies on a drawing of this width.
#[must_use]
pub(crate) fn reaches(window: Window, across: &Scale, width: f64) -> [f64; 2] {
    let (x0, x1) = (across.at(window.from), across.at(window.to));
    let inside = (0.5 * HANDLE_PX).min((x1 - x0) / 3.0);
    [x0 + inside - HANDLE_PX, x1 - inside].map(|from| from.min(width - HANDLE_PX).max(0.0))
}

/// Draws a handle, and what can be caught of it.
#[must_use]
pub(crate) fn handle(window: Window, across: &Scale, (width, height): (f64, f64), last: bool) -> Markup {
    let mut layer = Markup::default();
    let reach = reaches(window, across, width)[usize::from(last)];
    let x = across.at(if last { window.to } else { window.from });
    let middle = 0.5 * height;
    layer.rectangle("reach", (reach, 0.0), (HANDLE_PX, height), 0.0);
    layer.rectangle("knob", (x - 4.0, middle - 11.0), (8.0, 22.0), 3.0);
    layer.line("knob", (x, middle - 6.0), (x, middle + 6.0));
    layer
}

/// What a pointer catches that goes down at `x`, px.
#[must_use]
pub(crate) fn grip_at(x: f64, window: Window, across: &Scale, width: f64) -> Grip {
    let (x0, x1) = (across.at(window.from), across.at(window.to));
    let at = across.back(x);
    let (near_from, near_to) = ((x - x0).abs(), (x - x1).abs());
    let [from, to] = reaches(window, across, width).map(|it| it <= x && x <= it + HANDLE_PX);
    if from != to {
        if from { Grip::From } else { Grip::To }
    } else if from && to {
        // Of two handles close to each other the one on the pointer's side is meant.
        if near_from < near_to || (near_from <= near_to && x < x0) { Grip::From } else { Grip::To }
    } else if window.is_whole(across.domain().1) || !window.shows(at) {
        Grip::New(at)
    } else {
        Grip::Body(at - window.from)
    }
}

/// The window after a handle heard a key; `None` for keys that mean nothing here. Page keys lead
/// from crest to crest, or from foot to foot.
#[must_use]
pub(crate) fn pressed(last: bool, wish: Wish, picture: &RoadPicture, window: Window) -> Option<Window> {
    let length = picture.length_m();
    let at = if last { window.to } else { window.from };
    let ends = picture.descents.iter().map(|it| picture.place_of(if last { it.to } else { it.from }));
    let to = match wish {
        Wish::Steps(count) => at + f64::from(count) * (length / KEY_STEPS).max(picture.step()),
        Wish::Start => 0.0,
        Wish::End => length,
        Wish::NextDescent => ends.into_iter().find(|it| *it > at + 1.0)?,
        Wish::DescentBefore => ends.rev().find(|it| *it < at - 1.0)?,
        Wish::ZoomIn | Wish::ZoomOut | Wish::ZoomAll | Wish::Act(_) => return None,
    };
    Some(if last { window.with_to(to, length) } else { window.with_from(to, length) })
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
    use super::{Grip, HANDLE_PX, across, drawn, grip_at, pressed, reaches};
    use crate::chart::cursor::Wish;
    use crate::chart::sample;
    use crate::chart::window::Window;

    const LENGTH: f64 = 100_000.0;
    const ENDS: (f64, f64) = (0.0, 1000.0);

    #[test]
    fn what_is_caught() {
        let scale = across(LENGTH, ENDS);
        let window = Window { from: 20_000.0, to: 60_000.0 };
        assert_eq!(grip_at(205.0, window, &scale, ENDS.1), Grip::From);
        assert_eq!(grip_at(590.0, window, &scale, ENDS.1), Grip::To);
        assert_eq!(grip_at(400.0, window, &scale, ENDS.1), Grip::Body(20_000.0));
        assert_eq!(grip_at(900.0, window, &scale, ENDS.1), Grip::New(90_000.0));
        assert_eq!(grip_at(400.0, Window::whole(LENGTH), &scale, ENDS.1), Grip::New(40_000.0));
    }

    #[test]
    fn every_handle_can_be_caught_in_full_and_a_narrow_window_be_moved() {
        let scale = across(LENGTH, (38.0, 994.0));
        for window in [(0.0, LENGTH), (0.0, 300.0), (99_700.0, LENGTH), (50_000.0, 53_000.0)] {
            let window = Window { from: window.0, to: window.1 };
            for from in reaches(window, &scale, 1000.0) {
                assert!(from >= 0.0 && from + HANDLE_PX <= 1000.0, "{window:?} {from}");
            }
        }
        let narrow = Window { from: 50_000.0, to: 53_000.0 };
        let caught = |share: f64| grip_at(scale.at(50_000.0 + share * 3_000.0), narrow, &scale, 1000.0);
        assert!(matches!(caught(0.5), Grip::Body(_)));
        assert_eq!((caught(0.1), caught(0.9)), (Grip::From, Grip::To));
        assert_eq!((caught(-0.5), caught(1.5)), (Grip::From, Grip::To));
    }

    #[test]
    fn keys_move_one_end_and_leave_the_other() {
        let picture = sample::pass();
        let length = picture.length_m();
        let window = Window::whole(length);
        let press = |last, wish, window| pressed(last, wish, &picture, window);
        let from = press(false, Wish::NextDescent, window).expect("there are descents");
        assert_eq!(from, Window { from: picture.place_of(picture.descents[0].from), to: length });
        let both = press(true, Wish::DescentBefore, from).expect("a foot lies before the end");
        assert!((both.from - from.from).abs() < 1e-9);
        assert!(picture.descents.iter().any(|it| (picture.place_of(it.to) - both.to).abs() < 1.0));
        let back = press(false, Wish::Start, both).expect("a key of its own");
        assert_eq!(back, Window { from: 0.0, to: both.to });
        let nearer = press(true, Wish::Steps(-10), window).expect("a key of its own");
        assert!((nearer.to - 0.95 * length).abs() < 1.0);
        assert_eq!(press(true, Wish::ZoomIn, window), None);
        assert_eq!(press(false, Wish::DescentBefore, window), None);
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
