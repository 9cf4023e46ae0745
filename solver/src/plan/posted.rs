//! Limits posted on a descent: what they ask of its speed.

use super::ask::Ask;
use super::stages::driven_at;
use crate::road::PostedLimit;
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
