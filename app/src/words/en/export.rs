//! English words that stand in a file saved for a device.

use super::English;
use crate::words::ExportWords;
use solver::plan::ChangeHow;

impl ExportWords for English {
    fn mark_caution(&self) -> &'static str {
        "Worked out from entries and recorded heights, which err. Not permission to descend: posted signs, local law and the vehicle maker's limits come first."
    }
    fn crest_number(&self, number: usize) -> String {
        format!("Crest {number}")
    }
    fn hold(&self, speed: &str) -> String {
        format!("hold {speed}")
    }
    fn by_here(&self, how: ChangeHow) -> &'static str {
        match how {
            ChangeHow::Down => "by here",
            ChangeHow::Up => "from here on",
        }
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", then gear {gear}"));
        format!("Foot {number}{after}")
    }
}
