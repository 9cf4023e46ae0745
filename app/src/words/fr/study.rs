//! French words of what follows from a plan.

use super::French;
use crate::format;
use crate::words::StudyWords;
use solver::study::{Input, NotMeasured};
use solver::truck::AxlePlace;

impl StudyWords for French {
    fn change_label(&self) -> &'static str {
        "Ce qui changerait la réponse"
    }
    fn light_enough(&self, mass: &str) -> String {
        format!("À {mass} ou moins, le ralentisseur retiendrait le véhicule avec la réserve.")
    }
    fn no_lighter_load(&self) -> &'static str {
        "Un chargement plus léger n’y changerait rien."
    }
    fn more_retarding(&self, share: &str) -> String {
        format!("Le véhicule serait retenu avec la réserve si son ralentissement était plus fort de {share}.")
    }
    fn reserve_kept(&self, kept: &str, asked: &str) -> String {
        format!("En l’état, on peut garder au plus {kept} de réserve, et non {asked}.")
    }
    fn cool_enough(&self, at: &str) -> String {
        format!(
            "Avec des freins à {at} au plus au sommet, la limite serait respectée\u{a0}: laissez-les d’abord refroidir."
        )
    }
    fn carried_label(&self) -> &'static str {
        "Vers la montée suivante"
    }
    fn meets_rise(&self, at: &str, speed: &str) -> String {
        format!(
            "Si la vitesse est ainsi tenue jusqu’au pied de la descente, le véhicule aborde la montée, à {at}, avec une vitesse d’environ {speed}. Ne relâchez pas plus tôt pour en avoir davantage."
        )
    }
    fn sure_label(&self) -> &'static str {
        "Degré de certitude"
    }
    fn driven_so(&self, runs: usize) -> String {
        format!(
            "Parcours calculé {runs} fois, avec des pentes, une masse, des résistances, un vent, un ralentisseur et des freins chacun un peu différents de ce qui est admis."
        )
    }
    fn in_none(&self, runs: usize) -> String {
        format!("0 fois sur {runs}")
    }
    fn in_all(&self, runs: usize) -> String {
        format!("les {runs} fois")
    }
    fn in_some(&self, some: usize, runs: usize) -> String {
        format!("{some} fois sur {runs}")
    }
    fn speed_held(&self, of: &str) -> String {
        format!("Vitesse tenue par le ralentisseur seul\u{a0}: {of}.")
    }
    fn limit_kept(&self, of: &str) -> String {
        format!("Limite respectée par les freins, un freinage énergique jusqu’à l’arrêt compris\u{a0}: {of}.")
    }
    fn nine_of_ten(&self, cool: &str, hot: &str) -> String {
        format!(
            "Neuf fois sur dix, les freins étaient entre {cool} et {hot} après un freinage énergique jusqu’à l’arrêt."
        )
    }
    fn spread_from(&self, inputs: &str) -> String {
        format!("Cet écart vient surtout {inputs}.")
    }
    fn input(&self, input: Input) -> &'static str {
        match input {
            Input::Grade => "des pentes",
            Input::Mass => "de la masse",
            Input::Rolling => "de la résistance au roulement",
            Input::Drag => "de la résistance de l’air",
            Input::Retarder => "de ce que donne le ralentisseur",
            Input::Wind => "du vent",
            Input::BrakesAtStart => "de la température des freins au départ",
            Input::Cooling => "de la chaleur que les freins stockent et cèdent",
        }
    }
    fn and_then(&self) -> &'static str {
        ", puis "
    }
    fn too_long_to_be_sure(&self) -> &'static str {
        "Cette route est trop longue pour que son parcours soit calculé 256 fois\u{a0}: calculez-en une partie pour connaître le degré de certitude de son plan."
    }
    fn studying(&self, share: f32) -> String {
        format!("Calcul du degré de certitude\u{a0}: {}", format::share(f64::from(share)))
    }
    fn not_yet(&self) -> &'static str {
        "…"
    }
    fn lost_label(&self) -> &'static str {
        "Si le ralentisseur tombe en panne"
    }
    fn stops_anywhere(&self) -> &'static str {
        "Un freinage énergique, commencé dans les deux secondes, arrête le véhicule sans dépasser la température limite, de n’importe quel endroit de la descente."
    }
    fn stops_until(&self, until: &str) -> String {
        format!(
            "Un freinage énergique, commencé dans les deux secondes, arrête le véhicule sans dépasser la température limite jusqu’au point à {until}\u{a0}; au-delà, non."
        )
    }
    fn stops_nowhere(&self) -> &'static str {
        "Même au sommet, un freinage énergique jusqu’à l’arrêt dépasserait la température limite."
    }
    fn brakes_hold(&self) -> &'static str {
        "Les freins de service pourraient aussi tenir la vitesse du véhicule jusqu’au pied de la descente sans dépasser la limite."
    }
    fn brakes_hold_from(&self, from: &str) -> String {
        format!(
            "Ce n’est qu’à partir de {from} que les freins de service pourraient tenir la vitesse du véhicule jusqu’au pied de la descente\u{a0}; avant, arrêtez-vous."
        )
    }
    fn brakes_hold_nowhere(&self) -> &'static str {
        "Les freins de service ne pourraient pas retenir le véhicule jusqu’au pied de la descente\u{a0}: arrêtez-vous."
    }
    fn neither_from(&self, from: &str) -> String {
        format!("À partir de {from}, ni l’un ni l’autre ne respecterait la limite.")
    }
    fn ramp_met(&self, at: &str, lost_at: &str, speed: &str, needs: &str) -> String {
        format!(
            "Voie de détresse à {at}\u{a0}: en roulant sans aucun frein depuis le point à {lost_at}, le véhicule l’aborderait à environ {speed}\u{a0}; il faudrait environ {needs} d’un lit horizontal de gravier rond non tassé."
        )
    }
    fn no_ramp_entered(&self) -> &'static str {
        "Aucune voie de détresse n’est saisie sur cette descente\u{a0}; cela ne veut pas dire qu’il n’y en a pas."
    }
    fn adjustment_label(&self) -> &'static str {
        "Freins mal réglés"
    }
    fn long_stroke(&self, at: &str, shorter: &str, short: &str) -> String {
        format!(
            "Si les freins à tambour d’un groupe d’essieux avaient à froid une course de 1¾\u{a0}pouce (44\u{a0}mm), un cylindre de frein de taille\u{a0}30 atteindrait sa limite de 2\u{a0}pouces (51\u{a0}mm) à {at}\u{a0}: au-delà, ils ne comptent pas ici, et les autres sont plus chauds. À 1⅝\u{a0}pouce (41\u{a0}mm), c’est {shorter}\u{a0}; à 1½\u{a0}pouce (38\u{a0}mm), {short}."
        )
    }
    fn half_braked(&self) -> &'static str {
        "Si les freins à disque d’un groupe d’essieux ne freinaient qu’à moitié, les autres seraient plus chauds sur toute la route."
    }
    fn out_of_adjustment(&self, axles: &str, heat: &str, over: &str) -> String {
        format!("{axles}\u{a0}: environ {heat} après un freinage énergique jusqu’à l’arrêt{over}.")
    }
    fn axles(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Essieu directeur",
            AxlePlace::Drive => "Essieux moteurs",
            AxlePlace::Trailer => "Remorque",
        }
    }
    fn slowing_label(&self) -> &'static str {
        "Ralentir pour ce qui vient"
    }
    fn slowing_sentence(&self) -> &'static str {
        "Pied levé de l’accélérateur et à plein cran à partir de là, le ralentisseur seul ramène ce véhicule à la vitesse indiquée, et les freins de service restent froids. La signalisation et ce que vous voyez passent en premier."
    }
    fn slowing_heads(&self) -> [&'static str; 6] {
        [
            "endroit",
            "pour quoi",
            "vitesse à atteindre",
            "plein cran à partir de",
            "sur le rapport",
            "freins de service seuls",
        ]
    }
    fn full_stage_from(&self, from: &str, speed: &str) -> String {
        format!("{from}, à {speed}")
    }
    fn rest_below(&self, speed: &str) -> String {
        format!("\u{a0}; en dessous de {speed}, les freins de service")
    }
    fn brake_early(&self) -> &'static str {
        "insuffisant\u{a0}: freinez tôt"
    }
    fn standstill(&self) -> &'static str {
        "arrêt"
    }
    fn by_brakes_alone(&self, way: &str, after: &str) -> String {
        format!("{way}, puis environ {after}")
    }
    fn curve_of(&self, radius: &str) -> String {
        format!("virage, rayon d’environ {radius}")
    }
    fn place_to_stop(&self) -> &'static str {
        "lieu où il faut s’arrêter"
    }
    fn town(&self) -> &'static str {
        "village ou ville"
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Et 1 autre endroit où il faut moins ralentir.".to_owned()
        } else {
            format!("Et {count} autres endroits où il faut moins ralentir.")
        }
    }
    fn driven_in_short(&self, runs: usize) -> String {
        format!(
            "Parcours calculé {runs} fois, avec des pentes, une masse, un vent, un ralentisseur et des freins un peu différents"
        )
    }
    fn held_and_kept(&self) -> &'static str {
        "chaque fois, le ralentisseur a tenu la vitesse et les freins ont respecté la limite."
    }
    fn shares_held(&self, held: &str, kept: &str) -> String {
        format!(
            "le ralentisseur seul a tenu la vitesse dans {held} des cas, les freins ont respecté la limite dans {kept} des cas."
        )
    }
    fn evidence_head(&self) -> &'static str {
        "Vérifications"
    }
    fn evidence_sentence(&self) -> &'static str {
        "Ce à quoi le calcul est confronté\u{a0}: des valeurs extérieures à ce projet, chacune avec sa source et la façon dont nous l’avons obtenue, et le résultat obtenu ici. Les mêmes lignes servent de tests au projet."
    }
    fn evidence_count(&self, rows: usize, known: usize) -> String {
        let marked = match known {
            0 => "aucune ne s’écarte de sa source au-delà de la tolérance".to_owned(),
            1 => "1 s’écarte de sa source au-delà de la tolérance, et est marquée comme telle".to_owned(),
            _ => {
                format!(
                    "{known} s’écartent de leur source au-delà de la tolérance, et sont marquées comme telles"
                )
            }
        };
        format!("{rows} valeurs\u{a0}; {marked}.")
    }
    fn evidence_heads(&self) -> [&'static str; 4] {
        ["objet", "valeur de la source", "ici", "écart"]
    }
    fn evidence_difference(&self) -> &'static str {
        "s’écarte"
    }
    fn evidence_missing(&self) -> &'static str {
        "Les lignes n’ont pas pu être chargées. Ouvrez cette partie encore une fois, ou rechargez la page."
    }
    fn measured_head(&self) -> &'static str {
        "Ce qui a tenu aujourd’hui"
    }
    fn measured_sentence(&self) -> &'static str {
        "Vous avez tenu une vitesse constante dans une descente avec le ralentisseur seul, sans accélérer et sans freins de service\u{a0}? Saisissez après coup, en stationnement, ce que vous avez relevé\u{a0}: vous saurez ce que votre ralentisseur donne vraiment avec la masse et les conditions du jour saisies plus haut."
    }
    fn measured_fields(&self) -> [&'static str; 6] {
        [
            "Rapport",
            "Cran",
            "Régime moteur",
            "Vitesse constante",
            "Pente, en descente",
            "ou\u{a0}: endroit sur la route affichée",
        ]
    }
    fn measured_place_hint(&self) -> &'static str {
        "Si un endroit est indiqué, ce sont la pente et l’altitude de cet endroit qui sont prises."
    }
    fn measure(&self) -> &'static str {
        "Calculer"
    }
    fn measured_missing(&self) -> &'static str {
        "Saisissez le rapport, le cran, le régime moteur et la vitesse constante, ainsi qu’une pente en descente ou un endroit dans une descente de la route affichée, le tout en nombres."
    }
    fn held_with(&self, engine_speed: &str, power: &str, assumed: &str, share: &str) -> String {
        format!(
            "À {engine_speed}, le véhicule a été retenu avec {power}\u{a0}; ses données donnent {assumed}. Cela fait {share} de ce qu’elles indiquent pour le ralentisseur."
        )
    }
    fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => "Ce véhicule n’a pas ce rapport ou ce cran.".to_owned(),
            NotMeasured::Off => {
                "Le ralentisseur coupé, rien n’est appris à son sujet\u{a0}: saisissez un cran.".to_owned()
            }
            NotMeasured::NotPushed => {
                "Cette pente ne pousse pas ce véhicule à cette vitesse\u{a0}: saisissez un tronçon plus raide."
                    .to_owned()
            }
            NotMeasured::GaugesDiffer(turning) => format!(
                "Sur ce rapport et à cette vitesse, le moteur tournerait à environ {}\u{a0}: le rapport engagé, le rapport de pont, les pneus ou l’un des deux chiffres est faux.",
                format::engine_speed(turning.0)
            ),
            NotMeasured::OutOfReach(factor) => format!(
                "Le ralentisseur devrait donner {} de ce qu’indiquent ses données. Il est plus probable que la masse, la pente ou le cran ne soient pas ceux saisis, ou que les freins de service aient aidé.",
                format::share(*factor)
            ),
        }
    }
    fn use_measured(&self) -> &'static str {
        "Planifier avec cette valeur"
    }
    fn undo_measured(&self) -> &'static str {
        "Revenir aux données du véhicule"
    }
    fn scale_in_use(&self, scale: f64) -> String {
        format!("Les plans comptent sur {} des données du ralentisseur.", format::share(scale))
    }
}
