//! Limits posted on a descent: what they ask of its speed.

use super::choose::Ask;
use crate::road::{PostedLimit, Road};
use crate::units::MetresPerSecond;

impl Ask<'_> {
    /// Limits posted on the descent, cut to it.
    pub(super) fn posted(&self) -> impl Iterator<Item = PostedLimit> {
        let (from, to) = (self.stretch.from, self.stretch.to);
        self.road.limits().iter().filter_map(move |limit| limit.within(from, to))
    }

    /// The lowest limit posted on the descent; infinite without one.
    pub(super) fn slowest_posted(&self) -> MetresPerSecond {
        MetresPerSecond(self.posted().map(|limit| limit.speed().0).fold(f64::INFINITY, f64::min))
    }

    /// Whether limits below a speed are posted on half of the descent or more: then it is no speed
    /// to name for it.
    pub(super) fn mostly_posted(&self, speed: MetresPerSecond) -> bool {
        if self.slowest_posted() >= speed {
            return false;
        }
        let (mut from, end) = (self.stretch.from, self.stretch.to);
        let mut below = 0;
        while from < end {
            let (driven, to) = driven_at(self.road, speed, from, end);
            below += if driven < speed { to - from } else { 0 };
            from = to;
        }
        2 * below >= end - self.stretch.from
    }
}

/// The speed driven from a grid point on: the hold speed or a lower posted limit, and how far
/// that goes, at most to `end`.
pub(super) fn driven_at(
    road: &Road,
    hold: MetresPerSecond,
    from: usize,
    end: usize,
) -> (MetresPerSecond, usize) {
    let (mut speed, mut to) = (hold, end);
    for limit in road.limits() {
        if (limit.from..limit.to).contains(&from) {
            speed = MetresPerSecond(speed.0.min(limit.speed().0));
            to = to.min(limit.to);
        } else if limit.from > from {
            to = to.min(limit.from);
        }
    }
    (speed, to)
}
