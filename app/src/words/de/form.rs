//! German words of the truck's form.

use super::German;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for German {
    fn preset_hint(&self) -> &'static str {
        "Nehmen Sie das Fahrzeug, das Ihrem am ähnlichsten ist. Seine Werte gelten, bis Sie eigene eingeben."
    }
    fn on_plate(&self) -> &'static str {
        "Auf Typenschildern und in den Papieren"
    }
    fn in_head(&self) -> &'static str {
        "Was Sie als Fahrer wissen"
    }
    fn rest_sentence(&self) -> &'static str {
        "Das ist angenommen, bis Sie es eingeben. Bei jedem Wert steht, was ein falscher auf der gezeigten Strecke kostet, am entscheidenden Gefälle."
    }
    fn top_gear_speed(&self, units: Units) -> &'static str {
        match units {
            Units::Metric => "Motordrehzahl bei 80 km/h im höchsten Gang",
            Units::Imperial => "Motordrehzahl bei 50 mph im höchsten Gang",
        }
    }
    fn is_axle_ratio(&self, ratio: &str) -> String {
        format!("Das ist eine Achsübersetzung von {ratio}.")
    }
    fn no_axle_ratio(&self, ratio: &str, range: &str) -> String {
        format!(
            "Mit diesen Gängen und Reifen wäre das eine Achsübersetzung von {ratio}; Achsen haben {range}. Prüfen Sie Motordrehzahl, höchsten Gang und Reifen."
        )
    }
    fn tyre_hint(&self) -> &'static str {
        "Sie steht auf der Reifenflanke. Abgefahrene Reifen rollen etwas kürzer."
    }
    fn gear_set_hint(&self) -> &'static str {
        "Zählen Sie die Vorwärtsgänge. „Schnellgang“: Im höchsten Gang dreht die Kardanwelle schneller als der Motor."
    }
    fn transmission_hint(&self) -> &'static str {
        "Automatisiert: kein Kupplungspedal, aber eine Kupplung. Wandler: fährt ohne Kupplung an."
    }
    fn on_shaft(&self, it: OnShaft) -> &'static str {
        match it {
            OnShaft::Nothing => "keiner",
            OnShaft::Hydrodynamic => "Retarder mit Flüssigkeit",
            OnShaft::Electromagnetic => "Retarder mit Magneten",
            OnShaft::EngineTable => "eigene Tabelle, am Motor",
            OnShaft::ShaftTable => "eigene Tabelle, an der Kardanwelle",
        }
    }
    fn on_shaft_hint(&self) -> &'static str {
        "Ein Gerät am Getriebe oder an der Kardanwelle. Das mit Flüssigkeit erwärmt das Kühlwasser; das mit Magneten hat einen schweren Rotor mit Rippen."
    }
    fn at_engine_label(&self) -> &'static str {
        "Dazu eine Motorbremse?"
    }
    fn at_engine(&self, it: AtEngine) -> &'static str {
        match it {
            AtEngine::Nothing => "keine",
            AtEngine::ExhaustFlap => "Auspuffklappe",
            AtEngine::Compression => "Dekompressionsbremse",
        }
    }
    fn at_engine_hint(&self) -> &'static str {
        "Auspuffklappe: eine Klappe im Auspuffrohr. Dekompressionsbremse: Die Auslassventile arbeiten, hörbar laut. Im Zweifel die Klappe: Sie hält weniger."
    }
    fn lever_label(&self) -> &'static str {
        "Stufen am Hebel, ohne „aus“"
    }
    fn lever_hint(&self) -> &'static str {
        "Jede Stufe gilt als gleich groß. Die Anteile lassen sich unten eingeben."
    }
    fn own_lever(&self) -> &'static str {
        "wie unten eingegeben"
    }
    fn shape_label(&self) -> &'static str {
        "Leistung der Motorbremse über der Motordrehzahl"
    }
    fn shape(&self, by_exponent: bool) -> &'static str {
        if by_exponent { "nach einem Exponenten" } else { "wie Motoren sie angeben" }
    }
    fn shape_hint(&self) -> &'static str {
        "Wie Motoren sie angeben, solange Sie keine eigenen Zahlen haben."
    }
    fn axles_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Gelenkte Achsen",
            AxlePlace::Drive => "Antriebsachsen und was bei ihnen sitzt",
            AxlePlace::Trailer => "Achsen des Anhängers",
        }
    }
    fn brakes_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Bremsen der gelenkten Achsen",
            AxlePlace::Drive => "Bremsen der Antriebsachsen",
            AxlePlace::Trailer => "Bremsen des Anhängers",
        }
    }
    fn brake(&self, kind: BrakeKind) -> &'static str {
        match kind {
            BrakeKind::Drum => "Trommel",
            BrakeKind::Disc => "Scheibe",
        }
    }
    fn without_trailer(&self) -> &'static str {
        "ohne Anhänger"
    }
    fn axles_hint(&self) -> &'static str {
        "Zählen Sie die gebremsten Achsen. Wie sie sich die Arbeit teilen, ist angenommen."
    }
    fn wrong_by(&self, by: &str) -> String {
        format!("{by} falsch")
    }
    fn so_many_gears(&self, gears: u8) -> String {
        if gears == 1 { "1\u{a0}Gang".to_owned() } else { format!("{gears}\u{a0}Gänge") }
    }
    fn so_many_stages(&self, stages: u8) -> String {
        if stages == 1 { "1\u{a0}Stufe".to_owned() } else { format!("{stages}\u{a0}Stufen") }
    }
    fn no_other(&self) -> &'static str {
        "weder Gang noch Geschwindigkeit ändern sich"
    }
    fn other_verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "die Dauerbremse würde es halten",
            Verdict::LittleInReserve => "wenig Reserve",
            Verdict::NeedsServiceBrakes => "braucht die Betriebsbremsen",
            Verdict::NoSafeSpeed => "keine sichere Geschwindigkeit",
        }
    }
    fn worth_waits(&self) -> &'static str {
        "Was ein falscher Wert kostet, steht hier, sobald ein Plan gezeigt wird."
    }
    fn worth_at_work(&self) -> &'static str {
        "Was ein falscher Wert kostet, wird berechnet."
    }
    fn worth_no_descent(&self) -> &'static str {
        "Was ein falscher Wert kostet: Diese Strecke hat kein Gefälle, an dem es sich zeigt."
    }
    fn worth_not(&self) -> &'static str {
        "Was ein falscher Wert kostet, ließ sich nicht berechnen."
    }
}
