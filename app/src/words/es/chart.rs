//! Spanish words of the road picture.

use super::Spanish;
use crate::chart::{GradeStep, Lane, Reading, ReadoutCell};
use crate::words::ChartWords;

impl ChartWords for Spanish {
    fn picture(&self) -> &'static str {
        "La carretera"
    }
    fn fill_by(&self) -> &'static str {
        "Colorear según"
    }
    fn reading(&self, reading: Reading) -> &'static str {
        match reading {
            Reading::Gear => "marcha",
            Reading::Stage => "posición",
            Reading::Heat => "calor de los frenos",
            Reading::Speed => "velocidad",
            Reading::Grade => "pendiente",
        }
    }
    fn grade_step(&self, step: GradeStep) -> &'static str {
        match step {
            GradeStep::Down10 => "−10 % o más empinada",
            GradeStep::Down8 => "−8 a −10 %",
            GradeStep::Down6 => "−6 a −8 %",
            GradeStep::Down4 => "−4 a −6 %",
            GradeStep::Down2 => "−2 a −4 %",
            GradeStep::Level => "llano",
            GradeStep::Up2 => "subida de 2 a 5 %",
            GradeStep::Up5 => "subida de 5 % o más",
        }
    }
    fn zoom(&self) -> &'static str {
        "Ampliación"
    }
    fn zoom_in(&self) -> &'static str {
        "Ampliar"
    }
    fn zoom_out(&self) -> &'static str {
        "Reducir"
    }
    fn zoom_all(&self) -> &'static str {
        "Toda la carretera"
    }
    fn lane(&self, lane: Lane) -> &'static str {
        match lane {
            Lane::Height => "altitud",
            Lane::Gear => "marcha",
            Lane::Stage => "posición",
            Lane::Heat => "calor de los frenos",
            Lane::Speed => "velocidad",
            Lane::Temperature => "frenos",
        }
    }
    fn after_stop(&self) -> &'static str {
        "tras parar"
    }
    fn short_stage(&self, stage: u8) -> String {
        stage.to_string()
    }
    fn bend_caps(&self) -> &'static str {
        "en curvas"
    }
    fn only_this(&self) -> &'static str {
        "Solo esta parte"
    }
    fn not_assessed(&self) -> &'static str {
        "sin evaluar"
    }
    fn limit(&self) -> &'static str {
        "límite"
    }
    fn before_asked(&self) -> &'static str {
        "exige"
    }
    fn cursor(&self) -> &'static str {
        "Punto de la carretera"
    }
    fn cell_head(&self, cell: ReadoutCell) -> &'static str {
        match cell {
            ReadoutCell::At => "en el punto",
            ReadoutCell::Grade => "pendiente",
            ReadoutCell::Height => "altitud",
            ReadoutCell::GearStage => "marcha · posición",
            ReadoutCell::Speed => "velocidad · motor",
            ReadoutCell::Carried => "parte del ralentizador",
            ReadoutCell::Brakes => "frenos",
            ReadoutCell::IfStopped => "si para aquí",
        }
    }
    fn engine_carries(&self) -> &'static str {
        "parte del motor"
    }
    fn grade_over(&self, length: &str) -> String {
        format!("pendiente a lo largo de {length}")
    }
    fn nothing_said_here(&self) -> &'static str {
        "Aquí no se pudo evaluar la carretera: no se dice nada sobre ella."
    }
    fn on_descent(&self, number: usize, to_foot: &str) -> String {
        format!("En la bajada {number}, a {to_foot} de su pie.")
    }
    fn descent_begins(&self, number: usize, ahead: &str) -> String {
        format!("La bajada {number} empieza dentro de {ahead}.")
    }
    fn no_descent_ahead(&self) -> &'static str {
        "No hay ninguna bajada por delante."
    }
    fn bend(&self, hairpin: bool, side: &str, speed: &str, radius: &str) -> String {
        let kind = if hairpin { "Curva de herradura" } else { "Curva" };
        format!("{kind} {side}: como máximo {speed} (radio de aproximadamente {radius}, una estimación).")
    }
    fn place_here(&self, name: &str) -> String {
        format!("Aquí: {name}.")
    }
    fn place_ahead(&self, name: &str, ahead: &str) -> String {
        format!("Dentro de {ahead}: {name}.")
    }
    fn strip(&self) -> &'static str {
        "Toda la carretera, y la parte mostrada arriba"
    }
    fn plan_shape(&self) -> &'static str {
        "La carretera vista desde arriba, con el norte hacia arriba"
    }
    fn start(&self) -> &'static str {
        "inicio"
    }
    fn end(&self) -> &'static str {
        "fin"
    }
    fn north(&self) -> &'static str {
        "N"
    }
}
