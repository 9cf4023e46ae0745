//! What is wanted of the road at hand: its direction, its course, a part of it, what lies on it.

use super::{back_to_shown, work_out};
use crate::state::State;
use crate::state::asked::Aim;
use leptos::prelude::*;
use solver::road::Roadside;

/// Wants the road the other way round.
pub(in crate::state) fn turn_around(state: State) {
    state.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.reversed = !aim.reversed;
        }
    });
    work_out(state);
}

/// Wants another track of the file.
pub(in crate::state) fn take_course(state: State, course: usize) {
    state.choice.set(None);
    state.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            *aim = Aim::new(aim.source.clone(), Some(course));
        }
    });
    work_out(state);
}

/// Wants a part of the road, by grid points of the road as recorded; `None`: all of it.
pub(in crate::state) fn take_part(state: State, part: Option<(usize, usize)>) {
    state.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.part = part;
        }
    });
    work_out(state);
}

/// Wants these places and limits on the road; asking for it is left to the caller.
pub(in crate::state) fn take_roadside(state: State, roadside: Roadside) {
    state.work.update_value(|work| {
        if let Some(aim) = &mut work.aim {
            aim.roadside = Some(roadside);
        }
    });
}

/// Wants once more what a worker stopped on, or what is wanted now.
pub(in crate::state) fn try_again(state: State) {
    state.work.update_value(|work| {
        if let Some(fatal) = work.fatal.take() {
            work.aim = Some(fatal.aim());
        }
    });
    work_out(state);
}

/// Leaves the file whose tracks were asked about; what is shown stays.
pub(in crate::state) fn drop_choice(state: State) {
    state.choice.set(None);
    state.work.update_value(back_to_shown);
    work_out(state);
}
