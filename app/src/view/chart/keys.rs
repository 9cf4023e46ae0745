//! What the keys do while the picture has the keyboard, and the list that says so.

use super::asks::Asks;
use super::look::Look;
use crate::chart::cursor::{self, Act, Wish};
use crate::words::words;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// Obeys a key.
pub(super) fn press(look: Look, asks: Option<Asks>, listed: RwSignal<bool>, event: &KeyboardEvent) {
    // Browser and system shortcuts stay theirs.
    if event.ctrl_key() || event.meta_key() || event.alt_key() {
        return;
    }
    let Some(wish) = cursor::wish(&event.key(), event.shift_key()) else { return };
    let Some(picture) = look.picture() else { return };
    if let Wish::Act(act) = wish {
        if acts(look, asks, listed, act) {
            event.prevent_default();
        }
        return;
    }
    event.prevent_default();
    let step = cursor::step_points(&picture);
    let (to, shown) = cursor::moved(&picture, look.cursor.get_untracked(), look.coming_window(), wish, step);
    look.point_now(to);
    look.show(shown);
}

/// Whether there was something to be done.
fn acts(look: Look, asks: Option<Asks>, listed: RwSignal<bool>, act: Act) -> bool {
    match (act, asks) {
        (Act::Choose(number), _) => {
            let known = look.picture().is_some_and(|it| it.descent(number).is_some());
            if known {
                look.chosen.set(Some(number));
            }
            known
        }
        (Act::ShowChosen, _) => {
            let chosen = look.chosen.get_untracked();
            chosen.inspect(|number| look.show_descents((*number, *number))).is_some()
        }
        (Act::NextReading, _) => {
            look.next_reading();
            true
        }
        (Act::Keys, Some(_)) => {
            listed.update(|it| *it = !*it);
            true
        }
        (Act::Put, Some(asks)) => {
            asks.put_place.run(look.cursor.get_untracked());
            true
        }
        (Act::Alone, Some(asks)) => {
            asks.alone.update(|it| *it = !*it);
            true
        }
        (Act::Close, _) if listed.get_untracked() => {
            listed.set(false);
            true
        }
        (Act::Keys | Act::Put | Act::Alone | Act::Close, _) => false,
    }
}

/// The list of the keys, over the picture.
pub(super) fn list(listed: RwSignal<bool>, close: Callback<()>) -> AnyView {
    let w = words();
    let rows = move || {
        let row = |(caps, does): (&'static str, &'static str)| {
            view! { <div><dt><kbd>{caps}</kbd></dt><dd>{does}</dd></div> }
        };
        listed.get().then(|| w.key_caps().into_iter().zip(w.key_does()).map(row).collect_view())
    };
    view! {
        <div class="keys" data-testid="keys" role="status" hidden=move || !listed.get()>
            <h3>{w.keys_head()}</h3>
            <dl>{rows}</dl>
            <button type="button" class="button small" on:click=move |_| close.run(())>{w.keys_close()}</button>
        </div>
    }
    .into_any()
}
