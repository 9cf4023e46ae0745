//! Several files as one road, in an order and direction chosen by a person.

use super::bounds;
use super::document::{Course, CourseKind, Document, Fix};
use super::error::FileError;
use std::ops::Range;

/// One file of the joined road.
#[derive(Clone, Copy, Debug)]
pub struct Leg<'a> {
    /// Contents of the file.
    pub document: &'a Document,
    /// Number of its course.
    pub course: usize,
    /// Whether it is driven against the direction of recording.
    pub reversed: bool,
}

/// One document whose only course drives the legs one after another.
///
/// Between two legs lies a gap like any other: beyond 300 m that stretch is not assessed.
///
/// # Errors
/// [`FileError::LegsApart`] where a leg begins more than 2 km from the end of the one before,
/// [`FileError::NoSuchCourse`] where a course is not in its document, [`FileError::TooLarge`] where all
/// points together are too many, and [`FileError::Empty`] without legs.
pub fn join(legs: &[Leg<'_>]) -> Result<Document, FileError> {
    let mut fixes: Vec<Fix> = Vec::new();
    let mut parts: Vec<Range<usize>> = Vec::new();
    let mut names: Vec<&str> = Vec::new();
    for (number, leg) in legs.iter().enumerate() {
        let found = leg.document.courses().len();
        let asked = leg.course;
        let course = leg.document.courses().get(asked).ok_or(FileError::NoSuchCourse { asked, found })?;
        let begin = fixes.len();
        take(leg, &mut fixes, &mut parts);
        if let (Some(before), Some(first)) = (begin.checked_sub(1), fixes.get(begin)) {
            let gap_m = fixes[before].distance_m(first);
            if gap_m > bounds::JOIN_M {
                return Err(FileError::LegsApart { leg: number + 1, gap_m });
            }
        }
        if !names.contains(&course.name.as_str()) {
            names.push(&course.name);
        }
    }
    if legs.is_empty() {
        return Err(FileError::Empty);
    }
    if fixes.len() > bounds::MOST_POINTS {
        return Err(FileError::TooLarge(super::error::Bound::Points));
    }
    names.retain(|name| !name.is_empty());
    Ok(Document::of_one_course(names.join(" + "), fixes, parts, legs.iter().map(|leg| leg.document)))
}

/// Appends the points of a leg, segment by segment, in the direction of travel.
fn take(leg: &Leg<'_>, fixes: &mut Vec<Fix>, parts: &mut Vec<Range<usize>>) {
    let mut segments: Vec<&[Fix]> = leg.document.parts(leg.course).collect();
    if leg.reversed {
        segments.reverse();
    }
    for segment in segments {
        let begin = fixes.len();
        fixes.extend_from_slice(segment);
        if leg.reversed {
            fixes[begin..].reverse();
        }
        parts.push(begin..fixes.len());
    }
}

impl Document {
    /// A document with one course; it takes waypoints and findings from all `sources`.
    fn of_one_course<'a>(
        name: String,
        fixes: Vec<Fix>,
        parts: Vec<Range<usize>>,
        sources: impl Iterator<Item = &'a Document>,
    ) -> Document {
        let mut document = Document::of_fixes(fixes);
        for source in sources {
            document.take_rest(source);
        }
        let course: Course = document.describe(name, CourseKind::Track, &parts);
        document.put(course, parts);
        document
    }
}
