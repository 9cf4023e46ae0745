//! The standard atmosphere (ISO 2533) over the range of heights that roads reach.

use crate::units::{Celsius, Metres};

/// Air density at sea level, kg/m³.
const DENSITY_AT_SEA_LEVEL: f64 = 1.225;
/// Relative fall of pressure-height, 1/m: 0.0065 K/m over 288.15 K.
const LAPSE: f64 = 2.255_77e-5;
/// Exponent of the density law.
const EXPONENT: f64 = 4.2559;
/// Temperature at sea level, K.
const TEMPERATURE_K: f64 = 288.15;
/// Fall of that temperature with height, K/m.
const LAPSE_K_PER_M: f64 = 0.0065;
/// 0 °C in kelvin.
const ZERO_CELSIUS_K: f64 = 273.15;
/// Lowest and highest road that the law is used for, m; beyond them its value stays constant.
const ROADS_M: (f64, f64) = (-500.0, 9_000.0);

/// Density of the air at a height over its density at sea level: (1 − 2.25577e-5·h)^4.2559.
///
/// Valid from −500 to 9,000 m; beyond, the value at the end is kept.
#[must_use]
pub fn density_ratio(height: Metres) -> f64 {
    libm::pow(1.0 - LAPSE * within(height), EXPONENT)
}

/// Density of the air, kg/m³. `ratio` is that of the standard atmosphere at this height; `air` takes the
/// place of the standard temperature there.
#[must_use]
pub fn density(ratio: f64, height: Metres, air: Celsius) -> f64 {
    let standard = TEMPERATURE_K - LAPSE_K_PER_M * within(height);
    DENSITY_AT_SEA_LEVEL * ratio * standard / (air.0 + ZERO_CELSIUS_K)
}

fn within(height: Metres) -> f64 {
    height.0.clamp(ROADS_M.0, ROADS_M.1)
}
