//! English words of the notice before the page, and of what the pictures say in words.

use super::English;
use crate::format::{self, Units};
use crate::words::AccessWords;
use crate::words::access::SAME_PLACE_M;

const TOWARDS: [&str; 8] =
    ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

impl AccessWords for English {
    fn i_am_parked(&self) -> &'static str {
        "I am parked"
    }
    fn road_table(&self) -> &'static str {
        "The road as a table"
    }
    fn road_table_heads(&self) -> [&'static str; 2] {
        ["from – to", "part"]
    }
    fn between(&self) -> &'static str {
        "no descent"
    }
    fn power_table(&self) -> &'static str {
        "Power as a table"
    }
    fn power_heads(&self) -> [&'static str; 2] {
        ["engine speed, /min", "pulls"]
    }
    fn holds(&self, stage: &str) -> String {
        format!("holds, {stage}")
    }
    fn window_ends(&self) -> [&'static str; 2] {
        ["Beginning of the part shown", "End of the part shown"]
    }
    fn leads(&self, straight_m: f64, towards: usize, units: Units) -> String {
        if straight_m < SAME_PLACE_M {
            return "It ends where it began.".to_owned();
        }
        let (away, towards) = (format::distance(straight_m, units), TOWARDS[towards % TOWARDS.len()]);
        format!("It ends {away} from its start as the crow flies, to the {towards}.")
    }
    fn card_profile(&self) -> &'static str {
        "Profile of the road. What it shows stands in the rows below it."
    }
}
