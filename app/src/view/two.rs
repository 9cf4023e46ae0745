//! Two roads side by side: both pictures on one scale, and what a planner weighs in a table.

use super::card::facts;
use super::chart::pair;
use super::part::text_field;
use super::road::file_field;
use crate::browser::{self, download};
use crate::chart::RoadPicture;
use crate::compare::{Figures, Row, easier, to_minute};
use crate::format::{self, Units, numerals, parse_number};
use crate::many::{Cell, spreadsheet};
use crate::state::{Origin, State, Worked};
use crate::words::words;
use leptos::prelude::*;
use std::sync::Arc;

/// The road kept and the one shown, with their pictures on one scale.
#[derive(Clone)]
struct Both {
    worked: [Arc<Worked>; 2],
    pictures: [Arc<RoadPicture>; 2],
    figures: [Figures; 2],
}

impl Both {
    fn of(kept: Arc<Worked>, shown: Arc<Worked>) -> Self {
        let pictures =
            [kept.picture.beside(&shown.picture), shown.picture.beside(&kept.picture)].map(Arc::new);
        let worked = [kept, shown];
        let figures = worked.each_ref().map(|it| Figures::of(&it.road, &it.plan, &it.picture));
        Self { worked, pictures, figures }
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
    let reason = move || {
        let units = state.units.get();
        both.with(|both| {
            let both = both.as_ref().filter(|it| !Arc::ptr_eq(&it.worked[0], &it.worked[1]))?;
            Some(w.why(&name(&both.worked[1]), &both.figures, units))
        })
    };
    let save = move |_| {
        let (units, rates) = (state.units.get_untracked(), state.beside.rates.get_untracked());
        let saved = both.with_untracked(|both| {
            let both = both.as_ref()?;
            Some((w.compared_name(both.worked[1].name()), saved(both, units, &rates)))
        });
        if let Some((name, text)) = saved {
            download::save(&name, "text/csv", &text);
        }
    };
    let table = move || {
        let (units, rates) = (state.units.get(), state.beside.rates.get());
        both.with(|both| both.as_ref().map(|it| table(it, units, &rates)))
    };
    view! {
        <div class="both">
            <div class="pictures">{pair(pictures, names, units)}</div>
            <section class="weighed">
                <div class="section-head">
                    <h2>{w.two_head()}</h2>
                    <div class="buttons">
                        <button type="button" class="button small" data-testid="to-many" hidden=move || state.ranking.rows.with(Vec::is_empty) on:click=move |_| state.ranking.in_front.set(true)>
                            {move || w.to_many(state.ranking.rows.with(Vec::len))}
                        </button>
                        <button type="button" class="button small" data-testid="swap-two" on:click=move |_| state.swap()>
                            {w.swap()}
                        </button>
                        <button type="button" class="button small" data-testid="print-two" hidden=same on:click=move |_| browser::print_only("two")>
                            {w.print_list()}
                        </button>
                        <button type="button" class="button small" data-testid="save-two" hidden=same on:click=save>
                            {w.save_list()}
                        </button>
                        <button type="button" class="button small" data-testid="end-two" on:click=move |_| state.end_two()>
                            {w.end_two()}
                        </button>
                    </div>
                </div>
                <p class="two-next" role="status" data-testid="two-next">{next}</p>
                {another}
                <p class="reason" data-testid="reason">{reason}</p>
                {table}
                <p class="about"><b aria-hidden="true">"● "</b>{w.easier_mark()}</p>
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

/// A row as it is written: which, both values, the difference.
type Written = (Row, [String; 2], String);

fn table(both: &Both, units: Units, rates: &[String; 2]) -> AnyView {
    let w = words();
    let [kept, shown] = both.worked.each_ref().map(|it| name(it));
    let heads = w.two_heads().into_iter().zip([None, Some(kept), Some(shown), None]);
    let heads = heads.map(|(head, road)| {
        let road = road.map(|road| view! { <strong>{road}</strong> });
        view! { <th scope="col">{head}" "{road}</th> }.into_any()
    });
    let rows = rows(both, units, rates).into_iter().map(|(row, [kept, shown], difference)| {
        // Of what is written: where both read the same, none is the easier one.
        let easier = easier(row, &both.figures).filter(|_| kept != shown);
        let mark = |index: usize| {
            (easier == Some(index)).then(|| {
                view! { <b class="easier"><span aria-hidden="true">"● "</span><span class="unseen">{w.easier()}{w.colon()}</span></b> }
            })
        };
        view! {
            <tr data-testid=format!("two-{row:?}")>
                <th scope="row">{w.two_row(row)}</th>
                <td>{mark(0)}{kept}</td>
                <td>{mark(1)}{shown}</td>
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

fn rows(both: &Both, units: Units, rates: &[String; 2]) -> Vec<Written> {
    let w = words();
    let of = &both.figures;
    let text = |row: Row, values: [String; 2]| {
        let difference = if values[0] == values[1] { w.no_difference().to_owned() } else { String::new() };
        (row, values, difference)
    };
    let plain = |row: Row, get: &dyn Fn(&Figures) -> Option<f64>, written: &dyn Fn(f64) -> String| {
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
        text(Row::Worst, of.each_ref().map(verdict)),
        plain(Row::Descents, &|it| Some(it.descents as f64), &count),
        plain(Row::Hold, &|it| it.slowest_hold, &speed),
        plain(Row::Hottest, &|it| Some(it.hottest_c), &|it| format::temperature(it, units)),
        plain(Row::Braked, &|it| Some(it.braked_m), &length),
        plain(Row::Service, &|it| Some(it.service_j), &format::work),
        plain(Row::Holding, &|it| Some(it.holding_j), &format::work),
        plain(Row::Down, &|it| Some(to_minute(it.down_s)), &|it| w.short_time(it)),
        plain(Row::Up, &|it| Some(to_minute(it.up_s)), &|it| w.short_time(it)),
        plain(Row::Crawl, &|it| it.crawl, &speed),
        plain(Row::Time, &|it| Some(to_minute(it.time_s)), &|it| w.short_time(it)),
        plain(Row::Rise, &|it| Some(it.rise_m), &height),
        plain(Row::Fall, &|it| Some(it.fall_m), &height),
        plain(Row::Length, &|it| Some(it.length_m), &length),
        plain(Row::Curves, &|it| Some(it.curves as f64), &count),
        plain(Row::Checks, &|it| Some(it.stops[0] as f64), &count),
        plain(Row::Ramps, &|it| Some(it.stops[1] as f64), &count),
        plain(Row::Parking, &|it| Some(it.stops[2] as f64), &count),
        plain(Row::Blank, &|it| Some(it.blank_m), &length),
        plain(Row::Fuel, &|it| Some(it.fuel_j), &fuel),
    ];
    if per_litre.is_some() || per_hour.is_some() {
        rows.push(plain(Row::Cost, &cost, &money));
    }
    rows.push(text(Row::Truck, both.worked.each_ref().map(|it| facts(it, units))));
    rows
}

/// The comparison for a spreadsheet, as it stands on the page.
fn saved(both: &Both, units: Units, rates: &[String; 2]) -> String {
    let w = words();
    let [kept, shown] = both.worked.each_ref().map(|it| name(it));
    let [what, _, _, difference] = w.two_heads();
    let text = |it: &str| Cell::Text(it.to_owned());
    let head = vec![text(what), Cell::Text(kept), Cell::Text(shown), text(difference)];
    let rows = rows(both, units, rates).into_iter().map(|(row, [kept, shown], difference)| {
        vec![text(w.two_row(row)), Cell::Text(kept), Cell::Text(shown), Cell::Text(difference)]
    });
    let caution = vec![text(w.two_caution())];
    spreadsheet(&std::iter::once(head).chain(rows).chain([caution]).collect::<Vec<_>>(), numerals().decimal)
}
