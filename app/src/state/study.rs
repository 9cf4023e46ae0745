//! The conversation with the study worker: what is looked at further once an answer stands.
//!
//! A moment after a result is shown the first worker hands the road over, and the study worker
//! is asked for all that follows from the plan. A new result ends a study that is still at work:
//! the worker is ended with it, and started again with the road that is kept here.

use super::{Signals, State, Worked, link, project, ride, work, worth};
use crate::browser::timer::Timer;
use crate::browser::worker::{Heard, RawBytes, WorkerClient, WorkerKind};
use crate::chart::{Ends, RoadPicture};
use crate::tell::captions;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use solver::day::Day;
use solver::study::{Measured, NotMeasured, Seen};
use solver::truck::TruckSpec;
use std::sync::Arc;
use workers::message::study::{StudyReply, StudyRequest};
use workers::message::{RoadFacts, decode, encode};

/// Quiet time after a result before it is studied, ms: whoever types on is not kept from it.
const PAUSE_MS: i32 = 400;

/// Where the conversation stands.
#[derive(Default)]
pub(super) struct StudyWork {
    client: Option<WorkerClient>,
    ready: bool,
    number: u32,
    /// Questions without their last answer.
    out: u32,
    /// The road's bytes, and whose they are.
    road: Option<(Arc<RoadFacts>, RawBytes)>,
    /// The road that the worker has.
    holds: Option<Arc<RoadFacts>>,
    /// What waits for the worker or for the road.
    waiting: Vec<StudyRequest>,
    pause: Option<Timer>,
}

/// What a measurement came to.
pub(crate) type MeasuredSignal = Option<Result<Measured, NotMeasured>>;

/// A new result is shown: what the last study said is not about it.
pub(super) fn forget(state: State) {
    state.study.set(None);
    state.sureness.set(None);
    state.studying.set(None);
    ride::forget(state);
    worth::forget(state);
    let busy = state.study_work.try_update_value(|work| {
        work.waiting.retain(|request| !needs_the_road(request));
        work.pause = None;
        work.out > 0
    });
    if busy == Some(true) {
        end(state);
    }
}

/// Studies the result shown, in a moment.
pub(super) fn follow(state: State) {
    let Some((truck, day)) = shown(state, |worked| !worked.plan.descents.is_empty()) else { return };
    state.studying.set(Some(0.0));
    // A new result takes the pause with it: what is asked is about the one shown.
    let timer = Timer::after(PAUSE_MS, move || ask(state, StudyRequest::Study(truck.clone(), day)));
    state.study_work.update_value(|work| work.pause = timer);
}

/// Truck and day of the result shown, where it is one of these.
pub(super) fn shown(state: State, which: impl Fn(&Worked) -> bool) -> Option<(TruckSpec, Day)> {
    state
        .worked
        .with_untracked(|worked| worked.as_ref().filter(|it| which(it)).map(|it| (it.truck.clone(), it.day)))
}

/// Asks for the GPX file with crests and changes of the result shown.
pub(super) fn export(state: State) {
    let Some((truck, day)) = shown(state, |_| true) else { return };
    let units = state.units.get_untracked();
    let captions = state
        .worked
        .with_untracked(|worked| worked.as_ref().map(|it| captions(&it.plan, &it.picture.gear, units)));
    ask(state, StudyRequest::Export(truck, day, captions.unwrap_or_default()));
}

/// Asks what the retarder gave.
pub(super) fn measure(state: State, seen: Seen) {
    let entries = state.entries.get_untracked();
    ask(state, StudyRequest::Measure(entries.truck, entries.day, seen));
}

/// Writes the truck entered as a file.
pub(super) fn write_truck(state: State) {
    ask(state, StudyRequest::WriteTruck(state.entries.get_untracked().truck));
}

/// Writes truck and day for a link.
pub(super) fn write_link(state: State) {
    let entries = state.entries.get_untracked();
    ask(state, StudyRequest::WriteLink(entries.truck, entries.day));
}

/// Reads what a link carries.
pub(super) fn read_link(state: State, text: String) {
    ask(state, StudyRequest::ReadLink(text));
}

/// Reads the text of a truck file.
pub(super) fn read_truck(state: State, text: String) {
    ask(state, StudyRequest::ReadTruck(text));
}

pub(super) fn ask(state: State, request: StudyRequest) {
    state.study_work.update_value(|work| work.waiting.push(request));
    send(state);
}

/// Sends what waits as far as worker and road are there, and sees to it that they come.
fn send(state: State) {
    if !state.study_work.with_value(|work| work.client.is_some()) {
        start(state);
    }
    if !state.study_work.with_value(|work| work.ready) {
        return;
    }
    let shown = state.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.clone()));
    let same = |road: Option<&Arc<RoadFacts>>| match (road, &shown) {
        (Some(road), Some(shown)) => Arc::ptr_eq(road, shown),
        (None, _) | (_, None) => false,
    };
    let (held, kept) = state
        .study_work
        .with_value(|work| (same(work.holds.as_ref()), same(work.road.as_ref().map(|(facts, _)| facts))));
    let ready_for = |request: &StudyRequest| !needs_the_road(request) || held || kept;
    state.study_work.update_value(|work| {
        let (go, stay): (Vec<_>, Vec<_>) = std::mem::take(&mut work.waiting).into_iter().partition(ready_for);
        work.waiting = stay;
        for request in go {
            work.number += 1;
            let bytes =
                work.road.as_ref().filter(|_| needs_the_road(&request) && !held && work.holds.is_none());
            let header = encode(work.number, &request);
            let sent =
                work.client.as_ref().is_some_and(|client| client.send_bytes(&header, bytes.map(|it| &it.1)));
            if let Some((facts, _)) = bytes {
                work.holds = Some(facts.clone());
            }
            work.out += u32::from(sent);
        }
    });
    let waits = state.study_work.with_value(|work| !work.waiting.is_empty());
    // The answer comes through `take_road`; a worker that is busy answers with a result.
    if waits && !work::hand_over(state) {
        cannot(state);
    }
}

fn needs_the_road(request: &StudyRequest) -> bool {
    match request {
        StudyRequest::Study(..)
        | StudyRequest::Ride(..)
        | StudyRequest::Worth(..)
        | StudyRequest::Export(..) => true,
        StudyRequest::Measure(..)
        | StudyRequest::WriteTruck(_)
        | StudyRequest::ReadTruck(_)
        | StudyRequest::WriteLink(..)
        | StudyRequest::ReadLink(_)
        | StudyRequest::WriteProject(_)
        | StudyRequest::ReadProject(..) => false,
    }
}

/// The first worker handed the road over.
pub(super) fn take_road(state: State, bytes: Option<RawBytes>) {
    let shown = state.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.clone()));
    state.study_work.update_value(|work| {
        work.road = shown.zip(bytes);
        work.holds = None;
    });
    if state.study_work.with_value(|work| work.road.is_some()) {
        send(state);
    }
}

fn start(state: State) {
    let client = WorkerClient::start(
        WorkerKind::Study,
        move |heard| hear(state, &heard),
        move || {
            end(state);
            cannot(state);
        },
    );
    state.study_work.update_value(|work| {
        work.client = client;
        work.ready = false;
    });
}

fn end(state: State) {
    state.study_work.update_value(|work| {
        work.client = None;
        work.ready = false;
        work.out = 0;
        work.holds = None;
    });
}

/// Without a study the answer stands as it is; who asked for something else is told.
fn cannot(state: State) {
    state.studying.set(None);
    ride::give_up(state);
    worth::give_up(state);
    let waiting = state.study_work.try_update_value(|work| std::mem::take(&mut work.waiting));
    let mut troubles = waiting.unwrap_or_default().into_iter().filter_map(|request| match request {
        StudyRequest::Study(..) | StudyRequest::Ride(..) | StudyRequest::Worth(..) => None,
        StudyRequest::Export(..) | StudyRequest::WriteTruck(_) | StudyRequest::WriteProject(_) => {
            Some(WorkTrouble::CannotExport)
        }
        StudyRequest::Measure(..)
        | StudyRequest::ReadTruck(_)
        | StudyRequest::WriteLink(..)
        | StudyRequest::ReadLink(_)
        | StudyRequest::ReadProject(..) => Some(WorkTrouble::CannotStart),
    });
    if let Some(trouble) = troubles.next_back() {
        state.trouble.set(Some(trouble));
    }
}

fn hear(state: State, heard: &Heard) {
    let Some((_, reply)) = decode::<StudyReply>(&heard.header()) else { return };
    let last = !matches!(reply, StudyReply::Ready | StudyReply::Studied(_) | StudyReply::Progress(_));
    state.study_work.update_value(|work| {
        work.ready = true;
        work.out = work.out.saturating_sub(u32::from(last));
    });
    match reply {
        StudyReply::Ready => send(state),
        StudyReply::Studied(study) => state.study.set(Some(Arc::new(study))),
        StudyReply::Progress(share) => state.studying.set(Some(share)),
        StudyReply::Sure(sureness) => {
            if sureness.is_some() {
                state.picture.update(|picture| *picture = picture.take().map(|it| with_bands(&it, heard)));
            }
            state.sureness.set(sureness.map(Arc::new));
            state.studying.set(None);
            worth::go_on(state);
        }
        StudyReply::Worth(entry, told) => worth::heard(state, entry, told),
        StudyReply::Ridden(slip, end) => ride::heard(state, slip, end, heard),
        StudyReply::Measured(result) => state.measured.set(Some(result)),
        StudyReply::Exported(text) => state.save_export(&text),
        StudyReply::TruckWritten(text) => state.save_truck(&text),
        StudyReply::TruckRead(Ok(truck)) => state.take_own_truck(*truck),
        StudyReply::TruckRead(Err(error)) => state.trouble.set(Some(WorkTrouble::TruckFile { error })),
        StudyReply::LinkWritten(text) => link::written(state, &text),
        StudyReply::LinkRead(read) => link::read(state, read),
        StudyReply::ProjectWritten(line) => project::written(state, line),
        StudyReply::ProjectRead(read) => project::read(state, read),
        StudyReply::Nothing => {
            state.studying.set(None);
            ride::give_up(state);
            worth::go_on(state);
        }
    }
}

fn with_bands(picture: &RoadPicture, heard: &Heard) -> Arc<RoadPicture> {
    let ends = |at: usize| Ends { low: heard.floats(at), high: heard.floats(at + 1) };
    Arc::new(RoadPicture { speed_band: Some(ends(0)), temperature_band: Some(ends(2)), ..picture.clone() })
}

impl Signals {
    /// Asks what the retarder gave.
    pub(crate) fn measure(&'static self, seen: Seen) {
        self.measured.set(None);
        measure(self, seen);
    }
}
