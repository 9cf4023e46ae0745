//! French words of the card for the cab.

use super::French;
use crate::words::say::file_name;
use crate::words::{CardWords, PlanWords};
use solver::truck::{Gear, Stage};

impl CardWords for French {
    fn card_head(&self) -> &'static str {
        "Fiche"
    }
    fn to_card(&self) -> &'static str {
        "La fiche pour la cabine, à imprimer"
    }
    fn card_sentence(&self) -> &'static str {
        "Pour la cabine, afin qu’aucun écran ne soit nécessaire en route\u{a0}: imprimez-la et pliez-la au milieu. Lisez-la avant le sommet, en stationnement."
    }
    fn print_card(&self) -> &'static str {
        "Imprimer la fiche"
    }
    fn save_picture(&self) -> &'static str {
        "L’enregistrer comme image"
    }
    fn picture_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "route", if reversed { "-sens-inverse-fiche.png" } else { "-fiche.png" })
    }
    fn save_rows(&self) -> &'static str {
        "Enregistrer ses lignes en CSV"
    }
    fn marker_label(&self) -> &'static str {
        "Borne ou compteur kilométrique au début de la route"
    }
    fn counts_down(&self) -> &'static str {
        "les bornes vont en décroissant"
    }
    fn markers_miss(&self, start: &str, end: &str) -> String {
        format!(
            "Les bornes ne couvrent pas toute la route\u{a0}: avec les données saisies, elles iraient de {start} au début à {end} à la fin, et il n’y en a pas au-dessous de zéro. Corrigez la borne du début ou le sens de leur décompte. En attendant, la fiche porte des distances depuis le début."
        )
    }
    fn card_is_old(&self) -> &'static str {
        "À ne pas utiliser\u{a0}: cette fiche correspond à des données précédentes"
    }
    fn do_not_descend(&self) -> &'static str {
        "NE DESCENDEZ PAS avec les données saisies"
    }
    fn no_speed_for(&self, numbers: &str, count: usize) -> String {
        let descents = if count == 1 { "la descente" } else { "les descentes" };
        format!(
            "Aucune vitesse sûre n’a été trouvée pour {descents} {numbers}. Prenez une autre route, ou planifiez de nouveau avec moins de chargement ou par un meilleur jour. La signalisation en place et les règles de la conduite professionnelle passent en premier."
        )
    }
    fn facts_of(&self, [mass, retarder, surface, load, air, brakes]: [&str; 6]) -> String {
        format!(
            "{mass} · ralentisseur\u{a0}: {retarder} · chaussée\u{a0}: {surface} · {load} · air\u{a0}: {air} · freins au départ\u{a0}: {brakes}"
        )
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["descente, de – à", "pente", "rapport", "cran", "à tenir", "à savoir"]
    }
    fn mile(&self) -> &'static str {
        "mi"
    }
    fn card_asks(&self, grade: &str, length: &str) -> String {
        format!("demande {grade}, {length}")
    }
    fn know_snub(&self, from: &str, to: &str) -> String {
        format!("Freinage intermittent\u{a0}: freinez de {from} à {to}, relâchez, recommencez.")
    }
    fn know_in_doubt(&self, grade: &str) -> String {
        format!("Courts passages jusqu’à {grade} non exclus\u{a0}: tenez les freins de service prêts.")
    }
    fn know_easing(&self, at: &str) -> String {
        format!("Au {at}, la pente s’adoucit, mais la descente continue\u{a0}: gardez le rapport.")
    }
    fn know_begins_unknown(&self) -> &'static str {
        "On ne sait pas comment la descente commence\u{a0}: la route qui précède n’a pas été évaluée."
    }
    fn know_slow_curves(&self, count: usize, speed: &str, at: &str) -> String {
        format!(
            "{count} virages demandent moins que la vitesse à tenir\u{a0}; le plus lent\u{a0}: {speed}, au {at}."
        )
    }
    fn know_slow_curve(&self, speed: &str, at: &str) -> String {
        format!("Virage le plus lent\u{a0}: {speed}, au {at}.")
    }
    fn know_posted(&self, speed: &str, km: &str, miles: &str) -> String {
        format!("Limitation signalée\u{a0}: {speed}, {km}, {miles}.")
    }
    fn know_ramp(&self, at: &str) -> String {
        format!("Voie de détresse au {at}.")
    }
    fn know_quiet(&self, at: &str) -> String {
        format!("Zone sensible au bruit, au {at}\u{a0}: le frein moteur peut y être interdit.")
    }
    fn know_at_foot(&self, name: &str, at: &str) -> String {
        format!("Au pied\u{a0}: {name}, au {at}.")
    }
    fn to_stop_at_foot(&self) -> &'static str {
        "lieu où il faut pouvoir s’arrêter"
    }
    fn know_cut_short(&self) -> &'static str {
        "On ne sait pas comment la descente continue."
    }
    fn card_more(&self, count: usize) -> String {
        if count == 1 {
            "Et 1 autre descente de cette route, qui n’est pas sur cette fiche\u{a0}: planifiez la route par parties.".to_owned()
        } else {
            format!(
                "Et {count} autres descentes de cette route, qui ne sont pas sur cette fiche\u{a0}: planifiez la route par parties."
            )
        }
    }
    fn before_crest_head(&self) -> &'static str {
        "Avant le sommet"
    }
    fn stop_at_check(&self, at: &str) -> String {
        format!(
            "Arrêtez-vous à l’aire de vérification des freins, au {at}\u{a0}: réglage, fuites, tambours ou disques, pneus, chargement."
        )
    }
    fn stop_where_allowed(&self) -> &'static str {
        "Arrêtez-vous là où c’est permis\u{a0}: réglage des freins, fuites, tambours ou disques, pneus, chargement."
    }
    fn try_retarder(&self) -> &'static str {
        "Levez un instant le pied de l’accélérateur\u{a0}: le ralentisseur agit-il, à chaque cran\u{a0}?"
    }
    fn look_ahead(&self) -> &'static str {
        "Météo, signalisation, fermetures\u{a0}: est-ce toujours la route planifiée\u{a0}?"
    }
    fn gear_before(&self, gear: Gear, stage: Stage, at: &str) -> String {
        format!("Avant le {at}\u{a0}: rapport {} engagé, {}.", gear.number(), self.stage(stage))
    }
    fn gear_at_start(&self, gear: Gear, stage: Stage) -> String {
        let gear = gear.number();
        format!(
            "Avant de démarrer\u{a0}: rapport {gear} engagé, {}. La route commence dans la descente.",
            self.stage(stage)
        )
    }
    fn shifting(&self, in_legs: bool) -> &'static str {
        if in_legs {
            "Dans la descente, ne changez de rapport que comme l’indiquent les lignes."
        } else {
            "Ne changez pas de rapport dans la descente."
        }
    }
    fn in_trouble_head(&self) -> &'static str {
        "Si le véhicule s’emballe"
    }
    fn brake_now(&self) -> &'static str {
        "Freinez énergiquement tout de suite et arrêtez-vous, tant que les freins sont assez froids pour y parvenir."
    }
    fn stay_in_gear(&self) -> &'static str {
        "Gardez le rapport engagé. Jamais le point mort, jamais l’embrayage, ne rétrogradez pas à vitesse élevée."
    }
    fn any_way_up(&self) -> &'static str {
        "Prenez une voie de détresse ou n’importe quelle voie qui monte. Aucune voie de détresse n’est saisie ici\u{a0}; il peut y en avoir."
    }
    fn take_ramp(&self, ramps: &str) -> String {
        format!("Prenez la voie de détresse au {ramps}, ou n’importe quelle voie qui monte.")
    }
    fn between_ramps(&self) -> &'static str {
        ", au "
    }
    fn warn_others(&self) -> &'static str {
        "Feux et avertisseur sonore\u{a0}: prévenez les autres."
    }
    fn no_places_entered(&self) -> &'static str {
        "Aucun lieu n’est saisi. Cela ne veut pas dire qu’il n’y en a pas."
    }
    fn card_cautions(&self) -> &'static str {
        "Calculé à partir de vos données et d’altitudes enregistrées, qui comportent des erreurs\u{a0}; ce n’est pas une autorisation de descendre. Le calcul ne voit ni le réglage des freins, ni les pneus, ni l’état de la chaussée, ni la météo, ni la circulation, ni le chargement. La signalisation en place, la loi, votre employeur et le constructeur du véhicule passent en premier. Les freins de service restent le moyen de s’arrêter. En cas de doute\u{a0}: arrêtez-vous au sommet, roulez plus lentement, prenez une autre route."
    }
    fn rows_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "route", if reversed { "-sens-inverse-descentes.csv" } else { "-descentes.csv" })
    }
}
