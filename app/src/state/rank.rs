//! Many roads at once: each worked out by itself, by several workers side by side.

use super::asked::{Asked, Leg, Origin, Source};
use super::result::Surveyed;
use super::{State, Worked};
use crate::browser;
use crate::browser::timer::Timer;
use crate::browser::worker::{Heard, WorkerClient, WorkerKind};
use crate::message::{Reply, Request, Task, decode, encode};
use crate::words::{WorkTrouble, words};
use leptos::prelude::*;
use std::sync::Arc;

/// Most workers side by side: each reads a file into memory.
const MOST_WORKERS: usize = 4;

/// One road of the list.
#[derive(Clone)]
pub(crate) struct Ranked {
    /// Its file.
    pub(crate) leg: Leg,
    /// What became of it, or why nothing did; `None` until then.
    pub(crate) outcome: Option<Result<Arc<Worked>, String>>,
}

/// The workers at it.
#[derive(Default)]
pub(super) struct Pool {
    /// Counts up with each list: answers to a former one are dropped.
    round: u32,
    slots: Vec<Slot>,
    next: usize,
    rest: Option<Timer>,
}

struct Slot {
    client: Option<WorkerClient>,
    row: Option<(usize, Asked)>,
    surveyed: Option<Surveyed>,
}

/// Works these files out, each a road of its own, for the truck and the day entered.
pub(super) fn start(state: State, legs: Vec<Leg>) {
    let workers = browser::cores().clamp(1, MOST_WORKERS).min(legs.len());
    state.ranked.set(legs.into_iter().map(|leg| Ranked { leg, outcome: None }).collect());
    let entries = state.entries.get_untracked();
    state.ranked_for.set(Some((entries.truck, entries.day)));
    state.pool.update_value(|pool| {
        *pool = Pool { round: pool.round + 1, ..Pool::default() };
        pool.slots = (0..workers).map(|_| Slot { client: None, row: None, surveyed: None }).collect();
    });
    for slot in 0..workers {
        start_slot(state, slot);
    }
}

/// Drops the list and its workers.
pub(super) fn end(state: State) {
    state.ranked.set(Vec::new());
    state.pool.update_value(|pool| *pool = Pool { round: pool.round + 1, ..Pool::default() });
}

fn start_slot(state: State, slot: usize) {
    let round = state.pool.with_value(|pool| pool.round);
    let client = WorkerClient::start(
        WorkerKind::First,
        move |heard| hear(state, round, slot, &heard),
        move || failed(state, round, slot),
    );
    if client.is_none() {
        state.trouble.set(Some(WorkTrouble::CannotStart));
    }
    with_slot(state, round, slot, |it| it.client = client);
}

/// Changes a slot of the list that is worked on; nothing of a former one.
fn with_slot<T>(state: State, round: u32, slot: usize, change: impl FnOnce(&mut Slot) -> T) -> Option<T> {
    state.pool.try_update_value(|pool| {
        let current = pool.round == round;
        pool.slots.get_mut(slot).filter(|_| current).map(change)
    })?
}

/// The worker of a slot stopped: its road is given up, another worker takes the next.
fn failed(state: State, round: u32, slot: usize) {
    let Some(row) = with_slot(state, round, slot, |it| it.row.take()) else { return };
    let Some((row, _)) = row else { return };
    settle(state, row, Err(words().trouble_head(&WorkTrouble::Stopped { detail: String::new() })));
    start_slot(state, slot);
}

fn hear(state: State, round: u32, slot: usize, heard: &Heard) {
    let Some((_, reply)) = decode::<Reply>(&heard.header()) else { return };
    let done = |outcome: Result<Arc<Worked>, String>| {
        let row = with_slot(state, round, slot, |it| it.row.take()).flatten();
        if let Some((row, _)) = row {
            settle(state, row, outcome);
            take_next(state, round, slot);
        }
    };
    match reply {
        Reply::Ready => take_next(state, round, slot),
        Reply::Surveyed(facts) => {
            with_slot(state, round, slot, |it| it.surveyed = Some(Surveyed::new(*facts, heard, None)));
        }
        Reply::Planned(plan) => {
            let worked = with_slot(state, round, slot, |it| {
                let asked = it.row.as_ref().map(|(_, asked)| asked.clone())?;
                Some(it.surveyed.take()?.with_plan(plan, heard, &asked))
            });
            if let Some(Some(worked)) = worked {
                done(Ok(Arc::new(worked)));
            }
        }
        // Of several tracks the first that makes a road is taken, and the row can be opened.
        Reply::Choose(courses) => match courses.iter().position(|course| course.usable) {
            Some(course) => {
                with_slot(state, round, slot, |it| {
                    if let (Some((_, asked)), Some(client)) = (&it.row, &it.client) {
                        let task = Task { course: Some(course), ..asked.task.clone() };
                        client.send(&encode(round, &Request::Plan(task)), std::iter::empty());
                    }
                });
            }
            None => done(Err(words().course_unusable().to_owned())),
        },
        Reply::Failed(error) => done(Err(words().file_error(&error))),
        Reply::TruckRefused(error) => done(Err(words().truck_error(&error, state.units.get_untracked()))),
        Reply::NoRoad => done(Err(words().trouble_head(&WorkTrouble::NotAFile))),
        Reply::Progress(..) | Reply::HandedOver | Reply::Panicked(_) => {}
    }
}

fn settle(state: State, row: usize, outcome: Result<Arc<Worked>, String>) {
    state.ranked.update(|rows| {
        if let Some(ranked) = rows.get_mut(row) {
            ranked.outcome = Some(outcome);
        }
    });
}

/// Gives a worker the next file; with none left the workers end, in a task of their own, since one
/// of them is speaking.
fn take_next(state: State, round: u32, slot: usize) {
    if state.pool.with_value(|pool| pool.round != round) {
        return;
    }
    let row = state.pool.try_update_value(|pool| {
        pool.next += 1;
        pool.next - 1
    });
    let leg = row.and_then(|row| state.ranked.with_untracked(|rows| rows.get(row).map(|it| it.leg.clone())));
    if let (Some(row), Some(leg)) = (row, leg) {
        let Some((truck, day)) = state.ranked_for.get_untracked() else { return };
        let task = Task { course: None, part: None, reversed: false, roadside: None, truck, day };
        let asked = Asked { source: Source { number: 0, legs: vec![leg], origin: Origin::Given }, task };
        with_slot(state, round, slot, |it| {
            let header = encode(round, &Request::Open(asked.task.clone(), asked.source.turned()));
            if let Some(client) = &it.client {
                client.send(&header, asked.source.legs.iter().map(|leg| &leg.file.blob));
            }
            it.row = Some((row, asked));
        });
        return;
    }
    let idle = state.pool.with_value(|pool| pool.slots.iter().all(|slot| slot.row.is_none()));
    if idle {
        let clear = move || state.pool.update_value(|pool| pool.slots.clear());
        state.pool.update_value(|pool| pool.rest = Timer::after(0, clear));
    }
}
