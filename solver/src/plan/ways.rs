//! Ways down a descent: its legs, what stands beside them, and where the service brakes are needed.

use crate::truck::{Gear, Stage};
use crate::units::{Grade, Metres, MetresPerSecond, Seconds};
use serde::{Deserialize, Serialize};

/// What a run down the heights as recorded shows, with the retarder and without the service brakes.
/// Choosing and saying are two things: the choice must not flicker with what heights err by, and what
/// is said must not hide a pitch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Proof {
    /// It gains at most 4 km/h.
    Holds,
    /// It gains more, but no more than the heights may be off: held on the average, and short steep
    /// bits cannot be ruled out.
    OnAverage,
    /// It gains up to 10 km/h on a pitch that is to be believed: the service brakes touch.
    Touches,
    /// It gains more on such a pitch, or more than 20 km/h on any: the service brakes are needed there.
    NeedsBrakes,
}

/// A stretch on which the truck gets faster than held by the retarder alone.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Touch {
    /// Where it begins.
    pub from: Metres,
    /// Where the retarder has brought the truck back to its speed.
    pub to: Metres,
    /// By how much the service brakes warm that hold it there, K of the hottest axle group.
    pub kelvin: f64,
    /// By how much it gets faster without them.
    pub gains: MetresPerSecond,
    /// Mean grade up to where it is fastest.
    pub grade: Grade,
    /// The pitch is more than the heights may be off.
    pub certain: bool,
}

/// A part of a descent with one gear and one speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Leg {
    /// Grid index where it begins: the gear is in and the speed reached.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// Grid index from which the truck slows for the next leg; the end where it need not.
    pub slows_from: usize,
    /// Gear.
    pub gear: Gear,
    /// Strongest stage needed on it.
    pub stage: Stage,
    /// Speed to hold.
    pub speed: MetresPerSecond,
    /// How it is changed to; `None` for the first, whose gear is in before the crest.
    pub change: Option<LegChange>,
}

/// A change of gear between two legs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct LegChange {
    /// By here it is done.
    pub at: Metres,
    /// The grade there.
    pub grade: Grade,
    /// Up or down.
    pub how: ChangeHow,
}

/// Which way a gear is changed on a hill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ChangeHow {
    /// Down: the retarder slows the truck first.
    Down,
    /// Up: the retarder holds it in the higher gear.
    Up,
}

/// Another way down the same descent.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct WayDown {
    /// Gear.
    pub gear: Gear,
    /// Strongest stage needed.
    pub stage: Stage,
    /// Speed to hold.
    pub speed: MetresPerSecond,
    /// Time from crest to foot.
    pub time: Seconds,
}

/// A flat or rising stretch inside a descent.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Relief {
    /// Grid index where it begins.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
}
