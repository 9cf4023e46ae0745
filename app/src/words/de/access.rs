//! German words of the notice before the page, and of what the pictures say in words.

use super::German;
use crate::format::{self, Units};
use crate::words::AccessWords;
use crate::words::access::SAME_PLACE_M;

const TOWARDS: [&str; 8] =
    ["Norden", "Nordosten", "Osten", "Südosten", "Süden", "Südwesten", "Westen", "Nordwesten"];

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
    fn leads(&self, straight_m: f64, towards: usize, units: Units) -> String {
        if straight_m < SAME_PLACE_M {
            return "Sie endet, wo sie begonnen hat.".to_owned();
        }
        let (away, towards) = (format::distance(straight_m, units), TOWARDS[towards % TOWARDS.len()]);
        format!("Sie endet {away} Luftlinie von ihrem Anfang entfernt, Richtung {towards}.")
    }
    fn card_profile(&self) -> &'static str {
        "Profil der Strecke. Was es zeigt, steht in den Zeilen darunter."
    }
}
