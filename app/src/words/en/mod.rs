//! English.

mod card;
mod chart;
mod entry;
mod export;
mod language;
mod link;
mod offline;
mod page;
mod plan;
mod plan_detail;
mod road;
mod roadside;
mod study;
mod two;
mod why;

/// English words. Trade terms as in printed driver manuals; plain short sentences.
pub struct English;

fn minutes(seconds: f64) -> String {
    let whole = (seconds / 60.0).round();
    if whole < 1.0 {
        return "less than a minute".to_owned();
    }
    if whole < 60.0 {
        let noun = if whole < 1.5 { "minute" } else { "minutes" };
        return format!("{whole:.0} {noun}");
    }
    let hours = (whole / 60.0).floor();
    format!("{hours:.0} h {:.0} min", whole - hours * 60.0)
}
