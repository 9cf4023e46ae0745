//! How to bring a heavy vehicle down a real road.
//!
//! Bytes of a GPX file become a [`road::Document`] and a [`road::Road`] that can be trusted
//! within stated bounds; entries become a [`truck::Truck`] that can be computed with; the two
//! meet in [`motion`] (forces, control speed, heat, the run along the road), from which
//! [`plan`] chooses a gear, a stage and a speed for every descent, and [`report`] makes what
//! leaves the program. [`study`] looks further from a plan: how sure it is, and what if.
//!
//! ```text
//! bytes ─ road ─▶ Road ─┐
//!                       ├─ plan ─▶ Plan ─┬─ report ─▶ exports
//! TruckSpec ─ truck ─▶ Truck ─┘         └─ study ─▶ Study, Sureness
//! ```
//!
//! The crate reads no clock, no file and no source of chance: the same input gives the same
//! answer, bit for bit, natively and in wasm. It fails only at its edges, where a file or a
//! truck comes in; after that "no safe speed found" is an answer like any other.
//!
//! A result is a planning and teaching aid. It is never permission to descend.

pub mod atmosphere;
pub mod constants;
pub mod day;
pub mod limits;
pub mod motion;
pub mod order;
pub mod plan;
pub mod report;
pub mod road;
pub mod study;
pub mod truck;
pub mod units;

pub use day::{Day, Lead, Load, ServiceBrakes, Surface, Withheld};
pub use limits::{Entry, Limit, OutOfRange, Quantity};
pub use motion::{Answer, Trip, Unusable};
pub use plan::{
    Advice, ChangeHow, Choice, Descent, Governs, HeatStep, Lanes, Leg, LegChange, NoSafeSpeed, Note, Plan,
    Proof, Relief, Snub, StageSpan, Sustained, Table, Totals, Touch, Verdict, WayDown,
};
pub use road::{FileError, Finding, Road};
pub use truck::{Gear, Preset, Retarder, Stage, Truck, TruckError, TruckSpec};

/// Plans a road for a truck on a day: the only orchestration.
///
/// `progress` is told the share done, 0 to 1, and answers `false` to stop; then the answer is
/// `None`.
pub fn analyse(
    road: &Road,
    truck: &Truck,
    day: &Day,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<(Plan, Lanes)> {
    plan::plan(road, truck, day, progress)
}
