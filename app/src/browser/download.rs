//! Saving as a file, without a server.

use js_sys::Array;
use wasm_bindgen::prelude::*;
use web_sys::{Blob, BlobPropertyBag, HtmlAnchorElement, Url};

/// Offers `text` for saving under `name`; `false` where the browser does not let it.
pub(crate) fn save(name: &str, mime: &str, text: &str) -> bool {
    try_save(name, mime, text).is_some()
}

fn try_save(name: &str, mime: &str, text: &str) -> Option<()> {
    let kind = BlobPropertyBag::new();
    kind.set_type(mime);
    let parts = Array::of1(&JsValue::from_str(text));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    save_blob(name, &blob)
}

/// Offers a file for saving under `name`; `false` where the browser does not let it.
pub(crate) fn save_file(name: &str, blob: &Blob) -> bool {
    save_blob(name, blob).is_some()
}

/// Offers what is in `blob`; `None` where the browser does not let it.
pub(super) fn save_blob(name: &str, blob: &Blob) -> Option<()> {
    let address = Url::create_object_url_with_blob(blob).ok()?;
    let link: HtmlAnchorElement = super::document()?.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The click has taken its copy of the address.
    let _ = Url::revoke_object_url(&address);
    Some(())
}
