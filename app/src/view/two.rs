//! Two roads side by side: both pictures on one scale, and what a planner weighs in a table.

use super::card::facts;
use super::chart::pair;
use super::part::text_field;
use super::road::file_field;
use crate::chart::RoadPicture;
use crate::compare::Figures;
use crate::format::{self, Units, parse_number};
use crate::state::{Origin, State, Worked};
use crate::tell::TwoRow;
use crate::words::words;
use leptos::prelude::*;
use std::sync::Arc;

/// The road kept and the one shown, with their pictures on one scale.
#[derive(Clone)]
struct Both {
    worked: [Arc<Worked>; 2],
    pictures: [Arc<RoadPicture>; 2],
}

impl Both {
    fn of(kept: Arc<Worked>, shown: Arc<Worked>) -> Self {
        let pictures =
            [kept.picture.beside(&shown.picture), shown.picture.beside(&kept.picture)].map(Arc::new);
        Self { worked: [kept, shown], pictures }
    }

    fn is(&self, other: &Self) -> bool {
        (0..2).all(|index| Arc::ptr_eq(&self.worked[index], &other.worked[index]))
    }
}

/// The section.
pub(super) fn two(state: State) -> AnyView {
    let both = Memo::new_with_compare(
        move |_| {
            Some(Both::of(
                state.beside.road.with(|it| it.as_ref().map(|it| it.worked.clone()))?,
                state.shown.worked.get()?,
            ))
        },
        |old: Option<&Option<Both>>, new| match (old.and_then(Option::as_ref), new.and_then(Option::as_ref)) {
            (Some(old), Some(new)) => !old.is(new),
            (old, new) => old.is_some() || new.is_some(),
        },
    );
    let some = Memo::new(move |_| both.with(Option::is_some));
    let content = move || match some.get() {
        true => comparison(state, both),
        false => invitation(state),
    };
    view! {
        <div class="two" hidden=move || state.shown.worked.with(Option::is_none)>{content}</div>
    }
    .into_any()
}

fn invitation(state: State) -> AnyView {
    let w = words();
    view! {
        <section class="card invited">
            <h2>{w.two_head()}</h2>
            <p>{w.keep_beside_sentence()}</p>
            <button type="button" class="button primary" data-testid="keep-beside" on:click=move |_| state.keep_beside()>
                {w.keep_beside()}
            </button>
        </section>
    }
    .into_any()
}

fn comparison(state: State, both: Memo<Option<Both>>) -> AnyView {
    let w = words();
    let units = Signal::derive(move || state.units.get());
    let pictures = Signal::derive(move || both.with(|both| both.as_ref().map(|it| it.pictures.clone())));
    let names = Signal::derive(move || {
        both.with(|both| both.as_ref().map(|it| it.worked.each_ref().map(|one| name(one))))
            .unwrap_or_default()
    });
    let same =
        move || both.with(|both| both.as_ref().is_some_and(|it| Arc::ptr_eq(&it.worked[0], &it.worked[1])));
    let next = move || same().then(|| w.two_next());
    // As long as both are the same the next step is another road, or the same one the other way.
    let another = move || {
        same().then(|| {
            view! {
                <div class="buttons">
                    {file_field(state)}
                    <button type="button" class="button" on:click=move |_| state.reverse()>{w.reverse()}</button>
                </div>
            }
        })
    };
    let table = move || {
        let (units, rates) = (state.units.get(), state.beside.rates.get());
        both.with(|both| both.as_ref().map(|it| table(&it.worked, units, &rates)))
    };
    view! {
        <div class="both">
            <div class="pictures">{pair(pictures, names, units)}</div>
            <section class="weighed">
                <div class="section-head">
                    <h2>{w.two_head()}</h2>
                    <div class="buttons">
                        <button type="button" class="button small" data-testid="swap-two" on:click=move |_| state.swap()>
                            {w.swap()}
                        </button>
                        <button type="button" class="button small" data-testid="end-two" on:click=move |_| state.end_two()>
                            {w.end_two()}
                        </button>
                    </div>
                </div>
                <p class="two-next" role="status" data-testid="two-next">{next}</p>
                {another}
                {table}
                {rates(state)}
                <p class="about">{w.swap_sentence()}" "{w.two_caution()}</p>
            </section>
        </div>
    }
    .into_any()
}

/// What a road is called, with what it was worked out for.
pub(super) fn name(worked: &Worked) -> String {
    let road = worked.name();
    let invented = (worked.origin != Origin::Given).then(|| words().demo_mark());
    let turned = worked.road.reversed.then(|| words().reversed_mark());
    let marks: Vec<&str> = invented.into_iter().chain(turned).collect();
    if marks.is_empty() { road.to_owned() } else { format!("{road} ({})", marks.join(", ")) }
}

fn rates(state: State) -> AnyView {
    let w = words();
    let one = |index: usize| {
        let text = Signal::derive(move || state.beside.rates.with(|rates| rates[index].clone()));
        let unit = Signal::derive(move || w.rate_units(state.units.get())[index]);
        let id = ["rate-fuel", "rate-hour"][index].to_owned();
        let typed = move |text| state.set_rate(index, text);
        let field = text_field(id, w.rate_labels()[index], "decimal", text, unit, Box::new(typed));
        view! { <div class="entry">{field}</div> }.into_any()
    };
    view! { <div class="rates">{one(0)}{one(1)}</div> }.into_any()
}

/// A row: its label, both values, the difference.
type Row = (TwoRow, [String; 2], String);

fn table(worked: &[Arc<Worked>; 2], units: Units, rates: &[String; 2]) -> AnyView {
    let w = words();
    let [kept, shown] = worked.each_ref().map(|it| name(it));
    let heads = w.two_heads().into_iter().zip([None, Some(kept), Some(shown), None]);
    let heads = heads.map(|(head, road)| {
        let road = road.map(|road| view! { <strong>{road}</strong> });
        view! { <th scope="col">{head}" "{road}</th> }.into_any()
    });
    let rows = rows(worked, units, rates).into_iter().map(|(row, [kept, shown], difference)| {
        view! {
            <tr data-testid=format!("two-{row:?}")>
                <th scope="row">{w.two_row(row)}</th>
                <td>{kept}</td>
                <td>{shown}</td>
                <td>{difference}</td>
            </tr>
        }
        .into_any()
    });
    let rows: Vec<AnyView> = rows.collect();
    view! {
        <div class="wide-table">
            <table class="two-table" data-testid="two-table">
                <thead><tr>{heads.collect_view()}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
    .into_any()
}

fn rows(worked: &[Arc<Worked>; 2], units: Units, rates: &[String; 2]) -> Vec<Row> {
    let w = words();
    let of = worked.each_ref().map(|it| Figures::of(&it.road, &it.plan, &it.picture));
    let text = |row: TwoRow, values: [String; 2]| {
        let difference = if values[0] == values[1] { w.no_difference().to_owned() } else { String::new() };
        (row, values, difference)
    };
    let plain = |row: TwoRow, get: &dyn Fn(&Figures) -> Option<f64>, written: &dyn Fn(f64) -> String| {
        let values = of.each_ref().map(get);
        let texts = values.map(|value| value.map_or_else(|| "–".to_owned(), written));
        let difference = match values {
            _ if texts[0] == texts[1] => w.no_difference().to_owned(),
            // Of what is written, so that it adds up with it; 240 m and 1.2 km are not written alike.
            [Some(kept), Some(shown)] => format::apart(&texts[0], &texts[1]).unwrap_or_else(|| {
                let sign = if shown < kept { "−" } else { "+" };
                format!("{sign}{}", written((shown - kept).abs()))
            }),
            [_, _] => String::new(),
        };
        (row, texts, difference)
    };
    let count = |value: f64| format::whole(value);
    let length = |value: f64| format::length(value, units);
    let height = |value: f64| format::height(value, units);
    let speed = |value: f64| format::hold_speed(value, units);
    let fuel =
        |joules: f64| format::fuel(solver::motion::litres_of_fuel(solver::units::Joules(joules)), units);
    let per_litre = parse_number(&rates[0]).map(|rate| rate / units.litres_per_fuel());
    let per_hour = parse_number(&rates[1]);
    let money = |value: f64| format::whole(value.round());
    let cost = |it: &Figures| it.cost(per_litre, per_hour);
    let verdict = |it: &Figures| {
        it.worst.map_or_else(|| w.no_descent(it.blank_m > 0.0).to_owned(), |it| w.verdict_of(&it).to_owned())
    };
    let mut rows = vec![
        text(TwoRow::Truck, worked.each_ref().map(|it| facts(it, units))),
        text(TwoRow::Worst, of.each_ref().map(verdict)),
        plain(TwoRow::Descents, &|it| Some(it.descents as f64), &count),
        plain(TwoRow::Hold, &|it| it.slowest_hold, &speed),
        plain(TwoRow::Hottest, &|it| Some(it.hottest_c), &|it| format::temperature(it, units)),
        plain(TwoRow::Braked, &|it| Some(it.braked_m), &length),
        plain(TwoRow::Service, &|it| Some(it.service_j), &format::work),
        plain(TwoRow::Holding, &|it| Some(it.holding_j), &format::work),
        plain(TwoRow::Down, &|it| Some(to_minute(it.down_s)), &|it| w.short_time(it)),
        plain(TwoRow::Up, &|it| Some(to_minute(it.up_s)), &|it| w.short_time(it)),
        plain(TwoRow::Crawl, &|it| it.crawl, &speed),
        plain(TwoRow::Time, &|it| Some(to_minute(it.time_s)), &|it| w.short_time(it)),
        plain(TwoRow::Rise, &|it| Some(it.rise_m), &height),
        plain(TwoRow::Fall, &|it| Some(it.fall_m), &height),
        plain(TwoRow::Length, &|it| Some(it.length_m), &length),
        plain(TwoRow::Curves, &|it| Some(it.curves as f64), &count),
        plain(TwoRow::Checks, &|it| Some(it.stops[0] as f64), &count),
        plain(TwoRow::Ramps, &|it| Some(it.stops[1] as f64), &count),
        plain(TwoRow::Parking, &|it| Some(it.stops[2] as f64), &count),
        plain(TwoRow::Blank, &|it| Some(it.blank_m), &length),
        plain(TwoRow::Fuel, &|it| Some(it.fuel_j), &fuel),
    ];
    if per_litre.is_some() || per_hour.is_some() {
        rows.push(plain(TwoRow::Cost, &cost, &money));
    }
    rows
}

/// A time as it is shown, s: so that differences add up.
fn to_minute(seconds: f64) -> f64 {
    (seconds / 60.0).round() * 60.0
}
