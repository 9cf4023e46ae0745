//! German words of the reasons: what governs, why no speed was found, what holds for all.

use super::German;
use crate::words::WhyWords;
use solver::day::Withheld;
use solver::plan::{Advice, Governs, Note, Verdict};

impl WhyWords for German {
    fn governs_label(&self) -> &'static str {
        "Warum nicht schneller"
    }
    fn governed_by(&self, advice: &Advice, limit: &str, reserve: &str, heat_limit: &str) -> String {
        match advice.governs {
            Governs::SpeedLimit => format!("Die eingegebene Höchstgeschwindigkeit, {limit}."),
            Governs::Posted => {
                "Ein Tempolimit unterwegs: Entweder wird es auf der ganzen Gefällestrecke eingehalten, oder der Gang für eine höhere Geschwindigkeit würde das Fahrzeug bei diesem Tempolimit nicht halten.".to_owned()
            }
            Governs::EngineSpeed => "Die höchste zulässige Motordrehzahl.".to_owned(),
            Governs::Control => control(advice, reserve),
            Governs::Curve => {
                "Kurven: Zwischen ihnen könnte das Fahrzeug kein höheres Tempo erreichen, oder der nötige Gang wäre in der langsamsten Kurve zu hoch.".to_owned()
            }
            Governs::Grip => "Die Haftung der Antriebsachsen auf dieser Fahrbahn.".to_owned(),
            Governs::Heat => format!(
                "Bremsenhitze: Bei höherer Geschwindigkeit würden die Bremsen nach einer kräftigen Bremsung bis zum Stillstand heißer als {heat_limit}."
            ),
        }
    }
    fn untouched_governs(&self) -> &'static str {
        "Ihre Wahl unter „Bedingungen“: Schneller würde ein aufgezeichnetes Stück die Betriebsbremse verlangen."
    }
    fn no_speed_because(&self, because: Governs, slowest: &str, reached: &str, limit: &str) -> String {
        let reason = match because {
            Governs::SpeedLimit => {
                return format!(
                    "Schon die niedrigste geprüfte Geschwindigkeit, {slowest}, liegt über der eingegebenen Höchstgeschwindigkeit."
                );
            }
            Governs::Posted => "würde der Gang nicht zum niedrigsten Tempolimit passen",
            Governs::EngineSpeed => "würde der Motor zu schnell drehen",
            Governs::Control => "hält die Dauerbremse das Fahrzeug nicht",
            Governs::Curve => "ist jeder Gang für die langsamste Kurve zu hoch",
            Governs::Grip => "fehlt den Antriebsachsen die Haftung, um das Fahrzeug zu halten",
            Governs::Heat => &format!(
                "würden die Bremsen nach einer kräftigen Bremsung bis zum Stillstand etwa {reached} erreichen; die Grenze ist {limit}"
            ),
        };
        format!("Selbst bei {slowest}, der niedrigsten geprüften Geschwindigkeit, {reason}.")
    }
    fn else_another_road(&self) -> &'static str {
        "Wenn sich das nicht ändern lässt, nehmen Sie eine andere Strecke."
    }
    fn note(&self, note: Note) -> &'static str {
        match note {
            Note::StagesWithheld(why) => withheld(why),
            Note::WetCap => {
                "Nässe: Die Dauerbremse wird mit höchstens der Hälfte dessen gerechnet, was die Haftung der Antriebsachsen hergibt. Wenn die Antriebsräder rutschen, stellen Sie die Dauerbremse eine Stufe schwächer; manche Anleitungen sagen: ganz aus."
            }
            Note::HoldByHand => {
                "Dieses Getriebe würde die Gänge selbst wählen: Stellen Sie es so ein, dass es den Gang hält, und legen Sie den Gang vor jeder Kuppe von Hand ein."
            }
            Note::ShiftsUpByItself => {
                "Dreht der Motor zu hoch, schaltet dieses Getriebe selbst hoch, und der Retarder fällt aus: Die genannten Geschwindigkeiten bleiben darunter."
            }
            Note::StartsInDescent => {
                "Die Strecke beginnt mitten in einem Gefälle. Was die Bremsen vorher mitgemacht haben, ist nicht bekannt: Geben Sie ihre Temperatur unter „Bedingungen“ ein."
            }
            Note::PartlyUnassessed => {
                "Ein Teil der Strecke konnte nicht beurteilt werden. Er bleibt leer, und dort wird nichts empfohlen."
            }
            Note::PoorHeights => {
                "Die Höhen dieser Datei sind schlecht: Neigungen sind nur ein Anhaltspunkt. Vergleichen Sie sie mit den Schildern."
            }
            Note::HotElsewhere => {
                "Außerhalb der Gefälle gibt es eine Stelle, an der eine kräftige Bremsung bis zum Stillstand die Grenze der Bremsen überschreiten würde. Suchen Sie die Stelle im Bild, und fahren Sie dort langsamer."
            }
            Note::CannotClimb => {
                "Unter Volllast kommt dieses Fahrzeug einen Teil dieser Strecke in keinem Gang hinauf."
            }
        }
    }
}

fn withheld(why: Withheld) -> &'static str {
    match why {
        Withheld::Snow | Withheld::Ice => {
            "Auf Schnee oder Eis wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen könnten ausbrechen. Die Anleitungen widersprechen sich (manche Hersteller erlauben die schwächste Stufe); hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse. Fahren Sie im Zweifel gar nicht erst hinunter: Warten Sie, bis die Straße geräumt und gestreut ist."
        }
        Withheld::EmptyInTheWet => {
            "Leer auf nasser Straße wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen tragen wenig und könnten ausbrechen. Die Anleitungen widersprechen sich (manche erlauben schwache Stufen); hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse."
        }
        Withheld::NoTrailerInTheWet => {
            "Ohne Anhänger oder Auflieger auf nasser Straße wird keine Stufe der Dauerbremse (Motorbremse, Retarder) empfohlen: Die Antriebsachsen tragen wenig, und das Zugfahrzeug könnte ins Schleudern geraten. Die Anleitungen widersprechen sich (manche erlauben schwache Stufen); hier gilt die vorsichtige Auslegung. Gänge und Geschwindigkeiten rechnen hier nur mit dem Motor im Schubbetrieb, ohne Dauerbremse."
        }
    }
}

/// What faster would mean depends on what there is at this speed.
fn control(advice: &Advice, reserve: &str) -> String {
    if advice.stage.is_off() {
        return engine_alone(advice.verdict, reserve);
    }
    match advice.verdict {
        Verdict::RetarderHolds => {
            format!(
                "Haltekraft: In jedem schnelleren Gang würde die Dauerbremse das Fahrzeug nicht mehr mit {reserve} Reserve halten, oder ein kurzes steiles Stück würde der Betriebsbremse zu viel abverlangen."
            )
        }
        Verdict::LittleInReserve => format!(
            "Haltekraft: Bei keiner Geschwindigkeit sind {reserve} Reserve vorhanden; schneller würde die Dauerbremse noch weniger halten."
        ),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => {
            "Haltekraft: Hier halten Motor und Dauerbremse das Fahrzeug nicht allein; schneller würden sie noch weniger davon aufbringen."
                .to_owned()
        }
    }
}

/// The same where no stage is called for, or there is no retarder.
fn engine_alone(verdict: Verdict, reserve: &str) -> String {
    match verdict {
        Verdict::RetarderHolds => format!("Haltekraft: In jedem schnelleren Gang würde das Fahrzeug nicht mehr mit {reserve} Reserve gehalten, oder ein kurzes steiles Stück würde der Betriebsbremse zu viel abverlangen."),
        Verdict::LittleInReserve => format!("Haltekraft: In jedem schnelleren Gang würde das Fahrzeug überhaupt nicht gehalten. Schon hier ist die Reserve von {reserve} nicht vorhanden."),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => "Haltekraft: Bei höherer Geschwindigkeit würde der Motor allein weniger als die Hälfte der nötigen Haltekraft aufbringen, gleich wie heiß die Bremsen sind.".to_owned(),
    }
}
