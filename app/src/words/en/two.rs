//! English words of two roads side by side.

use super::{English, minutes};
use crate::format::Units;
use crate::words::{TwoRow, TwoWords};

impl TwoWords for English {
    fn two_head(&self) -> &'static str {
        "Two roads"
    }
    fn keep_beside(&self) -> &'static str {
        "Keep this beside the next"
    }
    fn keep_beside_sentence(&self) -> &'static str {
        "To weigh two roads, two trucks or two days: what is shown now stays beside what you choose next."
    }
    fn two_next(&self) -> &'static str {
        "Both are the same still: choose another file, turn the road, or change truck or day."
    }
    fn end_two(&self) -> &'static str {
        "Put it away"
    }
    fn swap(&self) -> &'static str {
        "Swap the two"
    }
    fn swap_sentence(&self) -> &'static str {
        "Each road takes its own truck, day and places along when the two are swapped."
    }
    fn two_heads(&self) -> [&'static str; 4] {
        ["", "kept", "shown", "difference"]
    }
    fn two_row(&self, row: TwoRow) -> &'static str {
        match row {
            TwoRow::Truck => "truck, day",
            TwoRow::Worst => "worst descent",
            TwoRow::Descents => "descents",
            TwoRow::Hold => "slowest hold speed",
            TwoRow::Hottest => "hottest brakes after a hard stop",
            TwoRow::Braked => "service brakes used on descents, for curves and places too",
            TwoRow::Service => "work of the service brakes",
            TwoRow::Holding => "work of retarder and engine",
            TwoRow::Down => "time down the descents",
            TwoRow::Up => "time on climbs of 2 % and more",
            TwoRow::Crawl => "slowest on a climb",
            TwoRow::Time => "time in all",
            TwoRow::Rise => "rises",
            TwoRow::Fall => "falls",
            TwoRow::Length => "length",
            TwoRow::Curves => "curves to slow for",
            TwoRow::Checks => "brake checks entered",
            TwoRow::Ramps => "escape ramps entered",
            TwoRow::Parking => "parking entered",
            TwoRow::Blank => "not assessed",
            TwoRow::Fuel => "fuel, about",
            TwoRow::Cost => "cost at the rates entered",
        }
    }
    fn no_difference(&self) -> &'static str {
        "the same"
    }
    fn two_caution(&self) -> &'static str {
        "No row decides alone, and none of it is permission to descend. What is not assessed is not in these figures. Signs, closures and your employer’s rules come first."
    }
    fn rate_labels(&self) -> [&'static str; 2] {
        ["Price of fuel", "Cost of the truck and driver"]
    }
    fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => ["a litre", "an hour"],
            Units::Imperial => ["a gallon", "an hour"],
        }
    }
    fn time(&self, seconds: f64) -> String {
        minutes(seconds)
    }
    fn rank(&self, count: usize) -> String {
        format!("Compare these {count} roads")
    }
    fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count { format!("Roads: {done} of {count} worked out") } else { format!("{count} roads") }
    }
    fn ranked_sentence(&self) -> &'static str {
        "Each for the truck and the day entered, the worst descent first. Open one, and keep another beside it."
    }
    fn ranking(&self) -> &'static str {
        "being worked out"
    }
    fn open_ranked(&self) -> &'static str {
        "Open"
    }
    fn beside_ranked(&self) -> &'static str {
        "Keep beside"
    }
    fn ranked_ends(&self) -> &'static str {
        "direction"
    }
    fn ranked_labels(&self) -> [&'static str; 4] {
        ["length", "brakes if stopped", "slowest hold", "time"]
    }
    fn rank_again(&self) -> &'static str {
        "Truck or day have changed: work the roads out again"
    }
}
