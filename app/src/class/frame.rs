//! The frame of the class view: screens, keys, notes, caution.

use super::desk::{Class, LEAF, Printed, start};
use super::exercises;
use super::{forces, pair, roads, run};
use crate::browser::{self, file};
use crate::screen::Screen;
use crate::view;
use crate::words::words;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The whole class view.
pub(crate) fn page() -> impl IntoView {
    let class = start();
    let (c, state) = (words(), class.state);
    window_event_listener(leptos::ev::keydown, move |event| press(class, &event));
    let drop = move |event: leptos::ev::DragEvent| {
        event.prevent_default();
        state.open(file::dropped(&event));
    };
    view! {
        <div
            class="class"
            class:on-paper=move || class.screen.get() == Screen::Exercises && class.printed.get() != Printed::Screen
            data-testid="drop-zone"
            on:dragover=move |event: leptos::ev::DragEvent| event.prevent_default()
            on:drop=drop
        >
            <header class="class-head">
                <h1 data-testid="idea">{move || c.idea(class.screen.get())}</h1>
                <nav aria-label=c.screens()>
                    {Screen::ALL.map(|screen| view! {
                        <button
                            type="button"
                            data-testid=screen.key()
                            aria-current=move || (class.screen.get() == screen).then_some("page")
                            on:click=move |_| class.screen.set(screen)
                        >
                            {c.screen(screen)}
                        </button>
                    })}
                </nav>
                <div class="class-tools">
                    <button
                        type="button"
                        data-testid="notes"
                        aria-expanded=move || if class.notes.get() { "true" } else { "false" }
                        on:click=move |_| class.notes.update(|shown| *shown = !*shown)
                    >
                        {c.show_notes()}
                    </button>
                    <button type="button" data-testid="print" on:click=move |_| {
                        class.printed.set(Printed::Screen);
                        browser::print_next();
                    }>{c.print_screen()}</button>
                    {browser::named("road-page").map(|page| view! { <a href=page data-testid="road-page">{c.to_road_page()}</a> })}
                </div>
            </header>
            {view::of_class(state)}
            {made_for(class)}
            <div class="class-stage">
                <main class="screen" id="screen" tabindex="-1">{move || screen(class)}</main>
                {notes(class)}
            </div>
            <footer class="class-foot">
                <p class="class-caution" data-testid="caution">{c.class_caution()}</p>
            </footer>
        </div>
    }
}

fn screen(class: Class) -> AnyView {
    match class.screen.get() {
        Screen::Forces => forces::view(class),
        Screen::Run => run::view(class),
        Screen::Pair => pair::view(class),
        Screen::Roads => roads::view(class),
        Screen::Exercises => exercises::view(class),
    }
}

/// On paper only: the road, the truck and the day, without which a sheet is of no road at all.
fn made_for(class: Class) -> AnyView {
    let state = class.state;
    let facts = move || {
        let units = state.units.get();
        state.shown.worked.with(|worked| worked.as_ref().map(|it| view::made_for(it, units)))
    };
    view! { <p class="class-made-for" data-testid="made-for">{facts}</p> }.into_any()
}

/// What the person in front may say; the class reads it only where it is shown.
fn notes(class: Class) -> AnyView {
    let c = words();
    let strip = move || {
        class.notes.get().then(|| {
            let said = c.notes(class.screen.get()).into_iter().map(|note| view! { <li>{note}</li> });
            view! {
                <aside class="class-notes" data-testid="notes-strip">
                    <ul>{said.collect_view()}</ul>
                    <p>{c.keys()}</p>
                </aside>
            }
        })
    };
    strip.into_any()
}

/// Keys that lead, also those of a remote in the hand. A field that has the keyboard keeps its own,
/// but for those of a remote: a slider goes by arrows too.
fn press(class: Class, event: &KeyboardEvent) {
    let of_remote = matches!(event.key().as_str(), "PageDown" | "PageUp");
    if event.ctrl_key()
        || event.alt_key()
        || event.meta_key()
        || (browser::is_typing(event) && !(of_remote && browser::is_sliding(event)))
    {
        return;
    }
    let on_run = matches!(class.screen.get_untracked(), Screen::Run | Screen::Pair);
    let done = match event.key().as_str() {
        "PageDown" => turn(class, 1),
        "PageUp" => turn(class, -1),
        " " if on_run && !browser::is_pressing(event) => {
            class.clock.press();
            true
        }
        "." if on_run => {
            class.clock.press();
            true
        }
        "ArrowRight" if on_run => step(class, 1.0),
        "ArrowLeft" if on_run => step(class, -1.0),
        "ArrowUp" if on_run => faster(class, 1),
        "ArrowDown" if on_run => faster(class, -1),
        "Home" if on_run => step(class, f64::NEG_INFINITY),
        "n" | "N" => {
            class.notes.update(|shown| *shown = !*shown);
            true
        }
        _ => false,
    };
    if done {
        event.prevent_default();
    }
}

/// Text that is longer than the screen is read to its end first, or back to its beginning.
fn turn(class: Class, by: isize) -> bool {
    if browser::leaf(LEAF, by > 0) {
        return true;
    }
    class.screen.update(|screen| *screen = screen.moved(by));
    browser::focus("screen".to_owned());
    true
}

fn step(class: Class, strides: f64) -> bool {
    class.clock.step(strides * class.clock.stride());
    true
}

fn faster(class: Class, by: isize) -> bool {
    class.clock.faster(by);
    true
}
