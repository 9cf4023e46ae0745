//! German words of one descent's details and of its table.

use super::{German, minutes};
use crate::format::{self, Units};
use crate::words::say::{capital, radius};
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

impl DescentWords for German {
    fn sign_label(&self) -> &'static str {
        "Wie es auf einem Verkehrszeichen stünde"
    }
    fn sign(&self, grade: &str, length: &str) -> String {
        format!("{grade} auf {length}")
    }
    fn advice_label(&self) -> &'static str {
        "Wie Sie hinunterfahren"
    }
    fn advice(&self, descent: &Descent, units: Units) -> String {
        let Choice::Held(advice) = &descent.choice else {
            return "Es wurde keine Geschwindigkeit gefunden, die die Grenzen einhält. Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter."
                .to_owned();
        };
        let reserve = if advice.margin < 0.0 {
            format!(
                "Bei voller Stufe fehlen auf dem steilsten Stück {} dessen, was nötig ist: Die Betriebsbremse muss helfen.",
                format::margin(-advice.margin)
            )
        } else {
            format!(
                "Bei voller Stufe auf dem steilsten Stück {} mehr als nötig.",
                format::margin(advice.margin)
            )
        };
        format!(
            "Gang {}, bis zu {}, {} bei {}. {reserve} {} von der Kuppe bis zum Fuß.",
            advice.gear.number(),
            self.stage(advice.stage),
            format::hold_speed(advice.speed.0, units),
            format::engine_speed(advice.engine_speed.0),
            capital(&minutes(advice.time.0))
        )
    }
    fn way_label(&self) -> &'static str {
        "Stufen auf dem Weg hinunter"
    }
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}: {}", format::span(from_m, to_m, units), self.stage(stage))
    }
    fn relief_label(&self) -> &'static str {
        "Wo das Gefälle nachlässt"
    }
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!(
            "{}: eben oder steigend auf {}. Nicht hochschalten: Das Gefälle geht weiter.",
            format::span(from_m, to_m, units),
            format::length(to_m - from_m, units)
        )
    }
    fn grades_label(&self) -> &'static str {
        "Wie steil"
    }
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
        let mean = format!("{} im Mittel.", format::grade(descent.mean.0));
        let steepest = descent.steepest.iter().rev().map(|it| {
            let doubt = if it.length.0 < base_m {
                "; für ein so kurzes Stück reichen die Höhen nicht aus"
            } else {
                ""
            };
            format!(
                "{} über die steilsten {}, ab {}{doubt}.",
                format::grade(it.grade.0),
                format::length(it.length.0, units),
                format::distance(it.from.0, units)
            )
        });
        std::iter::once(mean).chain(steepest).collect()
    }
    fn curves_label(&self) -> &'static str {
        "Kurven"
    }
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let count = match (curves.count, curves.hairpins) {
            (1, 0) => "1 Kurve verlangt weniger als diese Geschwindigkeit".to_owned(),
            (1, _) => "1 Kehre verlangt weniger als diese Geschwindigkeit".to_owned(),
            (all, 0) => format!("{all} Kurven verlangen weniger als diese Geschwindigkeit"),
            (all, 1) => {
                format!("{all} Kurven verlangen weniger als diese Geschwindigkeit, 1 davon ist eine Kehre")
            }
            (all, some) => {
                format!("{all} Kurven verlangen weniger als diese Geschwindigkeit, {some} davon sind Kehren")
            }
        };
        let slowest = &curves.slowest;
        vec![
            format!(
                "{count}. Die langsamste: {}.",
                curve(&slowest.curve, slowest.speed.0, curves.at_m, units)
            ),
            "Radien sind aus der Aufzeichnung geschätzt; Querneigung, Sicht und Fahrbahn sind nicht bekannt."
                .to_owned(),
        ]
    }
    fn climb_label(&self) -> &'static str {
        "Denselben Berg hinauf"
    }
    fn climb(&self, descent: &Descent, units: Units) -> String {
        match descent.climbs_in {
            Some((gear, speed)) => format!(
                "Mit Vollgas steigt es dort im Gang {} mit etwa {}. Der Gang für die Talfahrt ist oft niedriger.",
                gear.number(),
                format::met_speed(speed.0, units)
            ),
            None => "Mit Vollgas kommt es in keinem Gang hinauf.".to_owned(),
        }
    }
    fn cut_short(&self) -> &'static str {
        "Die Gefällestrecke ist dort abgeschnitten, wo die Strecke nicht mehr beurteilt werden kann. Wie es weitergeht, ist nicht bekannt."
    }
    fn at_crest(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Die Bremsen kommen an der Kuppe mit etwa {} an.",
            format::temperature(descent.brakes_at_crest.0, units)
        )
    }
    fn table_caption(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Was jeder Gang und jede Stufe auf {} in {} Meereshöhe bewirkt, ohne Gas und ohne Betriebsbremse",
            format::grade(descent.table.grade.0),
            format::height(descent.table.height.0, units)
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["Gang", "nutzbare Geschwindigkeiten", "Reserve bei der höchsten"]
    }
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { "aus".to_owned() } else { format!("Stufe {stage}") }
    }
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        match answer {
            Answer::Settles { speed, engine_speed } => {
                (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
            }
            Answer::MoreThanNeeded => ("mehr als nötig".to_owned(), None),
            Answer::Overruns { above } => (
                "wird schneller".to_owned(),
                above.map(|speed| format!("über {}", format::met_speed(speed.0, units))),
            ),
            Answer::NotUsable(why) => ("nicht nutzbar".to_owned(), Some(self.unusable(*why).to_owned())),
        }
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        match why {
            Unusable::Slippery => "zu glatt",
            Unusable::Grip => "zu wenig Haftung",
            Unusable::CutOut => "abgeschaltet",
            Unusable::Unlocked => "Wandler offen",
        }
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        &[
            ("eine Geschwindigkeit", "dort pendelt sich das Fahrzeug ein, darunter steht die Motordrehzahl"),
            (
                "mehr als nötig",
                "es wird langsamer: Eine schwächere Stufe oder ein höherer Gang würde genügen",
            ),
            (
                "wird schneller",
                "es wird schneller, bis der Motor zu schnell dreht: einen niedrigeren Gang oder die Betriebsbremse benutzen",
            ),
            ("nicht nutzbar", "aus dem genannten Grund"),
            (
                "in einem Gang",
                "lässt sich durch Wechsel der Stufe jede Geschwindigkeit halten, von der, bei der sich die stärkste Stufe einpendelt, bis zum oberen Ende des Gangs",
            ),
        ]
    }
    fn table_chosen(&self) -> &'static str {
        "empfohlen"
    }
    fn totals(&self, totals: &Totals, units: Units) -> String {
        let crawl = totals.crawl.map_or_else(String::new, |speed| {
            format!(" Am langsamsten an einer Steigung: etwa {}.", format::met_speed(speed.0, units))
        });
        format!(
            "Ganze Strecke: {}, {} hinunter. Dauerbremse und Motor nehmen {} auf, die Betriebsbremse {}.{crawl}",
            minutes(totals.time.0),
            format::height(totals.fall.0, units),
            format::work(totals.holding_work.0),
            format::work(totals.service_work.0)
        ) + &fuel(totals, units)
    }
}

fn curve(curve: &Curve, speed: f64, at_m: f64, units: Units) -> String {
    format!(
        "höchstens {} bei {}, {}, Radius etwa {}",
        format::hold_speed(speed, units),
        format::distance(at_m, units),
        side(curve.turn == Turn::Left),
        radius(curve.radius_m, units)
    )
}

pub(super) fn side(left: bool) -> &'static str {
    if left { "nach links" } else { "nach rechts" }
}

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " Das sind {} der Bremsarbeit für die Betriebsbremse. Kraftstoff: etwa {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
