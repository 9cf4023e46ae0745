//! French words of the page's frame.

use super::French;
use crate::format::{self, Units};
use crate::message::Phase;
use crate::trouble::WorkTrouble;
use crate::words::say::file_name;
use crate::words::{EntryWords, PageWords, RoadWords};

impl PageWords for French {
    fn made_for(&self, facts: &str) -> String {
        format!("Calculé pour\u{a0}: {facts}.")
    }
    fn to_truck(&self) -> &'static str {
        "Est-ce votre véhicule, et ce jour\u{a0}? Entrez les vôtres."
    }
    fn to_class(&self) -> &'static str {
        "Cours"
    }
    fn targets(&self) -> &'static str {
        "Taille des boutons et des champs"
    }
    fn usual_targets(&self) -> &'static str {
        "mains nues"
    }
    fn large_targets(&self) -> &'static str {
        "gants"
    }
    fn purpose(&self) -> &'static str {
        "Comment descendre chaque côte d’une route\u{a0}: rapport, cran du ralentisseur, vitesse, chaleur des freins"
    }
    fn road_section(&self) -> &'static str {
        "Route"
    }
    fn descents_section(&self) -> &'static str {
        "Descentes"
    }
    fn sections(&self) -> &'static str {
        "Sections de cette page"
    }
    fn skip_to_answer(&self) -> &'static str {
        "Aller à la réponse"
    }
    fn units(&self) -> &'static str {
        "Unités"
    }
    fn metric(&self) -> &'static str {
        "km/h · m · t"
    }
    fn imperial(&self) -> &'static str {
        "mph · ft · lb"
    }
    fn theme(&self) -> &'static str {
        "Clair ou nuit"
    }
    fn light(&self) -> &'static str {
        "clair"
    }
    fn night(&self) -> &'static str {
        "nuit"
    }
    fn system(&self) -> &'static str {
        "auto"
    }
    fn choose_file(&self) -> &'static str {
        "Choisir un fichier GPX"
    }
    fn or_drop(&self) -> &'static str {
        "ou en déposer un n’importe où sur la page"
    }
    fn drop_here(&self) -> &'static str {
        "Déposez le fichier GPX\u{a0}: il n’est lu que sur cet appareil"
    }
    fn stays_here(&self) -> &'static str {
        "Rien ne quitte cet appareil."
    }
    fn demo_mark(&self) -> &'static str {
        "démo inventée"
    }
    fn demo_sentence(&self) -> &'static str {
        "Cette route est inventée, ce n’est pas un vrai col. Choisissez votre propre fichier GPX, ou déposez-le n’importe où sur la page\u{a0}; il reste sur cet appareil."
    }
    fn show_demo(&self) -> &'static str {
        "Afficher la démo"
    }
    fn reverse(&self) -> &'static str {
        "Inverser le sens"
    }
    fn reversed_mark(&self) -> &'static str {
        "en sens inverse de l’enregistrement"
    }
    fn course(&self) -> &'static str {
        "Trace du fichier"
    }
    fn which_track(&self, file: &str, count: usize) -> String {
        format!("{file} contient {count} routes. Laquelle allez-vous prendre\u{a0}?")
    }
    fn course_unusable(&self) -> &'static str {
        "sans altitudes, ou longueur insuffisante"
    }
    fn leave_it(&self) -> &'static str {
        "Ne rien changer"
    }
    fn which_order(&self, count: usize) -> String {
        format!("{count} fichiers\u{a0}: dans quel ordre sont-ils parcourus\u{a0}?")
    }
    fn which_order_sentence(&self) -> &'static str {
        "Ils sont joints de haut en bas. Là où l’un finit à plus de 2\u{a0}km du début du suivant, l’ordre ou un sens est faux."
    }
    fn join(&self, count: usize) -> String {
        if count == 1 { "Ouvrir ce fichier".to_owned() } else { format!("Joindre {count} fichiers") }
    }
    fn leg_up(&self, name: &str) -> String {
        format!("Parcourir {name} plus tôt")
    }
    fn leg_down(&self, name: &str) -> String {
        format!("Parcourir {name} plus tard")
    }
    fn turn_leg(&self) -> &'static str {
        "En sens inverse"
    }
    fn leave_leg(&self, name: &str) -> String {
        format!("Retirer {name}")
    }
    fn same_question(&self, count: usize) -> String {
        format!("{count} fichiers coïncident. Montrent-ils la même route\u{a0}?")
    }
    fn same_sentence(&self) -> &'static str {
        "Comme une même route, ils n’en font qu’une\u{a0}: les altitudes de tous sont utilisées\u{a0}; là où elles diffèrent de plus que leur erreur possible, la plus raide est utilisée et l’endroit est indiqué. Le plan n’est jamais plus rapide que le plus rapide de chacun pris seul. Rien n’est combiné de soi-même."
    }
    fn combine(&self, count: usize) -> String {
        format!("Même route\u{a0}: combiner {count} enregistrements")
    }
    fn two_alike(&self, first: &str, second: &str) -> String {
        format!(
            "{first} et {second} coïncident. Pour les combiner en une route, laissez les autres fichiers de côté."
        )
    }
    fn meets(&self, new: &str, before: &str) -> String {
        format!("{new} coïncide avec {before}. Montrent-ils la même route\u{a0}?")
    }
    fn compare_both(&self) -> &'static str {
        "Comparer\u{a0}: les deux côte à côte"
    }
    fn join_both(&self) -> &'static str {
        "Joindre\u{a0}: l’un après l’autre"
    }
    fn combined(&self, count: usize, files: &str) -> String {
        format!("Une route de {count} enregistrements\u{a0}: {files}")
    }
    fn take_apart(&self) -> &'static str {
        "Les séparer de nouveau"
    }
    fn part_of(&self, from_m: f64, to_m: f64, units: Units) -> String {
        format!("Une partie de la route\u{a0}: {} selon l’enregistrement.", format::span(from_m, to_m, units))
    }
    fn whole_road(&self) -> &'static str {
        "Prendre toute la route"
    }
    fn course_choice(&self, number: usize, name: &str, route: bool, length: &str) -> String {
        let kind = if route { "itinéraire" } else { "trace" };
        if name.is_empty() {
            format!("{number} · {kind} sans nom · {length}")
        } else {
            format!("{number} · {name} ({kind}) · {length}")
        }
    }
    fn phase(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::Reading => "Lecture du fichier",
            Phase::Surveying => "Calcul des altitudes et des pentes",
            Phase::Planning => "Calcul des rapports, des vitesses et de la chaleur des freins",
        }
    }
    fn starting(&self) -> &'static str {
        "Démarrage"
    }
    fn cancel(&self) -> &'static str {
        "Annuler"
    }
    fn close(&self) -> &'static str {
        "Fermer"
    }
    fn try_again(&self) -> &'static str {
        "Réessayer"
    }
    fn trouble_head(&self, trouble: &WorkTrouble) -> String {
        match trouble {
            WorkTrouble::File { name, .. } => format!("«\u{a0}{name}\u{a0}» n’est pas utilisable"),
            WorkTrouble::ManyFiles => "Trop de fichiers à la fois".to_owned(),
            WorkTrouble::NotAFile => "Ce n’était pas un fichier".to_owned(),
            WorkTrouble::BuiltInMissing => "La route inventée n’a pas pu être chargée".to_owned(),
            WorkTrouble::CannotStart => "Le calcul n’a pas pu démarrer".to_owned(),
            WorkTrouble::Stopped { .. } => "Le calcul s’est arrêté sur une erreur interne".to_owned(),
            WorkTrouble::Cancelled => "Annulé".to_owned(),
            WorkTrouble::Truck { .. } => "Le calcul est impossible avec ce véhicule".to_owned(),
            WorkTrouble::TruckFile { .. } => "Ce fichier de véhicule n’est pas utilisable".to_owned(),
            WorkTrouble::ProjectFile { .. } => "Ce projet n’est pas utilisable".to_owned(),
            WorkTrouble::CannotExport => "Le fichier n’a pas pu être enregistré".to_owned(),
            WorkTrouble::NoPicture => "La fiche n’a pas pu être enregistrée comme image".to_owned(),
        }
    }
    fn trouble(&self, trouble: &WorkTrouble, units: Units) -> String {
        match trouble {
            WorkTrouble::File { error, .. } => self.file_error(error),
            WorkTrouble::ManyFiles => {
                "On peut joindre jusqu’à 20 fichiers en une route. Choisissez-en moins.".to_owned()
            }
            WorkTrouble::NotAFile => {
                "Déposez un fichier GPX, ou choisissez-en un à l’aide du bouton.".to_owned()
            }
            WorkTrouble::BuiltInMissing => {
                "La page elle-même fonctionne\u{a0}: choisissez un fichier GPX à vous.".to_owned()
            }
            WorkTrouble::CannotStart => {
                "Le navigateur n’a pas chargé la partie qui calcule. Rechargez la page\u{a0}; si cela ne suffit pas, utilisez un navigateur de ces dernières années, avec WebAssembly et les workers activés.".to_owned()
            }
            WorkTrouble::Stopped { detail } => format!(
                "Il a été relancé, et rien de ce que vous avez saisi n’est perdu. Changez la dernière donnée saisie, ou réessayez. Pour un signalement\u{a0}: {detail}"
            ),
            WorkTrouble::Cancelled => {
                "Les chiffres ci-dessous correspondent encore aux données précédentes. Changez une donnée, ou réessayez, pour recalculer.".to_owned()
            }
            WorkTrouble::Truck { error } => self.truck_error(error, units),
            WorkTrouble::TruckFile { error } | WorkTrouble::ProjectFile { error } => self.truck_file_error(error, units),
            WorkTrouble::NoPicture => {
                "Ce navigateur ne la dessine pas. Imprimez plutôt la fiche\u{a0}: l’impression dans un fichier en fait un PDF.".to_owned()
            }
            WorkTrouble::CannotExport => {
                "La partie qui l’écrit n’a pas pu être chargée, ou le navigateur n’a pas permis l’enregistrement. Rechargez la page, ou essayez un autre navigateur.".to_owned()
            }
        }
    }
    fn former_stays(&self) -> &'static str {
        "La route affichée ci-dessous est la précédente."
    }
    fn not_current(&self) -> &'static str {
        "Les chiffres affichés correspondent aux données ou à la route précédentes."
    }
    fn check_entry(&self) -> &'static str {
        "Vérifiez cette donnée\u{a0}:"
    }
    fn export(&self) -> &'static str {
        "Enregistrer en GPX les sommets et les changements de rapport"
    }
    fn export_sentence(&self) -> &'static str {
        "Des points de passage à chaque sommet, à chaque pied de descente et à chaque changement de rapport ou de cran, pour un appareil qui les affiche."
    }
    fn export_name(&self, road: &str) -> String {
        file_name(road, "route", "-descentes.gpx")
    }
    fn no_road(&self) -> &'static str {
        "Pas encore de route"
    }
    fn no_road_sentence(&self) -> &'static str {
        "Choisissez un fichier GPX avec altitudes, ou déposez-le n’importe où sur cette page. Il est lu sur cet appareil et ne va nulle part ailleurs."
    }
}
