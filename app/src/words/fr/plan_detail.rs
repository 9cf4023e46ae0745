//! French words of one descent's details and of its table.

use super::minutes;
use crate::format::{self, Units};
use crate::words::Curves;
use crate::words::say::{capital, radius};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

pub(super) fn stage_name(stage: Stage) -> String {
    if stage == Stage::OFF { "ralentisseur coupé".to_owned() } else { format!("cran {}", stage.number()) }
}

pub(super) fn advice(descent: &Descent, units: Units) -> String {
    let Choice::Held(advice) = &descent.choice else {
        return "Aucune vitesse qui respecte les limites n’a été trouvée. Avec les données saisies, n’engagez pas ce véhicule dans cette descente."
            .to_owned();
    };
    let reserve = if advice.margin < 0.0 {
        format!(
            "À plein cran, il manque {} du nécessaire sur la partie la plus raide\u{a0}: les freins de service doivent aider.",
            format::margin(-advice.margin)
        )
    } else {
        format!(
            "À plein cran, {} de plus que nécessaire sur la partie la plus raide.",
            format::margin(advice.margin)
        )
    };
    let name = stage_name(advice.stage);
    let stage = if advice.stage == Stage::OFF { name } else { format!("jusqu’au {name}") };
    format!(
        "Rapport {}, {stage}, {} à {}. {reserve} {} du sommet au pied de la descente.",
        advice.gear.number(),
        format::hold_speed(advice.speed.0, units),
        format::engine_speed(advice.engine_speed.0),
        capital(&minutes(advice.time.0))
    )
}

pub(super) fn grades(descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
    let mean = format!("{} en moyenne.", format::grade(descent.mean.0));
    let steepest = descent.steepest.iter().rev().map(|it| {
        let doubt = if it.length.0 < base_m {
            "\u{a0}; les altitudes ne sont pas fiables sur une distance aussi courte"
        } else {
            ""
        };
        format!(
            "{} sur les {} les plus raides, à partir de {}{doubt}.",
            format::grade(it.grade.0),
            format::length(it.length.0, units),
            format::distance(it.from.0, units)
        )
    });
    std::iter::once(mean).chain(steepest).collect()
}

pub(super) fn curves(curves: &Curves, units: Units) -> Vec<String> {
    let count = match (curves.count, curves.hairpins) {
        (1, 0) => "1 virage demande une vitesse plus basse que celle-ci".to_owned(),
        (1, _) => "1 virage en épingle demande une vitesse plus basse que celle-ci".to_owned(),
        (all, 0) => format!("{all} virages demandent une vitesse plus basse que celle-ci"),
        (all, some) => {
            format!("{all} virages, dont {some} en épingle, demandent une vitesse plus basse que celle-ci")
        }
    };
    let slowest = &curves.slowest;
    vec![
        format!(
            "{count}. Le plus lent\u{a0}: {}.",
            curve(&slowest.curve, slowest.speed.0, curves.at_m, units)
        ),
        "Les rayons sont des estimations d’après la trace\u{a0}; le dévers, la visibilité et l’état de la chaussée ne sont pas connus.".to_owned(),
    ]
}

fn curve(curve: &Curve, speed: f64, at_m: f64, units: Units) -> String {
    format!(
        "{} au plus, à {}, virage {}, rayon d’environ {}",
        format::hold_speed(speed, units),
        format::distance(at_m, units),
        side(curve.turn == Turn::Left),
        radius(curve.radius_m, units)
    )
}

pub(super) fn side(left: bool) -> &'static str {
    if left { "à gauche" } else { "à droite" }
}

pub(super) fn climb(descent: &Descent, units: Units) -> String {
    match descent.climbs_in {
        Some((gear, speed)) => format!(
            "Moteur à pleine charge, le véhicule la monte sur le rapport {} à environ {}. Le rapport pour descendre est souvent plus bas.",
            gear.number(),
            format::met_speed(speed.0, units)
        ),
        None => "Même moteur à pleine charge, aucun rapport ne permet de la monter.".to_owned(),
    }
}

pub(super) fn caption(descent: &Descent, units: Units) -> String {
    format!(
        "Ce que donne chaque rapport avec chaque cran sur une pente de {}, à {} d’altitude, sans accélérer et sans freins de service",
        format::grade(descent.table.grade.0),
        format::height(descent.table.height.0, units)
    )
}

pub(super) fn answer(answer: &Answer, units: Units) -> (String, Option<String>) {
    match answer {
        Answer::Settles { speed, engine_speed } => {
            (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
        }
        Answer::MoreThanNeeded => ("plus que nécessaire".to_owned(), None),
        Answer::Overruns { above } => (
            "s’emballe".to_owned(),
            above.map(|speed| format!("au-dessus de {}", format::met_speed(speed.0, units))),
        ),
        Answer::NotUsable(why) => ("inutilisable".to_owned(), Some(unusable(*why).to_owned())),
    }
}

pub(super) fn unusable(why: Unusable) -> &'static str {
    match why {
        Unusable::Slippery => "trop glissant",
        Unusable::Grip => "trop peu d’adhérence",
        Unusable::CutOut => "se coupe de lui-même",
        Unusable::Unlocked => "convertisseur ouvert",
    }
}

pub(super) const LEGEND: &[(&str, &str)] = &[
    ("une vitesse", "le véhicule s’y stabilise, au régime moteur indiqué en dessous"),
    (
        "plus que nécessaire",
        "le véhicule ralentit\u{a0}: un cran plus faible ou un rapport plus élevé suffirait",
    ),
    (
        "s’emballe",
        "le véhicule accélère jusqu’à ce que le moteur tourne trop vite\u{a0}: utilisez un rapport plus bas ou les freins de service",
    ),
    ("inutilisable", "pour la raison indiquée"),
    (
        "sur un même rapport",
        "toute vitesse entre celle où le cran le plus fort stabilise le véhicule et la plus haute du rapport peut être tenue, en changeant de cran",
    ),
];

pub(super) fn totals(totals: &Totals, units: Units) -> String {
    let crawl = totals.crawl.map_or_else(String::new, |speed| {
        format!(" Vitesse la plus basse en montée\u{a0}: environ {}.", format::met_speed(speed.0, units))
    });
    format!(
        "Toute la route\u{a0}: {}, {} de dénivelé négatif. Le ralentisseur et le moteur absorbent {}, les freins de service {}.{crawl}",
        minutes(totals.time.0),
        format::height(totals.fall.0, units),
        format::work(totals.holding_work.0),
        format::work(totals.service_work.0)
    ) + &fuel(totals, units)
}

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " Part des freins de service dans le freinage\u{a0}: {}. Carburant\u{a0}: environ {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
