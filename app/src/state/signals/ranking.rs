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
    /// What is known of it.
    pub(crate) ways: Ways,
}

/// A road driven both ways: 0 as recorded, 1 against the direction of recording. Each road has a signal of its
/// own, so that one that is done draws no other anew. All that is asked is tracked.
#[derive(Clone)]
pub(crate) struct Ways(ArcRwSignal<[Outcome; 2]>);

/// The result of a road, or why there is none; `None` until either is known.
type Outcome = Option<Result<Arc<Worked>, String>>;

impl Ways {
    /// A road of which nothing is known yet.
    pub(in crate::state) fn new() -> Self {
        Self(ArcRwSignal::new([None, None]))
    }

    /// Takes the outcome of a way. A road that cannot be driven as recorded cannot be driven the other way either.
    pub(in crate::state) fn settle(&self, way: usize, outcome: Result<Arc<Worked>, String>) {
        self.0.update(|ways| {
            if way == 0 && outcome.is_err() {
                ways[1] = Some(outcome.clone());
            }
            ways[way] = Some(outcome);
        });
    }

    /// Gives up what is not known yet.
    pub(in crate::state) fn give_up(&self, why: &str) {
        if self.0.with_untracked(|ways| ways.iter().any(Option::is_none)) {
            self.0.update(|ways| {
                for way in ways {
                    way.get_or_insert_with(|| Err(why.to_owned()));
                }
            });
        }
    }

    /// Whether it is known what becomes of a way.
    pub(in crate::state) fn is_known(&self, way: usize) -> bool {
        self.0.with(|ways| ways[way].is_some())
    }

    /// Whether nothing more comes.
    pub(crate) fn is_done(&self) -> bool {
        self.0.with(|ways| ways.iter().all(Option::is_some))
    }

    /// The result of a way; `None` where there is none, or not yet.
    pub(crate) fn worked(&self, way: usize) -> Option<Arc<Worked>> {
        self.0.with(|ways| ways[way].as_ref()?.as_ref().ok().cloned())
    }

    /// Why a way cannot be driven.
    pub(crate) fn why_not(&self) -> Option<String> {
        self.0.with(|ways| ways.iter().flatten().find_map(|it| it.as_ref().err().cloned()))
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
