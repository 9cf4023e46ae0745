//! Electromagnetic (eddy-current) retarder on the propeller shaft.

use super::Warmth;
use crate::units::{RevPerMin, Seconds, Watts};
use serde::{Deserialize, Serialize};

/// Torque rises to a peak and falls again, T = T_peak·2/(n/n_p + n_p/n) (the classical form of eddy-current
/// brakes, from memory). A hot rotor gives only a share of the cold torque.
///
/// All numbers are assumed until entered: peak at 800 to 1,200 shaft revolutions a minute, hot torque 35 to
/// 60 % of cold (common practice, no source).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Electromagnetic {
    /// Torque of all stages at the propeller shaft, cold, N·m.
    pub torque_nm: f64,
    /// Shaft speed of the peak torque, 1/min.
    pub peak_rpm: f64,
    /// Hot torque over cold torque.
    pub hot_share: f64,
    /// Time in which steady use warms it most of the way from cold to hot, s.
    pub warm_up_s: f64,
}

impl Electromagnetic {
    /// An electromagnetic retarder of which nothing else is known. Assumed.
    pub(super) fn assumed() -> Self {
        Self { torque_nm: 2_000.0, peak_rpm: 1_000.0, hot_share: 0.45, warm_up_s: 180.0 }
    }

    /// Torque of all stages at its present warmth, N·m.
    pub(super) fn full_torque(&self, shaft: RevPerMin, warmth: Warmth) -> f64 {
        if shaft.0 <= 0.0 {
            return 0.0;
        }
        let ratio = shaft.0 / self.peak_rpm;
        let cold = self.torque_nm * 2.0 / (ratio + 1.0 / ratio);
        cold * (1.0 - (1.0 - self.hot_share) * warmth.share())
    }

    /// Warmth after `time` at this power. It moves towards hot; the hot torque at the peak speed is what it
    /// can sustain.
    pub(super) fn warmed(&self, from: Warmth, power: Watts, time: Seconds) -> Warmth {
        let for_good = self.hot_share * self.torque_nm * RevPerMin(self.peak_rpm).radians_per_second();
        let towards = (power.0 / for_good).min(1.0);
        let left = libm::exp(-time.0 / self.warm_up_s);
        Warmth::of(towards + (from.share() - towards) * left)
    }
}
