//! French words of the road picture.

use super::French;
use crate::chart::{GradeStep, Lane, Reading, ReadoutCell};
use crate::words::ChartWords;

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
    fn grade_step(&self, step: GradeStep) -> &'static str {
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
    fn after_stop(&self) -> &'static str {
        "après arrêt"
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
    fn limit(&self) -> &'static str {
        "limite"
    }
    fn before_asked(&self) -> &'static str {
        "demande"
    }
    fn cursor(&self) -> &'static str {
        "Endroit sur la route"
    }
    fn cell_head(&self, cell: ReadoutCell) -> &'static str {
        match cell {
            ReadoutCell::At => "endroit",
            ReadoutCell::Grade => "pente",
            ReadoutCell::Height => "altitude",
            ReadoutCell::GearStage => "rapport · cran",
            ReadoutCell::Speed => "vitesse · moteur",
            ReadoutCell::Carried => "part du ralentisseur",
            ReadoutCell::Brakes => "freins",
            ReadoutCell::IfStopped => "après arrêt ici",
        }
    }
    fn engine_carries(&self) -> &'static str {
        "part du moteur"
    }
    fn grade_over(&self, length: &str) -> String {
        format!("pente sur {length}")
    }
    fn nothing_said_here(&self) -> &'static str {
        "La route n’a pas pu être évaluée ici\u{a0}: rien n’est dit à son sujet."
    }
    fn on_descent(&self, number: usize, to_foot: &str) -> String {
        format!("Dans la descente {number}, encore {to_foot} jusqu’à son pied.")
    }
    fn descent_begins(&self, number: usize, ahead: &str) -> String {
        format!("La descente {number} commence dans {ahead}.")
    }
    fn no_descent_ahead(&self) -> &'static str {
        "Aucune descente plus loin."
    }
    fn bend(&self, hairpin: bool, side: &str, speed: &str, radius: &str) -> String {
        let kind = if hairpin { "Virage en épingle" } else { "Virage" };
        format!("{kind} {side}\u{a0}: {speed} au plus (rayon d’environ {radius}, estimation).")
    }
    fn place_here(&self, name: &str) -> String {
        format!("Ici\u{a0}: {name}.")
    }
    fn place_ahead(&self, name: &str, ahead: &str) -> String {
        format!("Dans {ahead}\u{a0}: {name}.")
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
