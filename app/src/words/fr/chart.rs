//! French words of the road picture.

use super::French;
use super::descent::side;
use crate::chart::{Bracket, GradeStep, Here, Lane, Reading, ReadoutCell, SPEED_STEP};
use crate::format::{self, Units};
use crate::words::say::{UNKNOWN, radius};
use crate::words::{ChartWords, PlanWords};
use solver::HeatStep;

/// A place no further ahead is here, m.
const HERE_M: f64 = 15.0;
impl ChartWords for French {
    fn picture(&self) -> &'static str {
        "La route"
    }
    fn fill_by(&self) -> &'static str {
        "Colorer selon"
    }
    fn reading(&self, reading: Reading) -> &'static str {
        match reading {
            Reading::Gear => "rapport",
            Reading::Stage => "cran",
            Reading::Heat => "chaleur des freins",
            Reading::Speed => "vitesse",
            Reading::Grade => "pente",
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
        "Zoom"
    }
    fn zoom_in(&self) -> &'static str {
        "Agrandir"
    }
    fn zoom_out(&self) -> &'static str {
        "Réduire"
    }
    fn zoom_all(&self) -> &'static str {
        "Toute la route"
    }
    fn lane(&self, lane: Lane) -> &'static str {
        match lane {
            Lane::Height => "altitude",
            Lane::Gear => "rapport",
            Lane::Stage => "cran",
            Lane::Heat => "chaleur freins",
            Lane::Speed => "vitesse",
            Lane::Temperature => "freins",
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
        "après arrêt"
    }
    fn short_stage(&self, stage: u8) -> String {
        if stage == 0 { "coupé".to_owned() } else { stage.to_string() }
    }
    fn heat(&self, step: HeatStep) -> &'static str {
        self.heat_step(step)
    }
    fn bend_caps(&self) -> &'static str {
        "en virage"
    }
    fn only_this(&self) -> &'static str {
        "Seulement cette partie"
    }
    fn not_assessed(&self) -> &'static str {
        "non évalué"
    }
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        // Entered in whole steps of either unit: rounding down would show 49 for 50 mph.
        format!("limite {}", format::met_speed(limit_mps, units))
    }
    fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        format!("limite {}", format::entered_temperature(limit_c, units))
    }
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String> {
        let number = descent.number;
        let length = format::length(length_m, units);
        let mean = format::grade(f64::from(descent.mean));
        let steepest = format::grade(f64::from(descent.steepest));
        vec![
            format!("{number} · {length} · {mean} · au plus raide {steepest}"),
            format!("{number} · {length} · {mean}"),
            format!("{number} · {mean}"),
        ]
    }
    fn cursor(&self) -> &'static str {
        "Endroit sur la route"
    }
    fn spoken(&self, here: &Here, units: Units) -> String {
        let at = format::distance(here.at_m, units);
        if !here.assessed {
            return format!("{at}\u{a0}: non évalué.");
        }
        let mut parts = vec![at];
        if let Some(grade) = here.grade {
            parts.push(format!("pente {}", format::grade(grade.grade)));
        }
        if let Some(gear) = here.gear {
            parts.push(format!("rapport {gear}"));
        }
        if let Some(stage) = here.stage {
            parts.push(if stage == 0 { "ralentisseur coupé".to_owned() } else { format!("cran {stage}") });
        }
        if let Some(speed) = here.speed {
            parts.push(format::hold_speed(speed, units));
        }
        if let Some(heat) = here.heat {
            parts.push(format!("freins {}", self.heat(heat)));
        }
        format!("{}.", parts.join(", "))
    }
    fn readout_head(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        match cell {
            ReadoutCell::At => "endroit".to_owned(),
            ReadoutCell::Grade => match here.grade {
                Some(it) => format!("pente sur {}", format::length(it.over_m, units)),
                None => "pente".to_owned(),
            },
            ReadoutCell::Height => "altitude".to_owned(),
            ReadoutCell::GearStage => "rapport · cran".to_owned(),
            ReadoutCell::Speed => "vitesse · moteur".to_owned(),
            ReadoutCell::Carried => "part du ralentisseur".to_owned(),
            ReadoutCell::Brakes => "freins".to_owned(),
            ReadoutCell::IfStopped => "après arrêt ici".to_owned(),
        }
    }
    fn surroundings(&self, here: &Here, units: Units) -> String {
        let length = |metres: f64| format::length(metres, units);
        let mut parts = Vec::new();
        if !here.assessed {
            parts.push("La route n’a pas pu être évaluée ici\u{a0}: rien n’est dit à son sujet.".to_owned());
        }
        match (here.descent, here.next_descent) {
            (Some((number, to_foot)), _) => {
                parts.push(format!("Dans la descente {number}, encore {} jusqu’à son pied.", length(to_foot)))
            }
            (None, Some((number, to_crest))) => {
                parts.push(format!("La descente {number} commence dans {}.", length(to_crest)))
            }
            (None, None) => parts.push("Aucune descente plus loin.".to_owned()),
        }
        if let Some(bend) = here.bend {
            let kind = if bend.hairpin { "Virage en épingle" } else { "Virage" };
            parts.push(format!(
                "{kind} {}\u{a0}: {} au plus (rayon d’environ {}, estimation).",
                side(bend.left),
                format::hold_speed(f64::from(bend.speed), units),
                radius(f64::from(bend.radius_m), units)
            ));
        }
        if let Some((name, ahead)) = &here.next_place {
            let place = if *ahead < HERE_M {
                format!("Ici\u{a0}: {name}.")
            } else {
                format!("Dans {}\u{a0}: {name}.", length(*ahead))
            };
            parts.push(place);
        }
        parts.join(" ")
    }
    fn strip(&self) -> &'static str {
        "Toute la route, et la partie affichée ci-dessus"
    }
    fn plan_shape(&self) -> &'static str {
        "La route vue d’en haut, le nord en haut"
    }
    fn start(&self) -> &'static str {
        "début"
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
        GradeStep::Down10 => "−10\u{a0}% et plus raide",
        GradeStep::Down8 => "−8 à −10\u{a0}%",
        GradeStep::Down6 => "−6 à −8\u{a0}%",
        GradeStep::Down4 => "−4 à −6\u{a0}%",
        GradeStep::Down2 => "−2 à −4\u{a0}%",
        GradeStep::Level => "plat",
        GradeStep::Up2 => "montée de 2 à 5\u{a0}%",
        GradeStep::Up5 => "montée de 5\u{a0}% et plus",
    }
}
