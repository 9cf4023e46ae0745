//! Rides along the plan shown: asked for one by one, kept until another result is shown.

use super::question::Told;
use super::signals::{Ride, Signals, State};
use super::{study, study_worker};
use crate::browser::worker::Heard;
use leptos::prelude::*;
use solver::study::{RideEnd, Slip};
use std::sync::Arc;
use workers::message::study::{StudyReply, StudyRequest, ride_lanes};

/// Forgets all rides: a new result is shown.
pub(super) fn forget(state: State) {
    if state.studied.rides.with_untracked(|rides| !rides.is_empty()) {
        state.studied.rides.set(Vec::new());
    }
}

/// No answer will come; whoever wants the ride still may ask again.
fn give_up(state: State, slip: Slip) {
    state.studied.rides.update(|rides| rides.retain(|it| *it != (slip, Ride::Asked)));
}

/// A ride came back.
fn heard(state: State, slip: Slip, end: Option<RideEnd>, heard: &Heard) {
    let ride = match end {
        None => Ride::Cannot,
        Some(end) => {
            let lanes = ride_lanes(|at| heard.floats(at).to_vec(), |at| heard.bytes(at).to_vec());
            Ride::Driven(end, Arc::new(lanes))
        }
    };
    state.studied.rides.update(|rides| {
        match rides.iter_mut().find(|(other, _)| *other == slip) {
            Some(asked) => asked.1 = ride,
            // Given up in the meantime: it came after all.
            None => rides.push((slip, ride)),
        }
    });
}

impl Signals {
    /// Asks for a ride along the plan shown, unless it is there or asked for already. What comes of
    /// it stands in `rides`.
    pub(crate) fn want_ride(&'static self, slip: Slip) {
        let known = self.studied.rides.with_untracked(|rides| rides.iter().any(|(other, _)| *other == slip));
        let Some((truck, day)) = study::shown(self, |_| !known) else { return };
        self.studied.rides.update(|rides| rides.push((slip, Ride::Asked)));
        study_worker::ask_about_road(self, StudyRequest::Ride(truck, day, slip), move |told| match told {
            Told::Reply(StudyReply::Ridden(_, end), arrays) => heard(self, slip, end, arrays),
            Told::Reply(..) | Told::GivenUp => give_up(self, slip),
        });
    }
}
