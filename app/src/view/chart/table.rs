//! What the pictures show, as tables: for a screen reader, and folded for everybody.

use super::look::Look;
use crate::browser;
use crate::chart::reading::Reading;
use crate::chart::spans::{Span, spans};
use crate::chart::{Lane, engine};
use crate::format::{self, Units};
use crate::tell::say::UNKNOWN;
use crate::words::words;
use leptos::ev::Event;
use leptos::prelude::*;
use solver::Truck;

/// What the lanes of a stretch are, in their order.
const READINGS: [Reading; 4] = [Reading::Gear, Reading::Stage, Reading::Speed, Reading::Heat];
/// Cells of a row; the first is its head.
type Row = Vec<String>;
/// Name, heads and rows.
type Table = (String, Row, Vec<Row>);

/// The road as a table, made when it is opened.
pub(crate) fn road(look: Look) -> AnyView {
    let content = move || {
        let prepared = look.settled.get()?;
        let rows = spans(&prepared).iter().map(|span| row(span, prepared.units)).collect();
        Some((words().road_table().to_owned(), heads(), rows))
    };
    fold(words().road_table(), "road-table", Box::new(content))
}

/// The truck's power by engine speed as a table; `truck` gives what is drawn, in which unit.
pub(crate) fn power(truck: Box<dyn Fn() -> Option<(Truck, Units, &'static str)> + Send + Sync>) -> AnyView {
    let content = move || {
        let (truck, units, unit) = truck()?;
        let w = words();
        let mut heads = w.power_heads().map(str::to_owned).to_vec();
        for stage in truck.stages() {
            heads.push(w.holds(&w.table_stage(usize::from(stage.number()))));
        }
        let rows = engine::figures(&truck, units);
        let rows = rows.into_iter().map(|row| row.into_iter().map(format::whole).collect()).collect();
        Some((format!("{}, {unit}", w.power_table()), heads, rows))
    };
    fold(words().power_table(), "power-table", Box::new(content))
}

fn heads() -> Row {
    let w = words();
    let [at, part] = w.road_table_heads();
    let [gear, stage, speed, heat] =
        [Lane::Gear, Lane::Stage, Lane::Speed, Lane::Heat].map(|lane| w.lane(lane));
    [at, part, w.reading(Reading::Grade), gear, stage, speed, heat].map(str::to_owned).to_vec()
}

fn row(span: &Span, units: Units) -> Row {
    let w = words();
    let part = match span.descent {
        _ if !span.assessed => w.not_assessed().to_owned(),
        Some(number) => w.descent(number),
        None => w.between().to_owned(),
    };
    let grade = if span.assessed { format::grade(span.grade) } else { UNKNOWN.to_owned() };
    let [from, to] = span.ends_m;
    let mut row = vec![format::span(from, to, units), part, grade];
    for (ends, reading) in span.lanes.into_iter().zip(READINGS) {
        let Some((low, high)) = ends else {
            row.push(UNKNOWN.to_owned());
            continue;
        };
        let text = |value: u8| match reading {
            Reading::Speed => value.to_string(),
            Reading::Gear | Reading::Stage | Reading::Heat | Reading::Grade => w.step(reading, value, units),
        };
        let mut cell = text(high);
        // Of the heat only the hottest matters.
        if low != high && reading != Reading::Heat {
            cell = format!("{}–{cell}", text(low));
        }
        if reading == Reading::Speed {
            cell = format!("{cell}{}{}", format::NO_BREAK, units.speed());
        }
        row.push(cell);
    }
    row
}

/// A table behind its name. While it is folded nothing of it is made. As one text, like the
/// pictures: rows of views are code, and none of them changes alone.
fn fold(
    name: &'static str,
    testid: &'static str,
    content: Box<dyn Fn() -> Option<Table> + Send + Sync>,
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
