//! What page and worker say to each other.
//!
//! A message is a small header (postcard) and, beside it, arrays that change hands without a
//! copy. Requests are numbered; an answer carries the number of its request, so that a late
//! one can be told and dropped.

pub mod study;

use serde::{Deserialize, Serialize, de::DeserializeOwned};
use solver::day::Day;
use solver::plan::Plan;
use solver::road::{FileError, Finding, GradeSegment, Place, PostedLimit, Quality, Roadside, Span};
use solver::truck::{TruckError, TruckSpec};

/// The road that is meant of those in the files, and how it is driven.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct RoadChoice {
    /// The track of the file; `None`: the only usable one, or else the page asks.
    pub course: Option<usize>,
    /// Grid points of the road as recorded between which it is driven; `None` is all of it.
    pub part: Option<(usize, usize)>,
    /// Against the direction of recording.
    pub reversed: bool,
    /// Places and limits by grid points of the road as recorded; `None`: those of the file.
    pub roadside: Option<Roadside>,
}

impl RoadChoice {
    /// All of a course in the direction of recording, with what the file has on it.
    #[must_use]
    pub fn course(course: Option<usize>) -> Self {
        Self { course, ..Self::default() }
    }
}

/// What to work out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Task {
    /// The road.
    pub road: RoadChoice,
    /// The truck as entered.
    pub truck: TruckSpec,
    /// The day as entered.
    pub day: Day,
}

impl Task {
    /// All of the road of a file.
    #[must_use]
    pub fn whole(truck: TruckSpec, day: Day) -> Self {
        Self { road: RoadChoice::default(), truck, day }
    }
}

/// What the files sent along are to one another.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Given {
    /// For each file, whether it is driven against the direction of recording.
    pub turned: Vec<bool>,
    /// Recordings of the same road beside the first one, in the order of the files; none: all files are
    /// joined to one road.
    pub also: Vec<Also>,
    /// What was put on them before they became one road.
    pub carried: Option<Carried>,
}

impl Given {
    /// One recording: a file, or several that are joined.
    #[must_use]
    pub fn joined(turned: Vec<bool>) -> Self {
        Self { turned, ..Self::default() }
    }
}

/// Another recording of the same road. Its files are joined where there are several.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Also {
    /// Number of its first file, from 0; above that of the recording before.
    pub from: usize,
    /// The track of the file; `None`: the longest that makes a road.
    pub course: Option<usize>,
}

/// What was put on recordings before they became one road, each by its own grid points; `None`: what their
/// files have.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Carried {
    /// On the road of all recordings but the last.
    pub before: Option<Roadside>,
    /// On the last.
    pub last: Option<Roadside>,
}

/// From the page to the worker.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Request {
    /// Read the files sent along, make a road of them, then plan. What fails leaves the former road held.
    Open(Task, Given),
    /// Tell which recordings among the files sent along lie on each other, the track of the first named
    /// by itself; nothing else is touched.
    Look(Option<usize>, Given),
    /// Plan on what is held.
    Plan(Task),
    /// Give the road that is shown, for a study of it.
    HandOver,
}

/// The phase of work that a worker is at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Phase {
    /// Bytes to points.
    Reading,
    /// Points to road.
    Surveying,
    /// Road to plan.
    Planning,
}

/// From the worker to the page.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Reply {
    /// Loaded: messages are heard from now on. Number 0.
    Ready,
    /// How far it got, 0 to 1 within the phase.
    Progress(Phase, f32),
    /// The file holds several roads: which one?
    Choose(Vec<CourseFacts>),
    /// The road that the plan to follow is for; sent only when it is another one than before.
    /// Arrays: see [`RoadArrays`].
    Surveyed(Box<RoadFacts>),
    /// The plan. Arrays: see [`LaneArrays`].
    Planned(Plan),
    /// The file cannot be used; the former road stays.
    Failed(FileError),
    /// The truck was refused.
    TruckRefused(TruckError),
    /// A plan was asked for, but no file is held.
    NoRoad,
    /// The road that was asked for, in bytes beside this.
    HandedOver,
    /// For each recording the first one before it that is of the same road.
    Alike(Vec<Option<usize>>),
    /// The worker is about to stop: what its panic said.
    Panicked(String),
}

/// A road without its arrays.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RoadFacts {
    /// Name; may be empty.
    pub name: String,
    /// Length, m.
    pub length_m: f64,
    /// Distance of grid points, m.
    pub step_m: f64,
    /// Shortest length over which a grade may be quoted, m.
    pub base_length_m: f64,
    /// How good the heights are.
    pub quality: Quality,
    /// Stretches of one grade.
    pub segments: Vec<GradeSegment>,
    /// Places along the road.
    pub places: Vec<Place>,
    /// Limits posted on stretches of it.
    pub limits: Vec<PostedLimit>,
    /// What was repaired or noticed.
    pub findings: Vec<Finding>,
    /// Where nothing is said.
    pub unassessed: Vec<Span>,
    /// The tracks and routes of the file.
    pub courses: Vec<CourseFacts>,
    /// The number of this one among them.
    pub course: usize,
    /// The part of the road as recorded that this is.
    pub part: Option<(usize, usize)>,
    /// Against the direction of recording.
    pub reversed: bool,
}

/// One track or route of a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CourseFacts {
    /// Name; may be empty.
    pub name: String,
    /// A route rather than a track.
    pub route: bool,
    /// Length, m.
    pub length_m: f64,
    /// Whether a road can be made of it, as far as heights and length tell.
    pub usable: bool,
}

/// Arrays beside [`Reply::Surveyed`], in this order, one value a grid point.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RoadArrays {
    /// Filtered height, m.
    pub heights: Vec<f32>,
    /// Recorded height, m; NaN where missing.
    pub recorded: Vec<f32>,
    /// East of the middle of the road's extent, m.
    pub east: Vec<f32>,
    /// North of it, m.
    pub north: Vec<f32>,
    /// 1 where assessed.
    pub assessed: Vec<u8>,
}

impl RoadArrays {
    /// Arrays of floats that cross before those of bytes.
    pub const FLOATS: usize = 4;
    /// Arrays of bytes.
    pub const BYTES: usize = 1;
}

/// Arrays beside [`Reply::Planned`], in this order: the solver's lanes.
pub type LaneArrays = solver::plan::Lanes;

/// Floats of [`LaneArrays`] that cross before its arrays of bytes.
pub const LANE_FLOATS: usize = 5;

/// Bytes of [`LaneArrays`].
pub const LANE_BYTES: usize = 3;

impl RoadArrays {
    /// The arrays in their order: floats, then bytes.
    #[must_use]
    pub fn into_arrays(self) -> Arrays {
        Arrays {
            floats: vec![self.heights, self.recorded, self.east, self.north],
            bytes: vec![self.assessed],
        }
    }
}

/// Arrays that travel beside a header: floats first, then bytes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Arrays {
    /// Arrays of floats.
    pub floats: Vec<Vec<f32>>,
    /// Arrays of small whole numbers.
    pub bytes: Vec<Vec<u8>>,
}

/// The lanes in their order.
#[must_use]
pub fn lane_arrays(lanes: &LaneArrays) -> Arrays {
    Arrays {
        floats: vec![
            lanes.speed.clone(),
            lanes.engine_speed.clone(),
            lanes.temperature.clone(),
            lanes.after_stop.clone(),
            lanes.carried.clone(),
        ],
        bytes: vec![lanes.gear.clone(), lanes.stage.clone(), lanes.heat.clone()],
    }
}

#[derive(Serialize, Deserialize)]
struct Envelope<T> {
    number: u32,
    body: T,
}

/// The header of a message; empty where it cannot be written, which `decode` then refuses.
#[must_use]
pub fn encode<T: Serialize>(number: u32, body: &T) -> Vec<u8> {
    postcard::to_allocvec(&Envelope { number, body }).unwrap_or_default()
}

/// Number and body of a header; `None` where it is none of ours.
#[must_use]
pub fn decode<T: DeserializeOwned>(header: &[u8]) -> Option<(u32, T)> {
    let envelope: Envelope<T> = postcard::from_bytes(header).ok()?;
    Some((envelope.number, envelope.body))
}

#[cfg(test)]
mod tests;
