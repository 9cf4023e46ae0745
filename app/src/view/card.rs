//! The card for the cab: one page, black on white, that needs no screen.

use super::part::{list, text_field};
use crate::browser::{self, download, picture};
use crate::cab::CardOf;
use crate::chart::{CardStrip, card_strip};
use crate::marker::Marker;
use crate::state::{State, Worked};
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use solver::plan::{Choice, Descent};
use std::sync::Arc;

/// Id of the page that is printed.
const SHEET: &str = "sheet";
/// Rows that one page holds.
const MOST_ROWS: usize = 9;

/// The section.
pub(super) fn card(state: State) -> AnyView {
    let w = words();
    let (text, down) = (state.marker_text, state.counts_down);
    let marker = Memo::new(move |_| state.marker());
    let content = move || {
        let units = state.units.get();
        let marker = marker.get();
        state.listed.get().map(|worked| sheet(&worked, marker, units))
    };
    let save = move |_| {
        let rows = state.listed.with_untracked(|worked| {
            worked.as_ref().map(|it| {
                let marker = marker.get_untracked();
                (it.road.name.clone(), solver::report::csv::descents(&it.plan, &|metres| marker.at(metres)))
            })
        });
        if let Some((road, rows)) = rows {
            download::save(&w.rows_name(&road), "text/csv", &rows);
        }
    };
    let draw = move |_| {
        let road = state.listed.with_untracked(|it| it.as_ref().map(|it| it.road.name.clone()));
        let name = w.picture_name(&road.unwrap_or_default());
        leptos::task::spawn_local(async move {
            if !picture::save(SHEET, &name).await {
                state.trouble.set(Some(WorkTrouble::NoPicture));
            }
        });
    };
    let unit = Signal::derive(move || state.units.get().distance());
    let none = move || state.listed.with(|it| it.as_ref().is_none_or(|it| it.plan.descents.is_empty()));
    view! {
        <section class="card cab" id="card" hidden=none>
            <div class="section-head">
                <h2>{w.card_head()}</h2>
                <div class="buttons">
                    <button type="button" class="button primary" data-testid="print-card" on:click=move |_| browser::print()>
                        {w.print_card()}
                    </button>
                    <button type="button" class="button" data-testid="save-picture" on:click=draw>{w.save_picture()}</button>
                    <button type="button" class="button" data-testid="save-rows" on:click=save>{w.save_rows()}</button>
                </div>
            </div>
            <p class="not-printed">{w.card_sentence()}</p>
            <div class="entry not-printed">
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
            {content}
        </section>
    }
    .into_any()
}

/// What a card of a result is made of.
pub(super) fn card_of(worked: &Worked, marker: Marker, units: crate::format::Units) -> CardOf<'_> {
    CardOf {
        plan: &worked.plan,
        truck: &worked.truck,
        day: &worked.day,
        places: &worked.road.places,
        limits: &worked.road.limits,
        step_m: worked.road.step_m,
        marker,
        units,
    }
}

/// The page that is printed.
fn sheet(worked: &Arc<Worked>, marker: Marker, units: crate::format::Units) -> AnyView {
    let w = words();
    let card = card_of(worked, marker, units);
    let name = if worked.road.name.is_empty() { worked.file.clone() } else { worked.road.name.clone() };
    let all = &worked.plan.descents;
    // Where they are too many the worst are shown, in the order of the road.
    let mut shown: Vec<&Descent> = worked.plan.worst_first().into_iter().take(MOST_ROWS).collect();
    shown = all.iter().filter(|it| shown.iter().any(|other| other.number == it.number)).collect();
    let rows = shown.iter().map(|descent| row(card, descent)).collect_view();
    let more = all.len() - shown.len();
    let heads = w.card_heads().map(|head| view! { <th scope="col">{head}</th> }.into_any());
    let labels = shown.iter().map(|descent| CardStrip {
        number: descent.number,
        from: descent.from,
        to: descent.to,
        label: descent
            .choice
            .advice()
            .map_or_else(String::new, |it| format!("{}·{}", it.gear.number(), it.stage.number())),
    });
    let strip = card_strip(&worked.picture, &labels.collect::<Vec<_>>(), marker, w.mile());
    let [before, trouble, places] = [w.before_crest(card), w.in_trouble(card), w.card_places(card)];
    let dense = shown.len() > 5;
    view! {
        <div class="cab-sheet" class:dense=dense id=SHEET data-testid=SHEET>
            <div class="cab-head"><h3>{name}</h3><p>{w.card_facts(card)}</p></div>
            <svg class="card-strip" viewBox="0 0 720 150" role="img" aria-label=w.card_profile() inner_html=strip></svg>
            <table>
                <thead><tr>{heads.into_iter().collect_view()}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
            {(more > 0).then(|| view! { <p class="more">{w.card_more(more)}</p> })}
            <div class="cab-lists">
                <div><h4>{before.0}</h4>{list("", "", before.1)}</div>
                <div><h4>{trouble.0}</h4><ol>{trouble.1.into_iter().map(|it| view! { <li>{it}</li> }).collect_view()}</ol></div>
                <div><h4>{places.0}</h4>{list("", "", places.1)}</div>
            </div>
            <p class="small-print">{w.card_cautions()}{w.unread().map(|unread| format!(" {unread}"))}</p>
        </div>
    }
    .into_any()
}

fn row(card: CardOf<'_>, descent: &Descent) -> AnyView {
    let w = words();
    let [km, mile] = w.card_span(card, descent);
    let [mean, worst] = w.card_grade(descent, card.units);
    let (gear, stage, hold) = match &descent.choice {
        Choice::Held(it) => (
            it.gear.number().to_string(),
            it.stage.number().to_string(),
            w.card_hold(it.speed.0, it.engine_speed.0, card.units),
        ),
        Choice::NoSafeSpeed(_) => {
            ("–".to_owned(), "–".to_owned(), ["–".to_owned(), String::new(), String::new()])
        }
    };
    let [number, unit, below] = hold;
    let [_, _, gear_head, stage_head, hold_head, _] = w.card_heads();
    let know: Vec<String> = card.know(descent).iter().map(|it| w.card_know(card, it)).collect();
    let know = know.join(" ");
    view! {
        <tr>
            <td><b>{descent.number}</b>" "{km}<small>{mile}</small></td>
            <td>{mean}<small>{worst}</small></td>
            <td class="big" data-label=gear_head>{gear}</td>
            <td class="big" data-label=stage_head>{stage}</td>
            <td data-label=hold_head><span class="big">{number}</span>" "{unit}<small>{below}</small></td>
            <td>{know}</td>
        </tr>
    }
    .into_any()
}
