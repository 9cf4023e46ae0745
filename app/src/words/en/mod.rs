//! English.

mod access;
mod card;
mod chart;
mod class;
mod descent;
mod entry;
mod exercise;
mod export;
mod form;
mod language;
mod lesson;
mod link;
mod offline;
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
