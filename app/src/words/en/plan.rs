//! English words of the answer: verdict, deciding sentence, what governs, cautions.

use super::{English, minutes};
use crate::format::{self, Units};
use crate::words::say::capital;
use crate::words::{Piece, PlanWords};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, HeatStep, Verdict};
use solver::truck::{Gear, Stage};

fn plain(text: impl Into<String>) -> Piece {
    Piece::Plain(text.into())
}

fn strong(text: impl Into<String>) -> Piece {
    Piece::Strong(text.into())
}

impl PlanWords for English {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "retarder holds it",
            Verdict::LittleInReserve => "holds, little in reserve",
            Verdict::NeedsServiceBrakes => "needs service brakes",
            Verdict::NoSafeSpeed => "no safe speed found",
        }
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "cool",
            HeatStep::Warm => "warm",
            HeatStep::Hot => "hot",
            HeatStep::OverLimit => "over the limit",
        }
    }
    fn stage(&self, stage: Stage) -> String {
        if stage == Stage::OFF { "retarder off".to_owned() } else { format!("stage {}", stage.number()) }
    }
    fn gear(&self, gear: Gear) -> String {
        format!("gear {}", gear.number())
    }
    fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece> {
        let (place, crest) = if descent.from == 0 {
            (" from the ", "start of the road".to_owned())
        } else {
            (" from the crest at ", format::distance(descent.crest.0, units))
        };
        let opening = if count == 1 {
            "The descent: ".to_owned()
        } else {
            format!("Descent {} of {count} decides: ", descent.number)
        };
        match &descent.choice {
            Choice::Held(advice) => vec![
                plain(opening),
                strong(self.gear(advice.gear)),
                plain(", "),
                strong(self.stage(advice.stage)),
                plain(", hold "),
                strong(format::hold_speed(advice.speed.0, units)),
                plain(place),
                strong(crest),
                plain("."),
            ],
            Choice::NoSafeSpeed(_) => vec![
                plain(opening),
                strong("no safe speed was found"),
                plain(place),
                strong(crest),
                plain(". As entered, do not take this truck down it."),
            ],
        }
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "On the parts that could be assessed, no hill asks for a gear or a retarder stage."
        } else {
            "No hill on this road asks for a gear or a retarder stage."
        }
    }
    fn chosen_for(&self, descent: &Descent, units: Units) -> String {
        let sustained = descent.sustained;
        let grade = format!(
            "the steepest {}, {}, from {}",
            format::length(sustained.length.0, units),
            format::grade(sustained.grade.0),
            format::distance(sustained.from.0, units)
        );
        match &descent.choice {
            Choice::Held(_) => format!(
                "Engage the gear before the crest and keep it to the foot at {}. It is chosen for {grade}.",
                format::distance(descent.foot.0, units)
            ),
            Choice::NoSafeSpeed(_) => format!("What rules it out is {grade}."),
        }
    }
    fn along_label(&self) -> &'static str {
        "Each descent has its own gear, from its crest at:"
    }
    fn along(&self, descent: &Descent, units: Units) -> String {
        let crest = format::distance(descent.crest.0, units);
        match &descent.choice {
            Choice::Held(advice) => format!("{crest}: {}", self.in_short(advice, units)),
            Choice::NoSafeSpeed(_) => format!("{crest}: no safe speed found"),
        }
    }
    fn along_more(&self, count: usize) -> String {
        format!("and {count} more in the list below")
    }
    fn other_mode_label(&self, day: &Day) -> &'static str {
        match day.service_brakes {
            ServiceBrakes::InReserve => "If you allowed snubs",
            ServiceBrakes::MaySnub => "With the service brakes in reserve",
        }
    }
    fn same_choice(&self) -> &'static str {
        "The same gear, stage and speed."
    }
    fn choice_apart(&self, choice: &str, more_s: f64) -> String {
        let change = if more_s < 0.0 { "less" } else { "more" };
        format!("{choice}; {} {change}.", minutes(more_s.abs()))
    }
    fn heavier_label(&self) -> &'static str {
        "If it weighs 10 % more"
    }
    fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String {
        match heavier {
            Some(choice) => format!("{}.", self.choice(choice, units)),
            None => "That mass is out of range.".to_owned(),
        }
    }
    fn heat_label(&self) -> &'static str {
        "Service brakes"
    }
    fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String {
        format!(
            "About {} at the hottest; {} after one hard stop (limit {}).",
            format::temperature(advice.hottest.0, units),
            format::temperature(advice.hottest_after_stop.0, units),
            format::entered_temperature(day.heat_limit_c, units)
        )
    }
    fn snub(&self, advice: &Advice, units: Units) -> Option<String> {
        advice.snub.map(|snub| {
            format!(
                "Snub: at {} brake down to {} in about {:.0} s, release, and again after about {:.0} s on the steepest part; about {} in all. Do not drag the brakes.",
                format::hold_speed(snub.from.0, units),
                format::hold_speed(snub.to.0, units),
                snub.on.0,
                snub.off.0,
                if snub.count == 1 { "1 snub".to_owned() } else { format!("{} snubs", snub.count) }
            )
        })
    }
    fn choice(&self, choice: &Choice, units: Units) -> String {
        match choice {
            Choice::Held(advice) => {
                let verdict = self.verdict(advice.verdict);
                format!("{}: {verdict}", capital(&self.in_short(advice, units)))
            }
            Choice::NoSafeSpeed(_) => "No safe speed found".to_owned(),
        }
    }
    fn parked(&self) -> &'static str {
        "Plan while parked. Not for use while driving."
    }
    fn cautions(&self) -> &'static [&'static str] {
        &[
            "A planning and teaching aid: no instruction, and no approval of a road.",
            "Worked out from your entries and from recorded heights, which err.",
            "It cannot see brake adjustment, tyres, surface, weather, traffic, closures, or how the load sits.",
            "Posted signs, the law, your employer’s rules and the maker’s limits come first.",
            "The service brakes remain the means to stop.",
            "In doubt: stop at the top, go slower, or take another road.",
        ]
    }
    fn descents_head(&self, count: usize) -> String {
        match count {
            0 => "No descents".to_owned(),
            1 => "1 descent".to_owned(),
            _ => format!("{count} descents"),
        }
    }
    fn order(&self) -> &'static str {
        "Order of the list"
    }
    fn worst_first(&self) -> &'static str {
        "worst first"
    }
    fn road_order(&self) -> &'static str {
        "along the road"
    }
    fn columns(&self) -> [&'static str; 10] {
        ["descent", "from", "length", "drop", "mean", "steepest", "gear", "stage", "hold", "if stopped"]
    }
    fn descent(&self, number: usize) -> String {
        format!("Descent {number}")
    }
    fn details_of(&self, number: usize) -> String {
        format!("Descent {number}: details")
    }
}
