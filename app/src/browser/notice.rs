//! The notice before the page: once in a session of the browser, and not past it.
//!
//! Made by hand: as a view it would be code of its own kind for what is shown once.

use wasm_bindgen::prelude::*;
use web_sys::{Event, HtmlDialogElement, Storage};

/// Where it is noted that the notice was acknowledged. A window opened anew begins without it.
const NAME: &str = "steadygrade.parked";

fn session() -> Option<Storage> {
    super::window()?.session_storage().ok()?
}

/// Shows `say`, line by line, with one button over the page, which rests behind it until that is
/// pressed; nothing where it was pressed before in this session. A browser that keeps nothing
/// shows it whenever the page is loaded.
pub(crate) fn show(say: &str, button: &str) {
    let kept = session().and_then(|storage| storage.get_item(NAME).ok().flatten());
    if kept.is_none() {
        let _ = make(say, button);
    }
}

fn make(say: &str, button: &str) -> Option<()> {
    let document = super::document()?;
    let dialog: HtmlDialogElement = document.create_element("dialog").ok()?.dyn_into().ok()?;
    dialog.set_class_name("parked-notice");
    dialog.set_attribute("aria-labelledby", "parked-say").ok()?;
    dialog.set_attribute("data-testid", "parked-notice").ok()?;
    let say = say.replace(". ", ".<br>");
    dialog.set_inner_html(&format!(
        "<p id=parked-say>{say}</p><button type=button class=\"button primary\" data-testid=parked>{button}</button>"
    ));
    let before = document.body()?.first_child();
    document.body()?.insert_before(&dialog, before.as_ref()).ok()?;
    let shown = dialog.clone();
    let heard = Closure::<dyn FnMut(Event)>::new(move |event: Event| match event.type_().as_str() {
        // Escape, and a phone's way back, are no answer…
        "cancel" => event.prevent_default(),
        // …though some browsers let a second one close it all the same.
        "close" => open(&shown),
        _ => {
            if let Some(storage) = session() {
                let _ = storage.set_item(NAME, "1");
            }
            shown.remove();
            // Where the page begins: the next key leads to its first link, which shows itself only then.
            super::focus("begin".to_owned());
        }
    });
    let hear = heard.as_ref().unchecked_ref();
    for event in ["cancel", "close"] {
        dialog.add_event_listener_with_callback(event, hear).ok()?;
    }
    dialog.query_selector("button").ok()??.add_event_listener_with_callback("click", hear).ok()?;
    heard.forget();
    open(&dialog);
    Some(())
}

fn open(dialog: &HtmlDialogElement) {
    // Where a browser has no such dialogs it stands above the page.
    if dialog.show_modal().is_err() {
        dialog.set_open(true);
    }
}
