//! What the calculation is held against: the rows that the tests read, in the page.

use crate::browser::rows;
use crate::words::words;
use leptos::prelude::*;

/// The rows, as the page names them; written by the same program whose tests read them.
const FILE: &str = "evidence-file";

/// What is read of a row, in the order of [`Row`].
const KEYS: [&str; 8] =
    ["key", "status", "source", "what", "expected", "ours", "difference", "known_difference"];

type Row = [String; KEYS.len()];

/// What came of fetching them.
#[derive(Clone)]
enum Fetched {
    Nothing,
    Rows(Vec<Row>),
    Failed,
}

/// The section; the rows are fetched when it is opened first.
pub(super) fn evidence() -> AnyView {
    let w = words();
    let fetched = RwSignal::new(Fetched::Nothing);
    let open = move |_| {
        if matches!(fetched.get_untracked(), Fetched::Rows(_)) {
            return;
        }
        leptos::task::spawn_local(async move {
            let rows = rows::fetch(FILE, KEYS).await;
            fetched.set(rows.map_or(Fetched::Failed, Fetched::Rows));
        });
    };
    let content = move || match fetched.get() {
        Fetched::Nothing => ().into_any(),
        Fetched::Failed => view! { <p class="problem">{w.evidence_missing()}</p> }.into_any(),
        Fetched::Rows(rows) => table(&rows),
    };
    view! {
        <details class="card panel evidence" id="evidence" data-testid="evidence" on:toggle=open>
            <summary><h2>{w.evidence_head()}</h2></summary>
            <p>{w.evidence_sentence()}</p>
            {content}
        </details>
    }
    .into_any()
}

fn table(rows: &[Row]) -> AnyView {
    let w = words();
    let known = rows.iter().filter(|row| row[7] == "true").count();
    let heads = w.evidence_heads().map(|head| view! { <th scope="col">{head}</th> }.into_any());
    let mut source = "";
    let mut lines: Vec<AnyView> = Vec::new();
    for row in rows {
        if source != row[2] {
            source = &row[2];
            lines.push(head(row));
        }
        lines.push(line(row));
    }
    view! {
        <p data-testid="evidence-count">{w.evidence_count(rows.len(), known)}</p>
        <div class="wide-table" tabindex="0" role="region" aria-label=w.evidence_head()>
            <table class="gear-table">
                <thead><tr>{heads.into_iter().collect_view()}</tr></thead>
                <tbody>{lines}</tbody>
            </table>
        </div>
    }
    .into_any()
}

/// A source, above its rows.
fn head(row: &Row) -> AnyView {
    let text = format!("{}: {}", row[0], row[2]);
    view! { <tr><th scope="rowgroup" colspan="4">{text}<small>{row[1].clone()}</small></th></tr> }.into_any()
}

fn line(row: &Row) -> AnyView {
    let known = row[7] == "true";
    let mark = known.then(|| view! { <span class="tag">{words().evidence_difference()}</span> });
    view! {
        <tr class:differs=known>
            <td>{row[3].clone()}{mark}</td>
            <td>{row[4].clone()}</td>
            <td>{row[5].clone()}</td>
            <td>{row[6].clone()}</td>
        </tr>
    }
    .into_any()
}
