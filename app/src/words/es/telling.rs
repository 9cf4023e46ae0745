//! Spanish sentences for what is found in a file: findings, and why a file or a truck is not taken.

use super::Spanish;
use crate::format::{self, Units, shown_as};
use crate::words::TellingWords;
use solver::limits::{Quantity, bounds as entered};
use solver::report::truck_file::TruckFileError;
use solver::road::{Bound, FileError, Finding, FindingKind, Foreign, Refusal, Unassessed, bounds};
use solver::truck::TruckError;

const ASK_GPX: &str = "Exporte el recorrido como GPX y elija ese archivo.";
const ASK_HEIGHTS: &str = "Grabe la carretera con un dispositivo que guarde altitudes, o añada altitudes al recorrido con un planificador de rutas, y expórtelo otra vez.";

fn file_error(error: &FileError) -> String {
    match error {
        FileError::Empty => format!("El archivo está vacío. {ASK_GPX}"),
        FileError::NotGpx(what) => foreign(what),
        FileError::NothingInside => {
            "En el archivo GPX no se pudo leer ningún recorrido ni ninguna ruta. Si el archivo quedó cortado al copiarlo, cópielo otra vez; si no, exporte el recorrido mismo, no solo su resumen.".to_owned()
        }
        FileError::WaypointsOnly { count } => format!(
            "El archivo solo contiene puntos de referencia ({count}): lugares, pero ninguna carretera entre ellos. Exporte el recorrido o la ruta."
        ),
        FileError::NoHeights { points, constant, unreadable } => no_heights(*points, *constant, *unreadable),
        FileError::TooCoarse { found_m, needed_m } => format!(
            "Los puntos están demasiado separados: unos {} m; para ver las pendientes hacen falta {} m como máximo. Expórtelo como recorrido con todos los puntos, no como ruta de unos pocos giros.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::TooManyBadPoints { bad, points, line, swapped } => {
            bad_points(*bad, *points, *line, *swapped)
        }
        FileError::TooShort { found_m, needed_m } => format!(
            "La carretera mide solo {} m; hacen falta al menos {} m. Elija un recorrido más largo.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::NothingLeft { length_m } => format!(
            "En ninguno de los {} km las altitudes son fiables, así que no se puede dar ninguna pendiente. {ASK_HEIGHTS}",
            format::tenths(length_m / 1000.0)
        ),
        FileError::TooLarge(bound) => too_large(bound),
        FileError::Refused { what, line } => format!(
            "El archivo se rechaza en la línea {line}: {}. Ningún recorrido necesita eso. Exporte otra vez el recorrido desde donde se hizo.",
            refusal(*what)
        ),
        FileError::BadHeights { index } => format!(
            "La altitud número {} no se puede usar: hacen falta al menos dos altitudes finitas, a una distancia mayor que 0 m y de 50 m como máximo.",
            index + 1
        ),
        FileError::NoSuchCourse { asked, found } => format!(
            "Se pidió el recorrido número {}, pero el archivo tiene {found}. Elija uno de esos.",
            asked + 1
        ),
        FileError::LegsApart { leg, gap_m } => format!(
            "El archivo {leg} empieza a {} km de donde termina el archivo {}, así que ninguna carretera lleva de uno a otro. Cambie el orden o invierta uno de los dos.",
            format::tenths(gap_m / 1000.0),
            leg - 1
        ),
        FileError::NotOneRoad { recording } => format!(
            "La grabación {recording} no es otra grabación de la misma carretera: muy poco de ella coincide con las anteriores, sus altitudes son muy distintas, o es una de ellas repetida. Compare los archivos o únalos."
        ),
        FileError::Cancelled => "Detenido a petición suya; elija un archivo para empezar otra vez.".to_owned(),
    }
}

fn foreign(what: &Foreign) -> String {
    match what {
        Foreign::Html => {
            "Esto es una página web, no un archivo GPX. Inicie sesión donde está guardado el recorrido y descargue el recorrido mismo como GPX.".to_owned()
        }
        Foreign::Kml => {
            format!("Esto es un archivo KML, que rara vez lleva altitudes utilizables. {ASK_GPX}")
        }
        Foreign::Gzip => {
            "Esto es un archivo comprimido gzip. Descomprímalo y elija el archivo GPX que contiene.".to_owned()
        }
        Foreign::Zip => {
            "Esto es un archivo comprimido zip. Descomprímalo y elija el archivo GPX que contiene.".to_owned()
        }
        Foreign::Fit => format!("Esto es una grabación binaria FIT, no un archivo GPX. {ASK_GPX}"),
        Foreign::Json => format!("Esto es un archivo JSON, no un archivo GPX. {ASK_GPX}"),
        Foreign::Pdf => format!("Esto es un documento PDF, no un archivo GPX. {ASK_GPX}"),
        Foreign::Picture => format!("Esto es una imagen, no un archivo GPX. {ASK_GPX}"),
        Foreign::OtherXml(name) => format!(
            "Esto es un archivo XML de otro tipo: su elemento exterior es «{name}», no «gpx». {ASK_GPX}"
        ),
        Foreign::Unknown => format!("Esto no es un archivo GPX. {ASK_GPX}"),
    }
}

fn refusal(what: Refusal) -> String {
    match what {
        Refusal::Entities => "el archivo declara entidades propias".to_owned(),
        Refusal::Nesting => {
            format!("hay elementos anidados a más de {} niveles de profundidad", bounds::MOST_NESTING)
        }
        Refusal::LongTag => format!("una etiqueta mide más de {} kB", bounds::LONGEST_TAG / 1024),
    }
}

fn too_large(bound: &Bound) -> String {
    match bound {
        Bound::Bytes(found) => format!(
            "El archivo tiene {} MB; se pueden leer {} MB como máximo. Exporte una parte más corta del recorrido, o menos puntos.",
            found / 1_000_000,
            bounds::MOST_BYTES / 1_000_000
        ),
        Bound::Points => format!(
            "El archivo tiene más de {} millones de puntos. Exporte una parte más corta del recorrido, o menos puntos.",
            bounds::MOST_POINTS / 1_000_000
        ),
        Bound::Courses => format!(
            "El archivo tiene más de {} recorridos, o trozos de recorrido alejados entre sí. Exporte solo la carretera que quiere.",
            format::whole(bounds::MOST_COURSES as f64)
        ),
        Bound::Length(found_m) => format!(
            "La carretera mide {} km; se pueden calcular {} km como máximo. Exporte una parte más corta.",
            format::whole(found_m / 1000.0),
            format::whole(bounds::LONGEST_ROAD_M / 1000.0)
        ),
    }
}

fn bad_points(bad: usize, points: usize, line: usize, swapped: bool) -> String {
    let have = either(bad, "no tiene", "no tienen");
    let what_to_do = if swapped {
        "Parece que la latitud y la longitud están intercambiadas; corríjalo donde se hace el archivo y expórtelo otra vez."
    } else {
        "Exporte otra vez el recorrido."
    };
    format!(
        "{bad} de {points} puntos {have} una latitud y una longitud utilizables, por primera vez en la línea {line}. {what_to_do}"
    )
}

fn no_heights(points: usize, constant: bool, unreadable: usize) -> String {
    if unreadable > 0 {
        format!(
            "Ninguno de los {points} puntos tiene una altitud en metros, sin más. Altitudes que no se pudieron leer o que llevan una unidad que no se adivina: {unreadable}. Exporte las altitudes en metros, como simples números."
        )
    } else if constant {
        format!(
            "Todas las altitudes del archivo son el mismo número, así que no conoce las cuestas ({points} puntos). {ASK_HEIGHTS}"
        )
    } else {
        format!(
            "Ninguno de los {points} puntos tiene altitud, así que la carretera no se puede evaluar. {ASK_HEIGHTS}"
        )
    }
}

fn either<'a>(count: usize, one: &'a str, many: &'a str) -> &'a str {
    if count == 1 { one } else { many }
}

/// “1 punto”, “7 puntos”.
fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", either(count, one, many))
}

/// What was found and done, without the place.
fn finding(finding: &Finding) -> String {
    use FindingKind as Kind;
    let count = finding.count;
    let numbers = || counted(count, "número", "números");
    let heights = || counted(count, "altitud", "altitudes");
    let points = || counted(count, "punto", "puntos");
    let places = || counted(count, "lugar", "lugares");
    let missing = either(count, "se trata como dato ausente", "se tratan como datos ausentes");
    let left_out = either(count, "se omite", "se omiten");
    let what = match &finding.kind {
        Kind::EncodingRepaired { declared: Some(name), read_as } => {
            format!("El archivo dice que su texto está en {name}, pero se leyó como {read_as}")
        }
        Kind::EncodingRepaired { declared: None, read_as } => {
            format!("El archivo no indica su codificación; se leyó como {read_as}")
        }
        Kind::JunkBeforeStart => {
            let bytes = counted(count, "byte", "bytes");
            format!("{bytes} antes del inicio del archivo; {left_out}")
        }
        Kind::CutOff { line } => {
            format!("El archivo se interrumpe en la línea {line}; se usa todo lo anterior")
        }
        Kind::UndeclaredPrefix { prefix, line } => format!(
            "El prefijo «{prefix}» se usa sin estar declarado, por primera vez en la línea {line}; se leyó de todos modos"
        ),
        Kind::BadReference { line } => format!(
            "{} con un «&» suelto, por primera vez en la línea {line}; se conserva lo escrito",
            counted(count, "texto", "textos")
        ),
        Kind::TagsRepaired { line } => format!(
            "{} fuera de lugar, por primera vez en la línea {line}; {} según lo que se quería decir",
            counted(count, "etiqueta", "etiquetas"),
            either(count, "se leyó", "se leyeron")
        ),
        Kind::DocumentTypeIgnored { line } => format!(
            "No se tiene en cuenta un tipo de documento en la línea {line}; no se fue a buscar nada fuera"
        ),
        Kind::DecimalComma { line } => format!(
            "{} con coma decimal, por primera vez en la línea {line}; {}",
            numbers(),
            either(count, "se leyó como decimal", "se leyeron como decimales")
        ),
        Kind::Padding { line } => format!(
            "{} con espacios alrededor, por primera vez en la línea {line}; no se tienen en cuenta los espacios",
            numbers()
        ),
        Kind::MetresWritten { line } => format!(
            "{} con una «m» detrás, por primera vez en la línea {line}; {} en metros",
            heights(),
            either(count, "se leyó", "se leyeron")
        ),
        Kind::ForeignUnit { line } => format!(
            "{} con una unidad distinta del metro, por primera vez en la línea {line}; {missing}, pues una unidad nunca se adivina",
            heights()
        ),
        Kind::HeightUnreadable { line } => format!(
            "{} que no {} como número de metros, por primera vez en la línea {line}; {missing}",
            heights(),
            either(count, "sirve", "sirven")
        ),
        Kind::PointsDropped { line } => format!(
            "{} sin latitud y longitud utilizables, por primera vez en la línea {line}; {left_out}",
            points()
        ),
        Kind::WaypointsLeftOut { kept } => format!(
            "{} de más; {left_out} y se conservan los {kept} primeros",
            counted(count, "punto de referencia", "puntos de referencia")
        ),
        Kind::RouteShapeUsed => format!(
            "{} entre los giros de la ruta; {} para su trazado",
            points(),
            either(count, "se usa", "se usan")
        ),
        Kind::SegmentsJoined { widest_m } => format!(
            "{} del recorrido; se unen, y la mayor separación es de {} m",
            counted(count + 1, "segmento", "segmentos"),
            format::whole(*widest_m)
        ),
        Kind::StopsMerged => format!(
            "{} en el mismo lugar que el anterior; {} con él",
            points(),
            either(count, "se une", "se unen")
        ),
        Kind::JumpsRejected => format!("{} muy lejos del recorrido; {left_out}", points()),
        Kind::ZeroHeights => format!("{} de valor cero o sin ningún cambio; {missing}", heights()),
        Kind::SpikesRemoved { largest_m } => format!(
            "{} que {} hasta {} m; {missing}",
            heights(),
            either(count, "sobresale", "sobresalen"),
            format::whole(*largest_m)
        ),
        Kind::HeightsFilled { longest_m } => format!(
            "Altitudes ausentes, completadas con líneas rectas en {}, la más larga de {} m",
            places(),
            format::whole(*longest_m)
        ),
        Kind::NotAssessed { why } => {
            format!("Ninguna pendiente y ningún consejo en este tramo: {}", reason(*why))
        }
        Kind::TunnelBridged { rise_m } => format!(
            "Las altitudes suben {} m y vuelven a bajar, como encima de un túnel; se usa una línea recta",
            format::whole(*rise_m)
        ),
        Kind::ViaductBridged { drop_m } => format!(
            "Las altitudes bajan {} m y vuelven a subir, como debajo de un puente; se usa una línea recta",
            format::whole(*drop_m)
        ),
        Kind::VerySteep { grade } => format!(
            "Más empinado que la mayoría de las carreteras para camiones en {}, hasta {} % en 200 m; compárelo con las señales",
            places(),
            format::tenths(grade * 100.0)
        ),
        Kind::RecordingsCombined { common_m } => format!(
            "{count} grabaciones de esta carretera combinadas en una; al menos dos de ellas conocen {} km",
            format::tenths(common_m / 1000.0)
        ),
        Kind::RecordingsDisagree { apart_m, length_m } => format!(
            "Las dos grabaciones difieren hasta {} m de altitud en {} m; se usa la más empinada",
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
        "Las altitudes parecen proceder de un modelo del terreno, no de la carretera"
    } else {
        "Las altitudes son irregulares"
    };
    let advisory = if poor { ", y es solo orientativa" } else { "" };
    format!(
        "{what} ({} puntos porcentuales entre tramos vecinos de 100 m); una pendiente es válida a lo largo de {} m o más{advisory}",
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
        Unassessed::Gap => "el archivo no tiene puntos ahí",
        Unassessed::NoHeights => "el archivo no tiene altitudes ahí",
        Unassessed::Step => "las altitudes dan ahí un salto y no vuelven",
        Unassessed::Sliver => "el tramo entre otros dos sin evaluar es demasiado corto",
    }
}

fn truck_error(error: &TruckError, units: Units) -> String {
    match error {
        TruckError::Entry(_) => String::new(),
        TruckError::DriveAxleHeavierThanTruck => {
            "La masa sobre los ejes motrices es mayor que la masa total real; escriba una menor.".to_owned()
        }
        TruckError::EngineSpeedsCrossed => {
            "Las revoluciones mínimas útiles del motor deben estar por debajo de las máximas permitidas."
                .to_owned()
        }
        TruckError::Gears => {
            let plain = shown_as(Quantity::Number, units);
            let (low, high) = entered::GEAR_RATIO;
            format!(
                "Las marchas deben ser de 1 a {} relaciones, de {} a {}, cada una menor que la anterior.",
                entered::GEARS,
                plain.text(low),
                plain.text(high)
            )
        }
        TruckError::FullLoad => format!(
            "La curva de plena carga necesita de 2 a {} puntos con revoluciones del motor en aumento (300 a 5000 1/min) y un par de 0 a {} N·m.",
            entered::CURVE_POINTS,
            entered::TORQUE
        ),
        TruckError::Stages => format!(
            "Las posiciones del ralentizador deben ser de 1 a {} fracciones mayores que 0, en aumento, la última 1 (100 %).",
            entered::STAGES
        ),
        TruckError::Table => format!(
            "La tabla del ralentizador necesita de 2 a {} filas con revoluciones en aumento ({} a {} 1/min), todas con el mismo número de valores (de 1 a {}), ninguno menor que el anterior de su fila.",
            entered::TABLE_ROWS,
            entered::TABLE_RPM.0,
            entered::TABLE_RPM.1,
            entered::STAGES
        ),
        TruckError::AxleGroups => format!(
            "Debe haber de 1 a {} grupos de ejes, de 1 a {} ejes cada uno, cuyas partes del frenado sumen 1.",
            entered::AXLE_GROUPS,
            entered::AXLES_OF_GROUP
        ),
    }
}

fn truck_file_error(error: &TruckFileError) -> String {
    match error {
        TruckFileError::Broken { line, what } => format!(
            "Error en la línea {line} (mensaje en inglés: {what}). Corríjalo ahí, o guarde el archivo otra vez."
        ),
        TruckFileError::CutOff => {
            "Falta una parte de este archivo. Cópielo otra vez, o pídalo de nuevo.".to_owned()
        }
        TruckFileError::Version { found, newest } => format!(
            "Este archivo tiene la versión {found}; aquí se leen versiones hasta la {newest}. Recargue la página para obtener una más nueva."
        ),
        TruckFileError::Truck(_) => String::new(),
    }
}

impl TellingWords for Spanish {
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
