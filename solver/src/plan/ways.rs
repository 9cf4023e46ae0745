//! Ways down a descent: its legs, the ways beside them, and where the service brakes are needed.

use crate::truck::{Gear, Stage};
use crate::units::{Grade, Metres, MetresPerSecond, Seconds};
use serde::{Deserialize, Serialize};

/// What a roll down the recorded heights shows, with the retarder and without the service brakes. Choosing
/// and saying are two things. The choice must not flicker with the errors of heights; what is said must not
/// hide a pitch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Proof {
    /// The truck gains at most 4 km/h.
    Holds,
    /// The truck gains more, but no more than the heights may be off. It is held on the average, and short
    /// steep bits cannot be ruled out.
    OnAverage,
    /// The truck gains up to 10 km/h on a pitch beyond the heights' doubt: the service brakes touch.
    Touches,
    /// The truck gains more on such a pitch, or more than 20 km/h on any: the service brakes are needed
    /// there.
    NeedsBrakes,
}

/// A stretch on which the truck becomes faster than the retarder alone holds it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Touch {
    /// Where it begins.
    pub from: Metres,
    /// Where the retarder has brought the truck back to its speed.
    pub to: Metres,
    /// Warming by service brakes that hold the truck there, K of the hottest axle group.
    pub kelvin: f64,
    /// Gain of speed without the service brakes.
    pub gains: MetresPerSecond,
    /// Mean grade up to where it is fastest.
    pub grade: Grade,
    /// The pitch is steeper than the heights may be off.
    pub certain: bool,
}

/// A part of a descent with one gear and one speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Leg {
    /// Grid index where it begins: the gear is in and the speed reached.
    pub from: usize,
    /// Grid index where it ends.
    pub to: usize,
    /// Grid index from which the truck slows for the next leg; the end of the leg where it need not.
    pub slows_from: usize,
    /// Gear.
    pub gear: Gear,
    /// Strongest stage needed on it.
    pub stage: Stage,
    /// Speed to hold.
    pub speed: MetresPerSecond,
    /// How the leg is changed to; `None` for the first, whose gear is engaged before the crest.
    pub change: Option<LegChange>,
}

/// A change of gear between two legs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct LegChange {
    /// The change is done by here.
    pub at: Metres,
    /// The grade there.
    pub grade: Grade,
    /// Up or down.
    pub how: ChangeHow,
}

/// Direction in which a gear is changed on a hill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ChangeHow {
    /// Down: the retarder slows the truck first.
    Down,
    /// Up: the retarder holds the truck in the higher gear.
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
