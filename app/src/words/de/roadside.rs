//! German words of places and posted limits.

use super::German;
use crate::format::{self, Units};
use crate::words::RoadsideWords;
use solver::road::PlaceKind;

impl RoadsideWords for German {
    fn places_head(&self) -> &'static str {
        "Orte und Tempolimits"
    }
    fn places_nav(&self) -> &'static str {
        "Orte"
    }
    fn places_sentence(&self, count: usize) -> String {
        let found = match count {
            0 => {
                "Auf dieser Strecke ist noch nichts eingetragen. Das heißt nicht, dass es nichts gibt: Achten Sie selbst auf Bremskontrollplätze, Notfallspuren, Ampeln und Tempolimits."
            }
            1 => "Auf dieser Strecke ist ein Eintrag. Es kann mehr geben.",
            _ => "Es kann mehr geben, als hier eingetragen ist.",
        };
        format!(
            "{found} Die Einträge stammen aus den Wegpunkten der Datei; weitere tragen Sie dort ein, wo im Bild der Zeiger steht, oder nach ihrer Entfernung. Sie werden auf diesem Gerät gespeichert."
        )
    }
    fn put_here(&self) -> &'static str {
        "Hier einen Ort eintragen"
    }
    fn put_at(&self) -> &'static str {
        "Einen Ort eintragen bei"
    }
    fn put(&self) -> &'static str {
        "Eintragen"
    }
    fn place_kind(&self, kind: PlaceKind) -> &'static str {
        match kind {
            PlaceKind::Summit => "Passhöhe",
            PlaceKind::BrakeCheck => "Bremskontrollplatz",
            PlaceKind::EscapeRamp => "Notfallspur",
            PlaceKind::Settlement => "Ortschaft",
            PlaceKind::Stop => "Halt, Ampel oder Kreuzung",
            PlaceKind::Parking => "Park- oder Rastplatz",
            PlaceKind::Tunnel => "Tunnel",
            PlaceKind::Bridge => "Brücke",
            PlaceKind::Danger => "Gefahrenstelle",
            PlaceKind::ChainUp => "Kettenanlegeplatz",
            PlaceKind::QuietZone => "Lärmschutzzone",
            PlaceKind::Exit => "Ausfahrt",
            PlaceKind::Other => "anderer Ort",
        }
    }
    fn posted_limit(&self) -> &'static str {
        "Tempolimit"
    }
    fn kind_label(&self) -> &'static str {
        "Art"
    }
    fn name_label(&self) -> &'static str {
        "Name"
    }
    fn at_label(&self) -> [&'static str; 3] {
        ["Bei", "Von", "Bis"]
    }
    fn limit_label(&self) -> &'static str {
        "Tempolimit"
    }
    fn set_the_limit(&self) -> &'static str {
        "Tempo und Ende sind angenommen und zählen schon. Setzen Sie ein, was auf dem Schild steht."
    }
    fn quiet_zone_caution(&self) -> &'static str {
        "Ein Schild kann hier Motorbremsen verbieten. Der Plan rechnet trotzdem mit der Dauerbremse: Wo das Schild sie verbietet, fahren Sie langsamer in einem niedrigeren Gang, und halten Sie die Betriebsbremse kühl."
    }
    fn take_off(&self) -> &'static str {
        "Entfernen"
    }
    fn not_on_part(&self) -> &'static str {
        "nicht auf dem angezeigten Teil"
    }
    fn off_road(&self, first: &str, last: &str, units: Units) -> String {
        let unit = units.distance();
        format!("Das liegt nicht auf dieser Strecke: Sie reicht von {first} bis {last} {unit}.")
    }
    fn no_stretch(&self) -> &'static str {
        "Ein Tempolimit muss hinter seinem Anfang enden."
    }
    fn too_many_things(&self) -> &'static str {
        "Mehr als hundert Einträge sind nicht möglich. Entfernen Sie zuerst einen."
    }
    fn show_all_places(&self, count: usize) -> String {
        format!("Alle {} anzeigen", format::whole(count as f64))
    }
}
