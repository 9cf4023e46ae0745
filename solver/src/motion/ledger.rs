//! The books of a run: work done by each force.

use crate::units::{Joules, Seconds};

/// Work done on the truck since the run began, each entry with its sign as seen from the truck. The forces'
/// work adds up to the change of kinetic energy.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ledger {
    /// By gravity; either sign.
    pub gravity: Joules,
    /// By rolling resistance; not positive.
    pub rolling: Joules,
    /// By air drag.
    pub air: Joules,
    /// By retarder and motoring; not positive.
    pub holding: Joules,
    /// By the service brakes; not positive.
    pub service: Joules,
    /// By the engine pulling; not negative.
    pub pulling: Joules,
    /// Energy of the fuel burnt. It is no work on the truck and stands beside the books.
    pub fuel: Joules,
    /// Change of kinetic energy, rotating parts included.
    pub kinetic: Joules,
    /// Time.
    pub time: Seconds,
}

impl Ledger {
    pub(super) const EMPTY: Self = Self {
        gravity: Joules(0.0),
        rolling: Joules(0.0),
        air: Joules(0.0),
        holding: Joules(0.0),
        service: Joules(0.0),
        pulling: Joules(0.0),
        fuel: Joules(0.0),
        kinetic: Joules(0.0),
        time: Seconds(0.0),
    };

    /// What is left when the books are closed: only rounding.
    #[must_use]
    pub fn imbalance(&self) -> Joules {
        self.gravity + self.rolling + self.air + self.holding + self.service + self.pulling - self.kinetic
    }
}
