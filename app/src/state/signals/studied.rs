//! What follows from the result shown.

use crate::browser::timer::Timer;
use crate::state::question::StudyWork;
use leptos::prelude::*;
use solver::limits::Entry;
use solver::study::{Measured, NotMeasured, RideEnd, RideLanes, Slip, Study, Sureness, Worth};
use std::sync::Arc;

/// What follows from the result shown, as far as it is worked out.
pub(crate) struct StudiedSignals {
    /// What follows from the plan shown, once it is worked out.
    pub(crate) study: RwSignal<Option<Arc<Study>>>,
    /// How sure the plan shown is, once it is worked out.
    pub(crate) sureness: RwSignal<Option<Arc<Sureness>>>,
    /// How far the study got.
    pub(crate) stage: RwSignal<Stage>,
    /// Rides along the plan shown, as far as they were asked for, in that order.
    pub(crate) rides: RwSignal<Vec<(Slip, Ride)>>,
    /// What wrong entries cost.
    pub(in crate::state) worths: Worths,
    /// What was measured last.
    pub(crate) measured: RwSignal<MeasuredSignal>,
    pub(in crate::state) work: StoredValue<StudyWork, LocalStorage>,
    /// The pause before the result shown is studied.
    pub(in crate::state) pause: StoredValue<Option<Timer>, LocalStorage>,
}

/// How far the study of the result shown got.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Stage {
    /// Nothing is studied: there is no result, or it has no descent.
    Idle,
    /// So much of it is done, 0 to 1.
    AtWork(f32),
    /// All that can be said is said. Of a road that is too long it is not said how sure the plan is.
    Through,
    /// The study worker did not answer. What is missing is not known.
    Failed,
}

impl Stage {
    /// Whether more comes.
    pub(crate) fn is_at_work(self) -> bool {
        matches!(self, Self::AtWork(_))
    }
}

/// What a measurement came to.
pub(crate) type MeasuredSignal = Option<Result<Measured, NotMeasured>>;

/// A ride that was asked for.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Ride {
    /// Not answered yet.
    Asked,
    /// The ride cannot be driven.
    Cannot,
    /// How the ride ends, and its lanes.
    Driven(RideEnd, Arc<RideLanes>),
}

/// What can be said now of what a wrong entry costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum WorthTold {
    /// There is no plan of the entries as they are.
    NoPlan,
    /// The road has no descent.
    NoDescent,
    /// Not answered yet.
    AtWork,
    /// What the wrong entry costs.
    Told(Worth),
    /// The cost could not be worked out.
    Cannot,
}

/// What wrong entries cost: the answers so far, and what is wanted.
#[derive(Clone, Copy)]
pub(in crate::state) struct Worths {
    /// Answers about the result shown; `None` behind an entry whose cost could not be worked out.
    pub(in crate::state) known: RwSignal<Vec<(Entry, Option<Worth>)>>,
    /// Entries that are in sight, by the place that shows them.
    pub(in crate::state) wanted: StoredValue<Vec<(&'static str, Vec<Entry>)>>,
    pub(in crate::state) asked: StoredValue<Option<Entry>>,
    /// No worker answers: nothing more is asked about this result.
    pub(in crate::state) cannot: RwSignal<bool>,
}

impl StudiedSignals {
    pub(super) fn new() -> Self {
        let worths = Worths {
            known: RwSignal::new(Vec::new()),
            wanted: StoredValue::new(Vec::new()),
            asked: StoredValue::new(None),
            cannot: RwSignal::new(false),
        };
        Self {
            study: RwSignal::new(None),
            sureness: RwSignal::new(None),
            stage: RwSignal::new(Stage::Idle),
            rides: RwSignal::new(Vec::new()),
            worths,
            measured: RwSignal::new(None),
            work: StoredValue::new_local(StudyWork::default()),
            pause: StoredValue::new_local(None),
        }
    }
}
