//! The table of gears and stages: what each pair does on the grade that its gear is chosen for.

use super::part::fact;
use crate::format::{self, Units};
use crate::words::words;
use ::words::down;
use leptos::prelude::*;
use solver::motion::Answer;
use solver::plan::{Descent, GearRow};

/// The table with its caption and the meaning of its words.
pub(super) fn table(descent: &Descent, units: Units) -> AnyView {
    let w = words();
    let [gear, speeds, reserve] = w.table_heads();
    let stages = descent.table.rows.first().map_or(0, |row| row.answers.len());
    let heads = (0..stages).map(|stage| view! { <th scope="col">{w.table_stage(stage)}</th> });
    // The highest gear on top: a driver shifts down from it until it holds.
    let rows = descent.table.rows.iter().rev().map(|row| table_row(descent, row, units));
    let legend =
        w.table_meanings().into_iter().map(|(word, meaning)| fact(word, "", vec![meaning.to_owned()]));
    let name = format!("table-name-{}", descent.number);
    let named = name.clone();
    // The name stands outside the part that scrolls, so that a narrow screen shows all of it.
    view! {
        <p class="table-name" id=name.clone()>{w.table_caption(descent, units)}</p>
        <div class="wide-table" tabindex="0" role="region" aria-labelledby=name>
            <table class="gear-table" data-testid=format!("table-{}", descent.number) aria-labelledby=named>
                <thead>
                    <tr>
                        <th scope="col">{gear}</th>
                        {heads.collect_view()}
                        <th scope="col">{speeds}</th>
                        <th scope="col">{reserve}</th>
                    </tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        </div>
        <dl class="legend">{legend.collect_view()}</dl>
    }
    .into_any()
}

fn table_row(descent: &Descent, row: &GearRow, units: Units) -> AnyView {
    let w = words();
    // Of several gears the one that this grade asks for.
    let slowest = descent.choice.advice().map(|advice| down::slowest(descent, advice));
    let advice = slowest.filter(|(gear, ..)| *gear == row.gear);
    let cells = row.answers.iter().enumerate().map(|(stage, answer)| {
        let advised = advice.is_some_and(|(_, strongest, _)| usize::from(strongest.number()) == stage);
        cell(answer, advised, units)
    });
    let speeds =
        format!("{}–{}", format::hold_number(row.slowest.0, units), format::hold_speed(row.ceiling.0, units));
    let reserve = row.margin_at_ceiling.map_or_else(|| "–".to_owned(), format::margin);
    view! {
        <tr class:advised=advice.is_some()>
            <th scope="row">
                {row.gear.number()}
                {advice.map(|_| view! { <span class="tag">{w.table_chosen()}</span> })}
            </th>
            {cells.collect_view()}
            <td class="number">{speeds}</td>
            <td class="number">{reserve}</td>
        </tr>
    }
    .into_any()
}

fn cell(answer: &Answer, advised: bool, units: Units) -> AnyView {
    let (first, second) = words().answer(answer, units);
    let class = match answer {
        Answer::Settles { .. } => "settles",
        Answer::MoreThanNeeded => "more",
        Answer::Overruns { .. } => "overruns",
        Answer::NotUsable(_) => "unusable",
    };
    view! {
        <td class=class class:advised-stage=advised>
            <span>{first}</span>
            {second.map(|second| view! { <small>{second}</small> })}
        </td>
    }
    .into_any()
}
