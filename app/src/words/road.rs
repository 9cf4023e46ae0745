//! Words of the road: its quality, what was repaired, what was not assessed.

use crate::format::{self, Units};
use crate::message::RoadFacts;
use solver::road::{Class, FileError, Finding, Span};

/// Words of the road.
pub trait RoadWords {
    /// Head of the road's facts.
    fn road_head(&self) -> &'static str;
    /// Start → end heights, in the direction of travel.
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }
    /// The same for a screen reader.
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.both_ends(&format::height(start_m, units), &format::height(end_m, units))
    }
    /// The heights of both ends, in the direction of travel.
    fn both_ends(&self, start: &str, end: &str) -> String;
    /// How good the heights are, and what that means.
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let [before, after] =
            [road.quality.roughness_before, road.quality.roughness_after].map(format::tenths);
        let holds = self.grade_holds(road.quality.class, &format::length(road.base_length_m, units));
        format!("{holds} {}", self.roughness(&before, &after))
    }
    /// How good they are, and over which length a grade holds.
    fn grade_holds(&self, class: Class, base: &str) -> String;
    /// How much neighbours differ as recorded and after smoothing, percentage points.
    fn roughness(&self, before: &str, after: &str) -> String;
    /// Head of the findings.
    fn findings_head(&self, count: usize) -> String;
    /// Without findings.
    fn no_findings(&self) -> &'static str;
    /// Why a file cannot be used, and what to do.
    fn file_error(&self, error: &FileError) -> String;
    /// One finding.
    fn finding(&self, finding: &Finding) -> String;
    /// Head of the spans that are not assessed.
    fn unassessed_head(&self, count: usize) -> String;
    /// Why one of them is not, behind its place.
    fn unassessed(&self, span: &Span) -> String;
    /// Where something was found.
    fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => self.onward_from(&format::distance(from_m, units)),
        }
    }
    /// From a place on.
    fn onward_from(&self, place: &str) -> String;
    /// Name of the button that shows a place.
    fn show_place(&self, place: &str) -> String;
}
