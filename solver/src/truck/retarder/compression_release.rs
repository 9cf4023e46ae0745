//! Compression-release engine brake.

use crate::units::{RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// Its power by engine speed: P = P_peak·(n/n_peak)^x up to the peak speed.
///
/// No printed curve of power by speed was found. The exponent (1.85 in the presets) is an
/// estimate and is entered; peak power of 20 to 30 kW a litre, 0.8 to 1.1 of the engine's
/// rated power, is common practice, no source. Above the peak speed the peak is kept: the
/// curve is not extrapolated upwards.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CompressionRelease {
    /// Retarding power of all stages at the peak speed, motoring included, kW.
    pub peak_power_kw: f64,
    /// Engine speed of that power, 1/min.
    pub peak_rpm: f64,
    /// Exponent x.
    pub exponent: f64,
    /// Share of full retarding by stage, weakest first, the last one 1. Six cylinders in
    /// thirds are ⅓, ⅔, 1.
    pub stages: Vec<f64>,
    /// Off below this engine speed, 1/min.
    pub cut_out_rpm: f64,
}

impl CompressionRelease {
    pub(super) fn full_power(&self, speed: RevPerMin) -> Option<Watts> {
        if speed.0 < self.cut_out_rpm {
            return None;
        }
        let share = (speed.0 / self.peak_rpm).min(1.0);
        Some(Watts(self.peak_power_kw * 1e3 * libm::pow(share, self.exponent)))
    }
}
