//! Gearbox: its loss, which helps to hold on overrun.

use crate::units::RevPerMin;

/// Loss torque at the gearbox input, N·m: 12 + 0.012·max(n, 600) + f·max(|T|, 200), with
/// f = 0.01 in the direct gear and 0.04 in the others (fit to the generic data of the EU
/// heavy-vehicle CO2 regulation).
pub(super) fn loss_torque(ratio: f64, speed: RevPerMin, input_torque_nm: f64) -> f64 {
    const DIRECT_WITHIN: f64 = 1e-3;
    let share = if (ratio - 1.0).abs() < DIRECT_WITHIN { 0.01 } else { 0.04 };
    12.0 + 0.012 * speed.0.max(600.0) + share * input_torque_nm.abs().max(200.0)
}
