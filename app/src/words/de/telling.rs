//! German sentences for what is found in a file: findings, and why a file or a truck is not taken.

use super::German;
use crate::format::{self, Units, shown_as};
use crate::words::TellingWords;
use solver::limits::{Quantity, bounds as entered};
use solver::report::truck_file::TruckFileError;
use solver::road::{Bound, FileError, Finding, FindingKind, Foreign, Refusal, Unassessed, bounds};
use solver::truck::TruckError;

const ASK_GPX: &str = "Exportieren Sie den Track als GPX, und wählen Sie diese Datei.";
const ASK_HEIGHTS: &str = "Zeichnen Sie die Strecke mit einem Gerät auf, das Höhen speichert, oder ergänzen Sie die Höhen des Tracks mit einem Routenplaner, und exportieren Sie ihn noch einmal.";

fn file_error(error: &FileError) -> String {
    match error {
        FileError::Empty => format!("Die Datei ist leer. {ASK_GPX}"),
        FileError::NotGpx(what) => foreign(what),
        FileError::NothingInside => {
            "In der GPX-Datei ließ sich kein Track und keine Route lesen. Wenn die Datei beim Kopieren abgeschnitten wurde, kopieren Sie sie noch einmal; sonst exportieren Sie den Track selbst, nicht nur seine Zusammenfassung.".to_owned()
        }
        FileError::WaypointsOnly { count } => format!(
            "Die Datei enthält nur Wegpunkte ({count}): Orte, aber keine Strecke dazwischen. Exportieren Sie den Track oder die Route."
        ),
        FileError::NoHeights { points, constant, unreadable } => no_heights(*points, *constant, *unreadable),
        FileError::TooCoarse { found_m, needed_m } => format!(
            "Die Punkte liegen zu weit auseinander: etwa {} m; höchstens {} m sind zulässig, um die Neigungen zu erkennen. Exportieren Sie einen Track mit allen Punkten, nicht eine Route mit wenigen Abbiegepunkten.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::TooManyBadPoints { bad, points, line, swapped } => {
            bad_points(*bad, *points, *line, *swapped)
        }
        FileError::TooShort { found_m, needed_m } => format!(
            "Die Strecke ist nur {} m lang; mindestens {} m sind nötig. Wählen Sie einen längeren Track.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::NothingLeft { length_m } => format!(
            "Auf keinem der {} km sind die Höhen verlässlich, deshalb kann keine Neigung angegeben werden. {ASK_HEIGHTS}",
            format::tenths(length_m / 1000.0)
        ),
        FileError::TooLarge(bound) => too_large(bound),
        FileError::Refused { what, line } => format!(
            "Die Datei wird in Zeile {line} abgelehnt: {}. Das braucht kein Track. Exportieren Sie den Track dort, wo er erstellt wurde, noch einmal.",
            refusal(*what)
        ),
        FileError::BadHeights { index } => format!(
            "Höhe Nummer {} ist nicht verwendbar: Nötig sind mindestens zwei endliche Höhen im Abstand von mehr als 0 m und höchstens 50 m.",
            index + 1
        ),
        FileError::NoSuchCourse { asked, found } => format!(
            "Verlangt wurde Track Nummer {}, die Datei hat aber nur {found}. Wählen Sie einen davon.",
            asked + 1
        ),
        FileError::LegsApart { leg, gap_m } => format!(
            "Datei {leg} beginnt {} km entfernt von der Stelle, an der Datei {} endet; deshalb führt keine Strecke von der einen zur anderen. Ändern Sie die Reihenfolge, oder drehen Sie eine der beiden um.",
            format::tenths(gap_m / 1000.0),
            leg - 1
        ),
        FileError::NotOneRoad { recording } => format!(
            "Aufzeichnung {recording} ist keine weitere Aufzeichnung derselben Strecke: Zu wenig von ihr liegt auf den vorigen, ihre Höhen sind ganz andere, oder sie ist eine davon noch einmal. Vergleichen Sie die Dateien, oder verbinden Sie sie."
        ),
        FileError::Cancelled => {
            "Wie gewünscht abgebrochen; wählen Sie eine Datei, um neu zu beginnen.".to_owned()
        }
    }
}

fn foreign(what: &Foreign) -> String {
    match what {
        Foreign::Html => {
            "Das ist eine Webseite, keine GPX-Datei. Melden Sie sich dort an, wo der Track gespeichert ist, und laden Sie den Track selbst als GPX herunter.".to_owned()
        }
        Foreign::Kml => format!("Das ist eine KML-Datei; sie enthält selten brauchbare Höhen. {ASK_GPX}"),
        Foreign::Gzip => {
            "Das ist ein gzip-Archiv. Entpacken Sie es, und wählen Sie die GPX-Datei darin.".to_owned()
        }
        Foreign::Zip => {
            "Das ist ein zip-Archiv. Entpacken Sie es, und wählen Sie die GPX-Datei darin.".to_owned()
        }
        Foreign::Fit => format!("Das ist eine binäre FIT-Aufzeichnung, keine GPX-Datei. {ASK_GPX}"),
        Foreign::Json => format!("Das ist eine JSON-Datei, keine GPX-Datei. {ASK_GPX}"),
        Foreign::Pdf => format!("Das ist ein PDF-Dokument, keine GPX-Datei. {ASK_GPX}"),
        Foreign::Picture => format!("Das ist ein Bild, keine GPX-Datei. {ASK_GPX}"),
        Foreign::OtherXml(name) => format!(
            "Das ist eine XML-Datei anderer Art: Ihr äußerstes Element heißt „{name}“, nicht „gpx“. {ASK_GPX}"
        ),
        Foreign::Unknown => format!("Das ist keine GPX-Datei. {ASK_GPX}"),
    }
}

fn refusal(what: Refusal) -> String {
    match what {
        Refusal::Entities => "Sie deklariert eigene Entitäten".to_owned(),
        Refusal::Nesting => {
            format!("Elemente sind mehr als {} Ebenen tief verschachtelt", bounds::MOST_NESTING)
        }
        Refusal::LongTag => format!("Ein XML-Tag ist länger als {} kB", bounds::LONGEST_TAG / 1024),
    }
}

fn too_large(bound: &Bound) -> String {
    match bound {
        Bound::Bytes(found) => format!(
            "Die Datei hat {} MB; höchstens {} MB können gelesen werden. Exportieren Sie einen kürzeren Teil des Tracks oder weniger Punkte.",
            found / 1_000_000,
            bounds::MOST_BYTES / 1_000_000
        ),
        Bound::Points => format!(
            "Die Datei hat mehr als {} Millionen Punkte. Exportieren Sie einen kürzeren Teil des Tracks oder weniger Punkte.",
            bounds::MOST_POINTS / 1_000_000
        ),
        Bound::Courses => format!(
            "Die Datei hat mehr als {} Tracks oder weit auseinander liegende Stücke. Exportieren Sie nur die Strecke, die Sie brauchen.",
            format::whole(bounds::MOST_COURSES as f64)
        ),
        Bound::Length(found_m) => format!(
            "Die Strecke ist {} km lang; höchstens {} km können berechnet werden. Exportieren Sie einen kürzeren Teil davon.",
            format::whole(found_m / 1000.0),
            format::whole(bounds::LONGEST_ROAD_M / 1000.0)
        ),
    }
}

fn bad_points(bad: usize, points: usize, line: usize, swapped: bool) -> String {
    let have = if bad == 1 { "hat" } else { "haben" };
    let what_to_do = if swapped {
        "Anscheinend sind Breite und Länge vertauscht; berichtigen Sie das dort, wo die Datei erstellt wird, und exportieren Sie sie noch einmal."
    } else {
        "Exportieren Sie den Track noch einmal."
    };
    format!(
        "{bad} von {points} Punkten {have} keine brauchbare geografische Breite und Länge, zuerst in Zeile {line}. {what_to_do}"
    )
}

fn no_heights(points: usize, constant: bool, unreadable: usize) -> String {
    if unreadable > 0 {
        format!(
            "Keiner der {points} Punkte hat eine Höhe in einfachen Metern. Höhen, die nicht lesbar sind oder eine Einheit tragen, die nicht geraten wird: {unreadable}. Exportieren Sie die Höhen in Metern, als einfache Zahlen."
        )
    } else if constant {
        format!(
            "Alle Höhen in der Datei sind dieselbe Zahl, sie kennt also die Steigungen und Gefälle nicht ({points} Punkte). {ASK_HEIGHTS}"
        )
    } else {
        format!(
            "Keiner der {points} Punkte hat eine Höhe, deshalb kann die Strecke nicht beurteilt werden. {ASK_HEIGHTS}"
        )
    }
}

/// “1 Punkt”, “7 Punkte”.
fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

/// What was found and done, without the place.
fn finding(finding: &Finding) -> String {
    use FindingKind as Kind;
    let count = finding.count;
    let bytes = || counted(count, "Byte", "Bytes");
    let texts = || counted(count, "Text", "Texte");
    let tags = || counted(count, "XML-Tag", "XML-Tags");
    let numbers = || counted(count, "Zahl", "Zahlen");
    let heights = || counted(count, "Höhe", "Höhen");
    let points = || counted(count, "Punkt", "Punkte");
    let waypoints = || counted(count, "Wegpunkt", "Wegpunkte");
    let places = || counted(count, "Stelle", "Stellen");
    let what = match &finding.kind {
        Kind::EncodingRepaired { declared: Some(name), read_as } => {
            format!("Die Datei nennt als Kodierung ihres Textes {name}, sie wurde aber als {read_as} gelesen")
        }
        Kind::EncodingRepaired { declared: None, read_as } => {
            format!("Die Datei nennt ihre Kodierung nicht; sie wurde als {read_as} gelesen")
        }
        Kind::JunkBeforeStart => format!("{} vor dem Anfang der Datei übersprungen", bytes()),
        Kind::CutOff { line } => {
            format!("Die Datei bricht in Zeile {line} ab; alles davor wird verwendet")
        }
        Kind::UndeclaredPrefix { prefix, line } => format!(
            "Das Präfix „{prefix}“ wird verwendet, ist aber nicht deklariert, zuerst in Zeile {line}; trotzdem gelesen"
        ),
        Kind::BadReference { line } => {
            format!("{} mit einem losen „&“, zuerst in Zeile {line}; so gelassen, wie geschrieben", texts())
        }
        Kind::TagsRepaired { line } => {
            format!("{} an falscher Stelle, zuerst in Zeile {line}; gelesen, wie gemeint", tags())
        }
        Kind::DocumentTypeIgnored { line } => {
            format!("Eine Dokumenttyp-Angabe in Zeile {line} wird nicht beachtet; nichts wurde abgerufen")
        }
        Kind::DecimalComma { line } => {
            format!("{} mit Komma statt Punkt, zuerst in Zeile {line}; als Dezimalkomma gelesen", numbers())
        }
        Kind::Padding { line } => format!(
            "{} mit Leerzeichen davor oder dahinter, zuerst in Zeile {line}; Leerzeichen nicht beachtet",
            numbers()
        ),
        Kind::MetresWritten { line } => {
            format!("{} mit „m“ geschrieben, zuerst in Zeile {line}; als Meter gelesen", heights())
        }
        Kind::ForeignUnit { line } => format!(
            "{} mit einer anderen Einheit als Meter, zuerst in Zeile {line}; als fehlend behandelt, denn eine Einheit wird nie geraten",
            heights()
        ),
        Kind::HeightUnreadable { line } => format!(
            "{} nicht als Zahl in Metern brauchbar, zuerst in Zeile {line}; als fehlend behandelt",
            heights()
        ),
        Kind::PointsDropped { line } => format!(
            "{} ohne brauchbare geografische Breite und Länge, zuerst in Zeile {line}; weggelassen",
            points()
        ),
        Kind::WaypointsLeftOut { kept } => {
            format!("{} weggelassen; die ersten {kept} bleiben erhalten", waypoints())
        }
        Kind::RouteShapeUsed => {
            format!("{} zwischen den Abbiegepunkten der Route für ihren Verlauf verwendet", points())
        }
        Kind::SegmentsJoined { widest_m } => format!(
            "{} des Tracks verbunden; die größte Lücke ist {} m",
            counted(count + 1, "Teilstück", "Teilstücke"),
            format::whole(*widest_m)
        ),
        Kind::StopsMerged => format!("{} an derselben Stelle wie der davor; zusammengefasst", points()),
        Kind::JumpsRejected => format!("{} weit neben dem Track; weggelassen", points()),
        Kind::ZeroHeights => {
            format!("{} gleich null oder ohne jede Änderung; als fehlend behandelt", heights())
        }
        Kind::SpikesRemoved { largest_m } => format!(
            "{} als Ausreißer erkannt, um bis zu {} m; als fehlend behandelt",
            heights(),
            format::whole(*largest_m)
        ),
        Kind::HeightsFilled { longest_m } => format!(
            "Fehlende Höhen an {} durch gerade Linien ergänzt, die längste über {} m",
            places(),
            format::whole(*longest_m)
        ),
        Kind::NotAssessed { why } => {
            format!("Keine Neigung und keine Empfehlung auf diesem Abschnitt: {}", reason(*why))
        }
        Kind::TunnelBridged { rise_m } => format!(
            "Die Höhen steigen um {} m und fallen wieder, wie über einem Tunnel; verwendet wird eine gerade Linie",
            format::whole(*rise_m)
        ),
        Kind::ViaductBridged { drop_m } => format!(
            "Die Höhen fallen um {} m und steigen wieder, wie unter einer Brücke; verwendet wird eine gerade Linie",
            format::whole(*drop_m)
        ),
        Kind::VerySteep { grade } => format!(
            "An {} steiler als die meisten Straßen für schwere Fahrzeuge, mit bis zu {} % auf 200 m; vergleichen Sie das mit den Schildern",
            places(),
            format::tenths(grade * 100.0)
        ),
        Kind::RecordingsCombined { common_m } => format!(
            "{count} Aufzeichnungen dieser Strecke zu einer zusammengeführt; mindestens zwei von ihnen kennen {} km davon",
            format::tenths(common_m / 1000.0)
        ),
        Kind::RecordingsDisagree { apart_m, length_m } => format!(
            "Die beiden Aufzeichnungen unterscheiden sich um bis zu {} m Höhe auf {} m; verwendet wird die steilere",
            format::whole(*apart_m),
            format::whole(*length_m)
        ),
        Kind::RoughHeights { roughness, base_m, poor, from_terrain } => {
            rough(*roughness, *base_m, *poor, *from_terrain)
        }
    };
    format!("{what}.")
}

fn rough(roughness: f64, base_m: f64, poor: bool, from_terrain: bool) -> String {
    let what = if from_terrain {
        "Die Höhen stammen anscheinend aus einem Geländemodell, nicht von der Straße"
    } else {
        "Die Höhen sind unruhig"
    };
    let advisory = if poor { " und ist nur ein Anhaltspunkt" } else { "" };
    format!(
        "{what} ({} Prozentpunkte zwischen benachbarten 100 m); eine Neigung gilt erst ab {} m Länge{advisory}",
        format::tenths(roughness),
        format::whole(base_m)
    )
}

/// Why a stretch is not assessed.
fn unassessed(why: Unassessed) -> String {
    format!("{}.", reason(why))
}

/// The same as a clause; what stands before it ends in a colon or is a button.
fn reason(why: Unassessed) -> &'static str {
    match why {
        Unassessed::Gap => "Die Datei hat dort keine Punkte",
        Unassessed::NoHeights => "Die Datei hat dort keine Höhen",
        Unassessed::Step => "Die Höhen springen dort und kehren nicht zurück",
        Unassessed::Sliver => "Der Abschnitt zwischen zwei anderen ohne Beurteilung ist zu kurz",
    }
}

fn truck_error(error: &TruckError, units: Units) -> String {
    match error {
        TruckError::Entry(_) => String::new(),
        TruckError::DriveAxleHeavierThanTruck => {
            "Das Gewicht auf den Antriebsachsen ist größer als das tatsächliche Gesamtgewicht; geben Sie ein kleineres ein.".to_owned()
        }
        TruckError::EngineSpeedsCrossed => {
            "Die niedrigste nutzbare Motordrehzahl muss unter der höchsten zulässigen Motordrehzahl liegen.".to_owned()
        }
        TruckError::Gears => {
            let plain = shown_as(Quantity::Number, units);
            let (low, high) = entered::GEAR_RATIO;
            format!(
                "Die Gänge müssen 1 bis {} Übersetzungen von {} bis {} sein, jede kleiner als die davor.",
                entered::GEARS,
                plain.text(low),
                plain.text(high)
            )
        }
        TruckError::FullLoad => format!(
            "Die Volllastkurve braucht 2 bis {} Punkte mit steigender Motordrehzahl (300 bis 5000 1/min), Drehmoment 0 bis {} N·m.",
            entered::CURVE_POINTS,
            entered::TORQUE
        ),
        TruckError::Stages => format!(
            "Die Stufen der Dauerbremse müssen 1 bis {} Anteile über 0 sein, ansteigend, der letzte 1 (100 %).",
            entered::STAGES
        ),
        TruckError::Table => format!(
            "Die Tabelle der Dauerbremse braucht 2 bis {} Zeilen mit steigender Drehzahl ({} bis {} 1/min), alle mit gleich vielen Werten (1 bis {}), keiner kleiner als der davor in seiner Zeile.",
            entered::TABLE_ROWS,
            entered::TABLE_RPM.0,
            entered::TABLE_RPM.1,
            entered::STAGES
        ),
        TruckError::AxleGroups => format!(
            "Nötig sind 1 bis {} Achsgruppen mit je 1 bis {} Achsen, deren Anteile an der Bremswirkung zusammen 1 ergeben.",
            entered::AXLE_GROUPS,
            entered::AXLES_OF_GROUP
        ),
    }
}

fn truck_file_error(error: &TruckFileError) -> String {
    match error {
        TruckFileError::Broken { line, what } => format!(
            "Fehler in Zeile {line} (Meldung auf Englisch: {what}). Berichtigen Sie das dort, oder speichern Sie die Datei noch einmal."
        ),
        TruckFileError::CutOff => "Ein Teil dieser Datei fehlt. Kopieren Sie sie noch einmal, oder lassen Sie sie sich noch einmal schicken.".to_owned(),
        TruckFileError::Version { found, newest } => format!(
            "Diese Datei hat die Version {found}; hier werden Versionen bis {newest} gelesen. Laden Sie die Seite neu, um eine neuere zu bekommen."
        ),
        TruckFileError::Truck(_) => String::new(),
    }
}

impl TellingWords for German {
    fn file_error(&self, error: &FileError) -> String {
        file_error(error)
    }
    fn finding(&self, it: &Finding) -> String {
        finding(it)
    }
    fn reason(&self, why: Unassessed) -> String {
        unassessed(why)
    }
    fn wrong_truck(&self, error: &TruckError, units: Units) -> String {
        truck_error(error, units)
    }
    fn wrong_truck_file(&self, error: &TruckFileError) -> String {
        truck_file_error(error)
    }
}
