//! What a run is made of: the holds it keeps, the state it starts from, the samples it leaves.

use super::heat::BrakeHeat;
use crate::truck::{Gear, Warmth};
use crate::units::{Celsius, MetresPerSecond, Newtons, Seconds};

/// A stretch to be driven in one gear at a held speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hold {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// The gear.
    pub gear: Gear,
    /// The speed.
    pub speed: MetresPerSecond,
    /// Where a snub ends that begins at that speed; `None` where the truck is held steadily.
    pub snub: Option<MetresPerSecond>,
}

/// Where a run begins.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// Road speed.
    pub speed: MetresPerSecond,
    /// Gear engaged.
    pub gear: Gear,
    /// The service brakes.
    pub brakes: BrakeHeat,
    /// The retarder on the propeller shaft.
    pub retarder: Warmth,
    /// The gear change that is under way.
    pub shift: Shift,
    /// A snub is under way.
    pub snubbing: bool,
}

impl State {
    /// At a speed in a gear, with the retarder cold and no shift under way.
    #[must_use]
    pub fn settled(speed: MetresPerSecond, gear: Gear, brakes: BrakeHeat) -> Self {
        Self { speed, gear, brakes, retarder: Warmth::COLD, shift: Shift::NONE, snubbing: false }
    }
}

/// What a gear change still takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Time until the engine is coupled again: it holds nothing back until then.
    pub open: Seconds,
    /// Time until a retarder at the engine holds again.
    pub delay: Seconds,
    /// Time since the gear was changed.
    pub since: Seconds,
}

impl Shift {
    /// None under way.
    pub const NONE: Self = Self { open: Seconds(0.0), delay: Seconds(0.0), since: Seconds(f64::INFINITY) };

    pub(super) fn after(self, time: Seconds) -> Self {
        let left = |of: Seconds| Seconds((of - time).0.max(0.0));
        Self { open: left(self.open), delay: left(self.delay), since: self.since + time }
    }
}

/// What holds in one cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Speed at the end of the cell.
    pub speed: MetresPerSecond,
    /// Gear.
    pub gear: Gear,
    /// What was to be held back; zero where the truck was pulled or rolled free.
    pub to_hold: Newtons,
    /// What the engine pulled with; zero where the truck was held back or rolled free.
    pub pull: Newtons,
    /// Hottest service brakes at the end of the cell.
    pub hottest: Celsius,
    /// The same after one hard stop there.
    pub after_stop: Celsius,
    /// Share of what was to be held that retarder and motoring carried; 1 where nothing was.
    pub carried: f64,
    /// Time since the run began, at the end of the cell. A stand at a brake check comes after it;
    /// one at the very end of the run is counted in.
    pub time: Seconds,
}
