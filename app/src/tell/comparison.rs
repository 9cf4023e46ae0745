//! Words of two roads side by side.

use crate::format::Units;
use crate::words::Spoken;

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

impl Spoken {
    /// What a rate is for, in its units: fuel, time.
    #[must_use]
    pub fn rate_units(&self, units: Units) -> [&'static str; 2] {
        match units {
            Units::Metric => self.rate_units_metric(),
            Units::Imperial => self.rate_units_imperial(),
        }
    }

    /// Head of the list of roads.
    #[must_use]
    pub fn ranked_head(&self, done: usize, count: usize) -> String {
        if done < count { self.ranked_so_far(done, count) } else { self.ranked_roads(count) }
    }
}
