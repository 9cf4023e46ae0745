//! What must be asked before a road can be worked out: which track, and which order of files.

use crate::format;
use crate::state::{Leg, Lie, Meeting, State};
use crate::words::words;
use leptos::prelude::*;
use workers::message::CourseFacts;

/// The questions that are open.
pub(super) fn ask(state: State) -> AnyView {
    let track =
        move || state.files.choice.get().map(|choice| which_track(state, &choice.file, &choice.courses));
    let order = move || {
        let legs = state.files.legs.get();
        (!legs.is_empty()).then(|| which_order(state, &legs))
    };
    let meeting = move || state.files.meeting.get().map(|it| same_road(state, &it));
    view! { <div class="asks">{track}{meeting}{order}</div> }.into_any()
}

/// One button a track; what cannot be used is said and cannot be pressed.
fn which_track(state: State, file: &str, courses: &[CourseFacts]) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    let button = |(index, course): (usize, &CourseFacts)| {
        let length = format::distance(course.length_m, units);
        let text = w.course_choice(index + 1, &course.name, course.name.is_empty(), course.route, &length);
        let why = (!course.usable).then(|| view! { <span class="why">{w.course_unusable()}</span> });
        view! {
            <li>
                <button
                    type="button"
                    class="button"
                    data-testid=format!("track-{index}")
                    disabled=!course.usable
                    on:click=move |_| state.take_course(index)
                >
                    {text}
                </button>
                {why}
            </li>
        }
        .into_any()
    };
    let buttons: Vec<AnyView> = courses.iter().enumerate().map(button).collect();
    view! {
        <section class="ask card" data-testid="ask-track" aria-live="polite">
            <h2>{w.which_track(file, courses.len())}</h2>
            <ol class="answers">{buttons}</ol>
            <button type="button" class="button" data-testid="drop-choice" on:click=move |_| state.drop_choice()>
                {w.leave_it()}
            </button>
        </section>
    }
    .into_any()
}

/// The files in their order, each to be moved, turned round or left out.
fn which_order(state: State, legs: &[Leg]) -> AnyView {
    let w = words();
    let last = legs.len() - 1;
    let rows: Vec<AnyView> =
        legs.iter().enumerate().map(|(index, leg)| row(state, index, last, leg)).collect();
    view! {
        <section class="ask card" data-testid="ask-order" aria-live="polite">
            <h2>{w.which_order(legs.len())}</h2>
            {alike(state, legs)}
            <div class="buttons">
                <button type="button" class="button primary" data-testid="rank" on:click=move |_| state.rank()>
                    {w.rank(legs.len())}
                </button>
                <button type="button" class="button primary" data-testid="join" on:click=move |_| state.join()>
                    {w.join(legs.len())}
                </button>
                <button type="button" class="button" data-testid="leave-legs" on:click=move |_| state.files.legs.set(Vec::new())>
                    {w.leave_it()}
                </button>
            </div>
            <p>{w.which_order_sentence()}</p>
            <ol class="legs">{rows}</ol>
        </section>
    }
    .into_any()
}

/// That files in hand lie on each other, and the way to make one road of them.
fn alike(state: State, legs: &[Leg]) -> AnyView {
    let w = words();
    let names: Vec<String> = legs.iter().map(|leg| leg.file.name.clone()).collect();
    let told = move || {
        match state.lie()? {
        Lie::AllAlike => Some(
            view! {
                <div class="alike" data-testid="alike">
                    <p><strong>{w.same_question(names.len())}</strong>" "{w.same_sentence()}</p>
                    <button type="button" class="button" data-testid="combine" on:click=move |_| state.combine()>
                        {w.combine(names.len())}
                    </button>
                </div>
            }
            .into_any(),
        ),
        Lie::Two(first, second) => {
            let sentence = w.two_alike(names.get(first)?, names.get(second)?);
            Some(view! { <p class="alike" data-testid="two-alike">{sentence}</p> }.into_any())
        }
    }
    };
    told.into_any()
}

/// Of a file that lies on one that was there before: what they are to be.
fn same_road(state: State, meeting: &Meeting) -> AnyView {
    let w = words();
    let [new, before] = meeting.names();
    view! {
        <section class="ask card" data-testid="ask-same" aria-live="polite">
            <h2>{w.meets(&new, &before)}</h2>
            <p>{w.same_sentence()}</p>
            <div class="buttons">
                <button type="button" class="button" data-testid="combine" on:click=move |_| state.combine_meeting()>
                    {w.combine(meeting.recordings())}
                </button>
                <button type="button" class="button" data-testid="compare-both" on:click=move |_| state.compare_meeting()>
                    {w.compare_both()}
                </button>
                <button type="button" class="button" data-testid="join-both" on:click=move |_| state.join_meeting()>
                    {w.join_both()}
                </button>
                <button type="button" class="button" data-testid="leave-same" on:click=move |_| state.files.meeting.set(None)>
                    {w.leave_it()}
                </button>
            </div>
        </section>
    }
    .into_any()
}

fn row(state: State, index: usize, last: usize, leg: &Leg) -> AnyView {
    let w = words();
    let name = leg.file.name.clone();
    let act = move |change: fn(&mut Vec<Leg>, usize)| {
        move |_| {
            state.files.legs.update(|legs| {
                if index < legs.len() {
                    change(legs, index)
                }
            })
        }
    };
    let turned = leg.turned;
    view! {
        <li class="leg" data-testid=format!("leg-{index}")>
            <span class="name">{name.clone()}</span>
            <span class="buttons">
                <button type="button" class="button" aria-label=w.leg_up(&name) disabled=index == 0
                    on:click=act(|legs, index| legs.swap(index, index.saturating_sub(1)))>"↑"</button>
                <button type="button" class="button" aria-label=w.leg_down(&name) disabled=index == last
                    on:click=act(|legs, index| if index + 1 < legs.len() { legs.swap(index, index + 1) })>"↓"</button>
                <button type="button" class="button" data-testid=format!("turn-{index}")
                    aria-pressed=if turned { "true" } else { "false" }
                    on:click=act(|legs, index| legs[index].turned = !legs[index].turned)>{w.turn_leg()}</button>
                <button type="button" class="button" aria-label=w.leave_leg(&name)
                    on:click=act(|legs, index| { legs.remove(index); })>"×"</button>
            </span>
        </li>
    }
    .into_any()
}
