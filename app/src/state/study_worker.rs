//! The conversation with the study worker: who asks names who is told.
//!
//! The worker is started when something is asked. Questions on a road wait until the first worker has
//! handed it over; the road is kept here, and goes to the worker with the first question about it. A
//! question that is not wanted any more ends the worker where it may be at it. What else was posted is
//! posted again to the next one.

use super::question::{Question, Road, StudyWork, Told};
use super::signals::State;
use super::work;
use crate::browser::worker::{Heard, RawBytes, WorkerClient, WorkerKind};
use leptos::prelude::*;
use std::rc::Rc;
use std::sync::Arc;
use workers::message::study::{StudyReply, StudyRequest};
use workers::message::{RoadFacts, decode, encode};

/// Asks what needs no road.
pub(super) fn ask(state: State, request: StudyRequest, told: impl Fn(Told<'_>) + 'static) {
    push(state, Question { request, road: None, told: Rc::new(told) });
}

/// Asks about the road shown; nothing where there is none.
pub(super) fn ask_about_road(state: State, request: StudyRequest, told: impl Fn(Told<'_>) + 'static) {
    let Some(facts) = shown(state) else { return };
    let kept = state.studied.work.with_value(|work| work.road.clone()).filter(|road| road.is(&facts));
    let road = Some(kept.unwrap_or(Road { facts, bytes: None }));
    push(state, Question { request, road, told: Rc::new(told) });
}

fn shown(state: State) -> Option<Arc<RoadFacts>> {
    state.shown.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.clone()))
}

fn push(state: State, question: Question) {
    state.studied.work.update_value(|work| work.queue.push(question));
    send(state);
}

/// Another result is shown: what was asked about the one before is not wanted any more.
pub(super) fn cancel_result(state: State) {
    let at_work =
        state.studied.work.try_update_value(|work| work.queue.cancel(Question::is_about_the_result));
    if at_work == Some(true) {
        end(state);
    }
    send(state);
}

/// Sends what waits as far as worker and road are there, and sees to it that they come.
fn send(state: State) {
    if !state.studied.work.with_value(|work| work.queue.waits()) {
        return;
    }
    if !state.studied.work.with_value(|work| work.client.is_some()) {
        start(state);
    }
    state.studied.work.update_value(post);
    if !state.studied.work.with_value(|work| work.queue.is_ready()) {
        return;
    }
    // What waits still lacks its road. One that the first worker can hand over comes through `take_road`.
    let at_hand = work::at_hand(state);
    let comes = |question: &Question| {
        let road = question.road.as_ref();
        at_hand.as_ref().is_some_and(|at_hand| road.is_some_and(|road| road.is(at_hand)))
    };
    give_up(state, |question| !comes(question));
    if state.studied.work.with_value(|work| work.queue.waits()) && !work::hand_over(state) {
        give_up(state, |_| true);
    }
}

/// Posts what may go. A road goes along with the first question about it.
fn post(work: &mut StudyWork) {
    let StudyWork { client: Some(client), queue, holds, .. } = work else { return };
    queue.post(
        |question| !question.lacks_road(),
        |number, question| {
            let road = question.road.as_ref();
            let held = holds.as_ref().is_some_and(|holds| road.is_some_and(|road| road.is(holds)));
            let bytes = road.filter(|_| !held).and_then(|road| road.bytes.as_ref());
            let sent = client.send_bytes(&encode(number, &question.request), bytes);
            if let Some(road) = road.filter(|_| sent) {
                *holds = Some(road.facts.clone());
            }
            sent
        },
    );
}

/// The first worker handed a road over.
pub(super) fn take_road(state: State, facts: Arc<RoadFacts>, bytes: RawBytes) {
    state.studied.work.update_value(|work| {
        let road = Road { facts, bytes: Some(bytes) };
        for waiting in work.queue.waiting() {
            waiting.road = waiting.road.take().map(|it| if it.is(&road.facts) { road.clone() } else { it });
        }
        work.road = Some(road);
    });
    send(state);
}

fn start(state: State) {
    let client =
        WorkerClient::start(WorkerKind::Study, move |heard| hear(state, &heard), move || stopped(state));
    let started = client.is_some();
    state.studied.work.update_value(|work| work.client = client);
    if !started {
        give_up(state, |_| true);
    }
}

fn end(state: State) {
    state.studied.work.update_value(|work| {
        work.client = None;
        work.holds = None;
        work.queue.restart();
    });
}

/// The worker stopped on an error of its own, or could not be loaded.
fn stopped(state: State) {
    let was_ready = state.studied.work.with_value(|work| work.queue.is_ready());
    let at_work = state.studied.work.try_update_value(|work| {
        work.client = None;
        work.holds = None;
        work.queue.stopped()
    });
    if let Some(question) = at_work.flatten() {
        (question.told)(Told::GivenUp);
    }
    if was_ready {
        send(state);
    } else {
        give_up(state, |_| true);
    }
}

/// What waits of these will not be answered: whoever asked is told.
fn give_up(state: State, which: impl Fn(&Question) -> bool) {
    let given_up = state.studied.work.try_update_value(|work| work.queue.take_waiting(which));
    for question in given_up.unwrap_or_default() {
        (question.told)(Told::GivenUp);
    }
}

/// Whether more comes to the same question.
fn is_part(reply: &StudyReply) -> bool {
    matches!(reply, StudyReply::Studied(_) | StudyReply::Progress(_))
}

fn hear(state: State, heard: &Heard) {
    let Some((number, reply)) = decode::<StudyReply>(&heard.header()) else { return };
    if reply == StudyReply::Ready {
        state.studied.work.update_value(|work| work.queue.set_ready());
        return send(state);
    }
    let told = state.studied.work.try_update_value(|work| {
        if is_part(&reply) {
            work.queue.in_part(number).map(|question| question.told.clone())
        } else {
            work.queue.answered(number).map(|question| question.told)
        }
    });
    // Told with nothing borrowed: the answer may be the next question.
    if let Some(told) = told.flatten() {
        told(Told::Reply(reply, heard));
    }
}
