//! English words of one descent's details and of its table.

use super::English;
use crate::words::{Curves, DescentWords, PlanWords};
use solver::motion::Unusable;
use solver::plan::Advice;

impl DescentWords for English {
    fn sign_label(&self) -> &'static str {
        "As a road sign would state it"
    }
    fn sign(&self, grade: &str, length: &str) -> String {
        format!("{grade} for {length}")
    }
    fn advice_label(&self) -> &'static str {
        "How to come down"
    }
    fn no_advice(&self) -> &'static str {
        "No speed was found that keeps the limits. As entered, do not take this truck down it."
    }
    fn falls_short(&self, share: &str) -> String {
        format!("At full stage {share} of what the hill asks for is missing: the service brakes must help.")
    }
    fn more_than_asked(&self, share: &str) -> String {
        format!("At full stage {share} more than the hill asks for.")
    }
    fn advice_in_full(&self, advice: &Advice, [speed, engine_speed, reserve, time]: [&str; 4]) -> String {
        format!(
            "Gear {}, up to {}, {speed} at {engine_speed}. {reserve} {time} from crest to foot.",
            advice.gear.number(),
            self.stage(advice.stage)
        )
    }
    fn way_label(&self) -> &'static str {
        "Stages on the way down"
    }
    fn relief_label(&self) -> &'static str {
        "Where it eases"
    }
    fn eases_over(&self, span: &str, length: &str) -> String {
        format!("{span}: flat or rising for {length}. Do not shift up: the descent goes on.")
    }
    fn grades_label(&self) -> &'static str {
        "How steep"
    }
    fn mean_grade(&self, grade: &str) -> String {
        format!("{grade} on average.")
    }
    fn steepest_over(&self, grade: &str, length: &str, from: &str, doubt: &str) -> String {
        format!("{grade} over the steepest {length}, from {from}{doubt}.")
    }
    fn too_short_for_heights(&self) -> &'static str {
        "; the heights do not hold over so short a way"
    }
    fn curves_label(&self) -> &'static str {
        "Curves"
    }
    fn curve_count(&self, curves: &Curves) -> String {
        match (curves.count, curves.hairpins) {
            (1, 0) => "1 curve asks for less than this speed".to_owned(),
            (1, _) => "1 hairpin asks for less than this speed".to_owned(),
            (all, 0) => format!("{all} curves ask for less than this speed"),
            (all, 1) => format!("{all} curves ask for less than this speed, 1 of them a hairpin"),
            (all, some) => format!("{all} curves ask for less than this speed, {some} of them hairpins"),
        }
    }
    fn slowest_curve(&self, speed: &str, at: &str, side: &str, radius: &str) -> String {
        format!("The slowest: at most {speed} at {at}, {side}, radius about {radius}.")
    }
    fn curves_estimated(&self) -> &'static str {
        "Radii are estimates from the track; superelevation, sight and surface are not known."
    }
    fn side(&self, left: bool) -> &'static str {
        if left { "to the left" } else { "to the right" }
    }
    fn climb_label(&self) -> &'static str {
        "Up the same hill"
    }
    fn climbs_in(&self, gear: u8, speed: &str) -> String {
        format!("At full load it climbs in gear {gear} at about {speed}. The gear to go down is often lower.")
    }
    fn climbs_in_none(&self) -> &'static str {
        "No gear climbs it at full load."
    }
    fn cut_short(&self) -> &'static str {
        "The descent is cut off where the road can no longer be assessed. How it goes on is not known."
    }
    fn brakes_arrive(&self, heat: &str) -> String {
        format!("Brakes arrive at the crest with about {heat}.")
    }
    fn table_of(&self, grade: &str, height: &str) -> String {
        format!(
            "What each gear and stage does on {grade} at {height} above the sea, without throttle and without the service brakes"
        )
    }
    fn table_heads(&self) -> [&'static str; 3] {
        ["gear", "usable speeds", "reserve at the top"]
    }
    fn more_than_needed(&self) -> &'static str {
        "more than needed"
    }
    fn overruns(&self) -> &'static str {
        "overruns"
    }
    fn above_speed(&self, speed: &str) -> String {
        format!("above {speed}")
    }
    fn not_usable(&self) -> &'static str {
        "not usable"
    }
    fn unusable(&self, why: Unusable) -> &'static str {
        match why {
            Unusable::Slippery => "too slippery",
            Unusable::Grip => "too little grip",
            Unusable::CutOut => "cut out",
            Unusable::Unlocked => "converter open",
        }
    }
    fn table_legend(&self) -> &'static [(&'static str, &'static str)] {
        &[
            ("a speed", "the truck settles there, with the engine speed below it"),
            ("more than needed", "it slows down: a weaker stage or a higher gear would do"),
            (
                "overruns",
                "it gets faster until the engine turns too fast: use a lower gear or the service brakes",
            ),
            ("not usable", "for the reason given"),
            (
                "in one gear",
                "any speed from where the strongest stage settles up to the top of the gear can be held, by changing stages",
            ),
        ]
    }
    fn table_chosen(&self) -> &'static str {
        "advised"
    }
    fn fall_in_part(&self, all: &str, blank: &str) -> String {
        format!("{all} (of which {blank} not assessed)")
    }
    fn no_work_counted(&self, length: &str) -> String {
        format!("On the {length} that are not assessed no braking is counted.")
    }
    fn whole_way(&self, time: &str, fall: &str, holding: &str, service: &str) -> String {
        format!(
            "Whole road: {time}, {fall} down. Retarder and engine take {holding}, the service brakes {service}."
        )
    }
    fn slowest_climb(&self, speed: &str) -> String {
        format!("Slowest on a climb: about {speed}.")
    }
    fn less_than(&self, share: &str) -> String {
        format!("less than {share}")
    }
    fn share_and_fuel(&self, share: &str, fuel: &str) -> String {
        format!("That is {share} of the braking for the service brakes. Fuel: about {fuel}.")
    }
}
