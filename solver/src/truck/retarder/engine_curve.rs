//! Retarding power of an engine by its speed.

use crate::units::{RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// P = P_peak·(n/n_peak)^x up to the peak speed.
///
/// No printed curve of power by speed was found: the exponent is an estimate and is entered.
/// Above the peak speed the peak is kept: the curve is not extrapolated upwards.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EngineCurve {
    /// Retarding power of all stages at the peak speed, motoring included, kW.
    pub peak_power_kw: f64,
    /// Engine speed of that power, 1/min.
    pub peak_rpm: f64,
    /// Exponent x.
    pub exponent: f64,
    /// Off below this engine speed, 1/min.
    pub cut_out_rpm: f64,
}

impl EngineCurve {
    /// Power of all stages, motoring included; `None` below the cut-out.
    pub(super) fn full_power(&self, speed: RevPerMin) -> Option<Watts> {
        if speed.0 < self.cut_out_rpm {
            return None;
        }
        let share = (speed.0 / self.peak_rpm).min(1.0);
        Some(Watts(self.peak_power_kw * 1e3 * libm::pow(share, self.exponent)))
    }
}
