//! The answer: one fixed place that tells of the descent in hand. What to do stands first and large; then one
//! line a question, each with its short answer, and the text one tap behind.

use super::chart::Look;
use super::later::Later;
use super::part::{list, pieces};
use super::questions;
use super::result::of_result;
use super::square::{gear_square, stage_square};
use super::verdict::chip;
use super::{bar, drawer, notice, roadside};
use crate::chart::Change;
use crate::format::{self, Units, place};
use crate::state::{State, Worked};
use crate::words::words;
use ::words::down;
use leptos::prelude::*;
use solver::plan::{Advice, ChangeHow, Descent, Leg, Note};
use std::collections::BTreeSet;
use std::sync::Arc;

/// The column.
pub(super) fn answer(state: State, look: Look, later: Later) -> AnyView {
    let w = words();
    let chosen = Memo::new(move |_| state.shown.chosen_descent.get());
    // What is open stays open when another answer comes.
    let open = RwSignal::new(BTreeSet::new());
    let content = of_result(state, move |worked| match worked.in_hand(chosen.get()) {
        Some(descent) => of_descent(state, look, &worked, descent, open, later),
        None => level(&worked),
    });
    let working = Memo::new(move |_| state.talk.progress.with(Option::is_some));
    let empty = move || {
        state.shown.worked.with(Option::is_none).then(|| match working.get() {
            true => to_come(state),
            false => view! { <p class="say">{w.no_road()}</p> <p>{w.no_road_sentence()}</p> }.into_any(),
        })
    };
    view! {
        <section
            class="answer"
            id="answer"
            tabindex="-1"
            class:stale=move || state.shown.stale.get()
            aria-busy=move || if state.talk.progress.with(Option::is_some) { "true" } else { "false" }
        >
            <div class="answer-scroll">
                <div class="answer-flow">
                    {notice::notice(state, false)}
                    {content}
                    {empty}
                    {roadside::roadside(state, look, later)}
                </div>
            </div>
            <div class="truck-line">
                <p>
                    <span data-testid="made-for">{move || bar::truck(state).join(" · ")}</span>
                    <a href="#truck" data-testid="change-truck">{w.change_truck()}</a>
                </p>
                {drawer::not_yours(state)}
            </div>
            {cautions()}
        </section>
    }
    .into_any()
}

/// The place of the first answer while it is worked out.
fn to_come(state: State) -> AnyView {
    let w = words();
    let [gear, stage, hold, ..] = w.hand_figures();
    let unit = move || state.units.get().speed();
    view! {
        <div class="answer-head"><h2>{w.finding_descents()}</h2></div>
        <dl class="trio to-come">
            <div><dt>{gear}</dt><dd><span class="square">"–"</span></dd></div>
            <div><dt>{stage}</dt><dd><span class="square">"–"</span></dd></div>
            <div><dt>{hold}</dt><dd class="speed">"– "<small>{unit}</small></dd></div>
        </dl>
    }
    .into_any()
}

fn level(worked: &Arc<Worked>) -> AnyView {
    let partly = worked.plan.notes.contains(&Note::PartlyUnassessed);
    view! { <p class="say" data-testid="verdict-sentence" aria-live="polite">{words().no_descent(partly)}</p> }.into_any()
}

fn of_descent(
    state: State,
    look: Look,
    worked: &Arc<Worked>,
    descent: &Descent,
    open: RwSignal<BTreeSet<&'static str>>,
    later: Later,
) -> AnyView {
    let w = words();
    let units = state.units.get_untracked();
    let number = descent.number;
    let spoken = w.decides(descent, worked.plan.descents.len(), units);
    let notes = worked.plan.notes.iter().filter(|note| !notice::is_of_road(**note));
    let do_this = descent.choice.advice().map(|advice| {
        let in_legs = down::in_legs(descent);
        let figures =
            if in_legs { legs(look, worked, descent, units) } else { one_gear(look, descent, advice, units) };
        view! { {figures} {say(descent, advice, in_legs, units)} }
    });
    view! {
        {head(state, worked, number)}
        <p class="unseen" data-testid="verdict-sentence" aria-live="polite">
            {pieces(spoken)}" "{w.verdict_of(&descent.choice)}
        </p>
        {do_this}
        <p class="verdict-line" data-testid="verdict">{chip(&descent.choice)}</p>
        {list("touched", "touched", w.touched(descent, units))}
        {list("notes", "notes", notes.map(|note| w.note(*note, units)).collect())}
        {four(worked, descent, units)}
        {way(worked, descent, units)}
        {questions::questions(state, worked, descent, units, open, later)}
    }
    .into_any()
}

/// Which descent, and the ways to its neighbours.
fn head(state: State, worked: &Arc<Worked>, number: usize) -> AnyView {
    let w = words();
    let count = worked.plan.descents.len();
    let hardest = worked.plan.deciding().is_some_and(|it| it.number == number);
    let step = move |to: usize, sign: &'static str, testid: &'static str, name: &'static str| {
        view! {
            <button
                type="button"
                class="button small"
                data-testid=testid
                aria-label=name
                disabled=!(1..=count).contains(&to)
                on:click=move |_| state.shown.chosen_descent.set(Some(to))
            >
                {sign}
            </button>
        }
        .into_any()
    };
    let steps = (count > 1).then(|| {
        vec![
            step(number.wrapping_sub(1), "‹", "descent-before", w.descent_before()),
            step(number + 1, "›", "descent-after", w.descent_after()),
        ]
    });
    view! {
        <div class="answer-head">
            <h2 data-testid="in-hand">{w.descent(number)}" "<span class="of">{w.of_count(count)}</span></h2>
            {(hardest && count > 1).then(|| view! { <span class="tag">{w.hardest()}</span> })}
            <span class="tag old" hidden=move || !state.shown.stale.get() data-testid="old-answer">{w.old_answer()}</span>
            {steps}
        </div>
    }
    .into_any()
}

/// When to be in the gear, and how long to stay in it; and how the service brakes are used.
fn say(descent: &Descent, advice: &Advice, in_legs: bool, units: Units) -> AnyView {
    let w = words();
    let first = match descent.from {
        0 => w.be_in_gear_at_start(),
        _ => w.be_in_gear(&place(descent.crest.0, units)),
    };
    let stay = (!in_legs).then(|| w.stay_to(&place(descent.foot.0, units)));
    view! {
        <p class="say" data-testid="say">{pieces(first)}" "{stay}</p>
        {w.snub(advice, units).map(|snub| view! { <p class="snub" data-testid="snub">{snub}</p> })}
    }
    .into_any()
}

/// Gear, stage and speed as large as they can be.
fn one_gear(look: Look, descent: &Descent, advice: &Advice, units: Units) -> AnyView {
    let w = words();
    let (gear, stage, speed) = down::first(descent, advice);
    let [gear_head, stage_head, hold_head, ..] = w.hand_figures();
    view! {
        <dl class="trio">
            <div><dt>{gear_head}</dt><dd data-testid="hand-gear">{gear_square(look, gear)}</dd></div>
            <div><dt>{stage_head}</dt><dd data-testid="hand-stage">{stage_square(look, stage, descent.from, descent.to)}</dd></div>
            <div>
                <dt>{hold_head}</dt>
                <dd class="speed" data-testid="hand-speed">
                    {format::hold_number(speed.0, units)}" "<small>{units.speed()}</small>
                </dd>
            </div>
        </dl>
    }
    .into_any()
}

/// A row a leg, and between them where to change and on what grade.
fn legs(look: Look, worked: &Worked, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let [gear_head, stage_head, hold_head, from_head, ..] = w.hand_figures();
    let row = |index: usize, leg: &Leg| {
        let from = match (index, descent.from) {
            (0, 0) => place(0.0, units),
            (0, _) => place(descent.crest.0, units),
            (_, _) => leg.change.map_or_else(String::new, |it| place(it.at.0, units)),
        };
        let change = leg.change.map(|change| {
            let eased = matches!(Change::of(change), Change::Easing(_));
            let mark = if eased { "M8 1 15 8 8 15 1 8z" } else { "M8 2 14 8 8 14 2 8z" };
            // A lower gear needs a lower speed first.
            let slows_from = descent.legs.get(index.wrapping_sub(1)).map_or(leg.from, |it| it.slows_from);
            let (at, speed) = (place(change.at.0, units), format::hold_speed(leg.speed.0, units));
            let by = match change.how {
                ChangeHow::Down => w.slow_first(&place(worked.place_m(slows_from), units), &speed, &w.gear(leg.gear), &at),
                ChangeHow::Up => w.change_up(&at, &w.gear(leg.gear)),
            };
            view! {
                <tr class="change" class:eased=eased>
                    <td colspan="4">
                        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d=mark></path></svg>
                        {format!("{by} ({})", format::grade(change.grade.0))}
                    </td>
                </tr>
            }
        });
        let speed = format::hold_number(leg.speed.0, units);
        view! {
            {change}
            <tr data-testid="leg-row">
                <th scope="row">{from}</th>
                <td>{gear_square(look, leg.gear)}</td>
                <td>{stage_square(look, leg.stage, leg.from, leg.slows_from)}</td>
                <td class="speed">{speed}" "<small>{units.speed()}</small></td>
            </tr>
        }
        .into_any()
    };
    let rows: Vec<AnyView> = descent.legs.iter().enumerate().map(|(index, leg)| row(index, leg)).collect();
    view! {
        <table class="legs-table">
            <thead>
                <tr>
                    <th scope="col">{from_head}</th>
                    <th scope="col">{gear_head}</th>
                    <th scope="col">{stage_head}</th>
                    <th scope="col">{hold_head}</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
    }
    .into_any()
}

/// How long, how far down, how steep.
fn four(worked: &Arc<Worked>, descent: &Descent, units: Units) -> AnyView {
    let [_, _, _, _, long, down, grade, steepest] = words().hand_figures();
    let partly = down::blanks(descent, &worked.road.unassessed).next().is_some();
    let about = if partly { "≥ " } else { "" };
    let all = [
        (long, format::length(descent.foot.0 - descent.crest.0, units)),
        (down, format!("{about}{}", format::height(descent.drop.0, units))),
        (grade, format::grade(descent.mean.0)),
        (steepest, format::grade(down::steepest(descent))),
    ];
    let all = all.map(|(head, figure)| view! { <div><dt>{head}</dt><dd>{figure}</dd></div> }.into_any());
    view! { <dl class="four">{all.into_iter().collect_view()}</dl> }.into_any()
}

/// Most things on the way that are told at once.
const MOST_ON_WAY: usize = 3;

/// What waits on the way: the slowest curves and the places, in the order of the road.
fn way(worked: &Arc<Worked>, descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let mut curves: Vec<_> = worked.plan.slow_curves(descent).copied().collect();
    curves.sort_by(|a, b| a.speed.0.total_cmp(&b.speed.0));
    curves.truncate(MOST_ON_WAY);
    let curves = curves.into_iter().map(|it| {
        (it.curve.from, w.way_curve(it.curve.hairpin).to_owned(), format::hold_speed(it.speed.0, units))
    });
    let places = worked.road.places.iter().filter(|it| (descent.from..=descent.to).contains(&it.index));
    let places = places.map(|it| {
        let kind = w.place_kind(it.kind);
        let name = if it.name.is_empty() { kind.to_owned() } else { it.name.clone() };
        (it.index, name, String::new())
    });
    let mut all: Vec<(usize, String, String)> = curves.chain(places.take(MOST_ON_WAY)).collect();
    all.sort_by_key(|it| it.0);
    if all.is_empty() {
        return ().into_any();
    }
    let rows = all.into_iter().map(|(index, what, speed)| {
        view! { <li><span>{place(worked.place_m(index), units)}</span><span>{what}</span><b>{speed}</b></li> }
    });
    view! { <ul class="way" data-testid="way">{rows.collect_view()}</ul> }.into_any()
}

/// The caution that always stands, and all of them behind it.
fn cautions() -> AnyView {
    let w = words();
    let items = w.cautions().into_iter().map(str::to_owned);
    view! {
        <details class="cautions" data-testid="cautions">
            <summary>
                <span>{pieces(w.caution_line())}</span>" "
                <span class="link">{w.all_cautions()}</span>
            </summary>
            <p class="parked">{w.parked()}</p>
            {w.unread().map(|unread| view! { <p class="unread" data-testid="unread">{unread}</p> })}
            {list("", "", items.collect())}
        </details>
    }
    .into_any()
}
