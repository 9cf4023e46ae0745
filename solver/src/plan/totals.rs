//! Sums over the whole road.

use crate::units::{Celsius, Joules, Metres, MetresPerSecond, Seconds};
use serde::{Deserialize, Serialize};

/// Sums over the road.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Totals {
    /// Driving time.
    pub time: Seconds,
    /// Sum of all that the road falls; where it is not assessed, as much as its ends say.
    pub fall: Metres,
    /// How much of that is not assessed.
    pub fall_unassessed: Metres,
    /// Length that is not assessed: no work is counted there.
    pub unassessed: Metres,
    /// Work that retarder and motoring take.
    pub holding_work: Joules,
    /// Work that the service brakes take.
    pub service_work: Joules,
    /// Hottest service brakes.
    pub hottest: Celsius,
    /// Hottest they would be after one hard stop.
    pub hottest_after_stop: Celsius,
    /// Slowest speed on a climb; `None` where the road does not climb.
    pub crawl: Option<MetresPerSecond>,
    /// Energy of the fuel burnt.
    pub fuel: Joules,
}

impl Totals {
    /// The share of all braking work that the service brakes take, 0 to 1; 0 where none is braked.
    #[must_use]
    pub fn service_share(&self) -> f64 {
        let braking = self.holding_work.0 + self.service_work.0;
        if braking > 0.0 { self.service_work.0 / braking } else { 0.0 }
    }
}
