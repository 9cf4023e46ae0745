//! French sentences for what is found in a file: findings, and why a file or a truck is not taken.

use super::French;
use crate::format::{self, Units, shown_as};
use crate::words::TellingWords;
use solver::limits::{Quantity, bounds as entered};
use solver::report::truck_file::TruckFileError;
use solver::road::{Bound, FileError, Finding, FindingKind, Foreign, Refusal, Unassessed, bounds};
use solver::truck::TruckError;

const ASK_GPX: &str = "Exportez la trace en GPX et choisissez ce fichier.";
const ASK_HEIGHTS: &str = "Enregistrez la route avec un appareil qui mémorise les altitudes, ou ajoutez les altitudes à la trace avec un planificateur d’itinéraires, puis exportez-la de nouveau.";

/// Why a file cannot be used: what was found, where, and what to do instead.
fn file_error(error: &FileError) -> String {
    match error {
        FileError::Empty => format!("Le fichier est vide. {ASK_GPX}"),
        FileError::NotGpx(what) => foreign(what),
        FileError::NothingInside => {
            "Aucune trace ni aucun itinéraire n’ont pu être lus dans le fichier GPX. Si le fichier a été coupé lors de la copie, copiez-le à nouveau\u{a0}; sinon, exportez la trace elle-même, pas seulement son résumé.".to_owned()
        }
        FileError::WaypointsOnly { count } => format!(
            "Le fichier ne contient que des points de passage ({count})\u{a0}: des lieux, mais pas de route entre eux. Exportez la trace ou l’itinéraire."
        ),
        FileError::NoHeights { points, constant, unreadable } => no_heights(*points, *constant, *unreadable),
        FileError::TooCoarse { found_m, needed_m } => format!(
            "Les points sont trop éloignés les uns des autres\u{a0}: environ {}\u{a0}m, alors qu’il faut {}\u{a0}m au plus pour voir les pentes. Exportez une trace avec tous ses points, et non un itinéraire réduit à quelques bifurcations.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::TooManyBadPoints { bad, points, line, swapped } => {
            bad_points(*bad, *points, *line, *swapped)
        }
        FileError::TooShort { found_m, needed_m } => format!(
            "La route ne fait que {}\u{a0}m\u{a0}; il en faut au moins {}. Choisissez une trace plus longue.",
            format::whole(*found_m),
            format::whole(*needed_m)
        ),
        FileError::NothingLeft { length_m } => format!(
            "Les altitudes ne sont fiables sur aucun des {}\u{a0}km\u{a0}: aucune pente ne peut donc être indiquée. {ASK_HEIGHTS}",
            format::tenths(length_m / 1000.0)
        ),
        FileError::TooLarge(bound) => too_large(bound),
        FileError::Refused { what, line } => format!(
            "Le fichier est refusé à la ligne {line}\u{a0}: {}, ce dont aucune trace n’a besoin. Exportez de nouveau la trace là où elle a été créée.",
            refusal(*what)
        ),
        FileError::BadHeights { index } => format!(
            "L’altitude numéro {} n’est pas utilisable\u{a0}: il faut au moins deux altitudes finies, avec un pas supérieur à 0\u{a0}m et de 50\u{a0}m au plus.",
            index + 1
        ),
        FileError::NoSuchCourse { asked, found } => format!(
            "La trace numéro {} a été demandée, mais le fichier n’en a que {found}. Choisissez-en une.",
            asked + 1
        ),
        FileError::LegsApart { leg, gap_m } => format!(
            "Le fichier {leg} commence à {}\u{a0}km de la fin du fichier {}\u{a0}: aucune route ne mène donc de l’un à l’autre. Changez l’ordre, ou inversez le sens de l’un d’eux.",
            format::tenths(gap_m / 1000.0),
            leg - 1
        ),
        FileError::NotOneRoad { recording } => format!(
            "L’enregistrement {recording} n’est pas un autre enregistrement de la même route\u{a0}: trop peu de son tracé coïncide avec les précédents, ses altitudes sont tout autres, ou c’est l’un d’eux une seconde fois. Comparez les fichiers, ou joignez-les."
        ),
        FileError::Cancelled => {
            "Interrompu à votre demande\u{a0}; choisissez un fichier pour recommencer.".to_owned()
        }
    }
}

fn foreign(what: &Foreign) -> String {
    match what {
        Foreign::Html => {
            "C’est une page web, pas un fichier GPX. Connectez-vous là où la trace est conservée et téléchargez la trace elle-même en GPX.".to_owned()
        }
        Foreign::Kml => {
            format!("C’est un fichier KML, qui contient rarement des altitudes utilisables. {ASK_GPX}")
        }
        Foreign::Gzip => {
            "C’est une archive gzip. Décompressez-la et choisissez le fichier GPX qu’elle contient.".to_owned()
        }
        Foreign::Zip => {
            "C’est une archive zip. Décompressez-la et choisissez le fichier GPX qu’elle contient.".to_owned()
        }
        Foreign::Fit => format!("C’est un enregistrement binaire FIT, pas un fichier GPX. {ASK_GPX}"),
        Foreign::Json => format!("C’est un fichier JSON, pas un fichier GPX. {ASK_GPX}"),
        Foreign::Pdf => format!("C’est un document PDF, pas un fichier GPX. {ASK_GPX}"),
        Foreign::Picture => format!("C’est une image, pas un fichier GPX. {ASK_GPX}"),
        Foreign::OtherXml(name) => format!(
            "C’est un fichier XML d’un autre genre\u{a0}: son élément racine est «\u{a0}{name}\u{a0}», et non «\u{a0}gpx\u{a0}». {ASK_GPX}"
        ),
        Foreign::Unknown => format!("Ce n’est pas un fichier GPX. {ASK_GPX}"),
    }
}

fn refusal(what: Refusal) -> String {
    match what {
        Refusal::Entities => "il déclare ses propres entités".to_owned(),
        Refusal::Nesting => {
            format!("des éléments y sont imbriqués sur plus de {} niveaux", bounds::MOST_NESTING)
        }
        Refusal::LongTag => format!("une balise y dépasse {}\u{a0}ko", bounds::LONGEST_TAG / 1024),
    }
}

fn too_large(bound: &Bound) -> String {
    match bound {
        Bound::Bytes(found) => format!(
            "Le fichier fait {}\u{a0}Mo\u{a0}; {}\u{a0}Mo au plus peuvent être lus. Exportez une partie plus courte de la trace, ou moins de points.",
            found / 1_000_000,
            bounds::MOST_BYTES / 1_000_000
        ),
        Bound::Points => format!(
            "Le fichier a plus de {} millions de points. Exportez une partie plus courte de la trace, ou moins de points.",
            bounds::MOST_POINTS / 1_000_000
        ),
        Bound::Courses => format!(
            "Le fichier contient plus de {} traces, ou morceaux de trace éloignés les uns des autres. Exportez seulement la route voulue.",
            format::whole(bounds::MOST_COURSES as f64)
        ),
        Bound::Length(found_m) => format!(
            "La route fait {}\u{a0}km\u{a0}; {}\u{a0}km au plus peuvent être calculés. Exportez-en une partie plus courte.",
            format::whole(found_m / 1000.0),
            format::whole(bounds::LONGEST_ROAD_M / 1000.0)
        ),
    }
}

fn bad_points(bad: usize, points: usize, line: usize, swapped: bool) -> String {
    let which = if bad == 1 { "n’a pas" } else { "n’ont pas" };
    let what_to_do = if swapped {
        "La latitude et la longitude semblent interverties\u{a0}; corrigez cela là où le fichier est créé et exportez-le de nouveau."
    } else {
        "Exportez de nouveau la trace."
    };
    format!(
        "Sur {points} points, {bad} {which} de latitude et de longitude utilisables, le premier à la ligne {line}. {what_to_do}"
    )
}

fn no_heights(points: usize, constant: bool, unreadable: usize) -> String {
    if unreadable > 0 {
        format!(
            "Aucun point ({points} en tout) n’a d’altitude en simples mètres. Altitudes illisibles, ou dans une unité qui n’est pas devinée\u{a0}: {unreadable}. Exportez les altitudes en mètres, comme simples nombres."
        )
    } else if constant {
        format!(
            "Toutes les altitudes du fichier sont le même nombre\u{a0}: il ne connaît donc pas les côtes ({points} points). {ASK_HEIGHTS}"
        )
    } else {
        format!(
            "Aucun point ({points} en tout) n’a d’altitude\u{a0}: la route ne peut donc pas être évaluée. {ASK_HEIGHTS}"
        )
    }
}

/// What was found and done, without the place.
fn finding(finding: &Finding) -> String {
    use FindingKind as Kind;
    let count = finding.count;
    // All that is counted here takes a plain s, as do its participles.
    let s = if count == 1 { "" } else { "s" };
    let what = match &finding.kind {
        Kind::EncodingRepaired { declared: Some(name), read_as } => {
            format!("Le fichier annonce un texte en {name}, mais il a été lu en {read_as}")
        }
        Kind::EncodingRepaired { declared: None, read_as } => {
            format!("Le fichier n’indique pas son codage\u{a0}; il a été lu en {read_as}")
        }
        Kind::JunkBeforeStart => format!("{count} octet{s} ignoré{s} avant le début du fichier"),
        Kind::CutOff { line } => {
            format!("Le fichier s’interrompt à la ligne {line}\u{a0}; tout ce qui précède est utilisé")
        }
        Kind::UndeclaredPrefix { prefix, line } => format!(
            "Le préfixe «\u{a0}{prefix}\u{a0}» est utilisé sans être déclaré, d’abord à la ligne {line}\u{a0}; lu quand même"
        ),
        Kind::BadReference { line } => format!(
            "{count} texte{s} avec un «\u{a0}&\u{a0}» isolé, d’abord à la ligne {line}\u{a0}; laissé{s} tel{s} quel{s}"
        ),
        Kind::TagsRepaired { line } => format!(
            "{count} balise{s} mal placée{s}, d’abord à la ligne {line}\u{a0}; lue{s} selon le sens voulu"
        ),
        Kind::DocumentTypeIgnored { line } => {
            format!("Un type de document à la ligne {line} est ignoré\u{a0}; rien n’a été téléchargé")
        }
        Kind::DecimalComma { line } => format!(
            "{count} nombre{s} avec une virgule, d’abord à la ligne {line}\u{a0}; la virgule est lue comme signe décimal"
        ),
        Kind::Padding { line } => format!(
            "{count} nombre{s} entouré{s} d’espaces, d’abord à la ligne {line}\u{a0}; il n’en est pas tenu compte"
        ),
        Kind::MetresWritten { line } => {
            format!(
                "{count} altitude{s} écrite{s} avec «\u{a0}m\u{a0}», d’abord à la ligne {line}\u{a0}; lue{s} en mètres"
            )
        }
        Kind::ForeignUnit { line } => format!(
            "{count} altitude{s} dans une autre unité que le mètre, d’abord à la ligne {line}\u{a0}; considérée{s} comme manquante{s}, car une unité n’est jamais devinée"
        ),
        Kind::HeightUnreadable { line } => format!(
            "{count} altitude{s} inutilisable{s} comme nombre de mètres, d’abord à la ligne {line}\u{a0}; considérée{s} comme manquante{s}"
        ),
        Kind::PointsDropped { line } => format!(
            "{count} point{s} sans latitude et longitude utilisables, d’abord à la ligne {line}\u{a0}; écarté{s}"
        ),
        Kind::WaypointsLeftOut { kept } => {
            format!("{count} point{s} de passage écarté{s}\u{a0}; les {kept} premiers sont gardés")
        }
        Kind::RouteShapeUsed => {
            format!("{count} point{s} entre les bifurcations de l’itinéraire utilisé{s} pour sa forme")
        }
        Kind::SegmentsJoined { widest_m } => format!(
            "{} segments de la trace joints\u{a0}; le plus grand vide est de {}\u{a0}m",
            count + 1,
            format::whole(*widest_m)
        ),
        Kind::StopsMerged => format!("{count} point{s} au même endroit que le précédent\u{a0}; fusionné{s}"),
        Kind::JumpsRejected => format!("{count} point{s} très à l’écart de la trace\u{a0}; écarté{s}"),
        Kind::ZeroHeights => format!(
            "{count} altitude{s} nulle{s} ou sans aucune variation\u{a0}; considérée{s} comme manquante{s}"
        ),
        Kind::SpikesRemoved { largest_m } => format!(
            "{count} altitude{s} aberrante{s}, avec un écart allant jusqu’à {}\u{a0}m\u{a0}; considérée{s} comme manquante{s}",
            format::whole(*largest_m)
        ),
        Kind::HeightsFilled { longest_m } => format!(
            "Altitudes manquantes complétées par des lignes droites à {count} endroit{s}, la plus longue sur {}\u{a0}m",
            format::whole(*longest_m)
        ),
        Kind::NotAssessed { why } => {
            format!("Ni valeur de pente ni conseil sur ce tronçon\u{a0}: {}", reason(*why))
        }
        Kind::TunnelBridged { rise_m } => format!(
            "Les altitudes montent de {}\u{a0}m puis redescendent, comme au-dessus d’un tunnel\u{a0}; une ligne droite est utilisée",
            format::whole(*rise_m)
        ),
        Kind::ViaductBridged { drop_m } => format!(
            "Les altitudes descendent de {}\u{a0}m puis remontent, comme sous un pont\u{a0}; une ligne droite est utilisée",
            format::whole(*drop_m)
        ),
        Kind::VerySteep { grade } => format!(
            "Plus raide que la plupart des routes pour poids lourds à {count} endroit{s}, jusqu’à {}\u{a0}% sur 200\u{a0}m\u{a0}; vérifiez d’après les panneaux",
            format::tenths(grade * 100.0)
        ),
        Kind::RecordingsCombined { common_m } => format!(
            "{count} enregistrements de cette route combinés en un seul\u{a0}; deux au moins en connaissent {}\u{a0}km",
            format::tenths(common_m / 1000.0)
        ),
        Kind::RecordingsDisagree { apart_m, length_m } => format!(
            "Les deux enregistrements diffèrent jusqu’à {}\u{a0}m d’altitude sur {}\u{a0}m\u{a0}; le plus raide est utilisé",
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
        "Les altitudes semblent venir d’un modèle de terrain, et non de la route"
    } else {
        "Les altitudes sont irrégulières"
    };
    let advisory = if poor { ", et à titre indicatif seulement" } else { "" };
    format!(
        "{what} (écart de {} points de pourcentage entre tronçons voisins de 100\u{a0}m)\u{a0}; une pente n’est valable que sur {}\u{a0}m ou plus{advisory}",
        format::tenths(roughness),
        format::whole(base_m)
    )
}

/// Why a stretch is not assessed.
fn unassessed(why: Unassessed) -> String {
    format!("{}.", reason(why))
}

/// The same as a clause.
fn reason(why: Unassessed) -> &'static str {
    match why {
        Unassessed::Gap => "le fichier n’y a pas de points",
        Unassessed::NoHeights => "le fichier n’y a pas d’altitudes",
        Unassessed::Step => "les altitudes y font un saut et ne reviennent pas",
        Unassessed::Sliver => "le tronçon entre deux autres non évalués est trop court",
    }
}

/// Why a truck is not taken.
fn truck_error(error: &TruckError, units: Units) -> String {
    match error {
        TruckError::Entry(_) => String::new(),
        TruckError::DriveAxleHeavierThanTruck => {
            "La masse sur les essieux moteurs dépasse la masse totale réelle\u{a0}; saisissez-en une plus petite.".to_owned()
        }
        TruckError::EngineSpeedsCrossed => {
            "Le régime moteur utile le plus bas doit être inférieur au régime moteur maximal autorisé.".to_owned()
        }
        TruckError::Gears => {
            let number = shown_as(Quantity::Number, units);
            let (low, high) = entered::GEAR_RATIO;
            format!(
                "Il faut de 1 à {} rapports de démultiplication, de {} à {}, chacun plus petit que le précédent.",
                entered::GEARS,
                number.text(low),
                number.text(high)
            )
        }
        TruckError::FullLoad => format!(
            "La courbe de pleine charge demande de 2 à {} points par régime moteur croissant (300 à 5000\u{a0}1/min), avec un couple de 0 à {}\u{a0}N·m.",
            entered::CURVE_POINTS,
            entered::TORQUE
        ),
        TruckError::Stages => format!(
            "Pour les crans du ralentisseur, il faut de 1 à {} parts supérieures à 0, croissantes, la dernière égale à 1 (100\u{a0}%).",
            entered::STAGES
        ),
        TruckError::Table => format!(
            "Le tableau du ralentisseur demande de 2 à {} lignes par vitesse de rotation croissante ({} à {}\u{a0}1/min), toutes avec le même nombre de valeurs (1 à {}), aucune plus petite que la précédente dans sa ligne.",
            entered::TABLE_ROWS,
            entered::TABLE_RPM.0,
            entered::TABLE_RPM.1,
            entered::STAGES
        ),
        TruckError::AxleGroups => format!(
            "Il faut de 1 à {} groupes de 1 à {} essieux, dont les parts du freinage font 1 au total.",
            entered::AXLE_GROUPS,
            entered::AXLES_OF_GROUP
        ),
    }
}

/// Why a truck file is not taken.
fn truck_file_error(error: &TruckFileError) -> String {
    match error {
        TruckFileError::Broken { line, what } => format!(
            "Erreur à la ligne {line} (message en anglais\u{a0}: {what}). Corrigez-la à cet endroit, ou enregistrez le fichier encore une fois."
        ),
        TruckFileError::CutOff => {
            "Il manque une partie de ce fichier. Copiez-le encore une fois, ou redemandez-le.".to_owned()
        }
        TruckFileError::Version { found, newest } => format!(
            "Ce fichier a la version {found}\u{a0}; ici, les versions jusqu’à {newest} sont lues. Rechargez la page pour en obtenir une plus récente."
        ),
        TruckFileError::Truck(_) => String::new(),
    }
}

impl TellingWords for French {
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
