//! German words of the road picture.

use super::German;
use crate::chart::{GradeStep, Lane, Reading, ReadoutCell};
use crate::words::ChartWords;

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
    fn grade_step(&self, step: GradeStep) -> &'static str {
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
    fn after_stop(&self) -> &'static str {
        "nach Stopp"
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
    fn limit(&self) -> &'static str {
        "Grenze"
    }
    fn before_asked(&self) -> &'static str {
        "verlangt"
    }
    fn cursor(&self) -> &'static str {
        "Stelle auf der Strecke"
    }
    fn cell_head(&self, cell: ReadoutCell) -> &'static str {
        match cell {
            ReadoutCell::At => "bei",
            ReadoutCell::Grade => "Neigung",
            ReadoutCell::Height => "Höhe",
            ReadoutCell::GearStage => "Gang · Stufe",
            ReadoutCell::Speed => "Tempo · Motor",
            ReadoutCell::Carried => "Dauerbremse trägt",
            ReadoutCell::Brakes => "Bremsen",
            ReadoutCell::IfStopped => "nach Stopp hier",
        }
    }
    fn engine_carries(&self) -> &'static str {
        "Motor trägt"
    }
    fn grade_over(&self, length: &str) -> String {
        format!("Neigung über {length}")
    }
    fn nothing_said_here(&self) -> &'static str {
        "Die Strecke konnte hier nicht beurteilt werden: Über sie wird nichts gesagt."
    }
    fn on_descent(&self, number: usize, to_foot: &str) -> String {
        format!("Auf Gefälle {number}, noch {to_foot} bis zum Fuß.")
    }
    fn descent_begins(&self, number: usize, ahead: &str) -> String {
        format!("Gefälle {number} beginnt in {ahead}.")
    }
    fn no_descent_ahead(&self) -> &'static str {
        "Kein Gefälle mehr voraus."
    }
    fn bend(&self, hairpin: bool, side: &str, speed: &str, radius: &str) -> String {
        let kind = if hairpin { "Kehre" } else { "Kurve" };
        format!("{kind} {side}: höchstens {speed} (Radius etwa {radius}, geschätzt).")
    }
    fn place_here(&self, name: &str) -> String {
        format!("Hier: {name}.")
    }
    fn place_ahead(&self, name: &str, ahead: &str) -> String {
        format!("{name} in {ahead}.")
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
