//! German words of exercises with worked answers.

use super::German;
use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried};
use crate::words::say::capital;
use crate::words::{ExerciseWords, PlanWords, Term};
use solver::truck::{AxlePlace, Gear};

impl ExerciseWords for German {
    fn exercise_head(&self) -> &'static str {
        "Übungsaufgaben"
    }
    fn exercise_sentence(&self) -> &'static str {
        "Rechenaufgaben zu den Gefällestrecken dieser Strecke, für das Fahrzeug und die Bedingungen wie eingegeben, mit anderen Massen, Neigungen und Geschwindigkeiten. Drucken Sie ein Blatt zum Bearbeiten und eines mit Lösungen."
    }
    fn sheet_head(&self, seed: u32) -> String {
        format!("Übungsaufgaben, Satz {seed}")
    }
    fn blank_sheet(&self) -> &'static str {
        "Blatt zum Bearbeiten"
    }
    fn answer_sheet(&self) -> &'static str {
        "Blatt mit Lösungen"
    }
    fn another_set(&self) -> &'static str {
        "Anderer Satz"
    }
    fn sheet_caution(&self) -> &'static str {
        "Diese Zahlen dienen dem Unterricht. Sie sind keine Empfehlung für eine Strecke, ein Fahrzeug oder eine Ladung: Massen, Neigungen und Geschwindigkeiten sind verändert, und vieles ist weggelassen."
    }
    fn no_exercises(&self) -> &'static str {
        "Keine Gefällestrecke hier ist lang genug für Übungsaufgaben."
    }
    fn stages_left_out(&self) -> &'static str {
        "Unter diesen Bedingungen wird keine Stufe der Dauerbremse empfohlen. Aufgaben zu Gang und Stufe sind weggelassen."
    }
    fn exercise(&self, number: usize, exercise: &Exercise) -> String {
        let subject = match exercise {
            Exercise::ControlSpeed(_) => "Wo sich das Fahrzeug einpendelt",
            Exercise::GearChoice(_) => "Wahl des Gangs",
            Exercise::BrakingWork(_) => "Bremsarbeit",
            Exercise::Haste(_) => "Zeitgewinn durch schnelleres Fahren",
            Exercise::BrakeHeat(_) => "Wärme der Bremsen",
        };
        format!("Aufgabe {number}: {subject}")
    }
    fn given_label(&self) -> &'static str {
        "Gegeben"
    }
    fn room_label(&self) -> &'static str {
        "Ihr Rechenweg und Ihre Antwort"
    }
    fn steps_label(&self) -> &'static str {
        "Rechenweg"
    }
    fn solution_label(&self) -> &'static str {
        "Antwort"
    }
    fn ask_control_speed(&self, it: &ControlSpeed, mass: &str, grade: &str) -> String {
        format!(
            "Ein Fahrzeug mit {mass} fährt auf einem Gefälle von {grade}: {}, {}, ohne Gas und ohne Betriebsbremse. Pendelt es sich bei einer Geschwindigkeit ein, und bei welcher?",
            self.gear(it.gear),
            self.stage(it.stage)
        )
    }
    fn ask_gear(&self, mass: &str, grade: &str, reserve: &str) -> String {
        format!(
            "Motor und Dauerbremse allein sollen ein Fahrzeug mit {mass} auf einem Gefälle von {grade} mit {reserve} Reserve halten. Unten stehen Gänge bei der höchsten Geschwindigkeit, bei der jeder zum Halten benutzt wird, mit Motordrehzahl und Haltekraft der stärksten Stufe, die die Haftung der Antriebsachsen zulässt. Welches ist der höchste Gang, der die Reserve einhält, und bei welcher Geschwindigkeit?"
        )
    }
    fn ask_work(&self, mass: &str, drop: &str, length: &str, speed: &str, share: &str) -> String {
        format!(
            "Ein Fahrzeug mit {mass} fährt auf {length} Strecke {drop} hinunter, gleichmäßig mit {speed}. Wie viel Energie müssen Motor, Dauerbremse und Betriebsbremse aufnehmen? Motor und Dauerbremse übernehmen davon {share}: Wie viel bleibt für die Betriebsbremse?"
        )
    }
    fn ask_time(&self, length: &str, fast: &str, slow: &str) -> String {
        format!(
            "Eine Gefällestrecke ist {length} lang. Wie viel Zeit gewinnt ein Fahrzeug, das sie mit {fast} statt mit {slow} hinunterfährt? Um wie viel wächst seine Bewegungsenergie?"
        )
    }
    fn ask_heat(&self, it: &BrakeHeat, length: &str, speed: &str, power: &str) -> String {
        format!(
            "Auf einer Gefällestrecke von {length}, gleichmäßig mit {speed}, nimmt die Betriebsbremse die ganze Zeit {power} auf; den Rest übernehmen Motor und Fahrwiderstände. Wie warm sind die Bremsen {} am Fuß?",
            place(it)
        )
    }
    fn settles(&self, speed: &str, engine_speed: &str) -> String {
        format!(
            "Es pendelt sich bei etwa {speed} ein ({engine_speed}): Dort ist die Haltekraft so groß wie das, was zu halten bleibt."
        )
    }
    fn slows_down(&self) -> &'static str {
        "Es pendelt sich nicht ein: Die Haltekraft ist bei jeder Geschwindigkeit dieses Gangs größer als nötig, und es wird langsamer. Eine schwächere Stufe oder ein höherer Gang kann genügen."
    }
    fn gets_away_above(&self, speed: &str) -> String {
        format!(
            "Es pendelt sich nicht ein: Unter etwa {speed} ist die Haltekraft größer als nötig, darüber wird es schneller. Ist es erst schneller, fängt nichts es wieder ein. Nötig ist ein niedrigerer Gang, eingelegt vor der Kuppe; sonst muss die Betriebsbremse helfen."
        )
    }
    fn gets_away(&self) -> &'static str {
        "Es pendelt sich nicht ein: Es wird bei jeder Geschwindigkeit dieses Gangs schneller. Nötig ist ein niedrigerer Gang, eingelegt vor der Kuppe, oder, wenn es sie gibt, eine stärkere Stufe; sonst muss die Betriebsbremse helfen."
    }
    fn gear_chosen(&self, tried: &GearTried, speed: &str, engine_speed: &str, reserve: &str) -> String {
        format!(
            "{}, {}, bei höchstens {speed} ({engine_speed}), mit {reserve} Reserve. Der Gang wird vor der Kuppe eingelegt.",
            capital(&self.gear(tried.gear)),
            self.stage(tried.stage)
        )
    }
    fn no_gear_keeps(&self) -> &'static str {
        "Keiner: Auch der niedrigste Gang hält die Reserve nicht ein. Ein solches Fahrzeug darf dort nicht hinunterfahren: weniger Masse oder eine andere Strecke."
    }
    fn work_left(&self, left: &str, service: &str) -> String {
        format!("Etwa {left} sind aufzunehmen; davon bleiben etwa {service} für die Betriebsbremse.")
    }
    fn time_saved(&self, time: &str, times: &str) -> String {
        format!(
            "Etwa {time}, und die Bewegungsenergie ist das {times}-Fache: So viel mehr nehmen die Bremsen bei jedem Stopp auf. Ob Motor und Dauerbremse das Fahrzeug bei dieser Geschwindigkeit halten würden, ist hier nicht gefragt."
        )
    }
    fn warm_at_foot(&self, foot: &str, limit: &str, over: bool) -> String {
        let kept = if over {
            format!("über der eingegebenen Grenze von {limit}")
        } else {
            format!("nicht über der eingegebenen Grenze von {limit}, aber ohne Vorrat für einen Stopp")
        };
        format!(
            "Etwa {foot} am Fuß: {kept}. Weggelassen sind: ein Stopp, ungleich verteilte Bremsung, die Bremseneinstellung, Strahlung und dass die Kühlung von Fahrzeug zu Fahrzeug um den Faktor zwei und mehr abweicht."
        )
    }
    fn term(&self, term: Term) -> &'static str {
        match term {
            Term::RollingCoefficient => "Rollwiderstandsbeiwert",
            Term::DragArea => "Luftwiderstandsfläche",
            Term::AirDensity => "Dichte der Luft",
            Term::AirDensityRatio => "Dichte der Luft, geteilt durch die auf Meereshöhe",
            Term::Headwind => "Gegenwind (Rückenwind ist negativ)",
            Term::HoldingTable => "Haltekraft nach Motordrehzahl und Geschwindigkeit",
            Term::HeatCapacity => "Wärme, die diese Bremsen speichern",
            Term::Cooling => "Wärme, die sie bei dieser Geschwindigkeit abgeben",
            Term::GroupShare => "Ihr Anteil an der Bremsung",
            Term::AirTemperature => "Luft",
            Term::BrakesAtCrest => "Bremsen an der Kuppe",
            Term::Sine => "Sinus des Neigungswinkels",
            Term::Cosine => "Kosinus des Winkels",
            Term::Gravity => "Hangabtriebskraft",
            Term::Rolling => "Rollwiderstand",
            Term::AgainstAir => "Geschwindigkeit gegen die Luft",
            Term::Air => "Luftwiderstand",
            Term::Demand => "Bleibt zu halten",
            Term::HoldingAgainstDemand => "Haltekraft im Vergleich mit dem, was zu halten bleibt",
            Term::ComparedAt => "Gerechnet bei",
            Term::LengthInFeet => "Länge in Fuß",
            Term::GravityWork => "Arbeit der Schwerkraft",
            Term::RollingWork => "Davon nimmt der Rollwiderstand",
            Term::AirWork => "Davon nimmt der Luftwiderstand",
            Term::WorkLeft => "Bleibt aufzunehmen",
            Term::CarriedWork => "Motor und Dauerbremse",
            Term::ServiceWork => "Betriebsbremse",
            Term::SlowTime => "Zeit bei der niedrigeren Geschwindigkeit",
            Term::FastTime => "Zeit bei der höheren Geschwindigkeit",
            Term::TimeSaved => "Zeitgewinn",
            Term::MotionEnergy => "Bewegungsenergie, höhere durch niedrigere Geschwindigkeit",
            Term::GroupPower => "Leistung an diesen Bremsen",
            Term::TimeDown => "Dauer der Talfahrt",
            Term::TimeConstant => "Zeitkonstante: gespeicherte durch abgegebene Wärme",
            Term::Settled => "Temperatur, die sie auf Dauer erreichen würden",
            Term::Ahead => "Anteil dieses Anstiegs, der am Fuß noch aussteht",
            Term::AtFoot => "Am Fuß",
        }
    }
    fn gear_at(&self, gear: Gear, speed: &str) -> String {
        format!("{} bei {speed}", self.gear(gear))
    }
    fn enough(&self, enough: bool) -> &'static str {
        if enough { "genug" } else { "zu wenig" }
    }
}

fn place(it: &BrakeHeat) -> &'static str {
    match (it.place, it.axles) {
        (AxlePlace::Steer, 1) => "der Lenkachse",
        (AxlePlace::Steer, _) => "der Lenkachsen",
        (AxlePlace::Drive, 1) => "der Antriebsachse",
        (AxlePlace::Drive, _) => "der Antriebsachsen",
        (AxlePlace::Trailer, 1) => "der Anhängerachse",
        (AxlePlace::Trailer, _) => "der Anhängerachsen",
    }
}
