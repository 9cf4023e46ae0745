//! Hydrodynamic retarder on the propeller shaft, cooled by the engine's coolant.

use super::{Ambient, Warmth};
use crate::units::{Celsius, RevPerMin, Seconds, Watts};
use serde::{Deserialize, Serialize};

/// Share of the reserve of heat at which the control begins to take torque back. Assumed.
const TAPER: f64 = 0.25;

/// The sustained power never falls below this share of the full one (HYD-DERATE: an operator's manual
/// prints about 27 % as the least to which capacity is taken back).
const LEAST_SUSTAINED: f64 = 0.27;

/// The coolant is kept below this, °C. Assumed.
const COOLANT_C: f64 = 105.0;

/// Air temperature for which the sustained power is stated, °C. Assumed.
const STATED_AT_C: f64 = 25.0;

/// What a radiator gives to air of a temperature over what it gives to air at which its power is stated:
/// in proportion to how much warmer the coolant is. Nothing more is counted in colder air. Assumed.
pub(super) fn radiator_factor(air: Celsius) -> f64 {
    ((COOLANT_C - air.0) / (COOLANT_C - STATED_AT_C)).clamp(0.0, 1.0)
}

/// Flat torque that falls with the square of shaft speed below a bend, and a power that the
/// coolant must carry away.
///
/// What it can do for a short time is more than what it can do for good: above the sustained
/// power the coolant warms, and once it is warm only the sustained power is left. Coolant is
/// pumped by the engine, so the sustained power falls in proportion with engine speed below
/// the speed for which it is stated, and it falls in hot air. All shapes are assumed and every number is
/// entered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hydrodynamic {
    /// Torque of all stages at the propeller shaft, N·m.
    pub torque_nm: f64,
    /// Shaft speed below which the torque falls, 1/min.
    pub full_torque_rpm: f64,
    /// Power for a short time, kW.
    pub short_power_kw: f64,
    /// How long, from cold, s.
    pub short_time_s: f64,
    /// Power that the coolant carries for good, kW.
    pub sustained_power_kw: f64,
    /// Engine speed for which that is stated, 1/min.
    pub sustained_rpm: f64,
}

impl Hydrodynamic {
    /// Turns of the rotor for one of the shaft (HYD-TORQUE: "a good 2 : 1", trade press).
    const STEP_UP: f64 = 2.0;
    /// Rotor speed below which torque falls, 1/min (RET-HYD: steeply a little below 1,000, handbook text,
    /// second-hand).
    const ROTOR_RPM: f64 = 900.0;

    /// One that nobody has described further: 3,500 N·m (HYD-TORQUE), all else assumed.
    pub(super) fn assumed(rated_kw: f64) -> Self {
        Self {
            torque_nm: 3_500.0,
            full_torque_rpm: Self::ROTOR_RPM / Self::STEP_UP,
            short_power_kw: 450.0,
            short_time_s: 60.0,
            // Coolers are laid out for the waste heat of the engine at rated power.
            sustained_power_kw: (0.9 * rated_kw).round(),
            sustained_rpm: 1_900.0,
        }
    }

    /// Torque of all stages, N·m, at shaft and engine speed, as warm as it is.
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

    /// Most power: the short-term one while there is reserve, the sustained one without.
    fn power(&self, engine: RevPerMin, ambient: Ambient, warmth: Warmth) -> Watts {
        let for_good = self.sustained(engine, ambient).0;
        let left = ((1.0 - warmth.share()) / TAPER).min(1.0);
        Watts(for_good + (self.short_power_kw * 1e3 - for_good).max(0.0) * left)
    }

    fn sustained(&self, engine: RevPerMin, ambient: Ambient) -> Watts {
        let pumped = (engine.0 / self.sustained_rpm).min(1.0);
        let carried = self.sustained_power_kw * pumped * ambient.radiator_factor;
        // One that carries less for good when all is well is not lifted above what it carries.
        let least = (LEAST_SUSTAINED * self.short_power_kw).min(self.sustained_power_kw);
        Watts(carried.max(least) * 1e3)
    }

    /// How warm it is after `time` at this power. The reserve of heat is what the short-term
    /// power brings above the sustained one in the time stated.
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
