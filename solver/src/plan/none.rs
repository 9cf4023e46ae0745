//! No safe speed: why, and by how much the retarder falls short.

use super::answer::Governs;
use crate::truck::Gear;
use crate::units::{Celsius, MetresPerSecond, Newtons};
use serde::{Deserialize, Serialize};

/// Why no speed was found, and how close the best try came.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct NoSafeSpeed {
    /// What ruled out the slowest speed tried.
    pub because: Governs,
    /// The slowest speed tried.
    pub slowest: MetresPerSecond,
    /// Gear at the slowest speed tried.
    pub gear: Gear,
    /// Hottest brakes after a stop at that speed.
    pub hottest_after_stop: Celsius,
    /// How far the retarder falls short; `None` where it holds the hill at some speed.
    pub falls_short: Option<FallsShort>,
}

/// The gear and speed at which a truck holds most of what a hill asks for, and how much that is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct FallsShort {
    /// Gear in which it holds most.
    pub gear: Gear,
    /// Its speed.
    pub speed: MetresPerSecond,
    /// Force of retarder and motoring there, at the wheels.
    pub holds: Newtons,
    /// Force that the hill asks of them there, at the wheels.
    pub asks: Newtons,
}
