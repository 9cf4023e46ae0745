//! Rows of text from a JSON file that belongs to the page.

use js_sys::{Array, JSON, Reflect};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;

/// The texts under these keys of each row; a truth value reads “true” or “false”, what is
/// missing is empty. `None` where the file cannot be fetched or is no list.
pub(crate) async fn fetch<const N: usize>(file: &str, keys: [&str; N]) -> Option<Vec<[String; N]>> {
    let text = JsFuture::from(super::fetch(file).await?.text().ok()?).await.ok()?.as_string()?;
    let list: Array = JSON::parse(&text).ok()?.dyn_into().ok()?;
    let of_row = |row: JsValue| keys.map(|key| text_of(&row, key));
    Some(list.iter().map(of_row).collect())
}

fn text_of(row: &JsValue, key: &str) -> String {
    let value = Reflect::get(row, &JsValue::from_str(key)).unwrap_or(JsValue::UNDEFINED);
    match value.as_bool() {
        Some(truth) => truth.to_string(),
        None => value.as_string().unwrap_or_default(),
    }
}
