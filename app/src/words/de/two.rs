//! German words of two roads side by side.

use super::{German, minutes};
use crate::format::Units;
use crate::words::{TwoRow, TwoWords};

impl TwoWords for German {
    fn two_head(&self) -> &'static str {
        "Zwei Strecken"
    }
    fn keep_beside(&self) -> &'static str {
        "Zum Vergleich behalten"
    }
    fn keep_beside_sentence(&self) -> &'static str {
        "Um zwei Strecken, zwei Fahrzeuge oder zwei Bedingungen abzuwägen: Was jetzt angezeigt wird, bleibt neben dem stehen, was Sie als Nächstes wählen."
    }
    fn two_next(&self) -> &'static str {
        "Noch sind beide gleich: Wählen Sie eine andere Datei, drehen Sie die Strecke um, oder ändern Sie Fahrzeug oder Bedingungen."
    }
    fn end_two(&self) -> &'static str {
        "Vergleich beenden"
    }
    fn swap(&self) -> &'static str {
        "Beide tauschen"
    }
    fn swap_sentence(&self) -> &'static str {
        "Beim Tauschen nimmt jede Strecke ihr Fahrzeug, ihre Bedingungen und ihre Orte mit."
    }
    fn two_heads(&self) -> [&'static str; 4] {
        ["", "behalten", "angezeigt", "Unterschied"]
    }
    fn two_row(&self, row: TwoRow) -> &'static str {
        match row {
            TwoRow::Truck => "Fahrzeug, Bedingungen",
            TwoRow::Worst => "schlimmste Gefällestrecke",
            TwoRow::Descents => "Gefällestrecken",
            TwoRow::Hold => "niedrigste zu haltende Geschwindigkeit",
            TwoRow::Hottest => "heißeste Bremsen nach kräftiger Bremsung bis zum Stillstand",
            TwoRow::Braked => "Betriebsbremse bergab benutzt, auch vor Kurven und Orten",
            TwoRow::Service => "Arbeit der Betriebsbremse",
            TwoRow::Holding => "Arbeit von Dauerbremse und Motor",
            TwoRow::Down => "Zeit auf den Gefällestrecken",
            TwoRow::Up => "Zeit auf Steigungen von 2 % und mehr",
            TwoRow::Crawl => "langsamste Fahrt an einer Steigung",
            TwoRow::Time => "Zeit insgesamt",
            TwoRow::Rise => "steigt um",
            TwoRow::Fall => "fällt um",
            TwoRow::Length => "Länge",
            TwoRow::Curves => "Kurven, die langsamere Fahrt verlangen",
            TwoRow::Checks => "eingetragene Bremskontrollplätze",
            TwoRow::Ramps => "eingetragene Notfallspuren",
            TwoRow::Parking => "eingetragene Park- und Rastplätze",
            TwoRow::Blank => "nicht beurteilt",
            TwoRow::Fuel => "Kraftstoff, etwa",
            TwoRow::Cost => "Kosten zu den eingegebenen Sätzen",
        }
    }
    fn no_difference(&self) -> &'static str {
        "gleich"
    }
    fn two_caution(&self) -> &'static str {
        "Keine Zeile entscheidet allein, und nichts davon ist eine Erlaubnis, hinunterzufahren. Was nicht beurteilt ist, ist in diesen Zahlen nicht enthalten. Verkehrszeichen, Sperrungen und die Vorschriften Ihres Arbeitgebers gehen vor."
    }
    fn rate_labels(&self) -> [&'static str; 2] {
        ["Kraftstoffpreis", "Kosten für Fahrzeug und Fahrer"]
    }
    fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => ["je Liter", "je Stunde"],
            Units::Imperial => ["je Gallone", "je Stunde"],
        }
    }
    fn time(&self, seconds: f64) -> String {
        minutes(seconds)
    }
    fn rank(&self, count: usize) -> String {
        format!("Diese {count} Strecken vergleichen")
    }
    fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count {
            format!("Strecken: {done} von {count} berechnet")
        } else {
            format!("{count} Strecken")
        }
    }
    fn ranked_sentence(&self) -> &'static str {
        "Jede für das eingegebene Fahrzeug und die eingegebenen Bedingungen, die mit der schlimmsten Gefällestrecke zuerst. Öffnen Sie eine, und behalten Sie eine andere daneben."
    }
    fn ranking(&self) -> &'static str {
        "wird berechnet"
    }
    fn open_ranked(&self) -> &'static str {
        "Öffnen"
    }
    fn beside_ranked(&self) -> &'static str {
        "Daneben behalten"
    }
    fn ranked_ends(&self) -> &'static str {
        "Richtung"
    }
    fn ranked_labels(&self) -> [&'static str; 4] {
        ["Länge", "Bremsen nach Stopp", "niedrigstes Tempo", "Zeit"]
    }
    fn rank_again(&self) -> &'static str {
        "Fahrzeug oder Bedingungen haben sich geändert: Strecken neu berechnen"
    }
}
