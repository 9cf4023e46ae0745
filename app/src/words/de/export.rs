//! German words that stand in a file saved for a device.

use super::German;
use crate::words::ExportWords;
use solver::plan::ChangeHow;

impl ExportWords for German {
    fn mark_caution(&self) -> &'static str {
        "Aus Eingaben und aufgezeichneten Höhen berechnet, die fehlerhaft sind. Keine Erlaubnis hinunterzufahren: Verkehrszeichen, geltendes Recht und die Grenzwerte des Fahrzeugherstellers gehen vor."
    }
    fn crest_number(&self, number: usize) -> String {
        format!("Kuppe {number}")
    }
    fn hold(&self, speed: &str) -> String {
        format!("{speed} halten")
    }
    fn by_here(&self, how: ChangeHow) -> &'static str {
        match how {
            ChangeHow::Down => "spätestens hier",
            ChangeHow::Up => "erst ab hier",
        }
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", dann Gang {gear}"));
        format!("Fuß {number}{after}")
    }
}
