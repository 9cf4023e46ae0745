//! The pages of the card: black on white, what is printed and drawn.

use super::part::{list, pieces};
use crate::card::facts::{CardOf, Order};
use crate::card::pages::Part;
use crate::card::sheet::{DescentRow, Hardest, How, Page, Row, Sheet, Way};
use crate::chart::{CardStrip, Labelled, card_strip};
use crate::format::Units;
use crate::marker::Marker;
use crate::state::{State, Worked};
use crate::words::{Piece, words};
use leptos::prelude::*;
use std::sync::Arc;

/// Id of what is printed.
pub(super) const SHEET: &str = "sheet";

/// Sizes of the strip, px of its own: on paper, and a column as wide as a phone.
const ON_PAPER: (f64, f64) = (718.0, 96.0);
const ON_PHONE: (f64, f64) = (332.0, 84.0);

/// All pages.
pub(super) fn sheet(state: State, worked: &Arc<Worked>, card: CardOf<'_>, order: Order) -> AnyView {
    let sheet = words().card_sheet(card, worked.name(), order);
    let strips = Strips { worked, marker: card.marker, units: card.units };
    let pages = sheet.pages();
    let pages: Vec<AnyView> = pages.iter().map(|page| self::page(state, &sheet, page, &strips)).collect();
    view! { <div class="card-host"><div class="card-pages" id=SHEET data-testid=SHEET>{pages}</div></div> }
        .into_any()
}

fn page(state: State, sheet: &Sheet, page: &Page, strips: &Strips) -> AnyView {
    let w = words();
    let is_first = page.number == 1;
    let is_last = page.number == page.count;
    let here = sheet.numbers_on(page);
    let rows: Vec<AnyView> = page.parts.iter().map(|it| row(sheet, it)).collect();
    let [by, gear, stage, hold, _] = w.card_heads();
    let heads =
        [by, gear, stage, hold, &sheet.know_head].map(|it| view! { <span>{it.to_owned()}</span> }.into_any());
    let notes = is_first.then(|| list("card-notes", "card-notes", sheet.notes.clone()));
    let stop = sheet.stop.clone().map(|[stop, why]| {
        view! { <div class="card-stop" data-testid="card-stop"><p>{stop}</p><p>{why}</p></div> }.into_any()
    });
    view! {
        <article class="card-page" data-testid="card-page">
            <div class="card-top">
                <div>
                    <h3>{sheet.name.clone()}</h3>
                    <p data-testid="card-about">{sheet.about.clone()}</p>
                    {sheet.covers.clone().map(|covers| view! { <p><b data-testid="card-covers">{covers}</b></p> })}
                </div>
                <p class="card-of">
                    <b data-testid="card-page-of">{w.card_page(page.number, page.count)}</b>
                    <small>{w.card_page_of(sheet, page)}</small>
                </p>
            </div>
            {old(state)}
            {if is_first { mine(sheet) } else { mine_again(sheet) }}
            {stop}
            {notes}
            {sheet.hardest.as_ref().map(hardest)}
            {strips.on_page(&here)}
            <p class="card-heads" aria-hidden="true">{heads.into_iter().collect_view()}</p>
            <ol class="card-rows">{rows}</ol>
            {is_last.then(|| tail(sheet))}
            {(!is_last).then(|| view! { <p class="card-foot">{pieces(w.caution_line())}</p> })}
        </article>
    }
    .into_any()
}

/// That the card belongs to entries before, however it is printed: the browser's own keys ask nobody.
/// While an answer is only on its way it is for paper alone. It lies over the picture of the road.
fn old(state: State) -> AnyView {
    view! {
        <p
            class="card-old"
            class:passing=move || !state.shown.stale.get()
            hidden=move || state.can_export()
            data-testid="card-old"
        >
            {words().card_is_old()}
        </p>
    }
    .into_any()
}

/// What it was worked out for, and whether that is the driver's truck.
fn mine(sheet: &Sheet) -> AnyView {
    let w = words();
    let checks: Vec<AnyView> = sheet.checks.iter().cloned().map(ticked).collect();
    view! {
        <div class="card-two">
            <div><h4>{w.worked_out_for()}</h4><p data-testid="card-worked">{sheet.worked.clone()}</p></div>
            <div class="card-mine" data-testid="card-mine">
                <h4>{sheet.your_truck.clone()}</h4>
                <ul>{checks}</ul>
                <p>{pieces(sheet.one_empty.clone())}</p>
                {sheet.example.clone().map(|it| view! { <p><b>{it}</b></p> })}
            </div>
        </div>
    }
    .into_any()
}

/// The same on a page behind the first, line by line.
fn mine_again(sheet: &Sheet) -> AnyView {
    let checks: Vec<AnyView> = sheet.checks.iter().cloned().map(ticked_in_line).collect();
    view! {
        <div class="card-again" data-testid="card-mine">
            <p>{sheet.facts.clone()}</p>
            <p><b>{sheet.your_truck.clone()}</b>{checks}" "{pieces(sheet.one_empty.clone())}</p>
            {sheet.example.clone().map(|it| view! { <p><b>{it}</b></p> })}
        </div>
    }
    .into_any()
}

fn ticked_in_line(text: String) -> AnyView {
    view! { " "<span class="card-check"><span class="card-tick-box"></span>{text}</span> }.into_any()
}

fn ticked(text: String) -> AnyView {
    view! { <li><span class="card-tick-box"></span>{text}</li> }.into_any()
}

fn hardest(it: &Hardest) -> AnyView {
    let by = it.way.as_ref().map(|way| by(&way.by));
    let how = match &it.way {
        Some(way) => how(&way.how),
        None => view! { <b class="card-none">{words().no_safe_speed()}</b> }.into_any(),
    };
    view! {
        <div class="card-hardest" data-testid="card-hardest">
            <b class="card-circle">{it.number}</b>
            <b class="card-hardest-head">{it.head.clone()}</b>
            {by}
            {how}
            <p><b>{it.steep.clone()}</b>" "<br/>{it.then.clone()}</p>
        </div>
    }
    .into_any()
}

fn row(sheet: &Sheet, part: &Part) -> AnyView {
    match &sheet.rows[part.block] {
        Row::Descent(row) => descent(row, part),
        Row::Unknown(text) => {
            view! { <li class="card-row unknown" data-testid="card-unknown"><b>{text.clone()}</b></li> }
                .into_any()
        }
    }
}

fn descent(row: &DescentRow, part: &Part) -> AnyView {
    let ways: Vec<AnyView> = row.ways[part.pieces.clone()].iter().map(way).collect();
    let know = (part.pieces.start == 0).then(|| row.know.iter().cloned().map(know).collect::<Vec<AnyView>>());
    view! {
        <li class="card-row" class:hardest=row.is_hardest data-testid="card-row">
            <b class="card-circle">{row.number}</b>
            <div class="card-ways">{ways}</div>
            <div class="card-know">{know}</div>
        </li>
    }
    .into_any()
}

fn know(line: Vec<Piece>) -> AnyView {
    view! { <p>{pieces(line)}</p> }.into_any()
}

fn way(way: &Way) -> AnyView {
    view! {
        {way.change.clone().map(|change| view! { <p class="card-change">{change}</p> })}
        <div class="card-way" data-testid="card-leg">{by(&way.by)} {how(&way.how)}</div>
    }
    .into_any()
}

fn by([before, number, other]: &[String; 3]) -> AnyView {
    view! {
        <span class="card-by"><small>{before.clone()}</small>" "<b>{number.clone()}</b><br/><small>{other.clone()}</small></span>
    }
    .into_any()
}

fn how(how: &How) -> AnyView {
    let [_, gear_head, stage_head, hold_head, _] = words().card_heads();
    match how {
        How::Held { gear, stage, hold: [number, unit, other, turns] } => view! {
            <span class="card-gear"><small>{gear_head}</small><b>{*gear}</b></span>
            <span class=format!("card-stage stage-{}", stage.min(&4))><small>{stage_head}</small><b>{*stage}</b></span>
            <span class="card-hold">
                <small>{hold_head}</small>
                <b>{number.clone()}</b>
                <span>{unit.clone()}<br/>{other.clone()}<br/>{turns.clone()}</span>
            </span>
        }
        .into_any(),
        How::None(text) => view! { <b class="card-none">{text.clone()}</b> }.into_any(),
    }
}

/// What stands at the end: before each crest, in trouble, the places, all cautions.
fn tail(sheet: &Sheet) -> AnyView {
    let w = words();
    let before: Vec<AnyView> = sheet.before.iter().cloned().map(ticked).collect();
    let trouble: Vec<AnyView> = sheet.trouble.iter().cloned().map(in_order).collect();
    view! {
        <div class="card-lists">
            <div><h4>{w.before_crest_head()}</h4><ul>{before}</ul></div>
            <div><h4>{w.in_trouble_head()}</h4><ol>{trouble}</ol></div>
        </div>
        <p class="card-places" data-testid="card-places">{sheet.places.clone()}</p>
        <p class="card-small" data-testid="card-small">{sheet.small.clone()}</p>
    }
    .into_any()
}

fn in_order(text: String) -> AnyView {
    view! { <li>{text}</li> }.into_any()
}

/// What the pictures of the road on the pages have in common.
struct Strips<'a> {
    worked: &'a Worked,
    marker: Marker,
    units: Units,
}

impl Strips<'_> {
    /// On paper the descents of this page stand out; in one column all of them do.
    fn on_page(&self, here: &[usize]) -> AnyView {
        let w = words();
        let paper = self.drawn(ON_PAPER, &|number| here.contains(&number));
        let phone = self.drawn(ON_PHONE, &|_| true);
        let frame = |(wide, high): (f64, f64)| format!("0 0 {wide} {high}");
        view! {
            <svg class="card-strip" viewBox=frame(ON_PAPER) role="img" aria-label=w.card_profile() inner_html=paper></svg>
            <svg class="card-strip narrow" viewBox=frame(ON_PHONE) role="img" aria-label=w.card_profile() inner_html=phone></svg>
        }
        .into_any()
    }

    fn drawn(&self, size: (f64, f64), is_here: &dyn Fn(usize) -> bool) -> String {
        let labelled = |it: &solver::plan::Descent| Labelled {
            number: it.number,
            from: it.from,
            to: it.to,
            is_here: is_here(it.number),
        };
        let descents: Vec<Labelled> = self.worked.plan.descents.iter().map(labelled).collect();
        let unknown: Vec<(usize, usize)> =
            self.worked.road.unassessed.iter().map(|it| (it.from, it.to)).collect();
        let unit = if self.units == Units::Metric { "km" } else { words().mile() };
        card_strip(CardStrip {
            picture: &self.worked.picture,
            descents: &descents,
            unknown: &unknown,
            marker: self.marker,
            units: self.units,
            unit,
            size,
        })
    }
}
