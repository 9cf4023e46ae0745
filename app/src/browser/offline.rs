//! Use without a network: what `app/offline/offline.js` tells of the page's copy in the browser,
//! and what it is asked for.

use wasm_bindgen::prelude::*;
use web_sys::Event;

/// What the browser keeps of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Stored {
    /// Nothing, or nothing whole yet.
    Nothing,
    /// All of the page: it works without a network.
    Whole,
    /// All of a newer version as well. That version waits to be asked for.
    Newer,
}

/// Calls `told` whenever the copy of the page changes, as long as the page lives.
pub(crate) fn watch(mut told: impl FnMut(Stored) + 'static) {
    let Some(document) = super::document() else { return };
    let listener = Closure::<dyn FnMut()>::new(move || told(stored()));
    let _ = document.add_event_listener_with_callback("offline-told", listener.as_ref().unchecked_ref());
    listener.forget();
}

fn stored() -> Stored {
    let root = super::document().and_then(|document| document.document_element());
    match root.and_then(|root| root.get_attribute("data-offline")).as_deref() {
        Some("kept") => Stored::Whole,
        Some("newer") => Stored::Newer,
        Some(_) | None => Stored::Nothing,
    }
}

/// Asks the browser to keep the page; only the first time counts.
pub(crate) fn keep() {
    say("offline-keep");
}

/// Loads the page anew, in the newer version. What is kept in the browser's storage stays.
pub(crate) fn load_newer() {
    say("offline-load");
}

fn say(what: &str) {
    if let (Some(document), Ok(event)) = (super::document(), Event::new(what)) {
        // Where nobody listens (a page from a disk) there is nothing to do.
        let _ = document.dispatch_event(&event);
    }
}
