//! Everything of the browser. Nothing here panics where an interface is missing: a page
//! without storage still works, it only forgets.

pub(crate) mod download;
pub(crate) mod file;
pub(crate) mod frame;
pub(crate) mod storage;
pub(crate) mod theme;
pub(crate) mod timer;
pub(crate) mod worker;

use web_sys::{Document, Window};

fn window() -> Option<Window> {
    web_sys::window()
}

fn document() -> Option<Document> {
    window()?.document()
}

/// Whether there is room for two columns.
pub(crate) fn is_wide() -> bool {
    let query = window().and_then(|window| window.match_media("(min-width: 70rem)").ok().flatten());
    query.is_none_or(|query| query.matches())
}

/// Scrolls an element of the page into view.
pub(crate) fn show_element(id: &str) {
    if let Some(element) = document().and_then(|document| document.get_element_by_id(id)) {
        element.scroll_into_view();
    }
}
