//! German words of the road picture.

use super::German;
use super::descent::side;
use crate::chart::{Bracket, GradeStep, Here, Lane, Reading, ReadoutCell, SPEED_STEP};
use crate::format::{self, Units};
use crate::words::say::{UNKNOWN, radius};
use crate::words::{ChartWords, PlanWords};
use solver::HeatStep;

/// A place no further ahead is here, m.
const HERE_M: f64 = 15.0;
impl ChartWords for German {
    fn picture(&self) -> &'static str {
        "Die Strecke"
    }
    fn fill_by(&self) -> &'static str {
        "Einfärben nach"
    }
    fn reading(&self, reading: Reading) -> &'static str {
        match reading {
            Reading::Gear => "Gang",
            Reading::Stage => "Stufe",
            Reading::Heat => "Bremsenwärme",
            Reading::Speed => "Tempo",
            Reading::Grade => "Neigung",
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
        "Näher"
    }
    fn zoom_out(&self) -> &'static str {
        "Weiter weg"
    }
    fn zoom_all(&self) -> &'static str {
        "Ganze Strecke"
    }
    fn lane(&self, lane: Lane) -> &'static str {
        match lane {
            Lane::Height => "Höhe",
            Lane::Gear => "Gang",
            Lane::Stage => "Stufe",
            Lane::Heat => "Bremsenwärme",
            Lane::Speed => "Tempo",
            Lane::Temperature => "Bremsen",
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
        "nach Stopp"
    }
    fn short_stage(&self, stage: u8) -> String {
        if stage == 0 { "aus".to_owned() } else { stage.to_string() }
    }
    fn heat(&self, step: HeatStep) -> &'static str {
        self.heat_step(step)
    }
    fn bend_caps(&self) -> &'static str {
        "in Kurven"
    }
    fn only_this(&self) -> &'static str {
        "Nur dieser Teil"
    }
    fn not_assessed(&self) -> &'static str {
        "nicht beurteilt"
    }
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        // Entered in whole steps of either unit: rounding down would show 49 for 50 mph.
        format!("Grenze {}", format::met_speed(limit_mps, units))
    }
    fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        format!("Grenze {}", format::entered_temperature(limit_c, units))
    }
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String> {
        let number = descent.number;
        let length = format::length(length_m, units);
        let mean = format::grade(f64::from(descent.mean));
        let steepest = format::grade(f64::from(descent.steepest));
        vec![
            format!("{number} · {length} · {mean} · am steilsten {steepest}"),
            format!("{number} · {length} · {mean}"),
            format!("{number} · {mean}"),
        ]
    }
    fn cursor(&self) -> &'static str {
        "Stelle auf der Strecke"
    }
    fn spoken(&self, here: &Here, units: Units) -> String {
        let at = format::distance(here.at_m, units);
        if !here.assessed {
            return format!("{at}: nicht beurteilt.");
        }
        let mut parts = vec![at];
        if let Some(grade) = here.grade {
            parts.push(format!("Neigung {}", format::grade(grade.grade)));
        }
        if let Some(gear) = here.gear {
            parts.push(format!("Gang {gear}"));
        }
        if let Some(stage) = here.stage {
            parts.push(if stage == 0 { "Dauerbremse aus".to_owned() } else { format!("Stufe {stage}") });
        }
        if let Some(speed) = here.speed {
            parts.push(format::hold_speed(speed, units));
        }
        if let Some(heat) = here.heat {
            parts.push(format!("Bremsen {}", self.heat(heat)));
        }
        format!("{}.", parts.join(", "))
    }
    fn readout_head(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        match cell {
            ReadoutCell::At => "bei".to_owned(),
            ReadoutCell::Grade => match here.grade {
                Some(it) => format!("Neigung über {}", format::length(it.over_m, units)),
                None => "Neigung".to_owned(),
            },
            ReadoutCell::Height => "Höhe".to_owned(),
            ReadoutCell::GearStage => "Gang · Stufe".to_owned(),
            ReadoutCell::Speed => "Tempo · Motor".to_owned(),
            ReadoutCell::Carried => "Dauerbremse trägt".to_owned(),
            ReadoutCell::Brakes => "Bremsen".to_owned(),
            ReadoutCell::IfStopped => "nach Stopp hier".to_owned(),
        }
    }
    fn surroundings(&self, here: &Here, units: Units) -> String {
        let length = |metres: f64| format::length(metres, units);
        let mut parts = Vec::new();
        if !here.assessed {
            parts.push(
                "Die Strecke konnte hier nicht beurteilt werden: Über sie wird nichts gesagt.".to_owned(),
            );
        }
        match (here.descent, here.next_descent) {
            (Some((number, to_foot)), _) => {
                parts.push(format!("Auf Gefälle {number}, noch {} bis zum Fuß.", length(to_foot)))
            }
            (None, Some((number, to_crest))) => {
                parts.push(format!("Gefälle {number} beginnt in {}.", length(to_crest)))
            }
            (None, None) => parts.push("Kein Gefälle mehr voraus.".to_owned()),
        }
        if let Some(bend) = here.bend {
            let kind = if bend.hairpin { "Kehre" } else { "Kurve" };
            parts.push(format!(
                "{kind} {}: höchstens {} (Radius etwa {}, geschätzt).",
                side(bend.left),
                format::hold_speed(f64::from(bend.speed), units),
                radius(f64::from(bend.radius_m), units)
            ));
        }
        if let Some((name, ahead)) = &here.next_place {
            let place = if *ahead < HERE_M {
                format!("Hier: {name}.")
            } else {
                format!("{name} in {}.", length(*ahead))
            };
            parts.push(place);
        }
        parts.join(" ")
    }
    fn strip(&self) -> &'static str {
        "Die ganze Strecke, und der Teil, der oben gezeigt wird"
    }
    fn plan_shape(&self) -> &'static str {
        "Die Strecke von oben, Norden oben"
    }
    fn start(&self) -> &'static str {
        "Anfang"
    }
    fn end(&self) -> &'static str {
        "Ende"
    }
    fn north(&self) -> &'static str {
        "N"
    }
}

fn grade_step(step: GradeStep) -> &'static str {
    match step {
        GradeStep::Down10 => "−10 % und steiler",
        GradeStep::Down8 => "−8 bis −10 %",
        GradeStep::Down6 => "−6 bis −8 %",
        GradeStep::Down4 => "−4 bis −6 %",
        GradeStep::Down2 => "−2 bis −4 %",
        GradeStep::Level => "eben",
        GradeStep::Up2 => "2 bis 5 % Steigung",
        GradeStep::Up5 => "5 % Steigung und mehr",
    }
}
