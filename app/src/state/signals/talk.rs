//! The conversation with the worker, as the page shows it.

use crate::browser::timer::Timer;
use crate::state::standing::Work;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use workers::message::Phase;

/// What goes on, and what went wrong.
pub(crate) struct TalkSignals {
    /// What goes on.
    pub(crate) progress: RwSignal<Option<Progress>>,
    /// What went wrong last.
    pub(crate) trouble: RwSignal<Option<WorkTrouble>>,
    pub(in crate::state) work: StoredValue<Work, LocalStorage>,
    /// The pause before what is entered is worked out.
    pub(in crate::state) pause: StoredValue<Option<Timer>, LocalStorage>,
}

/// What the worker is at, and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Progress {
    /// `None` while the worker itself still loads.
    pub(crate) phase: Option<Phase>,
    /// 0 to 1 within the phase.
    pub(crate) share: f32,
}

impl TalkSignals {
    pub(super) fn new() -> Self {
        Self {
            progress: RwSignal::new(None),
            trouble: RwSignal::new(None),
            work: StoredValue::new_local(Work::default()),
            pause: StoredValue::new_local(None),
        }
    }
}
