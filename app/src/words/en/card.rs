//! English words of the card for the cab.

use super::English;
use crate::words::say::file_name;
use crate::words::{CardWords, PlanWords};
use solver::truck::{Gear, Stage};

impl CardWords for English {
    fn card_head(&self) -> &'static str {
        "Card"
    }
    fn to_card(&self) -> &'static str {
        "The card for the cab, to print"
    }
    fn card_sentence(&self) -> &'static str {
        "For the cab, so that no screen is needed on the way: print it, fold it in the middle. Read it before the crest, parked."
    }
    fn print_card(&self) -> &'static str {
        "Print the card"
    }
    fn save_picture(&self) -> &'static str {
        "Save it as a picture"
    }
    fn picture_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "road", if reversed { "-reversed-card.png" } else { "-card.png" })
    }
    fn save_rows(&self) -> &'static str {
        "Save its rows as CSV"
    }
    fn marker_label(&self) -> &'static str {
        "Marker or odometer at the start of the road"
    }
    fn counts_down(&self) -> &'static str {
        "markers count down"
    }
    fn markers_miss(&self, start: &str, end: &str) -> String {
        format!(
            "The markers do not reach over this road: as entered they would go from {start} at its start to {end} at its end, and there are none below zero. Correct the marker, or which way they count. Until then the card has distances from the start."
        )
    }
    fn card_is_old(&self) -> &'static str {
        "Do not use: this card belongs to entries before"
    }
    fn do_not_descend(&self) -> &'static str {
        "DO NOT GO DOWN with what is entered"
    }
    fn no_speed_for(&self, numbers: &str, count: usize) -> String {
        let descents = if count == 1 { "descent" } else { "descents" };
        format!(
            "No safe speed was found for {descents} {numbers}. Take another road, or plan again with less load or on a better day. Posted signs and licensed practice come first."
        )
    }
    fn facts_of(&self, [mass, retarder, surface, load, air, brakes]: [&str; 6]) -> String {
        format!("{mass} · {retarder} · {surface}, {load} · air {air} · brakes {brakes} at the start")
    }
    fn card_heads(&self) -> [&'static str; 6] {
        ["descent, from – to", "grade", "gear", "stage", "hold", "what to know"]
    }
    fn mile(&self) -> &'static str {
        "mile"
    }
    fn card_asks(&self, grade: &str, length: &str) -> String {
        format!("asks for {grade}, {length}")
    }
    fn know_snub(&self, from: &str, to: &str) -> String {
        format!("Snub {from} to {to}, release, repeat.")
    }
    fn know_in_doubt(&self, grade: &str) -> String {
        format!("Short steep bits up to {grade} in doubt: keep the service brakes ready.")
    }
    fn know_easing(&self, at: &str) -> String {
        format!("The easing at {at} is not the end: stay in gear.")
    }
    fn know_begins_unknown(&self) -> &'static str {
        "How it begins is not known: the road before it was not assessed."
    }
    fn know_slow_curves(&self, count: usize, speed: &str, at: &str) -> String {
        format!("{count} curves ask for less than the hold speed, the slowest {speed}, {at}.")
    }
    fn know_slow_curve(&self, speed: &str, at: &str) -> String {
        format!("Slowest curve {speed}, {at}.")
    }
    fn know_posted(&self, speed: &str, km: &str, miles: &str) -> String {
        format!("Posted {speed}, {km}, {miles}.")
    }
    fn know_ramp(&self, at: &str) -> String {
        format!("Escape ramp at {at}.")
    }
    fn know_quiet(&self, at: &str) -> String {
        format!("Quiet zone at {at}: an engine brake may be forbidden.")
    }
    fn know_at_foot(&self, name: &str, at: &str) -> String {
        format!("At the foot: {name}, {at}.")
    }
    fn to_stop_at_foot(&self) -> &'static str {
        "a place to stop"
    }
    fn know_cut_short(&self) -> &'static str {
        "How it goes on is not known."
    }
    fn card_more(&self, count: usize) -> String {
        if count == 1 {
            return "And 1 more descent on this road that is not on this card: plan the road in parts."
                .to_owned();
        }
        format!("And {count} more descents on this road that are not on this card: plan the road in parts.")
    }
    fn before_crest_head(&self) -> &'static str {
        "Before the crest"
    }
    fn stop_at_check(&self, at: &str) -> String {
        format!("Stop at the brake check, {at}: adjustment, leaks, drums or discs, tyres, load.")
    }
    fn stop_where_allowed(&self) -> &'static str {
        "Stop where it is allowed: adjustment, leaks, drums or discs, tyres, load."
    }
    fn try_retarder(&self) -> &'static str {
        "Lift off briefly: does the retarder come in, at every stage?"
    }
    fn look_ahead(&self) -> &'static str {
        "Weather, signs, closures: is it still the road that was planned?"
    }
    fn gear_before(&self, gear: Gear, stage: Stage, at: &str) -> String {
        let (gear, named) = (gear.number(), self.stage(stage));
        if stage.is_off() {
            return format!("Gear {gear} engaged before {at}, {named}.");
        }
        format!("Gear {gear} and {named} engaged before {at}.")
    }
    fn gear_at_start(&self, gear: Gear, stage: Stage) -> String {
        let gear = gear.number();
        format!("Before setting off: gear {gear}, {}. The road starts in the descent.", self.stage(stage))
    }
    fn shifting(&self, in_legs: bool) -> &'static str {
        if in_legs { "Shift on the hill only as the rows say." } else { "No shifting on the hill." }
    }
    fn in_trouble_head(&self) -> &'static str {
        "If it gets away"
    }
    fn brake_now(&self) -> &'static str {
        "Brake hard now and stop, while the brakes are cool enough to do it."
    }
    fn stay_in_gear(&self) -> &'static str {
        "Stay in gear. Never neutral, never the clutch, no shift down at speed."
    }
    fn any_way_up(&self) -> &'static str {
        "Take an escape ramp or any way that rises. None is entered here; there may be some."
    }
    fn take_ramp(&self, ramps: &str) -> String {
        format!("Take the escape ramp at {ramps}, or any way that rises.")
    }
    fn warn_others(&self) -> &'static str {
        "Lights and horn: warn the others."
    }
    fn no_places_entered(&self) -> &'static str {
        "None are entered. That does not mean that there are none."
    }
    fn card_cautions(&self) -> &'static str {
        "Worked out from your entries and recorded heights, which err; not permission to descend. It cannot see adjustment, tyres, surface, weather, traffic or the load. Posted signs, the law, your employer and the vehicle’s maker come first. The service brakes remain the means to stop. In doubt: stop at the top, go slower, take another road."
    }
    fn rows_name(&self, road: &str, reversed: bool) -> String {
        file_name(road, "road", if reversed { "-reversed-descents.csv" } else { "-descents.csv" })
    }
}
