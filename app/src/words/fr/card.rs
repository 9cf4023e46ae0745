//! French words of the card for the cab.

use super::French;
use crate::cab::{CardOf, Know};
use crate::format::{self, Units};
use crate::words::say::{capital, file_name, name_or, span};
use crate::words::{CardWords, EntryWords, PlanWords, RoadsideWords};
use solver::road::{Place, PlaceKind};

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
    fn picture_name(&self, road: &str) -> String {
        file_name(road, "route", "-fiche.png")
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
    fn card_facts(&self, card: CardOf<'_>) -> String {
        let day = card.day;
        format!(
            "{} · ralentisseur\u{a0}: {} · chaussée\u{a0}: {} · {} · air\u{a0}: {} · freins au départ\u{a0}: {}",
            format::mass(card.truck.gross_mass_kg, card.units),
            self.retarder(card.truck.retarder.kind()),
            self.surface(day.surface),
            self.load(day.load),
            format::entered_temperature(day.air_c, card.units),
            format::entered_temperature(day.brakes_at_start_c, card.units)
        )
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["descente, de – à", "pente", "rapport", "cran", "à tenir", "à savoir"]
    }
    fn mile(&self) -> &'static str {
        "mi"
    }
    fn card_worst(&self, grade: &str, length: &str) -> String {
        format!("au pire {grade} sur {length}")
    }
    fn card_know(&self, card: CardOf<'_>, know: &Know) -> String {
        let at = |metres: f64| self.at(card, metres);
        match know {
            Know::Verdict(verdict) => capital(self.verdict(*verdict)) + ".",
            Know::Snub(snub) => format!(
                "Freinage intermittent\u{a0}: freinez de {} à {}, relâchez, recommencez.",
                format::hold_number(snub.from.0, card.units),
                format::hold_speed(snub.to.0, card.units)
            ),
            Know::Easing { at_m } => {
                format!(
                    "Au {}, la pente s’adoucit, mais la descente continue\u{a0}: gardez le rapport.",
                    at(*at_m)
                )
            }
            Know::SlowCurve { speed, at_m } => {
                format!(
                    "Virage le plus lent\u{a0}: {}, au {}.",
                    format::hold_speed(*speed, card.units),
                    at(*at_m)
                )
            }
            Know::Posted { speed, from_m, to_m } => {
                let [from, to] = [from_m, to_m].map(|it| card.marker.at(*it));
                format!(
                    "Limitation signalée\u{a0}: {}, {}, {}.",
                    format::hold_speed(*speed, card.units),
                    span("km", from, to, Units::Metric),
                    span(self.mile(), from, to, Units::Imperial)
                )
            }
            Know::Ramp { at_m } => format!("Voie de détresse au {}.", at(*at_m)),
            Know::Quiet { at_m } => {
                format!(
                    "Zone sensible au bruit, au {}\u{a0}: le frein moteur peut y être interdit.",
                    at(*at_m)
                )
            }
            Know::AtFoot { name, at_m } => {
                format!(
                    "Au pied\u{a0}: {}, au {}.",
                    name_or(name, "lieu où il faut pouvoir s’arrêter"),
                    at(*at_m)
                )
            }
            Know::CutShort => "On ne sait pas comment la descente continue.".to_owned(),
        }
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
    fn before_crest(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let stop = match card.places_of(PlaceKind::BrakeCheck).next() {
            Some(check) => format!(
                "Arrêtez-vous à l’aire de vérification des freins, au {}\u{a0}: réglage, fuites, tambours ou disques, pneus, chargement.",
                self.at(card, card.metres(check.index))
            ),
            None => "Arrêtez-vous là où c’est permis\u{a0}: réglage des freins, fuites, tambours ou disques, pneus, chargement.".to_owned(),
        };
        let gear = card.first_held().map(|(descent, advice)| {
            format!(
                "Avant le {}\u{a0}: rapport {} engagé, {}. Ne changez pas de rapport dans la descente.",
                self.at(card, descent.crest.0),
                advice.gear.number(),
                self.stage(advice.stage)
            )
        });
        let list = [
            Some(stop),
            Some(
                "Levez un instant le pied de l’accélérateur\u{a0}: le ralentisseur agit-il, à chaque cran\u{a0}?"
                    .to_owned(),
            ),
            Some(
                "Météo, signalisation, fermetures\u{a0}: est-ce toujours la route planifiée\u{a0}?".to_owned(),
            ),
            gear,
        ];
        ("Avant le sommet", list.into_iter().flatten().collect())
    }
    fn in_trouble(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let ramps = card.places_of(PlaceKind::EscapeRamp);
        let ramps: Vec<String> =
            ramps.map(|it| format!("au {}", self.at(card, card.metres(it.index)))).collect();
        let ramp = if ramps.is_empty() {
            "Prenez une voie de détresse ou n’importe quelle voie qui monte. Aucune voie de détresse n’est saisie ici\u{a0}; il peut y en avoir.".to_owned()
        } else {
            format!("Prenez la voie de détresse {}, ou n’importe quelle voie qui monte.", ramps.join(", "))
        };
        let list = [
            "Freinez énergiquement tout de suite et arrêtez-vous, tant que les freins sont assez froids pour y parvenir.".to_owned(),
            "Gardez le rapport engagé. Jamais le point mort, jamais l’embrayage, ne rétrogradez pas à vitesse élevée.".to_owned(),
            ramp,
            "Feux et avertisseur sonore\u{a0}: prévenez les autres.".to_owned(),
        ];
        ("Si le véhicule s’emballe", list.to_vec())
    }
    fn card_places(&self, card: CardOf<'_>) -> (&'static str, Vec<String>) {
        let one = |it: &Place| {
            format!(
                "{}\u{a0}: {}",
                self.at(card, card.metres(it.index)),
                name_or(&it.name, self.place_kind(it.kind))
            )
        };
        let mut list: Vec<String> = card.places.iter().map(one).collect();
        if list.is_empty() {
            list.push("Aucun lieu n’est saisi. Cela ne veut pas dire qu’il n’y en a pas.".to_owned());
        }
        ("Lieux", list)
    }
    fn card_cautions(&self) -> &'static str {
        "Calculé à partir de vos données et d’altitudes enregistrées, qui comportent des erreurs\u{a0}; ce n’est pas une autorisation de descendre. Le calcul ne voit ni le réglage des freins, ni les pneus, ni l’état de la chaussée, ni la météo, ni la circulation, ni le chargement. La signalisation en place, la loi, votre employeur et le constructeur du véhicule passent en premier. Les freins de service restent le moyen de s’arrêter. En cas de doute\u{a0}: arrêtez-vous au sommet, roulez plus lentement, prenez une autre route."
    }
    fn rows_name(&self, road: &str) -> String {
        file_name(road, "route", "-descentes.csv")
    }
}
