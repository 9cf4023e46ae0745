//! Everything of the browser. Nothing here panics where an interface is missing: a page
//! without storage still works, it only forgets.

pub(crate) mod address;
pub(crate) mod database;
pub(crate) mod dialog;
pub(crate) mod download;
pub(crate) mod file;
pub(crate) mod focus;
pub(crate) mod frame;
pub(crate) mod leaving;
pub(crate) mod link;
pub(crate) mod offline;
pub(crate) mod picture;
pub(crate) mod rows;
pub(crate) mod storage;
pub(crate) mod theme;
pub(crate) mod timer;
pub(crate) mod worker;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Document, Response, Window};

fn window() -> Option<Window> {
    web_sys::window()
}

fn document() -> Option<Document> {
    window()?.document()
}

/// The address of a file that belongs to the page, from its `<meta name=… content=…>`: beside
/// `index.html` under a name with the hash of the contents, in the page as one file in memory.
pub(crate) fn named(file: &str) -> Option<String> {
    let meta = document()?.query_selector(&format!("meta[name={file}]")).ok()??;
    meta.get_attribute("content")
}

/// The pages of all languages, where the build names them: tag and address.
pub(crate) fn languages() -> Vec<(String, String)> {
    let pages = named("languages").unwrap_or_default();
    let pages = pages.split_whitespace().filter_map(|page| page.split_once('='));
    pages.map(|(tag, address)| (tag.to_owned(), address.to_owned())).collect()
}

/// The tag of the language that the browser is set to; empty where it does not tell.
pub(crate) fn preferred_language() -> String {
    window().and_then(|window| window.navigator().language()).unwrap_or_default()
}

/// What stands in a file that belongs to the page; `None` where it cannot be had.
async fn fetch(file: &str) -> Option<Response> {
    fetch_from(&named(file)?).await
}

/// What stands at an address of the page's own; `None` where it cannot be had.
async fn fetch_from(address: &str) -> Option<Response> {
    let response = JsFuture::from(window()?.fetch_with_str(address)).await.ok()?;
    response.dyn_into().ok().filter(Response::ok)
}

/// Cores of the machine, as far as the browser tells.
pub(crate) fn cores() -> usize {
    window().map_or(1, |window| window.navigator().hardware_concurrency() as usize)
}

/// Whether a media query holds; `None` where the browser knows none.
fn media(query: &str) -> Option<bool> {
    media_list(query).map(|it| it.matches())
}

fn media_list(query: &str) -> Option<web_sys::MediaQueryList> {
    window()?.match_media(query).ok()?
}

/// Bytes as base64 (RFC 4648, section 4), by the browser.
fn base64(bytes: &[u8]) -> Option<String> {
    window()?.btoa(&bytes.iter().copied().map(char::from).collect::<String>()).ok()
}

/// The element that an event is about.
fn target(event: &web_sys::Event) -> Option<web_sys::Element> {
    event.target()?.dyn_into().ok()
}

/// Whether there is room for the drawer beside the picture: as in `style/drawer.css`.
pub(crate) fn has_room_beside() -> bool {
    media("(min-width: 75rem)").unwrap_or(true)
}

/// The width and height from which there is room for a line below the picture.
const ROOM_BELOW: &str = "(min-width: 40.01rem) and (min-height: 30.01rem)";

/// Whether there is room for a line below the picture; `told` hears of each change, as long as the page lives.
pub(crate) fn room_below(told: impl Fn(bool) + 'static) -> bool {
    let Some(query) = media_list(ROOM_BELOW) else { return true };
    let now = query.matches();
    let asked = query.clone();
    let listener = Closure::<dyn Fn()>::new(move || told(asked.matches()));
    let _ = query.add_event_listener_with_callback("change", listener.as_ref().unchecked_ref());
    listener.forget();
    now
}

/// Loads the page anew.
pub(crate) fn reload() {
    if let Some(window) = window() {
        let _ = window.location().reload();
    }
}

/// Opens the browser's print dialogue.
pub(crate) fn print() {
    if let Some(window) = window() {
        // Refused only where printing is switched off; the browser says so itself.
        let _ = window.print();
    }
}

/// Prints a part of the page: the style sheets go by its key, as long as it is printed. Without a key the card is
/// what paper gets.
pub(crate) fn print_only(part: &str) {
    let Some(root) = document().and_then(|document| document.document_element()) else { return };
    // Refused only for a name that is none.
    let _ = root.set_attribute(PRINTED, part);
    let after = Closure::once_into_js(move || root.remove_attribute(PRINTED));
    if let Some(window) = window() {
        let once = web_sys::AddEventListenerOptions::new();
        once.set_once(true);
        let _ = window.add_event_listener_with_callback_and_add_event_listener_options(
            "afterprint",
            after.unchecked_ref(),
            &once,
        );
    }
    print();
}

/// Attribute of the root element: which part of the page is printed.
const PRINTED: &str = "data-printed";

/// Prints in the next frame, when what is to be printed is there.
pub(crate) fn print_next() {
    leptos::prelude::request_animation_frame(|| leptos::prelude::request_animation_frame(print));
}

/// Puts the keyboard on an element of the page, in the next frame, when it is there.
pub(crate) fn focus(id: String) {
    let give = move || {
        let element = document().and_then(|document| document.get_element_by_id(&id));
        if let Some(element) = element.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok()) {
            let _ = element.focus();
        }
    };
    leptos::prelude::request_animation_frame(give);
}

/// Opens all that an element of the page is folded into, and puts the keyboard on it.
pub(crate) fn go_to(id: &str) {
    unfold(id);
    focus(id.to_owned());
}

/// Opens an element of the page and all that it is folded into.
pub(crate) fn unfold(id: &str) {
    let element = document().and_then(|document| document.get_element_by_id(id));
    let mut around = element.and_then(|it| it.closest("details").ok()?);
    while let Some(details) = around {
        let _ = details.set_attribute("open", "");
        around = details.parent_element().and_then(|it| it.closest("details").ok()?);
    }
}

/// Whether what was just focused is to show it: by the keyboard rather than by hand.
pub(crate) fn is_by_keyboard(event: &web_sys::Event) -> bool {
    target(event).is_some_and(|it| it.matches(":focus-visible").unwrap_or(false))
}

/// Whether the `<details>` that was opened or closed is open now.
pub(crate) fn is_open(event: &web_sys::Event) -> bool {
    target(event).is_some_and(|details| details.has_attribute("open"))
}

/// Whether what has the keyboard keeps keys to itself: a field, a choice, a slider.
pub(crate) fn is_typing(event: &web_sys::KeyboardEvent) -> bool {
    target(event).is_some_and(|it| matches!(it.tag_name().as_str(), "INPUT" | "SELECT" | "TEXTAREA"))
}

/// Whether a slider has the keyboard.
pub(crate) fn is_sliding(event: &web_sys::KeyboardEvent) -> bool {
    target(event).is_some_and(|it| it.get_attribute("type").as_deref() == Some("range"))
}

/// Whether a button or a link has the keyboard: a blank presses it.
pub(crate) fn is_pressing(event: &web_sys::KeyboardEvent) -> bool {
    target(event).is_some_and(|it| matches!(it.tag_name().as_str(), "BUTTON" | "A" | "SUMMARY"))
}

/// The time, s, from some beginning.
pub(crate) fn now_s() -> f64 {
    js_sys::Date::now() / 1e3
}

/// Whether the person asked the machine for little motion.
pub(crate) fn wants_little_motion() -> bool {
    media("(prefers-reduced-motion: reduce)").unwrap_or(false)
}

/// Leafs through an element that holds more than it shows, on or back, by its height less a line
/// that stays to go on from. Whether anything was left that way.
pub(crate) fn leaf(id: &str, on: bool) -> bool {
    /// px: about a line from the last row.
    const STAYS: i32 = 36;
    let Some(element) = document().and_then(|document| document.get_element_by_id(id)) else { return false };
    let before = element.scroll_top();
    let page = (element.client_height() - STAYS).max(STAYS);
    element.set_scroll_top(before + if on { page } else { -page });
    element.scroll_top() != before
}
