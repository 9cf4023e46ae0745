//! The screen of roads: teaching roads with their notes; what happens is shown when it is asked for.

use super::desk::{Class, LEAF};
use crate::browser;
use crate::lesson::Lesson;
use crate::screen::Screen;
use crate::state::Origin;
use crate::view;
use crate::words::words;
use leptos::prelude::*;

/// The screen of roads.
pub(super) fn view(class: Class) -> AnyView {
    let c = words();
    let state = class.state;
    let loaded = Memo::new(move |_| {
        state.shown.worked.with(|worked| match worked.as_ref()?.origin {
            Origin::Lesson(lesson) => Some(lesson),
            Origin::Demo | Origin::Given => None,
        })
    });
    let name = move || state.shown.worked.with(|worked| worked.as_ref().map(|it| it.road.name.clone()));
    let choices = Lesson::ALL.map(|lesson| {
        view! {
            <button
                type="button"
                data-testid=lesson.file()
                aria-pressed=move || if loaded.get() == Some(lesson) { "true" } else { "false" }
                on:click=move |_| {
                    class.told.set(false);
                    class.clock.step(f64::NEG_INFINITY);
                    state.open_lesson(lesson);
                }
            >
                {c.lesson(lesson).name}
            </button>
        }
    });
    view! {
        <section class="roads" data-testid="roads-screen">
            <div class="slips" role="group" aria-label=c.lessons_head()>{choices}</div>
            <p class="road-now" data-testid="road-now">
                <b>{name}</b>
                <button type="button" data-testid="turn" on:click=move |_| state.reverse()>{words().reverse()}</button>
                {view::file_field(state)}
                // Beside a teaching road there is no room for it; the button is there.
                {move || loaded.get().is_none().then(|| view! { <span class="or-drop" data-testid="or-drop">{words().or_drop()}</span> })}
            </p>
            {move || loaded.get().map(|lesson| note(class, lesson))}
            {words().unread().map(|unread| view! { <p class="class-caution unread" data-testid="unread">{unread}</p> })}
            {browser::named("standalone-file").map(|file| view! {
                <p class="save-class">
                    <a href=file download="steadygrade-class.html" data-testid="save-class">{words().save_page()}</a>
                </p>
            })}
        </section>
    }
    .into_any()
}

fn note(class: Class, lesson: Lesson) -> AnyView {
    let c = words();
    let note = c.lesson(lesson);
    let told = move || {
        class.told.get().then(|| {
            view! {
                <div class="told"><dt>{c.lesson_happens_label()}</dt><dd data-testid="happens">{note.happens}</dd></div>
                <p class="class-caution">{c.lessons_said_for()}</p>
            }
        })
    };
    // What happens takes the place of what stood before it: there is room for one.
    let before = move || {
        (!class.told.get()).then(|| {
            view! {
                <div><dt>{c.lesson_shows_label()}</dt><dd>{note.shows}</dd></div>
                <div><dt>{c.lesson_believed_label()}</dt><dd>{note.believed}</dd></div>
            }
        })
    };
    let asked = move || {
        (!class.told.get()).then(|| {
            view! {
                <button type="button" data-testid="tell" on:click=move |_| class.told.set(true)>{c.lesson_happens_label()}</button>
                <button type="button" on:click=move |_| class.screen.set(Screen::Forces)>{c.screen(Screen::Forces)}</button>
            }
        })
    };
    view! {
        // What may be longer than its room must be reached by keys where it stands.
        <div class="leaf" id=LEAF tabindex="0" role="region" aria-label=c.screen(Screen::Roads)>
            <dl class="lesson" data-testid="lesson">
                {before}
                <div><dt>{c.lesson_question_label()}</dt><dd>{note.question}</dd></div>
                {told}
            </dl>
            <p class="class-caution">{c.lessons_invented()}</p>
        </div>
        <p class="ride-controls">{asked}</p>
    }
    .into_any()
}
