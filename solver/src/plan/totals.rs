//! Sums over the whole road.

use crate::units::{Celsius, Joules, Metres, MetresPerSecond, Seconds};
use serde::{Deserialize, Serialize};

/// Sums over the road.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Totals {
    /// Driving time.
    pub time: Seconds,
    /// Sum of all falls of the road. An unassessed stretch falls as its ends say.
    pub fall: Metres,
    /// The unassessed part of the fall.
    pub fall_unassessed: Metres,
    /// Unassessed length; no work is counted there.
    pub unassessed: Metres,
    /// Work that retarder and motoring take.
    pub holding_work: Joules,
    /// Work that the service brakes take.
    pub service_work: Joules,
    /// Hottest service brakes.
    pub hottest: Celsius,
    /// Hottest service brakes after one hard stop.
    pub hottest_after_stop: Celsius,
    /// Slowest speed on a climb; `None` where the road does not climb.
    pub crawl: Option<MetresPerSecond>,
    /// Energy of the fuel burnt.
    pub fuel: Joules,
}

impl Totals {
    /// The service brakes' share of all braking work, 0 to 1; 0 where nothing is braked.
    #[must_use]
    pub fn service_share(&self) -> f64 {
        let braking = self.holding_work.0 + self.service_work.0;
        if braking > 0.0 { self.service_work.0 / braking } else { 0.0 }
    }
}
