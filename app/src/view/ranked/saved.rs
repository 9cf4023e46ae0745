//! The list for a spreadsheet.

use super::super::card::facts;
use super::list::{List, Road};
use super::row::way_word;
use crate::browser::download;
use crate::format::{self, Units, numerals};
use crate::many::{Cell, Line, spreadsheet};
use crate::state::Worked;
use crate::words::words;
use leptos::prelude::*;
use solver::units::Joules;
use std::sync::Arc;

/// Saves the rows that are ticked, or all that are shown, in their order.
pub(super) fn save(list: List) {
    let w = words();
    let units = list.state.units.get_untracked();
    let rows = untrack(|| {
        let ticked = list.state.ranking.ticked.get();
        let of_all = ticked.is_empty();
        let roads = list.in_order().into_iter().filter(|it| of_all || ticked.contains(&it.index));
        let rows = roads.map(|road| match list.way_of(&road).and_then(|way| known(&road, way)) {
            Some((way, line, worked)) => row(&road, way, &line, &worked, units),
            None => unknown(&road),
        });
        std::iter::once(heads(units)).chain(rows).collect::<Vec<_>>()
    });
    download::save(&w.list_name(), "text/csv", &spreadsheet(&rows, numerals().decimal));
}

fn known(road: &Road, way: usize) -> Option<(usize, Arc<Line>, Arc<Worked>)> {
    Some((way, road.lines.get()[way].clone()?, road.ways.worked(way)?))
}

/// A road that could not be worked out stands there with the reason, so that nothing is missing silently.
fn unknown(road: &Road) -> Vec<Cell> {
    let why = road.ways.why_not().unwrap_or_else(|| words().ranking().to_owned());
    vec![Cell::Text(String::new()), Cell::Text(road.file.clone()), Cell::Text(why)]
}

fn heads(units: Units) -> Vec<Cell> {
    let w = words();
    let [road, length, way, _, hardest, grade, _, verdict, time, fuel, braking, heat, heights, _] =
        w.many_columns();
    let [file, crest, limit, blank, truck] = w.list_heads();
    let [gear, stage, speed, ..] = w.hand_figures();
    let (distance, unit) = (units.distance(), units.speed());
    let of = |text: &str, unit: &str| format!("{text}, {unit}");
    let fuel_unit = if units == Units::Metric { "l" } else { "gal" };
    [
        road.to_owned(),
        file.to_owned(),
        way.to_owned(),
        of(length, distance),
        of(crest, distance),
        of(hardest, distance),
        of(grade, "%"),
        gear.to_owned(),
        stage.to_owned(),
        of(speed, unit),
        verdict.to_owned(),
        of(time, "min"),
        of(fuel, fuel_unit),
        of(braking, "MJ"),
        of(heat, "°C"),
        of(limit, "°C"),
        heights.to_owned(),
        of(blank, distance),
        truck.to_owned(),
    ]
    .map(Cell::Text)
    .into()
}

fn row(road: &Road, way: usize, line: &Line, worked: &Worked, units: Units) -> Vec<Cell> {
    let w = words();
    let it = &line.figures;
    let far = |metres: f64| Cell::Number(metres / units.metres_per_distance(), 2);
    let hardest = line.hardest;
    let advice = hardest.and_then(|it| it.choice.advice().copied());
    let or_empty =
        |value: Option<f64>, decimals: usize| value.map_or(Cell::Empty, |it| Cell::Number(it, decimals));
    let verdict = hardest.map_or(w.short_no_descent(), |it| w.verdict_of(&it.choice));
    let litres = solver::motion::litres_of_fuel(Joules(it.fuel_j));
    // Temperatures are rounded up, as on the page.
    let speed = advice.map(|it| format::hold_value(it.speed.0, units));
    vec![
        Cell::Text(line.name.clone()),
        Cell::Text(road.file.clone()),
        Cell::Text(way_word(way).to_owned()),
        far(it.length_m),
        hardest.map_or(Cell::Empty, |it| far(it.crest_m)),
        hardest.map_or(Cell::Empty, |it| far(it.length_m)),
        or_empty(hardest.map(|it| it.grade * 100.0), 1),
        or_empty(advice.map(|it| f64::from(it.gear.number())), 0),
        or_empty(advice.map(|it| f64::from(it.stage.number())), 0),
        or_empty(speed, 0),
        Cell::Text(verdict.to_owned()),
        Cell::Number((it.time_s / 60.0).round(), 0),
        Cell::Number(litres / units.litres_per_fuel(), 1),
        Cell::Number((it.holding_j + it.service_j) / 1e6, 0),
        Cell::Number(it.hottest_c.ceil(), 0),
        Cell::Number(line.limit_c, 0),
        Cell::Text(w.heights_word(line.heights).to_owned()),
        far(it.blank_m),
        Cell::Text(facts(worked, units)),
    ]
}
