//! What the picture leaves to the page.

use leptos::prelude::*;

/// What the picture asks the page for.
#[derive(Clone, Copy)]
pub(crate) struct Asks {
    /// A stretch is to be worked out alone, by the grid points of its ends.
    pub(crate) take_part: Callback<(usize, usize)>,
    /// A place is to be put at a grid point.
    pub(crate) put_place: Callback<usize>,
    /// Whether the picture is shown alone; the page hides the rest.
    pub(crate) alone: RwSignal<bool>,
}
