//! Spanish words of the road picture.

use super::Spanish;
use super::descent::side;
use crate::chart::{Bracket, GradeStep, Here, Lane, Reading, ReadoutCell, SPEED_STEP};
use crate::format::{self, Units};
use crate::words::say::{UNKNOWN, radius};
use crate::words::{ChartWords, PlanWords};
use solver::HeatStep;

/// A place no further ahead is here, m.
const HERE_M: f64 = 15.0;
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
    fn step(&self, reading: Reading, value: u8, units: Units) -> String {
        match reading {
            Reading::Gear => value.to_string(),
            Reading::Stage => self.short_stage(value),
            Reading::Heat => {
                HeatStep::ALL.get(usize::from(value)).map_or(UNKNOWN, |step| self.heat(*step)).to_owned()
            }
            Reading::Speed => {
                let from = u32::from(value) * SPEED_STEP;
                format!("{from}–{} {}", from + SPEED_STEP, units.speed())
            }
            Reading::Grade => {
                GradeStep::ALL.get(usize::from(value)).map_or(UNKNOWN, |step| grade_step(*step)).to_owned()
            }
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
    fn lane_unit(&self, lane: Lane, units: Units) -> &'static str {
        match lane {
            Lane::Height => units.height(),
            Lane::Speed => units.speed(),
            Lane::Temperature => units.temperature(),
            Lane::Gear | Lane::Stage | Lane::Heat => "",
        }
    }
    fn after_stop(&self) -> &'static str {
        "tras parar"
    }
    fn short_stage(&self, stage: u8) -> String {
        stage.to_string()
    }
    fn heat(&self, step: HeatStep) -> &'static str {
        self.heat_step(step)
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
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        // Entered in whole steps of either unit: rounding down would show 49 for 50 mph.
        format!("límite {}", format::met_speed(limit_mps, units))
    }
    fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        format!("límite {}", format::entered_temperature(limit_c, units))
    }
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String> {
        let number = descent.number;
        let length = format::length(length_m, units);
        let mean = format::grade(f64::from(descent.mean));
        let steepest = format::grade(f64::from(descent.steepest));
        vec![
            format!("{number} · {length} · {mean} · máxima {steepest}"),
            format!("{number} · {length} · {mean}"),
            format!("{number} · {mean}"),
        ]
    }
    fn cursor(&self) -> &'static str {
        "Punto de la carretera"
    }
    fn spoken(&self, here: &Here, units: Units) -> String {
        let at = format::distance(here.at_m, units);
        if !here.assessed {
            return format!("{at}: sin evaluar.");
        }
        let mut parts = vec![at];
        if let Some(grade) = here.grade {
            parts.push(format!("pendiente {}", format::grade(grade.grade)));
        }
        if let Some(gear) = here.gear {
            parts.push(format!("marcha {gear}"));
        }
        if let Some(stage) = here.stage {
            parts.push(if stage == 0 {
                "ralentizador desconectado".to_owned()
            } else {
                format!("posición {stage}")
            });
        }
        if let Some(speed) = here.speed {
            parts.push(format::hold_speed(speed, units));
        }
        if let Some(heat) = here.heat {
            parts.push(format!("frenos {}", self.heat(heat)));
        }
        format!("{}.", parts.join(", "))
    }
    fn readout_head(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        match cell {
            ReadoutCell::At => "en el punto".to_owned(),
            ReadoutCell::Grade => match here.grade {
                Some(it) => format!("pendiente a lo largo de {}", format::length(it.over_m, units)),
                None => "pendiente".to_owned(),
            },
            ReadoutCell::Height => "altitud".to_owned(),
            ReadoutCell::GearStage => "marcha · posición".to_owned(),
            ReadoutCell::Speed => "velocidad · motor".to_owned(),
            ReadoutCell::Carried => "parte del ralentizador".to_owned(),
            ReadoutCell::Brakes => "frenos".to_owned(),
            ReadoutCell::IfStopped => "si para aquí".to_owned(),
        }
    }
    fn surroundings(&self, here: &Here, units: Units) -> String {
        let length = |metres: f64| format::length(metres, units);
        let mut parts = Vec::new();
        if !here.assessed {
            parts.push("Aquí no se pudo evaluar la carretera: no se dice nada sobre ella.".to_owned());
        }
        match (here.descent, here.next_descent) {
            (Some((number, to_foot)), _) => {
                parts.push(format!("En la bajada {number}, a {} de su pie.", length(to_foot)))
            }
            (None, Some((number, to_crest))) => {
                parts.push(format!("La bajada {number} empieza dentro de {}.", length(to_crest)))
            }
            (None, None) => parts.push("No hay ninguna bajada por delante.".to_owned()),
        }
        if let Some(bend) = here.bend {
            let kind = if bend.hairpin { "Curva de herradura" } else { "Curva" };
            parts.push(format!(
                "{kind} {}: como máximo {} (radio de aproximadamente {}, una estimación).",
                side(bend.left),
                format::hold_speed(f64::from(bend.speed), units),
                radius(f64::from(bend.radius_m), units)
            ));
        }
        if let Some((name, ahead)) = &here.next_place {
            let place = if *ahead < HERE_M {
                format!("Aquí: {name}.")
            } else {
                format!("Dentro de {}: {name}.", length(*ahead))
            };
            parts.push(place);
        }
        parts.join(" ")
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

fn grade_step(step: GradeStep) -> &'static str {
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
