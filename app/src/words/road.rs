//! Words of the road: its quality, what was repaired, what was not assessed.

use crate::format::Units;
use crate::message::RoadFacts;
use solver::road::{FileError, Finding, Span};

/// Words of the road.
pub trait RoadWords {
    /// Head of the road's facts.
    fn road_head(&self) -> &'static str;
    /// Start → end heights, in the direction of travel.
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String;
    /// The same for a screen reader.
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String;
    /// How good the heights are, and what that means.
    fn quality(&self, road: &RoadFacts, units: Units) -> String;
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
    fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String;
    /// Name of the button that shows a place.
    fn show_place(&self, place: &str) -> String;
}
