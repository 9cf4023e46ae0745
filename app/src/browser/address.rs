//! The key behind `#` in the page's address.

use wasm_bindgen::prelude::*;

/// The key; empty where there is none.
pub(crate) fn key() -> String {
    let hash = super::window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
    hash.strip_prefix('#').unwrap_or_default().to_owned()
}

/// Sets the key, a step that the browser's way back undoes; nothing where it stands there already.
pub(crate) fn go(to: &str) {
    if key() != to
        && let Some(window) = super::window()
    {
        // Refused only where the address cannot be changed: the view changes all the same.
        let _ = window.location().set_hash(to);
    }
}

/// Calls `changed` whenever the key changes, as long as the page lives.
pub(crate) fn watch(changed: impl FnMut() + 'static) {
    let Some(window) = super::window() else { return };
    let listener = Closure::<dyn FnMut()>::new(changed);
    let _ = window.add_event_listener_with_callback("hashchange", listener.as_ref().unchecked_ref());
    listener.forget();
}
