//! Truck and day: a drawer beside the picture, or over the page where there is no room beside it.
//!
//! What a driver is asked stands first, in four questions. All other entries are folded into rows below.

mod experts;
mod questions;
mod silhouette;

use super::chart::Look;
use super::later::Later;
use super::part::once;
use super::square::{gear_square, stage_square};
use super::verdict::chip;
use crate::browser::{self, dialog};
use crate::entries::EntryProblem;
use crate::format::{self, Units};
use crate::state::State;
use crate::words::words;
use ::words::down;
use leptos::prelude::*;
use solver::limits::Entry;
use solver::plan::{Choice, Descent, Verdict};

/// Its id. Not its key in the address: browsers take the keyboard from a link to an element that is hidden, and
/// the drawer could not give it back.
const DRAWER: &str = "truck-drawer";
const HEAD: &str = "truck-head";

/// That the answer is for an example, with the way to one's own truck; nothing once that was chosen.
pub(super) fn not_yours(state: State) -> AnyView {
    let w = words();
    let asked = Memo::new(move |_| {
        state.shown.worked.with(|worked| worked.as_ref().is_some_and(|it| state.is_not_yours(&it.truck)))
    });
    let line = move || {
        asked.get().then(|| {
            view! {
                <p class="not-yours" data-testid="not-yours">
                    <strong>{w.example_truck()}</strong>" "
                    <button type="button" class="button small" data-testid="enter-yours" on:click=move |_| state.open_drawer(None)>
                        {w.enter_yours()}
                    </button>
                </p>
            }
        })
    };
    line.into_any()
}

/// The drawer. It is made when it is opened for the first time, and then stays: what is typed is never lost.
pub(super) fn drawer(state: State, look: Look, later: Later) -> AnyView {
    let w = words();
    let open = state.entered.drawer;
    let made = once(move || open.get());
    Effect::new(move |_| {
        if open.get() {
            dialog::open(DRAWER, !browser::has_room_beside());
        } else {
            dialog::close(DRAWER);
        }
        state.show_worths("drawer", &[Entry::GrossMass], open.get());
    });
    Effect::new(move |_| {
        if open.get() {
            later.truck.ask();
        }
    });
    // Not before the field is there.
    Effect::new(move |_| {
        let sought = state.entered.sought;
        let Some(field) = sought.get() else { return };
        if !open.get() {
            sought.set(None);
        } else if later.truck.here().is_some() {
            sought.set(None);
            request_animation_frame(move || browser::go_to(&field));
        }
    });
    // What goes wrong is told on the page, which a drawer over all of it would hide.
    Effect::new(move |_| {
        if state.talk.trouble.with(Option::is_some) && !browser::has_room_beside() {
            open.set(false);
        }
    });
    let done = move |_| {
        // Nobody says that a truck is theirs without having seen it.
        if untrack(|| later.truck.here()).is_some() {
            state.confirm_truck();
        }
        open.set(false);
    };
    let content = move || made.get().then(|| later.truck.place(move |part| (part.content)(state)));
    let answer = move || made.get().then(|| later.truck.here().map(|part| (part.answer)(state, look)));
    view! {
        <dialog
            id=DRAWER
            class="drawer"
            data-testid="drawer"
            aria-labelledby=HEAD
            on:cancel=move |event: leptos::ev::Event| {
                event.prevent_default();
                open.set(false);
            }
            on:close=move |_| open.set(false)
        >
            <div class="drawer-head">
                <h2 id=HEAD tabindex="-1" autofocus>{w.drawer_head()}</h2>
                <button type="button" class="button" data-testid="usual-day" on:click=move |_| state.take_usual_day()>
                    {w.usual_day()}
                </button>
                <button type="button" class="button close" data-testid="close-drawer" aria-label=w.close() title=w.close() on:click=move |_| open.set(false)>
                    <span aria-hidden="true">"✕"</span>
                </button>
            </div>
            <div class="drawer-body">{content}</div>
            <div class="drawer-foot">
                {answer}
                <button type="button" class="button primary" data-testid="done" on:click=done>{w.done()}</button>
            </div>
        </dialog>
    }
    .into_any()
}

pub(super) fn content(state: State) -> AnyView {
    let w = words();
    let together = move || {
        let problem = state.entered.entries.with(|entries| entries.problem());
        problem.map(|problem| w.problem(EntryProblem::Truck(problem), "", state.units.get()))
    };
    view! {
        {questions::questions(state)}
        <p class="problem" role="status" id="truck-problem" tabindex="-1" data-testid="truck-problem">{together}</p>
        {experts::experts(state)}
        <p class="about">{w.kept_here()}</p>
    }
    .into_any()
}

/// The answer for the descent that is looked at, or for the hardest one, while entries change.
pub(super) fn answer(state: State, look: Look) -> AnyView {
    let w = words();
    let stale = state.shown.stale;
    let told = move || {
        let units = state.units.get();
        let chosen = state.shown.chosen_descent.get();
        state.shown.worked.get().map(|worked| match worked.in_hand(chosen) {
            Some(descent) => of_descent(look, descent, units),
            None => {
                view! { <span class="which">{w.descents_head(worked.plan.descents.len())}</span> }.into_any()
            }
        })
    };
    let old = move || stale.get().then(|| view! { <span class="tag">{w.old_answer()}</span> });
    view! {
        <div class="drawer-answer" class:stale=move || stale.get() role="status" data-testid="drawer-answer">
            {told}
            {old}
        </div>
    }
    .into_any()
}

/// Gear, stage and speed of its slowest leg, and those of a heavier truck.
fn of_descent(look: Look, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let how = match &descent.choice {
        Choice::Held(advice) => {
            let (gear, stage, speed) = down::slowest(descent, advice);
            let (gear_name, stage_name) = (w.gear(gear), w.stage(stage));
            view! {
                <span class="unseen">{gear_name}", "{stage_name}", "</span>
                <span class="squares" aria-hidden="true">
                    {gear_square(look, gear)}
                    {stage_square(look, stage, descent.from, descent.to)}
                </span>
                <b class="hold">{format::hold_speed(speed.0, units)}</b>
            }
            .into_any()
        }
        Choice::NoSafeSpeed(_) => ().into_any(),
    };
    let verdict = (descent.choice.verdict() != Verdict::RetarderHolds).then(|| chip(&descent.choice));
    let heavier = match descent.heavier.as_ref() {
        None => w.mass_out_of_range().to_owned(),
        Some(Choice::NoSafeSpeed(_)) => w.no_safe_speed().to_owned(),
        Some(Choice::Held(it)) => format!("{}, {}", w.gear(it.gear), format::hold_speed(it.speed.0, units)),
    };
    view! {
        <span class="which">{w.descent(descent.number)}</span>
        {how}
        {verdict}
        <span class="heavier">{w.somewhat_heavier()}{w.colon()}{heavier}</span>
    }
    .into_any()
}
