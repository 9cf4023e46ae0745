//! Showing an answer: who else must know, and in which order the page changes.

use super::asked::Asked;
use super::result::Worked;
use super::signals::State;
use super::{alike, kept_roads, ride, roadside, study, work, worth};
use crate::browser::offline;
use crate::browser::timer::Timer;
use leptos::prelude::*;
use std::sync::Arc;

/// Shows an answer. Another road begins with its hardest descent in hand, with its own places, and is kept.
pub(super) fn show(state: State, before: Option<Asked>, asked: Asked, worked: Worked) {
    let same = |shown: &Arc<Worked>| Arc::ptr_eq(&shown.picture.heights_m, &worked.picture.heights_m);
    if !state.shown.worked.with_untracked(|shown| shown.as_ref().is_some_and(same)) {
        state.shown.chosen_descent.set(None);
    }
    let course = |asked: &Asked| (asked.source.number, asked.task.road.course);
    let another = before.as_ref().map(course) != Some(course(&asked));
    if another {
        // A marker is that of its road; a project brings its own.
        if before.is_some() && asked.task.road.roadside.is_none() {
            state.roadside.marker_text.set(String::new());
            state.roadside.counts_down.set(false);
        }
        let carried = asked.source.carried.is_some();
        roadside::follow(state, asked.task.road.roadside.as_ref(), carried, &worked);
    } else if let Some(shown) = state.shown.worked.get_untracked() {
        state.move_marker(&shown, &worked);
    }
    if before.is_none_or(|before| !before.is_same_road(&asked)) {
        kept_roads::keep(&asked);
    }
    in_turn(state, asked, another, Arc::new(worked));
}

/// The picture now, the texts and the list of descents each in a task of its own: a long road
/// has a hundred rows, and the page must stay live in between.
fn in_turn(state: State, asked: Asked, another: bool, worked: Arc<Worked>) {
    forget(state);
    state.shown.picture.set(Some(worked.picture.clone()));
    later(state, move || {
        // What was asked about the one before in the meantime is not about this one either.
        forget(state);
        state.shown.asked.set_value(Some(asked.clone()));
        let in_hand = worked.in_hand(state.shown.chosen_descent.get_untracked());
        state.shown.chosen_descent.set(in_hand.map(|it| it.number));
        state.shown.worked.set(Some(worked.clone()));
        let (worked, asked) = (worked.clone(), asked.clone());
        later(state, move || {
            state.shown.listed.set(Some(worked.clone()));
            work::next(state);
            study::follow(state, worth::go_on);
            if another {
                alike::shown(state, &asked.source, asked.task.road.course);
            }
            // Not earlier: on a slow line it would keep the first answer waiting.
            offline::keep();
        });
    });
}

/// What was worked out about the result before is not about the new one.
fn forget(state: State) {
    study::forget(state);
    ride::forget(state);
    worth::forget(state);
}

/// In the next task; now where the browser has no timers.
fn later(state: State, then: impl Fn() + Clone + 'static) {
    match Timer::after(0, then.clone()) {
        Some(timer) => state.shown.rest.set_value(Some(timer)),
        None => then(),
    }
}
