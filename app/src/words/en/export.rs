//! English words that stand in a file saved for a device.

use super::English;
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{ExportWords, PlanWords};
use solver::plan::Choice;
use solver::truck::{Gear, Stage};

impl ExportWords for English {
    fn mark_caution(&self) -> &'static str {
        "Worked out from entries and recorded heights, which err. Not permission to descend: posted signs, local law and the vehicle maker's limits come first."
    }
    fn mark_crest(&self, number: usize, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(held) => format!(
                "Crest {number}: {}, {}, hold {}",
                self.gear(held.gear),
                self.stage(held.stage),
                format::hold_speed(held.speed.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Crest {number}: no safe speed found"),
        }
    }
    fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", then gear {gear}"));
        format!("Foot {number}{after}")
    }
}
