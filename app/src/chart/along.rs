//! What lies along a road: grades, descents with their legs, curves, limits and places.

use solver::Verdict;
use solver::plan::{ChangeHow, LegChange};
use solver::road::PlaceKind;

/// A stretch of one grade.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// Grade, rise over run.
    pub grade: f32,
    /// Half-width of what the grade may be out by over this length, rise over run.
    pub plus_minus: f32,
}

/// One descent, as it is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Bracket {
    /// Its number in road order, from 1.
    pub number: usize,
    /// Grid index of the crest.
    pub from: usize,
    /// Grid index of the foot.
    pub to: usize,
    /// Mean grade, rise over run, negative.
    pub mean: f32,
    /// Verdict.
    pub verdict: Verdict,
    /// Its legs, crest to foot; none where no speed is safe.
    pub legs: Vec<Hold>,
}

/// A leg of a descent, as it is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hold {
    /// Grid index where it begins.
    pub from: usize,
    /// Gear.
    pub gear: u8,
    /// Speed to hold, m/s.
    pub speed: f32,
    /// How it is changed to; `None` for the first.
    pub change: Option<Change>,
}

/// How a gear is changed between two legs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// At an easing, on this grade.
    Easing(f32),
    /// Up on the hill, on this grade.
    Up(f32),
    /// Down on the hill: the truck is braked first.
    Down,
}

impl Change {
    /// A grade gentler than this is an easing, rise over run.
    const EASING: f32 = -0.02;

    /// A change between two legs of a plan.
    #[must_use]
    #[allow(clippy::cast_possible_truncation, reason = "a picture needs no more than single precision")]
    pub fn of(change: LegChange) -> Self {
        Self::on(change.grade.0 as f32, change.how == ChangeHow::Down)
    }

    /// A change on a grade.
    #[must_use]
    pub(crate) fn on(grade: f32, down: bool) -> Self {
        if grade > Self::EASING {
            Self::Easing(grade)
        } else if down {
            Self::Down
        } else {
            Self::Up(grade)
        }
    }
}

/// The steepest stretch of a descent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Pitch {
    /// Grid index where it begins.
    pub(crate) from: usize,
    /// Grid index where it ends.
    pub(crate) to: usize,
    /// Its mean grade, rise over run.
    pub(crate) grade: f64,
}

/// A curve that asks for less than the limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// Estimated radius, m.
    pub radius_m: f32,
    /// It turns left.
    pub left: bool,
    /// It is a hairpin.
    pub hairpin: bool,
    /// The fastest that it should be taken, m/s.
    pub speed: f32,
}

/// A limit posted on a stretch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Posted {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// The limit, m/s.
    pub speed: f32,
}

/// A place along the road.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Flag {
    /// Grid index.
    pub at: usize,
    /// Name as the file gives it.
    pub name: String,
    /// What it is; it decides the mark drawn.
    pub kind: PlaceKind,
}

#[cfg(test)]
mod tests {
    use super::Change;

    #[test]
    fn a_change_is_one_at_an_easing_or_on_the_hill() {
        assert_eq!(Change::on(-0.019, true), Change::Easing(-0.019));
        assert_eq!(Change::on(-0.02, false), Change::Up(-0.02));
        assert_eq!(Change::on(-0.1, true), Change::Down);
    }
}
