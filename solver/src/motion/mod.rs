//! Motion: forces, control speed, heat, and the run along a road.
//!
//! The module knows the road and the truck; it does not know what a descent is.

mod caps;
mod control_speed;
mod curve_speed;
mod drive;
mod driver;
mod forces;
mod fuel;
mod heat;
mod ledger;
mod run;
mod step;
mod stopping;

pub(crate) use caps::curves_between;
pub(crate) use control_speed::crossing;
pub use control_speed::{Answer, Unusable, control_speed};
pub use curve_speed::{curve_radius, design_side_friction, tipping_speed};
pub use drive::{crawl, pulling_gear};
pub use forces::{Air, Trip};
pub use fuel::{fuel_power, litres_of_fuel};
pub use heat::{BrakeHeat, HeatLump};
pub use ledger::Ledger;
pub use run::{Run, caps};
pub use step::{Hold, Sample, Shift, State};
pub use stopping::{ramp_length, stopping_distance};
