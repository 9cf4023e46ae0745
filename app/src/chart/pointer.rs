//! Fingers and mouse on the picture: what they mean, without the browser.
//!
//! A tap moves the cursor and chooses what lies under it. A drag moves the cursor where the whole road is
//! shown, and the road where a part is. Two fingers zoom.

/// One pointer that is down.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Finger {
    id: i32,
    began: f64,
    x: f64,
    dragged: bool,
}

/// What a movement means. All in px from the left edge of the drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Gesture {
    /// Nothing yet.
    None,
    /// The cursor goes to this place.
    Point(f64),
    /// The road goes along by so many px.
    Pan(f64),
    /// Zoomed by `factor`; what was at `before` is at `now`.
    Pinch {
        /// Middle of the fingers before.
        before: f64,
        /// Middle of the fingers now.
        now: f64,
        /// Above 1 is closer.
        factor: f64,
    },
}

/// The pointers that are down, two at most.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Fingers {
    down: Vec<Finger>,
}

/// A finger that moved less has tapped, px.
const TAP_PX: f64 = 5.0;
/// Fingers nearer than this do not zoom: the factor would be noise, px.
const NEAREST_PX: f64 = 24.0;

impl Fingers {
    /// A pointer went down.
    pub(crate) fn press(&mut self, id: i32, x: f64) {
        self.down.retain(|finger| finger.id != id);
        if self.down.len() < 2 {
            self.down.push(Finger { id, began: x, x, dragged: false });
        }
    }

    /// A pointer moved, down or not; `zoomed` where a part of the road is shown.
    pub(crate) fn travel(&mut self, id: i32, x: f64, zoomed: bool) -> Gesture {
        let Some(place) = self.down.iter().position(|finger| finger.id == id) else {
            // A mouse that hovers. While fingers are down, other pointers mean nothing.
            return if self.down.is_empty() { Gesture::Point(x) } else { Gesture::None };
        };
        let before = self.down.clone();
        let finger = &mut self.down[place];
        let began = !finger.dragged;
        finger.x = x;
        finger.dragged |= (x - finger.began).abs() > TAP_PX;
        let dragged = finger.dragged;
        if self.down.len() < 2 {
            // The road is under the finger from where it went down.
            let from = if began { before[place].began } else { before[place].x };
            return match (dragged, zoomed) {
                (false, _) => Gesture::None,
                (true, false) => Gesture::Point(x),
                (true, true) => Gesture::Pan(x - from),
            };
        }
        let (old, new) = (spread(&before), spread(&self.down));
        if old.1 < NEAREST_PX || new.1 < NEAREST_PX {
            return Gesture::None;
        }
        Gesture::Pinch { before: old.0, now: new.0, factor: new.1 / old.1 }
    }

    /// A pointer went up: a tap moves the cursor there.
    pub(crate) fn lift(&mut self, id: i32) -> Gesture {
        let alone = self.down.len() == 1;
        let Some(place) = self.down.iter().position(|finger| finger.id == id) else { return Gesture::None };
        let finger = self.down.remove(place);
        // The finger that stays after a pinch must not throw the cursor about when it lifts.
        if let Some(rest) = self.down.first_mut() {
            rest.dragged = true;
        }
        if alone && !finger.dragged { Gesture::Point(finger.x) } else { Gesture::None }
    }

    /// The browser took a pointer away.
    pub(crate) fn lose(&mut self, id: i32) {
        self.down.retain(|finger| finger.id != id);
    }

    /// Whether none is down.
    #[cfg(test)]
    fn is_empty(&self) -> bool {
        self.down.is_empty()
    }
}

/// Middle and distance of two fingers.
fn spread(fingers: &[Finger]) -> (f64, f64) {
    match fingers {
        [a, b, ..] => (0.5 * (a.x + b.x), (a.x - b.x).abs()),
        [_] | [] => (0.0, 0.0),
    }
}

#[cfg(test)]
mod tests {
    use super::{Fingers, Gesture};

    #[test]
    fn a_tap_points_and_a_drag_follows() {
        let mut fingers = Fingers::default();
        fingers.press(1, 100.0);
        assert_eq!(fingers.travel(1, 102.0, false), Gesture::None, "not yet a drag");
        assert_eq!(fingers.lift(1), Gesture::Point(102.0));
        fingers.press(1, 100.0);
        assert_eq!(fingers.travel(1, 130.0, false), Gesture::Point(130.0));
        assert_eq!(fingers.lift(1), Gesture::None);
    }

    #[test]
    fn a_drag_takes_the_road_along_where_a_part_is_shown() {
        let mut fingers = Fingers::default();
        fingers.press(1, 100.0);
        assert_eq!(fingers.travel(1, 104.0, true), Gesture::None, "not yet a drag");
        assert_eq!(fingers.travel(1, 90.0, true), Gesture::Pan(-10.0), "from where it went down");
        assert_eq!(fingers.travel(1, 93.0, true), Gesture::Pan(3.0));
        assert_eq!(fingers.lift(1), Gesture::None, "the cursor stays");
        fingers.press(1, 100.0);
        assert_eq!(fingers.lift(1), Gesture::Point(100.0), "a tap points, zoomed or not");
    }

    #[test]
    fn a_scroll_leaves_the_cursor_alone() {
        let mut fingers = Fingers::default();
        fingers.press(7, 100.0);
        fingers.lose(7);
        assert_eq!(fingers.lift(7), Gesture::None);
        assert!(fingers.is_empty());
    }

    #[test]
    fn two_fingers_zoom_about_their_middle() {
        let mut fingers = Fingers::default();
        fingers.press(1, 100.0);
        fingers.press(2, 200.0);
        assert_eq!(fingers.travel(2, 300.0, true), Gesture::Pinch { before: 150.0, now: 200.0, factor: 2.0 });
        assert_eq!(fingers.lift(2), Gesture::None);
        assert_eq!(fingers.lift(1), Gesture::None, "what is left of a pinch does not point");
    }

    #[test]
    fn a_hovering_mouse_points() {
        let mut fingers = Fingers::default();
        assert_eq!(fingers.travel(1, 55.0, true), Gesture::Point(55.0));
        fingers.press(2, 10.0);
        assert_eq!(fingers.travel(1, 60.0, false), Gesture::None);
    }
}
