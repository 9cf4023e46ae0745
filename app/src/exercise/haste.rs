//! Exercise: how much time does going faster save?

use super::chance::Chance;
use super::round;
use super::setting::Setting;
use solver::units::{Metres, MetresPerSecond, Seconds};

/// Less than this, s, is no time that a class could see saved.
const LEAST_SAVED_S: f64 = 6.0;

/// A descent at two speeds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Haste {
    /// Length along the road.
    pub length: Metres,
    /// The slower speed.
    pub slow: MetresPerSecond,
    /// The faster speed.
    pub fast: MetresPerSecond,
    /// Time at the slower speed.
    pub slow_time: Seconds,
    /// Time at the faster speed.
    pub fast_time: Seconds,
    /// Time saved.
    pub saved: Seconds,
    /// Energy of motion at the faster speed over that at the slower one.
    pub energy: f64,
}

impl Haste {
    pub(super) fn draw(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        let slope = setting.slope(chance)?;
        let length = round::length(slope.length, setting.units);
        let limit = round::fives_within(setting.day.speed_limit(), setting.units);
        if limit < 2 {
            return None;
        }
        let slow = setting.pace(slope, chance).min(limit - 1);
        let faster = u32::try_from(chance.below(3)).unwrap_or(0) + 1;
        let fast = (slow + faster).min(limit);
        let of = |fives| round::of_fives(fives, setting.units);
        // What is saved is to be read off two rounded times.
        let seen = |slow: &u32| (length / of(*slow) - length / of(fast)).0 >= LEAST_SAVED_S;
        let slow = (1..=slow).rev().find(seen).unwrap_or(slow);
        let (slow, fast) = (of(slow), of(fast));
        let (slow_time, fast_time) = (length / slow, length / fast);
        let ratio = fast / slow;
        Some(Self {
            length,
            slow,
            fast,
            slow_time,
            fast_time,
            saved: slow_time - fast_time,
            energy: ratio * ratio,
        })
    }
}
