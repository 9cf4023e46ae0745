//! Retarding power at the engine by engine speed.

use crate::units::{RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// Retarding power of all stages by engine speed.
///
/// Without an exponent the curve has the shape of `DECLARED` below. With one it is P = P_peak·(n/n_peak)^x up
/// to the peak speed and P_peak above it. Neither is extrapolated upwards.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EngineCurve {
    /// Retarding power of all stages at the peak speed, motoring included, kW.
    pub peak_power_kw: f64,
    /// Engine speed of the peak power, 1/min.
    pub peak_rpm: f64,
    /// Exponent x; `None` for the declared shape.
    #[serde(default)]
    pub exponent: Option<f64>,
    /// Off below this engine speed, 1/min.
    pub cut_out_rpm: f64,
}

/// Declared shape of compression-release brakes: engine speed over that of full power, and power over full
/// power.
///
/// From 1,200/min up it is the mean of what three heavy engines' control units declare of themselves
/// (RET-SHAPE-2), with full power at 2,100/min. At 2,300/min it is the mean of the two weaker ones, at
/// 1,100/min that of all three, and at 850/min that of the two that still hold there. Torque rises up to the
/// speed of full power and falls above it.
const DECLARED: [(f64, f64); 9] = [
    (850.0 / 2_100.0, 0.11),
    (1_100.0 / 2_100.0, 0.24),
    (1_200.0 / 2_100.0, 0.33),
    (1_400.0 / 2_100.0, 0.51),
    (1_600.0 / 2_100.0, 0.69),
    (1_800.0 / 2_100.0, 0.82),
    (2_000.0 / 2_100.0, 0.95),
    (1.0, 1.00),
    (2_300.0 / 2_100.0, 1.03),
];

/// Power over full power at a speed over that of full power; the torque is linear between the points.
pub(super) fn declared(speed: f64) -> f64 {
    let after = DECLARED.partition_point(|(at, _)| *at < speed);
    let (Some(right), Some(left)) = (DECLARED.get(after), after.checked_sub(1).map(|index| DECLARED[index]))
    else {
        // Below the first point the torque is extended; above the last one the power stays.
        let (first, last) = (DECLARED[0], DECLARED[DECLARED.len() - 1]);
        return if after == 0 { first.1 * speed / first.0 } else { last.1 };
    };
    let torque = |(at, power): (f64, f64)| power / at;
    let share = (speed - left.0) / (right.0 - left.0);
    speed * (torque(left) + share * (torque(*right) - torque(left)))
}

impl EngineCurve {
    /// Exponent of a compression-release brake of which nothing else is known. Assumed; within −13 … +10 % of
    /// the mean of three engines from 1,200 to 2,000/min (RET-SHAPE).
    pub const ASSUMED_EXPONENT: f64 = 1.85;

    /// Power of all stages, motoring included; `None` below the cut-out.
    pub(super) fn full_power(&self, speed: RevPerMin) -> Option<Watts> {
        // Rounding may put a speed at the very edge on either side of it.
        if speed.0 < self.cut_out_rpm * (1.0 - 1e-9) {
            return None;
        }
        let over_peak = speed.0 / self.peak_rpm;
        let share = match self.exponent {
            Some(exponent) => libm::pow(over_peak.min(1.0), exponent),
            None => declared(over_peak),
        };
        Some(Watts(self.peak_power_kw * 1e3 * share))
    }
}
