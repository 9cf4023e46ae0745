//! French words of the answer: verdict, deciding sentence, what governs, cautions.

use super::{French, minutes};
use crate::format::{self, Units};
use crate::words::say::{plain, strong};
use crate::words::{Piece, PlanWords};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Choice, Descent, HeatStep, Verdict};

impl PlanWords for French {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "le ralentisseur retient le véhicule",
            Verdict::LittleInReserve => "retient le véhicule, peu de réserve",
            Verdict::NeedsServiceBrakes => "freins de service nécessaires",
            Verdict::NoSafeSpeed => "aucune vitesse sûre trouvée",
        }
    }
    fn engine_holds(&self) -> &'static str {
        "le moteur seul retient le véhicule"
    }
    fn engine_holds_little(&self) -> &'static str {
        "le moteur seul retient le véhicule, peu de réserve"
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "froids",
            HeatStep::Warm => "tièdes",
            HeatStep::Hot => "chauds",
            HeatStep::OverLimit => "au-dessus de la limite",
        }
    }
    fn stage_number(&self, number: usize) -> String {
        format!("cran {number}")
    }
    fn retarder_off(&self) -> &'static str {
        "ralentisseur coupé"
    }
    fn off(&self) -> &'static str {
        "coupé"
    }
    fn gear_number(&self, number: u8) -> String {
        format!("rapport {number}")
    }
    fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" à partir du ", "début de la route".to_owned())
        } else {
            (" à partir du sommet à ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "La descente\u{a0}: ".to_owned()
        } else {
            format!("La descente {} sur {count} est décisive\u{a0}: ", descent.number)
        };
        match &descent.choice {
            Choice::Held(advice) => vec![
                plain(opening),
                strong(self.gear(advice.gear)),
                plain(", "),
                strong(self.stage(advice.stage)),
                plain(", tenir "),
                strong(format::hold_speed(advice.speed.0, units)),
                plain(place),
                strong(crest),
                plain("."),
            ],
            Choice::NoSafeSpeed(_) => vec![
                plain(opening),
                strong("aucune vitesse sûre n’a été trouvée"),
                plain(place),
                strong(crest),
                plain(". Avec les données saisies, n’engagez pas ce véhicule dans cette descente."),
            ],
        }
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "Sur les parties qui ont pu être évaluées, aucune côte ne demande de rapport ni de cran de ralentisseur particulier."
        } else {
            "Dans ce sens, aucune côte de cette route ne demande de rapport ni de cran de ralentisseur particulier."
        }
    }
    fn steepest_part(&self, length: &str, grade: &str, from: &str) -> String {
        format!("la partie la plus raide ({grade} sur {length}, à partir de {from})")
    }
    fn chosen_to_hold(&self, foot: &str, steepest: &str) -> String {
        format!(
            "Engagez ce rapport avant le sommet et gardez-le jusqu’au pied de la descente, à {foot}. Il est choisi pour {steepest}."
        )
    }
    fn chosen_from_start(&self, foot: &str, steepest: &str) -> String {
        format!(
            "Engagez ce rapport avant de démarrer et gardez-le jusqu’au pied de la descente, à {foot}. Il est choisi pour {steepest}."
        )
    }
    fn ruled_out_by(&self, steepest: &str) -> String {
        format!("Ce qui l’exclut, c’est {steepest}.")
    }
    fn along_label(&self) -> &'static str {
        "Chaque descente a son propre rapport, à partir de son sommet à\u{a0}:"
    }
    fn no_safe_speed(&self) -> &'static str {
        "aucune vitesse sûre trouvée"
    }
    fn along_more(&self, count: usize) -> String {
        if count == 1 {
            "et 1 autre dans la liste ci-dessous".to_owned()
        } else {
            format!("et {count} autres dans la liste ci-dessous")
        }
    }
    fn other_mode_label(&self, day: &Day) -> &'static str {
        match day.service_brakes {
            ServiceBrakes::InReserve => "Si vous permettiez le freinage intermittent",
            ServiceBrakes::MaySnub => "Avec les freins de service en réserve",
        }
    }
    fn same_choice(&self) -> &'static str {
        "Même rapport, même cran et même vitesse."
    }
    fn choice_apart(&self, choice: &str, more_s: f64) -> String {
        let change = if more_s < 0.0 { "de moins" } else { "de plus" };
        format!("{choice}\u{a0}; {} {change}.", minutes(more_s.abs()))
    }
    fn heavier_label(&self) -> &'static str {
        "Si le véhicule pèse 10\u{a0}% de plus"
    }
    fn mass_out_of_range(&self) -> &'static str {
        "Cette masse est hors de la plage admise."
    }
    fn heat_label(&self) -> &'static str {
        "Freins de service"
    }
    fn brakes_at(&self, hottest: &str, after_stop: &str, limit: &str) -> String {
        format!(
            "Environ {hottest} au plus chaud\u{a0}; {after_stop} après un freinage énergique jusqu’à l’arrêt (limite\u{a0}: {limit})."
        )
    }
    fn snub_between(&self, from: &str, to: &str, on: &str, off: &str, count: u32) -> String {
        format!(
            "Freinage intermittent\u{a0}: à {from}, freinez jusqu’à {to} en environ {on}\u{a0}s, relâchez, et recommencez après environ {off}\u{a0}s sur la partie la plus raide\u{a0}; environ {} en tout. Ne freinez pas en continu.",
            if count == 1 { "1 freinage".to_owned() } else { format!("{} freinages", count) }
        )
    }
    fn parked(&self) -> &'static str {
        "Préparez votre trajet en stationnement. N’utilisez pas cette page en conduisant."
    }
    fn cautions(&self) -> &'static [&'static str] {
        &[
            "Une aide pour préparer et pour enseigner\u{a0}: ni une consigne, ni la validation d’une route.",
            "Calculé à partir de vos données et d’altitudes enregistrées, qui comportent des erreurs.",
            "Le calcul ne voit ni le réglage des freins, ni les pneus, ni l’état de la chaussée, ni la météo, ni la circulation, ni les fermetures de routes, ni la position du chargement.",
            "La signalisation en place, la loi, les règles de votre employeur et les limites du constructeur passent en premier.",
            "Les freins de service restent le moyen de s’arrêter.",
            "En cas de doute\u{a0}: arrêtez-vous au sommet, roulez plus lentement, ou prenez une autre route.",
        ]
    }
    fn descents_head(&self, count: usize) -> String {
        match count {
            0 => "Aucune descente".to_owned(),
            1 => "1 descente".to_owned(),
            _ => format!("{count} descentes"),
        }
    }
    fn order(&self) -> &'static str {
        "Ordre de la liste"
    }
    fn worst_first(&self) -> &'static str {
        "la pire d’abord"
    }
    fn road_order(&self) -> &'static str {
        "le long de la route"
    }
    fn columns(&self) -> [&'static str; 10] {
        [
            "descente",
            "début",
            "longueur",
            "dénivelé",
            "moyenne",
            "plus raide",
            "rapport",
            "cran",
            "à tenir",
            "après arrêt",
        ]
    }
    fn descent(&self, number: usize) -> String {
        format!("Descente {number}")
    }
    fn details_of(&self, number: usize) -> String {
        format!("Descente {number}\u{a0}: détails")
    }
}
