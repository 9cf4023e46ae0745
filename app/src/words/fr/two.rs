//! French words of two roads side by side.

use super::{French, minutes};
use crate::format::Units;
use crate::words::{TwoRow, TwoWords};

impl TwoWords for French {
    fn two_head(&self) -> &'static str {
        "Deux routes"
    }
    fn keep_beside(&self) -> &'static str {
        "Garder ceci à côté du prochain choix"
    }
    fn keep_beside_sentence(&self) -> &'static str {
        "Pour comparer deux routes, deux véhicules ou deux jours\u{a0}: ce qui est affiché maintenant reste à côté de ce que vous choisirez ensuite."
    }
    fn two_next(&self) -> &'static str {
        "Les deux sont encore identiques\u{a0}: choisissez un autre fichier, inversez le sens de la route, ou changez le véhicule ou les conditions du jour."
    }
    fn end_two(&self) -> &'static str {
        "Fermer la comparaison"
    }
    fn swap(&self) -> &'static str {
        "Échanger les deux"
    }
    fn swap_sentence(&self) -> &'static str {
        "Lors de l’échange, chaque route garde son véhicule, ses conditions et ses lieux."
    }
    fn two_heads(&self) -> [&'static str; 4] {
        ["", "gardé", "affiché", "différence"]
    }
    fn two_row(&self, row: TwoRow) -> &'static str {
        match row {
            TwoRow::Truck => "véhicule, conditions du jour",
            TwoRow::Worst => "pire descente",
            TwoRow::Descents => "descentes",
            TwoRow::Hold => "vitesse à tenir la plus basse",
            TwoRow::Hottest => "freins au plus chaud après un freinage énergique jusqu’à l’arrêt",
            TwoRow::Braked => "freins de service utilisés en descente, aussi pour virages et lieux",
            TwoRow::Service => "travail des freins de service",
            TwoRow::Holding => "travail du ralentisseur et du moteur",
            TwoRow::Down => "temps dans les descentes",
            TwoRow::Up => "temps dans les montées de 2\u{a0}% et plus",
            TwoRow::Crawl => "vitesse la plus basse en montée",
            TwoRow::Time => "temps total",
            TwoRow::Rise => "dénivelé positif",
            TwoRow::Fall => "dénivelé négatif",
            TwoRow::Length => "longueur",
            TwoRow::Curves => "virages où il faut ralentir",
            TwoRow::Checks => "aires de vérification des freins saisies",
            TwoRow::Ramps => "voies de détresse saisies",
            TwoRow::Parking => "stationnements saisis",
            TwoRow::Blank => "non évalué",
            TwoRow::Fuel => "carburant, environ",
            TwoRow::Cost => "coût aux tarifs saisis",
        }
    }
    fn no_difference(&self) -> &'static str {
        "identique"
    }
    fn two_caution(&self) -> &'static str {
        "Aucune ligne ne décide à elle seule, et rien de tout cela n’autorise à descendre. Ce qui n’est pas évalué n’entre pas dans ces chiffres. La signalisation, les fermetures de routes et les règles de votre employeur passent en premier."
    }
    fn rate_labels(&self) -> [&'static str; 2] {
        ["Prix du carburant", "Coût du véhicule et du conducteur"]
    }
    fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => ["par litre", "par heure"],
            Units::Imperial => ["par gallon US", "par heure"],
        }
    }
    fn time(&self, seconds: f64) -> String {
        minutes(seconds)
    }
    fn rank(&self, count: usize) -> String {
        format!("Comparer ces {count} routes")
    }
    fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count {
            format!("Routes calculées\u{a0}: {done} sur {count}")
        } else {
            format!("{count} routes")
        }
    }
    fn ranked_sentence(&self) -> &'static str {
        "Chacune pour le véhicule et les conditions du jour saisis, la pire descente en premier. Ouvrez-en une, et gardez-en une autre à côté."
    }
    fn ranking(&self) -> &'static str {
        "calcul en cours"
    }
    fn open_ranked(&self) -> &'static str {
        "Ouvrir"
    }
    fn beside_ranked(&self) -> &'static str {
        "Garder à côté"
    }
    fn ranked_ends(&self) -> &'static str {
        "sens"
    }
    fn ranked_labels(&self) -> [&'static str; 4] {
        ["longueur", "freins après arrêt", "vitesse à tenir la plus basse", "temps"]
    }
    fn rank_again(&self) -> &'static str {
        "Le véhicule ou les conditions du jour ont changé\u{a0}: recalculer les routes"
    }
}
