//! Rides along the plan shown: asked for one by one, kept until another result is shown.

use super::{Signals, State, study};
use crate::browser::worker::Heard;
use leptos::prelude::*;
use solver::study::{RideEnd, RideLanes, Slip};
use std::sync::Arc;
use workers::message::study::{StudyRequest, ride_lanes};

/// A ride that was asked for.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Ride {
    /// Not answered yet.
    Asked,
    /// It cannot be driven.
    Cannot,
    /// How it ends, and its lanes.
    Driven(RideEnd, Arc<RideLanes>),
}

/// The rides that were asked for, in that order.
pub(crate) type Rides = Vec<(Slip, Ride)>;

/// A new result is shown: no ride is about it.
pub(super) fn forget(state: State) {
    if state.rides.with_untracked(|rides| !rides.is_empty()) {
        state.rides.set(Vec::new());
    }
}

/// No answer will come; whoever wants a ride still may ask again.
pub(super) fn give_up(state: State) {
    state.rides.update(|rides| rides.retain(|(_, ride)| *ride != Ride::Asked));
}

/// A ride came back.
pub(super) fn heard(state: State, slip: Slip, end: Option<RideEnd>, heard: &Heard) {
    let ride = match end {
        None => Ride::Cannot,
        Some(end) => {
            let lanes = ride_lanes(|at| heard.floats(at).to_vec(), |at| heard.bytes(at).to_vec());
            Ride::Driven(end, Arc::new(lanes))
        }
    };
    state.rides.update(|rides| {
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
        let known = self.rides.with_untracked(|rides| rides.iter().any(|(other, _)| *other == slip));
        let Some((truck, day)) = study::shown(self, |_| !known) else { return };
        self.rides.update(|rides| rides.push((slip, Ride::Asked)));
        study::ask(self, StudyRequest::Ride(truck, day, slip));
    }
}
