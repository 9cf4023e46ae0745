//! German words of the way down.

use super::German;
use crate::down::Told;
use crate::format::{self, Units};
use crate::words::say::{plain, strong};
use crate::words::{Piece, PlanWords, WayWords};
use solver::plan::{ChangeHow, Descent};

impl WayWords for German {
    fn decided(&self, descent: &Descent, count: usize, first: Option<Told>, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" ab dem ", "Anfang der Strecke".to_owned())
        } else {
            (" ab der Kuppe bei ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "Die Gefällestrecke: ".to_owned()
        } else {
            format!("Maßgebend ist Gefällestrecke {} von {count}: ", descent.number)
        };
        match first {
            Some((gear, stage, speed)) => vec![
                plain(opening),
                strong(self.gear(gear)),
                plain(", "),
                strong(self.stage(stage)),
                plain(", "),
                strong(format::hold_speed(speed.0, units)),
                plain(format!(" halten,{place}")),
                strong(crest),
            ],
            None => vec![
                plain(opening),
                strong("keine sichere Geschwindigkeit gefunden"),
                plain(place),
                strong(crest),
                plain(". Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter."),
            ],
        }
    }
    fn by_place(&self, how: ChangeHow, at: &str) -> String {
        match how {
            ChangeHow::Down => format!("spätestens bei {at}"),
            ChangeHow::Up => format!("erst ab {at}"),
        }
    }
    fn asks(&self, grade: &str, length: &str, from: &str) -> String {
        format!("gleichmäßige {grade}: So viel verlangt das Gefälle, am meisten auf {length} ab {from}")
    }
    fn engage(&self, at_start: bool, foot: &str) -> String {
        let before = if at_start { "dem Losfahren" } else { "der Kuppe" };
        format!("Legen Sie den Gang vor {before} ein, und behalten Sie ihn bis zum Fuß bei {foot}.")
    }
    fn engage_first(&self, at_start: bool) -> &'static str {
        if at_start {
            "Legen Sie den ersten dieser Gänge vor dem Losfahren ein. Schalten Sie vor der genannten Stelle herunter, hinauf erst dahinter."
        } else {
            "Legen Sie den ersten dieser Gänge vor der Kuppe ein. Schalten Sie vor der genannten Stelle herunter, hinauf erst dahinter."
        }
    }
    fn chosen(&self, lowest: bool, asks: &str) -> String {
        let gear = if lowest { "Der niedrigste Gang" } else { "Er" };
        format!("{gear} ist gewählt für {asks}.")
    }
    fn ruled_out_by(&self, asks: &str) -> String {
        format!("Was es ausschließt: {asks}.")
    }
    fn not_assessed_on(&self, span: &str) -> String {
        format!("Nicht beurteilt: {span}. Die Neigung dort ist nicht bekannt.")
    }
    fn brakes_warmer(&self, by: &str) -> String {
        format!("Bremsen {by} wärmer")
    }
    fn doubted(&self) -> &'static str {
        ", unsicher: Um so viel können die Höhen falsch sein"
    }
    fn and_more(&self, count: usize) -> String {
        format!("und {count} weitere")
    }
    fn brakes_at_places(&self, needed: bool, places: &str) -> String {
        let how = if needed { "wird gebraucht" } else { "greift kurz ein" };
        format!("Die Betriebsbremse {how} bei: {places}.")
    }
    fn in_doubt(&self, grade: &str) -> String {
        format!(
            "Der Gang hält im Mittel. Kurze steile Stücke bis {grade} sind nicht auszuschließen: Halten Sie die Betriebsbremse bereit."
        )
    }
    fn touches_label(&self) -> &'static str {
        "Wo es ohne Betriebsbremse schneller wird"
    }
    fn legs_label(&self) -> &'static str {
        "Gang für Gang"
    }
    fn between_legs(&self) -> &'static str {
        "Dazwischen wird das Fahrzeug für den nächsten Gang langsamer, oder es nimmt Fahrt auf."
    }
    fn slowest_leg(&self) -> &'static str {
        "Das langsamste Stück"
    }
    fn untouched_label(&self) -> &'static str {
        "Ganz ohne Betriebsbremse"
    }
    fn no_untouched(&self) -> &'static str {
        "Kein Gang hält allein auf jedem aufgezeichneten Stück."
    }
    fn one_gear_label(&self) -> &'static str {
        "Ein Gang bis zum Fuß"
    }
}
