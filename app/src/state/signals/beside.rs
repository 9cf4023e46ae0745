//! A road kept beside the one shown.

use crate::browser::timer::Timer;
use crate::state::beside::Beside;
use crate::state::entered::Entered;
use crate::state::road_worker::RoadWorker;
use leptos::prelude::*;

/// A road kept beside the one shown, and what both are priced with.
pub(crate) struct BesideSignals {
    /// The road.
    pub(crate) road: RwSignal<Option<Beside>, LocalStorage>,
    /// Rates for fuel and time, as typed.
    pub(crate) rates: RwSignal<[String; 2]>,
    pub(in crate::state) to_come: StoredValue<ToCome, LocalStorage>,
}

/// A road that is to be beside the one shown once it is worked out.
#[derive(Default)]
pub(in crate::state) struct ToCome {
    pub(in crate::state) entered: Option<Entered>,
    pub(in crate::state) worker: Option<RoadWorker>,
    pub(in crate::state) rest: Option<Timer>,
}

impl BesideSignals {
    pub(super) fn new(rates: [String; 2]) -> Self {
        Self {
            road: RwSignal::new_local(None),
            rates: RwSignal::new(rates),
            to_come: StoredValue::new_local(ToCome::default()),
        }
    }
}
