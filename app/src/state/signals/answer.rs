//! The result shown.

use crate::browser::timer::Timer;
use crate::chart::RoadPicture;
use crate::state::asked::Asked;
use crate::state::result::Worked;
use leptos::prelude::*;
use std::sync::Arc;

/// The result shown, and how it is looked at.
pub(crate) struct AnswerSignals {
    /// The picture of the last result: a moment ahead of `worked`, see `show`.
    pub(crate) picture: RwSignal<Option<Arc<RoadPicture>>>,
    /// The last result.
    pub(crate) worked: RwSignal<Option<Arc<Worked>>>,
    /// The result that the list of descents shows: a moment behind `worked`.
    pub(crate) listed: RwSignal<Option<Arc<Worked>>>,
    /// Whether the result belongs to former entries.
    pub(crate) stale: RwSignal<bool>,
    /// The descent in hand, by its number: the hardest until another is chosen.
    pub(crate) chosen_descent: RwSignal<Option<usize>>,
    /// Stretch of the road to be looked at, m from the start: set by whoever names a place.
    pub(crate) look_at: RwSignal<Option<(f64, f64)>>,
    /// What the result is the answer to.
    pub(in crate::state) asked: StoredValue<Option<Asked>, LocalStorage>,
    /// The pause before the rest of the result is shown.
    pub(in crate::state) rest: StoredValue<Option<Timer>, LocalStorage>,
}

impl AnswerSignals {
    pub(super) fn new() -> Self {
        Self {
            picture: RwSignal::new(None),
            worked: RwSignal::new(None),
            listed: RwSignal::new(None),
            stale: RwSignal::new(false),
            chosen_descent: RwSignal::new(None),
            look_at: RwSignal::new(None),
            asked: StoredValue::new_local(None),
            rest: StoredValue::new_local(None),
        }
    }
}
