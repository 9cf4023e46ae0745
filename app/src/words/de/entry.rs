//! German words of the entries.

use super::{German, telling};
use crate::format::Units;
use crate::words::EntryWords;
use crate::words::say::file_name;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, AxlePlace, BrakeKind, Preset, RetarderKind, Transmission, TruckError};

impl EntryWords for German {
    fn truck_head(&self) -> &'static str {
        "Fahrzeug"
    }
    fn day_head(&self) -> &'static str {
        "Bedingungen"
    }
    fn preset_label(&self) -> &'static str {
        "Mit einem ähnlichen Fahrzeug beginnen"
    }
    fn preset(&self, preset: Preset, units: Units) -> &'static str {
        match (preset, units) {
            (Preset::FiveAxle36, Units::Metric) => "Fünfachsiger Sattelzug, 36,3 t",
            (Preset::FiveAxle36, Units::Imperial) => "Fünfachsiger Sattelzug, 80\u{a0}000 lb",
            (Preset::FiveAxle40, Units::Metric) => "Fünfachsiger Sattelzug, 40 t",
            (Preset::FiveAxle40, Units::Imperial) => "Fünfachsiger Sattelzug, 88\u{a0}200 lb",
            (Preset::FiveAxle40Both, Units::Metric) => {
                "Fünfachsiger Sattelzug, 40 t, hydrodynamisch und Motorbremse"
            }
            (Preset::FiveAxle40Both, Units::Imperial) => {
                "Fünfachsiger Sattelzug, 88\u{a0}200 lb, hydrodynamisch und Motorbremse"
            }
            (Preset::FiveAxleEmpty, Units::Metric) => "Fünfachsiger Sattelzug, leer, 14,5 t",
            (Preset::FiveAxleEmpty, Units::Imperial) => "Fünfachsiger Sattelzug, leer, 32\u{a0}000 lb",
            (Preset::SixAxle44, Units::Metric) => "Sechsachsiger Sattelzug, 44 t",
            (Preset::SixAxle44, Units::Imperial) => "Sechsachsiger Sattelzug, 97\u{a0}000 lb",
            (Preset::Drawbar40, Units::Metric) => "Gliederzug, 40 t",
            (Preset::Drawbar40, Units::Imperial) => "Gliederzug, 88\u{a0}200 lb",
            (Preset::Refuse26, Units::Metric) => "Müllwagen mit Wandlerautomatik, 26 t",
            (Preset::Refuse26, Units::Imperial) => "Müllwagen mit Wandlerautomatik, 57\u{a0}300 lb",
            (Preset::Rigid18, Units::Metric) => "Zweiachsiger Solo-Lkw, 18 t",
            (Preset::Rigid18, Units::Imperial) => "Zweiachsiger Solo-Lkw, 39\u{a0}700 lb",
            (Preset::Tipper26, Units::Metric) => "Dreiachsiger Kipper, 26 t",
            (Preset::Tipper26, Units::Imperial) => "Dreiachsiger Kipper, 57\u{a0}300 lb",
            (Preset::BDouble, Units::Metric) => "Neunachsiger Zug mit zwei Aufliegern, 62,5 t",
            (Preset::BDouble, Units::Imperial) => "Neunachsiger Zug mit zwei Aufliegern, 137\u{a0}800 lb",
            (Preset::Coach, Units::Metric) => "Reisebus, 19 t",
            (Preset::Coach, Units::Imperial) => "Reisebus, 41\u{a0}900 lb",
            (Preset::CoachConverter, Units::Metric) => "Reisebus mit Wandler, 19 t",
            (Preset::CoachConverter, Units::Imperial) => "Reisebus mit Wandler, 41\u{a0}900 lb",
        }
    }
    fn own_truck(&self) -> &'static str {
        "Ihre eigenen Eingaben"
    }
    fn more_entries(&self) -> &'static str {
        "Für dieses Fahrzeug angenommen"
    }
    fn assumed(&self) -> &'static str {
        "angenommen"
    }
    fn assumed_sentence(&self) -> &'static str {
        "Werte mit dem Vermerk „angenommen“ haben für dieses Fahrzeug keine gedruckte Quelle: Geben Sie Ihre eigenen ein."
    }
    fn entry(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Tatsächliches Gesamtgewicht",
            Entry::DriveAxleMass => "Gewicht auf den Antriebsachsen",
            Entry::RollingRadius => "Rollradius",
            Entry::WheelInertia => "Trägheitsmoment der Räder",
            Entry::RollingResistance => "Rollwiderstandsbeiwert",
            Entry::DragArea => "Luftwiderstandsfläche",
            Entry::Displacement => "Hubraum des Motors",
            Entry::LowestEngineSpeed => "Niedrigste nutzbare Motordrehzahl",
            Entry::HighestEngineSpeed => "Höchste zulässige Motordrehzahl",
            Entry::AxleRatio => "Achsübersetzung",
            Entry::AxleEfficiency => "Wirkungsgrad der Achse",
            Entry::RetarderPeakPower => "Bremsleistung der Dauerbremse",
            Entry::RetarderPeakSpeed => "Motordrehzahl der vollen Bremsleistung",
            Entry::RetarderExponent => "Anstieg der Bremsleistung mit der Motordrehzahl",
            Entry::RetarderCutOut => "Motordrehzahl, unter der die Dauerbremse abschaltet",
            Entry::RolloverThreshold => "Kippgrenze",
            Entry::AirTemperature => "Lufttemperatur",
            Entry::BrakesAtStart => "Bremsen\u{ad}temperatur am Anfang",
            Entry::Headwind => "Gegenwind",
            Entry::SpeedLimit => "Höchst\u{ad}geschwindigkeit",
            Entry::Reserve => "Reserve an Haltekraft",
            Entry::HeatLimit => "Höchste Bremsen\u{ad}temperatur",
            Entry::Superelevation => "Querneigung der Kurven",
            Entry::RetarderDelay => "Pause der Dauerbremse nach dem Schalten",
            Entry::RetardingScale => "Gemessene zu angenommener Bremswirkung",
            Entry::ShaftTorque => "Bremsmoment des Retarders an der Kardanwelle",
            Entry::ShaftSpeed => "Wellendrehzahl dieses Bremsmoments",
            Entry::ShortPower => "Kurzzeitleistung des Retarders",
            Entry::ShortTime => "Dauer der Kurzzeitleistung",
            Entry::SustainedPower => "Dauerleistung des Retarders",
            Entry::SustainedSpeed => "Motordrehzahl der Dauerleistung",
            Entry::HotShare => "Bremsmoment heiß zu kalt",
            Entry::WarmUpTime => "Erwärmungszeit des Retarders",
            Entry::LockUpGear => "Niedrigster Gang mit Überbrückung",
            Entry::LockUpSpeed => "Motordrehzahl, bei der die Überbrückung öffnet",
            Entry::BrakeCheckStop => "Zeit an jedem Bremskontrollplatz",
            Entry::ShiftsUpSpeed => "Motordrehzahl, bei der das Getriebe selbst hochschaltet",
            Entry::RatedPower => "Nennleistung des Motors",
            Entry::GovernedSpeed => "Abregeldrehzahl des Motors",
            Entry::TopGearSpeed => "Motordrehzahl im höchsten Gang",
        }
    }
    fn not_a_number(&self, typed: &str) -> String {
        format!("„{typed}“ ist keine Zahl.")
    }
    fn out_of_range(&self, typed: &str) -> String {
        format!("{typed} liegt außerhalb des Bereichs.")
    }
    fn enter_from(&self, range: &str) -> String {
        format!("Geben Sie einen Wert von {range} ein.")
    }
    fn truck_error(&self, error: &TruckError, units: Units) -> String {
        telling::truck_error(error, units)
    }
    fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String {
        telling::truck_file_error(error, units)
    }
    fn gears(&self) -> &'static str {
        "Übersetzungen der Gänge"
    }
    fn gears_hint(&self) -> &'static str {
        "Der erste Gang zuerst, mit Leerzeichen dazwischen."
    }
    fn stages(&self) -> &'static str {
        "Stufen der Dauerbremse"
    }
    fn stages_hint(&self) -> &'static str {
        "Anteil jeder Stufe an der vollen Bremswirkung in Prozent, die schwächste zuerst, die letzte 100."
    }
    fn retarder_table(&self) -> &'static str {
        "Dauerbremse nach Drehzahl und Stufe"
    }
    fn shaft_table_hint(&self) -> &'static str {
        "Eine Zeile je Drehzahl: Wellendrehzahl, ein Doppelpunkt, dann das Bremsmoment jeder Stufe in N·m, die schwächste zuerst. Außerhalb der Tabelle gilt sie als aus."
    }
    fn engine_table_hint(&self) -> &'static str {
        "Eine Zeile je Drehzahl: Motordrehzahl, ein Doppelpunkt, dann die Bremsleistung jeder Stufe in kW, die schwächste zuerst. Außerhalb der Tabelle gilt sie als aus."
    }
    fn retarder_label(&self) -> &'static str {
        "Dauerbremse"
    }
    fn retarder(&self, kind: RetarderKind) -> &'static str {
        match kind {
            RetarderKind::None => "keine",
            RetarderKind::CompressionRelease => "Motorbremse, Dekompression",
            RetarderKind::ExhaustValve => "Auspuffklappenbremse",
            RetarderKind::Hydrodynamic => "Retarder, hydrodynamisch",
            RetarderKind::Electromagnetic => "Retarder, elektromagnetisch",
            RetarderKind::CompressionAndHydrodynamic => "Dekompression und Retarder, hydrodynamisch",
            RetarderKind::ExhaustAndHydrodynamic => "Auspuffklappe und Retarder, hydrodynamisch",
            RetarderKind::CompressionAndElectromagnetic => "Dekompression und Retarder, elektromagnetisch",
            RetarderKind::ExhaustAndElectromagnetic => "Auspuffklappe und Retarder, elektromagnetisch",
            RetarderKind::EnginePowerTable => "eigene Tabelle, am Motor",
            RetarderKind::ShaftTorqueTable => "eigene Tabelle, an der Kardanwelle",
        }
    }
    fn transmission_label(&self) -> &'static str {
        "Getriebe"
    }
    fn transmission(&self, transmission: Transmission) -> &'static str {
        match transmission {
            Transmission::Manual => "von Hand geschaltet",
            Transmission::Automated => "automatisiert",
            Transmission::TorqueConverter { .. } => "Wandler",
        }
    }
    fn load_label(&self) -> &'static str {
        "Beladung"
    }
    fn load(&self, load: Load) -> &'static str {
        match load {
            Load::Laden => "beladen",
            Load::Empty => "leer",
            Load::NoTrailer => "ohne Anhänger",
        }
    }
    fn mass_stays(&self, mass: &str) -> String {
        format!(
            "Das ändert das Gewicht nicht: Eingegeben ist weiter {mass}. Geben Sie ein, was das Fahrzeug jetzt wiegt."
        )
    }
    fn gear_set_label(&self) -> &'static str {
        "Zahl der Gänge"
    }
    fn gear_set(&self, gears: usize, overdrive: bool) -> String {
        let top = if overdrive { "Schnellgang" } else { "höchster Gang direkt" };
        format!("{gears} Gänge, {top}")
    }
    fn own_gears(&self) -> &'static str {
        "wie unten eingegeben"
    }
    fn tyre_label(&self) -> &'static str {
        "Reifen der Antriebsachsen"
    }
    fn own_tyre(&self) -> &'static str {
        "Rollradius wie eingegeben"
    }
    fn curves_name(&self) -> &'static str {
        "Leistung über der Motordrehzahl"
    }
    fn curves_about(&self, unit: &str) -> String {
        format!(
            "Leistung in {unit} über der Motordrehzahl: dick, womit der Motor zieht, gestrichelt, womit Motor und Dauerbremse halten, Stufe für Stufe. Was ein Retarder an der Kardanwelle auf Dauer leistet, ist für den direkten Gang gezeichnet."
        )
    }
    fn own_trucks(&self) -> &'static str {
        "Ihre eigenen Fahrzeuge"
    }
    fn truck_name(&self) -> &'static str {
        "Name dieses Fahrzeugs"
    }
    fn keep_truck(&self) -> &'static str {
        "Unter diesem Namen speichern"
    }
    fn rename_truck(&self, name: &str) -> String {
        format!("„{name}“ so umbenennen")
    }
    fn take_truck(&self, name: &str) -> String {
        format!("Mit „{name}“ planen")
    }
    fn remove_truck(&self, name: &str) -> String {
        format!("„{name}“ entfernen")
    }
    fn undo(&self) -> &'static str {
        "Rückgängig"
    }
    fn remove(&self) -> &'static str {
        "Entfernen"
    }
    fn no_name(&self) -> &'static str {
        "Geben Sie ihm zuerst einen Namen."
    }
    fn too_many_trucks(&self) -> &'static str {
        "Kein Platz für ein weiteres Fahrzeug: Entfernen Sie zuerst eines."
    }
    fn save_truck(&self) -> &'static str {
        "Als Datei speichern"
    }
    fn open_truck(&self) -> &'static str {
        "Fahrzeugdatei öffnen"
    }
    fn truck_file_name(&self, name: &str) -> String {
        file_name(name, "eigenes", "-fahrzeug.json")
    }
    fn axle_groups(&self) -> &'static str {
        "Gebremste Achsen"
    }
    fn axle_group(&self, group: &AxleGroup) -> String {
        let axles = match (group.place, group.axles == 1) {
            (AxlePlace::Steer, true) => "Lenkachse",
            (AxlePlace::Steer, false) => "Lenkachsen",
            (AxlePlace::Drive, true) => "Antriebsachse",
            (AxlePlace::Drive, false) => "Antriebsachsen",
            (AxlePlace::Trailer, true) => "Anhängerachse",
            (AxlePlace::Trailer, false) => "Anhängerachsen",
        };
        let brake = match group.brake {
            BrakeKind::Drum => "Trommelbremsen",
            BrakeKind::Disc => "Scheibenbremsen",
        };
        let share = crate::format::whole((group.effort_share * 100.0).round());
        format!("{} {axles}, {brake}, {share} % der Bremswirkung", group.axles)
    }
    fn surface_label(&self) -> &'static str {
        "Fahrbahn"
    }
    fn surface(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Dry => "trocken",
            Surface::Wet => "nass",
            Surface::Snow => "Schnee",
            Surface::Ice => "Eis",
        }
    }
    fn service_brakes_label(&self) -> &'static str {
        "Betriebsbremse"
    }
    fn service_brakes(&self, service_brakes: ServiceBrakes) -> &'static str {
        match service_brakes {
            ServiceBrakes::InReserve => "nur als Reserve",
            ServiceBrakes::MaySnub => "Intervallbremsung erlaubt",
        }
    }
    fn lead_label(&self) -> &'static str {
        "Art der Abfahrt"
    }
    fn lead(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => "die schnellste",
            Lead::OneGear => "ein Gang",
            Lead::Untouched => "ohne Betriebsbremse",
        }
    }
    fn lead_hint(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => {
                "An einem langen Gefälle kann der Gang an genannten Stellen wechseln, wo das Minuten spart."
            }
            Lead::OneGear => "Ein Gang von der Kuppe bis zum Fuß, mit seiner Geschwindigkeit.",
            Lead::Untouched => {
                "Ein Gang, in dem die Dauerbremse allein auf jedem aufgezeichneten Stück hält, auch wo die Höhen unsicher sind."
            }
        }
    }
    fn usual_day(&self) -> &'static str {
        "Zurück zu den üblichen Bedingungen"
    }
    fn kept_here(&self) -> &'static str {
        "Eingaben werden nur in diesem Browser gespeichert."
    }
}
