//! The page's state: signals, and what the person does to them.
//!
//! `work` is the one place that asks the worker, `study_worker` the one that asks the study worker. Views
//! read signals and call the functions here. What has no consequence they set themselves: a message put
//! away, a place looked at, the order of files before they are joined.
//!
//! No two files here need each other. Below are data ([`asked`], [`result`], [`things`] and their like),
//! then the signals, then the conversations, then what asks and shows; who is told what comes of a question
//! is named by whoever asks.

mod alike;
mod asked;
mod beside;
mod built_in;
mod comparing;
mod entered;
mod entering;
mod export;
mod fields;
mod former;
mod keep;
mod kept;
mod kept_roads;
mod leave;
mod lie;
mod link;
mod markers;
mod opening;
mod preferences;
mod project;
mod question;
mod queue;
mod rank;
mod result;
mod returning;
mod ride;
mod road_worker;
mod roadside;
mod show;
mod signals;
mod standing;
mod study;
mod study_worker;
mod things;
mod truck;
mod trucks;
mod views;
mod wants;
mod work;
mod worth;
mod yours;

pub(crate) use asked::{Leg, Origin};

pub(crate) use lie::{Lie, Meeting};
pub(crate) use result::Worked;
pub(crate) use signals::{Carried, Ranked, Ride, Stage, State, View, Ways, WorthTold};
pub(crate) use things::{End, MOST_THINGS, Thing, Things};
pub(crate) use trucks::Trucks;

use crate::browser::{focus, leaving, offline, theme};
use leptos::prelude::*;
use signals::Signals;
use standing::Followers;
use std::rc::Rc;

/// Makes the state from what this machine remembers, starts the worker and fetches the demo.
pub(crate) fn start() -> State {
    // Leaked on purpose: signals that callbacks of timer and worker read must never go away.
    let state: State = Box::leak(Box::new(Signals::new(
        kept::recall(),
        kept::gloves(),
        kept::rates(),
        kept::example_is_mine(),
    )));
    theme::show(state.settings.theme.get_untracked());
    theme::show_gloves(state.settings.gloves.get_untracked());
    theme::watch(move || theme::show(state.settings.theme.get_untracked()));
    offline::watch(move |stored| state.settings.stored.set(stored));
    focus::watch(move || state.leave());
    leaving::watch(move || keep::keep_now(state));
    let followers = Followers {
        shown: Rc::new(move |before, asked, worked| show::show(state, before, asked, worked)),
        road: Rc::new(move |facts, bytes| study_worker::take_road(state, facts, bytes)),
    };
    work::start(state, followers);
    comparing::start(state);
    alike::start(state);
    returning::open(state);
    link::look(state);
    views::follow(state);
    state
}
