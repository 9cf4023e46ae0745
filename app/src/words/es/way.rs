//! Spanish words of the way down.

use super::Spanish;
use crate::down::Told;
use crate::format::{self, Units};
use crate::words::say::{plain, strong};
use crate::words::{Piece, PlanWords, WayWords};
use solver::plan::{ChangeHow, Descent};

impl WayWords for Spanish {
    fn decided(&self, descent: &Descent, count: usize, first: Option<Told>, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" desde el ", "inicio de la carretera".to_owned())
        } else {
            (" desde la cima en el punto ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "La bajada: ".to_owned()
        } else {
            format!("Decide la bajada {} de {count}: ", descent.number)
        };
        match first {
            Some((gear, stage, speed)) => vec![
                plain(opening),
                strong(self.gear(gear)),
                plain(", "),
                strong(self.stage(stage)),
                plain(", mantenga "),
                strong(format::hold_speed(speed.0, units)),
                plain(place),
                strong(crest),
            ],
            None => vec![
                plain(opening),
                strong("no se encontró ninguna velocidad segura"),
                plain(place),
                strong(crest),
                plain(". Con los datos introducidos, no baje por ella con este camión."),
            ],
        }
    }
    fn by_place(&self, how: ChangeHow, at: &str) -> String {
        match how {
            ChangeHow::Down => format!("a más tardar en {at}"),
            ChangeHow::Up => format!("desde {at}"),
        }
    }
    fn asks(&self, grade: &str, length: &str, from: &str) -> String {
        format!(
            "una pendiente constante de {grade}: eso es lo que exige la bajada, y más que en ningún otro sitio a lo largo de {length} desde el punto {from}"
        )
    }
    fn engage(&self, at_start: bool, foot: &str) -> String {
        let before = if at_start { "arrancar" } else { "la cima" };
        format!(
            "Ponga la marcha antes de {before} y consérvela hasta el pie de la bajada, en el punto {foot}."
        )
    }
    fn engage_first(&self, at_start: bool) -> &'static str {
        if at_start {
            "Ponga la primera de estas marchas antes de arrancar. Baje de marcha antes del lugar indicado; suba de marcha solo después."
        } else {
            "Ponga la primera de estas marchas antes de la cima. Baje de marcha antes del lugar indicado; suba de marcha solo después."
        }
    }
    fn chosen(&self, lowest: bool, asks: &str) -> String {
        let gear = if lowest { "La marcha más baja se" } else { "Se" };
        format!("{gear} ha elegido para {asks}.")
    }
    fn ruled_out_by(&self, asks: &str) -> String {
        format!("Lo que impide esta bajada es {asks}.")
    }
    fn not_assessed_on(&self, span: &str) -> String {
        format!("Sin evaluar: {span}. No se conoce la pendiente en esa parte.")
    }
    fn brakes_warmer(&self, by: &str) -> String {
        format!("frenos {by} más calientes")
    }
    fn doubted(&self) -> &'static str {
        ", en duda: el error de las altitudes puede ser igual de grande"
    }
    fn and_more(&self, count: usize) -> String {
        format!("y {count} más")
    }
    fn brakes_at_places(&self, needed: bool, places: &str) -> String {
        let how = if needed {
            "Los frenos de servicio son necesarios"
        } else {
            "Los frenos de servicio actúan un poco"
        };
        format!("{how} en: {places}.")
    }
    fn in_doubt(&self, grade: &str) -> String {
        format!(
            "La marcha retiene el vehículo en promedio. No se pueden descartar tramos cortos de hasta {grade}: tenga listos los frenos de servicio."
        )
    }
    fn touches_label(&self) -> &'static str {
        "Dónde gana velocidad sin los frenos de servicio"
    }
    fn legs_label(&self) -> &'static str {
        "Marcha por marcha"
    }
    fn between_legs(&self) -> &'static str {
        "Entre una y otra, el vehículo reduce la velocidad para la marcha siguiente o la aumenta."
    }
    fn slowest_leg(&self) -> &'static str {
        "La parte más lenta"
    }
    fn untouched_label(&self) -> &'static str {
        "Sin tocar nunca los frenos de servicio"
    }
    fn no_untouched(&self) -> &'static str {
        "Ninguna marcha retiene sola el vehículo en todas las pendientes grabadas."
    }
    fn one_gear_label(&self) -> &'static str {
        "Una sola marcha en toda la bajada"
    }
}
