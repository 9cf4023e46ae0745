//! Files: chosen, dropped, or the page's own.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
pub(crate) use web_sys::Blob;
use web_sys::{DragEvent, Event, FileList, HtmlInputElement};

/// A file that the person gave, or the demo.
#[derive(Debug, Clone)]
pub(crate) struct GivenFile {
    /// Its name.
    pub(crate) name: String,
    /// Its bytes, still unread.
    pub(crate) blob: Blob,
}

impl GivenFile {
    /// How many bytes it has.
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a number of bytes, told as a double"
    )]
    pub(crate) fn bytes(&self) -> u64 {
        self.blob.size() as u64
    }
}

/// The files chosen in a file field; the field is emptied, so that the same can be chosen again.
pub(crate) fn chosen(event: &Event) -> Vec<GivenFile> {
    let field = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let Some(field) = field else { return Vec::new() };
    let files = field.files().map(|files| all(&files)).unwrap_or_default();
    field.set_value("");
    files
}

/// The files that were dropped; none where it was text, a link or a folder.
pub(crate) fn dropped(event: &DragEvent) -> Vec<GivenFile> {
    let files = event.data_transfer().and_then(|transfer| transfer.files());
    files.map(|files| all(&files)).unwrap_or_default()
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

fn all(files: &FileList) -> Vec<GivenFile> {
    let given = |file: web_sys::File| GivenFile { name: file.name(), blob: file.into() };
    (0..files.length()).filter_map(|index| files.get(index)).map(given).collect()
}

/// Longest text that is read whole, bytes: a truck file has a few thousand.
const LONGEST_TEXT: f64 = 1e6;

/// The text of a file; `None` where it is far too long or cannot be read.
pub(crate) async fn text(file: &GivenFile) -> Option<String> {
    if file.blob.size() > LONGEST_TEXT {
        return None;
    }
    JsFuture::from(file.blob.text()).await.ok()?.as_string()
}

/// A file of a text and of all these behind it; `None` where the browser does not make one.
pub(crate) fn joined(text: &str, files: &[GivenFile]) -> Option<Blob> {
    let parts = Array::of1(&JsValue::from_str(text));
    for file in files {
        parts.push(&file.blob);
    }
    Blob::new_with_blob_sequence(&parts).ok()
}

/// The bytes of a file from one place to another, as a file of its own.
pub(crate) fn slice(file: &GivenFile, from: f64, to: f64, name: &str) -> Option<GivenFile> {
    let blob = file.blob.slice_with_f64_and_f64(from, to).ok()?;
    Some(GivenFile { name: name.to_owned(), blob })
}

/// The first line of a file, and what comes behind it; `None` where it has no end near the start.
pub(crate) async fn first_line(file: &GivenFile) -> Option<(String, GivenFile)> {
    let start = slice(file, 0.0, LONGEST_TEXT.min(file.blob.size()), &file.name)?;
    let bytes = JsFuture::from(start.blob.array_buffer()).await.ok()?;
    let bytes = Uint8Array::new(&bytes).to_vec();
    let end = bytes.iter().position(|byte| *byte == b'\n')?;
    let line = String::from_utf8(bytes.get(..end)?.to_vec()).ok()?;
    let behind = u32::try_from(end + 1).ok()?;
    Some((line, slice(file, f64::from(behind), file.blob.size(), &file.name)?))
}

/// Fetches a file that belongs to the page, as one with a `name`.
pub(crate) async fn fetch(file: &str, name: &str) -> Option<GivenFile> {
    let blob = JsFuture::from(super::fetch(file).await?.blob().ok()?).await.ok()?.dyn_into().ok()?;
    Some(GivenFile { name: name.to_owned(), blob })
}
