//! The card for the cab: how it is wanted, and the ways in which it leaves the page.

use super::card_sheet::{SHEET, sheet};
use super::choice::labelled_choice;
use super::drawer;
use super::part::text_field;
use crate::browser::{self, download, picture};
use crate::card::facts::{CardOf, Order};
use crate::format::{self, Units};
use crate::marker::Marker;
use crate::state::{State, Worked};
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use solver::plan::Note;

/// The section.
pub(super) fn card(state: State) -> AnyView {
    let w = words();
    let (text, down) = (state.roadside.marker_text, state.roadside.counts_down);
    let marker = Memo::new(move |_| state.marker());
    let order = RwSignal::new(Order::AlongRoad);
    let [label, along, worst] = w.card_orders();
    let orders = vec![(Order::AlongRoad, "along", along), (Order::WorstFirst, "worst", worst)];
    let content = move || {
        let units = state.units.get();
        let marker = marker.get();
        let worked = state.shown.listed.get()?;
        // Of a road without a descent there is no card; what else leaves the page does.
        Some(match worked.plan.descents.is_empty() {
            true => no_card(&worked),
            false => sheet(state, &worked, card_of(state, &worked, marker, units), order.get()),
        })
    };
    let save = move |_| {
        let units = state.units.get_untracked();
        let rows = state.shown.listed.with_untracked(|worked| {
            worked.as_ref().map(|it| {
                let marker = marker.get_untracked();
                let rows = untrack(|| card_of(state, it, marker, units)).csv();
                (w.rows_name(it.name(), &it.truck.name, it.road.reversed), rows)
            })
        });
        if let Some((name, rows)) = rows {
            download::save(&name, "text/csv", &rows);
        }
    };
    let draw = move |_| {
        let name = state.shown.listed.with_untracked(|worked| {
            worked.as_ref().map(|it| w.picture_name(it.name(), &it.truck.name, it.road.reversed))
        });
        let Some(name) = name else { return };
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
                    <button type="button" class="button primary to-phone" data-testid="save-picture" hidden=none disabled=locked on:click=draw>{w.save_picture()}</button>
                    <button type="button" class="button primary to-paper" data-testid="print-card" hidden=none disabled=locked on:click=move |_| browser::print()>
                        {w.print_card()}
                    </button>
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
                {labelled_choice(label, "card-order", orders, move || order.get(), move |it| order.set(it))}
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
        length_m: worked.road.length_m,
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
