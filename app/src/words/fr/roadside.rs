//! French words of places and posted limits.

use super::French;
use crate::format::{self, Units};
use crate::words::RoadsideWords;
use solver::road::PlaceKind;

impl RoadsideWords for French {
    fn places_head(&self) -> &'static str {
        "Lieux et limitations signalées"
    }
    fn places_nav(&self) -> &'static str {
        "Lieux"
    }
    fn places_sentence(&self, count: usize) -> String {
        let found = match count {
            0 => {
                "Rien n’est encore placé sur cette route. Cela ne veut pas dire qu’il n’y a rien\u{a0}: repérez vous-même les aires de vérification des freins, les voies de détresse, les feux et les limitations."
            }
            1 => "Un seul élément est placé sur cette route. Il peut y en avoir d’autres.",
            _ => "Il peut y en avoir d’autres que ceux-ci.",
        };
        format!(
            "{found} Les lieux viennent des points de passage du fichier\u{a0}; placez-en d’autres là où se trouve le curseur dans l’image, ou d’après leur distance. Ils sont conservés sur cet appareil."
        )
    }
    fn put_here(&self) -> &'static str {
        "Placer un lieu ici"
    }
    fn put_at(&self) -> &'static str {
        "Placer un lieu à"
    }
    fn put(&self) -> &'static str {
        "Placer"
    }
    fn place_kind(&self, kind: PlaceKind) -> &'static str {
        match kind {
            PlaceKind::Summit => "sommet",
            PlaceKind::BrakeCheck => "aire de vérification des freins",
            PlaceKind::EscapeRamp => "voie de détresse",
            PlaceKind::Settlement => "village ou ville",
            PlaceKind::Stop => "arrêt, feux ou carrefour",
            PlaceKind::Parking => "stationnement ou aire de repos",
            PlaceKind::Tunnel => "tunnel",
            PlaceKind::Bridge => "pont",
            PlaceKind::Danger => "danger",
            PlaceKind::ChainUp => "aire de chaînage",
            PlaceKind::QuietZone => "zone sensible au bruit",
            PlaceKind::Exit => "sortie",
            PlaceKind::Other => "autre lieu",
        }
    }
    fn posted_limit(&self) -> &'static str {
        "limitation signalée"
    }
    fn kind_label(&self) -> &'static str {
        "Type"
    }
    fn name_label(&self) -> &'static str {
        "Nom"
    }
    fn at_label(&self) -> [&'static str; 3] {
        ["Distance", "Début", "Fin"]
    }
    fn limit_label(&self) -> &'static str {
        "Limitation"
    }
    fn set_the_limit(&self) -> &'static str {
        "La vitesse et la fin sont supposées et comptent déjà. Mettez ce que dit le panneau."
    }
    fn quiet_zone_caution(&self) -> &'static str {
        "Ici, un panneau peut interdire le frein moteur (ralentisseur moteur). Le plan compte quand même sur le ralentisseur\u{a0}: là où le panneau l’interdit, roulez plus lentement, sur un rapport plus bas, et gardez les freins de service froids."
    }
    fn take_off(&self) -> &'static str {
        "Retirer"
    }
    fn not_on_part(&self) -> &'static str {
        "hors de la partie affichée"
    }
    fn off_road(&self, first: &str, last: &str, units: Units) -> String {
        let unit = units.distance();
        format!("Ce point n’est pas sur cette route\u{a0}: elle va de {first} à {last} {unit}.")
    }
    fn no_stretch(&self) -> &'static str {
        "Une limitation doit finir après l’endroit où elle commence."
    }
    fn too_many_things(&self) -> &'static str {
        "Il n’y a de place que pour cent lieux et limitations. Retirez-en d’abord."
    }
    fn show_all_places(&self, count: usize) -> String {
        format!("Afficher les {}", format::whole(count as f64))
    }
}
