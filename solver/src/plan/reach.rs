//! How fast a stretch lets the truck go, whatever holds it: curves, posted limits, and the room between them.

use super::answer::Governs;
use super::descents::Stretch;
use crate::constants::SERVICE_SLOWING;
use crate::motion::{Trip, curves_between};
use crate::road::Road;
use crate::units::MetresPerSecond;

/// A speed counts as reached where the truck reaches it on this share of the stretch. Assumed.
const REACHED: f64 = 0.5;

/// A speed that is missed by less than this, 1 km/h, counts as reached.
const NEARLY: f64 = 1.0 / 3.6;

/// The fastest speed at which each grid point of a stretch can be passed.
pub(super) struct Reach {
    caps: Vec<f64>,
    /// Caps with posted limits.
    posted: Vec<f64>,
    /// Caps without posted limits.
    unposted: Vec<f64>,
    /// The slowest speed that a curve asks for; infinite without a curve.
    pub(super) slowest_curve: MetresPerSecond,
}

impl Reach {
    pub(super) fn of(trip: Trip<'_>, road: &Road, stretch: &Stretch) -> Self {
        let (from, to) = (stretch.from, stretch.to);
        let mut caps = vec![f64::INFINITY; to - from + 1];
        let mut slowest_curve = f64::INFINITY;
        for (curve, speed) in curves_between(trip, road, from, to) {
            slowest_curve = slowest_curve.min(speed.0);
            lower(&mut caps, from, (curve.from, curve.to), speed.0);
        }
        let mut posted = vec![f64::INFINITY; to - from + 1];
        for limit in road.limits().iter().filter_map(|limit| limit.within(from, to)) {
            lower(&mut posted, from, (limit.from, limit.to), limit.speed().0);
        }
        let mut unposted = caps.clone();
        slow_and_speed_up(&mut unposted, road.step_m());
        for (cap, limit) in caps.iter_mut().zip(&posted) {
            *cap = cap.min(*limit);
        }
        slow_and_speed_up(&mut caps, road.step_m());
        Self { caps, posted, unposted, slowest_curve: MetresPerSecond(slowest_curve) }
    }

    /// The fastest speed at which a cell of the stretch can be driven, m/s.
    pub(super) fn cap(&self, cell: usize) -> f64 {
        self.caps[cell].min(self.caps[cell + 1])
    }

    /// Whether a speed is reached on enough of the stretch; otherwise what prevents it.
    pub(super) fn allows(&self, speed: MetresPerSecond) -> Result<(), Governs> {
        let reached = |caps: &[f64]| {
            let fast = caps.iter().filter(|cap| **cap >= speed.0 - NEARLY).count();
            fast as f64 >= REACHED * caps.len() as f64
        };
        let below = self.posted.iter().filter(|limit| **limit < speed.0).count();
        if 2 * below >= self.posted.len() {
            Err(Governs::Posted)
        } else if reached(&self.caps) {
            Ok(())
        } else if reached(&self.unposted) {
            Err(Governs::Posted)
        } else {
            Err(Governs::Curve)
        }
    }
}

/// Lowers the caps of a stretch; the first cap is at the grid point `from`.
pub(super) fn lower(caps: &mut [f64], from: usize, stretch: (usize, usize), speed: f64) {
    let end = (stretch.1 - from).min(caps.len() - 1);
    for cap in &mut caps[stretch.0.max(from) - from..=end] {
        *cap = cap.min(speed);
    }
}

/// Between slow places a truck gains and loses speed as fast as a driver who slows ahead.
pub(super) fn slow_and_speed_up(caps: &mut [f64], step_m: f64) {
    let way = 2.0 * SERVICE_SLOWING * step_m;
    let next = |slow: f64| (slow * slow + way).sqrt();
    for k in 1..caps.len() {
        caps[k] = caps[k].min(next(caps[k - 1]));
    }
    for k in (0..caps.len() - 1).rev() {
        caps[k] = caps[k].min(next(caps[k + 1]));
    }
}
