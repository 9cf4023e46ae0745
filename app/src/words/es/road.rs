//! Spanish words of the road.

use super::{Spanish, telling};
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for Spanish {
    fn road_head(&self) -> &'static str {
        "Esta carretera tal como está grabada"
    }
    fn both_ends(&self, start: &str, end: &str) -> String {
        format!(
            "recorrida desde el extremo situado a {start} de altitud hasta el extremo situado a {end} de altitud"
        )
    }
    fn left_blank(&self, length: &str, lower: Option<&str>) -> String {
        let lower =
            lower.map_or_else(String::new, |it| format!("; detrás, la carretera queda {it} más abajo"));
        format!("No se pudieron evaluar {length}{lower}. Allí no se aconseja nada.")
    }
    fn climbs_between(&self, start: &str, end: &str) -> String {
        format!("Esta carretera sube de {start} a {end} en el sentido mostrado. ¿Va a bajarla?")
    }
    fn grade_holds(&self, class: Class, base: &str) -> String {
        match class {
            Class::Good => {
                format!("Las altitudes son buenas: una pendiente es válida a lo largo de {base} o más.")
            }
            Class::Fair => format!(
                "Las altitudes son aceptables: una pendiente es válida a lo largo de {base} o más; los cambios más cortos no se ven."
            ),
            Class::Poor => format!(
                "Las altitudes son malas: una pendiente es válida a lo largo de {base} o más, y es solo orientativa. Compárela con las señales."
            ),
        }
    }
    fn roughness(&self, before: &str, after: &str) -> String {
        format!(
            "Nueve de cada diez tramos vecinos de 100 m difieren en no más de {before} puntos porcentuales tal como están grabados, y en no más de {after} después de suavizarlos."
        )
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
    fn onward_from(&self, place: &str) -> String {
        format!("desde {place}")
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
