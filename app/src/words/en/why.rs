//! English words of the reasons: what governs, why no speed was found, what holds for all.

use super::English;
use crate::words::WhyWords;
use solver::day::Withheld;
use solver::plan::{Advice, Governs, Note, Verdict};

impl WhyWords for English {
    fn governs_label(&self) -> &'static str {
        "Why not faster"
    }
    fn governed_by(&self, advice: &Advice, limit: &str, reserve: &str, heat_limit: &str) -> String {
        match advice.governs {
            Governs::SpeedLimit => format!("The speed limit entered, {limit}."),
            Governs::Posted => {
                "A limit posted on the way: the whole descent is held to it, or the gear for more would not hold at that limit.".to_owned()
            }
            Governs::EngineSpeed => "The highest allowed engine speed.".to_owned(),
            Governs::Control => control(advice, reserve),
            Governs::Curve => {
                "Curves: between them the truck could not reach a faster speed, or the gear for it would be too high in the slowest curve."
                    .to_owned()
            }
            Governs::Grip => "Grip of the driven axles on this surface.".to_owned(),
            Governs::Heat => format!(
                "Brake heat: faster, a hard stop would pass {heat_limit}."
            ),
        }
    }
    fn untouched_governs(&self) -> &'static str {
        "Your choice under Day: faster, a recorded pitch would ask for the service brakes."
    }
    fn no_speed_because(&self, because: Governs, slowest: &str, reached: &str, limit: &str) -> String {
        let reason = match because {
            Governs::SpeedLimit => {
                return format!("Even the slowest speed tried, {slowest}, is above the speed limit entered.");
            }
            Governs::Posted => "the gear would not suit the lowest posted limit",
            Governs::EngineSpeed => "the engine would turn too fast",
            Governs::Control => "the retarder does not hold it",
            Governs::Curve => "every gear is too high for the slowest curve",
            Governs::Grip => "the driven axles lack the grip to hold it",
            Governs::Heat => {
                &format!("the brakes would reach about {reached} after a hard stop; the limit is {limit}")
            }
        };
        format!("Even at {slowest}, the slowest speed tried, {reason}.")
    }
    fn else_another_road(&self) -> &'static str {
        "Unless that can be changed, take another road."
    }
    fn note(&self, note: Note) -> &'static str {
        match note {
            Note::StagesWithheld(why) => withheld(why),
            Note::WetCap => {
                "Wet: the retarder is counted with half of what the driven axles grip at most. If the driven wheels slip, go a stage down; some guidance says off altogether."
            }
            Note::HoldByHand => {
                "This gearbox would choose gears by itself: set it to hold, and engage the gear by hand before each crest."
            }
            Note::ShiftsUpByItself => {
                "This gearbox shifts up by itself when the engine turns too fast, and then the retarder lets go: the speeds told keep below that."
            }
            Note::StartsInDescent => {
                "The road starts in the middle of a descent. What the brakes went through before is not known: enter their temperature under Day."
            }
            Note::PartlyUnassessed => {
                "Part of the road could not be assessed. It is left blank, and nothing is advised there."
            }
            Note::PoorHeights => {
                "The heights of this file are poor: grades are advisory only. Check them against the signs."
            }
            Note::HotElsewhere => {
                "Away from the descents there is a place where a hard stop would take the brakes past their limit. Look for it in the picture, and go slower there."
            }
            Note::CannotClimb => "At full load this truck cannot climb a part of this road in any gear.",
        }
    }
}

fn withheld(why: Withheld) -> &'static str {
    match why {
        Withheld::Snow | Withheld::Ice => {
            "No retarder stage is advised on snow or ice: the driven axles could break away. Guidance conflicts (some makers allow the weakest stage), and the cautious reading is taken. Gears and speeds here count on the unfuelled engine alone. In doubt do not start down: wait until the road is treated."
        }
        Withheld::EmptyInTheWet => {
            "No retarder stage is advised empty on a wet road: the driven axles carry little and could break away. Guidance conflicts (some allow weak stages), and the cautious reading is taken. Gears and speeds here count on the unfuelled engine alone."
        }
        Withheld::NoTrailerInTheWet => {
            "No retarder stage is advised without a trailer on a wet road: the driven axles carry little and the tractor could spin. Guidance conflicts (some allow weak stages), and the cautious reading is taken. Gears and speeds here count on the unfuelled engine alone."
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
            format!("Control: in any faster gear the retarder would not hold with {reserve} in reserve, or a steep bit would ask too much of the service brakes.")
        }
        Verdict::LittleInReserve => format!(
            "Control: at no speed is there {reserve} in reserve; faster, the retarder would hold still less."
        ),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => {
            "Control: engine and retarder do not hold it alone here; faster, they would carry still less of it."
                .to_owned()
        }
    }
}

/// The same where no stage is called for, or there is no retarder.
fn engine_alone(verdict: Verdict, reserve: &str) -> String {
    match verdict {
        Verdict::RetarderHolds => {
            format!(
                "Control: in any faster gear it would not be held with {reserve} in reserve, or a steep bit would ask too much of the service brakes."
            )
        }
        Verdict::LittleInReserve => format!(
            "Control: in any faster gear it would not be held at all. Even here the {reserve} in reserve is not there."
        ),
        Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => {
            "Control: faster, the engine alone would carry less than half of it, whatever the brake heat."
                .to_owned()
        }
    }
}
