//! What is wanted of the road at hand: its direction, its course, a part of it, what lies on it.

use super::signals::State;
use super::standing::back_to_shown;
use super::work::work_out;
use leptos::prelude::*;
use solver::road::Roadside;
use workers::message::RoadChoice;

/// Wants the road in the other direction.
pub(super) fn turn_around(state: State) {
    state.talk.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.road.reversed = !aim.road.reversed;
        }
    });
    work_out(state);
}

/// Wants another track of the file.
pub(super) fn take_course(state: State, course: usize) {
    state.files.choice.set(None);
    state.talk.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.road = RoadChoice::course(Some(course));
        }
    });
    work_out(state);
}

/// Wants a part of the road, by grid points of the road as recorded; `None`: all of it.
pub(super) fn take_part(state: State, part: Option<(usize, usize)>) {
    state.talk.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.road.part = part;
        }
    });
    work_out(state);
}

/// Wants these places and limits on the road; asking for it is left to the caller.
pub(super) fn take_roadside(state: State, roadside: Roadside) {
    state.talk.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.road.roadside = Some(roadside);
        }
    });
}

/// Wants once more what a worker stopped on, or what is wanted now.
pub(super) fn try_again(state: State) {
    state.talk.work.update_value(|work| {
        if let Some(fatal) = work.fatal.take() {
            work.aim = Some(fatal.aim());
        }
    });
    work_out(state);
}

/// Leaves the file whose tracks were asked about; what is shown stays.
pub(super) fn drop_choice(state: State) {
    state.files.choice.set(None);
    state.talk.work.update_value(back_to_shown);
    work_out(state);
}
