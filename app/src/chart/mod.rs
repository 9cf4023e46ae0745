//! The picture of the road: where, how steep, which gear, which stage, how hot.
//!
//! ```text
//! RoadPicture ─ prepared for a reading and units ─ scene (window, width) ─ layers of SVG text
//!                    │                                                          │
//!                    └── legend, readout, cursor keys, pointers ──▶ RoadView ◀──┘
//! ```
//!
//! Everything but [`view`] is pure: slices in, geometry and text out, tested natively. A layer
//! is one text, because a zoom then sets it in one call; what moves with the pointer is a group
//! of a few nodes between the layers, so that the cursor never crosses a label. No sentence
//! stands here (they are in `words`), and nothing of the browser (that is in `browser`).
//!
//! To add a part: a file with `draw(&Scene, &mut Layers)`, a row in [`layout`], a line in
//! [`drawing`]. To add a reading: a variant of [`Reading`], then follow the compiler.

mod axis;
mod band;
mod bands;
mod brackets;
mod card_strip;
mod cursor;
mod decimate;
mod drawing;
mod engine;
mod flags;
pub(crate) mod forces;
mod here;
mod label;
mod lanes;
mod layout;
mod markup;
mod path;
mod picture;
mod plan_shape;
mod pointer;
mod profile;
mod reading;
pub(crate) mod ride;
mod scale;
mod scene;
mod spans;
mod speed;
mod strip;
mod temperature;
mod ticks;
pub mod view;
mod window;

#[cfg(test)]
mod palette;
#[cfg(test)]
pub(crate) mod sample;

pub(crate) use card_strip::Labelled as CardStrip;
pub use here::{GradeHere, Here, ReadoutCell};
pub use layout::Lane;
pub(crate) use picture::value;
pub use picture::{Bend, Beside, Bracket, Ends, Flag, Posted, RoadPicture, Slope};
pub use reading::{GradeStep, Reading, SPEED_STEP};
pub use view::RoadView;
pub(crate) use view::{pair, power_table};

/// The strip profile of the card as SVG text; `mile` is what stands before the marks in miles.
pub(crate) fn card_strip(
    picture: &RoadPicture,
    descents: &[CardStrip],
    marker: crate::marker::Marker,
    mile: &str,
) -> String {
    card_strip::draw(picture, descents, marker, mile).into_string()
}

/// The truck's power by engine speed as SVG text.
pub(crate) fn engine(truck: &solver::Truck, units: crate::format::Units) -> String {
    engine::draw(truck, units).into_string()
}
