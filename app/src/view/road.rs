//! The panel of the road: another one, the parts of this one, how good its heights are, what was repaired.

use super::later::Later;
use super::part::once;
use super::result::of_result;
use crate::browser::{self, file};
use crate::format::{self, Units};
use crate::state::{Origin, State, Worked};
use crate::words::words;
use leptos::prelude::*;
use solver::road::{Finding, FindingKind};
use std::sync::Arc;

/// The panel.
pub(super) fn panel(state: State, later: Later) -> AnyView {
    let w = words();
    let open = state.views.road;
    let made = once(move || open.get() || state.shown.listed.with(Option::is_some));
    let content = move || made.get().then(|| later.views.place(move |part| (part.road)(state)));
    view! {
        <section
            class="panel-over road-panel"
            id="road-panel"
            aria-label=w.road_panel()
            data-testid="road-panel"
            hidden=move || !open.get()
        >
            <div class="panel-head">
                <h2>{w.road_panel()}</h2>
                <button type="button" class="button small" data-testid="close-road" on:click=move |_| open.set(false)>
                    {w.close()}
                </button>
            </div>
            {others(state)}
            {content}
            <p class="about">{w.stays_here()}</p>
        </section>
    }
    .into_any()
}

/// Ways to another road.
pub(super) fn others(state: State) -> AnyView {
    let w = words();
    let demo = move |_| {
        state.views.road.set(false);
        state.open_demo();
    };
    view! {
        <div class="buttons">
            {file_field(state)}
            <button type="button" class="button" data-testid="show-demo" on:click=demo>{w.show_demo()}</button>
            {browser::named("class-page").map(|page| view! { <a class="button" href=page>{w.teaching_roads()}</a> })}
        </div>
    }
    .into_any()
}

/// The button for a file of one’s own.
pub(super) fn file_field(state: State) -> AnyView {
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
                        state.views.road.set(false);
                        state.open(files);
                    }
                }
            />
            {w.choose_file()}
        </label>
    }
    .into_any()
}

/// What is known of the road shown.
pub(super) fn content(state: State) -> AnyView {
    of_result(state, move |worked| of_road(state, &worked)).into_any()
}

fn of_road(state: State, worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    let road = &worked.road;
    let blank = road.unassessed.iter().map(|span| {
        let place = (worked.place_m(span.from), Some(worked.place_m(span.to)));
        placed(state, Some(place), w.unassessed(span), units)
    });
    let blank: Vec<AnyView> = blank.collect();
    let blank_head = (!road.unassessed.is_empty()).then(|| w.unassessed_head(road.unassessed.len()));
    let demo = worked.origin == Origin::Demo;
    view! {
        {courses(state, worked)}
        {combined(state, worked)}
        {part(state, worked)}
        {demo.then(|| view! { <p data-testid="demo">{w.demo_sentence()}</p> })}
        <p data-testid="quality">{w.quality(road, units)}</p>
        <h3 class="warn">{blank_head}</h3>
        {(!blank.is_empty()).then(|| view! { <ul data-testid="unassessed">{blank}</ul> })}
        {findings(state, worked)}
    }
    .into_any()
}

/// A sentence with its place on the road as a button that shows it.
fn placed(state: State, place: Option<(f64, Option<f64>)>, sentence: String, units: Units) -> AnyView {
    let w = words();
    let button = place.map(|(from_m, to_m)| {
        let text = w.where_found(from_m, to_m, units);
        let label = w.show_place(&text);
        let show = move |_| {
            state.views.road.set(false);
            state.look_at_stretch(from_m, to_m.unwrap_or(from_m));
        };
        view! {
            <button type="button" class="place" data-testid="show-place" aria-label=label on:click=show>{text}</button>
        }
    });
    view! { <li>{button}{sentence}</li> }.into_any()
}

fn findings(state: State, worked: &Arc<Worked>) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    // Stretches without assessment stand above with their reason.
    let told = |finding: &&Finding| !matches!(finding.kind, FindingKind::NotAssessed { .. });
    let found: Vec<&Finding> = worked.road.findings.iter().filter(told).collect();
    if found.is_empty() {
        return view! { <p data-testid="findings">{w.no_findings()}</p> }.into_any();
    }
    let items = found.iter().copied().map(|finding| {
        let place = finding.from_m.map(|from_m| (from_m, finding.to_m));
        placed(state, place, w.finding(finding), units)
    });
    let items: Vec<AnyView> = items.collect();
    view! {
        <details class="more" data-testid="findings">
            <summary>{w.findings_head(found.len())}</summary>
            <ul>{items}</ul>
        </details>
    }
    .into_any()
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
pub(super) fn part(state: State, worked: &Arc<Worked>) -> Option<AnyView> {
    let w = words();
    let units = state.units.get_untracked();
    let (from, to) = worked.road.part?;
    let sentence = w.part_shown(worked.place_m(from), worked.place_m(to), units);
    let view = view! {
        <p class="part" data-testid="part">
            {sentence}" "
            <button type="button" class="button small" data-testid="whole-road" on:click=move |_| state.take_all()>
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
