//! The air around a truck, as far as what holds it back depends on it.

use super::hydrodynamic::radiator_factor;
use crate::units::Celsius;

/// Factors on what a truck can hold back with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ambient {
    /// On all that the engine does: density in the standard atmosphere over that at sea level, 1 at most.
    pub altitude_factor: f64,
    /// On the power that the coolant carries for good.
    pub radiator_factor: f64,
}

impl Ambient {
    /// At sea level, in air in which a radiator gives what it is said to give.
    pub const STANDARD: Self = Self { altitude_factor: 1.0, radiator_factor: 1.0 };

    /// In air of this temperature, with this factor on what the engine does.
    #[must_use]
    pub fn of(altitude_factor: f64, air: Celsius) -> Self {
        Self { altitude_factor, radiator_factor: radiator_factor(air) }
    }
}
