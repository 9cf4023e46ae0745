//! Rides that a screen shows, asked for when they are wanted.

use super::desk::Class;
use super::moment::{Moment, moment};
use crate::state::Ride;
use leptos::prelude::*;
use solver::study::{RideEnd, RideLanes, Slip, part_at};
use std::sync::Arc;

/// A ride with what is needed to show it.
#[derive(Clone, PartialEq)]
pub(super) struct Ridden {
    /// How the ride ends.
    pub(super) end: RideEnd,
    /// The lanes of the ride.
    pub(super) lanes: Arc<RideLanes>,
    /// Distance between two points of the lanes, m.
    pub(super) step_m: f64,
}

impl Ridden {
    /// The moment of the ride at a time, s.
    pub(super) fn at(&self, time: f64) -> Option<Moment> {
        moment(&self.lanes, self.step_m, time)
    }

    /// When the truck is at a distance from the start, s.
    pub(super) fn time_at(&self, at_m: f64) -> Option<f64> {
        let last = self.lanes.points().checked_sub(1)?;
        let point = ((at_m / self.step_m).round().max(0.0) as usize).min(last);
        self.lanes.time.get(point).map(|it| f64::from(*it))
    }
}

/// What is there of the rides that a screen wants.
#[derive(Clone, PartialEq)]
pub(super) enum Wanted {
    /// Not all are driven yet.
    Waiting,
    /// One of them cannot be driven.
    Cannot,
    /// All of them, in the order asked for.
    There(Vec<Ridden>),
}

impl Wanted {
    /// The rides; none while they are not all there.
    pub(super) fn rides(&self) -> &[Ridden] {
        match self {
            Self::There(rides) => rides,
            Self::Waiting | Self::Cannot => &[],
        }
    }

    /// Where two rides begin to differ, m from the start.
    pub(super) fn parted_m(&self) -> Option<f64> {
        let [right, wrong] = self.rides() else { return None };
        part_at(&right.lanes, &wrong.lanes).map(|at| at as f64 * right.step_m)
    }
}

/// These rides along the plan shown. They are asked for once the plan is studied: before that the
/// worker would have to end what it is at.
pub(super) fn wanted(class: Class, slips: &'static [Slip]) -> Memo<Wanted> {
    let state = class.state;
    Effect::new(move |_| {
        let known =
            state.studied.rides.with(|rides| slips.iter().all(|slip| rides.iter().any(|(it, _)| it == slip)));
        let quiet = !state.studied.stage.get().is_at_work();
        if !known && state.shown.worked.with(Option::is_some) && quiet {
            slips.iter().for_each(|slip| state.want_ride(*slip));
        }
    });
    Memo::new(move |_| {
        let step_m = state.shown.worked.with(|worked| worked.as_ref().map_or(1.0, |it| it.road.step_m));
        state.studied.rides.with(|rides| {
            let mut found = Vec::new();
            for slip in slips {
                match rides.iter().find(|(it, _)| it == slip).map(|(_, ride)| ride) {
                    Some(Ride::Driven(end, lanes)) => {
                        found.push(Ridden { end: *end, lanes: lanes.clone(), step_m });
                    }
                    Some(Ride::Cannot) => return Wanted::Cannot,
                    Some(Ride::Asked) | None => return Wanted::Waiting,
                }
            }
            Wanted::There(found)
        })
    })
}
