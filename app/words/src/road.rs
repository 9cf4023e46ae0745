//! The heights of a road's ends, and places along it.

use crate::Spoken;
use crate::format::{self, Units};

impl Spoken {
    /// Start → end heights, in the direction of travel.
    #[must_use]
    pub fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }

    /// Start and end heights for a screen reader.
    #[must_use]
    pub fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.both_ends(&format::height(start_m, units), &format::height(end_m, units))
    }

    /// That the road climbs between these heights, m.
    #[must_use]
    pub fn climbs(&self, start_m: f64, end_m: f64, units: Units) -> String {
        self.climbs_between(&format::height(start_m, units), &format::height(end_m, units))
    }

    /// Where something was found.
    #[must_use]
    pub fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => self.onward_from(&format::place(from_m, units)),
        }
    }
}
