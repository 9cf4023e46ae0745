//! French words of the reasons: what governs, why no speed was found, what holds for all.

use super::French;
use crate::words::WhyWords;
use solver::day::Withheld;
use solver::plan::{Advice, Governs, Note, Verdict};

impl WhyWords for French {
    fn governs_label(&self) -> &'static str {
        "Pourquoi pas plus vite"
    }
    fn governed_by(&self, advice: &Advice, limit: &str, reserve: &str, heat_limit: &str) -> String {
        match advice.governs {
            Governs::SpeedLimit => format!("La limitation de vitesse saisie, {limit}."),
            Governs::Posted => {
                "Une limitation signalée en chemin\u{a0}: toute la descente est tenue à cette vitesse, ou bien le rapport pour aller plus vite ne retiendrait pas le véhicule à cette vitesse.".to_owned()
            }
            Governs::EngineSpeed => "Le régime moteur maximal autorisé.".to_owned(),
            Governs::Control => control(advice, reserve),
            Governs::Curve => {
                "Virages\u{a0}: entre eux, le véhicule ne pourrait pas atteindre une vitesse plus élevée, ou le rapport pour celle-ci serait trop élevé dans le virage le plus lent.".to_owned()
            }
            Governs::Grip => "L’adhérence des essieux moteurs sur cette chaussée.".to_owned(),
            Governs::Heat => format!(
                "Chaleur des freins\u{a0}: plus vite, un freinage énergique jusqu’à l’arrêt les porterait au-delà de {heat_limit}."
            ),
        }
    }
    fn untouched_governs(&self) -> &'static str {
        "Votre choix parmi les conditions du jour\u{a0}: plus vite, une pente enregistrée demanderait les freins de service."
    }
    fn no_speed_because(&self, because: Governs, slowest: &str, reached: &str, limit: &str) -> String {
        let reason = match because {
            Governs::SpeedLimit => {
                return format!(
                    "Même la vitesse la plus basse essayée, {slowest}, dépasse la limitation de vitesse saisie."
                );
            }
            Governs::Posted => "le rapport ne conviendrait pas à la limitation signalée la plus basse",
            Governs::EngineSpeed => "le moteur tournerait trop vite",
            Governs::Control => "le ralentisseur ne retient pas le véhicule",
            Governs::Curve => "tous les rapports sont trop élevés pour le virage le plus lent",
            Governs::Grip => "l’adhérence des essieux moteurs ne suffit pas pour retenir le véhicule",
            Governs::Heat => &format!(
                "les freins atteindraient environ {reached} après un freinage énergique jusqu’à l’arrêt\u{a0}; la limite est de {limit}"
            ),
        };
        format!("Même à {slowest}, la vitesse la plus basse essayée, {reason}.")
    }
    fn else_another_road(&self) -> &'static str {
        "Si cela ne peut pas être changé, prenez une autre route."
    }
    fn note(&self, note: Note) -> &'static str {
        match note {
            Note::StagesWithheld(why) => withheld(why),
            Note::WetCap => {
                "Chaussée mouillée\u{a0}: le ralentisseur est compté au plus pour la moitié de l’adhérence maximale des essieux moteurs. Si les roues motrices glissent, réduisez le ralentisseur d’un cran\u{a0}; certaines consignes demandent de le couper entièrement."
            }
            Note::HoldByHand => {
                "Cette boîte de vitesses choisirait elle-même les rapports\u{a0}: réglez-la pour qu’elle garde le rapport, et engagez-le à la main avant chaque sommet."
            }
            Note::ShiftsUpByItself => {
                "Si le moteur tourne trop vite, cette boîte monte elle-même un rapport et le ralentisseur lâche\u{a0}: les vitesses indiquées restent en dessous."
            }
            Note::StartsInDescent => {
                "La route commence au milieu d’une descente. On ne sait pas ce que les freins ont subi avant\u{a0}: saisissez leur température sous «\u{a0}Conditions du jour\u{a0}»."
            }
            Note::PartlyUnassessed => {
                "Une partie de la route n’a pas pu être évaluée. Elle est laissée en blanc, et aucun conseil n’y est donné."
            }
            Note::PoorHeights => {
                "Les altitudes de ce fichier sont mauvaises\u{a0}: les pentes sont données à titre indicatif seulement. Vérifiez-les d’après les panneaux."
            }
            Note::HotElsewhere => {
                "En dehors des descentes, il y a un endroit où un freinage énergique jusqu’à l’arrêt dépasserait la limite des freins. Cherchez l’endroit dans l’image, et roulez-y moins vite."
            }
            Note::CannotClimb => {
                "Même moteur à pleine charge, ce véhicule ne peut pas monter une partie de cette route, quel que soit le rapport."
            }
        }
    }
}

fn withheld(why: Withheld) -> &'static str {
    match why {
        Withheld::Snow | Withheld::Ice => {
            "Aucun cran de ralentisseur n’est conseillé sur la neige ou le verglas\u{a0}: les essieux moteurs pourraient perdre l’adhérence. Les consignes se contredisent (certains constructeurs permettent le cran le plus faible)\u{a0}; c’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection. En cas de doute, n’entamez pas la descente\u{a0}: attendez que la route soit traitée."
        }
        Withheld::EmptyInTheWet => {
            "Aucun cran de ralentisseur n’est conseillé à vide sur chaussée mouillée\u{a0}: les essieux moteurs sont peu chargés et pourraient perdre l’adhérence. Les consignes se contredisent (certaines permettent des crans faibles)\u{a0}; c’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection."
        }
        Withheld::NoTrailerInTheWet => {
            "Aucun cran de ralentisseur n’est conseillé sans remorque ni semi-remorque sur chaussée mouillée\u{a0}: les essieux moteurs sont peu chargés et le tracteur pourrait partir en tête-à-queue. Les consignes se contredisent (certaines permettent des crans faibles)\u{a0}; c’est la lecture prudente qui est suivie. Ici, les rapports et les vitesses ne comptent que sur le moteur entraîné par les roues, sans injection."
        }
    }
}

/// What faster would mean depends on what there is at this speed.
fn control(advice: &Advice, reserve: &str) -> String {
    if advice.stage.is_off() {
        return engine_alone(advice.verdict, reserve);
    }
    match advice.verdict {
        Verdict::RetarderHolds => {
            format!(
                "Retenue\u{a0}: sur tout rapport plus rapide, le ralentisseur ne retiendrait pas le véhicule avec {reserve} de réserve, ou un court passage demanderait trop aux freins de service."
            )
        }
        Verdict::LittleInReserve => format!(
            "Retenue\u{a0}: à aucune vitesse il n’y a {reserve} de réserve\u{a0}; plus vite, le ralentisseur retiendrait encore moins."
        ),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => {
            "Retenue\u{a0}: ici, le moteur et le ralentisseur ne retiennent pas seuls le véhicule\u{a0}; plus vite, ils en prendraient encore moins."
                .to_owned()
        }
    }
}

/// The same where no stage is called for, or there is no retarder.
fn engine_alone(verdict: Verdict, reserve: &str) -> String {
    match verdict {
        Verdict::RetarderHolds => format!("Retenue\u{a0}: sur tout rapport plus rapide, le véhicule ne serait pas retenu avec {reserve} de réserve, ou un court passage demanderait trop aux freins de service."),
        Verdict::LittleInReserve => format!("Retenue\u{a0}: sur tout rapport plus rapide, le véhicule ne serait plus retenu, même sans réserve. Même ici, la réserve de {reserve} n’est pas atteinte."),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => "Retenue\u{a0}: plus vite, le moteur seul prendrait moins de la moitié de l’effort, quelle que soit la chaleur des freins.".to_owned(),
    }
}
