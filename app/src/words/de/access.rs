//! German words of the notice before the page, and of what the pictures say in words.

use super::German;
use crate::words::AccessWords;

impl AccessWords for German {
    fn i_am_parked(&self) -> &'static str {
        "Ich parke"
    }
    fn road_table(&self) -> &'static str {
        "Die Strecke als Tabelle"
    }
    fn road_table_heads(&self) -> [&'static str; 2] {
        ["von – bis", "Abschnitt"]
    }
    fn between(&self) -> &'static str {
        "kein Gefälle"
    }
    fn power_table(&self) -> &'static str {
        "Die Leistung als Tabelle"
    }
    fn power_heads(&self) -> [&'static str; 2] {
        ["Motordrehzahl, /min", "zieht"]
    }
    fn holds(&self, stage: &str) -> String {
        format!("hält, {stage}")
    }
    fn window_ends(&self) -> [&'static str; 2] {
        ["Anfang des gezeigten Abschnitts", "Ende des gezeigten Abschnitts"]
    }
    fn ends_where_it_began(&self) -> &'static str {
        "Sie endet, wo sie begonnen hat."
    }
    fn leads_away(&self, away: &str, towards: &str) -> String {
        format!("Sie endet {away} Luftlinie von ihrem Anfang entfernt, Richtung {towards}.")
    }
    fn winds(&self) -> [&'static str; 8] {
        ["Norden", "Nordosten", "Osten", "Südosten", "Süden", "Südwesten", "Westen", "Nordwesten"]
    }
    fn card_profile(&self) -> &'static str {
        "Profil der Strecke. Was es zeigt, steht in den Zeilen darunter."
    }
}
