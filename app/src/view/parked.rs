//! The notice before the page: plan while parked. Once in a session, and one button.

use super::offline;
use crate::browser::{self, notice};
use crate::words::words;
use leptos::ev::Event;
use leptos::html::Dialog;
use leptos::prelude::*;

/// The notice; nothing once it was acknowledged.
pub(super) fn parked() -> AnyView {
    let w = words();
    let open = RwSignal::new(!notice::acknowledged());
    let dialog = NodeRef::<Dialog>::new();
    let show = move || {
        if let Some(dialog) = dialog.get_untracked() {
            notice::show(&dialog);
        }
    };
    Effect::new(move |_| {
        if dialog.get().is_some() {
            show();
        }
    });
    let press = move |_| {
        notice::acknowledge();
        open.set(false);
        // Where the keyboard begins on the page.
        browser::focus("skip".to_owned());
    };
    let content = move || {
        open.get().then(|| {
            view! {
                <dialog
                    class="parked-notice"
                    node_ref=dialog
                    aria-labelledby="parked-say"
                    data-testid="parked-notice"
                    // Escape, and a phone's way back, are no answer.
                    on:cancel=|event: Event| event.prevent_default()
                    // Some browsers let a second Escape close it all the same.
                    on:close=move |_| if open.get_untracked() { show() }
                >
                    <p id="parked-say">{w.parked()}</p>
                    <button type="button" class="button primary" data-testid="parked" autofocus on:click=press>
                        {w.i_am_parked()}
                    </button>
                    {offline::offered()}
                </dialog>
            }
        })
    };
    content.into_any()
}
