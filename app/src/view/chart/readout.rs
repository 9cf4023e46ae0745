//! The readout: what holds at the cursor, in one line of fixed height.

use super::look::Look;
use crate::browser::timer::Timer;
use crate::chart::here::{Here, ReadoutCell};
use crate::format::Units;
use crate::words::words;
use leptos::prelude::*;

/// A screen reader is told what lies about the cursor once it rests this long, ms.
const REST_MS: i32 = 700;

/// The readout in one line; with a button that puts a place, where places are put. What finds no room in the
/// line is left out from its end.
pub(super) fn view(look: Look, put_place: Option<Callback<usize>>) -> AnyView {
    let cells = ReadoutCell::ALL.into_iter().map(|cell| view_cell(look, cell)).collect::<Vec<_>>();
    let about = Memo::new(move |_| told(look, |here, units| words().surroundings(here, units)));
    view! {
        <div class="readout" data-testid="readout">
            <dl>{cells}</dl>
            {put_place.map(|put_place| put_here(look, ["zoom-button", "put-here"], put_place))}
            {spoken(about)}
        </div>
    }
    .into_any()
}

/// Puts a place where the cursor is; with its class and its mark.
pub(crate) fn put_here(
    look: Look,
    [class, testid]: [&'static str; 2],
    put_place: Callback<usize>,
) -> AnyView {
    view! {
        <button
            type="button"
            class=class
            data-testid=testid
            on:click=move |_| put_place.run(look.cursor.get_untracked())
        >
            {words().put_here()}
        </button>
    }
    .into_any()
}

fn told(look: Look, text: impl Fn(&Here, Units) -> String) -> String {
    let units = look.units.get();
    look.here.with(|here| here.as_ref().map(|here| text(here, units))).unwrap_or_default()
}

fn view_cell(look: Look, cell: ReadoutCell) -> AnyView {
    let head = Memo::new(move |_| told(look, |here, _| words().readout_head(cell, here)));
    let figure = Memo::new(move |_| told(look, |here, units| words().readout(cell, here, units)));
    let note = Memo::new(move |_| told(look, |here, units| words().readout_note(cell, here, units)));
    let note = move || Some(note.get()).filter(|it| !it.is_empty());
    view! {
        <div class=format!("cell cell-{}", cell.key()) title=note>
            <dt>{move || head.get()}</dt>
            <dd data-testid=format!("readout-{}", cell.key())>{move || figure.get()}</dd>
        </div>
    }
    .into_any()
}

/// The readout for a screen reader. It speaks only where the cursor comes to rest: said at every step, a
/// sentence would never be heard to its end.
fn spoken(about: Memo<String>) -> AnyView {
    let said = RwSignal::new(String::new());
    let waiting = StoredValue::new_local(None::<Timer>);
    Effect::new(move |_| {
        let text = about.get();
        let say = move || {
            let _ = said.try_set(text.clone());
        };
        waiting.set_value(Timer::after(REST_MS, say));
    });
    view! { <p class="unseen" aria-live="polite" data-testid="about-cursor">{move || said.get()}</p> }
        .into_any()
}
