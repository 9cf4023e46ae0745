//! What follows from the result shown, and what the retarder gave.
//!
//! A moment after a result is shown the study worker is asked for all that follows from the plan. A new
//! result ends a study that is still at work.

use super::question::Told;
use super::result::Worked;
use super::signals::{Signals, Stage, State};
use super::study_worker;
use crate::browser::timer::Timer;
use crate::browser::worker::Heard;
use crate::chart::{Ends, RoadPicture};
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use solver::day::Day;
use solver::study::Seen;
use solver::truck::TruckSpec;
use std::sync::Arc;
use workers::message::study::{StudyReply, StudyRequest};

/// Quiet time after a result before it is studied, ms: whoever types on is not kept from it.
const PAUSE_MS: i32 = 400;

/// A new result is shown: what the last study said is not about it.
pub(super) fn forget(state: State) {
    state.studied.study.set(None);
    state.studied.sureness.set(None);
    state.studied.stage.set(Stage::Idle);
    state.studied.pause.set_value(None);
    study_worker::cancel_result(state);
}

/// Studies the result shown, in a moment; `through` is called when nothing more comes of it.
pub(super) fn follow(state: State, through: fn(State)) {
    let Some((truck, day)) = shown(state, |worked| !worked.plan.descents.is_empty()) else { return };
    state.studied.stage.set(Stage::AtWork(0.0));
    // A new result takes the pause with it: what is asked is about the one shown.
    let timer = Timer::after(PAUSE_MS, move || {
        let request = StudyRequest::Study(truck.clone(), day);
        study_worker::ask_about_road(state, request, move |told| hear(state, told, through));
    });
    state.studied.pause.set_value(timer);
}

fn hear(state: State, told: Told<'_>, through: fn(State)) {
    match told {
        Told::Reply(StudyReply::Studied(study), _) => state.studied.study.set(Some(Arc::new(study))),
        Told::Reply(StudyReply::Progress(share), _) => state.studied.stage.set(Stage::AtWork(share)),
        Told::Reply(StudyReply::Sure(sureness), heard) => {
            if sureness.is_some() {
                state
                    .shown
                    .picture
                    .update(|picture| *picture = picture.take().map(|it| with_bands(&it, heard)));
            }
            state.studied.sureness.set(sureness.map(Arc::new));
            state.studied.stage.set(Stage::Through);
            through(state);
        }
        // Without a study the answer stands as it is, and what is missing says so.
        Told::Reply(..) | Told::GivenUp => {
            state.studied.stage.set(Stage::Failed);
            through(state);
        }
    }
}

/// Truck and day of the result shown, where it is one of these.
pub(super) fn shown(state: State, which: impl Fn(&Worked) -> bool) -> Option<(TruckSpec, Day)> {
    state
        .shown
        .worked
        .with_untracked(|worked| worked.as_ref().filter(|it| which(it)).map(|it| (it.truck.clone(), it.day)))
}

fn with_bands(picture: &RoadPicture, heard: &Heard) -> Arc<RoadPicture> {
    let ends = |at: usize| Ends { low: heard.floats(at), high: heard.floats(at + 1) };
    Arc::new(RoadPicture { speed_band: Some(ends(0)), temperature_band: Some(ends(2)), ..picture.clone() })
}

impl Signals {
    /// Asks what the retarder gave.
    pub(crate) fn measure(&'static self, seen: Seen) {
        self.studied.measured.set(None);
        let entries = self.entered.entries.get_untracked();
        let request = StudyRequest::Measure(entries.truck, entries.day, seen);
        study_worker::ask(self, request, move |told| match told {
            Told::Reply(StudyReply::Measured(result), _) => self.studied.measured.set(Some(result)),
            // The truck entered is none: its own field says so.
            Told::Reply(..) => {}
            Told::GivenUp => self.talk.trouble.set(Some(WorkTrouble::CannotStart)),
        });
    }
}
