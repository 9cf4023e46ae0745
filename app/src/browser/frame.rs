//! Animation frames, measured sizes, and where on an element a pointer is.

use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::prelude::*;
use web_sys::{Element, PointerEvent, ResizeObserver};

/// Calls `draw` once in the next frame, however often it is asked for before.
pub(crate) struct Frame {
    asked: Rc<Cell<bool>>,
    call: Closure<dyn FnMut()>,
}

impl Frame {
    /// A frame that will be drawn by `draw`.
    pub(crate) fn new(mut draw: impl FnMut() + 'static) -> Self {
        let asked = Rc::new(Cell::new(false));
        let pending = Rc::clone(&asked);
        let call = Closure::<dyn FnMut()>::new(move || {
            pending.set(false);
            draw();
        });
        Self { asked, call }
    }

    /// Asks for the next frame.
    pub(crate) fn ask(&self) {
        if self.asked.get() {
            return;
        }
        let function = self.call.as_ref().unchecked_ref();
        let told = super::window().is_some_and(|window| window.request_animation_frame(function).is_ok());
        self.asked.set(told);
    }
}

/// Watches the size of an element until it is dropped.
pub(crate) struct SizeWatch {
    observer: ResizeObserver,
    _call: Closure<dyn FnMut()>,
}

impl SizeWatch {
    /// Calls `changed` with the inner width and height, px, now and whenever one changes. Where the
    /// browser cannot watch, it is called once.
    pub(crate) fn new(element: &Element, changed: impl FnMut(f64, f64) + 'static) -> Option<Self> {
        let watched = element.clone();
        let last = Cell::new((-1, -1));
        let changed = RefCell::new(changed);
        let tell = move || {
            let size = (watched.client_width(), watched.client_height());
            if size != last.replace(size) {
                (changed.borrow_mut())(f64::from(size.0), f64::from(size.1));
            }
        };
        tell();
        let call = Closure::<dyn FnMut()>::new(tell);
        let observer = ResizeObserver::new(call.as_ref().unchecked_ref()).ok()?;
        observer.observe(element);
        Some(Self { observer, _call: call })
    }
}

impl Drop for SizeWatch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}

/// Place of a pointer on an element, px from its left and upper edge.
pub(crate) fn place_on(element: &Element, client_x: f64, client_y: f64) -> (f64, f64) {
    let edges = element.get_bounding_client_rect();
    (client_x - edges.left(), client_y - edges.top())
}

/// Draws a slider anew, and tells its greatest value, its value, and how that is read. All at once:
/// an attribute that follows by itself is code.
pub(crate) fn slide(slider: &Element, values: [String; 3], drawn: &str) {
    slider.set_inner_html(drawn);
    for (name, value) in ["aria-valuemax", "aria-valuenow", "aria-valuetext"].into_iter().zip(values) {
        let _ = slider.set_attribute(name, &value);
    }
}

/// Keeps the pointer's further events on the element where it went down.
pub(crate) fn hold_pointer(event: &PointerEvent) {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    if let Some(element) = target {
        // A pointer that is already gone cannot be held, and need not be.
        let _ = element.set_pointer_capture(event.pointer_id());
    }
}
