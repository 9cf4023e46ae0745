//! Many roads at once: each worked out by itself, by several workers side by side.

use super::asked::{Asked, Leg};
use super::result::Worked;
use super::road_worker::{Refused, RoadWorker, Said};
use super::signals::{Pool, Ranked, Slot, State, Ways};
use crate::browser;
use crate::browser::timer::Timer;
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Most workers side by side: each reads a file into memory.
const MOST_WORKERS: usize = 4;

/// Works these files out, each a road of its own and driven both ways, for the truck and the day entered.
pub(super) fn start(state: State, legs: Vec<Leg>) {
    let workers = browser::cores().clamp(1, MOST_WORKERS).min(legs.len());
    let ranking = &state.ranking;
    let row = |leg| Ranked { leg, ways: Ways::new() };
    ranking.rows.set(legs.into_iter().map(row).collect());
    ranking.ticked.set(BTreeSet::new());
    ranking.turned.set(BTreeSet::new());
    let entries = state.entered.entries.get_untracked();
    ranking.made_for.set(Some((entries.truck, entries.day)));
    next_round(state, workers);
    for slot in 0..workers {
        start_slot(state, slot);
    }
}

/// Drops the list and its workers.
pub(super) fn end(state: State) {
    state.ranking.rows.set(Vec::new());
    state.ranking.in_front.set(false);
    next_round(state, 0);
}

/// Gives up what is not worked out yet; what is, stays.
pub(super) fn stop(state: State) {
    next_round(state, 0);
    for row in state.ranking.rows.get_untracked() {
        row.ways.give_up(words().given_up());
    }
}

/// Ends the workers there are, whose answers are dropped, and makes room for others.
fn next_round(state: State, workers: usize) {
    state.ranking.pool.update_value(|pool| {
        let slots = (0..workers).map(|_| Slot::default()).collect();
        *pool = Pool { round: pool.round + 1, slots, ..Pool::default() };
    });
}

fn start_slot(state: State, slot: usize) {
    let round = state.ranking.pool.with_value(|pool| pool.round);
    let worker = RoadWorker::start(move |said| hear(state, round, slot, said));
    if worker.is_none() {
        state.talk.trouble.set(Some(WorkTrouble::CannotStart));
    }
    with_slot(state, round, slot, |it| it.worker = worker);
}

/// Changes a slot of the list that is worked on; slots of an earlier list are left alone.
fn with_slot<T>(state: State, round: u32, slot: usize, change: impl FnOnce(&mut Slot) -> T) -> Option<T> {
    state.ranking.pool.try_update_value(|pool| {
        let current = pool.round == round;
        pool.slots.get_mut(slot).filter(|_| current).map(change)
    })?
}

fn hear(state: State, round: u32, slot: usize, said: Said) {
    let take_at = || with_slot(state, round, slot, |it| it.at.take()).flatten();
    match said {
        Said::Alike(_) => {}
        Said::Ready => take_next(state, round, slot),
        Said::Done(asked, outcome) => {
            if let Some((row, way)) = take_at() {
                let other_way = way == 0 && outcome.is_ok();
                settle(state, row, way, outcome.map_err(|refused| why(state, &refused)));
                if other_way {
                    turn(state, round, slot, row, *asked);
                } else {
                    take_next(state, round, slot);
                }
            }
        }
        // Its road is given up, another worker takes the next.
        Said::Stopped => {
            if let Some((row, way)) = take_at() {
                let stopped = WorkTrouble::Stopped { detail: String::new() };
                settle(state, row, way, Err(words().trouble_head(&stopped)));
                start_slot(state, slot);
            }
        }
    }
}

/// Has the same road worked out against the direction of recording.
fn turn(state: State, round: u32, slot: usize, row: usize, mut asked: Asked) {
    asked.task.road.reversed = true;
    with_slot(state, round, slot, |it| {
        it.at = Some((row, 1));
        if let Some(worker) = &it.worker {
            worker.work_out_again(asked);
        }
    });
}

fn why(state: State, refused: &Refused) -> String {
    match refused {
        Refused::File(error) => words().file_error(error),
        Refused::Truck(error) => words().truck_error(error, state.units.get_untracked()),
        Refused::NoTrack => words().course_unusable().to_owned(),
    }
}

/// Takes the outcome of a way.
fn settle(state: State, row: usize, way: usize, outcome: Result<Arc<Worked>, String>) {
    let ways = state.ranking.rows.with_untracked(|rows| rows.get(row).map(|it| it.ways.clone()));
    let Some(ways) = ways else { return };
    ways.settle(way, outcome);
    if state.ranking.as_pair.get_value() {
        state.pair_ranked();
    }
}

/// Gives a worker the next file; with none left the workers end, in a task of their own, since one
/// of them is speaking.
fn take_next(state: State, round: u32, slot: usize) {
    if state.ranking.pool.with_value(|pool| pool.round != round) {
        return;
    }
    let row = state.ranking.pool.try_update_value(|pool| {
        pool.next += 1;
        pool.next - 1
    });
    let leg =
        row.and_then(|row| state.ranking.rows.with_untracked(|rows| rows.get(row).map(|it| it.leg.clone())));
    if let (Some(row), Some(leg)) = (row, leg) {
        let Some((truck, day)) = state.ranking.made_for.get_untracked() else { return };
        with_slot(state, round, slot, |it| {
            it.at = Some((row, 0));
            if let Some(worker) = &it.worker {
                worker.work_out(Asked::file(leg, truck, day));
            }
        });
        return;
    }
    let idle = state.ranking.pool.with_value(|pool| pool.slots.iter().all(|slot| slot.at.is_none()));
    if idle {
        let clear = move || state.ranking.pool.update_value(|pool| pool.slots.clear());
        state.ranking.pool.update_value(|pool| pool.rest = Timer::after(0, clear));
    }
}
