//! The Steadygrade page: what a person sees and enters around the solver.
//!
//! ```text
//! file, entries ─ state ─ message ─▶ worker (desk ─ solver) ─ message ─▶ state ─ view, chart
//!                    └──── road ────▶ study worker (study_desk ─ solver) ─────┘
//! ```
//!
//! The workers are programs of a crate of their own ([`workers`]). The first answers fast; the second is
//! loaded when it has, and looks further. Only `state` asks them; everything of the browser is in `browser`;
//! sentences are in [`mod@words`], what is said with them and in which order in [`tell`], quantities become text
//! in [`format`].
//! What can be said is data of whoever finds it (`trouble`, `entries`, `chart`, `exercise`); `tell` knows
//! those and nobody's views.

pub mod browser;
pub mod card;
pub mod chart;
pub mod class;
pub mod compare;
pub mod entries;
pub mod exercise;
pub mod lesson;
pub mod many;
pub mod marker;
pub mod outline;
pub mod screen;
mod state;
pub mod tell;
pub mod trouble;
mod view;
pub mod words;

pub use ::words::format;
/// What the program marks its parts with.
pub use leptos::wasm_split as cut;
pub use view::later::{Arriving, Parts, Truck, Views};
pub use view::parts::{TRUCK, VIEWS};

/// Puts the page into the document, in the language of this build; `parts` loads what the first screen does not
/// need.
pub fn mount(parts: Parts) {
    format::choose(crate::words::words().numerals());
    leptos::mount::mount_to_body(move || view::page(parts));
}

/// Puts the class view into the document, in the language of this build.
pub fn mount_class() {
    format::choose(crate::words::words().numerals());
    leptos::mount::mount_to_body(class::page);
}
