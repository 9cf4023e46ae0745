//! The picture of the road: where, how steep, which gear, which stage, how hot.
//!
//! ```text
//! RoadPicture ─ prepared for a reading and units ─ scene (window, width) ─ layers of SVG text
//!                    │                                                          │
//!                    └── legend, readout, cursor keys, pointers ──▶ view ◀──────┘
//! ```
//!
//! All of it is pure: slices in, geometry and SVG text out, tested natively. A layer is one text, because
//! a zoom then sets it in one call; what moves with the pointer is a group of a few nodes between the
//! layers, so that the cursor never crosses a label. No word of a language stands here: what is written
//! in a picture comes from its [`Labels`]. The views are in `view::chart`.
//!
//! To add a part: a file with `draw(&Scene, &mut Layers)`, a row in [`layout`], a line in
//! [`drawing`]. What is written into the profile asks [`room`] first. To add a reading: a variant of [`Reading`], then follow the compiler.

mod along;
mod axis;
mod band;
mod bands;
pub(crate) mod bars;
mod card_strip;
pub(crate) mod corner;
pub(crate) mod cursor;
mod decimate;
pub(crate) mod drawing;
pub(crate) mod engine;
mod figures;
mod flags;
pub(crate) mod forces;
pub(crate) mod here;
mod hill;
pub(crate) mod label;
mod labels;
mod lanes;
pub(crate) mod layout;
mod legs;
mod markup;
mod path;
pub(crate) mod picture;
pub(crate) mod plan_shape;
pub(crate) mod pointer;
pub(crate) mod profile;
pub(crate) mod reading;
pub(crate) mod ride;
mod room;
pub(crate) mod scale;
pub(crate) mod scene;
mod small;
pub(crate) mod spans;
pub(crate) mod speed;
pub(crate) mod strip;
pub(crate) mod temperature;
mod ticks;
pub(crate) mod window;

#[cfg(test)]
mod palette;
#[cfg(test)]
pub(crate) mod sample;

pub(crate) use card_strip::{Labelled, Strip as CardStrip};
pub use here::{GradeHere, Here, ReadoutCell};
pub(crate) use labels::Labels;
pub use layout::Lane;
pub(crate) use picture::value;
pub use picture::{Bend, Beside, Bracket, Change, Ends, Flag, Hold, Posted, RoadPicture, Slope};
pub use reading::{GradeStep, Reading, SPEED_STEP};

/// A road as small as a line of text, of this size in px, as SVG text.
pub(crate) fn small(picture: &RoadPicture, size: (f64, f64)) -> String {
    small::draw(picture, size)
}

/// The strip profile of the card as SVG text.
pub(crate) fn card_strip(strip: CardStrip<'_>) -> String {
    card_strip::draw(strip).into_string()
}

/// The truck's power by engine speed as SVG text.
pub(crate) fn engine(truck: &solver::Truck, units: crate::format::Units) -> String {
    engine::draw(truck, units).into_string()
}
