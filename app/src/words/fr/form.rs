//! French words of the truck's form.

use super::French;
use crate::entries::{AtEngine, OnShaft};
use crate::format::Units;
use crate::words::FormWords;
use solver::limits::Entry;
use solver::plan::Verdict;
use solver::truck::{AxlePlace, BrakeKind};

impl FormWords for French {
    fn hint(&self, entry: Entry) -> &'static str {
        match entry {
            Entry::GrossMass => "Véhicule, remorques et chargement ensemble. Pesez-les si possible.",
            Entry::RetarderPeakPower => {
                "Tous les crans engagés, au régime moteur le plus favorable\u{a0}; 0 s’il n’y en a pas."
            }
            Entry::HighestEngineSpeed => "Celui que le constructeur autorise, moteur entraîné par les roues.",
            Entry::Reserve => {
                "Force de retenue en plus du nécessaire, gardée pour les erreurs de masse et de pente."
            }
            Entry::Headwind => "Un vent arrière est négatif et pousse.",
            Entry::HeatLimit => {
                "Température la plus haute des freins, un freinage énergique jusqu’à l’arrêt compris."
            }
            Entry::BrakesAtStart => "Plus haute si vous venez d’une autre descente.",
            Entry::SpeedLimit => "Celle des panneaux, ou la vôtre.",
            Entry::RollingResistance => {
                "La valeur basse\u{a0}: avec des pneus qui roulent facilement, le véhicule pousse davantage en descente."
            }
            Entry::RolloverThreshold => {
                "En g, sur table basculante\u{a0}; un chargement haut ou mobile fait verser plus tôt. En cas de doute, plus bas."
            }
            Entry::Superelevation => "Pente des virages vers l’intérieur\u{a0}; 0 si elle n’est pas connue.",
            Entry::RetarderDelay => "Il ne revient qu’après ce délai, compté de la fermeture de l’embrayage.",
            Entry::RetardingScale => "100, sauf si ce qui a tenu aujourd’hui a été mesuré.",
            Entry::ShortPower => "Ce qu’il donne pendant le temps court ci-dessous, en partant froid.",
            Entry::SustainedPower => {
                "Ce que le liquide de refroidissement du moteur évacue durablement. Les plans comptent sur cette valeur."
            }
            Entry::SustainedSpeed => {
                "En dessous, le liquide de refroidissement circule plus lentement et évacue moins."
            }
            Entry::HotShare => {
                "Couple du ralentisseur chaud divisé par celui du ralentisseur froid. Les plans comptent sur le ralentisseur chaud."
            }
            Entry::LockUpGear => {
                "Sur les rapports plus bas, le convertisseur est ouvert et le moteur ne retient rien."
            }
            Entry::ShiftsUpSpeed => {
                "Au-dessus, elle monte un rapport et le ralentisseur lâche\u{a0}; c’est souvent le régime maximal du moteur."
            }
            Entry::BrakeCheckStop => {
                "Temps de refroidissement à chaque aire de vérification des freins de la route\u{a0}; avec 0, on passe sans s’arrêter."
            }
            Entry::ShaftTorque => {
                "Tous les crans engagés, à froid, à la vitesse de rotation de l’arbre ci-dessous."
            }
            Entry::ShaftSpeed => {
                "Vitesse de rotation de l’arbre de transmission à laquelle le couple ci-dessus est mesuré."
            }
            Entry::ShortTime => {
                "Il tient ce temps, en partant froid, avant que le liquide de refroidissement le limite."
            }
            Entry::WarmUpTime => {
                "Après ce temps de travail, il a perdu les deux tiers de ce qu’il perd au total."
            }
            Entry::LockUpSpeed => "En dessous, le convertisseur s’ouvre et le moteur ne retient rien.",
            Entry::DriveAxleMass => {
                "Ce qui repose sur les essieux moteurs\u{a0}: cela décide combien ils peuvent retenir."
            }
            Entry::RollingRadius => {
                "Chemin parcouru en un tour de roue chargée, divisé par 2π\u{a0}; la liste des pneus le remplit."
            }
            Entry::WheelInertia => "De toutes les roues\u{a0}; elle fait paraître le véhicule plus lourd.",
            Entry::DragArea => {
                "Coefficient de traînée multiplié par la surface frontale\u{a0}; plus la valeur est petite, plus le véhicule pousse en descente."
            }
            Entry::Displacement => {
                "Volume balayé par tous les cylindres\u{a0}: sans injection, le moteur retient en proportion."
            }
            Entry::LowestEngineSpeed => "En dessous, on ne compte ni sur le moteur ni sur le ralentisseur.",
            Entry::AxleRatio => "Tours de l’arbre par tour de roue\u{a0}; inscrit sur la plaque du pont.",
            Entry::AxleEfficiency => {
                "Les pertes aident à retenir\u{a0}: un pont qui en a moins retient moins."
            }
            Entry::RetarderPeakSpeed => "Régime moteur auquel il retient le plus.",
            Entry::RetarderExponent => {
                "Sa puissance suit le régime moteur élevé à cet exposant\u{a0}: plus il est grand, plus elle chute vite quand le régime baisse."
            }
            Entry::RetarderCutOut => "En dessous de ce régime moteur, il se coupe de lui-même.",
            Entry::AirTemperature => {
                "L’air froid est plus dense\u{a0}; les freins refroidissent jusqu’à cette température."
            }
            Entry::RatedPower => {
                "Celle de la plaque du moteur ou des papiers\u{a0}; la traction et le ralentisseur supposé la suivent."
            }
            Entry::GovernedSpeed => {
                "Le régulateur y coupe l’injection, et une boîte y monte à peu près d’elle-même un rapport. Les roues peuvent faire tourner le moteur plus vite\u{a0}: voir plus haut."
            }
            Entry::TopGearSpeed => "Lu au compte-tours sur route plate. Il donne le rapport de pont.",
        }
    }
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
