//! The questions about the descent in hand: one line each with its short answer, and the text behind it.

use super::later::{Later, Text, Views};
use super::part::{fact, list, once};
use super::study::{lost, sure};
use super::table::table;
use crate::browser;
use crate::format::{self, Units};
use crate::state::{State, Worked};
use crate::words::words;
use ::words::{Curves, down};
use leptos::ev::Event;
use leptos::prelude::*;
use solver::plan::{Descent, StageSpan};
use std::collections::BTreeSet;
use std::sync::Arc;

/// Keys of the questions that are open.
pub(super) type Open = RwSignal<BTreeSet<&'static str>>;

/// All of them.
pub(super) fn questions(
    state: State,
    worked: &Arc<Worked>,
    descent: &Descent,
    units: Units,
    open: Open,
    later: Later,
) -> AnyView {
    let w = words();
    let day = &worked.day;
    let advice = descent.choice.advice();
    let mut all: Vec<AnyView> = Vec::new();
    let mut ask = |key: &'static str, label: &'static str, short: String, lines: Vec<String>| {
        if !lines.is_empty() {
            all.push(question(open, key, label, Signal::stored(short), told(lines)));
        }
    };
    if let Some(change) = &descent.change {
        ask("change", w.change_label(), w.short_change(change, units), w.change(change, day.reserve, units));
    }
    if let (Some(advice), Some(short)) = (advice, w.short_one_gear(descent)) {
        ask("one-gear", w.one_gear_label(), short, w.one_gear(descent, advice, units).into_iter().collect());
    }
    let heavier = vec![w.heavier(descent.heavier.as_ref(), units)];
    ask("heavier", w.heavier_label(), w.short_heavier(descent, units), heavier);
    let why = vec![w.governs(descent, day, units), w.chosen_for(descent, units)];
    ask("governs", w.governs_label(descent), w.short_governs(descent, day).to_owned(), why);
    if let Some(curves) = Curves::of(&worked.plan, descent, worked.road.step_m) {
        ask("curves", w.curves_label(), w.short_curves(&curves, units), w.curves(&curves, units));
    }
    let other = fact(
        w.other_mode_label(day.service_brakes),
        "other-mode",
        vec![w.short_other_mode(descent, day, units), w.other_mode(descent, day, units)],
    );
    let brakes = advice.map(|advice| {
        let mut lines = vec![w.brake_heat(advice, day, units), w.at_crest(descent, units)];
        lines.extend(w.touches(descent, units));
        (told(lines), fact(w.untouched_label(), "untouched", vec![w.untouched(descent, advice, units)]))
    });
    let (lines, untouched) = brakes.unzip();
    let text = view! { {lines} <dl class="facts">{untouched}{other}</dl> };
    let short = w.short_heat(descent, day, units).unwrap_or_default();
    all.push(question(open, "heat", w.heat_label(), Signal::stored(short), text.into_any()));
    // Of a plan that there is none of nobody is sure; and what the brakes could still do after the retarder is
    // lost may be taken for leave to go down.
    if advice.is_some() {
        all.push(of_study(open, "lost", w.lost_label(), lost(state, descent, units)));
        all.push(of_study(open, "sure", w.sure_label(), sure(state, descent, units)));
    }
    let (of, number) = (worked.clone(), descent.number);
    let long = move |key: &'static str, which: fn(&Views) -> Text| {
        let of = of.clone();
        let text = move |part: &Views| {
            of.in_hand(Some(number)).map(|descent| which(part)(&of, descent, units)).into_any()
        };
        once_open(open, key, move || later.views.place(text.clone()))
    };
    let mean = Signal::stored(format::grade(descent.mean.0));
    all.push(question(open, "about", w.about_descent(), mean, long("about", |part| part.about)));
    let gears = long("gears", |part| part.gears);
    all.push(question(open, "gears", w.all_gears(), Signal::stored(String::new()), gears));
    view! { <div class="questions">{all}</div> }.into_any()
}

/// A long text, made when its question is first open.
fn once_open(open: Open, key: &'static str, make: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
    let made = once(move || open.with(|all| all.contains(key)));
    (move || made.get().then(&make)).into_any()
}

/// A question with its short answer; its text is behind it.
pub(super) fn question(
    open: Open,
    key: &'static str,
    label: &'static str,
    short: Signal<String>,
    text: AnyView,
) -> AnyView {
    let is_open = open.with_untracked(|all| all.contains(key));
    let toggled = move |event: Event| {
        let now = browser::is_open(&event);
        open.update(|all| {
            if now {
                all.insert(key)
            } else {
                all.remove(key)
            };
        });
    };
    view! {
        <details class="question" data-testid=key open=is_open on:toggle=toggled>
            <summary><span class="asked">{label}</span><span class="short">{move || short.get()}</span></summary>
            <div class="told">{text}</div>
        </details>
    }
    .into_any()
}

/// A question that is answered a moment after the plan; until then it says so.
fn of_study(
    open: Open,
    key: &'static str,
    label: &'static str,
    answer: Signal<(String, Vec<String>)>,
) -> AnyView {
    let short = Signal::derive(move || answer.get().0);
    let text = move || told(answer.get().1);
    question(open, key, label, short, text.into_any())
}

fn told(lines: Vec<String>) -> AnyView {
    lines.into_iter().map(|it| view! { <p>{it}</p> }).collect_view().into_any()
}

/// All gears at all stages.
pub(super) fn gears(_: &Worked, descent: &Descent, units: Units) -> AnyView {
    table(descent, units)
}

/// What else is known of it.
pub(super) fn about(worked: &Worked, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let reliefs =
        down::easings(descent).map(|it| w.relief(worked.place_m(it.from), worked.place_m(it.to), units));
    let blanks = down::blanks(descent, &worked.road.unassessed);
    let blanks = blanks.map(|(from, to)| format::span(worked.place_m(from), worked.place_m(to), units));
    let mut unknown: Vec<String> = blanks.map(|span| w.not_assessed_on(&span)).collect();
    unknown.extend(descent.cut_short.then(|| w.cut_short().to_owned()));
    // No way down is told where nobody is to go down.
    let way = descent.choice.advice().map_or_else(Vec::new, |_| stages(worked, descent, units));
    let all = [
        (w.advice_label(), vec![w.advice(descent, units)]),
        (w.legs_label(), w.legs(descent, worked.road.step_m, units)),
        (w.grades_label(), w.grades(descent, worked.road.base_length_m, units)),
        (w.climb_label(), vec![w.climb(descent, units)]),
        (w.carried_label(), descent.carried.map(|it| w.carried(it, units)).into_iter().collect()),
        (w.relief_label(), reliefs.collect()),
        (w.way_label(), way),
    ];
    let all = all.into_iter().filter(|(_, lines)| !lines.is_empty());
    let all: Vec<AnyView> = all.map(|(label, lines)| fact(label, "", lines)).collect();
    view! {
        {sign(descent, units)}
        {list("notes", "", unknown)}
        <dl class="facts">{all}</dl>
    }
    .into_any()
}

/// The descent as a road sign would state it: whole numbers on a board.
fn sign(descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let (grade, length) = format::as_sign(descent.mean.0, descent.foot.0 - descent.crest.0, units);
    let spoken = w.sign(&grade, &length);
    view! {
        <figure class="sign" data-testid="sign">
            <div class="board" role="img" aria-label=spoken>
                <svg viewBox="0 0 48 22" width="48" height="22" aria-hidden="true">
                    <path d="M2 3 46 19H2z"></path>
                </svg>
                <span class="grade">{grade}</span>
                <span class="long">{length}</span>
            </div>
            <figcaption>{w.sign_label()}</figcaption>
        </figure>
    }
    .into_any()
}

/// Spans too short to be told in tenths are left to the picture.
const SHORTEST_TOLD_M: f64 = 100.0;

fn stages(worked: &Worked, descent: &Descent, units: Units) -> Vec<String> {
    let placed = |span: &StageSpan| (span.stage, worked.place_m(span.from), worked.place_m(span.to));
    let told = descent.stages.iter().map(placed).filter(|(_, from_m, to_m)| to_m - from_m >= SHORTEST_TOLD_M);
    told.map(|(stage, from_m, to_m)| words().stage_span(stage, from_m, to_m, units)).collect()
}
