//! The answer: the sentence that decides, and what must be said with it.

use super::card;
use super::detail::{changes, curves, other_ways};
use super::part::{fact, list};
use super::result::of_result;
use super::study::sure_and_lost;
use super::verdict::chip;
use crate::browser;
use crate::format::Units;
use crate::outline;
use crate::state::{State, Worked};
use crate::words::{Piece, words};
use leptos::prelude::*;
use solver::plan::{Choice, Descent, Note};
use std::sync::Arc;

/// The first and largest part of the page.
pub(super) fn answer(state: State) -> AnyView {
    let w = words();
    let content = of_result(state, move |worked| content(state, &worked, state.units.get_untracked()));
    let empty = move || {
        let nothing = state.shown.worked.with(Option::is_none) && state.talk.progress.with(Option::is_none);
        nothing.then(|| {
            view! {
                <div class="empty">
                    <p class="say">{w.no_road()}</p>
                    <p>{w.no_road_sentence()}</p>
                    <button type="button" class="button" on:click=move |_| state.open_demo()>{w.show_demo()}</button>
                </div>
            }
        })
    };
    view! {
        <section class="card answer" id="answer" tabindex="-1">
            {content}
            {empty}
            {cautions()}
        </section>
    }
    .into_any()
}

fn content(state: State, worked: &Arc<Worked>, units: Units) -> AnyView {
    let plan = &worked.plan;
    let deciding = match plan.deciding() {
        Some(descent) => decided(state, descent, worked, units),
        None => level(state, worked, units),
    };
    let notes = plan.notes.iter().filter(|note| !is_doubt(**note));
    vec![blank(worked, units), deciding, list("notes", "notes", said(notes, units))].into_any()
}

/// What could not be assessed, before the sentence that decides: the worst hill may lie in it.
fn blank(worked: &Arc<Worked>, units: Units) -> AnyView {
    let lines = worked.blank().map(|blank| words().blank(&blank, units));
    list("notes first", "blank", lines.into_iter().collect())
}

/// Whether a note takes trust away from the sentence that decides: such notes stand right below it.
/// Of what is blank the first line of all tells more than its note.
fn is_doubt(note: Note) -> bool {
    match note {
        Note::StartsInDescent | Note::PartlyUnassessed | Note::PoorHeights | Note::HotElsewhere { .. } => {
            true
        }
        Note::StagesWithheld(_)
        | Note::WetCap
        | Note::HoldByHand
        | Note::ShiftsUpByItself
        | Note::CannotClimb => false,
    }
}

fn doubts(worked: &Arc<Worked>, units: Units) -> AnyView {
    let told = |note: &&Note| is_doubt(**note) && **note != Note::PartlyUnassessed;
    list("notes", "doubts", said(worked.plan.notes.iter().filter(told), units))
}

fn said<'a>(notes: impl Iterator<Item = &'a Note>, units: Units) -> Vec<String> {
    notes.map(|note| words().note(*note, units)).collect()
}

fn level(state: State, worked: &Arc<Worked>, units: Units) -> AnyView {
    let partly = worked.plan.notes.contains(&Note::PartlyUnassessed);
    view! {
        <p class="say" data-testid="verdict-sentence" aria-live="polite">{words().no_descent(partly)}</p>
        {climbs(state, worked, units)}
        {doubts(worked, units)}
        {made_for(worked, units)}
    }
    .into_any()
}

/// Of a road that climbs the way it is shown: that it does, and the way to turn it. Its descents are
/// those of somebody who drives up.
fn climbs(state: State, worked: &Arc<Worked>, units: Units) -> Option<AnyView> {
    let w = words();
    let ends = worked.ends_m();
    outline::climbs(ends, worked.plan.totals.fall.0).then(|| {
        view! {
            <p class="snub climbs" data-testid="climbs">
                {w.climbs(ends.0, ends.1, units)}" "
                <button type="button" class="button small" data-testid="reverse-climb" on:click=move |_| state.reverse()>
                    {w.reverse()}
                </button>
            </p>
        }
        .into_any()
    })
}

/// For which truck and which day the answer is, and the way to enter others: on a phone the entries
/// are folded, and far below.
fn made_for(worked: &Arc<Worked>, units: Units) -> AnyView {
    let w = words();
    view! {
        <p class="made-for" data-testid="made-for">
            {w.made_for(&card::facts(worked, units))}" "
            <a href="#truck" data-testid="to-truck" on:click=move |_| browser::unfold("truck")>{w.to_truck()}</a>
        </p>
    }
    .into_any()
}

fn decided(state: State, descent: &Descent, worked: &Arc<Worked>, units: Units) -> AnyView {
    let w = words();
    let sentence = w.decides(descent, worked.plan.descents.len(), units);
    let snub = descent.choice.advice().and_then(|advice| w.snub(advice, units));
    view! {
        <p class="say" data-testid="verdict-sentence" aria-live="polite">
            {sentence.into_iter().map(piece).collect_view()}
        </p>
        {doubts(worked, units)}
        {climbs(state, worked, units)}
        <p class="verdict-line">
            <span data-testid="verdict">{chip(&descent.choice)}</span>
            <span class="chosen-for">{w.chosen_for(descent, units)}</span>
        </p>
        {list("touched", "touched", w.touched(descent, units))}
        {snub.map(|snub| view! { <p class="snub" data-testid="snub">{snub}</p> })}
        {along(worked, units)}
        {made_for(worked, units)}
        <p class="to-card"><a href="#card" data-testid="to-card">{w.to_card()}</a></p>
        <dl class="facts">
            {facts(descent, worked, units)}
            {sure_and_lost(state, descent, units, false)}
        </dl>
    }
    .into_any()
}

/// Most descents that are named beside the sentence.
const MOST_ALONG: usize = 6;

/// All descents in road order: whoever reads the sentence alone would take its gear down the
/// others as well.
fn along(worked: &Arc<Worked>, units: Units) -> Option<AnyView> {
    let w = words();
    let list = &worked.plan.descents;
    if list.len() < 2 {
        return None;
    }
    let items = list.iter().take(MOST_ALONG).map(|descent| {
        view! { <li><span class="number">{descent.number}</span>{w.along(descent, units)}</li> }
    });
    let more = list.len().saturating_sub(MOST_ALONG);
    let view = view! {
        <div class="along" data-testid="along">
            <p>{w.along_label()}</p>
            <ol>
                {items.collect_view()}
                {(more > 0).then(|| view! { <li>{w.along_more(more)}</li> })}
            </ol>
        </div>
    };
    Some(view.into_any())
}

fn piece(piece: Piece) -> AnyView {
    match piece {
        Piece::Plain(text) => text.into_any(),
        Piece::Strong(text) => view! { <strong>{text}</strong> }.into_any(),
    }
}

fn facts(descent: &Descent, worked: &Arc<Worked>, units: Units) -> AnyView {
    let w = words();
    let day = &worked.day;
    let heat = match &descent.choice {
        Choice::Held(advice) => Some(w.brake_heat(advice, day, units)),
        Choice::NoSafeSpeed(_) => None,
    };
    let [one_gear, untouched] = other_ways(descent, units);
    let others = [(w.one_gear_label(), "one-gear", one_gear), (w.untouched_label(), "untouched", untouched)];
    let others = others.into_iter().filter(|(.., lines)| !lines.is_empty());
    let mut facts: Vec<AnyView> = others.map(|(label, testid, lines)| fact(label, testid, lines)).collect();
    facts.extend([
        fact(w.governs_label(descent), "governs", vec![w.governs(descent, day, units)]),
        fact(w.other_mode_label(day.service_brakes), "other-mode", vec![w.other_mode(descent, day, units)]),
        fact(w.heavier_label(), "heavier", vec![w.heavier(descent.heavier.as_ref(), units)]),
    ]);
    let change = changes(descent, day, units);
    facts.extend((!change.is_empty()).then(|| fact(w.change_label(), "change", change)));
    // Whoever reads the hold speed alone would take it through a hairpin.
    let curves = curves(worked, descent, units);
    facts.extend((!curves.is_empty()).then(|| fact(w.curves_label(), "curves", curves)));
    facts.extend(heat.map(|heat| fact(w.heat_label(), "heat", vec![heat])));
    facts.into_any()
}

fn cautions() -> AnyView {
    let w = words();
    let items = w.cautions().into_iter().map(str::to_owned);
    view! {
        <div class="cautions" data-testid="cautions">
            <p class="parked">{w.parked()}</p>
            {w.unread().map(|unread| view! { <p class="unread" data-testid="unread">{unread}</p> })}
            {list("", "", items.collect())}
        </div>
    }
    .into_any()
}
