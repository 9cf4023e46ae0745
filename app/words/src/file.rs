//! Why a file gives no road, and what to do.

use crate::Spoken;
use crate::format::{tenths, whole};
use solver::road::{Bound, FileError, Foreign, Refusal, bounds};

impl Spoken {
    /// Why a file cannot be used, and what to do.
    #[must_use]
    pub fn file_error(&self, error: &FileError) -> String {
        match error {
            FileError::Empty => self.file_empty().to_owned(),
            FileError::NotGpx(foreign) => {
                let name = if let Foreign::OtherXml(name) = foreign { name } else { "" };
                self.file_foreign(foreign, name)
            }
            FileError::NothingInside => self.file_nothing_inside().to_owned(),
            FileError::WaypointsOnly { count } => self.file_waypoints_only(*count),
            FileError::NoHeights { points, unreadable, .. } if *unreadable > 0 => {
                self.file_heights_unreadable(*points, *unreadable)
            }
            FileError::NoHeights { points, constant: true, .. } => self.file_heights_constant(*points),
            FileError::NoHeights { points, .. } => self.file_no_heights(*points),
            FileError::TooCoarse { found_m, needed_m } => {
                self.file_too_coarse(&whole(*found_m), &whole(*needed_m))
            }
            FileError::TooManyBadPoints { bad, points, line, swapped } => {
                self.file_bad_points(*bad, *points, *line, *swapped)
            }
            FileError::TooShort { found_m, needed_m } => {
                self.file_too_short(&whole(*found_m), &whole(*needed_m))
            }
            FileError::NothingLeft { length_m } => self.file_nothing_left(&tenths(length_m / 1000.0)),
            FileError::TooLarge(bound) => self.file_too_large(*bound),
            FileError::Refused { what, line } => self.file_refused(*line, *what, &allowed(*what)),
            FileError::BadHeights { index } => self.file_bad_heights(index + 1),
            FileError::NoSuchCourse { asked, found } => self.file_no_such_course(asked + 1, *found),
            FileError::LegsApart { leg, gap_m } => {
                self.file_legs_apart(*leg, &tenths(gap_m / 1000.0), leg - 1)
            }
            FileError::NotOneRoad { recording } => self.file_not_one_road(*recording),
            FileError::Cancelled => self.file_cancelled().to_owned(),
        }
    }

    /// That a file exceeds a bound, and which.
    #[must_use]
    fn file_too_large(&self, bound: Bound) -> String {
        let millions = |count: usize| (count / 1_000_000).to_string();
        match bound {
            Bound::Bytes(found) => self.file_too_many_bytes(&millions(found), &millions(bounds::MOST_BYTES)),
            Bound::Points => self.file_too_many_points(&millions(bounds::MOST_POINTS)),
            Bound::Courses => self.file_too_many_courses(&whole(bounds::MOST_COURSES as f64)),
            Bound::Length(found_m) => {
                self.file_too_long(&whole(found_m / 1000.0), &whole(bounds::LONGEST_ROAD_M / 1000.0))
            }
        }
    }
}

/// The most that is let pass of what is refused: levels of nesting, or kB of a tag.
fn allowed(what: Refusal) -> String {
    match what {
        Refusal::Entities => String::new(),
        Refusal::Nesting => bounds::MOST_NESTING.to_string(),
        Refusal::LongTag => (bounds::LONGEST_TAG / 1024).to_string(),
    }
}
