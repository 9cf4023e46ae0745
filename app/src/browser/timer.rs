//! A call that comes later, and can be called off.

use wasm_bindgen::prelude::*;

/// Called off when it is dropped.
pub(crate) struct Timer {
    id: i32,
    _call: Closure<dyn FnMut()>,
}

impl Timer {
    /// Calls `then` once after some milliseconds; `None` where the browser has no timers.
    pub(crate) fn after(milliseconds: i32, then: impl FnMut() + 'static) -> Option<Self> {
        let call = Closure::<dyn FnMut()>::new(then);
        let id = super::window()?
            .set_timeout_with_callback_and_timeout_and_arguments_0(
                call.as_ref().unchecked_ref(),
                milliseconds,
            )
            .ok()?;
        Some(Self { id, _call: call })
    }
}

impl Drop for Timer {
    fn drop(&mut self) {
        if let Some(window) = super::window() {
            window.clear_timeout_with_handle(self.id);
        }
    }
}
