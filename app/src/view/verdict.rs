//! A verdict: its words in a border whose shape, with a mark, tells it without colour.

use crate::words::words;
use leptos::prelude::*;
use solver::plan::{Choice, Verdict};

/// The words of a choice's verdict in their border.
pub(super) fn chip(choice: &Choice) -> AnyView {
    // Marks: a ring, a half-filled ring, a triangle, a filled square.
    let (class, mark) = match choice.verdict() {
        Verdict::RetarderHolds => ("verdict holds", "M6 1.5a4.5 4.5 0 1 0 .01 0z"),
        Verdict::LittleInReserve => ("verdict little", "M6 1.5a4.5 4.5 0 1 0 .01 0zM6 1.5v9z"),
        Verdict::NeedsServiceBrakes => ("verdict needs", "M6 1.5 11 10.5H1z"),
        Verdict::NoSafeSpeed => ("verdict none", "M1.5 1.5h9v9h-9zM1.5 1.5l9 9M10.5 1.5l-9 9"),
    };
    view! {
        <span class=class>
            <svg class="mark" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
                <path d=mark></path>
            </svg>
            {words().verdict_of(choice)}
        </span>
    }
    .into_any()
}
