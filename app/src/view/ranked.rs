//! Many roads in a table, each driven both ways; any two of them side by side.

mod list;
mod row;
mod saved;

use super::choice::choice;
use crate::browser;
use crate::format;
use crate::many::{Column, Way};
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use list::{List, Road};
use row::row;
use solver::plan::Verdict;

/// The section.
pub(super) fn ranked(state: State) -> AnyView {
    let w = words();
    let list = List::new(state);
    let head = move || {
        let roads = list.roads.get();
        let done = roads.iter().filter(|it| it.ways.is_done()).count();
        w.ranked_head(done, roads.len())
    };
    let at_work = move || list.roads.get().iter().any(|it| !it.ways.is_done());
    let changed = move || {
        let now = state.entered.entries.with(|entries| (entries.truck.clone(), entries.day));
        state.ranking.made_for.with(|of| of.as_ref().is_some_and(|of| *of != now)).then(|| {
            view! {
                <button type="button" class="button" data-testid="rank-again" on:click=move |_| state.rank_again()>
                    {w.rank_again()}
                </button>
            }
        })
    };
    let limit = move || {
        let of = state.ranking.made_for.get();
        of.map(|(_, day)| w.limit_of_list(&format::temperature(day.heat_limit_c, state.units.get())))
    };
    let compare = move |_| {
        if let Some(pair) = list.pair() {
            state.compare_ranked(pair);
        }
    };
    let ticked = move || state.ranking.ticked.with(|it| it.len());
    let is_two = move || state.beside.road.with(Option::is_some);
    view! {
        <section class="card ranked" id="ranked">
            <div class="section-head">
                <h2 role="status" id="many-head" data-testid="ranked-head">{head}</h2>
                <div class="buttons">
                    <button type="button" class="button small" data-testid="stop-ranking" hidden=move || !at_work() on:click=move |_| state.stop_ranking()>
                        {w.stop_ranking()}
                    </button>
                    <button type="button" class="button small primary" data-testid="compare-ticked" disabled=move || list.pair().is_none() on:click=compare>
                        {move || w.compare_ticked(ticked())}
                    </button>
                    <button type="button" class="button small" data-testid="to-two" hidden=move || !is_two() on:click=move |_| state.ranking.in_front.set(false)>
                        {w.two_head()}
                    </button>
                    <button type="button" class="button small" data-testid="print-list" on:click=move |_| browser::print_only("ranked")>
                        {w.print_list()}
                    </button>
                    <button type="button" class="button small" data-testid="save-list" on:click=move |_| saved::save(list)>
                        {w.save_list()}
                    </button>
                    <button type="button" class="button small" data-testid="end-ranking" on:click=move |_| state.end_ranking()>
                        {w.end_two()}
                    </button>
                </div>
            </div>
            <p class="about">{w.ranked_sentence()}</p>
            {changed}
            <div class="of-list">
                {ways(list)}
                {verdicts(list)}
            </div>
            {table(list)}
            <p class="about">{limit}" · "{w.blank_in_list()}</p>
            <p class="about">{w.two_caution()}</p>
        </section>
    }
    .into_any()
}

fn ways(list: List) -> AnyView {
    let w = words();
    let [harder, recorded, reversed] = w.driven_ways();
    let all = vec![
        (Way::Harder, "harder", harder),
        (Way::Recorded, "recorded", recorded),
        (Way::Reversed, "reversed", reversed),
    ];
    choice(w.driven_label(), "way", all, move || list.way.get(), move |it| list.way.set(it))
}

/// How many roads there are of each verdict; each shows these alone.
fn verdicts(list: List) -> AnyView {
    let w = words();
    let button = |verdict: Option<Verdict>| {
        let count = Memo::new(move |_| {
            let roads = list.roads.get();
            roads.iter().filter_map(|it| list.line_of(it)).filter(|it| it.verdict() == verdict).count()
        });
        let pressed = move || list.only.get() == Some(verdict);
        let press = move |_| list.only.set((!pressed()).then_some(verdict));
        let name = verdict.map_or(w.short_no_descent(), |it| w.verdict(it));
        view! {
            <button
                type="button"
                class="button small"
                data-testid=format!("only-{}", verdict.map_or("none".to_owned(), |it| format!("{it:?}")))
                hidden=move || count.get() == 0
                aria-pressed=move || if pressed() { "true" } else { "false" }
                on:click=press
            >
                {name}" "<b>{move || count.get()}</b>
            </button>
        }
        .into_any()
    };
    let all = [
        Some(Verdict::NoSafeSpeed),
        Some(Verdict::NeedsServiceBrakes),
        Some(Verdict::LittleInReserve),
        Some(Verdict::RetarderHolds),
        None,
    ];
    view! {
        <div class="only" role="group" aria-label=w.show_verdicts()>{all.map(button).into_iter().collect_view()}</div>
    }
    .into_any()
}

fn table(list: List) -> AnyView {
    let w = words();
    let sorted = [
        Some(Column::Road),
        Some(Column::Length),
        None,
        None,
        Some(Column::Hardest),
        Some(Column::Grade),
        Some(Column::Hold),
        Some(Column::Verdict),
        Some(Column::Time),
        Some(Column::Fuel),
        Some(Column::Braking),
        Some(Column::Heat),
        Some(Column::Heights),
        None,
    ];
    let heads: Vec<AnyView> =
        w.many_columns().into_iter().zip(sorted).map(|(text, column)| head(list, text, column)).collect();
    let rows = move || list.in_order();
    // Rows of another list are other rows, though their numbers are the same.
    let key = |road: &Road| (road.list, road.index);
    view! {
        <div class="wide-table" tabindex="0" role="region" aria-labelledby="many-head">
            <table class="many" data-testid="many" aria-labelledby="many-head">
                <thead><tr><td></td>{heads}</tr></thead>
                <tbody>
                    <For each=rows key=key children=move |road| row(list, road) />
                </tbody>
            </table>
        </div>
    }
    .into_any()
}

/// The head of a column; where the list can be put in order by it, a button that does.
fn head(list: List, text: &'static str, column: Option<Column>) -> AnyView {
    let Some(column) = column else { return view! { <th scope="col">{text}</th> }.into_any() };
    let chosen = move || list.column.get() == column;
    // The worst first is from high to low, but of names from A to Z.
    let falls = move || list.turned.get() == (column == Column::Road);
    let sorted = move || match (chosen(), falls()) {
        (false, _) => "none",
        (true, true) => "descending",
        (true, false) => "ascending",
    };
    let press = move |_| {
        list.turned.set(untrack(chosen) && !list.turned.get_untracked());
        list.column.set(column);
    };
    view! {
        <th scope="col" aria-sort=sorted>
            <button type="button" data-testid=format!("sort-{column:?}") on:click=press>
                {text}<span aria-hidden="true">{move || if !chosen() { "" } else if falls() { " ▾" } else { " ▴" }}</span>
            </button>
        </th>
    }
    .into_any()
}
