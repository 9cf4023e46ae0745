//! A dialog of the page: beside it, or over all of it.

use wasm_bindgen::JsCast;
use web_sys::HtmlDialogElement;

fn find(id: &str) -> Option<HtmlDialogElement> {
    super::document()?.get_element_by_id(id)?.dyn_into().ok()
}

/// Opens a dialog. A modal one keeps the keyboard in itself, and the page rests behind it. What was open
/// stays as it is.
pub(crate) fn open(id: &str, modal: bool) {
    let Some(dialog) = find(id).filter(|it| !it.open()) else { return };
    // A browser that refuses it shows it beside the page.
    if !modal || dialog.show_modal().is_err() {
        dialog.show();
    }
}

/// Closes a dialog: the browser gives the keyboard back to what had it before.
pub(crate) fn close(id: &str) {
    if let Some(dialog) = find(id).filter(HtmlDialogElement::open) {
        dialog.close();
    }
}
