//! All rows as the text of `public/evidence.json`.

use super::{Row, all, text};
use serde::Serialize;

/// A row as written: every figure is text, with its unit.
#[derive(Serialize)]
struct Written<'a> {
    key: &'a str,
    status: String,
    source: &'a str,
    what: &'a str,
    unit: &'a str,
    expected: String,
    ours: String,
    difference: String,
    /// Whether ours agrees with the source: false for a known difference.
    holds: bool,
    known_difference: bool,
}

fn written(row: &Row) -> String {
    let [expected, ours, difference] = text::of(row);
    let written = Written {
        key: row.key,
        status: row.standing(),
        source: row.source,
        what: &row.what,
        unit: row.unit,
        expected,
        ours,
        difference,
        holds: row.agrees(),
        known_difference: row.is_known_difference(),
    };
    serde_json::to_string(&written).unwrap_or_else(|e| unreachable!("text can be written: {e}"))
}

/// The file: one row a line, so that a change of one row changes one line.
#[must_use]
pub fn json() -> String {
    let rows: Vec<String> = all().iter().map(written).collect();
    format!("[\n{}\n]\n", rows.join(",\n"))
}
