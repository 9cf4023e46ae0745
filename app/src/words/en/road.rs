//! English words of the road.

use super::English;
use crate::format::{self, Units};
use crate::message::RoadFacts;
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for English {
    fn road_head(&self) -> &'static str {
        "This road as recorded"
    }
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!(
            "driven from the end at {} to the end at {}",
            format::height(start_m, units),
            format::height(end_m, units)
        )
    }
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let base = format::length(road.base_length_m, units);
        let rough = format!(
            "Nine in ten neighbouring stretches of 100 m differ by no more than {} points as recorded, {} after smoothing.",
            format::tenths(road.quality.roughness_before),
            format::tenths(road.quality.roughness_after)
        );
        let says = match road.quality.class {
            Class::Good => format!("Heights are good: a grade holds over {base} or more."),
            Class::Fair => {
                format!("Heights are fair: a grade holds over {base} or more; shorter steps are not seen.")
            }
            Class::Poor => format!(
                "Heights are poor: a grade holds over {base} or more, and is advisory only. Check it against the signs."
            ),
        };
        format!("{says} {rough}")
    }
    fn findings_head(&self, count: usize) -> String {
        if count == 1 {
            "1 thing noticed or repaired in the file".to_owned()
        } else {
            format!("{count} things noticed or repaired in the file")
        }
    }
    fn no_findings(&self) -> &'static str {
        "Nothing had to be repaired."
    }
    fn file_error(&self, error: &FileError) -> String {
        error.to_string()
    }
    fn finding(&self, finding: &Finding) -> String {
        format!("{}.", finding.what())
    }
    fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => format!("from {}", format::distance(from_m, units)),
        }
    }
    fn show_place(&self, place: &str) -> String {
        format!("Show {place} on the road")
    }
    fn unassessed_head(&self, count: usize) -> String {
        if count == 1 {
            "1 stretch is not assessed: nothing is advised there".to_owned()
        } else {
            format!("{count} stretches are not assessed: nothing is advised there")
        }
    }
    fn unassessed(&self, span: &Span) -> String {
        format!("{}.", span.why)
    }
}
