//! The grade that a gear and a stage hold: control speed inverted.

use solver::motion::Trip;
use solver::truck::{Gear, Stage};
use solver::units::{Grade, Metres, MetresPerSecond};

/// The steepest downgrade that gear and stage hold at a steady speed: the inverse of
/// [`control_speed`](solver::motion::control_speed), in closed form.
///
/// From F + air = m·g·(sin θ − c·cos θ) = m·g·√(1+c²)·sin(θ − atan c). `None` where not even
/// a vertical wall would push harder.
#[must_use]
pub fn held_grade(
    trip: Trip<'_>,
    gear: Gear,
    stage: Stage,
    speed: MetresPerSecond,
    height: Metres,
) -> Option<Grade> {
    let air = trip.air(height);
    let c = trip.truck.spec().rolling_resistance;
    let back = trip.holding(gear, stage, speed, air).0 + trip.air_drag(speed, air).0;
    let sine = back / (trip.weight().0 * (1.0 + c * c).sqrt());
    if !(-1.0..1.0).contains(&sine) {
        return None;
    }
    Some(Grade(-libm::tan(libm::asin(sine) + libm::atan(c))))
}
