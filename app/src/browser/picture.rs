//! An element of the page as a PNG: the page it would be printed on.
//!
//! The browser itself draws it: the element goes into an SVG image with the page's own style sheets
//! and faces, as they are for print, and the image onto a canvas. An image may load nothing, so
//! everything stands in it; a data address is the one that every browser lets be read back.

use super::download;
use js_sys::{Function, Promise, encode_uri_component};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, CanvasRenderingContext2d, CssStyleSheet, Element, HtmlCanvasElement, HtmlImageElement,
    XmlSerializer,
};

/// A sheet of A4 at 96 px to the inch.
const SIZE: (u32, u32) = (794, 1_123);
/// Margin of the sheet, px.
const MARGIN: u32 = 38;
/// Dots of the picture for a px.
const DOTS: u32 = 2;

/// Offers the element of this id for saving as a picture; `false` where the browser does not do
/// that.
pub(crate) async fn save(id: &str, name: &str) -> bool {
    try_save(id, name).await.is_some()
}

async fn try_save(id: &str, name: &str) -> Option<()> {
    let element = super::document()?.get_element_by_id(id)?;
    let svg = svg(&element, &styles().await?)?;
    let image = HtmlImageElement::new().ok()?;
    image.set_src(&format!("data:image/svg+xml,{}", String::from(encode_uri_component(&svg))));
    JsFuture::from(image.decode()).await.ok()?;
    let canvas: HtmlCanvasElement = super::document()?.create_element("canvas").ok()?.dyn_into().ok()?;
    let (width, height) = (SIZE.0 * DOTS, SIZE.1 * DOTS);
    canvas.set_width(width);
    canvas.set_height(height);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    let (width, height) = (f64::from(width), f64::from(height));
    context.set_fill_style_str("#fff");
    context.fill_rect(0.0, 0.0, width, height);
    context.draw_image_with_html_image_element_and_dw_and_dh(&image, 0.0, 0.0, width, height).ok()?;
    let blob = JsFuture::from(blob(&canvas)).await.ok()?;
    download::save_blob(name, &blob.dyn_into::<Blob>().ok()?)
}

fn blob(canvas: &HtmlCanvasElement) -> Promise {
    Promise::new(&mut |done: Function, failed: Function| {
        if canvas.to_blob(&done).is_err() {
            // Told to the waiting caller; there is nobody else.
            let _ = failed.call0(&JsValue::NULL);
        }
    })
}

/// The element on its sheet, within the ancestors that the style sheets ask for.
fn svg(element: &Element, styles: &str) -> Option<String> {
    let sheet = XmlSerializer::new().ok()?.serialize_to_string(element).ok()?;
    let (width, height) = SIZE;
    let styles = styles.replace('&', "&amp;").replace('<', "&lt;");
    Some(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\">\
         <foreignObject width=\"100%\" height=\"100%\"><html xmlns=\"http://www.w3.org/1999/xhtml\">\
         <style>{styles} body {{ padding: {MARGIN}px; }}</style>\
         <body><main><div class=\"results\"><section class=\"card cab\">{sheet}</section></div></main></body>\
         </html></foreignObject></svg>"
    ))
}

/// All rules of the page, those for print holding always, faces with their data.
async fn styles() -> Option<String> {
    let sheets = super::document()?.style_sheets();
    let mut text = String::new();
    for index in 0..sheets.length() {
        let sheet: CssStyleSheet = sheets.get(index)?.dyn_into().ok()?;
        let base = sheet.href().ok().flatten();
        let rules = sheet.css_rules().ok()?;
        for index in 0..rules.length() {
            let rule = rules.get(index)?.css_text();
            let rule = match rule.strip_prefix("@font-face") {
                Some(face) => format!("@font-face{}", with_data(face, base.as_deref()).await?),
                None => rule.replacen("@media print", "@media all", 1),
            };
            text.push_str(&rule);
        }
    }
    Some(text)
}

/// A face with its data in place of its address.
async fn with_data(face: &str, base: Option<&str>) -> Option<String> {
    let (before, rest) = face.split_once("url(\"")?;
    let (address, after) = rest.split_once('"')?;
    if address.starts_with("data:") {
        return Some(face.to_owned());
    }
    let folder = base.and_then(|base| base.rsplit_once('/')).map_or("", |(folder, _)| folder);
    let response = super::fetch_from(&format!("{folder}/{address}")).await?;
    let buffer = JsFuture::from(response.array_buffer().ok()?).await.ok()?;
    let bytes = js_sys::Uint8Array::new(&buffer).to_vec();
    Some(format!("{before}url(\"data:font/woff2;base64,{}\"{after}", super::base64(&bytes)?))
}
