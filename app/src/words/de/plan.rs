//! German words of the answer: verdict, deciding sentence, what governs, cautions.

use super::{German, minutes};
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{Piece, PlanWords};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, HeatStep, Verdict};
use solver::truck::{Gear, Stage};

fn plain(text: impl Into<String>) -> Piece {
    Piece::Plain(text.into())
}

fn strong(text: impl Into<String>) -> Piece {
    Piece::Strong(text.into())
}

impl PlanWords for German {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "Dauerbremse hält das Tempo",
            Verdict::LittleInReserve => "Dauerbremse hält das Tempo, wenig Reserve",
            Verdict::NeedsServiceBrakes => "braucht die Betriebsbremse",
            Verdict::NoSafeSpeed => "keine sichere Geschwindigkeit gefunden",
        }
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "kühl",
            HeatStep::Warm => "warm",
            HeatStep::Hot => "heiß",
            HeatStep::OverLimit => "über der Grenze",
        }
    }
    fn stage(&self, stage: Stage) -> String {
        if stage == Stage::OFF { "Dauerbremse aus".to_owned() } else { format!("Stufe {}", stage.number()) }
    }
    fn gear(&self, gear: Gear) -> String {
        format!("Gang {}", gear.number())
    }
    fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece> {
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
        match &descent.choice {
            Choice::Held(advice) => vec![
                plain(opening),
                strong(self.gear(advice.gear)),
                plain(", "),
                strong(self.stage(advice.stage)),
                plain(", "),
                strong(format::hold_speed(advice.speed.0, units)),
                plain(format!(" halten,{place}")),
                strong(crest),
                plain("."),
            ],
            Choice::NoSafeSpeed(_) => vec![
                plain(opening),
                strong("keine sichere Geschwindigkeit gefunden"),
                plain(place),
                strong(crest),
                plain(". Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter."),
            ],
        }
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "Auf den Teilen, die beurteilt werden konnten, verlangt kein Gefälle einen bestimmten Gang oder eine Stufe der Dauerbremse."
        } else {
            "Kein Gefälle auf dieser Strecke verlangt einen bestimmten Gang oder eine Stufe der Dauerbremse."
        }
    }
    fn chosen_for(&self, descent: &Descent, units: Units) -> String {
        let sustained = descent.sustained;
        let grade = format!(
            "die steilsten {}, {}, ab {}",
            format::length(sustained.length.0, units),
            format::grade(sustained.grade.0),
            format::distance(sustained.from.0, units)
        );
        match &descent.choice {
            Choice::Held(_) => format!(
                "Legen Sie den Gang vor der Kuppe ein, und behalten Sie ihn bis zum Fuß bei {}. Er ist gewählt für {grade}.",
                format::distance(descent.foot.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("Was es ausschließt: {grade}."),
        }
    }
    fn along_label(&self) -> &'static str {
        "Jede Gefällestrecke hat ihren eigenen Gang, ab ihrer Kuppe bei:"
    }
    fn along(&self, descent: &Descent, units: Units) -> String {
        let crest = format::distance(descent.crest.0, units);
        match &descent.choice {
            Choice::Held(advice) => format!("{crest}: {}", self.in_short(advice, units)),
            Choice::NoSafeSpeed(_) => format!("{crest}: keine sichere Geschwindigkeit gefunden"),
        }
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
    fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String {
        match heavier {
            Some(choice) => format!("{}.", self.choice(choice, units)),
            None => "Dieses Gewicht liegt außerhalb des Bereichs.".to_owned(),
        }
    }
    fn heat_label(&self) -> &'static str {
        "Betriebsbremse"
    }
    fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String {
        format!(
            "Etwa {}, wenn sie am heißesten ist; {} nach einer kräftigen Bremsung bis zum Stillstand (Grenze {}).",
            format::temperature(advice.hottest.0, units),
            format::temperature(advice.hottest_after_stop.0, units),
            format::entered_temperature(day.heat_limit_c, units)
        )
    }
    fn snub(&self, advice: &Advice, units: Units) -> Option<String> {
        advice.snub.map(|snub| {
            format!(
                "Intervallbremsung: Bremsen Sie bei {} in etwa {:.0} s auf {} ab, lösen Sie die Bremse, und bremsen Sie dann wieder, auf dem steilsten Stück nach etwa {:.0} s; insgesamt etwa {}-mal. Lassen Sie die Bremse nicht schleifen.",
                format::hold_speed(snub.from.0, units),
                snub.on.0,
                format::hold_speed(snub.to.0, units),
                snub.off.0,
                snub.count
            )
        })
    }
    fn choice(&self, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(advice) => {
                let verdict = self.verdict(advice.verdict);
                format!("{}: {verdict}", capital(&self.in_short(advice, units)))
            }
            Choice::NoSafeSpeed(_) => "Keine sichere Geschwindigkeit gefunden".to_owned(),
        }
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
            "steilste",
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
