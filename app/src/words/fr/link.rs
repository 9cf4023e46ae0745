//! French words of the link and of the project.

use super::French;
use crate::words::LinkWords;
use crate::words::say::file_name;

impl LinkWords for French {
    fn make_link(&self) -> &'static str {
        "Copier un lien avec le véhicule et les conditions"
    }
    fn link_copied(&self) -> &'static str {
        "Copié. Le lien contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise."
    }
    fn link_made(&self) -> &'static str {
        "Copiez le lien ici. Il contient ce véhicule et ces conditions, aucune route et aucun lieu. Qui l’ouvre décide s’il les utilise."
    }
    fn link_label(&self) -> &'static str {
        "Lien avec le véhicule et les conditions"
    }
    fn link_offered(&self) -> &'static str {
        "Ce lien apporte un véhicule et des conditions. Vos propres données restent utilisées jusqu’à votre décision. La personne qui l’a envoyé conduit peut-être un autre véhicule\u{a0}: vérifiez chaque donnée."
    }
    fn use_link(&self) -> &'static str {
        "Utiliser le véhicule et les conditions du lien"
    }
    fn keep_mine(&self) -> &'static str {
        "Garder les miens"
    }
    fn link_taken(&self) -> &'static str {
        "Le véhicule et les conditions du lien sont utilisés maintenant\u{a0}: vérifiez-les avant de vous fier aux chiffres."
    }
    fn back_to_mine(&self) -> &'static str {
        "Revenir aux miens"
    }
    fn link_broken(&self) -> &'static str {
        "Le véhicule et les conditions de ce lien ne peuvent pas être lus\u{a0}; il en manque peut-être une partie. Redemandez-le. Vos propres données restent utilisées."
    }
    fn save_project(&self) -> &'static str {
        "Tout enregistrer dans un seul fichier"
    }
    fn project_sentence(&self) -> &'static str {
        "La route telle qu’elle a été donnée, avec ses lieux et ses limitations, le véhicule et les conditions, et de même pour la route gardée à côté. Il s’ouvre ici comme une route, sur n’importe quel appareil."
    }
    fn project_name(&self, road: &str) -> String {
        file_name(road, "route", ".steadygrade")
    }
    fn project_opened(&self) -> &'static str {
        "Le véhicule, les conditions et les lieux du projet sont utilisés maintenant\u{a0}: vérifiez-les avant de vous fier aux chiffres."
    }
}
