//! German words of the truck's form.

use super::German;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::limits::Entry;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for German {
    fn hint(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Fahrzeug, Anhänger und Ladung zusammen. Lassen Sie es wiegen, wenn möglich.",
            Entry::RetarderPeakPower => "Alle Stufen ein, bei der günstigsten Motordrehzahl; 0 für keine.",
            Entry::HighestEngineSpeed => "Wie vom Hersteller erlaubt, wenn die Räder den Motor antreiben.",
            Entry::Reserve => "Mehr Haltekraft als nötig, vorgehalten für Fehler bei Gewicht und Neigung.",
            Entry::Headwind => "Rückenwind ist negativ und schiebt.",
            Entry::HeatLimit => {
                "Höchste Bremsentemperatur, eine kräftige Bremsung bis zum Stillstand eingeschlossen."
            }
            Entry::BrakesAtStart => "Höher, wenn Sie von einem anderen Gefälle kommen.",
            Entry::SpeedLimit => "Laut Schild oder Ihre eigene.",
            Entry::RollingResistance => {
                "Das untere Ende: Mit leicht rollenden Reifen schiebt das Fahrzeug bergab stärker."
            }
            Entry::RolloverThreshold => {
                "In g, vom Kipptisch; mit hoher oder loser Ladung kippt es schon bei weniger. Im Zweifel niedriger."
            }
            Entry::Superelevation => "Wie weit Kurven nach innen geneigt sind; 0, wenn Sie es nicht wissen.",
            Entry::RetarderDelay => "So lange nach dem Schließen der Kupplung setzt sie wieder ein.",
            Entry::RetardingScale => "100, solange nicht gemessen wurde, was heute gehalten hat.",
            Entry::ShortPower => "Was er für die kurze Zeit unten leistet, wenn er kalt beginnt.",
            Entry::SustainedPower => {
                "Was das Kühlwasser des Motors auf Dauer abführt. Damit rechnen die Pläne."
            }
            Entry::SustainedSpeed => "Darunter wird das Kühlwasser langsamer gepumpt und führt weniger ab.",
            Entry::HotShare => {
                "Bremsmoment des heißen Retarders im Verhältnis zum kalten. Die Pläne rechnen mit dem heißen."
            }
            Entry::LockUpGear => "In niedrigeren Gängen ist der Wandler offen, und der Motor hält nichts.",
            Entry::ShiftsUpSpeed => {
                "Darüber schaltet es hoch, und der Retarder fällt aus; meist die Abregeldrehzahl."
            }
            Entry::BrakeCheckStop => {
                "Zeit zum Abkühlen an jedem Bremskontrollplatz der Strecke; bei 0 wird vorbeigefahren."
            }
            Entry::ShaftTorque => "Alle Stufen ein, kalt, bei der Wellendrehzahl unten.",
            Entry::ShaftSpeed => "Drehzahl der Kardanwelle, bei der das Bremsmoment oben gemessen ist.",
            Entry::ShortTime => {
                "So lange reicht sie aus dem kalten Zustand, bis das Kühlwasser sie begrenzt."
            }
            Entry::WarmUpTime => {
                "Nach so langem Einsatz hat er zwei Drittel dessen verloren, was er insgesamt verliert."
            }
            Entry::LockUpSpeed => "Darunter öffnet der Wandler, und der Motor hält nichts.",
            Entry::DriveAxleMass => {
                "Was auf den Antriebsachsen lastet: Davon hängt ab, wie viel sie halten können."
            }
            Entry::RollingRadius => {
                "Weg einer Umdrehung des belasteten Rades, geteilt durch 2π; die Liste der Reifengrößen trägt ihn ein."
            }
            Entry::WheelInertia => "Aller Räder zusammen; es lässt das Fahrzeug schwerer wirken.",
            Entry::DragArea => {
                "Luftwiderstandsbeiwert mal Stirnfläche; ist sie kleiner, schiebt das Fahrzeug bergab stärker."
            }
            Entry::Displacement => {
                "Von allen Zylindern zusammen: In diesem Verhältnis hält der Motor im Schubbetrieb."
            }
            Entry::LowestEngineSpeed => "Darunter wird mit Motor und Dauerbremse nicht gerechnet.",
            Entry::AxleRatio => {
                "Umdrehungen der Kardanwelle für eine der Räder; sie steht auf dem Typenschild der Achse."
            }
            Entry::AxleEfficiency => {
                "Verluste helfen beim Halten: Eine Achse mit weniger Verlusten hält weniger."
            }
            Entry::RetarderPeakSpeed => "Motordrehzahl, bei der sie am meisten hält.",
            Entry::RetarderExponent => {
                "Ihre Leistung fällt mit dieser Potenz der Motordrehzahl: je größer, desto schneller."
            }
            Entry::RetarderCutOut => "Unter dieser Motordrehzahl schaltet sie sich selbst ab.",
            Entry::AirTemperature => {
                "Kalte Luft ist dichter; die Bremsen kühlen bis auf diese Temperatur ab."
            }
            Entry::RatedPower => {
                "Wie auf dem Typenschild des Motors oder in den Papieren; Zugkraft und angenommene Dauerbremse folgen ihr."
            }
            Entry::GovernedSpeed => {
                "Hier nimmt der Regler den Kraftstoff weg, und etwa hier schaltet ein Getriebe selbst hoch. Die Räder dürfen den Motor schneller drehen: siehe oben."
            }
            Entry::TopGearSpeed => {
                "Auf ebener Strecke vom Drehzahlmesser abgelesen. Daraus folgt die Achsübersetzung."
            }
        }
    }
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
