//! English.

mod card;
mod descent;
mod entry;
mod language;
mod page;
mod plan;
mod road;
mod roadside;
mod study;
mod two;
mod way;
mod why;

use crate::words::say;

/// English words. Trade terms as in printed driver manuals; plain short sentences.
pub(super) struct English;

fn minutes(seconds: f64) -> String {
    say::minutes(seconds, "less than a minute", ["minute", "minutes"])
}
