//! Sorts what the event loop delivers: points, courses, waypoints, repairs.

use super::element::Element;
use super::number::Number;
use super::tally::{Repair, Tally, line_at};
use crate::road::bounds;
use crate::road::document::{CourseKind, Document, Draft, Fix, Waypoint};
use crate::road::error::{Bound, FileError};
use crate::road::finding::{Finding, FindingKind};

/// What has been read so far.
#[derive(Default)]
pub(super) struct Collected {
    pub(super) tally: Tally,
    name: String,
    fixes: Vec<Fix>,
    drafts: Vec<Draft>,
    waypoints: Vec<Waypoint>,
    waypoints_over: usize,
    shape_points: usize,
    points_seen: usize,
    swapped: usize,
    /// The current point, if it is usable; and whether its latitude was written with a comma.
    in_hand: Option<InHand>,
    was_cut: bool,
}

#[derive(Clone, Copy)]
struct InHand {
    waypoint: bool,
    comma: bool,
}

type Position = (Number, Number);

impl Collected {
    pub(super) fn begin_track(&mut self) -> Result<(), FileError> {
        self.begin_course(CourseKind::Track)
    }

    pub(super) fn begin_route(&mut self) -> Result<(), FileError> {
        self.begin_course(CourseKind::Route)
    }

    fn begin_course(&mut self, kind: CourseKind) -> Result<(), FileError> {
        if self.drafts.len() == bounds::MOST_COURSES {
            return Err(FileError::TooLarge(Bound::Courses));
        }
        self.drafts.push(Draft::new(kind));
        Ok(())
    }

    pub(super) fn begin_segment(&mut self) -> Result<(), FileError> {
        let at = self.fixes.len();
        self.draft(CourseKind::Track)?.begin_part(at);
        Ok(())
    }

    pub(super) fn begin_track_point(
        &mut self,
        position: Position,
        parent: Option<Element>,
        at: usize,
    ) -> Result<(), FileError> {
        if parent != Some(Element::Segment) {
            self.tally.note(Repair::Tags, at);
        }
        self.begin_point(CourseKind::Track, position, at)
    }

    pub(super) fn begin_route_point(
        &mut self,
        position: Position,
        parent: Option<Element>,
        at: usize,
    ) -> Result<(), FileError> {
        if parent != Some(Element::Route) {
            self.tally.note(Repair::Tags, at);
        }
        self.begin_point(CourseKind::Route, position, at)
    }

    pub(super) fn begin_shape_point(&mut self, position: Position, at: usize) -> Result<(), FileError> {
        self.shape_points += 1;
        self.begin_point(CourseKind::Route, position, at)
    }

    /// The current course. A new one begins where points stand outside any course.
    fn draft(&mut self, kind: CourseKind) -> Result<&mut Draft, FileError> {
        if self.drafts.last().is_none_or(|draft| draft.kind != kind) {
            self.begin_course(kind)?;
        }
        let last = self.drafts.len() - 1;
        Ok(&mut self.drafts[last])
    }

    fn begin_point(&mut self, kind: CourseKind, position: Position, at: usize) -> Result<(), FileError> {
        self.points_seen += 1;
        if self.points_seen > bounds::MOST_POINTS {
            return Err(FileError::TooLarge(Bound::Points));
        }
        self.in_hand = None;
        let Some((fix, comma)) = self.place(position, at) else {
            self.tally.note(Repair::PointDropped, at);
            return Ok(());
        };
        self.in_hand = Some(InHand { waypoint: false, comma });
        let index = self.fixes.len();
        self.fixes.push(fix);
        self.draft(kind)?.take(index);
        Ok(())
    }

    pub(super) fn begin_waypoint(&mut self, position: Position) {
        self.in_hand = None;
        if self.waypoints.len() >= bounds::MOST_WAYPOINTS {
            self.waypoints_over += 1;
            return;
        }
        if let (Some(lat), Some(lon)) = (value(position.0), value(position.1))
            && in_range(lat, lon)
        {
            self.waypoints.push(Waypoint::at(lat, lon));
            self.in_hand = Some(InHand { waypoint: true, comma: false });
        }
    }

    /// The position as numbers, with the repairs of its writing noted; `None` if unusable.
    fn place(&mut self, (lat, lon): Position, at: usize) -> Option<(Fix, bool)> {
        let mut comma = false;
        for number in [lat, lon] {
            match number {
                Number::Comma { .. } => {
                    comma = true;
                    self.tally.note(Repair::DecimalComma, at);
                }
                Number::Padded(_) => self.tally.note(Repair::Padding, at),
                Number::Plain(_)
                | Number::Metres(_)
                | Number::ForeignUnit
                | Number::Unreadable
                | Number::Blank => {}
            }
        }
        let (lat_deg, lon_deg) = (value(lat)?, value(lon)?);
        if !in_range(lat_deg, lon_deg) {
            self.swapped += usize::from(in_range(lon_deg, lat_deg));
            return None;
        }
        Some((Fix { lat_deg, lon_deg, height_m: f64::NAN }, comma))
    }

    pub(super) fn set_height(&mut self, number: Number, parent: Option<Element>, at: usize) {
        let (Some(point), true) = (self.in_hand, parent.is_some_and(Element::is_point)) else {
            return;
        };
        if point.waypoint {
            return;
        }
        let height = match number {
            Number::Plain(value) => Some(value),
            Number::Padded(value) => {
                self.tally.note(Repair::Padding, at);
                Some(value)
            }
            // “1,234” beside a latitude with a point may be twelve hundred metres or one. It is not guessed.
            Number::Comma { value, thousands } if point.comma || !thousands => {
                self.tally.note(Repair::DecimalComma, at);
                Some(value)
            }
            Number::Comma { .. } => None,
            Number::Metres(value) => {
                self.tally.note(Repair::MetresWritten, at);
                Some(value)
            }
            Number::ForeignUnit => {
                self.tally.note(Repair::ForeignUnit, at);
                return;
            }
            Number::Unreadable => None,
            Number::Blank => return,
        };
        let believed = |h: &f64| (bounds::LOWEST_HEIGHT_M..=bounds::GREATEST_HEIGHT_M).contains(h);
        match (height.filter(believed), self.fixes.last_mut()) {
            (Some(height_m), Some(fix)) => fix.height_m = height_m,
            (Some(_), None) => {}
            (None, _) => self.tally.note(Repair::HeightUnreadable, at),
        }
    }

    pub(super) fn set_name(&mut self, name: &str, parent: Option<Element>) {
        let slot = match parent {
            Some(Element::Track | Element::Route) => self.drafts.last_mut().map(|draft| &mut draft.name),
            Some(Element::Waypoint) if self.in_hand.is_some() => {
                self.waypoints.last_mut().map(|waypoint| &mut waypoint.name)
            }
            Some(Element::Gpx | Element::Metadata) => Some(&mut self.name),
            Some(
                Element::Waypoint
                | Element::Segment
                | Element::TrackPoint
                | Element::RoutePoint
                | Element::ShapePoint
                | Element::Height
                | Element::Name
                | Element::Symbol
                | Element::Kind
                | Element::Other,
            )
            | None => None,
        };
        if let Some(slot) = slot
            && slot.is_empty()
        {
            slot.push_str(name);
        }
    }

    pub(super) fn set_symbol(&mut self, symbol: &str) {
        if let (Some(InHand { waypoint: true, .. }), Some(waypoint)) =
            (self.in_hand, self.waypoints.last_mut())
        {
            waypoint.symbol = symbol.to_owned();
        }
    }

    pub(super) fn set_kind(&mut self, kind: &str) {
        if let (Some(InHand { waypoint: true, .. }), Some(waypoint)) =
            (self.in_hand, self.waypoints.last_mut())
        {
            waypoint.kind = kind.to_owned();
        }
    }

    pub(super) fn end_point(&mut self) {
        self.in_hand = None;
    }

    pub(super) fn cut_off(&mut self, at: usize) {
        if !self.was_cut {
            self.was_cut = true;
            self.tally.note(Repair::CutOff, at);
        }
    }

    /// Drops the last point where it was not written to its end: its height may be missing or cut short.
    pub(super) fn drop_unfinished(&mut self) {
        if let Some(InHand { waypoint: false, .. }) = self.in_hand
            && self.fixes.pop().is_some()
        {
            // This is not always the last course: another may have begun inside the point.
            for draft in &mut self.drafts {
                draft.give_back(self.fixes.len());
            }
        }
    }

    /// Judges the file as a whole and returns the document.
    pub(super) fn into_document(self, text: &str, mut findings: Vec<Finding>) -> Result<Document, FileError> {
        let bad = self.tally.count(Repair::PointDropped);
        if bad as f64 > bounds::BAD_POINTS_SHARE * self.points_seen as f64 {
            return Err(FileError::TooManyBadPoints {
                bad,
                points: self.points_seen,
                line: line_at(text, self.tally.first(Repair::PointDropped)),
                swapped: 2 * self.swapped > bad,
            });
        }
        if self.fixes.is_empty() {
            return Err(match self.waypoints.len() {
                0 => FileError::NothingInside,
                count => FileError::WaypointsOnly { count },
            });
        }
        let unreadable = self.tally.count(Repair::ForeignUnit) + self.tally.count(Repair::HeightUnreadable);
        findings.extend(self.tally.into_findings(text));
        let simple = |kind, count| Finding { kind, count, from_m: None, to_m: None };
        if self.waypoints_over > 0 {
            let kept = bounds::MOST_WAYPOINTS;
            findings.push(simple(FindingKind::WaypointsLeftOut { kept }, self.waypoints_over));
        }
        if self.shape_points > 0 {
            findings.push(simple(FindingKind::RouteShapeUsed, self.shape_points));
        }
        Document::assemble(self.name, self.fixes, self.drafts, self.waypoints, findings, unreadable)
    }
}

/// The value of a number that can be a coordinate. A number with a unit and a doubtful one cannot.
fn value(number: Number) -> Option<f64> {
    match number {
        Number::Plain(value) | Number::Padded(value) | Number::Comma { value, .. } => Some(value),
        Number::Metres(_) | Number::ForeignUnit | Number::Unreadable | Number::Blank => None,
    }
}

fn in_range(lat_deg: f64, lon_deg: f64) -> bool {
    (-90.0..=90.0).contains(&lat_deg) && (-180.0..=180.0).contains(&lon_deg)
}
