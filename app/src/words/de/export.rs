//! German words that stand in a file saved for a device.

use super::German;
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{ExportWords, PlanWords};
use solver::plan::Choice;
use solver::truck::{Gear, Stage};

impl ExportWords for German {
    fn mark_caution(&self) -> &'static str {
        "Aus Eingaben und aufgezeichneten Höhen berechnet, die fehlerhaft sind. Keine Erlaubnis hinunterzufahren: Verkehrszeichen, geltendes Recht und die Grenzwerte des Fahrzeugherstellers gehen vor."
    }
    fn mark_crest(&self, number: usize, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(held) => format!(
                "Kuppe {number}: {}, {}, {} halten",
                self.gear(held.gear),
                self.stage(held.stage),
                format::hold_speed(held.speed.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Kuppe {number}: keine sichere Geschwindigkeit gefunden"),
        }
    }
    fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", dann Gang {gear}"));
        format!("Fuß {number}{after}")
    }
}
