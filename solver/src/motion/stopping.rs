//! Stopping: distance and deceleration.

use crate::units::{Grade, Metres, MetresPerSecond};

/// Distance in which a constant deceleration (m/s²) stops the truck: v²/(2·a).
#[must_use]
pub fn stopping_distance(speed: MetresPerSecond, deceleration: f64) -> Metres {
    Metres(speed.0 * speed.0 / (2.0 * deceleration))
}

/// Mean deceleration between two speeds over a distance, m/s²: (v₁² − v₂²)/(2·s). With 0.8 and
/// 0.1 of the first speed this is the mean fully developed deceleration of UN Regulation 13.
#[must_use]
pub fn mean_deceleration(from: MetresPerSecond, to: MetresPerSecond, way: Metres) -> f64 {
    (from.0 * from.0 - to.0 * to.0) / (2.0 * way.0)
}

/// Length of an escape ramp that stops a truck without brakes: V²/(254·(R + G)), V in km/h, R
/// the rolling resistance of its bed as a share of weight, G its grade, uphill positive (RAMP,
/// equation from memory; 254 is 2·g·3.6², rounded as there).
///
/// Beds of gravel have R from 0.10 to 0.25 (from memory). `None` where R + G is not above zero: such
/// a ramp stops nothing.
#[must_use]
pub fn ramp_length(speed: MetresPerSecond, rolling_resistance: f64, grade: Grade) -> Option<Metres> {
    let slowing = rolling_resistance + grade.0;
    (slowing > 0.0).then(|| Metres(speed.kmh() * speed.kmh() / (254.0 * slowing)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ramp_that_falls_as_much_as_its_bed_resists_stops_nothing() {
        let ramp = |grade| ramp_length(MetresPerSecond(30.0), 0.05, Grade(grade));
        assert_eq!((ramp(-0.05), ramp(-0.06), ramp(f64::NAN)), (None, None, None));
        assert!(ramp(-0.049).is_some());
    }
}
