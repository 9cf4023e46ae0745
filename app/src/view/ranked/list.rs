//! The list itself: its roads, what is chosen of them, their order.

use crate::many::{Column, Line, Way, order, way_shown};
use crate::state::{Ranked, State, Ways, Worked};
use leptos::prelude::*;
use solver::plan::Verdict;
use std::sync::Arc;

/// A road of the list, with the lines of both ways as far as they are worked out.
#[derive(Clone)]
pub(super) struct Road {
    /// Number of the list: a row of the next list is another row.
    pub(super) list: usize,
    pub(super) index: usize,
    pub(super) file: String,
    pub(super) ways: Ways,
    pub(super) lines: ArcMemo<[Option<Arc<Line>>; 2]>,
}

impl Road {
    pub(super) fn new(list: usize, index: usize, ranked: &Ranked) -> Self {
        let ways = ranked.ways.clone();
        let lines = ArcMemo::new(move |_| [0, 1].map(|way| ways.worked(way).map(|it| Arc::new(line(&it)))));
        Self { list, index, file: ranked.leg.file.name.clone(), ways: ranked.ways.clone(), lines }
    }
}

fn line(worked: &Worked) -> Line {
    let limit_c = worked.day.heat_limit_c;
    Line::of(worked.name(), &worked.road, &worked.plan, &worked.picture, limit_c)
}

/// What is chosen of the list, and the list itself.
#[derive(Clone, Copy)]
pub(super) struct List {
    pub(super) state: State,
    pub(super) roads: Memo<Arc<Vec<Road>>>,
    pub(super) way: RwSignal<Way>,
    pub(super) column: RwSignal<Column>,
    /// The best first.
    pub(super) turned: RwSignal<bool>,
    /// The verdict that alone is shown; the inner `None` are roads without a descent.
    pub(super) only: RwSignal<Option<Option<Verdict>>>,
}

impl List {
    pub(super) fn new(state: State) -> Self {
        let lists = StoredValue::new(0_usize);
        let roads = move |_: Option<&Arc<Vec<Road>>>| {
            lists.update_value(|count| *count += 1);
            let number = lists.get_value();
            let road = |(at, it): (usize, &Ranked)| Road::new(number, at, it);
            state.ranking.rows.with(|rows| Arc::new(rows.iter().enumerate().map(road).collect()))
        };
        Self {
            state,
            // Each list is another one.
            roads: Memo::new_with_compare(roads, |_, _| true),
            way: RwSignal::new(Way::Harder),
            column: RwSignal::new(Column::Verdict),
            turned: RwSignal::new(false),
            only: RwSignal::new(None),
        }
    }

    /// Which way of a road stands in its line. Tracked.
    pub(super) fn way_of(self, road: &Road) -> Option<usize> {
        let turned = self.state.ranking.turned.with(|turned| turned.contains(&road.index));
        let lines = road.lines.get();
        way_shown(lines.each_ref().map(|it| it.as_deref()), self.way.get(), turned)
    }

    /// The line of a road. Tracked.
    pub(super) fn line_of(self, road: &Road) -> Option<Arc<Line>> {
        road.lines.get()[self.way_of(road)?].clone()
    }

    /// The roads in their order, as far as they are shown. Tracked.
    pub(super) fn in_order(self) -> Vec<Road> {
        let roads = self.roads.get();
        let lines: Vec<Option<Arc<Line>>> = roads.iter().map(|road| self.line_of(road)).collect();
        let only = self.only.get();
        let refs: Vec<Option<&Line>> = lines.iter().map(Option::as_deref).collect();
        let order = order(&refs, self.column.get(), self.turned.get());
        let is_shown = |at: &usize| only.is_none_or(|only| refs[*at].is_some_and(|it| it.verdict() == only));
        order.into_iter().filter(is_shown).map(|at| roads[at].clone()).collect()
    }

    /// The two rows that are ticked, each with the way that stands in its line. Tracked.
    pub(super) fn pair(self) -> Option<[(usize, usize); 2]> {
        let ticked: Vec<usize> = self.state.ranking.ticked.with(|it| it.iter().copied().collect());
        let roads = self.roads.get();
        let one = |index: usize| Some((index, self.way_of(roads.get(index)?)?));
        match ticked[..] {
            [first, second] => Some([one(first)?, one(second)?]),
            _ => None,
        }
    }
}
