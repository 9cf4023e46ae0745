//! French words of the road.

use super::{French, telling};
use crate::format::{self, Units};
use crate::message::RoadFacts;
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for French {
    fn road_head(&self) -> &'static str {
        "Cette route telle qu’elle est enregistrée"
    }
    fn ends(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!("{} → {}", format::height(start_m, units), format::height(end_m, units))
    }
    fn ends_spoken(&self, start_m: f64, end_m: f64, units: Units) -> String {
        format!(
            "parcourue de l’extrémité à {} d’altitude jusqu’à l’extrémité à {} d’altitude",
            format::height(start_m, units),
            format::height(end_m, units)
        )
    }
    fn quality(&self, road: &RoadFacts, units: Units) -> String {
        let base = format::length(road.base_length_m, units);
        let rough = format!(
            "Neuf fois sur dix, les pentes de deux tronçons voisins de 100\u{a0}m diffèrent de {} points de pourcentage au plus dans l’enregistrement, de {} au plus après lissage.",
            format::tenths(road.quality.roughness_before),
            format::tenths(road.quality.roughness_after)
        );
        let says = match road.quality.class {
            Class::Good => {
                format!("Les altitudes sont bonnes\u{a0}: une pente n’est valable que sur {base} ou plus.")
            }
            Class::Fair => {
                format!(
                    "Les altitudes sont moyennes\u{a0}: une pente n’est valable que sur {base} ou plus\u{a0}; les ressauts plus courts ne se voient pas."
                )
            }
            Class::Poor => format!(
                "Les altitudes sont mauvaises\u{a0}: une pente n’est valable que sur {base} ou plus, et à titre indicatif seulement. Vérifiez-la d’après les panneaux."
            ),
        };
        format!("{says} {rough}")
    }
    fn findings_head(&self, count: usize) -> String {
        if count == 1 {
            "1 élément relevé ou réparé dans le fichier".to_owned()
        } else {
            format!("{count} éléments relevés ou réparés dans le fichier")
        }
    }
    fn no_findings(&self) -> &'static str {
        "Il n’y avait rien à réparer."
    }
    fn file_error(&self, error: &FileError) -> String {
        telling::file_error(error)
    }
    fn finding(&self, finding: &Finding) -> String {
        telling::finding(finding)
    }
    fn where_found(&self, from_m: f64, to_m: Option<f64>, units: Units) -> String {
        match to_m.filter(|to_m| *to_m > from_m) {
            Some(to_m) => format::span(from_m, to_m, units),
            None => format!("à partir de {}", format::distance(from_m, units)),
        }
    }
    fn show_place(&self, place: &str) -> String {
        format!("Montrer sur la route\u{a0}: {place}")
    }
    fn unassessed_head(&self, count: usize) -> String {
        if count == 1 {
            "1 tronçon n’est pas évalué\u{a0}: aucun conseil n’y est donné".to_owned()
        } else {
            format!("{count} tronçons ne sont pas évalués\u{a0}: aucun conseil n’y est donné")
        }
    }
    fn unassessed(&self, span: &Span) -> String {
        telling::unassessed(span.why)
    }
}
