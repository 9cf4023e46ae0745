//! Rolling resistance in more detail than the plan uses: by speed and by load.
//!
//! The forces of a [`Trip`](super::Trip) take one coefficient for the whole truck, at its low
//! end. What is here says how far that coefficient would move.

use crate::constants::MPH;
use crate::units::{MetresPerSecond, Newtons};

/// How the plies of a tyre lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Construction {
    /// Radial plies.
    Radial,
    /// Bias plies.
    Bias,
}

impl Construction {
    /// Coefficient at standstill, and its rise for every mile per hour (ROLL, from memory).
    fn at_rest_and_per_mph(self) -> (f64, f64) {
        match self {
            Self::Radial => (0.0041, 0.000_041),
            Self::Bias => (0.0066, 0.000_046),
        }
    }
}

/// Share by which resistance falls behind load: F grows with W^(1 − 0.1) (ROLL-LOAD, printed).
const LOAD_EXPONENT: f64 = -0.1;

/// Rolling resistance coefficient at a road speed: (a + b·V)·C_h with V in mph, a 0.0041 and b
/// 0.000041 for radial, 0.0066 and 0.000046 for bias tyres (ROLL, values from memory).
///
/// `surface_factor` is C_h: 1.0 on smooth concrete, 1.2 on worn or cold pavement, 1.5 on hot
/// asphalt. Meant for speeds from 0 to 30 m/s; nothing is cut off outside them.
#[must_use]
pub fn rolling_at_speed(construction: Construction, surface_factor: f64, speed: MetresPerSecond) -> f64 {
    let (at_rest, per_mph) = construction.at_rest_and_per_mph();
    (at_rest + per_mph * (speed.0 / MPH)) * surface_factor
}

/// Rolling resistance coefficient of a tyre under `load`, from the coefficient that was measured
/// under `test_load`: C·(W/F)^(−0.1) (ROLL-LOAD, exponent printed).
///
/// A tyre that carries less than in its test rolls a little less easily for each newton it
/// carries. Both loads are above zero; meant for loads from a quarter of the test load to twice it.
#[must_use]
pub fn rolling_with_load(coefficient: f64, load: Newtons, test_load: Newtons) -> f64 {
    coefficient * libm::pow(load / test_load, LOAD_EXPONENT)
}
