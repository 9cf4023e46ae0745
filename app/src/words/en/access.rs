//! English words of the notice before the page, and of what the pictures say in words.

use super::English;
use crate::words::AccessWords;

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
    fn ends_where_it_began(&self) -> &'static str {
        "It ends where it began."
    }
    fn leads_away(&self, away: &str, towards: &str) -> String {
        format!("It ends {away} from its start as the crow flies, to the {towards}.")
    }
    fn winds(&self) -> [&'static str; 8] {
        ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"]
    }
    fn card_profile(&self) -> &'static str {
        "Profile of the road. What it shows stands in the rows below it."
    }
}
