//! German words of what follows from a plan.

use super::German;
use crate::format::{self, Units};
use crate::words::StudyWords;
use crate::words::say::{enough_percent, name_or, radius};
use solver::plan::{Carried, Change};
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing,
};
use solver::truck::AxlePlace;

impl StudyWords for German {
    fn change_label(&self) -> &'static str {
        "Was es ändern würde"
    }
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
        let mass = match change.mass {
            Some(mass) => format!(
                "Mit {} oder weniger würde die Dauerbremse es mit der Reserve halten.",
                format::mass_at_most(mass.0, units)
            ),
            None => "Keine leichtere Ladung würde das ändern.".to_owned(),
        };
        let retarding = change.retarding.map(|factor| {
            format!(
                "Mit {} mehr Dauerbremsleistung, als dieses Fahrzeug hat, ließe es sich mit der Reserve halten.",
                enough_percent(factor - 1.0)
            )
        });
        let kept = change.reserve.map(|kept| {
            let (kept, asked) = (format::margin(kept), format::margin(reserve));
            format!("So wie es ist, bleiben höchstens {kept} Reserve, nicht {asked}.")
        });
        let cool = change.cool_to.map(|at| {
            let at = format::entered_temperature(at.0, units);
            format!(
                "Mit Bremsen, die an der Kuppe nicht wärmer als {at} sind, würde die Grenze eingehalten: Lassen Sie sie erst abkühlen."
            )
        });
        [Some(mass), retarding, kept, cool].into_iter().flatten().collect()
    }
    fn carried_label(&self) -> &'static str {
        "In die nächste Steigung"
    }
    fn carried(&self, carried: Carried, units: Units) -> String {
        format!(
            "So bis zum Fuß gehalten, fährt es bei {} mit etwa {} in die Steigung. Für mehr Schwung nicht früher lösen.",
            format::distance(carried.at.0, units),
            format::met_speed(carried.speed.0, units)
        )
    }
    fn sure_label(&self) -> &'static str {
        "Wie sicher"
    }
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String> {
        let held = of_runs(sure.held, runs, "Die Dauerbremse allein hielt die Geschwindigkeit");
        let kept = of_runs(
            sure.kept,
            runs,
            "Die Bremsen hielten, mit einer kräftigen Bremsung bis zum Stillstand, die Grenze ein",
        );
        let (cool, hot) = sure.after_stop_c;
        let heat = format!(
            "In neun von zehn Fahrten hatten die Bremsen nach einer kräftigen Bremsung bis zum Stillstand zwischen {} und {}.",
            format::temperature(f64::from(cool), units),
            format::temperature(f64::from(hot), units)
        );
        let what = sure.matters.iter().take(2).map(|(input, _)| input_name(*input)).collect::<Vec<_>>();
        let matters = (!what.is_empty())
            .then(|| format!("Diese Spanne bestimmen vor allem: {}.", what.join(", dann ")));
        let intro = format!(
            "{runs} Mal gefahren, Neigungen, Masse, Widerstände, Wind, Dauerbremse und Bremsen jedes Mal etwas anders."
        );
        [Some(intro), Some(held), Some(kept), Some(heat), matters].into_iter().flatten().collect()
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
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => {
                "Beginnt kräftiges Bremsen innerhalb von zwei Sekunden, kommt das Fahrzeug von jeder Stelle aus innerhalb der Wärmegrenze zum Stehen."
                    .to_owned()
            }
            Reach::Part(until) => format!(
                "Beginnt kräftiges Bremsen innerhalb von zwei Sekunden, kommt das Fahrzeug bis {} innerhalb der Wärmegrenze zum Stehen; dahinter nicht mehr.",
                format::distance(until.0, units)
            ),
            Reach::Nowhere => "Nicht einmal an der Kuppe würde eine kräftige Bremsung bis zum Stillstand die Wärmegrenze einhalten.".to_owned(),
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => {
                "Die Betriebsbremse könnte es auch bis zum Fuß innerhalb der Grenze bei seiner Geschwindigkeit halten.".to_owned()
            }
            Reach::Part(from) => format!(
                "Erst ab {} könnte die Betriebsbremse es bis zum Fuß bei seiner Geschwindigkeit halten; davor: anhalten.",
                format::distance(from.0, units)
            ),
            Reach::Nowhere => "Die Betriebsbremse könnte es nicht bis zum Fuß halten: anhalten.".to_owned(),
        };
        let neither = lost.neither_from.map(|from| {
            format!(
                "Ab {} würde weder das eine noch das andere die Grenze einhalten.",
                format::distance(from.0, units)
            )
        });
        let ramps = lost.ramps.iter().map(|ramp| {
            format!(
                "Notfallspur bei {}: Von {} an ganz ohne Bremsen rollend, würde es sie mit etwa {} erreichen; ein ebenes Bett aus losem Rundkies müsste etwa {} lang sein.",
                format::distance(ramp.at.0, units),
                format::distance(ramp.lost_at.0, units),
                format::met_speed(ramp.speed.0, units),
                format::height(ramp.needs.0, units)
            )
        });
        let none = lost.ramps.is_empty().then(|| {
            "Auf dieser Gefällestrecke ist keine Notfallspur eingetragen; das heißt nicht, dass es keine gibt.".to_owned()
        });
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }
    fn adjustment_label(&self) -> &'static str {
        "Verstellte Bremsen"
    }
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
        let one = |it: &Adjustment| {
            let heat = format::temperature(it.hottest_after_stop.0, units);
            let kept = if it.kept { "" } else { ", über der Grenze" };
            format!(
                "{}: etwa {heat} nach einer kräftigen Bremsung bis zum Stillstand{kept}.",
                place(it.place)
            )
        };
        let intro = "Würde eine Achsgruppe nur halb so stark bremsen, wären die anderen auf der ganzen Strecke heißer.";
        std::iter::once(intro.to_owned()).chain(all.iter().map(one)).collect()
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
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => (
                format!("{}, mit {}", format::distance(from.0, units), format::met_speed(speed.0, units)),
                slowing.gear.number().to_string(),
            ),
            None => ("reicht nicht: früh bremsen".to_owned(), "–".to_owned()),
        };
        let rest = slowing.cut_out.filter(|_| slowing.lift_off.is_some());
        let rest = rest.map_or_else(String::new, |off| {
            format!("; unter {} die Betriebsbremse", format::met_speed(off.0, units))
        });
        let to = if slowing.to.0 > 0.0 { format::hold_speed(slowing.to.0, units) } else { "Halt".to_owned() };
        [
            format::distance(slowing.at.0, units),
            what_for(&slowing.what, units),
            to,
            from + &rest,
            gear,
            format!(
                "{}, dann etwa {}",
                format::height(slowing.brakes_need.0, units),
                format::temperature(slowing.brakes_after.0, units)
            ),
        ]
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Und 1 weitere Stelle, die weniger verlangt.".to_owned()
        } else {
            format!("Und {count} weitere Stellen, die weniger verlangen.")
        }
    }
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String {
        let how =
            format!("{runs} Mal, Neigungen, Masse, Wind, Dauerbremse und Bremsen jedes Mal etwas anders");
        if sure.held == runs && sure.kept == runs {
            return format!(
                "Gefahren {how}: Die Dauerbremse hielt es jedes Mal, und die Bremsen hielten die Grenze ein."
            );
        }
        format!(
            "Gefahren {how}: Die Dauerbremse allein hielt es in {} der Fahrten, die Bremsen hielten die Grenze in {} der Fahrten ein.",
            format::share(sure.held as f64 / runs as f64),
            format::share(sure.kept as f64 / runs as f64)
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
    fn measured(&self, measured: &Measured, units: Units) -> String {
        format!(
            "Bei {} hielt sie mit {}; die Fahrzeugdaten ergeben {}. Das sind {} dessen, was sie für die Dauerbremse angeben.",
            format::engine_speed(measured.engine_speed.0),
            format::power(measured.power.0, units),
            format::power(measured.assumed.0, units),
            format::share(measured.scale)
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

/// “in all 256 …”, “in 12 of 256 …”.
fn of_runs(count: usize, runs: usize, what: &str) -> String {
    let of = match count {
        0 => format!("in keiner von {runs} Fahrten"),
        all if all == runs => format!("in allen {runs} Fahrten"),
        some => format!("in {some} von {runs} Fahrten"),
    };
    format!("{what} {of}.")
}

fn input_name(input: Input) -> &'static str {
    match input {
        Input::Grade => "die Neigungen",
        Input::Mass => "die Masse",
        Input::Rolling => "der Rollwiderstand",
        Input::Drag => "der Luftwiderstand",
        Input::Retarder => "was die Dauerbremse leistet",
        Input::Wind => "der Wind",
        Input::BrakesAtStart => "die Bremsen am Anfang",
        Input::Cooling => "wie gut die Bremsen abkühlen",
    }
}

fn place(place: AxlePlace) -> &'static str {
    match place {
        AxlePlace::Steer => "Lenkachse",
        AxlePlace::Drive => "Antriebsachsen",
        AxlePlace::Trailer => "Anhänger",
    }
}

fn what_for(what: &SlowFor, units: Units) -> String {
    match what {
        SlowFor::Curve(radius_m) => format!("Kurve, Radius etwa {}", radius(*radius_m, units)),
        SlowFor::Limit => "Tempolimit".to_owned(),
        SlowFor::Stop(name) => name_or(name, "Halt, Ampel oder Kreuzung"),
        SlowFor::BrakeCheck(name) => name_or(name, "Bremskontrollplatz"),
        SlowFor::Town(name) => name_or(name, "Ortschaft"),
    }
}
