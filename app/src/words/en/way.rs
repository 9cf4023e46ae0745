//! English words of the way down.

use super::English;
use crate::down::Told;
use crate::format::{self, Units};
use crate::words::say::{plain, strong};
use crate::words::{Piece, PlanWords, WayWords};
use solver::plan::{ChangeHow, Descent};

impl WayWords for English {
    fn decided(&self, descent: &Descent, count: usize, first: Option<Told>, units: Units) -> Vec<Piece> {
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
        match first {
            Some((gear, stage, speed)) => vec![
                plain(opening),
                strong(self.gear(gear)),
                plain(", "),
                strong(self.stage(stage)),
                plain(", hold "),
                strong(format::hold_speed(speed.0, units)),
                plain(place),
                strong(crest),
            ],
            None => vec![
                plain(opening),
                strong("no safe speed was found"),
                plain(place),
                strong(crest),
                plain(". As entered, do not take this truck down it."),
            ],
        }
    }
    fn by_place(&self, how: ChangeHow, at: &str) -> String {
        match how {
            ChangeHow::Down => format!("by {at}"),
            ChangeHow::Up => format!("from {at} on"),
        }
    }
    fn asks(&self, grade: &str, length: &str, from: &str) -> String {
        format!("an even {grade}: the hill asks for as much, most of all over {length} from {from}")
    }
    fn engage(&self, at_start: bool, foot: &str) -> String {
        let before = if at_start { "setting off" } else { "the crest" };
        format!("Engage the gear before {before} and keep it to the foot at {foot}.")
    }
    fn engage_first(&self, at_start: bool) -> &'static str {
        if at_start {
            "Engage the first gear before setting off. Change down before the place named, up only behind it."
        } else {
            "Engage the first gear before the crest. Change down before the place named, up only behind it."
        }
    }
    fn chosen(&self, lowest: bool, asks: &str) -> String {
        let gear = if lowest { "The lowest gear" } else { "It" };
        format!("{gear} is chosen for {asks}.")
    }
    fn ruled_out_by(&self, asks: &str) -> String {
        format!("What rules it out is {asks}.")
    }
    fn not_assessed_on(&self, span: &str) -> String {
        format!("Not assessed: {span}. Nothing is known of the grade there.")
    }
    fn brakes_warmer(&self, by: &str) -> String {
        format!("brakes {by} warmer")
    }
    fn doubted(&self) -> &'static str {
        ", in doubt: the heights may be off by as much"
    }
    fn and_more(&self, count: usize) -> String {
        format!("and {count} more")
    }
    fn brakes_at_places(&self, needed: bool, places: &str) -> String {
        let how = if needed { "are needed" } else { "touch" };
        format!("The service brakes {how} at: {places}.")
    }
    fn in_doubt(&self, grade: &str) -> String {
        format!(
            "The gear holds it on the average. Short steep bits of up to {grade} cannot be ruled out: keep the service brakes ready."
        )
    }
    fn touches_label(&self) -> &'static str {
        "Where it gets faster without the service brakes"
    }
    fn legs_label(&self) -> &'static str {
        "Gear by gear"
    }
    fn between_legs(&self) -> &'static str {
        "Between them the truck slows for the next gear, or takes up speed."
    }
    fn slowest_leg(&self) -> &'static str {
        "The slowest part"
    }
    fn untouched_label(&self) -> &'static str {
        "Never touching the service brakes"
    }
    fn no_untouched(&self) -> &'static str {
        "No gear holds every recorded pitch by itself."
    }
    fn one_gear_label(&self) -> &'static str {
        "One gear all the way"
    }
}
