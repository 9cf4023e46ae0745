//! French words of the truck's form.

use super::French;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for French {
    fn preset_hint(&self) -> &'static str {
        "Prenez le véhicule le plus proche du vôtre. Ses valeurs restent jusqu’à ce que vous saisissiez les vôtres."
    }
    fn on_plate(&self) -> &'static str {
        "Sur les plaques et les papiers"
    }
    fn in_head(&self) -> &'static str {
        "Ce que vous savez comme conducteur"
    }
    fn rest_sentence(&self) -> &'static str {
        "Ces valeurs sont des hypothèses jusqu’à ce que vous les saisissiez. Pour chacune, on lit ce que coûte une valeur fausse sur la route affichée, dans la descente qui décide."
    }
    fn top_gear_speed(&self, units: Units) -> &'static str {
        match units {
            Units::Metric => "Régime moteur à 80 km/h sur le rapport le plus haut",
            Units::Imperial => "Régime moteur à 50 mph sur le rapport le plus haut",
        }
    }
    fn is_axle_ratio(&self, ratio: &str) -> String {
        format!("Cela donne un rapport de pont de {ratio}.")
    }
    fn no_axle_ratio(&self, ratio: &str, range: &str) -> String {
        format!(
            "Avec ces rapports et ces pneus, le rapport de pont serait de {ratio}\u{a0}; les ponts ont de {range}. Vérifiez le régime, le rapport le plus haut et les pneus."
        )
    }
    fn tyre_hint(&self) -> &'static str {
        "Elle est inscrite sur le flanc. Un pneu usé roule un peu plus court."
    }
    fn gear_set_hint(&self) -> &'static str {
        "Comptez les rapports de marche avant. «\u{a0}Surmultiplié\u{a0}»\u{a0}: sur le rapport le plus haut, l’arbre tourne plus vite que le moteur."
    }
    fn transmission_hint(&self) -> &'static str {
        "Automatisée\u{a0}: sans pédale d’embrayage, mais avec embrayage. À convertisseur\u{a0}: elle démarre sans embrayage."
    }
    fn on_shaft(&self, it: OnShaft) -> &'static str {
        match it {
            OnShaft::Nothing => "aucun",
            OnShaft::Hydrodynamic => "ralentisseur à fluide",
            OnShaft::Electromagnetic => "ralentisseur à aimants",
            OnShaft::EngineTable => "mon propre tableau, au moteur",
            OnShaft::ShaftTable => "mon propre tableau, à l’arbre",
        }
    }
    fn on_shaft_hint(&self) -> &'static str {
        "Un appareil sur la boîte ou sur l’arbre. Celui à fluide chauffe le liquide de refroidissement\u{a0}; celui à aimants a un lourd rotor à ailettes."
    }
    fn at_engine_label(&self) -> &'static str {
        "Et un ralentisseur moteur\u{a0}?"
    }
    fn at_engine(&self, it: AtEngine) -> &'static str {
        match it {
            AtEngine::Nothing => "aucun",
            AtEngine::ExhaustFlap => "volet d’échappement",
            AtEngine::Compression => "à décompression",
        }
    }
    fn at_engine_hint(&self) -> &'static str {
        "Volet d’échappement\u{a0}: un volet dans le tuyau. À décompression\u{a0}: les soupapes d’échappement travaillent, avec bruit. En cas de doute, le volet\u{a0}: il retient moins."
    }
    fn lever_label(&self) -> &'static str {
        "Crans du levier, sans «\u{a0}coupé\u{a0}»"
    }
    fn lever_hint(&self) -> &'static str {
        "Tous les crans comptent pour autant. Les parts se saisissent plus bas."
    }
    fn own_lever(&self) -> &'static str {
        "comme saisi plus bas"
    }
    fn shape_label(&self) -> &'static str {
        "Puissance du ralentisseur moteur selon le régime"
    }
    fn shape(&self, by_exponent: bool) -> &'static str {
        if by_exponent { "selon un exposant" } else { "comme les moteurs la déclarent" }
    }
    fn shape_hint(&self) -> &'static str {
        "Comme les moteurs la déclarent, sauf si vous avez vos propres chiffres."
    }
    fn axles_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Essieux directeurs",
            AxlePlace::Drive => "Essieux moteurs et ceux qui les accompagnent",
            AxlePlace::Trailer => "Essieux de la remorque",
        }
    }
    fn brakes_of(&self, place: AxlePlace) -> &'static str {
        match place {
            AxlePlace::Steer => "Freins des essieux directeurs",
            AxlePlace::Drive => "Freins des essieux moteurs",
            AxlePlace::Trailer => "Freins de la remorque",
        }
    }
    fn brake(&self, kind: BrakeKind) -> &'static str {
        match kind {
            BrakeKind::Drum => "tambour",
            BrakeKind::Disc => "disque",
        }
    }
    fn without_trailer(&self) -> &'static str {
        "sans remorque"
    }
    fn axles_hint(&self) -> &'static str {
        "Comptez les essieux freinés. Leur part du travail est une hypothèse."
    }
    fn wrong_by(&self, by: &str) -> String {
        format!("{by} d’erreur")
    }
    fn so_many_gears(&self, gears: u8) -> String {
        if gears == 1 { "1\u{a0}rapport".to_owned() } else { format!("{gears}\u{a0}rapports") }
    }
    fn so_many_stages(&self, stages: u8) -> String {
        if stages == 1 { "1\u{a0}cran".to_owned() } else { format!("{stages}\u{a0}crans") }
    }
    fn no_other(&self) -> &'static str {
        "ni le rapport ni la vitesse ne changent"
    }
    fn other_verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "le ralentisseur tiendrait",
            Verdict::LittleInReserve => "peu de réserve",
            Verdict::NeedsServiceBrakes => "demande les freins de service",
            Verdict::NoSafeSpeed => "aucune vitesse sûre",
        }
    }
    fn worth_waits(&self) -> &'static str {
        "Ce que coûte une valeur fausse\u{a0}: indiqué dès qu’un plan est affiché."
    }
    fn worth_at_work(&self) -> &'static str {
        "Ce que coûte une valeur fausse\u{a0}: calcul en cours."
    }
    fn worth_no_descent(&self) -> &'static str {
        "Ce que coûte une valeur fausse\u{a0}: cette route n’a pas de descente pour l’essayer."
    }
    fn worth_not(&self) -> &'static str {
        "Ce que coûte une valeur fausse\u{a0}: le calcul n’a pas pu se faire."
    }
}
