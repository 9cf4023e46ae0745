//! Words of two roads side by side.

use crate::format::Units;

/// Words of the comparison.
pub trait TwoWords {
    /// Head of the section.
    fn two_head(&self) -> &'static str;
    /// Keeps what is shown beside what comes next.
    fn keep_beside(&self) -> &'static str;
    /// What that is good for.
    fn keep_beside_sentence(&self) -> &'static str;
    /// What to do next, while both are the same.
    fn two_next(&self) -> &'static str;
    /// Ends the comparison.
    fn end_two(&self) -> &'static str;
    /// Shows the road kept, and keeps the one shown.
    fn swap(&self) -> &'static str;
    /// What goes along with that.
    fn swap_sentence(&self) -> &'static str;
    /// Heads of the columns: what, the first, the second, the difference.
    fn two_heads(&self) -> [&'static str; 4];
    /// Label of a row.
    fn two_row(&self, row: TwoRow) -> &'static str;
    /// No difference.
    fn no_difference(&self) -> &'static str;
    /// That no row decides alone.
    fn two_caution(&self) -> &'static str;
    /// Labels of the rates: fuel, time.
    fn rate_labels(&self) -> [&'static str; 2];
    /// What a rate is for, in its units.
    fn rate_units(&self, units: Units) -> [&'static str; 2];
    /// A time: “1 h 12 min”.
    fn time(&self, seconds: f64) -> String;
    /// Compares the files instead of joining them.
    fn rank(&self, count: usize) -> String;
    /// Head of the list of roads.
    fn ranked_head(&self, done: usize, count: usize) -> String;
    /// What the list is for.
    fn ranked_sentence(&self) -> &'static str;
    /// A file that waits or is worked out.
    fn ranking(&self) -> &'static str;
    /// Makes a road of the list the one shown.
    fn open_ranked(&self) -> &'static str;
    /// Keeps a road of the list beside.
    fn beside_ranked(&self) -> &'static str;
    /// Label of the heights at the ends of a road, in the direction of travel.
    fn ranked_ends(&self) -> &'static str;
    /// Labels of a road's figures: length, hottest brakes, slowest hold speed, time.
    fn ranked_labels(&self) -> [&'static str; 4];
    /// Works the list out again for other entries.
    fn rank_again(&self) -> &'static str;
}

/// A row of the comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TwoRow {
    /// Truck.
    Truck,
    /// Worst verdict.
    Worst,
    /// Descents.
    Descents,
    /// Slowest hold speed.
    Hold,
    /// Hottest brakes after a stop.
    Hottest,
    /// Length on descents on which service brakes help, to slow as well.
    Braked,
    /// Work of the service brakes.
    Service,
    /// Work of retarder and motoring.
    Holding,
    /// Time on descents.
    Down,
    /// Time on climbs.
    Up,
    /// Slowest on a climb.
    Crawl,
    /// Time.
    Time,
    /// Rise.
    Rise,
    /// Fall.
    Fall,
    /// Length.
    Length,
    /// Curves.
    Curves,
    /// Brake checks.
    Checks,
    /// Escape ramps.
    Ramps,
    /// Parking.
    Parking,
    /// Not assessed.
    Blank,
    /// Fuel.
    Fuel,
    /// Cost at the rates entered.
    Cost,
}
