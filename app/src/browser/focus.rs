//! The keyboard is never lost: where the element that has it goes away, a neighbour takes it.
//!
//! Buttons that remove themselves, rows that are taken off, parts that are drawn anew: browsers
//! then put the keyboard back to the beginning of the page, and whoever cannot see or point has
//! to walk there again. One place watches for that, so that no panel has to think of it.

use super::frame::Frame;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::prelude::*;
use web_sys::{
    Element, Event, HtmlElement, KeyboardEvent, MutationObserver, MutationObserverInit, Node, NodeList,
};

/// What can have the keyboard.
const STOPS: &str = "a[href], button, select, input, textarea, summary, [tabindex]";

/// The element that has the keyboard, and how to find its place when it is gone.
struct Held {
    element: Element,
    /// Finds this element alone, or what is drawn in its place.
    selector: Option<String>,
    /// All that could have the keyboard when this took it, in the order of the page.
    stops: Option<NodeList>,
}

/// Watches the keyboard as long as the page lives; `escape` is called for Escape, whatever has the
/// keyboard, unless that took the key itself.
pub(crate) fn watch(escape: impl Fn() + 'static) {
    let Some(document) = super::document() else { return };
    let held = Rc::new(RefCell::new(None::<Held>));
    let to_look = Rc::clone(&held);
    let frame = Frame::new(move || look(&to_look));
    let heard = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
        // A list of changes is no event.
        let Ok(event) = event.dyn_into::<Event>() else { return frame.ask() };
        match event.type_().as_str() {
            "focusin" => {
                root_mark(false);
                let element = event.target().and_then(|target| target.dyn_into().ok());
                held.replace(element.map(Held::new));
            }
            "keydown" => {
                let key = event.dyn_ref::<KeyboardEvent>().map(KeyboardEvent::key);
                if key.as_deref() == Some("Escape") && !event.default_prevented() {
                    escape();
                }
            }
            _ => frame.ask(),
        }
    });
    let hear = heard.as_ref().unchecked_ref();
    for event in ["focusin", "focusout", "keydown"] {
        let _ = document.add_event_listener_with_callback(event, hear);
    }
    let what = MutationObserverInit::new();
    what.set_child_list(true);
    what.set_subtree(true);
    what.set_attribute_filter(&js_sys::Array::of2(&"hidden".into(), &"disabled".into()));
    if let Ok(observer) = MutationObserver::new(hear) {
        let _ = observer.observe_with_options(&document, &what);
    }
    heard.forget();
}

/// Hides the hint at the field that has the keyboard, until the keyboard goes on.
pub(crate) fn hush() {
    root_mark(true);
}

fn root_mark(hushed: bool) {
    if let Some(root) = super::document().and_then(|document| document.document_element()) {
        let _ = root.toggle_attribute_with_force("data-hushed", hushed);
    }
}

impl Held {
    fn new(element: Element) -> Self {
        Self { selector: selector(&element), stops: stops(), element }
    }

    /// The nearest stop before this one that is still there.
    fn before(&self) -> Option<Element> {
        let mut before = None;
        for stop in each(self.stops.as_ref()) {
            if stop == self.element {
                break;
            }
            if is_there(&stop) {
                before = Some(stop);
            }
        }
        before
    }

    /// What takes its place: the same drawn anew, or what now follows on what came before it. No
    /// field that is typed into: a phone would bring up its keys.
    fn next(&self) -> Option<Element> {
        let anew = self.selector.as_ref().and_then(|it| super::document()?.query_selector(it).ok()?);
        if let Some(anew) = anew.filter(is_there) {
            return Some(anew);
        }
        let before = self.before();
        let follows = |stop: &Element| {
            let place = before.as_ref().map(|before| before.compare_document_position(stop));
            place.is_none_or(|place| place & Node::DOCUMENT_POSITION_FOLLOWING != 0)
        };
        let typed = |stop: &Element| stop.matches("input[type=text], textarea").unwrap_or(false);
        each(stops().as_ref()).find(|stop| follows(stop) && is_there(stop) && !typed(stop))
    }
}

/// A selector that finds this element alone; `None` where there is none so simple.
fn selector(element: &Element) -> Option<String> {
    let named = |name: &str| element.get_attribute(name).map(|value| format!("[{name}=\"{value}\"]"));
    let names = ["id", "data-testid", "aria-label"].map(|name| named(name).unwrap_or_default()).concat();
    // A name with a quotation mark in it is no selector: then the place decides.
    let found = super::document()?.query_selector_all(&names).ok()?;
    (found.length() == 1).then_some(names)
}

fn stops() -> Option<NodeList> {
    super::document()?.query_selector_all(STOPS).ok()
}

fn each(stops: Option<&NodeList>) -> impl Iterator<Item = Element> {
    let all = stops.map_or(0, NodeList::length);
    // Only elements are selected.
    (0..all).filter_map(move |index| Some(stops?.get(index)?.unchecked_into()))
}

fn is_there(element: &Element) -> bool {
    let off = element.has_attribute("disabled") || matches!(element.closest("[hidden]"), Ok(Some(_)));
    element.is_connected() && !off && element.get_bounding_client_rect().width() > 0.0
}

/// Looks whether what had the keyboard is still there; if not, a neighbour takes it.
fn look(held: &RefCell<Option<Held>>) {
    let active = super::document().and_then(|document| document.active_element());
    let active = active.filter(|it| it.tag_name() != "BODY");
    let next = {
        let held = held.borrow();
        let Some(held) = held.as_ref() else { return };
        let there = is_there(&held.element);
        if active.is_some_and(|it| it != held.element || there) {
            return;
        }
        // Where it is still there, the person left it: there is nothing to keep.
        if there { None } else { held.next() }
    };
    held.replace(None);
    if let Some(next) = next {
        let _ = next.unchecked_into::<HtmlElement>().focus();
    }
}
