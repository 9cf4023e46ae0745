//! Parts of a run: the holds that it keeps, the state that it starts from, the samples that it leaves.

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
    /// Where a snub ends that begins at the hold speed; `None` where the truck is held steadily.
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

/// Times that remain of a gear change.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Time until the engine is coupled again; until then it holds nothing back.
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
    /// Force that had to be held back; zero where the truck was pulled or rolled freely.
    pub to_hold: Newtons,
    /// Force with which the engine pulled; zero where the truck was held back or rolled freely.
    pub pull: Newtons,
    /// Hottest service brakes at the end of the cell.
    pub hottest: Celsius,
    /// Hottest service brakes after one hard stop at the end of the cell.
    pub after_stop: Celsius,
    /// Share of the force to hold that retarder and motoring carried; 1 where nothing had to be held.
    pub carried: f64,
    /// Time since the run began, at the end of the cell. A stop at a brake check comes after it; a stop at
    /// the very end of the run is included.
    pub time: Seconds,
}
