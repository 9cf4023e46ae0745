//! English words of the road picture.

use super::English;
use crate::chart::{GradeStep, Lane, Reading, ReadoutCell};
use crate::words::ChartWords;

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
    fn grade_step(&self, step: GradeStep) -> &'static str {
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
    fn after_stop(&self) -> &'static str {
        "if stopped"
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
    fn limit(&self) -> &'static str {
        "limit"
    }
    fn before_asked(&self) -> &'static str {
        "asks for"
    }
    fn cursor(&self) -> &'static str {
        "Place on the road"
    }
    fn cell_head(&self, cell: ReadoutCell) -> &'static str {
        match cell {
            ReadoutCell::At => "at",
            ReadoutCell::Grade => "grade",
            ReadoutCell::Height => "height",
            ReadoutCell::GearStage => "gear · stage",
            ReadoutCell::Speed => "speed · engine",
            ReadoutCell::Carried => "retarder carries",
            ReadoutCell::Brakes => "brakes",
            ReadoutCell::IfStopped => "if stopped here",
        }
    }
    fn engine_carries(&self) -> &'static str {
        "engine carries"
    }
    fn grade_over(&self, length: &str) -> String {
        format!("grade over {length}")
    }
    fn nothing_said_here(&self) -> &'static str {
        "The road could not be assessed here: nothing is said about it."
    }
    fn on_descent(&self, number: usize, to_foot: &str) -> String {
        format!("On descent {number}, {to_foot} to its foot.")
    }
    fn descent_begins(&self, number: usize, ahead: &str) -> String {
        format!("Descent {number} begins in {ahead}.")
    }
    fn no_descent_ahead(&self) -> &'static str {
        "No descent ahead."
    }
    fn bend(&self, hairpin: bool, side: &str, speed: &str, radius: &str) -> String {
        let kind = if hairpin { "Hairpin" } else { "Curve" };
        format!("{kind} {side}: at most {speed} (radius about {radius}, an estimate).")
    }
    fn place_here(&self, name: &str) -> String {
        format!("Here: {name}.")
    }
    fn place_ahead(&self, name: &str, ahead: &str) -> String {
        format!("{name} in {ahead}.")
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
