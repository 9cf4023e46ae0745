//! Spanish words that stand in a file saved for a device.

use super::Spanish;
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{ExportWords, PlanWords};
use solver::plan::Choice;
use solver::truck::{Gear, Stage};

impl ExportWords for Spanish {
    fn mark_caution(&self) -> &'static str {
        "Calculado con datos introducidos y altitudes grabadas, que contienen errores. No es un permiso para bajar: tienen prioridad las señales, la ley local y los límites del fabricante del vehículo."
    }
    fn mark_crest(&self, number: usize, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(held) => format!(
                "Cima {number}: {}, {}, mantenga {}",
                self.gear(held.gear),
                self.stage(held.stage),
                format::hold_speed(held.speed.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Cima {number}: no se encontró ninguna velocidad segura"),
        }
    }
    fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", después marcha {gear}"));
        format!("Pie de la bajada {number}{after}")
    }
}
