//! An element of the page as a PNG for a phone: one column, as wide as the phone and as long as it takes.
//!
//! The browser itself draws it: a copy of the element is laid out beside the page to learn how long it is,
//! and goes into an SVG image with the page's own style sheets and faces, and the image onto a canvas. An
//! image may load nothing, so everything stands in it; a data address is the one that every browser lets be
//! read back.

use super::download;
use js_sys::{Function, Promise, encode_uri_component};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, CanvasRenderingContext2d, CssStyleSheet, Element, HtmlCanvasElement, HtmlElement, HtmlImageElement,
    XmlSerializer,
};

/// Width of the column, px: that of a small phone.
const WIDTH: f64 = 360.0;
/// Dots of the picture for a px.
const DOTS: f64 = 3.0;
/// Edges of letters are drawn in fewer greys: the file is a third smaller, and no eye sees it on a phone.
const CONTRAST: f64 = 2.5;
/// Dots that every browser draws on one canvas; some phones draw no more.
const MOST_DOTS: f64 = 16_000_000.0;
/// Most dots of a side.
const LONGEST: f64 = 16_000.0;

/// Offers the element of this id for saving as a picture; `false` where the browser does not do
/// that.
pub(crate) async fn save(id: &str, name: &str) -> bool {
    try_save(id, name).await.is_some()
}

async fn try_save(id: &str, name: &str) -> Option<()> {
    let element = super::document()?.get_element_by_id(id)?;
    let styles = styles().await?;
    let (column, height) = column(&element)?;
    let svg = svg(&column, height, &styles);
    let image = HtmlImageElement::new().ok()?;
    image.set_src(&format!("data:image/svg+xml,{}", String::from(encode_uri_component(&svg))));
    JsFuture::from(image.decode()).await.ok()?;
    let canvas: HtmlCanvasElement = super::document()?.create_element("canvas").ok()?.dyn_into().ok()?;
    let dots = DOTS.min((MOST_DOTS / (WIDTH * height)).sqrt()).min(LONGEST / height);
    let (width, height) = ((WIDTH * dots).round(), (height * dots).round());
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "positive, and bounded above")]
    let (across, down) = (width as u32, height as u32);
    canvas.set_width(across);
    canvas.set_height(down);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
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

/// A copy of the element in one column, as text, and its height, px.
fn column(element: &Element) -> Option<(String, f64)> {
    let document = super::document()?;
    let host: HtmlElement = document.create_element("div").ok()?.dyn_into().ok()?;
    host.set_class_name("card-host");
    let style = host.style();
    for (name, value) in [("position", "absolute"), ("left", "-99999px"), ("width", "360px"), ("margin", "0")]
    {
        style.set_property(name, value).ok()?;
    }
    host.append_child(&element.clone_node_with_deep(true).ok()?).ok()?;
    document.body()?.append_child(&host).ok()?;
    let height = host.get_bounding_client_rect().height().ceil();
    let text = XmlSerializer::new().ok().and_then(|it| it.serialize_to_string(&host.first_child()?).ok());
    host.remove();
    Some((text?, height))
}

/// The column as an image.
fn svg(column: &str, height: f64, styles: &str) -> String {
    let styles = styles.replace('&', "&amp;").replace('<', "&lt;");
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WIDTH}\" height=\"{height}\">\
         <foreignObject width=\"100%\" height=\"100%\"><html xmlns=\"http://www.w3.org/1999/xhtml\">\
         <style>{styles} html, body {{ margin: 0; padding: 0; background: #fff; }} \
         .card-pages {{ filter: contrast({CONTRAST}); }}</style>\
         <body><div class=\"card-host\" style=\"margin: 0; width: {WIDTH}px\">{column}</div></body>\
         </html></foreignObject></svg>"
    )
}

/// All rules of the page, faces with their data.
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
                None => rule,
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
