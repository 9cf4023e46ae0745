//! French words of the road.

use super::{French, telling};
use crate::words::RoadWords;
use solver::road::{Class, FileError, Finding, Span};

impl RoadWords for French {
    fn road_head(&self) -> &'static str {
        "Cette route telle qu’elle est enregistrée"
    }
    fn both_ends(&self, start: &str, end: &str) -> String {
        format!("parcourue de l’extrémité à {start} d’altitude jusqu’à l’extrémité à {end} d’altitude")
    }
    fn left_blank(&self, length: &str, lower: Option<&str>) -> String {
        let lower =
            lower.map_or_else(String::new, |it| format!("\u{a0}; au-delà, la route est {it} plus bas"));
        format!("{length} n’ont pas pu être évalués{lower}. Aucun conseil n’y est donné.")
    }
    fn climbs_between(&self, start: &str, end: &str) -> String {
        format!("Cette route monte de {start} à {end} dans le sens affiché. Vous la descendez\u{a0}?")
    }
    fn grade_holds(&self, class: Class, base: &str) -> String {
        match class {
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
        }
    }
    fn roughness(&self, before: &str, after: &str) -> String {
        format!(
            "Neuf fois sur dix, les pentes de deux tronçons voisins de 100\u{a0}m diffèrent de {before} points de pourcentage au plus dans l’enregistrement, de {after} au plus après lissage."
        )
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
    fn onward_from(&self, place: &str) -> String {
        format!("à partir de {place}")
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
