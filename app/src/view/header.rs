//! Name, units, theme, file; and below them the road with its direction.

use super::choice::choice;
use super::result::of_result;
use crate::browser::theme::Theme;
use crate::browser::{self, file};
use crate::format::{self, Units};
use crate::state::{Origin, State, Worked};
use crate::words::words;
use leptos::prelude::*;
use std::sync::Arc;

/// The head of the page.
pub(super) fn header(state: State) -> AnyView {
    let w = words();
    let units = vec![(Units::Metric, "metric", w.metric()), (Units::Imperial, "imperial", w.imperial())];
    let themes = vec![
        (Theme::Light, "light", w.light()),
        (Theme::Night, "night", w.night()),
        (Theme::System, "system", w.system()),
    ];
    let targets = vec![(false, "usual", w.usual_targets()), (true, "large", w.large_targets())];
    view! {
        <header class="top">
            <h1 title=w.purpose()>"Steadygrade"</h1>
            {file_field(state)}
            <div class="controls">
                {choice(w.units(), "units", units, move || state.units.get(), move |it| state.set_units(it))}
                <div class="targets">
                    {choice(w.targets(), "targets", targets, move || state.settings.gloves.get(), move |it| state.set_gloves(it))}
                </div>
                {choice(w.theme(), "theme", themes, move || state.settings.theme.get(), move |it| state.set_theme(it))}
            </div>
            <nav aria-label=w.sections()>
                <a href="#road">{w.road_section()}</a>
                <a href="#descents">{w.descents_section()}</a>
                <a href="#two">{w.two_head()}</a>
                <a href="#places">{w.places_nav()}</a>
                <a href="#card">{w.card_head()}</a>
                <a href="#evidence">{w.evidence_head()}</a>
                {browser::named("class-page").map(|page| view! { <a href=page data-testid="class-page">{w.to_class()}</a> })}
            </nav>
        </header>
    }
    .into_any()
}

/// The button for a file of one’s own.
pub(super) fn file_field(state: State) -> impl IntoView {
    let w = words();
    view! {
        <label class="file button primary">
            <input
                type="file"
                multiple
                accept=".gpx,.xml,.steadygrade,application/gpx+xml,application/xml,text/xml"
                data-testid="file-input"
                on:change=move |event| {
                    let files = file::chosen(&event);
                    if !files.is_empty() {
                        state.open(files);
                    }
                }
            />
            {w.choose_file()}
        </label>
    }
}

/// The road: name, length, heights at its ends, direction.
pub(super) fn road_bar(state: State) -> AnyView {
    let bar = of_result(state, move |worked| bar(state, &worked));
    view! { <div class="road-bar">{bar}</div> }.into_any()
}

fn bar(state: State, worked: &Arc<Worked>) -> impl IntoView + use<> {
    let w = words();
    let units = state.units.get_untracked();
    let (start_m, end_m) = worked.ends_m();
    let name = worked.name().to_owned();
    let reversed = worked.road.reversed;
    let demo = worked.origin == Origin::Demo;
    view! {
        <div class="road-name">
            <p class="name" data-testid="road-name">
                {name}
                {demo.then(|| view! { <span class="tag">{w.demo_mark()}</span> })}
                {reversed.then(|| view! { <span class="tag">{w.reversed_mark()}</span> })}
            </p>
            {courses(state, worked)}
            {combined(state, worked)}
            {part(state, worked)}
            {demo.then(|| view! { <p class="demo-sentence" data-testid="demo">{w.demo_sentence()}</p> })}
        </div>
        <p class="ends" data-testid="road-ends">
            <span class="length">{format::distance(worked.road.length_m, units)}</span>
            <span aria-hidden="true">{w.ends(start_m, end_m, units)}</span>
            <span class="unseen">{w.ends_spoken(start_m, end_m, units)}</span>
        </p>
        <button
            type="button"
            class="button reverse"
            data-testid="reverse"
            aria-pressed=if reversed { "true" } else { "false" }
            on:click=move |_| state.reverse()
        >
            <span class="arrows" aria-hidden="true">"⇄"</span>
            {w.reverse()}
        </button>
    }
}

/// Of a road of several recordings: of which, and the way to take them apart.
fn combined(state: State, worked: &Arc<Worked>) -> Option<AnyView> {
    let w = words();
    let view = view! {
        <p class="part" data-testid="combined">
            {w.combined(worked.recordings, &worked.file)}
            <button type="button" class="button" data-testid="take-apart" on:click=move |_| state.take_apart()>
                {w.take_apart()}
            </button>
        </p>
    };
    (worked.recordings > 1).then(|| view.into_any())
}

/// Of a part: which, and the way back to the whole road.
fn part(state: State, worked: &Arc<Worked>) -> Option<AnyView> {
    let w = words();
    let units = state.units.get_untracked();
    let (from, to) = worked.road.part?;
    let sentence = w.part_shown(worked.place_m(from), worked.place_m(to), units);
    let view = view! {
        <p class="part" data-testid="part">
            {sentence}
            <button type="button" class="button" data-testid="whole-road" on:click=move |_| state.take_all()>
                {w.whole_road()}
            </button>
        </p>
    };
    Some(view.into_any())
}

fn courses(state: State, worked: &Arc<Worked>) -> Option<AnyView> {
    let courses = &worked.road.courses;
    if courses.len() < 2 {
        return None;
    }
    let w = words();
    let units = state.units.get_untracked();
    let shown = worked.road.course;
    let options = courses.iter().enumerate().map(|(index, course)| {
        let length = format::distance(course.length_m, units);
        let text = w.course_choice(index + 1, &course.name, course.name.is_empty(), course.route, &length);
        view! { <option value=index.to_string() selected=index == shown>{text}</option> }
    });
    let choose = move |event| {
        if let Ok(course) = event_target_value(&event).parse::<usize>() {
            state.take_course(course);
        }
    };
    let select = view! {
        <label class="course">
            {w.course()}
            <select data-testid="course" on:change=choose>{options.collect_view()}</select>
        </label>
    };
    Some(select.into_any())
}
