//! German words of the card for the cab.

use super::German;
use crate::words::say::file_name;
use crate::words::{CardWords, PlanWords};
use solver::truck::{Gear, Stage};

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
    fn picture_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "strecke", if reversed { "-gegenrichtung-merkblatt.png" } else { "-merkblatt.png" })
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
    fn markers_miss(&self, start: &str, end: &str) -> String {
        format!(
            "Die Kilometertafeln reichen nicht über diese Strecke: So wie eingegeben gingen sie von {start} am Anfang bis {end} am Ende, und unter null gibt es keine. Berichtigen Sie die Tafel am Anfang oder die Zählrichtung. Bis dahin stehen auf dem Merkblatt Entfernungen vom Anfang."
        )
    }
    fn card_is_old(&self) -> &'static str {
        "Nicht verwenden: Dieses Merkblatt gehört zu früheren Eingaben"
    }
    fn do_not_descend(&self) -> &'static str {
        "NICHT HINUNTERFAHREN, so wie eingegeben"
    }
    fn no_speed_for(&self, numbers: &str, count: usize) -> String {
        let descents = if count == 1 { "Gefällestrecke" } else { "die Gefällestrecken" };
        format!(
            "Für {descents} {numbers} wurde keine sichere Geschwindigkeit gefunden. Nehmen Sie eine andere Strecke, oder planen Sie neu mit weniger Ladung oder für einen besseren Tag. Verkehrszeichen und die Regeln des Berufs gehen vor."
        )
    }
    fn facts_of(&self, [mass, retarder, surface, load, air, brakes]: [&str; 6]) -> String {
        format!("{mass} · {retarder} · {surface}, {load} · Luft {air} · Bremsen {brakes} am Anfang")
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["Gefälle, von – bis", "Neigung", "Gang", "Stufe", "Tempo", "was zu wissen ist"]
    }
    fn mile(&self) -> &'static str {
        "Meile"
    }
    fn card_asks(&self, grade: &str, length: &str) -> String {
        format!("verlangt {grade}, {length}")
    }
    fn know_snub(&self, from: &str, to: &str) -> String {
        format!("Intervallbremsung von {from} auf {to}, lösen, wiederholen.")
    }
    fn know_in_doubt(&self, grade: &str) -> String {
        format!("Kurze steile Stücke bis {grade} nicht auszuschließen: Betriebsbremse bereithalten.")
    }
    fn know_easing(&self, at: &str) -> String {
        format!("Wo es bei {at} nachlässt, ist nicht das Ende: im Gang bleiben.")
    }
    fn know_begins_unknown(&self) -> &'static str {
        "Wie es beginnt, ist nicht bekannt: Die Strecke davor wurde nicht beurteilt."
    }
    fn know_slow_curves(&self, count: usize, speed: &str, at: &str) -> String {
        format!(
            "{count} Kurven verlangen weniger als die zu haltende Geschwindigkeit, die langsamste {speed}, {at}."
        )
    }
    fn know_slow_curve(&self, speed: &str, at: &str) -> String {
        format!("Langsamste Kurve {speed}, {at}.")
    }
    fn know_posted(&self, speed: &str, km: &str, miles: &str) -> String {
        format!("Tempolimit {speed}, {km}, {miles}.")
    }
    fn know_ramp(&self, at: &str) -> String {
        format!("Notfallspur bei {at}.")
    }
    fn know_quiet(&self, at: &str) -> String {
        format!("Lärmschutzzone bei {at}: eine Motorbremse kann verboten sein.")
    }
    fn know_at_foot(&self, name: &str, at: &str) -> String {
        format!("Am Fuß: {name}, {at}.")
    }
    fn to_stop_at_foot(&self) -> &'static str {
        "Halt oder Ortschaft"
    }
    fn know_cut_short(&self) -> &'static str {
        "Wie es weitergeht, ist nicht bekannt."
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
    fn before_crest_head(&self) -> &'static str {
        "Vor der Kuppe"
    }
    fn stop_at_check(&self, at: &str) -> String {
        format!(
            "Am Bremskontrollplatz anhalten, {at}: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung."
        )
    }
    fn stop_where_allowed(&self) -> &'static str {
        "Anhalten, wo es erlaubt ist: Bremseneinstellung, Undichtigkeiten, Trommeln oder Scheiben, Reifen, Ladung."
    }
    fn try_retarder(&self) -> &'static str {
        "Kurz vom Gas gehen: Greift die Dauerbremse, in jeder Stufe?"
    }
    fn look_ahead(&self) -> &'static str {
        "Wetter, Schilder, Sperrungen: Ist es noch die geplante Strecke?"
    }
    fn gear_before(&self, gear: Gear, stage: Stage, at: &str) -> String {
        format!("Schon vor {at}: Gang {} einlegen, {}.", gear.number(), self.stage(stage))
    }
    fn gear_at_start(&self, gear: Gear, stage: Stage) -> String {
        let gear = gear.number();
        format!(
            "Vor dem Losfahren: Gang {gear} einlegen, {}. Die Strecke beginnt im Gefälle.",
            self.stage(stage)
        )
    }
    fn shifting(&self, in_legs: bool) -> &'static str {
        if in_legs {
            "Am Berg nur so schalten, wie es in den Zeilen steht."
        } else {
            "Am Berg nicht schalten."
        }
    }
    fn in_trouble_head(&self) -> &'static str {
        "Wenn es davonläuft"
    }
    fn brake_now(&self) -> &'static str {
        "Jetzt kräftig bremsen und anhalten, solange die Bremsen noch kühl genug sind."
    }
    fn stay_in_gear(&self) -> &'static str {
        "Im Gang bleiben. Nie in den Leerlauf, nie auskuppeln, bei hohem Tempo nicht herunterschalten."
    }
    fn any_way_up(&self) -> &'static str {
        "Eine Notfallspur nehmen oder irgendeinen Weg, der ansteigt. Hier ist keine eingetragen; es kann welche geben."
    }
    fn take_ramp(&self, ramps: &str) -> String {
        format!("Die Notfallspur bei {ramps} nehmen oder irgendeinen Weg, der ansteigt.")
    }
    fn warn_others(&self) -> &'static str {
        "Licht und Hupe: die anderen warnen."
    }
    fn no_places_entered(&self) -> &'static str {
        "Keine eingetragen. Das heißt nicht, dass es keine gibt."
    }
    fn card_cautions(&self) -> &'static str {
        "Aus Ihren Eingaben und aufgezeichneten Höhen berechnet, die fehlerhaft sind; keine Erlaubnis hinunterzufahren. Bremseneinstellung, Reifen, Fahrbahn, Wetter, Verkehr und Ladung sind nicht zu sehen. Verkehrszeichen, Recht, Arbeitgeber und Fahrzeughersteller gehen vor. Die Betriebsbremse bleibt das Mittel zum Anhalten. Im Zweifel: oben anhalten, langsamer fahren, eine andere Strecke nehmen."
    }
    fn rows_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "strecke", if reversed { "-gegenrichtung-gefaelle.csv" } else { "-gefaelle.csv" })
    }
}
