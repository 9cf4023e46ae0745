//! French words that stand in a file saved for a device.

use super::French;
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{ExportWords, PlanWords};
use solver::plan::Choice;
use solver::truck::{Gear, Stage};

impl ExportWords for French {
    fn mark_caution(&self) -> &'static str {
        "Calculé à partir des données saisies et d'altitudes enregistrées, qui comportent des erreurs. Ce n'est pas une autorisation de descendre\u{a0}: la signalisation en place, la loi du lieu et les limites du constructeur du véhicule passent en premier."
    }
    fn mark_crest(&self, number: usize, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(held) => format!(
                "Sommet {number}\u{a0}: {}, {}, tenir {}",
                self.gear(held.gear),
                self.stage(held.stage),
                format::hold_speed(held.speed.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Sommet {number}\u{a0}: aucune vitesse sûre trouvée"),
        }
    }
    fn mark_change(&self, gear: Gear, stage: Stage) -> String {
        format!("{}, {}", capital(&self.gear(gear)), self.stage(stage))
    }
    fn mark_foot(&self, number: usize, next: Option<u8>) -> String {
        let after = next.map_or(String::new(), |gear| format!(", puis rapport {gear}"));
        format!("Pied {number}{after}")
    }
}
