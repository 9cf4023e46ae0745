//! Many roads in a list, the worst descent first; any two of them side by side.

use super::part::list;
use super::verdict::chip;
use crate::compare::Figures;
use crate::format::{self, Units};
use crate::outline;
use crate::state::{Ranked, State, View, Worked};
use crate::words::words;
use leptos::prelude::*;
use solver::order::ascending;
use solver::plan::Descent;
use std::sync::Arc;

/// The section; hidden while there is no list.
pub(super) fn ranked(state: State) -> AnyView {
    let w = words();
    let none = move || state.ranking.rows.with(Vec::is_empty);
    let head = move || {
        state
            .ranking
            .rows
            .with(|rows| w.ranked_head(rows.iter().filter(|it| it.outcome.is_some()).count(), rows.len()))
    };
    let rows = move || {
        let units = state.units.get();
        state.ranking.rows.with(|rows| {
            order(rows).into_iter().map(|index| row(state, index, &rows[index], units)).collect_view()
        })
    };
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
    view! {
        <section class="card ranked" id="ranked" hidden=none>
            <div class="section-head">
                <h2 role="status" data-testid="ranked-head">{head}</h2>
                <button type="button" class="button" data-testid="end-ranking" on:click=move |_| state.end_ranking()>
                    {w.end_two()}
                </button>
            </div>
            <p class="about">{w.ranked_sentence()}</p>
            {changed}
            <ol class="ranks">{rows}</ol>
        </section>
    }
    .into_any()
}

/// Roads with their worst descent first, then those still worked out, then those that cannot be.
fn order(rows: &[Ranked]) -> Vec<usize> {
    let key = |row: &Ranked| match &row.outcome {
        Some(Ok(worked)) => {
            // A road without a descent comes last of those that are worked out.
            -worked.plan.deciding().map_or(f64::MIN, Descent::severity)
        }
        None => f64::INFINITY,
        // Behind all numbers.
        Some(Err(_)) => f64::NAN,
    };
    ascending(rows.iter().map(key))
}

fn row(state: State, index: usize, ranked: &Ranked, units: Units) -> AnyView {
    let w = words();
    let file = ranked.leg.file.name.clone();
    let track = ranked.outcome.as_ref().and_then(|it| it.as_ref().ok()).map(|it| it.road.name.clone());
    // Most exports are called as their track is.
    let track = track.filter(|it| !it.is_empty() && !file.starts_with(it.as_str()));
    let content = match &ranked.outcome {
        None => view! { <p class="about">{w.ranking()}</p> }.into_any(),
        Some(Err(sentence)) => view! { <p class="problem">{sentence.clone()}</p> }.into_any(),
        Some(Ok(worked)) => figures(state, index, worked, units),
    };
    let [_, kept, shown, _] = w.two_heads();
    let marks = move || {
        let on_page = state.ranked_on_page(index);
        let all = [(on_page.shown, "ranked-shown", shown), (on_page.beside, "ranked-beside", kept)];
        let all = all.into_iter().filter(|(is, _, _)| *is);
        all.map(|(_, mark, word)| view! { <span class="tag" data-testid=mark>{word}</span> }).collect_view()
    };
    let current = move || state.ranked_on_page(index).shown.then_some("true");
    view! {
        <li data-testid="ranked-row" aria-current=current>
            <h3>
                <span class="file">{file}</span>
                {track.map(|track| view! { <small>{track}</small> })}
                <span role="status">{marks}</span>
            </h3>
            {content}
        </li>
    }
    .into_any()
}

fn figures(state: State, index: usize, worked: &Arc<Worked>, units: Units) -> AnyView {
    let w = words();
    let figures = Figures::of(&worked.road, &worked.plan, &worked.picture);
    let verdict = match &figures.worst {
        Some(choice) => chip(choice),
        None => view! { <span>{w.no_descent(figures.blank_m > 0.0)}</span> }.into_any(),
    };
    let line = [
        format::distance(figures.length_m, units),
        format::temperature(figures.hottest_c, units),
        figures.slowest_hold.map_or_else(|| "–".to_owned(), |it| format::hold_speed(it, units)),
        w.time(figures.time_s),
    ];
    let (start_m, end_m) = worked.ends_m();
    // No button here: the road is turned when it is open, or among the files before.
    let climbs = outline::climbs((start_m, end_m), figures.fall_m).then(|| w.climbs(start_m, end_m, units));
    let blank = worked.blank().map(|blank| w.blank(&blank, units));
    let labels = w.ranked_labels();
    let facts = labels
        .into_iter()
        .zip(line)
        .map(|(label, text)| view! { <div><dt>{label}</dt><dd>{text}</dd></div> }.into_any());
    let facts: Vec<AnyView> = facts.collect();
    let open = move |_| {
        state.open_ranked(index);
        state.go(View::Road);
    };
    view! {
        {verdict}
        <dl>
            <div>
                <dt>{w.ranked_ends()}</dt>
                <dd data-testid="ranked-ends">
                    <span aria-hidden="true">{w.ends(start_m, end_m, units)}</span>
                    <span class="unseen">{w.ends_spoken(start_m, end_m, units)}</span>
                </dd>
            </div>
            {facts}
        </dl>
        <div class="buttons">
            <button type="button" class="button small" data-testid="open-ranked" on:click=open>
                {w.open_ranked()}
            </button>
            <button type="button" class="button small" data-testid="beside-ranked" on:click=move |_| state.keep_ranked_beside(index)>
                {w.beside_ranked()}
            </button>
        </div>
        {list("notes", "ranked-notes", blank.into_iter().chain(climbs).collect())}
    }
    .into_any()
}
