//! French words of the entries.

use super::{French, telling};
use crate::format::Units;
use crate::words::EntryWords;
use crate::words::say::file_name;
use solver::day::{Lead, Load, ServiceBrakes, Surface};
use solver::limits::Entry;
use solver::report::truck_file::TruckFileError;
use solver::truck::{AxleGroup, AxlePlace, BrakeKind, Preset, RetarderKind, Transmission, TruckError};

impl EntryWords for French {
    fn truck_head(&self) -> &'static str {
        "Véhicule"
    }
    fn day_head(&self) -> &'static str {
        "Conditions du jour"
    }
    fn preset_label(&self) -> &'static str {
        "Partir d’un véhicule semblable"
    }
    fn preset(&self, preset: Preset, units: Units) -> &'static str {
        match (preset, units) {
            (Preset::FiveAxle36, Units::Metric) => "Ensemble à cinq essieux, 36,3\u{a0}t",
            (Preset::FiveAxle36, Units::Imperial) => "Ensemble à cinq essieux, 80\u{a0}000\u{a0}lb",
            (Preset::FiveAxle40, Units::Metric) => "Ensemble à cinq essieux, 40\u{a0}t",
            (Preset::FiveAxle40, Units::Imperial) => "Ensemble à cinq essieux, 88\u{a0}200\u{a0}lb",
            (Preset::FiveAxle40Both, Units::Metric) => {
                "Ensemble à cinq essieux, 40\u{a0}t, hydrodynamique et frein moteur"
            }
            (Preset::FiveAxle40Both, Units::Imperial) => {
                "Ensemble à cinq essieux, 88\u{a0}200\u{a0}lb, hydrodynamique et frein moteur"
            }
            (Preset::FiveAxleEmpty, Units::Metric) => "Ensemble à cinq essieux, à vide, 14,5\u{a0}t",
            (Preset::FiveAxleEmpty, Units::Imperial) => {
                "Ensemble à cinq essieux, à vide, 32\u{a0}000\u{a0}lb"
            }
            (Preset::SixAxle44, Units::Metric) => "Ensemble à six essieux, 44\u{a0}t",
            (Preset::SixAxle44, Units::Imperial) => "Ensemble à six essieux, 97\u{a0}000\u{a0}lb",
            (Preset::Drawbar40, Units::Metric) => "Porteur avec remorque, 40\u{a0}t",
            (Preset::Drawbar40, Units::Imperial) => "Porteur avec remorque, 88\u{a0}200\u{a0}lb",
            (Preset::Refuse26, Units::Metric) => "Benne à ordures, boîte automatique, 26\u{a0}t",
            (Preset::Refuse26, Units::Imperial) => "Benne à ordures, boîte automatique, 57\u{a0}300\u{a0}lb",
            (Preset::Rigid18, Units::Metric) => "Porteur à deux essieux, 18\u{a0}t",
            (Preset::Rigid18, Units::Imperial) => "Porteur à deux essieux, 39\u{a0}700\u{a0}lb",
            (Preset::Tipper26, Units::Metric) => "Camion-benne à trois essieux, 26\u{a0}t",
            (Preset::Tipper26, Units::Imperial) => "Camion-benne à trois essieux, 57\u{a0}300\u{a0}lb",
            (Preset::BDouble, Units::Metric) => "Train double à neuf essieux, 62,5\u{a0}t",
            (Preset::BDouble, Units::Imperial) => "Train double à neuf essieux, 137\u{a0}800\u{a0}lb",
            (Preset::Coach, Units::Metric) => "Autocar interurbain, 19\u{a0}t",
            (Preset::Coach, Units::Imperial) => "Autocar interurbain, 41\u{a0}900\u{a0}lb",
            (Preset::CoachConverter, Units::Metric) => "Autocar interurbain à convertisseur, 19\u{a0}t",
            (Preset::CoachConverter, Units::Imperial) => {
                "Autocar interurbain à convertisseur, 41\u{a0}900\u{a0}lb"
            }
        }
    }
    fn own_truck(&self) -> &'static str {
        "Vos propres données"
    }
    fn more_entries(&self) -> &'static str {
        "Hypothèses pour ce véhicule"
    }
    fn assumed(&self) -> &'static str {
        "hypothèse"
    }
    fn assumed_sentence(&self) -> &'static str {
        "Les valeurs marquées «\u{a0}hypothèse\u{a0}» n’ont pas de source imprimée pour ce véhicule\u{a0}: saisissez les vôtres."
    }
    fn entry(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Masse totale réelle",
            Entry::DriveAxleMass => "Masse sur les essieux moteurs",
            Entry::RollingRadius => "Rayon de roulement",
            Entry::WheelInertia => "Inertie des roues",
            Entry::RollingResistance => "Résistance au roulement",
            Entry::DragArea => "Surface de traînée",
            Entry::Displacement => "Cylindrée du moteur",
            Entry::LowestEngineSpeed => "Régime moteur utile le plus bas",
            Entry::HighestEngineSpeed => "Régime moteur maximal autorisé",
            Entry::AxleRatio => "Rapport de pont",
            Entry::AxleEfficiency => "Rendement du pont",
            Entry::RetarderPeakPower => "Puissance de ralentissement",
            Entry::RetarderPeakSpeed => "Régime moteur de la pleine puissance de ralentissement",
            Entry::RetarderExponent => "Hausse de la puissance de ralentissement avec le régime moteur",
            Entry::RetarderCutOut => "Régime moteur de coupure du ralentisseur",
            Entry::RolloverThreshold => "Seuil de renversement",
            Entry::AirTemperature => "Température de l’air",
            Entry::BrakesAtStart => "Température des freins au départ",
            Entry::Headwind => "Vent de face",
            Entry::SpeedLimit => "Limitation de vitesse",
            Entry::Reserve => "Réserve de force de retenue",
            Entry::HeatLimit => "Température maximale des freins",
            Entry::Superelevation => "Dévers des virages",
            Entry::RetarderDelay => "Délai du ralentisseur après un changement de rapport",
            Entry::RetardingScale => "Ralentissement mesuré par rapport à l’hypothèse",
            Entry::ShaftTorque => "Couple du ralentisseur à l’arbre de transmission",
            Entry::ShaftSpeed => "Vitesse de rotation de l’arbre pour ce couple",
            Entry::ShortPower => "Puissance de courte durée du ralentisseur",
            Entry::ShortTime => "Temps de la puissance de courte durée",
            Entry::SustainedPower => "Puissance permanente du ralentisseur",
            Entry::SustainedSpeed => "Régime moteur de la puissance permanente",
            Entry::HotShare => "Couple à chaud par rapport au couple à froid",
            Entry::WarmUpTime => "Temps d’échauffement du ralentisseur",
            Entry::LockUpGear => "Rapport le plus bas avec verrouillage",
            Entry::LockUpSpeed => "Régime moteur où le verrouillage s’ouvre",
            Entry::BrakeCheckStop => "Temps à chaque aire de vérification des freins",
            Entry::ShiftsUpSpeed => "Régime auquel la boîte monte elle-même un rapport",
            Entry::RatedPower => "Puissance nominale du moteur",
            Entry::GovernedSpeed => "Régime de coupure du moteur",
            Entry::TopGearSpeed => "Régime moteur sur le rapport le plus haut",
        }
    }
    fn not_a_number(&self, typed: &str) -> String {
        format!("«\u{a0}{typed}\u{a0}» n’est pas un nombre.")
    }
    fn out_of_range(&self, typed: &str) -> String {
        format!("{typed} est hors de la plage admise.")
    }
    fn enter_from(&self, range: &str) -> String {
        format!("Saisissez une valeur de {range}.")
    }
    fn truck_error(&self, error: &TruckError, units: Units) -> String {
        telling::truck_error(error, units)
    }
    fn truck_file_error(&self, error: &TruckFileError, units: Units) -> String {
        telling::truck_file_error(error, units)
    }
    fn gears(&self) -> &'static str {
        "Rapports de démultiplication"
    }
    fn gears_hint(&self) -> &'static str {
        "Le premier rapport d’abord, avec des espaces entre eux."
    }
    fn stages(&self) -> &'static str {
        "Crans du ralentisseur"
    }
    fn stages_hint(&self) -> &'static str {
        "Part du ralentissement complet à chaque cran, en pour cent, le plus faible d’abord, le dernier à 100."
    }
    fn retarder_table(&self) -> &'static str {
        "Ralentisseur par vitesse de rotation et par cran"
    }
    fn shaft_table_hint(&self) -> &'static str {
        "Une ligne par vitesse de rotation\u{a0}: celle de l’arbre, deux-points, puis le couple de chaque cran en N·m, le plus faible d’abord. Hors du tableau, il compte comme coupé."
    }
    fn engine_table_hint(&self) -> &'static str {
        "Une ligne par régime\u{a0}: régime moteur, deux-points, puis la puissance de chaque cran en kW, la plus faible d’abord. Hors du tableau, il compte comme coupé."
    }
    fn retarder_label(&self) -> &'static str {
        "Ralentisseur"
    }
    fn retarder(&self, kind: RetarderKind) -> &'static str {
        match kind {
            RetarderKind::None => "aucun",
            RetarderKind::CompressionRelease => "frein moteur à décompression",
            RetarderKind::ExhaustValve => "frein sur échappement",
            RetarderKind::Hydrodynamic => "sur la transmission, hydrodynamique",
            RetarderKind::Electromagnetic => "sur la transmission, électromagnétique",
            RetarderKind::CompressionAndHydrodynamic => "à décompression et hydrodynamique",
            RetarderKind::ExhaustAndHydrodynamic => "sur échappement et hydrodynamique",
            RetarderKind::CompressionAndElectromagnetic => "à décompression et électromagnétique",
            RetarderKind::ExhaustAndElectromagnetic => "sur échappement et électromagnétique",
            RetarderKind::EnginePowerTable => "mon propre tableau, au moteur",
            RetarderKind::ShaftTorqueTable => "mon propre tableau, à l’arbre",
        }
    }
    fn transmission_label(&self) -> &'static str {
        "Boîte de vitesses"
    }
    fn transmission(&self, transmission: Transmission) -> &'static str {
        match transmission {
            Transmission::Manual => "manuelle",
            Transmission::Automated => "automatisée",
            Transmission::TorqueConverter { .. } => "à convertisseur",
        }
    }
    fn load_label(&self) -> &'static str {
        "Chargement"
    }
    fn load(&self, load: Load) -> &'static str {
        match load {
            Load::Laden => "chargé",
            Load::Empty => "à vide",
            Load::NoTrailer => "sans remorque",
        }
    }
    fn mass_stays(&self, mass: &str) -> String {
        format!(
            "Cela ne change pas la masse\u{a0}: {mass} reste la valeur saisie. Saisissez ce que le véhicule pèse maintenant."
        )
    }
    fn gear_set_label(&self) -> &'static str {
        "Nombre de rapports"
    }
    fn gear_set(&self, gears: usize, overdrive: bool) -> String {
        let top = if overdrive { "le dernier surmultiplié" } else { "le dernier en prise directe" };
        format!("{gears} rapports, {top}")
    }
    fn own_gears(&self) -> &'static str {
        "tels que saisis ci-dessous"
    }
    fn tyre_label(&self) -> &'static str {
        "Pneus des essieux moteurs"
    }
    fn own_tyre(&self) -> &'static str {
        "rayon de roulement tel que saisi"
    }
    fn curves_name(&self) -> &'static str {
        "Puissance selon le régime moteur"
    }
    fn curves_about(&self, unit: &str) -> String {
        format!(
            "Puissance en {unit} selon le régime moteur\u{a0}: en trait épais, la traction\u{a0}; en tirets, la retenue du moteur et du ralentisseur, cran par cran. Ce qu’un ralentisseur sur l’arbre donne durablement est tracé pour la prise directe."
        )
    }
    fn own_trucks(&self) -> &'static str {
        "Vos véhicules"
    }
    fn truck_name(&self) -> &'static str {
        "Nom de ce véhicule"
    }
    fn keep_truck(&self) -> &'static str {
        "Le garder sous ce nom"
    }
    fn rename_truck(&self, name: &str) -> String {
        format!("Donner ce nom à «\u{a0}{name}\u{a0}»")
    }
    fn take_truck(&self, name: &str) -> String {
        format!("Planifier avec «\u{a0}{name}\u{a0}»")
    }
    fn remove_truck(&self, name: &str) -> String {
        format!("Retirer «\u{a0}{name}\u{a0}»")
    }
    fn undo(&self) -> &'static str {
        "Annuler la modification"
    }
    fn remove(&self) -> &'static str {
        "Retirer"
    }
    fn no_name(&self) -> &'static str {
        "Donnez-lui d’abord un nom."
    }
    fn too_many_trucks(&self) -> &'static str {
        "Il n’y a plus de place pour un autre véhicule\u{a0}: retirez-en un d’abord."
    }
    fn save_truck(&self) -> &'static str {
        "Enregistrer dans un fichier"
    }
    fn open_truck(&self) -> &'static str {
        "Ouvrir un fichier de véhicule"
    }
    fn truck_file_name(&self, name: &str) -> String {
        file_name(name, "perso", "-vehicule.json")
    }
    fn axle_groups(&self) -> &'static str {
        "Essieux freinés"
    }
    fn axle_group(&self, group: &AxleGroup) -> String {
        let axles = match (group.place, group.axles == 1) {
            (AxlePlace::Steer, true) => "essieu directeur",
            (AxlePlace::Steer, false) => "essieux directeurs",
            (AxlePlace::Drive, true) => "essieu moteur",
            (AxlePlace::Drive, false) => "essieux moteurs",
            (AxlePlace::Trailer, true) => "essieu de remorque",
            (AxlePlace::Trailer, false) => "essieux de remorque",
        };
        let brake = match group.brake {
            BrakeKind::Drum => "freins à tambour",
            BrakeKind::Disc => "freins à disque",
        };
        let share = crate::format::whole((group.effort_share * 100.0).round());
        format!("{} {axles}, {brake}, {share}\u{a0}% du freinage", group.axles)
    }
    fn surface_label(&self) -> &'static str {
        "Chaussée"
    }
    fn surface(&self, surface: Surface) -> &'static str {
        match surface {
            Surface::Dry => "sèche",
            Surface::Wet => "mouillée",
            Surface::Snow => "neige",
            Surface::Ice => "verglas",
        }
    }
    fn service_brakes_label(&self) -> &'static str {
        "Freins de service"
    }
    fn service_brakes(&self, service_brakes: ServiceBrakes) -> &'static str {
        match service_brakes {
            ServiceBrakes::InReserve => "gardés en réserve",
            ServiceBrakes::MaySnub => "freinage intermittent permis",
        }
    }
    fn lead_label(&self) -> &'static str {
        "Façon de descendre"
    }
    fn lead(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => "la plus rapide",
            Lead::OneGear => "un seul rapport",
            Lead::Untouched => "sans les freins",
        }
    }
    fn lead_hint(&self, lead: Lead) -> &'static str {
        match lead {
            Lead::Usual => {
                "Dans une longue descente, le rapport peut changer à des endroits indiqués, si cela gagne des minutes."
            }
            Lead::OneGear => "Un seul rapport du sommet au pied, avec sa vitesse.",
            Lead::Untouched => {
                "Un rapport sur lequel le ralentisseur retient seul sur toutes les pentes enregistrées, même là où les altitudes sont incertaines."
            }
        }
    }
    fn usual_day(&self) -> &'static str {
        "Revenir aux conditions habituelles"
    }
    fn kept_here(&self) -> &'static str {
        "Les données saisies ne sont conservées que dans ce navigateur."
    }
}
