//! Spanish words of the road.

use super::{Spanish, telling};
use crate::format::{self, Units};
use crate::message::RoadFacts;
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for Spanish {
    fn road_head(&self) -> &'static str {
        "Esta carretera tal como está grabada"
    }
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!(
            "recorrida desde el extremo situado a {} de altitud hasta el extremo situado a {} de altitud",
            format::height(start_m, units),
            format::height(end_m, units)
        )
    }
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let base = format::length(road.base_length_m, units);
        let rough = format!(
            "Nueve de cada diez tramos vecinos de 100 m difieren en no más de {} puntos porcentuales tal como están grabados, y en no más de {} después de suavizarlos.",
            format::tenths(road.quality.roughness_before),
            format::tenths(road.quality.roughness_after)
        );
        let says = match road.quality.class {
            Class::Good => {
                format!("Las altitudes son buenas: una pendiente es válida a lo largo de {base} o más.")
            }
            Class::Fair => format!(
                "Las altitudes son aceptables: una pendiente es válida a lo largo de {base} o más; los cambios más cortos no se ven."
            ),
            Class::Poor => format!(
                "Las altitudes son malas: una pendiente es válida a lo largo de {base} o más, y es solo orientativa. Compárela con las señales."
            ),
        };
        format!("{says} {rough}")
    }
    fn findings_head(&self, count: usize) -> String {
        if count == 1 {
            "1 cosa observada o corregida en el archivo".to_owned()
        } else {
            format!("{count} cosas observadas o corregidas en el archivo")
        }
    }
    fn no_findings(&self) -> &'static str {
        "No hubo que corregir nada."
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
            None => format!("desde {}", format::distance(from_m, units)),
        }
    }
    fn show_place(&self, place: &str) -> String {
        format!("Mostrar en la carretera: {place}")
    }
    fn unassessed_head(&self, count: usize) -> String {
        if count == 1 {
            "1 tramo sin evaluar: en él no se aconseja nada".to_owned()
        } else {
            format!("{count} tramos sin evaluar: en ellos no se aconseja nada")
        }
    }
    fn unassessed(&self, span: &Span) -> String {
        telling::unassessed(span.why)
    }
}
