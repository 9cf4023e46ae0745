//! Many roads at once.

use crate::browser::timer::Timer;
use crate::state::asked::Leg;
use crate::state::result::Worked;
use crate::state::road_worker::RoadWorker;
use leptos::prelude::*;
use solver::day::Day;
use solver::truck::TruckSpec;
use std::collections::BTreeSet;
use std::sync::Arc;

/// A list of roads, each worked out by itself.
pub(crate) struct RankingSignals {
    /// The roads; empty where none are compared.
    pub(crate) rows: RwSignal<Vec<Ranked>, LocalStorage>,
    /// The truck and the day that the roads are worked out for.
    pub(crate) made_for: RwSignal<Option<(TruckSpec, Day)>>,
    /// Whether the list is in front, rather than two roads side by side.
    pub(crate) in_front: RwSignal<bool>,
    /// Rows that are ticked.
    pub(crate) ticked: RwSignal<BTreeSet<usize>>,
    /// Rows that are turned by hand.
    pub(crate) turned: RwSignal<BTreeSet<usize>>,
    /// Both roads of the list stand side by side as soon as they are worked out.
    pub(in crate::state) as_pair: StoredValue<bool>,
    pub(in crate::state) pool: StoredValue<Pool, LocalStorage>,
}

/// One road of the list.
#[derive(Clone)]
pub(crate) struct Ranked {
    /// The file of the road.
    pub(crate) leg: Leg,
    /// As recorded, and against the direction of recording. A signal of its own: a row that is done draws no
    /// other anew.
    pub(crate) ways: ArcRwSignal<[Outcome; 2]>,
}

/// The result of a road, or why there is none; `None` until either is known.
pub(crate) type Outcome = Option<Result<Arc<Worked>, String>>;

impl Ranked {
    /// A road of which nothing is known yet.
    pub(in crate::state) fn new(leg: Leg) -> Self {
        Self { leg, ways: ArcRwSignal::new([None, None]) }
    }

    /// Both ways, as far as they could be worked out. Tracked.
    pub(crate) fn worked(&self) -> [Option<Arc<Worked>>; 2] {
        self.ways.with(|ways| ways.each_ref().map(|way| way.as_ref()?.as_ref().ok().cloned()))
    }

    /// Whether nothing more comes. Tracked.
    pub(crate) fn is_done(&self) -> bool {
        self.ways.with(|ways| ways.iter().all(Option::is_some))
    }
}

/// The workers at it.
#[derive(Default)]
pub(in crate::state) struct Pool {
    /// Counts up with each list: answers to a former one are dropped.
    pub(in crate::state) round: u32,
    pub(in crate::state) slots: Vec<Slot>,
    pub(in crate::state) next: usize,
    pub(in crate::state) rest: Option<Timer>,
}

#[derive(Default)]
pub(in crate::state) struct Slot {
    pub(in crate::state) worker: Option<RoadWorker>,
    /// The row that the worker is at, and the way: 0 as recorded, 1 against it.
    pub(in crate::state) at: Option<(usize, usize)>,
}

impl RankingSignals {
    pub(super) fn new() -> Self {
        Self {
            rows: RwSignal::new_local(Vec::new()),
            made_for: RwSignal::new(None),
            in_front: RwSignal::new(false),
            ticked: RwSignal::new(BTreeSet::new()),
            turned: RwSignal::new(BTreeSet::new()),
            as_pair: StoredValue::new(false),
            pool: StoredValue::new_local(Pool::default()),
        }
    }
}
