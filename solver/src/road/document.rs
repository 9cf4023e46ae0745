//! Contents of a file: courses to choose from, waypoints, and the repairs made while reading.

use super::error::{Bound, FileError};
use super::finding::Finding;
use super::{bounds, track};
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// A point as the file gives it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Fix {
    /// Latitude, degrees north, −90..=90.
    pub(super) lat_deg: f64,
    /// Longitude, degrees east, −180..=180.
    pub(super) lon_deg: f64,
    /// Height, metres above the datum of the file; NaN where missing.
    pub(super) height_m: f64,
}

impl Fix {
    /// Whether two points are in one place, to the last bit.
    pub(super) fn is_at(&self, other: &Fix) -> bool {
        self.lat_deg.to_bits() == other.lat_deg.to_bits() && self.lon_deg.to_bits() == other.lon_deg.to_bits()
    }

    /// Horizontal distance to another point, metres.
    pub(super) fn distance_m(&self, other: &Fix) -> f64 {
        track::step_m(self.lat_deg, self.lon_deg, other.lat_deg, other.lon_deg)
    }
}

/// Measures distances to a thousandth without a sine for each: radii are kept while the latitude hardly
/// changes. It serves lengths that are told before any cleaning.
#[derive(Default)]
struct Ruler {
    lat_deg: f64,
    /// Metres in a degree of latitude and of longitude; 0 before the first.
    degree_m: (f64, f64),
}

impl Ruler {
    /// A latitude may be this far off, degrees: a thousandth of a radian at 45°.
    const CHANGE_DEG: f64 = 0.05;

    fn distance_m(&mut self, from: &Fix, to: &Fix) -> f64 {
        if (to.lat_deg - self.lat_deg).abs() > Self::CHANGE_DEG || self.degree_m.0 <= 0.0 {
            let (meridian, parallel) = track::radii_m(to.lat_deg);
            self.lat_deg = to.lat_deg;
            self.degree_m = (meridian.to_radians(), parallel.to_radians());
        }
        let north = (to.lat_deg - from.lat_deg) * self.degree_m.0;
        let east = track::turn_deg(from.lon_deg, to.lon_deg) * self.degree_m.1;
        (north * north + east * east).sqrt()
    }
}

/// Whether a course was recorded or planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum CourseKind {
    /// A track: points along the way.
    Track,
    /// A route: points along the way, with or without the shape between them.
    Route,
}

/// One track or route that the user can choose.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Course {
    /// Its name; else the file's own name; else empty.
    pub name: String,
    /// Track or route.
    pub kind: CourseKind,
    /// Number of points with a position.
    pub points: usize,
    /// Number of points with a height.
    pub heights: usize,
    /// Length before any cleaning, metres, good to a thousandth. Steps above 2 km of a track are not counted:
    /// they mostly lead to a faulty point.
    pub length_m: f64,
}

/// A named place of the file that is no part of a course.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Waypoint {
    pub(super) lat_deg: f64,
    pub(super) lon_deg: f64,
    pub(super) name: String,
    pub(super) symbol: String,
    pub(super) kind: String,
}

impl Waypoint {
    pub(super) fn at(lat_deg: f64, lon_deg: f64) -> Waypoint {
        Waypoint { lat_deg, lon_deg, name: String::new(), symbol: String::new(), kind: String::new() }
    }
}

/// A course while it is being read: its points by index, one range for each segment.
#[derive(Clone, Debug)]
pub(super) struct Draft {
    pub(super) name: String,
    pub(super) kind: CourseKind,
    parts: Vec<Range<usize>>,
}

impl Draft {
    pub(super) fn new(kind: CourseKind) -> Draft {
        Draft { name: String::new(), kind, parts: Vec::new() }
    }

    /// A new segment begins at the point of this index.
    pub(super) fn begin_part(&mut self, at: usize) {
        if self.parts.last().is_none_or(|part| !part.is_empty()) {
            self.parts.push(at..at);
        } else if let Some(last) = self.parts.last_mut() {
            *last = at..at;
        }
    }

    /// Adds the point with this index to the last segment.
    pub(super) fn take(&mut self, index: usize) {
        match self.parts.last_mut() {
            Some(part) if part.end == index => part.end = index + 1,
            Some(_) | None => self.parts.push(index..index + 1),
        }
    }

    /// Drops the points from this index on.
    pub(super) fn give_back(&mut self, from: usize) {
        for part in &mut self.parts {
            *part = part.start.min(from)..part.end.min(from);
        }
    }
}

/// A file that was read: what it holds, before a course is chosen and surveyed.
#[derive(Clone, Debug)]
pub struct Document {
    fixes: Vec<Fix>,
    courses: Vec<Course>,
    /// For each course its segments, as ranges of `fixes`.
    parts: Vec<Vec<Range<usize>>>,
    waypoints: Vec<Waypoint>,
    findings: Vec<Finding>,
    unreadable_heights: usize,
}

impl Document {
    /// A document with these points and no courses yet.
    pub(super) fn of_fixes(fixes: Vec<Fix>) -> Document {
        Document {
            fixes,
            courses: Vec::new(),
            parts: Vec::new(),
            waypoints: Vec::new(),
            findings: Vec::new(),
            unreadable_heights: 0,
        }
    }

    pub(super) fn assemble(
        name: String,
        fixes: Vec<Fix>,
        drafts: Vec<Draft>,
        waypoints: Vec<Waypoint>,
        findings: Vec<Finding>,
        unreadable_heights: usize,
    ) -> Result<Document, FileError> {
        let mut document = Document { waypoints, findings, unreadable_heights, ..Document::of_fixes(fixes) };
        for draft in drafts {
            document.add_courses(draft, &name)?;
        }
        Ok(document)
    }

    /// Adds one course for each run of segments that are near enough to each other to be one road.
    fn add_courses(&mut self, draft: Draft, file_name: &str) -> Result<(), FileError> {
        let mut runs: Vec<Vec<Range<usize>>> = Vec::new();
        for part in draft.parts.into_iter().filter(|part| !part.is_empty()) {
            let near = runs.last().and_then(|run| run.last()).is_some_and(|before| {
                self.fixes[before.end - 1].distance_m(&self.fixes[part.start]) <= bounds::JOIN_M
            });
            match runs.last_mut() {
                Some(run) if near => run.push(part),
                Some(_) | None => runs.push(vec![part]),
            }
        }
        let base = if draft.name.is_empty() { file_name } else { &draft.name };
        let several = runs.len() > 1;
        if self.courses.len() + runs.len() > bounds::MOST_COURSES {
            return Err(FileError::TooLarge(Bound::Courses));
        }
        for (k, run) in runs.into_iter().enumerate() {
            let name = if several { format!("{base} ({})", k + 1) } else { base.to_owned() };
            self.courses.push(self.describe(name, draft.kind, &run));
            self.parts.push(run);
        }
        Ok(())
    }

    pub(super) fn describe(&self, name: String, kind: CourseKind, parts: &[Range<usize>]) -> Course {
        let mut course = Course { name, kind, points: 0, heights: 0, length_m: 0.0 };
        let mut last: Option<&Fix> = None;
        let mut ruler = Ruler::default();
        for fix in parts.iter().flat_map(|part| &self.fixes[part.clone()]) {
            course.points += 1;
            course.heights += usize::from(fix.height_m.is_finite());
            let step_m = last.map_or(0.0, |before| ruler.distance_m(before, fix));
            let counted = match kind {
                CourseKind::Track => step_m <= bounds::JOIN_M,
                CourseKind::Route => true,
            };
            course.length_m += if counted { step_m } else { 0.0 };
            last = Some(fix);
        }
        course
    }

    /// Appends waypoints and findings of another document.
    pub(super) fn take_rest(&mut self, other: &Document) {
        self.waypoints.extend_from_slice(&other.waypoints);
        self.findings.extend_from_slice(&other.findings);
        self.unreadable_heights += other.unreadable_heights;
    }

    pub(super) fn put(&mut self, course: Course, parts: Vec<Range<usize>>) {
        self.courses.push(course);
        self.parts.push(parts);
    }

    /// Courses that could make a road: long enough, and with heights.
    pub fn usable(&self) -> impl Iterator<Item = usize> {
        let usable = |course: &Course| course.heights > 1 && course.length_m >= bounds::SHORTEST_ROAD_M;
        (0..self.courses.len()).filter(move |index| usable(&self.courses[*index]))
    }

    /// The tracks and routes of the file, in order; at least one.
    pub fn courses(&self) -> &[Course] {
        &self.courses
    }

    /// Index of the course to begin with: the longest track with heights, else the longest route with
    /// heights, else the longest course.
    pub fn suggested(&self) -> usize {
        let rank = |course: &Course| match (course.heights > 1, course.kind) {
            (true, CourseKind::Track) => 3,
            (true, CourseKind::Route) => 2,
            (false, CourseKind::Track) => 1,
            (false, CourseKind::Route) => 0,
        };
        let mut best = 0;
        for (index, course) in self.courses.iter().enumerate().skip(1) {
            let leader = &self.courses[best];
            let longer = course.length_m > leader.length_m;
            if rank(course) > rank(leader) || (rank(course) == rank(leader) && longer) {
                best = index;
            }
        }
        best
    }

    /// Repairs made while reading. A road's findings begin with these.
    pub fn findings(&self) -> &[Finding] {
        &self.findings
    }

    pub(super) fn parts(&self, course: usize) -> impl Iterator<Item = &[Fix]> {
        self.parts[course].iter().map(|part| &self.fixes[part.clone()])
    }

    pub(super) fn waypoints(&self) -> &[Waypoint] {
        &self.waypoints
    }

    pub(super) fn unreadable_heights(&self) -> usize {
        self.unreadable_heights
    }
}
