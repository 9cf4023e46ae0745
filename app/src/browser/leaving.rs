//! The page goes out of sight, or is left.

use wasm_bindgen::prelude::*;

/// Calls `left` whenever the page is hidden or left: the last moment in which it surely runs. It comes back
/// from being hidden, so this may be called many times.
pub(crate) fn watch(left: impl Fn() + 'static) {
    let (Some(window), Some(document)) = (super::window(), super::document()) else { return };
    let listener = Closure::<dyn Fn()>::new(left);
    let hear = listener.as_ref().unchecked_ref();
    let _ = window.add_event_listener_with_callback("pagehide", hear);
    // On phones a page that is put aside may be ended without another word.
    let _ = document.add_event_listener_with_callback("visibilitychange", hear);
    listener.forget();
}
