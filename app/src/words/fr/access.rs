//! French words of the notice before the page, and of what the pictures say in words.

use super::French;
use crate::words::AccessWords;

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
    fn ends_where_it_began(&self) -> &'static str {
        "Elle finit là où elle a commencé."
    }
    fn leads_away(&self, away: &str, towards: &str) -> String {
        format!("Elle finit à {away} de son départ à vol d’oiseau, vers {towards}.")
    }
    fn winds(&self) -> [&'static str; 8] {
        [
            "le nord",
            "le nord-est",
            "l’est",
            "le sud-est",
            "le sud",
            "le sud-ouest",
            "l’ouest",
            "le nord-ouest",
        ]
    }
    fn card_profile(&self) -> &'static str {
        "Profil de la route. Ce qu’il montre figure dans les lignes au-dessous."
    }
}
