//! German words of the road.

use super::{German, telling};
use crate::format::{self, Units};
use crate::message::RoadFacts;
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for German {
    fn road_head(&self) -> &'static str {
        "Diese Strecke, wie aufgezeichnet"
    }
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!(
            "gefahren vom Ende auf {} Höhe zum Ende auf {} Höhe",
            format::height(start_m, units),
            format::height(end_m, units)
        )
    }
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let base = format::length(road.base_length_m, units);
        let rough = format!(
            "Neun von zehn benachbarten 100-m-Abschnitten unterscheiden sich um höchstens {} Prozentpunkte, wie aufgezeichnet, und um höchstens {} nach der Glättung.",
            format::tenths(road.quality.roughness_before),
            format::tenths(road.quality.roughness_after)
        );
        let says = match road.quality.class {
            Class::Good => format!("Die Höhen sind gut: Eine Neigung gilt ab {base} Länge."),
            Class::Fair => {
                format!(
                    "Die Höhen sind mäßig: Eine Neigung gilt ab {base} Länge; kürzere Steilstücke werden nicht erkannt."
                )
            }
            Class::Poor => format!(
                "Die Höhen sind schlecht: Eine Neigung gilt erst ab {base} Länge und ist nur ein Anhaltspunkt. Vergleichen Sie sie mit den Schildern."
            ),
        };
        format!("{says} {rough}")
    }
    fn findings_head(&self, count: usize) -> String {
        if count == 1 {
            "1 Auffälligkeit oder Korrektur in der Datei".to_owned()
        } else {
            format!("{count} Auffälligkeiten oder Korrekturen in der Datei")
        }
    }
    fn no_findings(&self) -> &'static str {
        "Es musste nichts korrigiert werden."
    }
    fn file_error(&self, error: &FileError) -> String {
        telling::file_error(error)
    }
    fn finding(&self, finding: &Finding) -> String {
        telling::finding(finding)
    }
    fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => format!("ab {}", format::distance(from_m, units)),
        }
    }
    fn show_place(&self, place: &str) -> String {
        format!("Auf der Strecke zeigen: {place}")
    }
    fn unassessed_head(&self, count: usize) -> String {
        if count == 1 {
            "1 Abschnitt ist nicht beurteilt: Dort wird nichts empfohlen".to_owned()
        } else {
            format!("{count} Abschnitte sind nicht beurteilt: Dort wird nichts empfohlen")
        }
    }
    fn unassessed(&self, span: &Span) -> String {
        telling::unassessed(span.why)
    }
}
