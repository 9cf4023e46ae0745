//! Stopping distances, with brakes and on an escape ramp.

use crate::units::{Grade, Metres, MetresPerSecond};

/// Distance in which a constant deceleration (m/s²) stops the truck: v²/(2·a).
#[must_use]
pub fn stopping_distance(speed: MetresPerSecond, deceleration: f64) -> Metres {
    Metres(speed.0 * speed.0 / (2.0 * deceleration))
}

/// Length of an escape ramp that stops a truck without brakes: V²/(254·(R + G)). V is in km/h, R is the
/// rolling resistance of the bed as a share of weight, G its grade, uphill positive (RAMP, equation from
/// memory; 254 is 2·g·3.6², rounded as in the source).
///
/// Beds of gravel have R from 0.10 to 0.25 (from memory). `None` where R + G is not above zero: such a ramp
/// stops nothing.
#[must_use]
pub fn ramp_length(speed: MetresPerSecond, rolling_resistance: f64, grade: Grade) -> Option<Metres> {
    let slowing = rolling_resistance + grade.0;
    (slowing > 0.0).then(|| Metres(speed.kmh() * speed.kmh() / (254.0 * slowing)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stop_with_the_deceleration_of_a_distance_takes_that_distance() {
        for (speed, way) in [(26.8224, 76.2), (26.8224, 108.204), (8.9408, 9.7536)] {
            let found = stopping_distance(MetresPerSecond(speed), speed * speed / (2.0 * way)).0;
            assert!((found - way).abs() < 1e-9, "{found} m for {way} m");
        }
    }

    #[test]
    fn a_ramp_that_falls_as_much_as_its_bed_resists_stops_nothing() {
        let ramp = |grade| ramp_length(MetresPerSecond(30.0), 0.05, Grade(grade));
        assert_eq!((ramp(-0.05), ramp(-0.06), ramp(f64::NAN)), (None, None, None));
        assert!(ramp(-0.049).is_some());
    }
}
