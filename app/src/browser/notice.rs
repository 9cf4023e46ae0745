//! The notice before the page: once in a session of the browser, and not past it.

use web_sys::{HtmlDialogElement, Storage};

/// Where it is noted that the notice was acknowledged. A window opened anew begins without it.
const NAME: &str = "steadygrade.parked";

fn session() -> Option<Storage> {
    super::window()?.session_storage().ok()?
}

/// Whether the notice was acknowledged in this session; a browser that keeps nothing shows it
/// whenever the page is loaded.
pub(crate) fn acknowledged() -> bool {
    session().is_some_and(|storage| storage.get_item(NAME).ok().flatten().is_some())
}

/// Notes that it was.
pub(crate) fn acknowledge() {
    if let Some(storage) = session() {
        let _ = storage.set_item(NAME, "1");
    }
}

/// Shows the notice over the page, which rests behind it.
pub(crate) fn show(dialog: &HtmlDialogElement) {
    if dialog.show_modal().is_err() {
        dialog.set_open(true);
    }
}
