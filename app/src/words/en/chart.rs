//! English words of the road picture.

use super::English;
use super::descent::side;
use crate::chart::{Bracket, GradeStep, Here, Lane, Reading, ReadoutCell, SPEED_STEP};
use crate::format::{self, Units};
use crate::words::say::{UNKNOWN, radius};
use crate::words::{ChartWords, PlanWords};
use solver::HeatStep;

/// A place no further ahead is here, m.
const HERE_M: f64 = 15.0;
impl ChartWords for English {
    fn picture(&self) -> &'static str {
        "The road"
    }
    fn fill_by(&self) -> &'static str {
        "Fill by"
    }
    fn reading(&self, reading: Reading) -> &'static str {
        match reading {
            Reading::Gear => "gear",
            Reading::Stage => "stage",
            Reading::Heat => "brake heat",
            Reading::Speed => "speed",
            Reading::Grade => "grade",
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
        "Zoom in"
    }
    fn zoom_out(&self) -> &'static str {
        "Zoom out"
    }
    fn zoom_all(&self) -> &'static str {
        "Whole road"
    }
    fn lane(&self, lane: Lane) -> &'static str {
        match lane {
            Lane::Height => "height",
            Lane::Gear => "gear",
            Lane::Stage => "stage",
            Lane::Heat => "brake heat",
            Lane::Speed => "speed",
            Lane::Temperature => "brakes",
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
        "if stopped"
    }
    fn short_stage(&self, stage: u8) -> String {
        if stage == 0 { "off".to_owned() } else { stage.to_string() }
    }
    fn heat(&self, step: HeatStep) -> &'static str {
        self.heat_step(step)
    }
    fn bend_caps(&self) -> &'static str {
        "in curves"
    }
    fn only_this(&self) -> &'static str {
        "Only this part"
    }
    fn not_assessed(&self) -> &'static str {
        "not assessed"
    }
    fn speed_limit(&self, limit_mps: f64, units: Units) -> String {
        // Entered in whole steps of either unit: rounding down would show 49 for 50 mph.
        format!("limit {}", format::met_speed(limit_mps, units))
    }
    fn heat_limit(&self, limit_c: f64, units: Units) -> String {
        format!("limit {}", format::entered_temperature(limit_c, units))
    }
    fn bracket(&self, descent: &Bracket, length_m: f64, units: Units) -> Vec<String> {
        let number = descent.number;
        let length = format::length(length_m, units);
        let mean = format::grade(f64::from(descent.mean));
        let steepest = format::grade(f64::from(descent.steepest));
        vec![
            format!("{number} · {length} · {mean} · steepest {steepest}"),
            format!("{number} · {length} · {mean}"),
            format!("{number} · {mean}"),
        ]
    }
    fn cursor(&self) -> &'static str {
        "Place on the road"
    }
    fn spoken(&self, here: &Here, units: Units) -> String {
        let at = format::distance(here.at_m, units);
        if !here.assessed {
            return format!("{at}: not assessed.");
        }
        let mut parts = vec![at];
        if let Some(grade) = here.grade {
            parts.push(format!("grade {}", format::grade(grade.grade)));
        }
        if let Some(gear) = here.gear {
            parts.push(format!("gear {gear}"));
        }
        if let Some(stage) = here.stage {
            parts.push(if stage == 0 { "retarder off".to_owned() } else { format!("stage {stage}") });
        }
        if let Some(speed) = here.speed {
            parts.push(format::hold_speed(speed, units));
        }
        if let Some(heat) = here.heat {
            parts.push(format!("brakes {}", self.heat(heat)));
        }
        format!("{}.", parts.join(", "))
    }
    fn readout_head(&self, cell: ReadoutCell, here: &Here, units: Units) -> String {
        match cell {
            ReadoutCell::At => "at".to_owned(),
            ReadoutCell::Grade => match here.grade {
                Some(it) => format!("grade over {}", format::length(it.over_m, units)),
                None => "grade".to_owned(),
            },
            ReadoutCell::Height => "height".to_owned(),
            ReadoutCell::GearStage => "gear · stage".to_owned(),
            ReadoutCell::Speed => "speed · engine".to_owned(),
            ReadoutCell::Carried => "retarder carries".to_owned(),
            ReadoutCell::Brakes => "brakes".to_owned(),
            ReadoutCell::IfStopped => "if stopped here".to_owned(),
        }
    }
    fn surroundings(&self, here: &Here, units: Units) -> String {
        let length = |metres: f64| format::length(metres, units);
        let mut parts = Vec::new();
        if !here.assessed {
            parts.push("The road could not be assessed here: nothing is said about it.".to_owned());
        }
        match (here.descent, here.next_descent) {
            (Some((number, to_foot)), _) => {
                parts.push(format!("On descent {number}, {} to its foot.", length(to_foot)))
            }
            (None, Some((number, to_crest))) => {
                parts.push(format!("Descent {number} begins in {}.", length(to_crest)))
            }
            (None, None) => parts.push("No descent ahead.".to_owned()),
        }
        if let Some(bend) = here.bend {
            let kind = if bend.hairpin { "Hairpin" } else { "Curve" };
            parts.push(format!(
                "{kind} {}: at most {} (radius about {}, an estimate).",
                side(bend.left),
                format::hold_speed(f64::from(bend.speed), units),
                radius(f64::from(bend.radius_m), units)
            ));
        }
        if let Some((name, ahead)) = &here.next_place {
            let place = if *ahead < HERE_M {
                format!("Here: {name}.")
            } else {
                format!("{name} in {}.", length(*ahead))
            };
            parts.push(place);
        }
        parts.join(" ")
    }
    fn strip(&self) -> &'static str {
        "The whole road, and the part shown above"
    }
    fn plan_shape(&self) -> &'static str {
        "The road seen from above, north up"
    }
    fn start(&self) -> &'static str {
        "start"
    }
    fn end(&self) -> &'static str {
        "end"
    }
    fn north(&self) -> &'static str {
        "N"
    }
}

fn grade_step(step: GradeStep) -> &'static str {
    match step {
        GradeStep::Down10 => "−10 % and steeper",
        GradeStep::Down8 => "−8 to −10 %",
        GradeStep::Down6 => "−6 to −8 %",
        GradeStep::Down4 => "−4 to −6 %",
        GradeStep::Down2 => "−2 to −4 %",
        GradeStep::Level => "level",
        GradeStep::Up2 => "up 2 to 5 %",
        GradeStep::Up5 => "up 5 % and steeper",
    }
}
