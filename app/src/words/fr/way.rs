//! French words of the way down.

use super::French;
use crate::down::Told;
use crate::format::{self, Units};
use crate::words::say::{plain, strong};
use crate::words::{Piece, PlanWords, WayWords};
use solver::plan::{ChangeHow, Descent};

impl WayWords for French {
    fn decided(&self, descent: &Descent, count: usize, first: Option<Told>, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" à partir du ", "début de la route".to_owned())
        } else {
            (" à partir du sommet à ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "La descente\u{a0}: ".to_owned()
        } else {
            format!("La descente {} sur {count} est décisive\u{a0}: ", descent.number)
        };
        match first {
            Some((gear, stage, speed)) => vec![
                plain(opening),
                strong(self.gear(gear)),
                plain(", "),
                strong(self.stage(stage)),
                plain(", tenir "),
                strong(format::hold_speed(speed.0, units)),
                plain(place),
                strong(crest),
            ],
            None => vec![
                plain(opening),
                strong("aucune vitesse sûre n’a été trouvée"),
                plain(place),
                strong(crest),
                plain(". Avec les données saisies, n’engagez pas ce véhicule dans cette descente."),
            ],
        }
    }
    fn by_place(&self, how: ChangeHow, at: &str) -> String {
        match how {
            ChangeHow::Down => format!("au plus tard à {at}"),
            ChangeHow::Up => format!("à partir de {at}"),
        }
    }
    fn asks(&self, grade: &str, length: &str, from: &str) -> String {
        format!(
            "une pente régulière de {grade}\u{a0}: la descente demande autant, et surtout sur {length} à partir de {from}"
        )
    }
    fn engage(&self, at_start: bool, foot: &str) -> String {
        let before = if at_start { "de démarrer" } else { "le sommet" };
        format!("Engagez ce rapport avant {before} et gardez-le jusqu’au pied de la descente, à {foot}.")
    }
    fn engage_first(&self, at_start: bool) -> &'static str {
        if at_start {
            "Engagez le premier de ces rapports avant de démarrer. Rétrogradez avant l’endroit indiqué, ne montez de rapport qu’après."
        } else {
            "Engagez le premier de ces rapports avant le sommet. Rétrogradez avant l’endroit indiqué, ne montez de rapport qu’après."
        }
    }
    fn chosen(&self, lowest: bool, asks: &str) -> String {
        let gear = if lowest { "Le rapport le plus bas" } else { "Il" };
        format!("{gear} est choisi pour {asks}.")
    }
    fn ruled_out_by(&self, asks: &str) -> String {
        format!("Ce qui l’exclut, c’est {asks}.")
    }
    fn not_assessed_on(&self, span: &str) -> String {
        format!("Non évalué\u{a0}: {span}. La pente n’y est pas connue.")
    }
    fn brakes_warmer(&self, by: &str) -> String {
        format!("freins plus chauds de {by}")
    }
    fn doubted(&self) -> &'static str {
        ", incertain\u{a0}: l’erreur des altitudes peut être aussi grande"
    }
    fn and_more(&self, count: usize) -> String {
        format!("et {count} de plus")
    }
    fn brakes_at_places(&self, needed: bool, places: &str) -> String {
        let how = if needed { "sont nécessaires" } else { "agissent un peu" };
        format!("Les freins de service {how} à\u{a0}: {places}.")
    }
    fn in_doubt(&self, grade: &str) -> String {
        format!(
            "Le rapport retient le véhicule en moyenne. De courts passages jusqu’à {grade} ne sont pas exclus\u{a0}: tenez les freins de service prêts."
        )
    }
    fn touches_label(&self) -> &'static str {
        "Où le véhicule prend de la vitesse sans les freins de service"
    }
    fn legs_label(&self) -> &'static str {
        "Rapport par rapport"
    }
    fn between_legs(&self) -> &'static str {
        "Entre deux rapports, le véhicule ralentit pour le suivant, ou reprend de la vitesse."
    }
    fn slowest_leg(&self) -> &'static str {
        "La partie la plus lente"
    }
    fn untouched_label(&self) -> &'static str {
        "Sans jamais toucher aux freins de service"
    }
    fn no_untouched(&self) -> &'static str {
        "Aucun rapport ne retient seul le véhicule sur toutes les pentes enregistrées."
    }
    fn one_gear_label(&self) -> &'static str {
        "Un seul rapport jusqu’en bas"
    }
}
