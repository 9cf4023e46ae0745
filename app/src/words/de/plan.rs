//! German words of the answer: verdicts, the list, cautions.

use super::{German, minutes};
use crate::words::PlanWords;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{HeatStep, Verdict};

impl PlanWords for German {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "Dauerbremse hält das Tempo",
            Verdict::LittleInReserve => "Dauerbremse hält das Tempo, wenig Reserve",
            Verdict::NeedsServiceBrakes => "braucht die Betriebsbremse",
            Verdict::NoSafeSpeed => "keine sichere Geschwindigkeit gefunden",
        }
    }
    fn engine_holds(&self) -> &'static str {
        "Motor allein hält das Tempo"
    }
    fn engine_holds_little(&self) -> &'static str {
        "Motor allein hält das Tempo, wenig Reserve"
    }
    fn holds_on_average(&self) -> &'static str {
        "hält im Mittel"
    }
    fn brakes_touch(&self) -> &'static str {
        "hält, Betriebsbremse greift kurz ein"
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "kühl",
            HeatStep::Warm => "warm",
            HeatStep::Hot => "heiß",
            HeatStep::OverLimit => "über der Grenze",
        }
    }
    fn stage_number(&self, number: usize) -> String {
        format!("Stufe {number}")
    }
    fn retarder_off(&self) -> &'static str {
        "Dauerbremse aus"
    }
    fn off(&self) -> &'static str {
        "aus"
    }
    fn in_legs(&self, [from, to]: [u8; 2], stage: &str, [slow, fast]: [&str; 2]) -> String {
        format!("Gänge {from} bis {to}, {stage} im niedrigsten, {slow} bis {fast}")
    }
    fn gear_number(&self, number: u8) -> String {
        format!("Gang {number}")
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "Auf den Teilen, die beurteilt werden konnten, verlangt kein Gefälle einen bestimmten Gang oder eine Stufe der Dauerbremse."
        } else {
            "In dieser Richtung verlangt kein Gefälle dieser Strecke einen bestimmten Gang oder eine Stufe der Dauerbremse."
        }
    }
    fn along_label(&self) -> &'static str {
        "Jede Gefällestrecke hat ihren eigenen Gang, ab ihrer Kuppe bei:"
    }
    fn no_safe_speed(&self) -> &'static str {
        "keine sichere Geschwindigkeit gefunden"
    }
    fn along_more(&self, count: usize) -> String {
        if count == 1 {
            "und 1 weitere in der Liste unten".to_owned()
        } else {
            format!("und {count} weitere in der Liste unten")
        }
    }
    fn other_mode_label(&self, day: &Day) -> &'static str {
        match day.service_brakes {
            ServiceBrakes::InReserve => "Wenn Sie Intervallbremsungen erlauben",
            ServiceBrakes::MaySnub => "Mit der Betriebsbremse nur als Reserve",
        }
    }
    fn same_choice(&self) -> &'static str {
        "Derselbe Gang, dieselbe Stufe und dieselbe Geschwindigkeit."
    }
    fn choice_apart(&self, choice: &str, more_s: f64) -> String {
        let change = if more_s < 0.0 { "kürzer" } else { "länger" };
        format!("{choice}; dauert {} {change}.", minutes(more_s.abs()))
    }
    fn heavier_label(&self) -> &'static str {
        "Bei 10 % mehr Gewicht"
    }
    fn mass_out_of_range(&self) -> &'static str {
        "Dieses Gewicht liegt außerhalb des Bereichs."
    }
    fn heat_label(&self) -> &'static str {
        "Betriebsbremse"
    }
    fn brakes_at(&self, hottest: &str, after_stop: &str, limit: &str) -> String {
        format!(
            "Etwa {hottest}, wenn sie am heißesten ist; {after_stop} nach einer kräftigen Bremsung bis zum Stillstand (Grenze {limit})."
        )
    }
    fn snub_between(&self, from: &str, to: &str, on: &str, off: &str, count: u32) -> String {
        format!(
            "Intervallbremsung: Bremsen Sie bei {from} in etwa {on} s auf {to} ab, lösen Sie die Bremse, und bremsen Sie dann wieder, wo das Gefälle am meisten verlangt, nach etwa {off} s; insgesamt etwa {count}-mal. Lassen Sie die Bremse nicht schleifen."
        )
    }
    fn parked(&self) -> &'static str {
        "Planen Sie nur bei geparktem Fahrzeug. Nicht während der Fahrt benutzen."
    }
    fn cautions(&self) -> &'static [&'static str] {
        &[
            "Ein Hilfsmittel für Planung und Unterricht: keine Anweisung und keine Freigabe einer Strecke.",
            "Berechnet aus Ihren Eingaben und aus aufgezeichneten Höhen, die fehlerhaft sind.",
            "Das Programm sieht nicht: Bremseneinstellung, Reifen, Fahrbahn, Wetter, Verkehr, Sperrungen und wie die Ladung sitzt.",
            "Verkehrszeichen, das Gesetz, die Vorschriften Ihres Arbeitgebers und die Grenzwerte des Herstellers gehen vor.",
            "Die Betriebsbremse bleibt das Mittel zum Anhalten.",
            "Im Zweifel: oben anhalten, langsamer fahren oder eine andere Strecke nehmen.",
        ]
    }
    fn descents_head(&self, count: usize) -> String {
        match count {
            0 => "Keine Gefällestrecken".to_owned(),
            1 => "1 Gefällestrecke".to_owned(),
            _ => format!("{count} Gefällestrecken"),
        }
    }
    fn order(&self) -> &'static str {
        "Reihenfolge der Liste"
    }
    fn worst_first(&self) -> &'static str {
        "schlimmste zuerst"
    }
    fn road_order(&self) -> &'static str {
        "entlang der Strecke"
    }
    fn columns(&self) -> [&'static str; 10] {
        [
            "Gefälle",
            "ab",
            "Länge",
            "fällt um",
            "im Mittel",
            "verlangt",
            "Gang",
            "Stufe",
            "Tempo",
            "nach Stopp",
        ]
    }
    fn descent(&self, number: usize) -> String {
        format!("Gefälle {number}")
    }
    fn details_of(&self, number: usize) -> String {
        format!("Gefälle {number}: Einzelheiten")
    }
}
