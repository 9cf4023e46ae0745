//! How to bring a heavy vehicle down a real road.
//!
//! Bytes of a GPX file become a [`road::Document`], and that becomes a [`road::Road`] that can be trusted
//! within stated bounds. Entries become a [`truck::Truck`] that can be computed with. The two meet in
//! [`motion`]: forces, control speed, heat, the run along the road. From it [`plan`] chooses a gear, a stage
//! and a speed for every descent, and [`report`] makes what leaves the program. [`study`] looks further from
//! a plan: how sure it is, and what if.
//!
//! ```text
//! bytes ─ road ─▶ Road ─┐
//!                       ├─ plan ─▶ Plan ─┬─ report ─▶ exports
//! TruckSpec ─ truck ─▶ Truck ─┘         └─ study ─▶ Study, Sureness
//! ```
//!
//! The crate reads no clock, no file and no source of chance: equal input gives an equal answer, bit for bit,
//! natively and in wasm. It fails only at its edges, where a file or a truck comes in. After that "no safe
//! speed found" is an answer like any other.
//!
//! A result is a planning and teaching aid. It is never permission to descend.

pub mod atmosphere;
// For the crates beside this one; they may change at any time.
#[doc(hidden)]
pub mod constants;
pub mod day;
mod error;
pub mod limits;
pub mod motion;
#[doc(hidden)]
pub mod order;
pub mod plan;
pub mod report;
pub mod road;
pub mod study;
pub mod truck;
pub mod units;

pub use day::{Day, Lead, Load, ServiceBrakes, Surface, Withheld};
pub use error::Error;
pub use limits::{Entry, Limit, OutOfRange, Quantity};
pub use motion::{Answer, Trip, Unusable};
pub use plan::{
    Advice, ChangeHow, Choice, Descent, FallsShort, Governs, HeatStep, Lanes, Leg, LegChange, NoSafeSpeed,
    Note, Plan, Proof, Relief, Snub, StageSpan, Sustained, Table, Totals, Touch, Verdict, WayDown,
};
pub use road::{FileError, Finding, Road};
pub use truck::{Gear, Preset, Retarder, Stage, Truck, TruckError, TruckSpec};

/// Plans a road for a truck on a day.
///
/// `progress` receives the share done, 0 to 1. Where it answers `false`, the work stops and the answer is
/// `None`.
pub fn analyse(
    road: &Road,
    truck: &Truck,
    day: &Day,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<(Plan, Lanes)> {
    plan::plan(road, truck, day, progress)
}

/// A road and its plan.
#[derive(Debug, Clone)]
#[non_exhaustive]
pub struct Planned {
    /// The road, with what was found in the file.
    pub road: Road,
    /// The plan.
    pub plan: Plan,
}

/// Plans the road that a GPX file most likely means, of several the one with heights.
///
/// ```
/// use solver::{Day, Preset, Truck, plan_file};
///
/// let truck = Truck::new(Preset::FiveAxle40.spec())?;
/// # let gpx: String = (0..400).map(|k| format!(
/// #     "<trkpt lat=\"{}\" lon=\"7\"><ele>{}</ele></trkpt>",
/// #     46.0 + f64::from(k) / 5_000.0, 1_500.0 - 1.2 * f64::from(k),
/// # )).collect();
/// # let bytes = format!("<gpx version=\"1.1\"><trk><trkseg>{gpx}</trkseg></trk></gpx>").into_bytes();
/// let planned = plan_file(&bytes, &truck, &Day::USUAL)?;
/// let descent = &planned.plan.descents[0];
/// assert!(descent.choice.advice().is_some_and(|advice| advice.speed.kmh() > 20.0));
/// # Ok::<(), solver::Error>(())
/// ```
///
/// # Errors
/// The file gives no road, or an entry of the day is outside its range.
pub fn plan_file(bytes: &[u8], truck: &Truck, day: &Day) -> Result<Planned, Error> {
    let day = day.checked()?;
    let document = road::read(bytes, &mut |_| true)?;
    let road = road::survey(&document, document.suggested(), &mut |_| true)?;
    // Nothing stops the work, so there is a plan.
    let (plan, _) = analyse(&road, truck, &day, &mut |_| true).ok_or(FileError::Cancelled)?;
    Ok(Planned { road, plan })
}
