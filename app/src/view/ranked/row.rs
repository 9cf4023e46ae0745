//! A road of the list in one row.

use super::super::verdict::chip;
use super::list::{List, Road};
use crate::chart::small;
use crate::format::{self, Units};
use crate::many::{Hardest, Line};
use crate::words::words;
use leptos::prelude::*;
use solver::units::Joules;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Columns behind the name.
const COLUMNS: &str = "13";
/// Size of the small profile, px.
const PROFILE: (f64, f64) = (94.0, 22.0);

/// The row.
pub(super) fn row(list: List, road: Road) -> AnyView {
    let state = list.state;
    let index = road.index;
    let current = move || state.ranked_on_page(index).shown.then_some("true");
    let ticked = move || state.ranking.ticked.with(|it| it.contains(&index));
    let name = road.file.clone();
    let cells = move || cells(list, &road, state.units.get());
    view! {
        <tr data-testid="ranked-row" aria-current=current class:ticked=ticked>
            <td>
                <input
                    type="checkbox"
                    data-testid="tick-ranked"
                    aria-label=words().tick_ranked(&name)
                    prop:checked=ticked
                    on:change=move |event| put(state.ranking.ticked, index, event_target_checked(&event))
                />
            </td>
            {cells}
        </tr>
    }
    .into_any()
}

fn put(set: RwSignal<BTreeSet<usize>>, index: usize, is_in: bool) {
    set.update(|set| {
        if is_in {
            set.insert(index);
        } else {
            set.remove(&index);
        }
    });
}

fn cells(list: List, road: &Road, units: Units) -> AnyView {
    let w = words();
    if let Some(way) = list.way_of(road) {
        let lines = road.lines.get();
        if let Some(line) = &lines[way] {
            return figures(list, road, way, line, lines[1 - way].as_ref(), units);
        }
    }
    let text = match road.ways.why_not() {
        Some(why) => view! { <td class="problem" colspan=COLUMNS>{why}</td> }.into_any(),
        None => view! { <td class="about" colspan=COLUMNS>{w.ranking()}</td> }.into_any(),
    };
    view! { <th scope="row"><span class="file">{road.file.clone()}</span></th> {text} }.into_any()
}

fn figures(
    list: List,
    road: &Road,
    way: usize,
    line: &Arc<Line>,
    other: Option<&Arc<Line>>,
    units: Units,
) -> AnyView {
    let w = words();
    let it = &line.figures;
    let dash = || "–".to_owned();
    let hardest = line.hardest;
    let open = {
        let (state, index) = (list.state, road.index);
        move |_| state.open_ranked(index, way)
    };
    let verdict = match &hardest {
        Some(hardest) => chip(&hardest.choice),
        None => view! { <span>{w.short_no_descent()}</span> }.into_any(),
    };
    let picture = road.ways.worked(way).map(|worked| small(&worked.picture, PROFILE));
    let heat = format::temperature(it.hottest_c, units);
    let blank = (it.blank_m > 0.0).then(|| view! { <small>{format::length(it.blank_m, units)}" ?"</small> });
    view! {
        <th scope="row">
            <button type="button" class="to-road" data-testid="open-ranked" on:click=open>{line.name.clone()}</button>
            {file_beside(road, line)}
            {marks(list, road.index)}
        </th>
        <td>{format::distance(it.length_m, units)}</td>
        <td>{turn(list, road, way)}</td>
        <td><svg class="small-road" viewBox="0 0 94 22" width="94" height="22" aria-hidden="true" inner_html=picture></svg></td>
        <td>{hardest.map_or_else(dash, |it| format::length(it.length_m, units))}</td>
        <td>{hardest.map_or_else(dash, |it| format::grade(it.grade))}</td>
        <td class="told-gear">{told(hardest, units)}</td>
        <td>{verdict}</td>
        <td>{w.short_time(it.time_s)}</td>
        <td>{format::fuel(solver::motion::litres_of_fuel(Joules(it.fuel_j)), units)}</td>
        <td>{format::work(it.holding_j + it.service_j)}</td>
        <td class="heat" class:hot=line.too_hot()>{line.too_hot().then_some("▲ ")}{heat}{bar(line)}</td>
        <td>{w.heights_word(line.heights)}" "{blank}</td>
        <td class="other-way">{other.map(|other| other_way(way, other, units))}</td>
    }
    .into_any()
}

/// The file, where it is not called as its track is.
fn file_beside(road: &Road, line: &Line) -> Option<AnyView> {
    let same = road.file.starts_with(line.name.as_str());
    (!same).then(|| view! { <small class="file">{road.file.clone()}</small> }.into_any())
}

/// Whether the road is the one shown, or kept beside it.
fn marks(list: List, index: usize) -> AnyView {
    let [_, kept, shown, _] = words().two_heads();
    let marks = move || {
        let on_page = list.state.ranked_on_page(index);
        let all = [(on_page.shown, "ranked-shown", shown), (on_page.beside, "ranked-beside", kept)];
        let all = all.into_iter().filter(|(is, _, _)| *is);
        all.map(|(_, mark, word)| view! { <span class="tag" data-testid=mark>{word}</span> }).collect_view()
    };
    view! { <span role="status">{marks}</span> }.into_any()
}

/// Which way the road is driven in this row; pressed, the other one.
fn turn(list: List, road: &Road, way: usize) -> AnyView {
    let (turned, index) = (list.state.ranking.turned, road.index);
    let is_turned = turned.with_untracked(|it| it.contains(&index));
    let press = move |_| put(turned, index, !is_turned);
    let name = format!("{} ({})", words().turn_ranked(&road.file), way_word(way));
    view! {
        <button type="button" class="button small turn" data-testid="turn-ranked" aria-label=name on:click=press>
            {arrow(way)}
        </button>
    }
    .into_any()
}

fn arrow(way: usize) -> &'static str {
    ["→", "←"][way]
}

pub(super) fn way_word(way: usize) -> &'static str {
    let [_, recorded, reversed] = words().driven_ways();
    [recorded, reversed][way]
}

/// Gear, stage and speed of the slowest leg.
fn told(hardest: Option<Hardest>, units: Units) -> AnyView {
    let Some(advice) = hardest.and_then(|it| it.choice.advice().copied()) else { return "–".into_any() };
    let stage = words().short_stage(advice.stage.number());
    view! {
        <span class="square">{advice.gear.number()}</span>
        <span class="square stage"><i>{stage}</i></span>
        <b>{format::hold_speed(advice.speed.0, units)}</b>
    }
    .into_any()
}

/// The hottest brakes against their limit.
fn bar(line: &Line) -> AnyView {
    // The limit stands at four fifths.
    const LIMIT_PX: f64 = 40.0;
    let width = (line.figures.hottest_c / line.limit_c * LIMIT_PX).clamp(0.0, 50.0);
    view! {
        <svg viewBox="0 0 50 12" width="50" height="12" aria-hidden="true">
            <rect class="track" x="0" y="3" width="50" height="6"></rect>
            <rect class="fill" x="0" y="3" width=format!("{width:.1}") height="6"></rect>
            <rect class="limit" x="39" y="0" width="2" height="12"></rect>
        </svg>
    }
    .into_any()
}

fn other_way(way: usize, other: &Line, units: Units) -> AnyView {
    let w = words();
    let text = match &other.hardest {
        None => w.short_no_descent().to_owned(),
        Some(hardest) => match hardest.choice.advice() {
            Some(advice) => {
                format!("{} · {}", advice.gear.number(), format::hold_speed(advice.speed.0, units))
            }
            None => w.verdict_of(&hardest.choice).to_owned(),
        },
    };
    let spoken = other.hardest.map(|it| w.verdict_of(&it.choice));
    view! {
        <span aria-hidden="true">{arrow(1 - way)}" "</span>
        <span class="unseen">{way_word(1 - way)}": "</span>
        {text}
        <span class="unseen">" "{spoken}</span>
    }
    .into_any()
}
