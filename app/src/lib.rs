//! The Steadygrade page: what a person sees and enters around the solver.
//!
//! ```text
//! file, entries ─ state ─ message ─▶ worker (desk ─ solver) ─ message ─▶ state ─ view, chart
//! ```
//!
//! Only `state` asks the worker; everything of the browser is in `browser`; sentences are in
//! [`words`], quantities become text in [`format`]; [`chart`] takes plain slices.

mod browser;
pub mod chart;
pub mod desk;
pub mod entries;
pub mod format;
pub mod message;
mod state;
#[cfg(test)]
mod test_roads;
mod view;
pub mod words;

/// Puts the page into the document.
pub fn mount() {
    leptos::mount::mount_to_body(view::page);
}
