//! French words of the notice before the page, and of what the pictures say in words.

use super::French;
use crate::format::{self, Units};
use crate::words::AccessWords;
use crate::words::access::SAME_PLACE_M;

const TOWARDS: [&str; 8] =
    ["le nord", "le nord-est", "l’est", "le sud-est", "le sud", "le sud-ouest", "l’ouest", "le nord-ouest"];

impl AccessWords for French {
    fn i_am_parked(&self) -> &'static str {
        "Je suis en stationnement"
    }
    fn road_table(&self) -> &'static str {
        "La route en tableau"
    }
    fn road_table_heads(&self) -> [&'static str; 2] {
        ["de – à", "partie"]
    }
    fn between(&self) -> &'static str {
        "pas de descente"
    }
    fn power_table(&self) -> &'static str {
        "La puissance en tableau"
    }
    fn power_heads(&self) -> [&'static str; 2] {
        ["régime moteur, /min", "traction"]
    }
    fn holds(&self, stage: &str) -> String {
        format!("retenue, {stage}")
    }
    fn window_ends(&self) -> [&'static str; 2] {
        ["Début de la partie affichée", "Fin de la partie affichée"]
    }
    fn leads(&self, straight_m: f64, towards: usize, units: Units) -> String {
        if straight_m < SAME_PLACE_M {
            return "Elle finit là où elle a commencé.".to_owned();
        }
        let (away, towards) = (format::distance(straight_m, units), TOWARDS[towards % TOWARDS.len()]);
        format!("Elle finit à {away} de son départ à vol d’oiseau, vers {towards}.")
    }
    fn card_profile(&self) -> &'static str {
        "Profil de la route. Ce qu’il montre figure dans les lignes au-dessous."
    }
}
