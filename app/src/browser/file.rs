//! Files: chosen, dropped, or fetched from beside the page.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, DragEvent, Event, FileList, HtmlInputElement, Response};

/// A file that the person gave, or the demo.
#[derive(Debug, Clone)]
pub(crate) struct GivenFile {
    /// Its name.
    pub(crate) name: String,
    /// Its bytes, still unread.
    pub(crate) blob: Blob,
}

/// What a drop brought.
pub(crate) enum Dropped {
    /// One file.
    File(GivenFile),
    /// More than one.
    Many,
    /// Text, a link, a folder: no file.
    Nothing,
}

/// The file chosen in a file field; the field is emptied, so that the same file can be chosen again.
pub(crate) fn chosen(event: &Event) -> Option<GivenFile> {
    let field: HtmlInputElement = event.target()?.dyn_into().ok()?;
    let file = first(&field.files()?);
    field.set_value("");
    file
}

/// What was dropped.
pub(crate) fn dropped(event: &DragEvent) -> Dropped {
    let Some(files) = event.data_transfer().and_then(|transfer| transfer.files()) else {
        return Dropped::Nothing;
    };
    if files.length() > 1 {
        return Dropped::Many;
    }
    first(&files).map_or(Dropped::Nothing, Dropped::File)
}

/// Whether what hovers over the page holds files.
pub(crate) fn holds_files(event: &DragEvent) -> bool {
    let types = event.data_transfer().map(|transfer| transfer.types());
    types.is_some_and(|types| types.iter().any(|kind| kind == "Files"))
}

/// Whether the pointer left the page itself, not only one of its parts.
pub(crate) fn left_the_page(event: &DragEvent) -> bool {
    event.related_target().is_none()
}

fn first(files: &FileList) -> Option<GivenFile> {
    let file = files.get(0)?;
    Some(GivenFile { name: file.name(), blob: file.into() })
}

/// Fetches a file from beside the page.
pub(crate) async fn fetch(address: &str) -> Option<GivenFile> {
    let response = JsFuture::from(super::window()?.fetch_with_str(address)).await.ok()?;
    let response: Response = response.dyn_into().ok()?;
    if !response.ok() {
        return None;
    }
    let blob = JsFuture::from(response.blob().ok()?).await.ok()?.dyn_into().ok()?;
    Some(GivenFile { name: address.trim_start_matches("./").to_owned(), blob })
}
