//! Keys that move the cursor and the window.

use super::picture::RoadPicture;
use super::window::Window;

/// What a key asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Wish {
    /// Along the road by so many steps of [`STEP_M`]; negative is back.
    Steps(i32),
    /// To the start.
    Start,
    /// To the end.
    End,
    /// To the crest of the next descent.
    NextDescent,
    /// To the crest of the descent before.
    DescentBefore,
    /// Closer.
    ZoomIn,
    /// Less close.
    ZoomOut,
    /// The whole road.
    ZoomAll,
    /// What is no move of the cursor or of the window.
    Act(Act),
}

/// What a key does besides moving.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Act {
    /// Chooses the descent of this number.
    Choose(usize),
    /// Shows the chosen descent.
    ShowChosen,
    /// Fills the profile by the next reading.
    NextReading,
    /// Shows the picture alone, or ends that.
    Alone,
    /// Puts a place at the cursor.
    Put,
    /// Lists the keys.
    Keys,
    /// Closes the list.
    Close,
}

/// What a key asks for, by its name as browsers give it; `None` for keys that are not ours.
#[must_use]
pub(crate) fn wish(key: &str, shift: bool) -> Option<Wish> {
    let many = if shift { 10 } else { 1 };
    match key {
        "ArrowRight" | "ArrowUp" => Some(Wish::Steps(many)),
        "ArrowLeft" | "ArrowDown" => Some(Wish::Steps(-many)),
        "Home" => Some(Wish::Start),
        "End" => Some(Wish::End),
        "PageDown" => Some(Wish::NextDescent),
        "PageUp" => Some(Wish::DescentBefore),
        "+" | "=" => Some(Wish::ZoomIn),
        "-" | "_" => Some(Wish::ZoomOut),
        "0" => Some(Wish::ZoomAll),
        "Enter" => Some(Wish::Act(Act::ShowChosen)),
        "c" | "C" => Some(Wish::Act(Act::NextReading)),
        "f" | "F" => Some(Wish::Act(Act::Alone)),
        "p" | "P" => Some(Wish::Act(Act::Put)),
        "?" => Some(Wish::Act(Act::Keys)),
        "Escape" => Some(Wish::Act(Act::Close)),
        _ => match key.as_bytes() {
            [digit @ b'1'..=b'9'] => Some(Wish::Act(Act::Choose(usize::from(digit - b'0')))),
            _ => None,
        },
    }
}

/// What an arrow key moves the cursor by, m.
const STEP_M: f64 = 100.0;

/// Grid points of one step of an arrow key, one at least.
#[must_use]
pub(crate) fn step_points(picture: &RoadPicture) -> usize {
    ((STEP_M / picture.step().max(1e-3)).round() as usize).max(1)
}

/// Where the cursor stands after a wish, and the window that shows it.
#[must_use]
pub(crate) fn moved(
    picture: &RoadPicture,
    cursor: usize,
    window: Window,
    wish: Wish,
    step: usize,
) -> (usize, Window) {
    let last = picture.points().saturating_sub(1);
    let length = picture.length_m();
    let at = picture.place_of(cursor);
    let to = match wish {
        Wish::Steps(count) => {
            let by = step.saturating_mul(count.unsigned_abs() as usize);
            if count < 0 { cursor.saturating_sub(by) } else { cursor.saturating_add(by).min(last) }
        }
        Wish::Start => 0,
        Wish::End => last,
        Wish::NextDescent => {
            picture.descents.iter().map(|it| it.from).find(|it| *it > cursor).unwrap_or(cursor)
        }
        Wish::DescentBefore => {
            picture.descents.iter().rev().map(|it| it.from).find(|it| *it < cursor).unwrap_or(cursor)
        }
        Wish::ZoomIn => return (cursor, window.zoomed(at, Window::ZOOM_STEP, length)),
        Wish::ZoomOut => return (cursor, window.zoomed(at, 1.0 / Window::ZOOM_STEP, length)),
        Wish::ZoomAll => return (cursor, Window::whole(length)),
        Wish::Act(_) => return (cursor, window),
    };
    (to, window.showing(picture.place_of(to), length))
}

#[cfg(test)]
mod tests {
    use super::{Act, Wish, moved, step_points, wish};
    use crate::chart::sample;
    use crate::chart::window::Window;

    #[test]
    fn page_keys_visit_every_crest_and_stop_at_the_last() {
        let picture = sample::pass();
        let mut at = (0, Window { from: 0.0, to: 2000.0 });
        let mut visited = Vec::new();
        for _ in 0..picture.descents.len() + 2 {
            at = moved(&picture, at.0, at.1, Wish::NextDescent, 1);
            assert!(at.1.shows(picture.place_of(at.0)), "the window follows");
            visited.push(at.0);
        }
        visited.dedup();
        let crests: Vec<_> = picture.descents.iter().map(|it| it.from).collect();
        assert_eq!(visited, crests);
        let back = moved(&picture, crests[1], at.1, Wish::DescentBefore, 1);
        assert_eq!(back.0, crests[0]);
    }

    #[test]
    fn arrows_stop_at_the_ends() {
        let picture = sample::pass();
        let whole = Window::whole(picture.length_m());
        let step = step_points(&picture);
        let (at, _) = moved(&picture, 500, whole, Wish::Steps(1), step);
        assert!((picture.place_of(at) - picture.place_of(500) - 100.0).abs() < 1e-6);
        let (at, _) = moved(&picture, 500, whole, Wish::Steps(-10), step);
        assert!((picture.place_of(at) - picture.place_of(500) + 1000.0).abs() < 1e-6);
        assert_eq!(moved(&picture, 3, whole, Wish::Steps(-10), step).0, 0);
        assert_eq!(moved(&picture, 3, whole, Wish::Steps(i32::MAX), step).0, picture.points() - 1);
    }

    #[test]
    fn keys() {
        assert_eq!(wish("ArrowLeft", true), Some(Wish::Steps(-10)));
        assert_eq!(wish("0", false), Some(Wish::ZoomAll));
        assert_eq!(wish("Tab", false), None);
        assert_eq!(wish("7", false), Some(Wish::Act(Act::Choose(7))));
        assert_eq!(wish("c", false), wish("C", true));
        assert_eq!(wish("?", true), Some(Wish::Act(Act::Keys)));
        assert_eq!(wish("F1", false), None, "keys of the browser stay its own");
        assert_eq!(wish("é", false), None);
    }
}
