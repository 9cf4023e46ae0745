//! French words of the class view.

use super::{French, minutes};
use crate::class::Screen;
use crate::format::{self, Units};
use crate::words::ClassWords;

impl ClassWords for French {
    fn screen(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Routes",
            Screen::Forces => "Forces",
            Screen::Run => "Trajet",
            Screen::Pair => "Côte à côte",
            Screen::Exercises => "Exercices",
        }
    }
    fn idea(&self, screen: Screen) -> &'static str {
        match screen {
            Screen::Roads => "Une route dont on parle",
            Screen::Forces => "Là où un rapport rencontre la pente, le véhicule se stabilise",
            Screen::Run => "Un véhicule sur cette route, comme prévu",
            Screen::Pair => "Une route, un départ, une seule chose faite autrement",
            Screen::Exercises => "D’abord calculer, ensuite regarder",
        }
    }
    fn notes(&self, screen: Screen) -> &'static [&'static str] {
        match screen {
            Screen::Roads => &[
                "Choisissez une route, et faites dire à la classe comment elle la descendrait avant de montrer quoi que ce soit.",
                "On peut aussi déposer ici n’importe quel fichier GPX\u{a0}: la meilleure route est celle qu’ils font chaque semaine.",
            ],
            Screen::Forces => &[
                "Demandez d’abord\u{a0}: quel rapport\u{a0}? Faites ensuite glisser la pente jusqu’à sa valeur.",
                "La pente demande presque la même force à toutes les vitesses\u{a0}; un rapport bas en donne davantage. Le choix du rapport tient en cela.",
                "Faites glisser la pente jusqu’à ce que le repère sorte du bout d’une ligne\u{a0}: au-delà, le moteur tournerait trop vite.",
                "Ajoutez un dixième de la masse et regardez le repère se déplacer.",
            ],
            Screen::Run => &[
                "Arrêtez avant un sommet et demandez ce qui devrait déjà être engagé.",
                "Arrêtez sur un replat\u{a0}: est-ce fini\u{a0}?",
                "La température est un calcul. Ce qu’il ne voit pas, comme le réglage des freins, est pire que ce qu’il voit.",
            ],
            Screen::Pair => &[
                "Faites parier la classe avant le départ\u{a0}: combien de degrés, combien de minutes\u{a0}?",
                "Arrêtez là où ils se séparent. Du siège, on ne voit encore rien.",
                "À la fin, demandez ce qu’on y a gagné.",
            ],
            Screen::Exercises => &[
                "Imprimez la feuille vierge\u{a0}; la feuille de réponses porte le même numéro.",
                "Dans les étapes, les chiffres sont arrondis tels qu’ils sont écrits, pour qu’on puisse les suivre à la main.",
            ],
        }
    }
    fn screens(&self) -> &'static str {
        "Écrans du cours"
    }
    fn to_road_page(&self) -> &'static str {
        "Page de la route"
    }
    fn show_notes(&self) -> &'static str {
        "Notes"
    }
    fn keys(&self) -> &'static str {
        "Page suivante et page précédente\u{a0}: changer d’écran. N\u{a0}: ces notes. Espace\u{a0}: départ et arrêt. Flèches gauche et droite\u{a0}: pas à pas. Haut et bas\u{a0}: plus vite, plus lentement. Début\u{a0}: depuis le départ."
    }
    fn class_caution(&self) -> &'static str {
        "Pour enseigner, d’après des données et des altitudes qui comportent des erreurs. Pas une autorisation de descendre\u{a0}: les panneaux, la loi et les limites du constructeur passent d’abord."
    }
    fn grade_label(&self) -> &'static str {
        "Pente"
    }
    fn mass_label(&self) -> &'static str {
        "Masse"
    }
    fn stage_label(&self) -> &'static str {
        "Ralentisseur"
    }
    fn forces_about(&self) -> &'static str {
        "Force de retenue selon la vitesse\u{a0}: une ligne par rapport, et en travers ce que demandent les pentes. En dessous est dit où les rapports se stabilisent."
    }
    fn holding_axis(&self) -> &'static str {
        "force"
    }
    fn none_settles(&self) -> &'static str {
        "Avec ce cran, aucun rapport ne se stabilise sur cette pente."
    }
    fn nothing_in_reserve(&self) -> &'static str {
        "Au croisement, il n’y a pas de réserve."
    }
    fn reserve_kept(&self, reserve: &str, kept: Option<(String, String)>) -> String {
        match kept {
            Some((gear, speed)) => format!("Avec {reserve} de réserve\u{a0}: {gear}, à {speed} au plus."),
            None => format!("Avec {reserve} de réserve\u{a0}: aucun rapport."),
        }
    }
    fn print_screen(&self) -> &'static str {
        "Imprimer"
    }
    fn profile_about(&self) -> &'static str {
        "La route du départ à l’arrivée, avec un repère pour chaque véhicule"
    }
    fn truck_about(&self) -> &'static str {
        "Le véhicule sur sa pente, avec une flèche par force\u{a0}; les indicateurs disent la même chose en chiffres"
    }
    fn driving(&self) -> &'static str {
        "Trajet en cours de calcul…"
    }
    fn no_ride(&self) -> &'static str {
        "Cela ne peut pas être roulé ici\u{a0}: cette route n’a pas de descente avec une vitesse sûre, ou il n’y a rien à perdre."
    }
    fn start(&self) -> &'static str {
        "Départ"
    }
    fn stop(&self) -> &'static str {
        "Arrêt"
    }
    fn step(&self) -> &'static str {
        "Un pas"
    }
    fn anew(&self) -> &'static str {
        "Depuis le départ"
    }
    fn slower(&self) -> &'static str {
        "Plus lentement"
    }
    fn faster(&self) -> &'static str {
        "Plus vite"
    }
    fn arrow_hill(&self) -> &'static str {
        "pente"
    }
    fn arrow_engine(&self) -> &'static str {
        "moteur"
    }
    fn arrow_retarder(&self) -> &'static str {
        "ralentisseur"
    }
    fn arrow_service(&self) -> &'static str {
        "freins de service"
    }
    fn arrow_resistance(&self) -> &'static str {
        "roulement, air"
    }
    fn gauge_speed(&self) -> &'static str {
        "vitesse"
    }
    fn gauge_gear(&self) -> &'static str {
        "rapport"
    }
    fn gauge_stage(&self) -> &'static str {
        "cran"
    }
    fn gauge_engine(&self) -> &'static str {
        "moteur"
    }
    fn gauge_power(&self) -> &'static str {
        "retenue"
    }
    fn gauge_brakes(&self) -> &'static str {
        "freins"
    }
    fn after_stop(&self) -> &'static str {
        "après arrêt"
    }
    fn exercise_back(&self) -> &'static str {
        "Exercice précédent"
    }
    fn exercise_on(&self) -> &'static str {
        "Exercice suivant"
    }
    fn slips(&self) -> &'static str {
        "Ce que le second véhicule fait autrement"
    }
    fn as_planned(&self) -> &'static str {
        "comme prévu"
    }
    fn gear_high(&self) -> &'static str {
        "un rapport plus haut"
    }
    fn somewhat_heavier(&self) -> &'static str {
        "10 % plus lourd"
    }
    fn faster_by(&self, speed: &str) -> String {
        format!("{speed} de plus")
    }
    fn stage_lost(&self) -> &'static str {
        "un cran perdu"
    }
    fn hot_brakes(&self) -> &'static str {
        "freins chauds"
    }
    fn they_part(&self, at_m: f64, units: Units) -> String {
        format!("Ils se séparent à {}.", format::distance(at_m, units))
    }
    fn nowhere_apart(&self) -> &'static str {
        "Sur cette route, cela ne fait pas de différence notable."
    }
    fn time_apart(&self, sooner_s: f64) -> String {
        format!("{} {}", minutes(sooner_s.abs()), if sooner_s > 0.0 { "plus tôt" } else { "plus tard" })
    }
    fn no_time_apart(&self) -> &'static str {
        "aucun écart de temps"
    }
    fn compared(&self, name: &str, time: &str, wrong: &str, right: &str) -> String {
        format!(
            "{name}\u{a0}: {time}\u{a0}; après un freinage énergique jusqu’à l’arrêt, {wrong} au lieu de {right}."
        )
    }
    fn passes_limit(&self, from: &str) -> String {
        format!(
            "À partir de {from}, un freinage énergique jusqu’à l’arrêt dépasserait la limite. Ici, les freins tiennent quelle que soit leur chaleur\u{a0}; sur la route, ils s’évanouissent."
        )
    }
    fn forgiven(&self) -> &'static str {
        "Cette pente le pardonne. La suivante, peut-être pas."
    }
}
