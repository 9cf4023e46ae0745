//! French words of one descent's details and of its table.

use super::{French, minutes};
use crate::format::{self, Units};
use crate::words::say::{capital, radius};
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::{Answer, Unusable};
use solver::plan::{Choice, Descent, Totals};
use solver::road::{Curve, Turn};
use solver::truck::Stage;

impl DescentWords for French {
    fn sign_label(&self) -> &'static str {
        "Comme l’indiquerait un panneau"
    }
    fn sign(&self, grade: &str, length: &str) -> String {
        format!("{grade} sur {length}")
    }
    fn advice_label(&self) -> &'static str {
        "Comment descendre"
    }
    fn advice(&self, descent: &Descent, units: Units) -> String {
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
        let name = self.stage(advice.stage);
        let stage = if advice.stage == Stage::OFF { name } else { format!("jusqu’au {name}") };
        format!(
            "Rapport {}, {stage}, {} à {}. {reserve} {} du sommet au pied de la descente.",
            advice.gear.number(),
            format::hold_speed(advice.speed.0, units),
            format::engine_speed(advice.engine_speed.0),
            capital(&minutes(advice.time.0))
        )
    }
    fn way_label(&self) -> &'static str {
        "Crans au fil de la descente"
    }
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String {
        format!("{}\u{a0}: {}", format::span(from_m, to_m, units), self.stage(stage))
    }
    fn relief_label(&self) -> &'static str {
        "Où la pente s’adoucit"
    }
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!(
            "{}\u{a0}: plat ou montée sur {}. Ne passez pas au rapport supérieur\u{a0}: la descente continue.",
            format::span(from_m, to_m, units),
            format::length(to_m - from_m, units)
        )
    }
    fn grades_label(&self) -> &'static str {
        "Pente"
    }
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String> {
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
    fn curves_label(&self) -> &'static str {
        "Virages"
    }
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String> {
        let count = match (curves.count, curves.hairpins) {
            (1, 0) => "1 virage demande une vitesse plus basse que celle-ci".to_owned(),
            (1, _) => "1 virage en épingle demande une vitesse plus basse que celle-ci".to_owned(),
            (all, 0) => format!("{all} virages demandent une vitesse plus basse que celle-ci"),
            (all, some) => {
                format!(
                    "{all} virages, dont {some} en épingle, demandent une vitesse plus basse que celle-ci"
                )
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
    fn climb_label(&self) -> &'static str {
        "La même côte en montée"
    }
    fn climb(&self, descent: &Descent, units: Units) -> String {
        match descent.climbs_in {
            Some((gear, speed)) => format!(
                "Moteur à pleine charge, le véhicule la monte sur le rapport {} à environ {}. Le rapport pour descendre est souvent plus bas.",
                gear.number(),
                format::met_speed(speed.0, units)
            ),
            None => "Même moteur à pleine charge, aucun rapport ne permet de la monter.".to_owned(),
        }
    }
    fn cut_short(&self) -> &'static str {
        "La descente est coupée là où la route ne peut plus être évaluée. On ne sait pas comment elle continue."
    }
    fn at_crest(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Les freins arrivent au sommet à environ {}.",
            format::temperature(descent.brakes_at_crest.0, units)
        )
    }
    fn table_caption(&self, descent: &Descent, units: Units) -> String {
        format!(
            "Ce que donne chaque rapport avec chaque cran sur une pente de {}, à {} d’altitude, sans accélérer et sans freins de service",
            format::grade(descent.table.grade.0),
            format::height(descent.table.height.0, units)
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["rapport", "vitesses utilisables", "réserve à la plus haute vitesse"]
    }
    fn table_stage(&self, stage: usize) -> String {
        if stage == 0 { "coupé".to_owned() } else { format!("cran {stage}") }
    }
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>) {
        match answer {
            Answer::Settles { speed, engine_speed } => {
                (format::met_speed(speed.0, units), Some(format::engine_speed(engine_speed.0)))
            }
            Answer::MoreThanNeeded => ("plus que nécessaire".to_owned(), None),
            Answer::Overruns { above } => (
                "s’emballe".to_owned(),
                above.map(|speed| format!("au-dessus de {}", format::met_speed(speed.0, units))),
            ),
            Answer::NotUsable(why) => ("inutilisable".to_owned(), Some(self.unusable(*why).to_owned())),
        }
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        match why {
            Unusable::Slippery => "trop glissant",
            Unusable::Grip => "trop peu d’adhérence",
            Unusable::CutOut => "se coupe de lui-même",
            Unusable::Unlocked => "convertisseur ouvert",
        }
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        &[
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
        ]
    }
    fn table_chosen(&self) -> &'static str {
        "conseillé"
    }
    fn totals(&self, totals: &Totals, units: Units) -> String {
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

/// Fuel, and the share of the braking work that the service brakes take.
fn fuel(totals: &Totals, units: Units) -> String {
    format!(
        " Part des freins de service dans le freinage\u{a0}: {}. Carburant\u{a0}: environ {}.",
        format::share(totals.service_share()),
        format::fuel(solver::motion::litres_of_fuel(totals.fuel), units)
    )
}
