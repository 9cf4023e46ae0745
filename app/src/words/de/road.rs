//! German words of the road.

use super::{German, telling};
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for German {
    fn road_head(&self) -> &'static str {
        "Diese Strecke, wie aufgezeichnet"
    }
    fn both_ends(&self, start: &str, end: &str) -> String {
        format!("gefahren vom Ende auf {start} Höhe zum Ende auf {end} Höhe")
    }
    fn left_blank(&self, length: &str, lower: Option<&str>) -> String {
        let lower = lower.map_or_else(String::new, |it| format!("; dahinter liegt die Strecke {it} tiefer"));
        format!("{length} konnten nicht beurteilt werden{lower}. Dort wird nichts empfohlen.")
    }
    fn climbs_between(&self, start: &str, end: &str) -> String {
        format!(
            "Diese Strecke steigt in der angezeigten Richtung von {start} auf {end}. Fahren Sie sie bergab?"
        )
    }
    fn grade_holds(&self, class: Class, base: &str) -> String {
        match class {
            Class::Good => format!("Die Höhen sind gut: Eine Neigung gilt ab {base} Länge."),
            Class::Fair => {
                format!(
                    "Die Höhen sind mäßig: Eine Neigung gilt ab {base} Länge; kürzere Steilstücke werden nicht erkannt."
                )
            }
            Class::Poor => format!(
                "Die Höhen sind schlecht: Eine Neigung gilt erst ab {base} Länge und ist nur ein Anhaltspunkt. Vergleichen Sie sie mit den Schildern."
            ),
        }
    }
    fn roughness(&self, before: &str, after: &str) -> String {
        format!(
            "Neun von zehn benachbarten 100-m-Abschnitten unterscheiden sich um höchstens {before} Prozentpunkte, wie aufgezeichnet, und um höchstens {after} nach der Glättung."
        )
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
    fn onward_from(&self, place: &str) -> String {
        format!("ab {place}")
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
