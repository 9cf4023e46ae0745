//! Words of the road: its quality, what was repaired, what was not assessed.

use crate::format::{self, Units};
use crate::message::RoadFacts;
use crate::outline::Blank;
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
    /// What was not assessed; a drop of a few metres is not worth a word.
    fn blank(&self, blank: &Blank, units: Units) -> String {
        let lower = (blank.drop_m >= 5.0).then(|| format::height(blank.drop_m, units));
        self.left_blank(&format::length(blank.length_m, units), lower.as_deref())
    }
    /// That it climbs between these heights, m.
    fn climbs(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.climbs_between(&format::height(start_m, units), &format::height(end_m, units))
    }
    /// How good the heights are, and what that means.
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let [before, after] =
            [road.quality.roughness_before, road.quality.roughness_after].map(format::tenths);
        let holds = self.grade_holds(road.quality.class, &format::length(road.base_length_m, units));
        format!("{holds} {}", self.roughness(&before, &after))
    }
    /// How much could not be assessed, and how much lower the road is behind it where it is.
    fn left_blank(&self, length: &str, lower: Option<&str>) -> String;
    /// That the road climbs between these heights in the direction shown, and the question whether it is to be driven down.
    fn climbs_between(&self, start: &str, end: &str) -> String;
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
