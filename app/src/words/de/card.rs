//! German words of the card for the cab.

use super::German;
use crate::cab::{CardOf, Know};
use crate::format::{self, Units};
use crate::words::say::{capital, file_name, name_or, span};
use crate::words::{CardWords, EntryWords, PlanWords, RoadsideWords};
use solver::road::{Place, PlaceKind};

impl CardWords for German {
    fn card_head(&self) -> &'static str {
        "Merkblatt"
    }
    fn to_card(&self) -> &'static str {
        "Das Merkblatt fürs Fahrerhaus, zum Drucken"
    }
    fn card_sentence(&self) -> &'static str {
        "Fürs Fahrerhaus, damit unterwegs kein Bildschirm nötig ist: drucken, in der Mitte falten. Vor der Kuppe lesen, im Stand."
    }
    fn print_card(&self) -> &'static str {
        "Merkblatt drucken"
    }
    fn save_picture(&self) -> &'static str {
        "Als Bild speichern"
    }
    fn picture_name(&self, road: &str) -> String {
        file_name(road, "strecke", "-merkblatt.png")
    }
    fn save_rows(&self) -> &'static str {
        "Zeilen als CSV speichern"
    }
    fn marker_label(&self) -> &'static str {
        "Kilometertafel oder Kilometerzähler am Anfang der Strecke"
    }
    fn counts_down(&self) -> &'static str {
        "Tafeln zählen rückwärts"
    }
    fn card_facts(&self, card: CardOf<'_>) -> String {
        let day = card.day;
        format!(
            "{} · {} · {}, {} · Luft {} · Bremsen {} am Anfang",
            format::mass(card.truck.gross_mass_kg, card.units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            format::entered_temperature(day.air_c, card.units),
            format::entered_temperature(day.brakes_at_start_c, card.units)
        )
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["Gefälle, von – bis", "Neigung", "Gang", "Stufe", "Tempo", "was zu wissen ist"]
    }
    fn mile(&self) -> &'static str {
        "Meile"
    }
    fn card_worst(&self, grade: &str, length: &str) -> String {
        format!("schlimmste {grade}, {length}")
    }
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
        let at = |metres: f64| self.at(card, metres);
        match know {
            Know::Verdict(verdict) => capital(self.verdict(*verdict)) + ".",
            Know::Snub(snub) => format!(
                "Intervallbremsung von {} auf {}, lösen, wiederholen.",
                format::hold_number(snub.from.0, card.units),
                format::hold_speed(snub.to.0, card.units)
            ),
            Know::Easing { at_m } => {
                format!("Wo es bei {} nachlässt, ist nicht das Ende: im Gang bleiben.", at(*at_m))
            }
            Know::SlowCurve { speed, at_m } => {
                format!("Langsamste Kurve {}, {}.", format::hold_speed(*speed, card.units), at(*at_m))
            }
            Know::Posted { speed, from_m, to_m } => {
                let [from, to] = [from_m, to_m].map(|it| card.marker.at(*it));
                format!(
                    "Tempolimit {}, {}, {}.",
                    format::hold_speed(*speed, card.units),
                    span("km", from, to, Units::Metric),
                    span(self.mile(), from, to, Units::Imperial)
                )
            }
            Know::Ramp { at_m } => format!("Notfallspur bei {}.", at(*at_m)),
            Know::Quiet { at_m } => {
                format!("Lärmschutzzone bei {}: eine Motorbremse kann verboten sein.", at(*at_m))
            }
            Know::AtFoot { name, at_m } => {
                format!("Am Fuß: {}, {}.", name_or(name, "Halt oder Ortschaft"), at(*at_m))
            }
            Know::CutShort => "Wie es weitergeht, ist nicht bekannt.".to_owned(),
        }
    }
    fn card_more(&self, count: usize) -> String {
        let more = if count == 1 {
            "1 weitere Gefällestrecke, die".to_owned()
        } else {
            format!("{count} weitere Gefällestrecken, die")
        };
        let stand = if count == 1 { "steht" } else { "stehen" };
        format!("Und {more} nicht auf diesem Merkblatt {stand}: Planen Sie die Strecke in Abschnitten.")
    }
    fn before_crest(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let stop = match card.places_of(PlaceKind::BrakeCheck).next() {
            Some(check) => format!(
                "Am Bremskontrollplatz anhalten, {}: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung.",
                self.at(card, card.metres(check.index))
            ),
            None => "Anhalten, wo es erlaubt ist: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung.".to_owned(),
        };
        let gear = card.first_held().map(|(descent, advice)| {
            format!(
                "Schon vor {}: Gang {} einlegen, {}. Am Berg nicht schalten.",
                self.at(card, descent.crest.0),
                advice.gear.number(),
                self.stage(advice.stage)
            )
        });
        let list = [
            Some(stop),
            Some("Kurz vom Gas gehen: Greift die Dauerbremse, in jeder Stufe?".to_owned()),
            Some("Wetter, Schilder, Sperrungen: Ist es noch die geplante Strecke?".to_owned()),
            gear,
        ];
        ("Vor der Kuppe", list.into_iter().flatten().collect())
    }
    fn in_trouble(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let ramps = card.places_of(PlaceKind::EscapeRamp);
        let ramps: Vec<String> = ramps.map(|it| self.at(card, card.metres(it.index))).collect();
        let ramp = if ramps.is_empty() {
            "Eine Notfallspur nehmen oder irgendeinen Weg, der ansteigt. Hier ist keine eingetragen; es kann welche geben.".to_owned()
        } else {
            format!("Die Notfallspur bei {} nehmen oder irgendeinen Weg, der ansteigt.", ramps.join(", "))
        };
        let list = [
            "Jetzt kräftig bremsen und anhalten, solange die Bremsen noch kühl genug sind.".to_owned(),
            "Im Gang bleiben. Nie in den Leerlauf, nie auskuppeln, bei hohem Tempo nicht herunterschalten."
                .to_owned(),
            ramp,
            "Licht und Hupe: die anderen warnen.".to_owned(),
        ];
        ("Wenn es davonläuft", list.to_vec())
    }
    fn card_places(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let one = |it: &Place| {
            format!(
                "{}: {}",
                self.at(card, card.metres(it.index)),
                name_or(&it.name, self.place_kind(it.kind))
            )
        };
        let mut list: Vec<String> = card.places.iter().map(one).collect();
        if list.is_empty() {
            list.push("Keine eingetragen. Das heißt nicht, dass es keine gibt.".to_owned());
        }
        ("Orte", list)
    }
    fn card_cautions(&self) -> &'static str {
        "Aus Ihren Eingaben und aufgezeichneten Höhen berechnet, die fehlerhaft sind; keine Erlaubnis hinunterzufahren. Bremseneinstellung, Reifen, Fahrbahn, Wetter, Verkehr und Ladung sind nicht zu sehen. Verkehrszeichen, Recht, Arbeitgeber und Fahrzeughersteller gehen vor. Die Betriebsbremse bleibt das Mittel zum Anhalten. Im Zweifel: oben anhalten, langsamer fahren, eine andere Strecke nehmen."
    }
    fn rows_name(&self, road: &str) -> String {
        file_name(road, "strecke", "-gefaelle.csv")
    }
}
