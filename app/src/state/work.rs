//! The conversation with the worker: what is wanted, what was asked, what came back.
//!
//! What is wanted follows from the state at any moment; one question at a time is out. When
//! its answer comes and something else is wanted by then, the next question goes out. A new
//! file does not wait: the worker at work is ended and another one started. A worker that is
//! new holds no file, so the kept file goes along with the first question.

use super::asked::{Aim, Asked, Leg, Origin, Source};
use super::result::{Surveyed, Worked};
use super::signals::{Choice, Progress, Signals, State};
use super::standing::{Followers, back_to_shown};
use crate::browser::timer::Timer;
use crate::browser::worker::{Heard, WorkerClient, WorkerKind};
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use std::sync::Arc;
use workers::message::{Reply, Request, RoadChoice, RoadFacts, decode, encode};

/// Quiet time after the last key before the road is worked out again, ms.
const PAUSE_MS: i32 = 150;
/// Workers started in vain before the page gives up.
const MOST_STARTS: u32 = 2;

/// Begins the conversation.
pub(super) fn start(state: State, followers: Followers) {
    state.talk.work.update_value(|work| work.followers = Some(followers));
    start_worker(state);
}

/// Starts a worker in place of the one that may be running.
fn start_worker(state: State) {
    let client =
        WorkerClient::start(WorkerKind::First, move |heard| hear(state, &heard), move || stopped(state));
    let started = client.is_some();
    state.talk.work.update_value(|work| {
        work.client = client;
        work.ready = false;
        work.panic = None;
        work.out = None;
        work.holds = None;
        work.surveyed = None;
    });
    if !started {
        cannot_start(state);
    }
}

fn cannot_start(state: State) {
    state.talk.progress.set(None);
    state.talk.trouble.set(Some(WorkTrouble::CannotStart));
}

/// Wants another file, or several joined. Their number is bounded by how often a person drops one.
pub(super) fn open(state: State, legs: Vec<Leg>, origin: Origin) {
    open_aim(state, Aim { source: Source::of(legs, origin), road: RoadChoice::default() });
}

/// How many files were wanted so far.
pub(super) fn opened(state: State) -> u32 {
    state.talk.work.with_value(|work| work.sources)
}

/// Whether no file was wanted so far.
pub(super) fn is_idle(state: State) -> bool {
    state.talk.work.with_value(|work| work.aim.is_none())
}

/// Wants a file with its course, part and direction; it gets its number here.
pub(super) fn open_aim(state: State, mut aim: Aim) {
    state.talk.trouble.set(None);
    state.files.choice.set(None);
    let busy = state.talk.work.with_value(|work| work.out.is_some());
    state.talk.work.update_value(|work| {
        work.sources += 1;
        aim.source.number = work.sources;
        work.aim = Some(aim);
        work.fatal = None;
        work.vain_starts = 0;
    });
    if busy || state.talk.work.with_value(|work| work.client.is_none()) {
        start_worker(state);
    }
    work_out(state);
}

fn wanted(state: State) -> Option<Asked> {
    let aim = state.talk.work.with_value(|work| work.aim.clone())?;
    Some(aim.with(state.entered.entries.get_untracked()))
}

/// Whether the result shown is not that of the entries as they are.
pub(super) fn differs(state: State) -> bool {
    if untrack(|| state.is_blocked()) {
        return true;
    }
    let wanted = wanted(state);
    state.talk.work.with_value(|work| match (&work.shown, &wanted) {
        (Some(shown), Some(wanted)) => !shown.is(wanted),
        (Some(_) | None, Some(_) | None) => false,
    })
}

/// Asks the worker for what is wanted, unless it is shown, asked already, or cannot be asked.
pub(super) fn work_out(state: State) {
    let differs = differs(state);
    state.shown.stale.set(differs);
    if untrack(|| state.is_blocked() || state.files.choice.with(Option::is_some)) {
        return;
    }
    let Some(wanted) = wanted(state) else { return };
    let shown = state.talk.work.with_value(|work| work.shown.is_some());
    let idle = state.talk.work.with_value(|work| work.out.is_none());
    let fatal = state.talk.work.with_value(|work| work.fatal.as_ref().is_some_and(|fatal| fatal.is(&wanted)));
    if !idle || fatal || (shown && !differs) {
        return;
    }
    if state.talk.work.with_value(|work| work.client.is_none()) {
        start_worker(state);
    }
    if !state.talk.work.with_value(|work| work.ready) {
        state.talk.progress.set(Some(Progress { phase: None, share: 0.0 }));
        return;
    }
    ask(state, wanted);
}

fn ask(state: State, wanted: Asked) {
    let mut sent = false;
    state.talk.work.update_value(|work| {
        work.number += 1;
        let held = work.holds == Some(wanted.source.number);
        let (request, legs) = if held {
            (Request::Plan(wanted.task.clone()), &[][..])
        } else {
            (Request::Open(wanted.task.clone(), wanted.source.given()), &wanted.source.legs[..])
        };
        let header = encode(work.number, &request);
        let files = legs.iter().map(|leg| &leg.file.blob);
        sent = work.client.as_ref().is_some_and(|client| client.send(&header, files));
        if sent {
            work.out = Some(wanted.clone());
        }
    });
    if sent {
        state.talk.progress.set(Some(Progress { phase: None, share: 0.0 }));
    } else {
        cannot_start(state);
    }
}

/// The road that the worker can hand over now: the one of the last answer, unless it is busy.
pub(super) fn at_hand(state: State) -> Option<Arc<RoadFacts>> {
    state.talk.work.with_value(|work| {
        // After a question about another file the worker holds that one, not the road shown.
        let shown = work.shown.as_ref().map(|shown| shown.source.number);
        let idle = work.ready && work.out.is_none() && work.holds.is_some() && work.holds == shown;
        work.surveyed.as_ref().filter(|_| idle).map(|it| it.facts.clone())
    })
}

/// Asks for the road [`at_hand`], for a study of it; `false` where it cannot be asked for.
pub(super) fn hand_over(state: State) -> bool {
    let idle = at_hand(state).is_some();
    let sent = state.talk.work.try_update_value(|work| {
        work.number += u32::from(idle);
        let header = encode(work.number, &Request::HandOver);
        idle && work.client.as_ref().is_some_and(|client| client.send(&header, std::iter::empty()))
    });
    sent == Some(true)
}

/// Gives up: the worker is ended, and what is shown is what is wanted again as far as file,
/// track and direction go. Entries stay as typed.
pub(super) fn cancel(state: State) {
    state.talk.work.update_value(back_to_shown);
    start_worker(state);
    state.talk.progress.set(None);
    state.shown.stale.set(differs(state));
    state.talk.trouble.set(Some(WorkTrouble::Cancelled));
}

/// The worker stopped: on an error of its own, or before it was ready.
fn stopped(state: State) {
    let (was_ready, panic) = state.talk.work.with_value(|work| (work.ready, work.panic.clone()));
    state.talk.progress.set(None);
    state.talk.work.update_value(|work| work.client = None);
    if was_ready {
        state.talk.work.update_value(|work| {
            work.fatal = work.out.take();
            let source = |asked: &Option<Asked>| asked.as_ref().map(|it| it.source.number);
            if source(&work.fatal) != source(&work.shown) {
                back_to_shown(work);
            }
        });
        start_worker(state);
        let detail = panic.unwrap_or_default();
        state.talk.trouble.set(Some(WorkTrouble::Stopped { detail }));
        state.shown.stale.set(differs(state));
        return;
    }
    let mut starts = 0;
    state.talk.work.update_value(|work| {
        work.vain_starts += 1;
        starts = work.vain_starts;
    });
    if starts < MOST_STARTS {
        start_worker(state);
    } else {
        cannot_start(state);
    }
}

/// A message of the worker. Answers to questions that were given up are dropped.
fn hear(state: State, heard: &Heard) {
    let Some((number, reply)) = decode::<Reply>(&heard.header()) else { return };
    match reply {
        Reply::Ready => {
            state.talk.work.update_value(|work| {
                work.ready = true;
                work.vain_starts = 0;
            });
            work_out(state);
        }
        // Whatever was asked since, nothing of it is answered: the road is the one that was held.
        Reply::HandedOver => handed_over(state, heard),
        Reply::Panicked(detail) => state.talk.work.update_value(|work| work.panic = Some(detail)),
        Reply::Progress(..)
        | Reply::Choose(_)
        | Reply::Surveyed(_)
        | Reply::Planned(_)
        | Reply::Failed(_)
        | Reply::TruckRefused(_)
        | Reply::NoRoad
        | Reply::Alike(_) => {
            if number == state.talk.work.with_value(|work| work.number) {
                answered(state, reply, heard);
            }
        }
    }
}

fn answered(state: State, reply: Reply, heard: &Heard) {
    match reply {
        Reply::Ready | Reply::Panicked(_) | Reply::Alike(_) | Reply::HandedOver => {}
        Reply::Progress(phase, share) => {
            state.talk.progress.set(Some(Progress { phase: Some(phase), share }))
        }
        Reply::Choose(courses) => {
            let name = state.talk.work.try_update_value(|work| {
                let asked = work.out.take()?;
                work.holds = Some(asked.source.number);
                Some(asked.source.name())
            });
            state.talk.progress.set(None);
            let name = name.flatten().unwrap_or_default();
            state.files.choice.set(Some(Choice { file: name, courses }));
        }
        Reply::Surveyed(facts) => {
            state.talk.work.update_value(|work| {
                work.surveyed = Some(Surveyed::new(*facts, heard, work.surveyed.as_ref()));
            });
        }
        Reply::Planned(plan) => {
            let asked = state.talk.work.try_update_value(|work| work.out.take()).flatten();
            let surveyed = state.talk.work.with_value(|work| work.surveyed.clone());
            match (asked, surveyed) {
                (Some(asked), Some(surveyed)) => {
                    let worked = surveyed.with_plan(plan, heard, &asked);
                    show(state, asked, worked);
                }
                (None, _) | (_, None) => next(state),
            }
        }
        Reply::Failed(error) => {
            let asked = state.talk.work.try_update_value(|work| {
                let asked = work.out.take();
                back_to_shown(work);
                asked
            });
            let source = asked.flatten().map(|asked| asked.source);
            let name = source.as_ref().map(Source::name).unwrap_or_default();
            state.talk.trouble.set(Some(WorkTrouble::File { name, error }));
            // Files that could not be joined are in hand still: one may have to be turned or moved.
            if let Some(source) = source.filter(|it| it.legs.len() > 1) {
                state.files.legs.set(source.legs);
            }
            next(state);
        }
        Reply::TruckRefused(error) => {
            state.talk.work.update_value(|work| work.out = None);
            state.talk.trouble.set(Some(WorkTrouble::Truck { error }));
            state.talk.progress.set(None);
        }
        Reply::NoRoad => {
            // The worker lost the file: it goes along with the next question.
            state.talk.work.update_value(|work| {
                work.out = None;
                work.holds = None;
            });
            next(state);
        }
    }
}

fn handed_over(state: State, heard: &Heard) {
    let (facts, followers) = state
        .talk
        .work
        .with_value(|work| (work.surveyed.as_ref().map(|it| it.facts.clone()), work.followers.clone()));
    if let (Some(facts), Some(bytes), Some(followers)) = (facts, heard.raw(0), followers) {
        (followers.road)(facts, bytes);
    }
}

/// Takes note of an answer, and lets it be shown.
fn show(state: State, mut asked: Asked, worked: Worked) {
    asked.take_road(&worked.road);
    let told = state.talk.work.try_update_value(|work| {
        work.holds = Some(asked.source.number);
        work.fatal = None;
        if let Some(aim) = work.aim.as_mut().filter(|aim| aim.source.number == asked.source.number) {
            aim.road.course = aim.road.course.or(asked.task.road.course);
            // A part that could not be cut is not wanted any more.
            aim.road.part = aim.road.part.and(asked.task.road.part);
        }
        (work.shown.replace(asked.clone()), work.followers.clone())
    });
    if let Some((before, Some(followers))) = told {
        (followers.shown)(before, asked, worked);
    }
}

/// Goes on with what is wanted by now, once an answer is shown.
pub(super) fn next(state: State) {
    state.talk.progress.set(None);
    work_out(state);
}

impl Signals {
    /// Works the road out for what is entered, in a moment.
    pub(super) fn work_out_later(&'static self) {
        self.shown.stale.set(differs(self));
        self.talk.pause.set_value(Timer::after(PAUSE_MS, move || work_out(self)));
    }

    /// Whether the deciding answer may be saved: it is up to date and nothing is out.
    pub(crate) fn can_export(&self) -> bool {
        !self.shown.stale.get()
            && self.talk.progress.get().is_none()
            && self.shown.worked.with(Option::is_some)
    }
}
