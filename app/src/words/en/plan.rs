//! English words of the answer: verdicts, the list, cautions.

use super::{English, minutes};
use crate::words::PlanWords;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{HeatStep, Verdict};

impl PlanWords for English {
    fn verdict(&self, verdict: Verdict) -> &'static str {
        match verdict {
            Verdict::RetarderHolds => "retarder holds it",
            Verdict::LittleInReserve => "holds, little in reserve",
            Verdict::NeedsServiceBrakes => "needs service brakes",
            Verdict::NoSafeSpeed => "no safe speed found",
        }
    }
    fn engine_holds(&self) -> &'static str {
        "engine alone holds it"
    }
    fn engine_holds_little(&self) -> &'static str {
        "engine alone holds it, little in reserve"
    }
    fn holds_on_average(&self) -> &'static str {
        "holds it on the average"
    }
    fn brakes_touch(&self) -> &'static str {
        "holds it, service brakes touch"
    }
    fn heat_step(&self, step: HeatStep) -> &'static str {
        match step {
            HeatStep::Cool => "cool",
            HeatStep::Warm => "warm",
            HeatStep::Hot => "hot",
            HeatStep::OverLimit => "over the limit",
        }
    }
    fn stage_number(&self, number: usize) -> String {
        format!("stage {number}")
    }
    fn retarder_off(&self) -> &'static str {
        "retarder off"
    }
    fn off(&self) -> &'static str {
        "off"
    }
    fn in_legs(&self, [from, to]: [u8; 2], stage: &str, [slow, fast]: [&str; 2]) -> String {
        format!("gears {from} to {to}, {stage} in the lowest, {slow} to {fast}")
    }
    fn gear_number(&self, number: u8) -> String {
        format!("gear {number}")
    }
    fn no_descent(&self, partly_unassessed: bool) -> &'static str {
        if partly_unassessed {
            "On the parts that could be assessed, no hill asks for a gear or a retarder stage."
        } else {
            "Driven this way, no hill on this road asks for a gear or a retarder stage."
        }
    }
    fn along_label(&self) -> &'static str {
        "Each descent has its own gear, from its crest at:"
    }
    fn no_safe_speed(&self) -> &'static str {
        "no safe speed found"
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
    fn mass_out_of_range(&self) -> &'static str {
        "That mass is out of range."
    }
    fn heat_label(&self) -> &'static str {
        "Service brakes"
    }
    fn brakes_at(&self, hottest: &str, after_stop: &str, limit: &str) -> String {
        format!("About {hottest} at the hottest; {after_stop} after one hard stop (limit {limit}).")
    }
    fn snub_between(&self, from: &str, to: &str, on: &str, off: &str, count: u32) -> String {
        format!(
            "Snub: at {from} brake down to {to} in about {on} s, release, and again after about {off} s where the hill asks for most; about {} in all. Do not drag the brakes.",
            if count == 1 { "1 snub".to_owned() } else { format!("{} snubs", count) }
        )
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
        ["descent", "from", "length", "drop", "mean", "asks for", "gear", "stage", "hold", "if stopped"]
    }
    fn descent(&self, number: usize) -> String {
        format!("Descent {number}")
    }
    fn details_of(&self, number: usize) -> String {
        format!("Descent {number}: details")
    }
}
