//! Engine: its pull at full load, and the torque that turns it over without fuel.

use crate::units::{RevPerMin, Watts};
use serde::{Deserialize, Serialize};

/// One point of the full-load curve.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TorquePoint {
    /// Engine speed, 1/min.
    pub engine_speed_rpm: f64,
    /// Full-load torque, N·m.
    pub torque_nm: f64,
}

/// Full-load torque, N·m, linear between two points of `curve`. It is zero outside the curve: nothing is
/// extrapolated. `curve` is ordered by engine speed.
pub(super) fn full_load_torque(curve: &[TorquePoint], speed: RevPerMin) -> f64 {
    let (Some(first), Some(last)) = (curve.first(), curve.last()) else { return 0.0 };
    if speed.0 < first.engine_speed_rpm || speed.0 > last.engine_speed_rpm {
        return 0.0;
    }
    let after = curve.partition_point(|p| p.engine_speed_rpm < speed.0);
    let Some(right) = curve.get(after) else {
        return 0.0;
    };
    let Some(left) = after.checked_sub(1).map(|i| curve[i]) else {
        return if right.engine_speed_rpm <= speed.0 { right.torque_nm } else { 0.0 };
    };
    let share = (speed.0 - left.engine_speed_rpm) / (right.engine_speed_rpm - left.engine_speed_rpm);
    left.torque_nm + share * (right.torque_nm - left.torque_nm)
}

/// Motoring torque of an unfuelled diesel engine, N·m, at `speed` for `litres` of displacement.
///
/// MEP/bar = 1.44 − 0.50·N + 0.57·N² with N in 1,000/min, and T = MEP·V/(4π) for a four-stroke engine. This
/// fits the printed motoring curve of a 12.74 l engine within 0.04 bar (EU heavy-vehicle CO2 regulation,
/// generic data). That curve covers 600 to 2,200/min. Above it the value at 2,200/min is kept, which holds
/// less and is the cautious side.
pub(super) fn motoring_torque(litres: f64, speed: RevPerMin) -> f64 {
    let n = speed.0.clamp(600.0, 2_200.0) / 1_000.0;
    let mean_pressure_pa = (1.44 - 0.50 * n + 0.57 * n * n) * 1e5;
    mean_pressure_pa * litres * 1e-3 / (4.0 * std::f64::consts::PI)
}

/// Power that turns the unfuelled engine over.
pub(super) fn motoring_power(litres: f64, speed: RevPerMin) -> Watts {
    Watts(motoring_torque(litres, speed) * speed.radians_per_second())
}

/// Inertia of engine, flywheel and clutch, kg·m²: 0.41 + 0.27 per litre, and 1.3 for the
/// clutch (EU heavy-vehicle CO2 regulation, generic data).
pub(super) fn inertia(litres: f64) -> f64 {
    0.41 + 0.27 * litres + 1.3
}

#[cfg(test)]
mod tests {
    use super::*;

    const CURVE: [TorquePoint; 2] = [
        TorquePoint { engine_speed_rpm: 1000.0, torque_nm: 2000.0 },
        TorquePoint { engine_speed_rpm: 2000.0, torque_nm: 1000.0 },
    ];

    #[test]
    fn the_curve_is_straight_between_points_and_ends_where_it_ends() {
        let at = |n| full_load_torque(&CURVE, RevPerMin(n));
        for (n, torque) in [(999.0, 0.0), (1000.0, 2000.0), (1500.0, 1500.0), (2000.0, 1000.0), (2001.0, 0.0)]
        {
            assert!((at(n) - torque).abs() < 1e-9, "{n}: {}", at(n));
        }
    }
}
