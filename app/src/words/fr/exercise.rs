//! French words of exercises with worked answers.

use super::French;
use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried};
use crate::words::say::capital;
use crate::words::{ExerciseWords, PlanWords, Term};
use solver::truck::{AxlePlace, Gear};

impl ExerciseWords for French {
    fn exercise_head(&self) -> &'static str {
        "Exercices"
    }
    fn exercise_sentence(&self) -> &'static str {
        "Des calculs sur les descentes de cette route, pour le véhicule et les conditions du jour saisis, avec des masses, des pentes et des vitesses variées. Imprimez une feuille pour travailler et une autre avec les réponses."
    }
    fn sheet_head(&self, seed: u32) -> String {
        format!("Exercices, série {seed}")
    }
    fn blank_sheet(&self) -> &'static str {
        "Feuille de travail"
    }
    fn answer_sheet(&self) -> &'static str {
        "Feuille avec les réponses"
    }
    fn another_set(&self) -> &'static str {
        "Une autre série"
    }
    fn sheet_caution(&self) -> &'static str {
        "Ces chiffres servent à enseigner. Ils ne sont un conseil pour aucune route, aucun véhicule ni aucun chargement\u{a0}: les masses, les pentes et les vitesses sont variées, et beaucoup de choses sont laissées de côté."
    }
    fn no_exercises(&self) -> &'static str {
        "Aucune descente de cette route n’est assez longue pour des exercices."
    }
    fn stages_left_out(&self) -> &'static str {
        "Dans ces conditions du jour, aucun cran du ralentisseur n’est conseillé. Les exercices sur le rapport et le cran sont laissés de côté."
    }
    fn exercise(&self, number: usize, exercise: &Exercise) -> String {
        let subject = match exercise {
            Exercise::ControlSpeed(_) => "vitesse stabilisée",
            Exercise::GearChoice(_) => "choix du rapport",
            Exercise::BrakingWork(_) => "travail de freinage",
            Exercise::Haste(_) => "temps gagné en allant plus vite",
            Exercise::BrakeHeat(_) => "température des freins",
        };
        format!("Exercice {number}\u{a0}: {subject}")
    }
    fn given_label(&self) -> &'static str {
        "Données"
    }
    fn room_label(&self) -> &'static str {
        "Votre calcul et votre réponse"
    }
    fn steps_label(&self) -> &'static str {
        "Étapes du calcul"
    }
    fn solution_label(&self) -> &'static str {
        "Réponse"
    }
    fn ask_control_speed(&self, it: &ControlSpeed, mass: &str, grade: &str) -> String {
        format!(
            "Un véhicule de {mass} descend une pente de {grade}, {}, {}, sans accélérer et sans freins de service. Se stabilise-t-il à une vitesse, et à laquelle\u{a0}?",
            self.gear(it.gear),
            self.stage(it.stage)
        )
    }
    fn ask_gear(&self, mass: &str, grade: &str, reserve: &str) -> String {
        format!(
            "Le moteur et le ralentisseur seuls doivent retenir un véhicule de {mass} sur une pente de {grade}, avec {reserve} de réserve. Voici des rapports à la plus grande vitesse à laquelle chacun sert à retenir, avec le régime moteur et la force de retenue du cran le plus fort que permet l’adhérence des essieux moteurs. Quel est le rapport le plus haut qui garde la réserve, et à quelle vitesse\u{a0}?"
        )
    }
    fn ask_work(&self, mass: &str, drop: &str, length: &str, speed: &str, share: &str) -> String {
        format!(
            "Un véhicule de {mass} descend de {drop} sur {length} de route à une vitesse constante de {speed}. Quelle énergie le moteur, le ralentisseur et les freins doivent-ils absorber\u{a0}? Le moteur et le ralentisseur en absorbent {share}\u{a0}: combien en reste-t-il pour les freins de service\u{a0}?"
        )
    }
    fn ask_time(&self, length: &str, fast: &str, slow: &str) -> String {
        format!(
            "Une descente est longue de {length}. Combien de temps gagne un véhicule qui la descend à {fast} au lieu de {slow}\u{a0}? De combien son énergie de mouvement augmente-t-elle\u{a0}?"
        )
    }
    fn ask_heat(&self, it: &BrakeHeat, length: &str, speed: &str, power: &str) -> String {
        format!(
            "Dans une descente de {length}, à une vitesse constante de {speed}, les freins de service absorbent {power} tout du long\u{a0}; le moteur et les résistances absorbent le reste. À quelle température sont les freins {} au pied de la descente\u{a0}?",
            place(it)
        )
    }
    fn settles(&self, speed: &str, engine_speed: &str) -> String {
        format!(
            "Il se stabilise à environ {speed} ({engine_speed})\u{a0}: là, la force de retenue est égale à ce qui reste à retenir."
        )
    }
    fn slows_down(&self) -> &'static str {
        "Il ne se stabilise pas\u{a0}: à toutes les vitesses de ce rapport, il est retenu plus que nécessaire et ralentit. Un cran plus faible ou un rapport plus haut peut suffire."
    }
    fn gets_away_above(&self, speed: &str) -> String {
        format!(
            "Il ne se stabilise pas\u{a0}: au-dessous d’environ {speed}, il est retenu plus que nécessaire\u{a0}; au-dessus, il s’emballe. Une fois plus rapide, rien ne le rattrape. Il faut un rapport plus bas, engagé avant le sommet\u{a0}; sinon les freins de service doivent aider."
        )
    }
    fn gets_away(&self) -> &'static str {
        "Il ne se stabilise pas\u{a0}: il s’emballe à toutes les vitesses de ce rapport. Il faut un rapport plus bas, engagé avant le sommet, ou un cran plus fort s’il y en a un\u{a0}; sinon les freins de service doivent aider."
    }
    fn gear_chosen(&self, tried: &GearTried, speed: &str, engine_speed: &str, reserve: &str) -> String {
        format!(
            "{}, {}, à {speed} au plus ({engine_speed}), avec {reserve} de réserve. Le rapport est engagé avant le sommet.",
            capital(&self.gear(tried.gear)),
            self.stage(tried.stage)
        )
    }
    fn no_gear_keeps(&self) -> &'static str {
        "Aucun\u{a0}: même le rapport le plus bas ne garde pas la réserve. Un tel véhicule ne doit pas descendre là\u{a0}: moins de masse ou une autre route."
    }
    fn work_left(&self, left: &str, service: &str) -> String {
        format!(
            "Il faut absorber environ {left}\u{a0}; il en reste environ {service} pour les freins de service."
        )
    }
    fn time_saved(&self, time: &str, times: &str) -> String {
        format!(
            "Environ {time}, et l’énergie de mouvement est multipliée par {times}\u{a0}: les freins ont d’autant plus à absorber à chaque arrêt. La question n’est pas ici de savoir si le moteur et le ralentisseur retiendraient le véhicule à cette vitesse."
        )
    }
    fn warm_at_foot(&self, foot: &str, limit: &str, over: bool) -> String {
        let kept = if over {
            format!("au-dessus de la limite saisie de {limit}")
        } else {
            format!("pas au-dessus de la limite saisie de {limit}, mais sans réserve pour un arrêt")
        };
        format!(
            "Environ {foot} au pied de la descente\u{a0}: {kept}. Ne sont pas pris en compte\u{a0}: un arrêt, un freinage mal réparti, le réglage des freins, le rayonnement, et le refroidissement qui varie d’un véhicule à l’autre d’un facteur deux ou plus."
        )
    }
    fn term(&self, term: Term) -> &'static str {
        match term {
            Term::RollingCoefficient => "Coefficient de résistance au roulement",
            Term::DragArea => "Surface de traînée",
            Term::AirDensity => "Masse volumique de l’air",
            Term::AirDensityRatio => "Masse volumique de l’air, divisée par celle au niveau de la mer",
            Term::Headwind => "Vent de face (un vent arrière est négatif)",
            Term::HoldingTable => "Force de retenue selon le régime moteur et la vitesse",
            Term::HeatCapacity => "Chaleur que ces freins emmagasinent",
            Term::Cooling => "Chaleur qu’ils cèdent à cette vitesse",
            Term::GroupShare => "Leur part du freinage",
            Term::AirTemperature => "Air",
            Term::BrakesAtCrest => "Freins au sommet",
            Term::Sine => "Sinus de l’angle de la route",
            Term::Cosine => "Cosinus de l’angle",
            Term::Gravity => "Pesanteur le long de la route",
            Term::Rolling => "Résistance au roulement",
            Term::AgainstAir => "Vitesse par rapport à l’air",
            Term::Air => "Résistance de l’air",
            Term::Demand => "Reste à retenir",
            Term::HoldingAgainstDemand => "Force de retenue, comparée à ce qui reste à retenir",
            Term::ComparedAt => "Calculé à",
            Term::LengthInFeet => "Longueur en pieds",
            Term::GravityWork => "Travail de la pesanteur",
            Term::RollingWork => "Absorbé par la résistance au roulement",
            Term::AirWork => "Absorbé par la résistance de l’air",
            Term::WorkLeft => "Reste à absorber",
            Term::CarriedWork => "Moteur et ralentisseur",
            Term::ServiceWork => "Freins de service",
            Term::SlowTime => "Temps à la vitesse la plus basse",
            Term::FastTime => "Temps à la vitesse la plus haute",
            Term::TimeSaved => "Temps gagné",
            Term::MotionEnergy => "Énergie de mouvement, la plus grande divisée par la plus petite",
            Term::GroupPower => "Puissance à ces freins",
            Term::TimeDown => "Durée de la descente",
            Term::TimeConstant => "Constante de temps\u{a0}: chaleur emmagasinée divisée par chaleur cédée",
            Term::Settled => "Température qu’ils atteindraient à la longue",
            Term::Ahead => "Part de cette hausse qui reste à venir au pied de la descente",
            Term::AtFoot => "Au pied de la descente",
        }
    }
    fn gear_at(&self, gear: Gear, speed: &str) -> String {
        format!("{} à {speed}", capital(&self.gear(gear)))
    }
    fn enough(&self, enough: bool) -> &'static str {
        if enough { "suffisant" } else { "insuffisant" }
    }
}

fn place(it: &BrakeHeat) -> &'static str {
    match (it.place, it.axles) {
        (AxlePlace::Steer, 1) => "de l’essieu directeur",
        (AxlePlace::Steer, _) => "des essieux directeurs",
        (AxlePlace::Drive, 1) => "de l’essieu moteur",
        (AxlePlace::Drive, _) => "des essieux moteurs",
        (AxlePlace::Trailer, 1) => "de l’essieu de remorque",
        (AxlePlace::Trailer, _) => "des essieux de remorque",
    }
}
