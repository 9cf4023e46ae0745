//! Words of the road: its quality, what was repaired, what was not assessed.

use crate::format::{self, Units};
use crate::outline::Blank;
use crate::words::Spoken;
use solver::road::Span;
use workers::message::RoadFacts;

impl Spoken {
    /// Start → end heights, in the direction of travel.
    #[must_use]
    pub fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }

    /// The same for a screen reader.
    #[must_use]
    pub fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.both_ends(&format::height(start_m, units), &format::height(end_m, units))
    }

    /// What was not assessed; a drop of a few metres is not worth a word.
    #[must_use]
    pub fn blank(&self, blank: &Blank, units: Units) -> String {
        let lower = (blank.drop_m >= 5.0).then(|| format::height(blank.drop_m, units));
        let length = format::length(blank.length_m, units);
        match lower {
            Some(lower) => self.left_blank_lower(&length, &lower),
            None => self.left_blank(&length),
        }
    }

    /// That it climbs between these heights, m.
    #[must_use]
    pub fn climbs(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.climbs_between(&format::height(start_m, units), &format::height(end_m, units))
    }

    /// How good the heights are, and what that means.
    #[must_use]
    pub fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let [before, after] =
            [road.quality.roughness_before, road.quality.roughness_after].map(format::tenths);
        let holds = self.grade_holds(road.quality.class, &format::length(road.base_length_m, units));
        format!("{holds} {}", self.roughness(&before, &after))
    }

    /// Where something was found.
    #[must_use]
    pub fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => self.onward_from(&format::distance(from_m, units)),
        }
    }

    /// Why a stretch is not assessed, behind its place.
    #[must_use]
    pub fn unassessed(&self, span: &Span) -> String {
        self.reason(span.why)
    }
}
