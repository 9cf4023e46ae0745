//! Spanish words that stand in a file saved for a device.

use super::Spanish;
use crate::words::ExportWords;
use solver::plan::ChangeHow;

impl ExportWords for Spanish {
    fn mark_caution(&self) -> &'static str {
        "Calculado con datos introducidos y altitudes grabadas, que contienen errores. No es un permiso para bajar: tienen prioridad las señales, la ley local y los límites del fabricante del vehículo."
    }
    fn crest_number(&self, number: usize) -> String {
        format!("Cima {number}")
    }
    fn hold(&self, speed: &str) -> String {
        format!("mantenga {speed}")
    }
    fn by_here(&self, how: ChangeHow) -> &'static str {
        match how {
            ChangeHow::Down => "a más tardar aquí",
            ChangeHow::Up => "desde aquí",
        }
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", después marcha {gear}"));
        format!("Pie de la bajada {number}{after}")
    }
}
