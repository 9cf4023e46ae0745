//! Light and night, usual and large targets: `<html data-theme="…" data-targets="…">`, which the
//! style sheet reads.

use serde::{Deserialize, Serialize};
use wasm_bindgen::prelude::*;

/// What the person chose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) enum Theme {
    /// As the machine is set.
    System,
    /// Always light.
    Light,
    /// Always night.
    Night,
}

/// Shows the page in a theme.
pub(crate) fn show(theme: Theme) {
    let night = match theme {
        Theme::System => machine_is_dark(),
        Theme::Light => false,
        Theme::Night => true,
    };
    mark("data-theme", if night { "night" } else { "light" });
}

/// Makes targets large enough for hands in gloves. On a touch screen they always are.
pub(crate) fn show_gloves(gloves: bool) {
    let touched = super::media("(pointer: coarse)").unwrap_or(false);
    mark("data-targets", if gloves || touched { "large" } else { "usual" });
}

fn mark(name: &str, value: &str) {
    let root = super::document().and_then(|document| document.document_element());
    if let Some(root) = root {
        let _ = root.set_attribute(name, value);
    }
}

fn machine_is_dark() -> bool {
    dark_query().is_some_and(|query| query.matches())
}

fn dark_query() -> Option<web_sys::MediaQueryList> {
    super::media_list("(prefers-color-scheme: dark)")
}

/// Calls `changed` whenever the machine turns from day to night or back, as long as the page lives.
pub(crate) fn watch(changed: impl FnMut() + 'static) {
    let Some(query) = dark_query() else { return };
    let listener = Closure::<dyn FnMut()>::new(changed);
    let _ = query.add_event_listener_with_callback("change", listener.as_ref().unchecked_ref());
    listener.forget();
}
