//! The card for the cab: one page, black on white, that needs no screen.

use super::drawer;
use super::part::{list, text_field};
use crate::browser::{self, download, picture};
use crate::card_facts::CardOf;
use crate::card_fit::{self, Size, Texts};
use crate::chart::{CardStrip, card_strip};
use crate::format::{self, Units};
use crate::marker::Marker;
use crate::state::{State, Worked};
use crate::tell::say::capital;
use crate::trouble::WorkTrouble;
use crate::words::words;
use ::words::down::{self, Told};
use leptos::prelude::*;
use solver::plan::{Advice, Choice, Descent, Leg, Note};
use std::sync::Arc;

/// Id of the page that is printed.
const SHEET: &str = "sheet";

/// The section.
pub(super) fn card(state: State) -> AnyView {
    let w = words();
    let (text, down) = (state.roadside.marker_text, state.roadside.counts_down);
    let marker = Memo::new(move |_| state.marker());
    let content = move || {
        let units = state.units.get();
        let marker = marker.get();
        let worked = state.shown.listed.get()?;
        // Of a road without a descent there is no card; what else leaves the page does.
        Some(match worked.plan.descents.is_empty() {
            true => no_card(&worked),
            false => sheet(state, &worked, marker, units),
        })
    };
    let save = move |_| {
        let units = state.units.get_untracked();
        let rows = state.shown.listed.with_untracked(|worked| {
            worked.as_ref().map(|it| {
                let marker = marker.get_untracked();
                let rows = untrack(|| card_of(state, it, marker, units)).csv();
                (w.rows_name(&it.road.name, it.road.reversed), rows)
            })
        });
        if let Some((name, rows)) = rows {
            download::save(&name, "text/csv", &rows);
        }
    };
    let draw = move |_| {
        let road = state.shown.listed.with_untracked(|it| it.as_ref().map(|it| it.road.clone()));
        let name = road.map_or_else(String::new, |it| w.picture_name(&it.name, it.reversed));
        leptos::task::spawn_local(async move {
            if !picture::save(SHEET, &name).await {
                state.talk.trouble.set(Some(WorkTrouble::NoPicture));
            }
        });
    };
    let unit = Signal::derive(move || state.units.get().distance());
    let misses = move || {
        let at = |metres: f64| format::distance(metres, state.units.get());
        state.markers_miss().map(|(start, end)| w.markers_miss(&at(start), &at(end)))
    };
    // Like the exports: what is saved or printed is the answer to what is entered.
    let locked = Signal::derive(move || !state.can_export());
    let none = move || state.shown.listed.with(|it| it.as_ref().is_none_or(|it| it.plan.descents.is_empty()));
    view! {
        <section class="card cab" id="cab" hidden=move || state.shown.listed.with(Option::is_none)>
            <div class="section-head">
                <h2>{w.card_head()}</h2>
                <div class="buttons">
                    <button type="button" class="button primary" data-testid="print-card" hidden=none disabled=locked on:click=move |_| browser::print()>
                        {w.print_card()}
                    </button>
                    <button type="button" class="button" data-testid="save-picture" hidden=none disabled=locked on:click=draw>{w.save_picture()}</button>
                    <button type="button" class="button" data-testid="save-rows" hidden=none disabled=locked on:click=save>{w.save_rows()}</button>
                    <button type="button" class="button" data-testid="export" title=w.export_sentence() disabled=locked on:click=move |_| state.export()>
                        {w.export()}
                    </button>
                    <button type="button" class="button" data-testid="save-project" title=w.project_sentence() disabled=locked on:click=move |_| state.save_project()>
                        {w.save_project()}
                    </button>
                </div>
            </div>
            <p class="not-printed" hidden=none>{w.card_sentence()}</p>
            <div class="not-printed">{drawer::not_yours(state)}</div>
            <div class="entry not-printed" hidden=none>
                {text_field("entry-marker".to_owned(), w.marker_label(), "decimal", text.into(), unit, Box::new(move |it| text.set(it)))}
                <label class="check">
                    <input
                        type="checkbox"
                        data-testid="counts-down"
                        prop:checked=move || down.get()
                        on:change=move |event| down.set(event_target_checked(&event))
                    />
                    {w.counts_down()}
                </label>
            </div>
            <p class="problem not-printed" role="status" data-testid="markers-miss">{misses}</p>
            {content}
        </section>
    }
    .into_any()
}

/// What a card of a result is made of. Whose truck it is, is tracked.
fn card_of(state: State, worked: &Worked, marker: Marker, units: Units) -> CardOf<'_> {
    CardOf { is_example: state.is_not_yours(&worked.truck), ..card_for(worked, marker, units) }
}

fn card_for(worked: &Worked, marker: Marker, units: Units) -> CardOf<'_> {
    CardOf {
        plan: &worked.plan,
        truck: &worked.truck,
        is_example: false,
        day: &worked.day,
        places: &worked.road.places,
        limits: &worked.road.limits,
        unassessed: &worked.road.unassessed,
        step_m: worked.road.step_m,
        ends_m: worked.ends_m(),
        reversed: worked.road.reversed,
        marker,
        units,
    }
}

/// What a result was worked out for: truck and day in one line.
pub(super) fn facts(worked: &Worked, units: Units) -> String {
    words().card_facts(card_for(worked, Marker::NONE, units))
}

fn no_card(worked: &Worked) -> AnyView {
    let partly = worked.plan.notes.contains(&Note::PartlyUnassessed);
    view! { <p class="say" data-testid="no-card">{words().no_descent(partly)}</p> }.into_any()
}

/// The page that is printed.
fn sheet(state: State, worked: &Arc<Worked>, marker: Marker, units: Units) -> AnyView {
    let w = words();
    let card = card_of(state, worked, marker, units);
    let name = worked.name().to_owned();
    let texts = w.card_texts(card);
    let fit = card_fit::fit(&texts);
    let shown = card.worst(fit.rows);
    let more = worked.plan.descents.len() - shown.len();
    let class = match fit.size {
        Size::Ease => "cab-sheet",
        Size::Dense => "cab-sheet dense",
        Size::Tight => "cab-sheet dense tight",
    };
    let rows = shown.iter().map(|descent| row(card, descent)).collect_view();
    let heads = w.card_heads().map(|head| view! { <th scope="col">{head}</th> }.into_any());
    let on_strip = |leg: &Leg| format!("{}·{}", leg.gear.number(), leg.stage.number());
    let labels = shown.iter().map(|descent| CardStrip {
        number: descent.number,
        from: descent.from,
        to: descent.to,
        label: descent.legs.iter().map(on_strip).collect::<Vec<_>>().join(" "),
    });
    let strip = card_strip(&worked.picture, &labels.collect::<Vec<_>>(), marker, w.mile());
    let Texts { facts, stop, notes, lists: [before, trouble, places], small, .. } = texts;
    view! {
        <div class=class id=SHEET data-testid=SHEET>
            {old(state)}
            <div class="cab-head"><h3>{name}</h3><p>{facts}</p></div>
            <p class="cab-way" data-testid="card-way">{w.card_way(card)}</p>
            {stop.map(|[stop, why]| view! { <div class="cab-stop" data-testid="card-stop"><p>{stop}</p><p>{why}</p></div> })}
            {list("cab-notes", "card-notes", notes)}
            <svg class="card-strip" viewBox="0 0 720 150" role="img" aria-label=w.card_profile() inner_html=strip></svg>
            <table>
                <thead><tr>{heads.into_iter().collect_view()}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
            {(more > 0).then(|| view! { <p class="more">{w.card_more(more)}</p> })}
            <div class="cab-lists">
                <div><h4>{w.before_crest_head()}</h4>{list("", "", before)}</div>
                <div><h4>{w.in_trouble_head()}</h4><ol>{trouble.into_iter().map(|it| view! { <li>{it}</li> }).collect_view()}</ol></div>
                <div><h4>{w.places_nav()}</h4>{list("", "", places)}</div>
            </div>
            <p class="small-print">{small}</p>
        </div>
    }
    .into_any()
}

/// That the page belongs to entries before, however it is printed: the browser's own keys ask nobody.
/// While an answer is only on its way it is for paper alone.
fn old(state: State) -> AnyView {
    view! {
        <p
            class="cab-old"
            class:passing=move || !state.shown.stale.get()
            hidden=move || state.can_export()
            data-testid="card-old"
        >
            {words().card_is_old()}
        </p>
    }
    .into_any()
}

fn row(card: CardOf<'_>, descent: &Descent) -> AnyView {
    let w = words();
    let [km, mile] = w.card_span(card, descent);
    let [mean, worst] = w.card_grade(descent, card.units);
    let [_, _, gear_head, stage_head, hold_head, _] = w.card_heads();
    let told = |advice: &Advice, (gear, stage, speed): Told| {
        let engine_speed = card.engine_speed(advice, gear, speed);
        let [number, unit, below] = w.card_hold(speed.0, engine_speed, card.units);
        view! {
            <td class="big" data-label=gear_head>{gear.number()}</td>
            <td class="big" data-label=stage_head>{stage.number()}</td>
            <td data-label=hold_head><span class="big">{number}</span>" "{unit}<small>{below}</small></td>
        }
        .into_any()
    };
    let (how, legs) = match &descent.choice {
        Choice::Held(advice) => {
            let leg = |leg: &Leg| {
                let by = capital(&w.card_change(card, leg.change?));
                let told = told(advice, (leg.gear, leg.stage, leg.speed));
                Some(view! { <tr class="leg"><td colspan="2">{by}</td>{told}<td></td></tr> }.into_any())
            };
            (told(advice, down::first(descent, advice)), descent.legs.iter().filter_map(leg).collect())
        }
        // The verdict stands where gear, stage and speed would, as large as they.
        Choice::NoSafeSpeed(_) => {
            let none = view! { <td class="big no-speed" colspan="3">{capital(w.no_safe_speed())}</td> };
            (none.into_any(), Vec::<AnyView>::new())
        }
    };
    let know = w.card_known(card, descent);
    view! {
        <tr>
            <td><b>{descent.number}</b>" "{km}<small>{mile}</small></td>
            <td>{mean}<small>{worst}</small></td>
            {how}
            <td class="know">{know}</td>
        </tr>
        {legs}
    }
    .into_any()
}
