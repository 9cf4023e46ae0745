//! How gears are changed, and how much retarding a gear change costs.

use crate::units::{RevPerMin, Seconds};
use serde::{Deserialize, Serialize};

/// The kind of gearbox.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Transmission {
    /// Shifted by hand.
    #[default]
    Manual,
    /// Shifts by itself with a clutch; on a descent the gear must be held by hand.
    Automated,
    /// Shifts under load with a torque converter that locks up.
    TorqueConverter {
        /// Lowest gear in which the converter locks up. Below it the plan does not count on the engine to
        /// hold anything back.
        lock_up_gear: f64,
        /// Engine speed below which the lock-up opens, 1/min.
        lock_up_rpm: f64,
    },
}

impl Transmission {
    /// A torque converter of which nothing else is known. Assumed.
    pub const CONVERTER: Self = Self::TorqueConverter { lock_up_gear: 2.0, lock_up_rpm: 1_100.0 };

    /// Time without pull or engine retarding while a gear is changed. Assumed.
    #[must_use]
    pub fn shift_time(self) -> Seconds {
        Seconds(match self {
            Self::Manual => 1.5,
            Self::Automated => 1.0,
            Self::TorqueConverter { .. } => 0.0,
        })
    }

    /// Lowest gear, and engine speed in it, from which the engine is coupled to the wheels; zero where a
    /// clutch always couples it.
    pub(super) fn lock_up(self) -> (f64, RevPerMin) {
        match self {
            Self::Manual | Self::Automated => (0.0, RevPerMin(0.0)),
            Self::TorqueConverter { lock_up_gear, lock_up_rpm } => (lock_up_gear, RevPerMin(lock_up_rpm)),
        }
    }

    /// Whether the gearbox may choose a gear by itself.
    #[must_use]
    pub fn chooses_gears(self) -> bool {
        match self {
            Self::Manual => false,
            Self::Automated | Self::TorqueConverter { .. } => true,
        }
    }
}
