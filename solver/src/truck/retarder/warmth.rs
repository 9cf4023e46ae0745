//! How warm a retarder on the propeller shaft is.

use serde::{Deserialize, Serialize};

/// 0 cold … 1 as warm as it gets: of a hydrodynamic retarder the share of the coolant's reserve
/// that is used up, of an electromagnetic one the way from cold to hot.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Warmth(f64);

impl Warmth {
    /// At the start of a trip.
    pub const COLD: Self = Self(0.0);
    /// As it is in use for good: what a hold speed may count on.
    pub const SUSTAINED: Self = Self(1.0);

    pub(super) fn of(share: f64) -> Self {
        Self(share.clamp(0.0, 1.0))
    }

    /// 0 to 1.
    #[must_use]
    pub fn share(self) -> f64 {
        self.0
    }
}
