//! The air around a truck, as far as its holding force depends on it.

use super::hydrodynamic::radiator_factor;
use crate::units::Celsius;

/// Factors on the holding power of a truck.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ambient {
    /// Factor on all that the engine does, at most 1: density in the standard atmosphere over that at sea
    /// level.
    pub altitude_factor: f64,
    /// Factor on the power that the coolant carries away continuously.
    pub radiator_factor: f64,
}

impl Ambient {
    /// Sea level, in air for which the radiator's power is stated.
    pub const STANDARD: Self = Self { altitude_factor: 1.0, radiator_factor: 1.0 };

    /// For air of this temperature, with this factor on what the engine does.
    #[must_use]
    pub fn of(altitude_factor: f64, air: Celsius) -> Self {
        Self { altitude_factor, radiator_factor: radiator_factor(air) }
    }
}
