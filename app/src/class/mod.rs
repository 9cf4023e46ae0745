//! The class view: one idea a screen, legible from the last row, led by keys alone.
//!
//! It has the state of the road page (road, truck and day are those that are kept there) and a page
//! and module of its own, so that a driver never loads it.

mod clock;
mod desk;
mod exercises;
mod forces;
mod frame;
mod gauges;
mod moment;
mod pair;
mod ridden;
mod roads;
mod run;
mod way;

pub(crate) use frame::page;
