//! German words of one descent's details and of its table.

use super::German;
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::Unusable;
use solver::plan::Advice;

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
    fn no_advice(&self) -> &'static str {
        "Es wurde keine Geschwindigkeit gefunden, die die Grenzen einhält. Fahren Sie mit diesem Fahrzeug, so wie eingegeben, dort nicht hinunter."
    }
    fn falls_short(&self, share: &str) -> String {
        format!(
            "Bei voller Stufe fehlen {share} dessen, was das Gefälle verlangt: Die Betriebsbremse muss helfen."
        )
    }
    fn more_than_asked(&self, share: &str) -> String {
        format!("Bei voller Stufe {share} mehr, als das Gefälle verlangt.")
    }
    fn advice_in_full(&self, advice: &Advice, [speed, engine_speed, reserve, time]: [&str; 4]) -> String {
        format!(
            "Gang {}, bis zu {}, {speed} bei {engine_speed}. {reserve} {time} von der Kuppe bis zum Fuß.",
            advice.gear.number(),
            self.stage(advice.stage)
        )
    }
    fn way_label(&self) -> &'static str {
        "Stufen auf dem Weg hinunter"
    }
    fn relief_label(&self) -> &'static str {
        "Wo das Gefälle nachlässt"
    }
    fn eases_over(&self, span: &str, length: &str) -> String {
        format!("{span}: eben oder steigend auf {length}. Nicht hochschalten: Das Gefälle geht weiter.")
    }
    fn grades_label(&self) -> &'static str {
        "Wie steil"
    }
    fn mean_grade(&self, grade: &str) -> String {
        format!("{grade} im Mittel.")
    }
    fn steepest_over(&self, grade: &str, length: &str, from: &str, doubt: &str) -> String {
        format!("{grade} über die steilsten {length}, ab {from}{doubt}.")
    }
    fn too_short_for_heights(&self) -> &'static str {
        "; für ein so kurzes Stück reichen die Höhen nicht aus"
    }
    fn curves_label(&self) -> &'static str {
        "Kurven"
    }
    fn curve_count(&self, curves: &Curves) -> String {
        match (curves.count, curves.hairpins) {
            (1, 0) => "1 Kurve verlangt weniger als diese Geschwindigkeit".to_owned(),
            (1, _) => "1 Kehre verlangt weniger als diese Geschwindigkeit".to_owned(),
            (all, 0) => format!("{all} Kurven verlangen weniger als diese Geschwindigkeit"),
            (all, 1) => {
                format!("{all} Kurven verlangen weniger als diese Geschwindigkeit, 1 davon ist eine Kehre")
            }
            (all, some) => {
                format!("{all} Kurven verlangen weniger als diese Geschwindigkeit, {some} davon sind Kehren")
            }
        }
    }
    fn slowest_curve(&self, speed: &str, at: &str, side: &str, radius: &str) -> String {
        format!("Die langsamste: höchstens {speed} bei {at}, {side}, Radius etwa {radius}.")
    }
    fn curves_estimated(&self) -> &'static str {
        "Radien sind aus der Aufzeichnung geschätzt; Querneigung, Sicht und Fahrbahn sind nicht bekannt."
    }
    fn side(&self, left: bool) -> &'static str {
        if left { "nach links" } else { "nach rechts" }
    }
    fn climb_label(&self) -> &'static str {
        "Denselben Berg hinauf"
    }
    fn climbs_in(&self, gear: u8, speed: &str) -> String {
        format!(
            "Mit Vollgas steigt es dort im Gang {gear} mit etwa {speed}. Der Gang für die Talfahrt ist oft niedriger."
        )
    }
    fn climbs_in_none(&self) -> &'static str {
        "Mit Vollgas kommt es in keinem Gang hinauf."
    }
    fn cut_short(&self) -> &'static str {
        "Die Gefällestrecke ist dort abgeschnitten, wo die Strecke nicht mehr beurteilt werden kann. Wie es weitergeht, ist nicht bekannt."
    }
    fn brakes_arrive(&self, heat: &str) -> String {
        format!("Die Bremsen kommen an der Kuppe mit etwa {heat} an.")
    }
    fn table_of(&self, grade: &str, height: &str) -> String {
        format!(
            "Was jeder Gang und jede Stufe auf {grade} in {height} Meereshöhe bewirkt, ohne Gas und ohne Betriebsbremse"
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["Gang", "nutzbare Geschwindigkeiten", "Reserve bei der höchsten"]
    }
    fn more_than_needed(&self) -> &'static str {
        "mehr als nötig"
    }
    fn overruns(&self) -> &'static str {
        "wird schneller"
    }
    fn above_speed(&self, speed: &str) -> String {
        format!("über {speed}")
    }
    fn not_usable(&self) -> &'static str {
        "nicht nutzbar"
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
    fn fall_in_part(&self, all: &str, blank: &str) -> String {
        format!("{all} (davon {blank} nicht beurteilt)")
    }
    fn no_work_counted(&self, length: &str) -> String {
        format!("Auf {length} ohne Beurteilung ist keine Bremsarbeit mitgezählt.")
    }
    fn whole_way(&self, time: &str, fall: &str, holding: &str, service: &str) -> String {
        format!(
            "Ganze Strecke: {time}, {fall} hinunter. Dauerbremse und Motor nehmen {holding} auf, die Betriebsbremse {service}."
        )
    }
    fn slowest_climb(&self, speed: &str) -> String {
        format!("Am langsamsten an einer Steigung: etwa {speed}.")
    }
    fn less_than(&self, share: &str) -> String {
        format!("weniger als {share}")
    }
    fn share_and_fuel(&self, share: &str, fuel: &str) -> String {
        format!("Das sind {share} der Bremsarbeit für die Betriebsbremse. Kraftstoff: etwa {fuel}.")
    }
}
