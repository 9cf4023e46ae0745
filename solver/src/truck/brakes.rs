//! Service brakes as lumps of heat, one for each axle group.

use crate::constants::{
    AXLE_COOLING_PER_SPEED, AXLE_COOLING_STILL, AXLE_HEAT_CAPACITY_DISC, AXLE_HEAT_CAPACITY_DRUM,
};
use crate::units::MetresPerSecond;
use serde::{Deserialize, Serialize};

/// Where an axle group sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AxlePlace {
    /// Steered front axle or axles.
    Steer,
    /// Driven axles and what shares their suspension.
    Drive,
    /// Axles of a trailer, or of all trailers together.
    Trailer,
}

/// Kind of foundation brake.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BrakeKind {
    /// Drum.
    Drum,
    /// Disc.
    Disc,
}

/// An axle group as entered.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AxleGroup {
    /// Where it sits.
    pub place: AxlePlace,
    /// Braked axles in it.
    pub axles: u8,
    /// Drum or disc.
    pub brake: BrakeKind,
    /// Its share of the braking work; the shares of all groups are 1 in sum.
    pub effort_share: f64,
}

impl AxleGroup {
    /// Heat stored per kelvin, J/K.
    #[must_use]
    pub fn heat_capacity(&self) -> f64 {
        let per_axle = match self.brake {
            BrakeKind::Drum => AXLE_HEAT_CAPACITY_DRUM,
            BrakeKind::Disc => AXLE_HEAT_CAPACITY_DISC,
        };
        per_axle * f64::from(self.axles)
    }

    /// Heat given to the air per kelvin above it, W/K, at a road speed. Uncertain by a factor
    /// of two and more: measured axles differ that much.
    #[must_use]
    pub fn cooling(&self, speed: MetresPerSecond) -> f64 {
        (AXLE_COOLING_STILL + AXLE_COOLING_PER_SPEED * speed.0) * f64::from(self.axles)
    }
}
