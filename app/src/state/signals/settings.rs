//! How the page is shown.

use crate::browser::offline::Stored;
use crate::browser::theme::Theme;
use leptos::prelude::*;

/// How the page is shown, and what the browser keeps of it.
pub(crate) struct Settings {
    /// Theme chosen.
    pub(crate) theme: RwSignal<Theme>,
    /// Large targets, for hands in gloves.
    pub(crate) gloves: RwSignal<bool>,
    /// What the browser keeps of the page.
    pub(crate) stored: RwSignal<Stored>,
}

impl Settings {
    pub(super) fn new(theme: Theme, gloves: bool) -> Self {
        Self {
            theme: RwSignal::new(theme),
            gloves: RwSignal::new(gloves),
            stored: RwSignal::new(Stored::Nothing),
        }
    }
}
