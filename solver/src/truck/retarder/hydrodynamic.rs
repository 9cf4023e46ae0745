//! Hydrodynamic retarder on the propeller shaft, cooled by the engine's coolant.

use super::{Ambient, Warmth};
use crate::units::{Celsius, RevPerMin, Seconds, Watts};
use serde::{Deserialize, Serialize};

/// Share of the heat reserve at which the control begins to take torque back. Assumed.
const TAPER: f64 = 0.25;

/// The sustained power never falls below this share of the full one (HYD-DERATE: an operator's manual
/// prints about 27 % as the least to which capacity is taken back).
const LEAST_SUSTAINED: f64 = 0.27;

/// Temperature below which the coolant is kept, °C. Assumed.
const COOLANT_C: f64 = 105.0;

/// Air temperature for which the sustained power is stated, °C. Assumed.
const STATED_AT_C: f64 = 25.0;

/// Heat given off by a radiator to air of a temperature, over that to air for which its power is stated. It
/// goes in proportion to how much warmer the coolant is. Colder air adds nothing. Assumed.
pub(super) fn radiator_factor(air: Celsius) -> f64 {
    ((COOLANT_C - air.0) / (COOLANT_C - STATED_AT_C)).clamp(0.0, 1.0)
}

/// Constant torque that falls with the square of shaft speed below a bend, and a power that the coolant must
/// carry away.
///
/// For a short time the retarder can do more than it can sustain. Above the sustained power the coolant
/// warms, and once it is warm only the sustained power is left. The engine pumps the coolant. So the
/// sustained power falls in proportion with engine speed below the speed for which it is stated; it also
/// falls in hot air. All shapes are assumed and every number is entered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hydrodynamic {
    /// Torque of all stages at the propeller shaft, N·m.
    pub torque_nm: f64,
    /// Shaft speed below which the torque falls, 1/min.
    pub full_torque_rpm: f64,
    /// Short-term power, kW.
    pub short_power_kw: f64,
    /// Duration of the short-term power, from cold, s.
    pub short_time_s: f64,
    /// Power that the coolant carries away continuously, kW.
    pub sustained_power_kw: f64,
    /// Engine speed for which the sustained power is stated, 1/min.
    pub sustained_rpm: f64,
}

impl Hydrodynamic {
    /// Revolutions of the rotor per revolution of the shaft (HYD-TORQUE: "a good 2 : 1", trade press).
    const STEP_UP: f64 = 2.0;
    /// Rotor speed below which torque falls, 1/min (RET-HYD: steeply a little below 1,000, handbook text,
    /// second-hand).
    const ROTOR_RPM: f64 = 900.0;

    /// A hydrodynamic retarder of which nothing else is known: 3,500 N·m (HYD-TORQUE), all else assumed.
    pub(super) fn assumed(rated_kw: f64) -> Self {
        Self {
            torque_nm: 3_500.0,
            full_torque_rpm: Self::ROTOR_RPM / Self::STEP_UP,
            short_power_kw: 450.0,
            short_time_s: 60.0,
            // Coolers are sized for the waste heat of the engine at rated power.
            sustained_power_kw: (0.9 * rated_kw).round(),
            sustained_rpm: 1_900.0,
        }
    }

    /// Torque of all stages, N·m, at shaft and engine speed and at its present warmth.
    pub(super) fn full_torque(
        &self,
        shaft: RevPerMin,
        engine: RevPerMin,
        ambient: Ambient,
        warmth: Warmth,
    ) -> f64 {
        let bend = (shaft.0 / self.full_torque_rpm).min(1.0);
        let by_fluid = self.torque_nm * bend * bend;
        let turning = shaft.radians_per_second();
        if turning <= 0.0 { 0.0 } else { by_fluid.min(self.power(engine, ambient, warmth).0 / turning) }
    }

    /// Highest power: the short-term one while there is reserve, the sustained one without.
    fn power(&self, engine: RevPerMin, ambient: Ambient, warmth: Warmth) -> Watts {
        let for_good = self.sustained(engine, ambient).0;
        let left = ((1.0 - warmth.share()) / TAPER).min(1.0);
        Watts(for_good + (self.short_power_kw * 1e3 - for_good).max(0.0) * left)
    }

    fn sustained(&self, engine: RevPerMin, ambient: Ambient) -> Watts {
        let pumped = (engine.0 / self.sustained_rpm).min(1.0);
        let carried = self.sustained_power_kw * pumped * ambient.radiator_factor;
        // The floor never lifts the power above what the coolant sustains in the best case.
        let least = (LEAST_SUSTAINED * self.short_power_kw).min(self.sustained_power_kw);
        Watts(carried.max(least) * 1e3)
    }

    /// Warmth after `time` at this power. The reserve of heat is what the short-term power brings above the
    /// sustained one in the stated time.
    pub(super) fn warmed(
        &self,
        from: Warmth,
        power: Watts,
        engine: RevPerMin,
        ambient: Ambient,
        time: Seconds,
    ) -> Warmth {
        let above = (self.short_power_kw - self.sustained_power_kw).max(1.0);
        let reserve = above * 1e3 * self.short_time_s;
        Warmth::of(from.share() + (power - self.sustained(engine, ambient)).0 * time.0 / reserve)
    }
}
