//! French words of the answer: verdicts, the list, cautions.

use super::{French, minutes};
use crate::words::PlanWords;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{HeatStep, Verdict};

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
    fn holds_on_average(&self) -> &'static str {
        "retient le véhicule en moyenne"
    }
    fn brakes_touch(&self) -> &'static str {
        "retient le véhicule, les freins de service agissent un peu"
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
    fn in_legs(&self, [from, to]: [u8; 2], stage: &str, [slow, fast]: [&str; 2]) -> String {
        format!("rapports {from} à {to}, {stage} sur le plus bas, de {slow} à {fast}")
    }
    fn gear_number(&self, number: u8) -> String {
        format!("rapport {number}")
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "Sur les parties qui ont pu être évaluées, aucune côte ne demande de rapport ni de cran de ralentisseur particulier."
        } else {
            "Dans ce sens, aucune côte de cette route ne demande de rapport ni de cran de ralentisseur particulier."
        }
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
            "Freinage intermittent\u{a0}: à {from}, freinez jusqu’à {to} en environ {on}\u{a0}s, relâchez, et recommencez après environ {off}\u{a0}s là où la descente demande le plus\u{a0}; environ {} en tout. Ne freinez pas en continu.",
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
            "demande",
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
