//! Words of the road: its quality, what was repaired, what was not assessed.

use crate::format::Units;
use crate::message::RoadFacts;
use solver::road::{Finding, Span};

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
    /// One finding.
    fn finding(&self, finding: &Finding) -> String;
    /// Head of the spans that are not assessed.
    fn unassessed_head(&self, count: usize) -> String;
    /// One of them.
    fn unassessed(&self, span: &Span, step_m: f64, units: Units) -> String;
    /// That places entered are not all there are.
    fn places(&self, count: usize) -> String;
}
