//! German words of the class view.

use super::{German, minutes};
use crate::class::Screen;
use crate::format::{self, Units};
use crate::words::ClassWords;

impl ClassWords for German {
    fn screen(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Strecken",
            Screen::Forces => "Kräfte",
            Screen::Run => "Fahrt",
            Screen::Pair => "Nebeneinander",
            Screen::Exercises => "Aufgaben",
        }
    }
    fn idea(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Eine Strecke, über die man redet",
            Screen::Forces => "Wo ein Gang das Gefälle trifft, pendelt sich das Fahrzeug ein",
            Screen::Run => "Ein Fahrzeug auf dieser Strecke, wie geplant",
            Screen::Pair => "Eine Strecke, ein Start, eines wird anders gemacht",
            Screen::Exercises => "Erst rechnen, dann nachsehen",
        }
    }
    fn notes(&self, screen: Screen) -> &'static [&'static str] {
        match screen {
            Screen::Roads => &[
                "Wählen Sie eine Strecke, und lassen Sie die Klasse sagen, wie sie dort hinunterfahren würde, bevor etwas gezeigt wird.",
                "Auch jede GPX-Datei lässt sich hier ablegen: Am besten ist die Strecke, die sie jede Woche fahren.",
            ],
            Screen::Forces => &[
                "Fragen Sie zuerst: Welcher Gang? Ziehen Sie dann das Gefälle auf seine Steilheit.",
                "Das Gefälle verlangt bei jeder Geschwindigkeit fast dieselbe Kraft; ein niedriger Gang gibt mehr davon. Mehr steckt nicht hinter der Wahl des Gangs.",
                "Ziehen Sie das Gefälle, bis die Marke über das Ende einer Linie hinausfällt: Dahinter würde der Motor zu schnell drehen.",
                "Geben Sie ein Zehntel der Masse dazu, und sehen Sie, wie die Marke wandert.",
            ],
            Screen::Run => &[
                "Halten Sie vor einer Kuppe an, und fragen Sie, was jetzt schon eingelegt sein sollte.",
                "Halten Sie an, wo es flacher wird: Ist es vorbei?",
                "Die Temperatur ist gerechnet. Was die Rechnung nicht sieht, etwa die Einstellung der Bremsen, ist schlimmer als das, was sie sieht.",
            ],
            Screen::Pair => &[
                "Lassen Sie die Klasse vor dem Start wetten: wie viele Grad, wie viele Minuten?",
                "Halten Sie an, wo sie sich trennen. Vom Fahrersitz aus ist noch nichts zu sehen.",
                "Fragen Sie am Ende, was damit gewonnen war.",
            ],
            Screen::Exercises => &[
                "Drucken Sie das leere Blatt; das Lösungsblatt hat dieselbe Nummer.",
                "Die Zahlen sind in den Schritten so gerundet, wie sie dastehen, damit man von Hand folgen kann.",
            ],
        }
    }
    fn screens(&self) -> &'static str {
        "Bilder des Unterrichts"
    }
    fn to_road_page(&self) -> &'static str {
        "Zurück"
    }
    fn show_notes(&self) -> &'static str {
        "Notizen"
    }
    fn keys(&self) -> &'static str {
        "Bild ab und Bild auf: nächstes und voriges Bild. N: diese Notizen. Leertaste: Fahrt los und Halt. Pfeile links und rechts: schrittweise. Auf und ab: schneller und langsamer. Pos 1: von vorn."
    }
    fn class_caution(&self) -> &'static str {
        "Zum Lehren, aus Eingaben und aufgezeichneten Höhen, die irren. Keine Erlaubnis zur Talfahrt: Schilder, Gesetz und Grenzen des Herstellers gehen vor."
    }
    fn grade_label(&self) -> &'static str {
        "Gefälle"
    }
    fn mass_label(&self) -> &'static str {
        "Masse"
    }
    fn stage_label(&self) -> &'static str {
        "Dauerbremse"
    }
    fn forces_about(&self) -> &'static str {
        "Haltekraft über der Geschwindigkeit: eine Linie für jeden Gang, quer dazu, was Gefälle verlangen. Darunter steht, wo sich die Gänge einpendeln."
    }
    fn holding_axis(&self) -> &'static str {
        "Kraft"
    }
    fn none_settles(&self) -> &'static str {
        "Mit dieser Stufe pendelt sich auf diesem Gefälle kein Gang ein."
    }
    fn nothing_in_reserve(&self) -> &'static str {
        "Am Schnittpunkt bleibt keine Reserve."
    }
    fn reserve_kept(&self, reserve: &str, kept: Option<(String, String)>) -> String {
        match kept {
            Some((gear, speed)) => format!("Mit {reserve} Reserve: {gear}, höchstens {speed}."),
            None => format!("Mit {reserve} Reserve: kein Gang."),
        }
    }
    fn print_screen(&self) -> &'static str {
        "Drucken"
    }
    fn profile_about(&self) -> &'static str {
        "Die Strecke vom Start bis zum Ende, mit einer Marke für jedes Fahrzeug"
    }
    fn truck_about(&self) -> &'static str {
        "Das Fahrzeug an seinem Hang, mit einem Pfeil für jede Kraft; die Anzeigen sagen dasselbe in Zahlen"
    }
    fn driving(&self) -> &'static str {
        "Wird gefahren …"
    }
    fn no_ride(&self) -> &'static str {
        "Das lässt sich hier nicht fahren: Auf dieser Strecke gibt es kein Gefälle mit sicherer Geschwindigkeit, oder nichts zu verlieren."
    }
    fn start(&self) -> &'static str {
        "Los"
    }
    fn stop(&self) -> &'static str {
        "Halt"
    }
    fn step(&self) -> &'static str {
        "Schritt"
    }
    fn anew(&self) -> &'static str {
        "Von vorn"
    }
    fn slower(&self) -> &'static str {
        "Langsamer"
    }
    fn faster(&self) -> &'static str {
        "Schneller"
    }
    fn arrow_hill(&self) -> &'static str {
        "Hang"
    }
    fn arrow_engine(&self) -> &'static str {
        "Motor"
    }
    fn arrow_retarder(&self) -> &'static str {
        "Dauerbremse"
    }
    fn arrow_service(&self) -> &'static str {
        "Betriebsbremse"
    }
    fn arrow_resistance(&self) -> &'static str {
        "Rollen, Luft"
    }
    fn gauge_speed(&self) -> &'static str {
        "Tempo"
    }
    fn gauge_gear(&self) -> &'static str {
        "Gang"
    }
    fn gauge_stage(&self) -> &'static str {
        "Stufe"
    }
    fn gauge_engine(&self) -> &'static str {
        "Motor"
    }
    fn gauge_power(&self) -> &'static str {
        "Bremsleistung"
    }
    fn gauge_brakes(&self) -> &'static str {
        "Bremsen"
    }
    fn after_stop(&self) -> &'static str {
        "nach Stopp"
    }
    fn exercise_back(&self) -> &'static str {
        "Vorige Aufgabe"
    }
    fn exercise_on(&self) -> &'static str {
        "Nächste Aufgabe"
    }
    fn slips(&self) -> &'static str {
        "Was das zweite Fahrzeug anders macht"
    }
    fn as_planned(&self) -> &'static str {
        "wie geplant"
    }
    fn gear_high(&self) -> &'static str {
        "ein Gang höher"
    }
    fn somewhat_heavier(&self) -> &'static str {
        "10 % schwerer"
    }
    fn faster_by(&self, speed: &str) -> String {
        format!("{speed} schneller")
    }
    fn stage_lost(&self) -> &'static str {
        "Stufe fällt aus"
    }
    fn hot_brakes(&self) -> &'static str {
        "heiße Bremsen"
    }
    fn they_part(&self, at_m: f64, units: Units) -> String {
        format!("Sie trennen sich bei {}.", format::distance(at_m, units))
    }
    fn nowhere_apart(&self) -> &'static str {
        "Auf dieser Strecke macht es keinen nennenswerten Unterschied."
    }
    fn time_apart(&self, sooner_s: f64) -> String {
        format!("{} {}", minutes(sooner_s.abs()), if sooner_s > 0.0 { "früher da" } else { "später da" })
    }
    fn no_time_apart(&self) -> &'static str {
        "zeitlich gleich"
    }
    fn compared(&self, name: &str, time: &str, wrong: &str, right: &str) -> String {
        format!("{name}: {time}; nach einer kräftigen Bremsung bis zum Stillstand {wrong} statt {right}.")
    }
    fn passes_limit(&self, from: &str) -> String {
        format!(
            "Ab {from} würde eine kräftige Bremsung bis zum Stillstand die Grenze überschreiten. Hier halten die Bremsen, so heiß sie auch sind; auf der Straße lassen sie nach."
        )
    }
    fn forgiven(&self) -> &'static str {
        "Dieses Gefälle verzeiht es. Das nächste vielleicht nicht."
    }
}
