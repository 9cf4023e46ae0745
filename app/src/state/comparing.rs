//! A road kept beside the one shown, and the list that both may come from.

use super::asked::{Aim, Asked, Leg, Origin, Source};
use super::beside::Beside;
use super::entered::Entered;
use super::road_worker::{RoadWorker, Said};
use super::signals::{Signals, State, ToCome, View};
use super::{kept_roads, rank, work};
use crate::browser::timer::Timer;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use workers::message::RoadChoice;

/// Where on the page a road of the list stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct OnPage {
    /// The road is the one shown.
    pub(crate) shown: bool,
    /// The road is kept beside the one shown.
    pub(crate) beside: bool,
}

/// Begins to bring roads back. The one shown goes first: a road that is to be beside it is worked
/// out when nothing else is.
pub(super) fn start(state: State) {
    Effect::new(move |_| {
        if state.talk.progress.get().is_none() {
            begin(state);
        }
    });
}

/// Whether no road is beside the one shown, and none to come.
pub(super) fn is_free(state: State) -> bool {
    state.beside.road.with_untracked(Option::is_none)
        && state.beside.to_come.with_value(|it| it.entered.is_none())
}

/// Brings a road back beside the one shown; keeping it on this machine is left to the caller.
pub(super) fn bring(state: State, entered: Entered) {
    state.beside.to_come.set_value(ToCome { entered: Some(entered), ..ToCome::default() });
    if state.talk.progress.with_untracked(Option::is_none) {
        begin(state);
    }
}

fn begin(state: State) {
    if state.beside.to_come.with_value(|it| it.entered.is_some() && it.worker.is_none()) {
        let worker = RoadWorker::start(move |said| hear(state, said));
        state.beside.to_come.update_value(|it| it.worker = worker);
    }
}

fn hear(state: State, said: Said) {
    match said {
        Said::Ready => state.beside.to_come.with_value(|it| {
            if let (Some(worker), Some(entered)) = (&it.worker, &it.entered) {
                worker.work_out(entered.asked.clone());
            }
        }),
        Said::Done(asked, outcome) => {
            let entered = state.beside.to_come.try_update_value(|it| it.entered.take()).flatten();
            match (outcome, entered) {
                (Ok(worked), Some(mut entered)) => {
                    entered.asked = *asked;
                    state.beside.road.set(Some(Beside { worked, entered }));
                }
                (Err(refused), Some(_)) => {
                    kept_roads::keep_beside(None);
                    state.talk.trouble.set(Some(refused.trouble(&asked)));
                }
                (Ok(_) | Err(_), None) => {}
            }
            end(state);
        }
        Said::Alike(_) => {}
        Said::Stopped => {
            state.talk.trouble.set(Some(WorkTrouble::Stopped { detail: String::new() }));
            end(state);
        }
    }
}

/// Ends the worker in a task of its own, since it is speaking.
fn end(state: State) {
    let clear = move || state.beside.to_come.set_value(ToCome::default());
    state.beside.to_come.update_value(|it| it.rest = Timer::after(0, clear));
}

/// Puts a road beside the one shown, or none; it is kept on this machine.
fn put(state: &Signals, beside: Option<Beside>) {
    state.beside.road.set(beside.clone());
    kept_roads::keep_beside(beside.as_ref().map(Beside::entered));
}

impl Signals {
    /// Keeps what is shown beside what comes next.
    pub(crate) fn keep_beside(&self) {
        if let Some(shown) = self.beside_of_shown() {
            self.place_beside(shown);
        }
    }

    /// The road of a row as it was worked out, driven this way: 0 as recorded, 1 against it.
    fn ranked(&self, row: usize, way: usize) -> Option<Beside> {
        let (truck, day) = self.ranking.made_for.get_untracked()?;
        let ranked = self.ranking.rows.with_untracked(|rows| rows.get(row).cloned())?;
        let worked = untrack(|| ranked.ways.worked(way))?;
        let mut asked = Asked::file(ranked.leg, truck, day);
        asked.take_road(&worked.road);
        asked.task.road.reversed = way == 1;
        Some(Beside { worked, entered: Entered::of(asked) })
    }

    /// Shows two rows of the list side by side, each with the way it is driven.
    pub(crate) fn compare_ranked(&'static self, pair: [(usize, usize); 2]) {
        let [Some(first), Some(second)] = pair.map(|(row, way)| self.ranked(row, way)) else { return };
        self.place_beside(first);
        self.show_entered(second.entered);
        self.ranking.in_front.set(false);
        self.go(View::Two);
    }

    /// Shows both roads of a list of two side by side, once both are worked out. Where one cannot be, the list
    /// says why.
    pub(super) fn pair_ranked(&'static self) {
        let rows = self.ranking.rows.get_untracked();
        let known = untrack(|| rows.iter().all(|row| row.ways.is_known(0)));
        if known {
            self.ranking.as_pair.set_value(false);
            self.compare_ranked([(0, 0), (1, 0)]);
        }
    }

    /// Ends the comparison: the road beside is put away.
    pub(crate) fn end_two(&self) {
        self.beside.to_come.set_value(ToCome::default());
        put(self, None);
    }

    /// Shows the road kept, and keeps the one shown, each with its truck, day and places.
    pub(crate) fn swap(&'static self) {
        let shown = self.beside_of_shown();
        let other = self.beside.road.get_untracked();
        if let (Some(shown), Some(other)) = (shown, other) {
            self.place_beside(shown);
            self.show_entered(other.entered);
        }
    }

    /// Puts a road beside the one shown, in place of any that was still to come.
    pub(super) fn place_beside(&self, beside: Beside) {
        self.beside.to_come.set_value(ToCome::default());
        put(self, Some(beside));
    }

    /// Opens a road of the list, driven this way, for the truck and the day as they are now.
    pub(crate) fn open_ranked(&'static self, row: usize, way: usize) {
        let leg = self.ranking.rows.with_untracked(|rows| rows.get(row).map(|it| it.leg.clone()));
        if let Some(leg) = leg {
            let road = RoadChoice { reversed: way == 1, ..RoadChoice::default() };
            work::open_aim(self, Aim { source: Source::of(vec![leg], Origin::Given), road });
            self.go(View::Road);
        }
    }

    /// Where on the page a road of the list stands. Tracked.
    pub(crate) fn ranked_on_page(&self, row: usize) -> OnPage {
        let file = self.ranking.rows.with_untracked(|rows| rows.get(row).map(|it| it.leg.file.clone()));
        // The same file, not one of the same name.
        let is = |asked: &Asked| match &asked.source.legs[..] {
            [leg] => file.as_ref().is_some_and(|file| file.blob == leg.file.blob),
            _ => false,
        };
        self.shown.worked.track();
        OnPage {
            shown: self.shown.asked.with_value(|asked| asked.as_ref().is_some_and(is)),
            beside: self.beside.road.with(|it| it.as_ref().is_some_and(|it| is(&it.entered.asked))),
        }
    }

    /// Compares the files given instead of joining them.
    pub(crate) fn rank(&'static self) {
        let legs = self.files.legs.get_untracked();
        self.files.legs.set(Vec::new());
        self.list(legs);
    }

    /// Works these roads out and shows them in a list, or two of them side by side.
    pub(super) fn list(&'static self, legs: Vec<Leg>) {
        self.ranking.as_pair.set_value(legs.len() == 2);
        rank::start(self, legs);
        self.ranking.in_front.set(true);
        self.go(View::Two);
    }

    /// Works the list out for the truck and the day as they are now.
    pub(crate) fn rank_again(&'static self) {
        let legs: Vec<Leg> =
            self.ranking.rows.with_untracked(|rows| rows.iter().map(|it| it.leg.clone()).collect());
        rank::start(self, legs);
    }

    /// Works out no more of the list.
    pub(crate) fn stop_ranking(&'static self) {
        rank::stop(self);
    }

    /// Puts the list away.
    pub(crate) fn end_ranking(&'static self) {
        rank::end(self);
    }

    /// Takes the text of a rate.
    pub(crate) fn set_rate(&'static self, index: usize, text: String) {
        self.beside.rates.update(|rates| rates[index] = text);
        self.keep();
    }
}
