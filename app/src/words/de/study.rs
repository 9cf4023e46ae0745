//! German words of what follows from a plan.

use super::German;
use crate::format;
use crate::words::StudyWords;
use solver::study::{Input, NotMeasured};
use solver::truck::AxlePlace;

impl StudyWords for German {
    fn change_label(&self) -> &'static str {
        "Was es ändern würde"
    }
    fn light_enough(&self, mass: &str) -> String {
        format!("Mit {mass} oder weniger würde die Dauerbremse es mit der Reserve halten.")
    }
    fn no_lighter_load(&self) -> &'static str {
        "Keine leichtere Ladung würde das ändern."
    }
    fn more_retarding(&self, share: &str) -> String {
        format!(
            "Mit {share} mehr Dauerbremsleistung, als dieses Fahrzeug hat, ließe es sich mit der Reserve halten."
        )
    }
    fn reserve_kept(&self, kept: &str, asked: &str) -> String {
        format!("So wie es ist, bleiben höchstens {kept} Reserve, nicht {asked}.")
    }
    fn cool_enough(&self, at: &str) -> String {
        format!(
            "Mit Bremsen, die an der Kuppe nicht wärmer als {at} sind, würde die Grenze eingehalten: Lassen Sie sie erst abkühlen."
        )
    }
    fn carried_label(&self) -> &'static str {
        "In die nächste Steigung"
    }
    fn meets_rise(&self, at: &str, speed: &str) -> String {
        format!(
            "So bis zum Fuß gehalten, fährt es bei {at} mit etwa {speed} in die Steigung. Für mehr Schwung nicht früher lösen."
        )
    }
    fn sure_label(&self) -> &'static str {
        "Wie sicher"
    }
    fn driven_so(&self, runs: usize) -> String {
        format!(
            "{runs} Mal gefahren, Neigungen, Masse, Widerstände, Wind, Dauerbremse und Bremsen jedes Mal etwas anders."
        )
    }
    fn in_none(&self, runs: usize) -> String {
        format!("in keiner von {runs} Fahrten")
    }
    fn in_all(&self, runs: usize) -> String {
        format!("in allen {runs} Fahrten")
    }
    fn in_some(&self, some: usize, runs: usize) -> String {
        format!("in {some} von {runs} Fahrten")
    }
    fn speed_held(&self, of: &str) -> String {
        format!("Die Dauerbremse allein hielt die Geschwindigkeit {of}.")
    }
    fn limit_kept(&self, of: &str) -> String {
        format!("Die Bremsen hielten, mit einer kräftigen Bremsung bis zum Stillstand, die Grenze ein {of}.")
    }
    fn nine_of_ten(&self, cool: &str, hot: &str) -> String {
        format!(
            "In neun von zehn Fahrten hatten die Bremsen nach einer kräftigen Bremsung bis zum Stillstand zwischen {cool} und {hot}."
        )
    }
    fn spread_from(&self, inputs: &str) -> String {
        format!("Diese Spanne bestimmen vor allem: {inputs}.")
    }
    fn input(&self, input: Input) -> &'static str {
        match input {
            Input::Grade => "die Neigungen",
            Input::Mass => "die Masse",
            Input::Rolling => "der Rollwiderstand",
            Input::Drag => "der Luftwiderstand",
            Input::Retarder => "was die Dauerbremse leistet",
            Input::Wind => "der Wind",
            Input::BrakesAtStart => "die Bremsen am Anfang",
            Input::Cooling => "wie viel Wärme die Bremsen speichern und abgeben",
        }
    }
    fn and_then(&self) -> &'static str {
        ", dann "
    }
    fn too_long_to_be_sure(&self) -> &'static str {
        "Diese Strecke ist zu lang, um sie 256 Mal zu fahren: Berechnen Sie einen Teil davon, um zu sehen, wie sicher der Plan ist."
    }
    fn studying(&self, share: f32) -> String {
        format!("Berechnet, wie sicher das ist: {}", format::share(f64::from(share)))
    }
    fn not_yet(&self) -> &'static str {
        "…"
    }
    fn lost_label(&self) -> &'static str {
        "Wenn die Dauerbremse ausfällt"
    }
    fn stops_anywhere(&self) -> &'static str {
        "Beginnt kräftiges Bremsen innerhalb von zwei Sekunden, kommt das Fahrzeug von jeder Stelle aus innerhalb der Wärmegrenze zum Stehen."
    }
    fn stops_until(&self, until: &str) -> String {
        format!(
            "Beginnt kräftiges Bremsen innerhalb von zwei Sekunden, kommt das Fahrzeug bis {until} innerhalb der Wärmegrenze zum Stehen; dahinter nicht mehr."
        )
    }
    fn stops_nowhere(&self) -> &'static str {
        "Nicht einmal an der Kuppe würde eine kräftige Bremsung bis zum Stillstand die Wärmegrenze einhalten."
    }
    fn brakes_hold(&self) -> &'static str {
        "Die Betriebsbremse könnte es auch bis zum Fuß innerhalb der Grenze bei seiner Geschwindigkeit halten."
    }
    fn brakes_hold_from(&self, from: &str) -> String {
        format!(
            "Erst ab {from} könnte die Betriebsbremse es bis zum Fuß bei seiner Geschwindigkeit halten; davor: anhalten."
        )
    }
    fn brakes_hold_nowhere(&self) -> &'static str {
        "Die Betriebsbremse könnte es nicht bis zum Fuß halten: anhalten."
    }
    fn neither_from(&self, from: &str) -> String {
        format!("Ab {from} würde weder das eine noch das andere die Grenze einhalten.")
    }
    fn ramp_met(&self, at: &str, lost_at: &str, speed: &str, needs: &str) -> String {
        format!(
            "Notfallspur bei {at}: Von {lost_at} an ganz ohne Bremsen rollend, würde es sie mit etwa {speed} erreichen; ein ebenes Bett aus losem Rundkies müsste etwa {needs} lang sein."
        )
    }
    fn no_ramp_entered(&self) -> &'static str {
        "Auf dieser Gefällestrecke ist keine Notfallspur eingetragen; das heißt nicht, dass es keine gibt."
    }
    fn adjustment_label(&self) -> &'static str {
        "Verstellte Bremsen"
    }
    fn long_stroke(&self, at: &str, shorter: &str, short: &str) -> String {
        format!(
            "Hätten die Trommelbremsen einer Achsgruppe kalt einen Hub von 1¾ Zoll (44 mm), käme ein Bremszylinder der Größe 30 bei {at} an seine Grenze von 2 Zoll (51 mm): Darüber zählen sie hier nicht, und die anderen sind heißer. Bei 1⅝ Zoll (41 mm) sind es {shorter}, bei 1½ Zoll (38 mm) {short}."
        )
    }
    fn half_braked(&self) -> &'static str {
        "Würden die Scheibenbremsen einer Achsgruppe nur halb so stark bremsen, wären die anderen auf der ganzen Strecke heißer."
    }
    fn out_of_adjustment(&self, axles: &str, heat: &str, over: &str) -> String {
        format!("{axles}: etwa {heat} nach einer kräftigen Bremsung bis zum Stillstand{over}.")
    }
    fn axles(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Lenkachse",
            AxlePlace::Drive => "Antriebsachsen",
            AxlePlace::Trailer => "Anhänger",
        }
    }
    fn slowing_label(&self) -> &'static str {
        "Langsamer werden für das, was kommt"
    }
    fn slowing_sentence(&self) -> &'static str {
        "Ab dort vom Gas und auf voller Stufe bringt die Dauerbremse allein dieses Fahrzeug auf die Geschwindigkeit, und die Bremsen bleiben kühl. Schilder und was Sie sehen, gehen vor."
    }
    fn slowing_heads(&self) -> [&'static str; 6] {
        ["bei", "wofür", "auf", "volle Stufe ab", "im Gang", "Betriebsbremse allein"]
    }
    fn full_stage_from(&self, from: &str, speed: &str) -> String {
        format!("{from}, mit {speed}")
    }
    fn rest_below(&self, speed: &str) -> String {
        format!("; unter {speed} die Betriebsbremse")
    }
    fn brake_early(&self) -> &'static str {
        "reicht nicht: früh bremsen"
    }
    fn standstill(&self) -> &'static str {
        "Halt"
    }
    fn by_brakes_alone(&self, way: &str, after: &str) -> String {
        format!("{way}, dann etwa {after}")
    }
    fn curve_of(&self, radius: &str) -> String {
        format!("Kurve, Radius etwa {radius}")
    }
    fn place_to_stop(&self) -> &'static str {
        "Halt, Ampel oder Kreuzung"
    }
    fn town(&self) -> &'static str {
        "Ortschaft"
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Und 1 weitere Stelle, die weniger verlangt.".to_owned()
        } else {
            format!("Und {count} weitere Stellen, die weniger verlangen.")
        }
    }
    fn driven_in_short(&self, runs: usize) -> String {
        format!("Gefahren {runs} Mal, Neigungen, Masse, Wind, Dauerbremse und Bremsen jedes Mal etwas anders")
    }
    fn held_and_kept(&self) -> &'static str {
        "Die Dauerbremse hielt es jedes Mal, und die Bremsen hielten die Grenze ein."
    }
    fn shares_held(&self, held: &str, kept: &str) -> String {
        format!(
            "Die Dauerbremse allein hielt es in {held} der Fahrten, die Bremsen hielten die Grenze in {kept} der Fahrten ein."
        )
    }
    fn evidence_head(&self) -> &'static str {
        "Belege"
    }
    fn evidence_sentence(&self) -> &'static str {
        "Woran die Rechnung gemessen wird: Werte von außerhalb dieses Projekts, jeder mit seiner Quelle und wie wir an ihn kamen, und was hier herauskommt. Dieselben Zeilen sind die Tests des Projekts. Sie stehen auf Englisch."
    }
    fn evidence_count(&self, rows: usize, known: usize) -> String {
        format!(
            "{rows} Werte; {known} davon weichen von ihrer Quelle um mehr als deren Toleranz ab und sind so gekennzeichnet."
        )
    }
    fn evidence_heads(&self) -> [&'static str; 4] {
        ["was", "die Quelle hat", "hier", "Unterschied"]
    }
    fn evidence_difference(&self) -> &'static str {
        "weicht ab"
    }
    fn evidence_missing(&self) -> &'static str {
        "Die Zeilen konnten nicht geladen werden. Öffnen Sie dies noch einmal, oder laden Sie die Seite neu."
    }
    fn measured_head(&self) -> &'static str {
        "Was heute gehalten hat"
    }
    fn measured_sentence(&self) -> &'static str {
        "Sie haben an einem Berg mit der Dauerbremse allein eine gleichmäßige Geschwindigkeit gehalten, ohne Gas und ohne Betriebsbremse? Geben Sie danach, im Stand, ein, was Sie gesehen haben: Es sagt, was Ihre Dauerbremse bei der Masse und den Bedingungen oben wirklich leistet."
    }
    fn measured_fields(&self) -> [&'static str; 6] {
        [
            "Gang",
            "Stufe",
            "Motordrehzahl",
            "Gleichmäßige Geschwindigkeit",
            "Neigung, bergab",
            "oder: Stelle auf der gezeigten Strecke",
        ]
    }
    fn measured_place_hint(&self) -> &'static str {
        "Wo eine Stelle angegeben ist, gelten Neigung und Höhe dort."
    }
    fn measure(&self) -> &'static str {
        "Berechnen"
    }
    fn measured_missing(&self) -> &'static str {
        "Geben Sie Gang, Stufe, Motordrehzahl und gleichmäßige Geschwindigkeit ein, dazu eine Neigung bergab oder eine Stelle auf einer Gefällestrecke der gezeigten Strecke, alles als Zahlen."
    }
    fn held_with(&self, engine_speed: &str, power: &str, assumed: &str, share: &str) -> String {
        format!(
            "Bei {engine_speed} hielt sie mit {power}; die Fahrzeugdaten ergeben {assumed}. Das sind {share} dessen, was sie für die Dauerbremse angeben."
        )
    }
    fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => "Dieses Fahrzeug hat keinen solchen Gang oder keine solche Stufe.".to_owned(),
            NotMeasured::Off => "Mit ausgeschalteter Dauerbremse ist über sie nichts zu erfahren: Geben Sie eine Stufe ein.".to_owned(),
            NotMeasured::NotPushed => {
                "Diese Neigung schiebt dieses Fahrzeug bei dieser Geschwindigkeit nicht: Geben Sie ein steileres Stück ein.".to_owned()
            }
            NotMeasured::GaugesDiffer(turning) => format!(
                "In diesem Gang würde der Motor bei dieser Geschwindigkeit mit etwa {} drehen: Gang, Achsübersetzung, Reifen oder eine der beiden Angaben stimmt nicht.",
                format::engine_speed(turning.0)
            ),
            NotMeasured::OutOfReach(factor) => format!(
                "Die Dauerbremse müsste {} dessen leisten, was ihre Daten angeben. Eher sind Masse, Neigung oder Stufe nicht wie eingegeben, oder die Betriebsbremse hat geholfen.",
                format::share(*factor)
            ),
        }
    }
    fn use_measured(&self) -> &'static str {
        "Damit planen"
    }
    fn undo_measured(&self) -> &'static str {
        "Zurück zu den Fahrzeugdaten"
    }
    fn scale_in_use(&self, scale: f64) -> String {
        format!("Pläne rechnen mit {} der Daten der Dauerbremse.", format::share(scale))
    }
}
