//! French words of what follows from a plan.

use super::French;
use crate::format::{self, Units};
use crate::words::StudyWords;
use crate::words::say::{enough_percent, name_or, radius};
use solver::plan::{Carried, Change};
use solver::study::{
    Adjustment, DescentSureness, Input, Lost, Measured, NotMeasured, Reach, SlowFor, Slowing,
};
use solver::truck::AxlePlace;

impl StudyWords for French {
    fn change_label(&self) -> &'static str {
        "Ce qui changerait la réponse"
    }
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String> {
        let mass = match change.mass {
            Some(mass) => format!(
                "À {} ou moins, le ralentisseur retiendrait le véhicule avec la réserve.",
                format::mass_at_most(mass.0, units)
            ),
            None => "Un chargement plus léger n’y changerait rien.".to_owned(),
        };
        let retarding = change.retarding.map(|factor| {
            format!(
                "Le véhicule serait retenu avec la réserve si son ralentissement était plus fort de {}.",
                enough_percent(factor - 1.0)
            )
        });
        let kept = change.reserve.map(|kept| {
            let (kept, asked) = (format::margin(kept), format::margin(reserve));
            format!("En l’état, on peut garder au plus {kept} de réserve, et non {asked}.")
        });
        let cool = change.cool_to.map(|at| {
            let at = format::entered_temperature(at.0, units);
            format!(
                "Avec des freins à {at} au plus au sommet, la limite serait respectée\u{a0}: laissez-les d’abord refroidir."
            )
        });
        [Some(mass), retarding, kept, cool].into_iter().flatten().collect()
    }
    fn carried_label(&self) -> &'static str {
        "Vers la montée suivante"
    }
    fn carried(&self, carried: Carried, units: Units) -> String {
        format!(
            "Si la vitesse est ainsi tenue jusqu’au pied de la descente, le véhicule aborde la montée, à {}, avec une vitesse d’environ {}. Ne relâchez pas plus tôt pour en avoir davantage.",
            format::distance(carried.at.0, units),
            format::met_speed(carried.speed.0, units)
        )
    }
    fn sure_label(&self) -> &'static str {
        "Degré de certitude"
    }
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String> {
        let held = of_runs(sure.held, runs, "Vitesse tenue par le ralentisseur seul");
        let kept = of_runs(
            sure.kept,
            runs,
            "Limite respectée par les freins, un freinage énergique jusqu’à l’arrêt compris",
        );
        let (cool, hot) = sure.after_stop_c;
        let heat = format!(
            "Neuf fois sur dix, les freins étaient entre {} et {} après un freinage énergique jusqu’à l’arrêt.",
            format::temperature(f64::from(cool), units),
            format::temperature(f64::from(hot), units)
        );
        let what = sure.matters.iter().take(2).map(|(input, _)| input_name(*input)).collect::<Vec<_>>();
        let matters =
            (!what.is_empty()).then(|| format!("Cet écart vient surtout {}.", what.join(", puis ")));
        let intro = format!(
            "Parcours calculé {runs} fois, avec des pentes, une masse, des résistances, un vent, un ralentisseur et des freins chacun un peu différents de ce qui est admis."
        );
        [Some(intro), Some(held), Some(kept), Some(heat), matters].into_iter().flatten().collect()
    }
    fn too_long_to_be_sure(&self) -> &'static str {
        "Cette route est trop longue pour que son parcours soit calculé 256 fois\u{a0}: calculez-en une partie pour connaître le degré de certitude de son plan."
    }
    fn studying(&self, share: f32) -> String {
        format!("Calcul du degré de certitude\u{a0}: {}", format::share(f64::from(share)))
    }
    fn not_yet(&self) -> &'static str {
        "…"
    }
    fn lost_label(&self) -> &'static str {
        "Si le ralentisseur tombe en panne"
    }
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String> {
        let stop = match lost.can_stop(foot_m) {
            Reach::AllTheWay => {
                "Un freinage énergique, commencé dans les deux secondes, arrête le véhicule sans dépasser la température limite, de n’importe quel endroit de la descente."
                    .to_owned()
            }
            Reach::Part(until) => format!(
                "Un freinage énergique, commencé dans les deux secondes, arrête le véhicule sans dépasser la température limite jusqu’au point à {}\u{a0}; au-delà, non.",
                format::distance(until.0, units)
            ),
            Reach::Nowhere => {
                "Même au sommet, un freinage énergique jusqu’à l’arrêt dépasserait la température limite."
                    .to_owned()
            }
        };
        let hold = match lost.can_hold(crest_m) {
            Reach::AllTheWay => {
                "Les freins de service pourraient aussi tenir la vitesse du véhicule jusqu’au pied de la descente sans dépasser la limite.".to_owned()
            }
            Reach::Part(from) => format!(
                "Ce n’est qu’à partir de {} que les freins de service pourraient tenir la vitesse du véhicule jusqu’au pied de la descente\u{a0}; avant, arrêtez-vous.",
                format::distance(from.0, units)
            ),
            Reach::Nowhere => {
                "Les freins de service ne pourraient pas retenir le véhicule jusqu’au pied de la descente\u{a0}: arrêtez-vous.".to_owned()
            }
        };
        let neither = lost.neither_from.map(|from| {
            format!(
                "À partir de {}, ni l’un ni l’autre ne respecterait la limite.",
                format::distance(from.0, units)
            )
        });
        let ramps = lost.ramps.iter().map(|ramp| {
            format!(
                "Voie de détresse à {}\u{a0}: en roulant sans aucun frein depuis le point à {}, le véhicule l’aborderait à environ {}\u{a0}; il faudrait environ {} d’un lit horizontal de gravier rond non tassé.",
                format::distance(ramp.at.0, units),
                format::distance(ramp.lost_at.0, units),
                format::met_speed(ramp.speed.0, units),
                format::height(ramp.needs.0, units)
            )
        });
        let none = lost.ramps.is_empty().then(|| {
            "Aucune voie de détresse n’est saisie sur cette descente\u{a0}; cela ne veut pas dire qu’il n’y en a pas.".to_owned()
        });
        let first = [Some(stop), Some(hold), neither].into_iter().flatten();
        first.chain(ramps).chain(none).collect()
    }
    fn adjustment_label(&self) -> &'static str {
        "Freins mal réglés"
    }
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String> {
        let one = |it: &Adjustment| {
            let heat = format::temperature(it.hottest_after_stop.0, units);
            let kept = if it.kept { "" } else { ", au-dessus de la limite" };
            format!(
                "{}\u{a0}: environ {heat} après un freinage énergique jusqu’à l’arrêt{kept}.",
                place(it.place)
            )
        };
        let intro = "Si un groupe d’essieux ne freinait qu’à moitié, les autres seraient plus chauds sur toute la route.";
        std::iter::once(intro.to_owned()).chain(all.iter().map(one)).collect()
    }
    fn slowing_label(&self) -> &'static str {
        "Ralentir pour ce qui vient"
    }
    fn slowing_sentence(&self) -> &'static str {
        "Pied levé de l’accélérateur et à plein cran à partir de là, le ralentisseur seul ramène ce véhicule à la vitesse indiquée, et les freins de service restent froids. La signalisation et ce que vous voyez passent en premier."
    }
    fn slowing_heads(&self) -> [&'static str; 6] {
        [
            "endroit",
            "pour quoi",
            "vitesse à atteindre",
            "plein cran à partir de",
            "sur le rapport",
            "freins de service seuls",
        ]
    }
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6] {
        let (from, gear) = match slowing.lift_off {
            Some((from, speed)) => (
                format!("{}, à {}", format::distance(from.0, units), format::met_speed(speed.0, units)),
                slowing.gear.number().to_string(),
            ),
            None => ("insuffisant\u{a0}: freinez tôt".to_owned(), "–".to_owned()),
        };
        let rest = slowing.cut_out.filter(|_| slowing.lift_off.is_some());
        let rest = rest.map_or_else(String::new, |off| {
            format!("\u{a0}; en dessous de {}, les freins de service", format::met_speed(off.0, units))
        });
        let to =
            if slowing.to.0 > 0.0 { format::hold_speed(slowing.to.0, units) } else { "arrêt".to_owned() };
        [
            format::distance(slowing.at.0, units),
            what_for(&slowing.what, units),
            to,
            from + &rest,
            gear,
            format!(
                "{}, puis environ {}",
                format::height(slowing.brakes_need.0, units),
                format::temperature(slowing.brakes_after.0, units)
            ),
        ]
    }
    fn slowing_more(&self, count: usize) -> String {
        if count == 1 {
            "Et 1 autre endroit où il faut moins ralentir.".to_owned()
        } else {
            format!("Et {count} autres endroits où il faut moins ralentir.")
        }
    }
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String {
        let how = format!(
            "Parcours calculé {runs} fois, avec des pentes, une masse, un vent, un ralentisseur et des freins un peu différents"
        );
        if sure.held == runs && sure.kept == runs {
            return format!(
                "{how}\u{a0}: chaque fois, le ralentisseur a tenu la vitesse et les freins ont respecté la limite."
            );
        }
        format!(
            "{how}\u{a0}: le ralentisseur seul a tenu la vitesse dans {} des cas, les freins ont respecté la limite dans {} des cas.",
            format::share(sure.held as f64 / runs as f64),
            format::share(sure.kept as f64 / runs as f64)
        )
    }
    fn evidence_head(&self) -> &'static str {
        "Vérifications"
    }
    fn evidence_sentence(&self) -> &'static str {
        "Ce à quoi le calcul est confronté\u{a0}: des valeurs extérieures à ce projet, chacune avec sa source et la façon dont nous l’avons obtenue, et le résultat obtenu ici. Les mêmes lignes servent de tests au projet."
    }
    fn evidence_count(&self, rows: usize, known: usize) -> String {
        let marked = match known {
            0 => "aucune ne s’écarte de sa source au-delà de la tolérance".to_owned(),
            1 => "1 s’écarte de sa source au-delà de la tolérance, et est marquée comme telle".to_owned(),
            _ => {
                format!(
                    "{known} s’écartent de leur source au-delà de la tolérance, et sont marquées comme telles"
                )
            }
        };
        format!("{rows} valeurs\u{a0}; {marked}.")
    }
    fn evidence_heads(&self) -> [&'static str; 4] {
        ["objet", "valeur de la source", "ici", "écart"]
    }
    fn evidence_difference(&self) -> &'static str {
        "s’écarte"
    }
    fn evidence_missing(&self) -> &'static str {
        "Les lignes n’ont pas pu être chargées. Ouvrez cette partie encore une fois, ou rechargez la page."
    }
    fn measured_head(&self) -> &'static str {
        "Ce qui a tenu aujourd’hui"
    }
    fn measured_sentence(&self) -> &'static str {
        "Vous avez tenu une vitesse constante dans une descente avec le ralentisseur seul, sans accélérer et sans freins de service\u{a0}? Saisissez après coup, en stationnement, ce que vous avez relevé\u{a0}: vous saurez ce que votre ralentisseur donne vraiment avec la masse et les conditions du jour saisies plus haut."
    }
    fn measured_fields(&self) -> [&'static str; 6] {
        [
            "Rapport",
            "Cran",
            "Régime moteur",
            "Vitesse constante",
            "Pente, en descente",
            "ou\u{a0}: endroit sur la route affichée",
        ]
    }
    fn measured_place_hint(&self) -> &'static str {
        "Si un endroit est indiqué, ce sont la pente et l’altitude de cet endroit qui sont prises."
    }
    fn measure(&self) -> &'static str {
        "Calculer"
    }
    fn measured_missing(&self) -> &'static str {
        "Saisissez le rapport, le cran, le régime moteur et la vitesse constante, ainsi qu’une pente en descente ou un endroit dans une descente de la route affichée, le tout en nombres."
    }
    fn measured(&self, measured: &Measured, units: Units) -> String {
        format!(
            "À {}, le véhicule a été retenu avec {}\u{a0}; ses données donnent {}. Cela fait {} de ce qu’elles indiquent pour le ralentisseur.",
            format::engine_speed(measured.engine_speed.0),
            format::power(measured.power.0, units),
            format::power(measured.assumed.0, units),
            format::share(measured.scale)
        )
    }
    fn not_measured(&self, why: &NotMeasured) -> String {
        match why {
            NotMeasured::NoSuchStage => "Ce véhicule n’a pas ce rapport ou ce cran.".to_owned(),
            NotMeasured::Off => {
                "Le ralentisseur coupé, rien n’est appris à son sujet\u{a0}: saisissez un cran.".to_owned()
            }
            NotMeasured::NotPushed => {
                "Cette pente ne pousse pas ce véhicule à cette vitesse\u{a0}: saisissez un tronçon plus raide."
                    .to_owned()
            }
            NotMeasured::GaugesDiffer(turning) => format!(
                "Sur ce rapport et à cette vitesse, le moteur tournerait à environ {}\u{a0}: le rapport engagé, le rapport de pont, les pneus ou l’un des deux chiffres est faux.",
                format::engine_speed(turning.0)
            ),
            NotMeasured::OutOfReach(factor) => format!(
                "Le ralentisseur devrait donner {} de ce qu’indiquent ses données. Il est plus probable que la masse, la pente ou le cran ne soient pas ceux saisis, ou que les freins de service aient aidé.",
                format::share(*factor)
            ),
        }
    }
    fn use_measured(&self) -> &'static str {
        "Planifier avec cette valeur"
    }
    fn undo_measured(&self) -> &'static str {
        "Revenir aux données du véhicule"
    }
    fn scale_in_use(&self, scale: f64) -> String {
        format!("Les plans comptent sur {} des données du ralentisseur.", format::share(scale))
    }
}

/// “…: les 256 fois”, “…: 12 fois sur 256”.
fn of_runs(count: usize, runs: usize, what: &str) -> String {
    let of = match count {
        0 => format!("0 fois sur {runs}"),
        all if all == runs => format!("les {runs} fois"),
        some => format!("{some} fois sur {runs}"),
    };
    format!("{what}\u{a0}: {of}.")
}

fn input_name(input: Input) -> &'static str {
    match input {
        Input::Grade => "des pentes",
        Input::Mass => "de la masse",
        Input::Rolling => "de la résistance au roulement",
        Input::Drag => "de la résistance de l’air",
        Input::Retarder => "de ce que donne le ralentisseur",
        Input::Wind => "du vent",
        Input::BrakesAtStart => "de la température des freins au départ",
        Input::Cooling => "du refroidissement des freins",
    }
}

fn place(place: AxlePlace) -> &'static str {
    match place {
        AxlePlace::Steer => "Essieu directeur",
        AxlePlace::Drive => "Essieux moteurs",
        AxlePlace::Trailer => "Remorque",
    }
}

fn what_for(what: &SlowFor, units: Units) -> String {
    match what {
        SlowFor::Curve(radius_m) => format!("virage, rayon d’environ {}", radius(*radius_m, units)),
        SlowFor::Limit => "limitation signalée".to_owned(),
        SlowFor::Stop(name) => name_or(name, "lieu où il faut s’arrêter"),
        SlowFor::BrakeCheck(name) => name_or(name, "aire de vérification des freins"),
        SlowFor::Town(name) => name_or(name, "village ou ville"),
    }
}
