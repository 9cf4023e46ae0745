//! The screen of exercises: one at a time, its steps shown when they are asked for; and the sheets
//! to be printed, blank and with answers.

use super::desk::{Class, LEAF, Printed};
use crate::browser;
use crate::exercise::{Exercise, Ground, Sheet};
use crate::format::Units;
use crate::words::words;
use leptos::prelude::*;

/// The screen of exercises.
pub(super) fn view(class: Class) -> AnyView {
    let c = words();
    let sheet = Memo::new(move |_| sheet(class));
    let count = move || sheet.with(|it| it.as_ref().map_or(0, |it| it.exercises.len()));
    let at = move || class.exercise.get().min(count().saturating_sub(1));
    // Not in the view: there the sign would end the tag.
    let is_last = move || at() + 1 >= count();
    let go = move |by: isize| {
        class.steps.set(false);
        class.exercise.set(at().saturating_add_signed(by).min(count().saturating_sub(1)));
    };
    let one = move || {
        let steps = class.steps.get();
        let at = at();
        sheet.with(|sheet| {
            let sheet = sheet.as_ref()?;
            sheet.exercises.get(at).map(|it| on_screen(it, sheet.units, steps))
        })
    };
    let head = move || {
        let at = at();
        sheet.with(|it| it.as_ref().and_then(|it| it.exercises.get(at)).map(|it| c.exercise(at + 1, it)))
    };
    let print = move |what: Printed| {
        class.printed.set(what);
        browser::print_next();
    };
    view! {
        <section class="exercises" data-testid="exercises-screen">
            <div class="on-screen">
                <div class="exercise-head">
                    <h2>{head}</h2>
                    <button type="button" aria-label=c.exercise_back() data-testid="exercise-back" disabled=move || at() == 0 on:click=move |_| go(-1)><span aria-hidden="true">"←"</span></button>
                    <output>{move || format!("{} / {}", (at() + 1).min(count()), count())}</output>
                    <button type="button" aria-label=c.exercise_on() data-testid="exercise-on" disabled=is_last on:click=move |_| go(1)><span aria-hidden="true">"→"</span></button>
                    <button
                        type="button"
                        data-testid="steps"
                        aria-pressed=move || if class.steps.get() { "true" } else { "false" }
                        on:click=move |_| class.steps.update(|shown| *shown = !*shown)
                    >
                        {c.steps_label()}
                    </button>
                </div>
                {one}
                {move || (count() == 0).then(|| view! { <p data-testid="no-exercises">{c.no_exercises()}</p> })}
                <div class="ride-controls">
                    <button
                        type="button"
                        data-testid="another-set"
                        on:click=move |_| {
                            class.exercise.set(0);
                            class.steps.set(false);
                            class.seed.update(|seed| *seed = seed.wrapping_add(1));
                        }
                    >
                        {c.another_set()}
                    </button>
                    <button type="button" data-testid="print-blank" on:click=move |_| print(Printed::Blank)>{c.blank_sheet()}</button>
                    <button type="button" data-testid="print-answers" on:click=move |_| print(Printed::Answers)>{c.answer_sheet()}</button>
                </div>
            </div>
            {move || match class.printed.get() {
                Printed::Screen => None,
                Printed::Blank => sheet.with(|it| it.as_ref().map(|it| paper(it, false))),
                Printed::Answers => sheet.with(|it| it.as_ref().map(|it| paper(it, true))),
            }}
        </section>
    }
    .into_any()
}

fn sheet(class: Class) -> Option<Sheet> {
    let state = class.state;
    let (units, seed) = (state.units.get(), class.seed.get());
    state.shown.worked.with(|worked| {
        let worked = worked.as_ref()?;
        Sheet::new(seed, units, &Ground::of(&worked.plan), &worked.truck, &worked.day).ok()
    })
}

/// One exercise on the screen, below its head. The steps take the place of what is given. Made
/// anew for each, so that a long one begins at its beginning.
fn on_screen(exercise: &Exercise, units: Units, steps: bool) -> AnyView {
    let c = words();
    view! {
        <article class="exercise leaf" id=LEAF tabindex="0" data-testid="exercise">
            <p data-testid="question">{c.question(exercise, units)}</p>
            {(!steps).then(|| lines("given", c.given_label(), c.given(exercise, units)))}
            {steps.then(|| way(exercise, units))}
            <p class="class-caution">{c.sheet_caution()}</p>
        </article>
    }
    .into_any()
}

/// One exercise on paper.
fn exercise(number: usize, exercise: &Exercise, units: Units, steps: bool) -> AnyView {
    let c = words();
    view! {
        <article class="exercise" data-testid="exercise">
            <h2>{c.exercise(number, exercise)}</h2>
            <p data-testid="question">{c.question(exercise, units)}</p>
            {lines("given", c.given_label(), c.given(exercise, units))}
            {steps.then(|| way(exercise, units))}
        </article>
    }
    .into_any()
}

/// The way to the answer, and the answer.
fn way(exercise: &Exercise, units: Units) -> AnyView {
    let c = words();
    view! {
        {lines("steps", c.steps_label(), c.steps(exercise, units))}
        <p class="solution" data-testid="solution">{c.solution(exercise, units)}</p>
    }
    .into_any()
}

fn lines(class: &'static str, label: &'static str, lines: Vec<String>) -> AnyView {
    let items = lines.into_iter().map(|line| view! { <li>{line}</li> });
    view! { <div class=class><h3>{label}</h3><ul>{items.collect_view()}</ul></div> }.into_any()
}

/// A sheet on paper: room to write, or the way and the answer.
fn paper(sheet: &Sheet, answers: bool) -> AnyView {
    let c = words();
    let title = if answers { c.answer_sheet() } else { c.blank_sheet() };
    let all = sheet.exercises.iter().zip(1..).map(|(it, number)| {
        let room = (!answers).then(|| view! { <div class="room"><h3>{c.room_label()}</h3></div> });
        view! { <li>{exercise(number, it, sheet.units, answers)}{room}</li> }
    });
    view! {
        <div class="paper" data-testid="paper">
            <div class="paper-body">
                <h2>{c.sheet_head(sheet.seed)}" · "{title}</h2>
                <ol>{all.collect_view()}</ol>
                {sheet.stages_withheld.then(|| view! { <p>{c.stages_left_out()}</p> })}
            </div>
            // Stands at the foot of every sheet: they are handed out one by one.
            <div class="paper-foot" data-testid="paper-foot"><p>{c.sheet_caution()}" "{c.class_caution()}</p></div>
        </div>
    }
    .into_any()
}
