//! Many roads at once.

use crate::browser::timer::Timer;
use crate::state::asked::Leg;
use crate::state::result::Worked;
use crate::state::road_worker::RoadWorker;
use leptos::prelude::*;
use solver::day::Day;
use solver::truck::TruckSpec;
use std::sync::Arc;

/// A list of roads, each worked out by itself.
pub(crate) struct RankingSignals {
    /// The roads; empty where none are compared.
    pub(crate) rows: RwSignal<Vec<Ranked>, LocalStorage>,
    /// The truck and the day that the roads are worked out for.
    pub(crate) made_for: RwSignal<Option<(TruckSpec, Day)>>,
    pub(in crate::state) pool: StoredValue<Pool, LocalStorage>,
}

/// One road of the list.
#[derive(Clone)]
pub(crate) struct Ranked {
    /// The file of the road.
    pub(crate) leg: Leg,
    /// The result of the road, or why there is none; `None` until either is known.
    pub(crate) outcome: Option<Result<Arc<Worked>, String>>,
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
    /// The row that the worker is at.
    pub(in crate::state) row: Option<usize>,
}

impl RankingSignals {
    pub(super) fn new() -> Self {
        Self {
            rows: RwSignal::new_local(Vec::new()),
            made_for: RwSignal::new(None),
            pool: StoredValue::new_local(Pool::default()),
        }
    }
}
