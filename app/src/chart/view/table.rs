//! What the pictures show, as tables: for a screen reader, and folded for everybody.

use super::look::Look;
use crate::browser;
use crate::chart::reading::Reading;
use crate::chart::spans::{Span, spans};
use crate::chart::{Lane, engine};
use crate::format::{self, Units};
use crate::words::words;
use leptos::ev::Event;
use leptos::prelude::*;
use solver::Truck;

/// Cells of a row; the first is its head.
type Row = Vec<String>;

/// The road as a table, made when it is opened.
pub(super) fn view(look: Look) -> AnyView {
    let content = move || {
        let prepared = look.settled.get()?;
        let name = words().road_table().to_owned();
        Some((name, heads(), spans(&prepared.picture).iter().map(|span| row(span, prepared.units)).collect()))
    };
    fold(words().road_table(), "road-table", Box::new(content))
}

/// The truck's power by engine speed as a table; `truck` gives what is drawn, in which unit.
pub(crate) fn power(truck: Box<dyn Fn() -> Option<(Truck, Units, &'static str)> + Send + Sync>) -> AnyView {
    let content = move || {
        let (truck, units, unit) = truck()?;
        let w = words();
        let stages = truck.stages().map(|stage| w.holds(&w.table_stage(usize::from(stage.number()))));
        let heads = w.power_heads().into_iter().map(str::to_owned).chain(stages).collect();
        let line = |(speed, powers): (f64, Vec<f64>)| {
            let powers = powers.into_iter().map(|it| format::whole(it / units.watts_per_power()));
            std::iter::once(format::whole(speed)).chain(powers).collect()
        };
        let name = format!("{}, {unit}", w.power_table());
        Some((name, heads, engine::figures(&truck).into_iter().map(line).collect()))
    };
    fold(words().power_table(), "power-table", Box::new(content))
}

fn heads() -> Row {
    let w = words();
    let rest = [
        w.reading(Reading::Grade),
        w.lane(Lane::Gear),
        w.lane(Lane::Stage),
        w.lane(Lane::Speed),
        w.lane(Lane::Heat),
    ];
    w.road_table_heads().into_iter().chain(rest).map(str::to_owned).collect()
}

fn row(span: &Span, units: Units) -> Row {
    let w = words();
    let unknown = || "–".to_owned();
    let ends = |low: String, high: String| if low == high { low } else { format!("{low}–{high}") };
    let part = match span.descent {
        _ if !span.assessed => w.not_assessed().to_owned(),
        Some(number) => w.descent(number),
        None => w.between().to_owned(),
    };
    let grade = if span.assessed { format::grade(span.grade) } else { unknown() };
    let gear = span.gear.map_or_else(unknown, |(low, high)| ends(low.to_string(), high.to_string()));
    let stage = span.stage.map_or_else(unknown, |(low, high)| ends(w.short_stage(low), w.short_stage(high)));
    let speed = span.speed.map_or_else(unknown, |(low, high)| {
        let both = ends(format::hold_number(low, units), format::hold_number(high, units));
        format!("{both}{}{}", format::NO_BREAK, units.speed())
    });
    let heat = span.heat.map_or_else(unknown, |step| w.heat(step).to_owned());
    vec![format::span(span.from_m, span.to_m, units), part, grade, gear, stage, speed, heat]
}

/// A table behind its name. While it is folded nothing of it is made. As one text, like the
/// pictures: rows of views are code, and none of them changes alone.
fn fold(
    name: &'static str,
    testid: &'static str,
    content: Box<dyn Fn() -> Option<(String, Row, Vec<Row>)> + Send + Sync>,
) -> AnyView {
    let open = RwSignal::new(false);
    let made = move || {
        let content = if open.get() { content() } else { None };
        content.map_or_else(String::new, |(name, heads, rows)| table(&name, &heads, &rows))
    };
    view! {
        <details class="more" data-testid=testid on:toggle=move |event: Event| open.set(browser::is_open(&event))>
            <summary>{name}</summary>
            <div class="wide-table" tabindex="0" role="region" aria-label=name inner_html=made></div>
        </details>
    }
    .into_any()
}

/// All that stands in it are words and figures of our own.
fn table(name: &str, heads: &Row, rows: &[Row]) -> String {
    let line = |first: &str, rest: &str, row: &Row| {
        let cells = row.iter().enumerate().map(|(index, text)| {
            let (begin, end) = if index == 0 { (first, "th") } else { (rest, &rest[..2]) };
            format!("<{begin}>{text}</{end}>")
        });
        format!("<tr>{}</tr>", cells.collect::<String>())
    };
    let head = line("th scope=col", "th scope=col", heads);
    let body: String = rows.iter().map(|row| line("th scope=row", "td", row)).collect();
    format!(
        "<table class=gear-table><caption class=unseen>{name}</caption><thead>{head}</thead><tbody>{body}</tbody></table>"
    )
}
