//! French words of one descent's details and of its table.

use super::French;
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::Unusable;
use solver::plan::Advice;
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
    fn no_advice(&self) -> &'static str {
        "Aucune vitesse qui respecte les limites n’a été trouvée. Avec les données saisies, n’engagez pas ce véhicule dans cette descente."
    }
    fn falls_short(&self, share: &str) -> String {
        format!(
            "À plein cran, il manque {share} de ce que demande la descente\u{a0}: les freins de service doivent aider."
        )
    }
    fn more_than_asked(&self, share: &str) -> String {
        format!("À plein cran, {share} de plus que ce que demande la descente.")
    }
    fn advice_in_full(&self, advice: &Advice, [speed, engine_speed, reserve, time]: [&str; 4]) -> String {
        let name = self.stage(advice.stage);
        let stage = if advice.stage == Stage::OFF { name } else { format!("jusqu’au {name}") };
        format!(
            "Rapport {}, {stage}, {speed} à {engine_speed}. {reserve} {time} du sommet au pied de la descente.",
            advice.gear.number()
        )
    }
    fn way_label(&self) -> &'static str {
        "Crans au fil de la descente"
    }
    fn relief_label(&self) -> &'static str {
        "Où la pente s’adoucit"
    }
    fn eases_over(&self, span: &str, length: &str) -> String {
        format!(
            "{span}\u{a0}: plat ou montée sur {length}. Ne passez pas au rapport supérieur\u{a0}: la descente continue."
        )
    }
    fn grades_label(&self) -> &'static str {
        "Pente"
    }
    fn mean_grade(&self, grade: &str) -> String {
        format!("{grade} en moyenne.")
    }
    fn steepest_over(&self, grade: &str, length: &str, from: &str, doubt: &str) -> String {
        format!("{grade} sur les {length} les plus raides, à partir de {from}{doubt}.")
    }
    fn too_short_for_heights(&self) -> &'static str {
        "\u{a0}; les altitudes ne sont pas fiables sur une distance aussi courte"
    }
    fn curves_label(&self) -> &'static str {
        "Virages"
    }
    fn curve_count(&self, curves: &Curves) -> String {
        match (curves.count, curves.hairpins) {
            (1, 0) => "1 virage demande une vitesse plus basse que celle-ci".to_owned(),
            (1, _) => "1 virage en épingle demande une vitesse plus basse que celle-ci".to_owned(),
            (all, 0) => format!("{all} virages demandent une vitesse plus basse que celle-ci"),
            (all, some) => {
                format!(
                    "{all} virages, dont {some} en épingle, demandent une vitesse plus basse que celle-ci"
                )
            }
        }
    }
    fn slowest_curve(&self, speed: &str, at: &str, side: &str, radius: &str) -> String {
        format!("Le plus lent\u{a0}: {speed} au plus, à {at}, virage {side}, rayon d’environ {radius}.")
    }
    fn curves_estimated(&self) -> &'static str {
        "Les rayons sont des estimations d’après la trace\u{a0}; le dévers, la visibilité et l’état de la chaussée ne sont pas connus."
    }
    fn side(&self, left: bool) -> &'static str {
        if left { "à gauche" } else { "à droite" }
    }
    fn climb_label(&self) -> &'static str {
        "La même côte en montée"
    }
    fn climbs_in(&self, gear: u8, speed: &str) -> String {
        format!(
            "Moteur à pleine charge, le véhicule la monte sur le rapport {gear} à environ {speed}. Le rapport pour descendre est souvent plus bas."
        )
    }
    fn climbs_in_none(&self) -> &'static str {
        "Même moteur à pleine charge, aucun rapport ne permet de la monter."
    }
    fn cut_short(&self) -> &'static str {
        "La descente est coupée là où la route ne peut plus être évaluée. On ne sait pas comment elle continue."
    }
    fn brakes_arrive(&self, heat: &str) -> String {
        format!("Les freins arrivent au sommet à environ {heat}.")
    }
    fn table_of(&self, grade: &str, height: &str) -> String {
        format!(
            "Ce que donne chaque rapport avec chaque cran sur une pente de {grade}, à {height} d’altitude, sans accélérer et sans freins de service"
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["rapport", "vitesses utilisables", "réserve à la plus haute vitesse"]
    }
    fn more_than_needed(&self) -> &'static str {
        "plus que nécessaire"
    }
    fn overruns(&self) -> &'static str {
        "s’emballe"
    }
    fn above_speed(&self, speed: &str) -> String {
        format!("au-dessus de {speed}")
    }
    fn not_usable(&self) -> &'static str {
        "inutilisable"
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
    fn fall_in_part(&self, all: &str, blank: &str) -> String {
        format!("{all} (dont {blank} non évalués)")
    }
    fn no_work_counted(&self, length: &str) -> String {
        format!("Sur {length} non évalués, aucun travail de freinage n’est compté.")
    }
    fn whole_way(&self, time: &str, fall: &str, holding: &str, service: &str) -> String {
        format!(
            "Toute la route\u{a0}: {time}, {fall} de dénivelé négatif. Le ralentisseur et le moteur absorbent {holding}, les freins de service {service}."
        )
    }
    fn slowest_climb(&self, speed: &str) -> String {
        format!("Vitesse la plus basse en montée\u{a0}: environ {speed}.")
    }
    fn less_than(&self, share: &str) -> String {
        format!("moins de {share}")
    }
    fn share_and_fuel(&self, share: &str, fuel: &str) -> String {
        format!(
            "Part des freins de service dans le freinage\u{a0}: {share}. Carburant\u{a0}: environ {fuel}."
        )
    }
}
