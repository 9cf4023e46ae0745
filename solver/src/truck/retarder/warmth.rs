//! Warmth of a retarder on the propeller shaft.

use serde::{Deserialize, Serialize};

/// From 0, cold, to 1, as warm as it gets. For a hydrodynamic retarder it is the used share of the coolant's
/// heat reserve, for an electromagnetic one the way from cold to hot.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Warmth(f64);

impl Warmth {
    /// At the start of a trip.
    pub const COLD: Self = Self(0.0);
    /// The warmth of continuous use, on which a hold speed may count.
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
