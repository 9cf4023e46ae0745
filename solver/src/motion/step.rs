//! What a run is made of: the holds it keeps, the state it starts from, the samples it leaves.

use super::heat::BrakeHeat;
use crate::truck::Gear;
use crate::units::{Celsius, MetresPerSecond, Newtons};

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
    /// Hottest service brakes at the end of the cell.
    pub hottest: Celsius,
    /// The same after one hard stop there.
    pub after_stop: Celsius,
    /// Share of what was to be held that retarder and motoring carried; 1 where nothing was.
    pub carried: f64,
}
