//! Stopping: distance and deceleration.

use crate::units::{Metres, MetresPerSecond};

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
