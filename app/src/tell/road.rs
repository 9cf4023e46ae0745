//! Words of the road shown: how much of it is blank, and how good its heights are.

use crate::format::{self, Units};
use crate::outline::Blank;
use crate::words::Spoken;
use workers::message::RoadFacts;

impl Spoken {
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

    /// How good the heights are, and what that means.
    #[must_use]
    pub fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let [before, after] =
            [road.quality.roughness_before, road.quality.roughness_after].map(format::tenths);
        let holds = self.grade_holds(road.quality.class, &format::length(road.base_length_m, units));
        format!("{holds} {}", self.roughness(&before, &after))
    }
}
