//! The Steadygrade page: what a person sees and enters around the solver.
//!
//! ```text
//! file, entries ─ state ─ message ─▶ worker (desk ─ solver) ─ message ─▶ state ─ view, chart
//!                    └──── road ────▶ study worker (study_desk ─ solver) ─────┘
//! ```
//!
//! The workers are built from [`desk`], [`study_desk`] and [`message`] alone, without the
//! feature `page`. The first answers fast; the second is loaded when it has, and looks further.
//! Only `state` asks the worker; everything of the browser is in `browser`; sentences are in
//! [`mod@words`], what is said with them and in which order in [`tell`], quantities become text in [`format`].
//! What can be said is data of whoever finds it (`trouble`, `entries`, `chart`, `exercise`); `tell` knows
//! those and nobody's views.

pub mod browser;
#[cfg(feature = "page")]
pub mod cab;
#[cfg(feature = "page")]
pub mod chart;
#[cfg(feature = "page")]
pub mod class;
#[cfg(feature = "page")]
pub mod compare;
pub mod desk;
#[cfg(feature = "page")]
pub mod entries;
#[cfg(feature = "page")]
pub mod exercise;
#[cfg(feature = "page")]
pub mod lesson;
#[cfg(feature = "page")]
pub mod marker;
pub mod message;
#[cfg(feature = "page")]
pub mod outline;
#[cfg(feature = "page")]
pub mod paper;
#[cfg(feature = "page")]
mod state;
pub mod study_desk;
#[cfg(feature = "page")]
pub mod tell;
#[cfg(test)]
mod test_roads;
#[cfg(feature = "page")]
pub mod trouble;
#[cfg(feature = "page")]
mod view;
#[cfg(feature = "page")]
pub mod words;

#[cfg(feature = "page")]
pub use ::words::format;

/// Puts the page into the document, in the language of this build.
#[cfg(feature = "page")]
pub fn mount() {
    let w = crate::words::words();
    format::choose(w.numerals());
    leptos::mount::mount_to_body(view::page);
    browser::notice::show(w.parked(), w.i_am_parked());
}

/// Puts the class view into the document, in the language of this build.
#[cfg(feature = "page")]
pub fn mount_class() {
    format::choose(crate::words::words().numerals());
    leptos::mount::mount_to_body(class::page);
}
