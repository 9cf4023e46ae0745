//! What page and study worker say to each other.

use super::Arrays;
use serde::{Deserialize, Serialize};
use solver::day::Day;
use solver::limits::Entry;
use solver::report::gpx::Captions;
use solver::report::project::Project;
use solver::report::truck_file::TruckFileError;
use solver::study::{Bands, Measured, NotMeasured, RideEnd, RideLanes, Seen, Slip, Study, Sureness, Worth};
use solver::truck::TruckSpec;

/// From the page to the study worker.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum StudyRequest {
    /// Study the road handed over last, or the one whose bytes come along.
    Study(TruckSpec, Day),
    /// Drive the plan of the road handed over last, with a slip.
    Ride(TruckSpec, Day, Slip),
    /// Tell what the retarder gave.
    Measure(TruckSpec, Day, Seen),
    /// Tell what an entry of the truck is worth on the road handed over last.
    Worth(TruckSpec, Day, Entry),
    /// Write a truck as a file.
    WriteTruck(TruckSpec),
    /// Read a truck from the text of a file.
    ReadTruck(String),
    /// Write truck and day for a link.
    WriteLink(TruckSpec, Day),
    /// Read what a link carries.
    ReadLink(String),
    /// Write what stands before the files of a project.
    WriteProject(Box<Project>),
    /// Read that, with the number of bytes behind it.
    ReadProject(String, u64),
    /// Write the road and the plan for it as a GPX file, with these words in it.
    Export(TruckSpec, Day, Captions),
}

/// From the study worker to the page.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum StudyReply {
    /// Loaded. Number 0.
    Ready,
    /// What the study found.
    Studied(Study),
    /// How far the runs got, 0 to 1.
    Progress(f32),
    /// How sure the plan is, with bands beside it; `None` where that is not worked out.
    Sure(Option<Sureness>),
    /// The ride asked for, with its lanes beside it: see [`ride_arrays`]; `None` where it cannot be driven.
    Ridden(Slip, Option<RideEnd>),
    /// What the entry is worth; `None` where that cannot be told.
    Worth(Entry, Option<Worth>),
    /// What was measured.
    Measured(Result<Measured, NotMeasured>),
    /// The GPX file asked for.
    Exported(String),
    /// The truck file asked for.
    TruckWritten(String),
    /// The truck of a file, or why there is none.
    TruckRead(Result<Box<TruckSpec>, TruckFileError>),
    /// What a link is to carry.
    LinkWritten(String),
    /// What a link carries, or why it cannot be read.
    LinkRead(Result<Box<(TruckSpec, Day)>, TruckFileError>),
    /// What is to stand before the files of a project.
    ProjectWritten(String),
    /// A project, or why it cannot be used.
    ProjectRead(Result<Box<Project>, TruckFileError>),
    /// There is nothing to study or to write.
    Nothing,
}

/// Bands in the order in which they cross.
#[must_use]
pub fn band_arrays(bands: Bands) -> Arrays {
    let [slow, fast] = bands.speed;
    let [cool, hot] = bands.temperature;
    Arrays { floats: vec![slow, fast, cool, hot], bytes: Vec::new() }
}

/// Floats of a ride that cross before its arrays of bytes.
pub const RIDE_FLOATS: usize = 10;

/// Bytes of a ride.
pub const RIDE_BYTES: usize = 2;

/// The lanes of a ride in the order in which they cross.
#[must_use]
pub fn ride_arrays(lanes: RideLanes) -> Arrays {
    let floats: [_; RIDE_FLOATS] = [
        lanes.time,
        lanes.speed,
        lanes.engine_speed,
        lanes.temperature,
        lanes.after_stop,
        lanes.gravity,
        lanes.resistance,
        lanes.held,
        lanes.braked,
        lanes.pulled,
    ];
    let bytes: [_; RIDE_BYTES] = [lanes.gear, lanes.stage];
    Arrays { floats: floats.into(), bytes: bytes.into() }
}

/// The lanes of a ride from the arrays that crossed, each asked for by its place among all.
pub fn ride_lanes(floats: impl Fn(usize) -> Vec<f32>, bytes: impl Fn(usize) -> Vec<u8>) -> RideLanes {
    RideLanes {
        time: floats(0),
        speed: floats(1),
        engine_speed: floats(2),
        temperature: floats(3),
        after_stop: floats(4),
        gravity: floats(5),
        resistance: floats(6),
        held: floats(7),
        braked: floats(8),
        pulled: floats(9),
        gear: bytes(RIDE_FLOATS),
        stage: bytes(RIDE_FLOATS + 1),
    }
}
