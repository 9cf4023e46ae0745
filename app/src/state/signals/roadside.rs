//! Along the road.

use crate::state::things::Things;
use leptos::prelude::*;

/// Places, limits and markers along the road.
pub(crate) struct RoadsideSignals {
    /// Places and limits on the road.
    pub(crate) things: RwSignal<Things>,
    /// What is typed for the marker at the start of the road.
    pub(crate) marker_text: RwSignal<String>,
    /// Markers count down.
    pub(crate) counts_down: RwSignal<bool>,
}

impl RoadsideSignals {
    pub(super) fn new() -> Self {
        Self {
            things: RwSignal::new(Things::default()),
            marker_text: RwSignal::new(String::new()),
            counts_down: RwSignal::new(false),
        }
    }
}
