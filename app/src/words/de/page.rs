//! German words of the page's frame.

use super::German;
use crate::format::{self, Units};
use crate::message::Phase;
use crate::trouble::WorkTrouble;
use crate::words::say::file_name;
use crate::words::{EntryWords, PageWords, RoadWords};

impl PageWords for German {
    fn made_for(&self, facts: &str) -> String {
        format!("Berechnet für: {facts}.")
    }
    fn to_truck(&self) -> &'static str {
        "Ist das Ihr Fahrzeug, sind das Ihre Bedingungen? Geben Sie die eigenen ein."
    }
    fn to_class(&self) -> &'static str {
        "Unterricht"
    }
    fn targets(&self) -> &'static str {
        "Größe von Tasten und Feldern"
    }
    fn usual_targets(&self) -> &'static str {
        "bloße Hände"
    }
    fn large_targets(&self) -> &'static str {
        "Handschuhe"
    }
    fn purpose(&self) -> &'static str {
        "Wie Sie jedes Gefälle einer Strecke hinunterfahren: Gang, Stufe der Dauerbremse, Geschwindigkeit, Bremsenhitze"
    }
    fn road_section(&self) -> &'static str {
        "Strecke"
    }
    fn descents_section(&self) -> &'static str {
        "Gefälle"
    }
    fn sections(&self) -> &'static str {
        "Abschnitte dieser Seite"
    }
    fn skip_to_answer(&self) -> &'static str {
        "Direkt zur Antwort"
    }
    fn units(&self) -> &'static str {
        "Einheiten"
    }
    fn metric(&self) -> &'static str {
        "km/h · m · t"
    }
    fn imperial(&self) -> &'static str {
        "mph · ft · lb"
    }
    fn theme(&self) -> &'static str {
        "Hell oder Nacht"
    }
    fn light(&self) -> &'static str {
        "hell"
    }
    fn night(&self) -> &'static str {
        "Nacht"
    }
    fn system(&self) -> &'static str {
        "auto"
    }
    fn choose_file(&self) -> &'static str {
        "GPX-Datei wählen"
    }
    fn or_drop(&self) -> &'static str {
        "oder irgendwo auf der Seite ablegen"
    }
    fn drop_here(&self) -> &'static str {
        "GPX-Datei hier ablegen: Sie wird nur auf diesem Gerät gelesen"
    }
    fn stays_here(&self) -> &'static str {
        "Nichts verlässt dieses Gerät."
    }
    fn demo_mark(&self) -> &'static str {
        "erfundenes Beispiel"
    }
    fn demo_sentence(&self) -> &'static str {
        "Das ist eine erfundene Strecke, kein wirklicher Pass. Wählen Sie Ihre eigene GPX-Datei, oder legen Sie sie irgendwo auf der Seite ab; sie bleibt auf diesem Gerät."
    }
    fn show_demo(&self) -> &'static str {
        "Beispiel zeigen"
    }
    fn reverse(&self) -> &'static str {
        "Gegenrichtung"
    }
    fn reversed_mark(&self) -> &'static str {
        "entgegen der Aufzeichnung"
    }
    fn course(&self) -> &'static str {
        "Track in der Datei"
    }
    fn which_track(&self, file: &str, count: usize) -> String {
        format!("{file} enthält {count} Strecken. Welche davon werden Sie fahren?")
    }
    fn course_unusable(&self) -> &'static str {
        "ohne Höhen oder zu kurz"
    }
    fn leave_it(&self) -> &'static str {
        "So lassen"
    }
    fn which_order(&self, count: usize) -> String {
        format!("{count} Dateien: In welcher Reihenfolge werden sie gefahren?")
    }
    fn which_order_sentence(&self) -> &'static str {
        "Sie werden von oben nach unten verbunden. Wo eine mehr als 2 km vom Anfang der nächsten endet, stimmt die Reihenfolge oder eine Richtung nicht."
    }
    fn join(&self, count: usize) -> String {
        if count == 1 { "Diese Datei öffnen".to_owned() } else { format!("{count} Dateien verbinden") }
    }
    fn leg_up(&self, name: &str) -> String {
        format!("{name} früher fahren")
    }
    fn leg_down(&self, name: &str) -> String {
        format!("{name} später fahren")
    }
    fn turn_leg(&self) -> &'static str {
        "Gegenrichtung"
    }
    fn leave_leg(&self, name: &str) -> String {
        format!("{name} weglassen")
    }
    fn same_question(&self, count: usize) -> String {
        format!("{count} Dateien liegen aufeinander. Zeigen sie dieselbe Strecke?")
    }
    fn same_sentence(&self) -> &'static str {
        "Als dieselbe Strecke werden sie zu einer: Die Höhen aller werden verwendet; wo sie sich um mehr unterscheiden, als sie falsch sein dürften, wird die steilere verwendet und die Stelle genannt. Der Plan ist nie schneller als der schnellere von jeder allein. Nichts wird von selbst zusammengeführt."
    }
    fn combine(&self, count: usize) -> String {
        format!("Dieselbe Strecke: {count} Aufzeichnungen zusammenführen")
    }
    fn two_alike(&self, first: &str, second: &str) -> String {
        format!(
            "{first} und {second} liegen aufeinander. Um sie zu einer Strecke zusammenzuführen, lassen Sie die anderen Dateien weg."
        )
    }
    fn meets(&self, new: &str, before: &str) -> String {
        format!("{new} liegt auf {before}. Zeigen sie dieselbe Strecke?")
    }
    fn compare_both(&self) -> &'static str {
        "Vergleichen: beide nebeneinander"
    }
    fn join_both(&self) -> &'static str {
        "Verbinden: eine nach der anderen"
    }
    fn combined(&self, count: usize, files: &str) -> String {
        format!("Eine Strecke aus {count} Aufzeichnungen: {files}")
    }
    fn take_apart(&self) -> &'static str {
        "Wieder trennen"
    }
    fn part_of(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!("Ein Teil der Strecke: {} der Aufzeichnung.", format::span(from_m, to_m, units))
    }
    fn whole_road(&self) -> &'static str {
        "Ganze Strecke nehmen"
    }
    fn course_choice(&self, number: usize, name: &str, route: bool, length: &str) -> String {
        match (name.is_empty(), route) {
            (true, true) => format!("{number} · Route ohne Namen · {length}"),
            (true, false) => format!("{number} · Track ohne Namen · {length}"),
            (false, true) => format!("{number} · {name} (Route) · {length}"),
            (false, false) => format!("{number} · {name} (Track) · {length}"),
        }
    }
    fn phase(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::Reading => "Datei wird gelesen",
            Phase::Surveying => "Höhen und Neigungen werden berechnet",
            Phase::Planning => "Gänge, Geschwindigkeiten und Bremsenhitze werden berechnet",
        }
    }
    fn starting(&self) -> &'static str {
        "Wird gestartet"
    }
    fn cancel(&self) -> &'static str {
        "Abbrechen"
    }
    fn close(&self) -> &'static str {
        "Schließen"
    }
    fn try_again(&self) -> &'static str {
        "Noch einmal versuchen"
    }
    fn trouble_head(&self, trouble: &WorkTrouble) -> String {
        match trouble {
            WorkTrouble::File { name, .. } => format!("„{name}“ kann nicht verwendet werden"),
            WorkTrouble::ManyFiles => "Zu viele Dateien auf einmal".to_owned(),
            WorkTrouble::NotAFile => "Das war keine Datei".to_owned(),
            WorkTrouble::BuiltInMissing => "Die erfundene Strecke konnte nicht geladen werden".to_owned(),
            WorkTrouble::CannotStart => "Die Berechnung konnte nicht gestartet werden".to_owned(),
            WorkTrouble::Stopped { .. } => {
                "Die Berechnung ist wegen eines eigenen Fehlers stehen geblieben".to_owned()
            }
            WorkTrouble::Cancelled => "Abgebrochen".to_owned(),
            WorkTrouble::Truck { .. } => "Dieses Fahrzeug kann nicht berechnet werden".to_owned(),
            WorkTrouble::TruckFile { .. } => "Diese Fahrzeugdatei kann nicht verwendet werden".to_owned(),
            WorkTrouble::ProjectFile { .. } => "Dieses Projekt kann nicht verwendet werden".to_owned(),
            WorkTrouble::CannotExport => "Die Datei konnte nicht gespeichert werden".to_owned(),
            WorkTrouble::NoPicture => "Das Merkblatt konnte nicht als Bild gespeichert werden".to_owned(),
        }
    }
    fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String {
        match trouble {
            WorkTrouble::File { error, .. } => self.file_error(error),
            WorkTrouble::ManyFiles => {
                "Bis zu 20 Dateien können zu einer Strecke verbunden werden. Wählen Sie weniger.".to_owned()
            }
            WorkTrouble::NotAFile => {
                "Legen Sie eine GPX-Datei ab, oder wählen Sie eine mit der Taste.".to_owned()
            }
            WorkTrouble::BuiltInMissing => {
                "Die Seite selbst funktioniert: Wählen Sie eine eigene GPX-Datei.".to_owned()
            }
            WorkTrouble::CannotStart => {
                "Der Browser hat den Teil, der rechnet, nicht geladen. Laden Sie die Seite neu; wenn das nicht hilft, nehmen Sie einen Browser der letzten Jahre, in dem WebAssembly und Worker eingeschaltet sind.".to_owned()
            }
            WorkTrouble::Stopped { detail } => format!(
                "Sie wurde neu gestartet, und von Ihren Eingaben ist nichts verloren. Ändern Sie die letzte Eingabe, oder versuchen Sie es noch einmal. Für eine Meldung: {detail}"
            ),
            WorkTrouble::Cancelled => {
                "Die Zahlen unten gehören noch zu den früheren Eingaben. Ändern Sie eine Eingabe, oder versuchen Sie es noch einmal, um sie neu zu berechnen.".to_owned()
            }
            WorkTrouble::Truck { error } => self.truck_error(error, units),
            WorkTrouble::TruckFile { error } | WorkTrouble::ProjectFile { error } => self.truck_file_error(error, units),
            WorkTrouble::NoPicture => {
                "Dieser Browser zeichnet es nicht. Drucken Sie das Merkblatt stattdessen: Beim Drucken in eine Datei entsteht ein PDF.".to_owned()
            }
            WorkTrouble::CannotExport => {
                "Der Teil, der sie schreibt, konnte nicht geladen werden, oder der Browser hat das Speichern nicht erlaubt. Laden Sie die Seite neu, oder nehmen Sie einen anderen Browser.".to_owned()
            }
        }
    }
    fn former_stays(&self) -> &'static str {
        "Unten ist noch die frühere Strecke zu sehen."
    }
    fn not_current(&self) -> &'static str {
        "Die angezeigten Zahlen gehören zu den früheren Eingaben oder zur früheren Strecke."
    }
    fn check_entry(&self) -> &'static str {
        "Prüfen Sie diese Eingabe:"
    }
    fn export(&self) -> &'static str {
        "Kuppen und Gangwechsel als GPX speichern"
    }
    fn export_sentence(&self) -> &'static str {
        "Wegpunkte an jeder Kuppe, jedem Fuß und jedem Wechsel von Gang oder Stufe, für ein Gerät, das sie anzeigt."
    }
    fn export_name(&self, road: &str) -> String {
        file_name(road, "strecke", "-gefaelle.gpx")
    }
    fn no_road(&self) -> &'static str {
        "Noch keine Strecke"
    }
    fn no_road_sentence(&self) -> &'static str {
        "Wählen Sie eine GPX-Datei mit Höhen, oder legen Sie sie irgendwo auf dieser Seite ab. Sie wird auf diesem Gerät gelesen und geht nirgendwo anders hin."
    }
}
