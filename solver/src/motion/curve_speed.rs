//! How fast a curve may be taken: side friction, tipping, and the allowance for a load.

use super::forces::Trip;
use crate::constants::{GRAVITY, MPH};
use crate::units::MetresPerSecond;

/// Side friction that roads are designed for, by speed in mph: a highway engineering handbook, table 2.6
/// (CURVE, printed). Linear between the points, constant beyond the ends.
const SIDE_FRICTION: [(f64, f64); 8] = [
    (20.0, 0.27),
    (30.0, 0.20),
    (40.0, 0.16),
    (50.0, 0.14),
    (55.0, 0.13),
    (60.0, 0.12),
    (65.0, 0.11),
    (70.0, 0.10),
];
/// Share of the static rollover threshold that is used. The dynamic threshold is about a quarter lower (SAE
/// 2003-01-3385, abstract), and a load seldom sits as low as on the tilt table. Assumed.
const THRESHOLD_SHARE: f64 = 0.60;
/// Share of the surface's friction that may go sideways; the rest is for braking. Assumed.
const FRICTION_SHARE: f64 = 0.5;
/// A laden vehicle goes at least this much slower than a curve's advisory speed, km/h (printed
/// by a road authority).
const LADEN_ALLOWANCE_KMH: f64 = 10.0;
/// The allowance for a load does not lower the speed below this, km/h.
const SLOWEST_KMH: f64 = 10.0;
/// Halvings of the speed sought.
const HALVINGS: usize = 24;

/// Side friction that a road is designed for at this speed.
#[must_use]
pub fn design_side_friction(speed: MetresPerSecond) -> f64 {
    let mph = speed.0 / MPH;
    let after = SIDE_FRICTION.partition_point(|(at, _)| *at < mph);
    match (after.checked_sub(1).map(|i| SIDE_FRICTION[i]), SIDE_FRICTION.get(after)) {
        (None, Some((_, f))) => *f,
        (Some((_, f)), None) => f,
        (Some((a, fa)), Some((b, fb))) => fa + (fb - fa) * (mph - a) / (b - a),
        (None, None) => 0.0,
    }
}

/// Radius of a curve driven at this speed with this side friction, m: v²/(g·(e + f)), which is
/// V²/(127·(e + f)) in km/h (CURVE).
#[must_use]
pub fn curve_radius(speed: MetresPerSecond, superelevation: f64, side_friction: f64) -> f64 {
    speed.0 * speed.0 / (GRAVITY * (superelevation + side_friction))
}

/// Speed at which a vehicle with this rollover threshold, g, tips on a flat curve: √(g·R·SRT)
/// (ROLLOVER).
#[must_use]
pub fn tipping_speed(radius_m: f64, threshold_g: f64) -> MetresPerSecond {
    MetresPerSecond((GRAVITY * radius_m * threshold_g).sqrt())
}

impl Trip<'_> {
    /// The fastest speed at which a curve of this radius, m, may be taken. It is bounded by side friction and
    /// by 60 % of the rollover threshold, less 10 km/h for the load. That allowance does not lower it below
    /// 10 km/h.
    #[must_use]
    pub fn curve_speed(self, radius_m: f64) -> MetresPerSecond {
        let threshold = THRESHOLD_SHARE * self.truck.spec().rollover_threshold_g;
        let tipping = tipping_speed(radius_m, threshold + self.day.superelevation);
        let speed = self.advisory_speed(radius_m, tipping).0;
        let kmh = MetresPerSecond(speed).kmh() - LADEN_ALLOWANCE_KMH;
        // The allowance stops at `SLOWEST_KMH`; the curve itself may ask for less.
        MetresPerSecond::from_kmh(kmh.max(SLOWEST_KMH.min(MetresPerSecond(speed).kmh())))
    }

    /// The speed whose curve radius is this one, with the side friction of the surface, and at most `most`.
    fn advisory_speed(self, radius_m: f64, most: MetresPerSecond) -> MetresPerSecond {
        let friction = |speed| design_side_friction(speed).min(FRICTION_SHARE * self.day.surface.friction());
        let needed = |speed| curve_radius(speed, self.day.superelevation, friction(speed));
        let (mut slow, mut fast) = (0.0, self.day.speed_limit().0.max(MPH * 70.0));
        for _ in 0..HALVINGS {
            // It only rises from here.
            if slow >= most.0 {
                return most;
            }
            let middle = 0.5 * (slow + fast);
            // The radius needed grows with speed: friction falls, and the square of the speed rises.
            if needed(MetresPerSecond(middle)) <= radius_m {
                slow = middle;
            } else {
                fast = middle;
            }
        }
        MetresPerSecond(slow.min(most.0))
    }
}
