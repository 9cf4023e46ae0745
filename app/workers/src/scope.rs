//! The worker's own end: what it hears and posts.

use crate::message::{Arrays, encode};
use js_sys::{Array, Float32Array, Uint8Array};
use serde::Serialize;
use wasm_bindgen::prelude::*;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

fn scope() -> Option<DedicatedWorkerGlobalScope> {
    js_sys::global().dyn_into().ok()
}

/// Calls `hear` with each message: the header, and what came along.
pub fn listen(mut hear: impl FnMut(&[u8], Vec<JsValue>) + 'static) {
    let listener = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
        let message: Array = event.data().unchecked_into();
        let header = message.get(0).unchecked_into::<Uint8Array>().to_vec();
        hear(&header, message.iter().skip(1).collect());
    });
    if let Some(scope) = scope() {
        scope.set_onmessage(Some(listener.as_ref().unchecked_ref()));
    }
    listener.forget();
}

/// Posts a header with its arrays, which change hands.
pub fn post<T: Serialize>(number: u32, reply: &T, arrays: &Arrays) {
    let Some(scope) = scope() else { return };
    let message = Array::of1(&Uint8Array::from(encode(number, reply).as_slice()));
    let transfer = Array::new();
    for floats in &arrays.floats {
        let array = Float32Array::from(floats.as_slice());
        transfer.push(&array.buffer());
        message.push(&array);
    }
    for bytes in &arrays.bytes {
        let array = Uint8Array::from(bytes.as_slice());
        transfer.push(&array.buffer());
        message.push(&array);
    }
    // Fails only where a value cannot be cloned; these can.
    let _ = scope.post_message_with_transfer(&message, &transfer);
}

/// The bytes of something that came along; `None` where it is none.
#[must_use]
pub fn bytes_of(part: JsValue) -> Option<Vec<u8>> {
    part.dyn_into::<Uint8Array>().ok().map(|bytes| bytes.to_vec())
}
