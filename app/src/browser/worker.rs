//! The other end of the worker: starts it, sends to it, hears from it, ends it.

use js_sys::{Array, Float32Array, Uint8Array};
use std::sync::Arc;
use wasm_bindgen::prelude::*;
use web_sys::{Blob, Event, MessageEvent, Worker};

/// A running worker; it ends when this is dropped.
pub(crate) struct WorkerClient {
    worker: Worker,
    _on_message: Closure<dyn FnMut(MessageEvent)>,
    _on_error: Closure<dyn FnMut(Event)>,
}

/// Bytes as they came from one worker, to be sent on to another.
#[derive(Clone)]
pub(crate) struct RawBytes {
    bytes: Uint8Array,
}

/// Which worker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum WorkerKind {
    /// The one that reads, plans and answers first.
    First,
    /// The one that looks further.
    Study,
}

/// A message of the worker: its header and the arrays beside it.
pub(crate) struct Heard {
    message: Array,
}

impl Heard {
    /// The header.
    pub(crate) fn header(&self) -> Vec<u8> {
        self.message.get(0).dyn_into::<Uint8Array>().map(|bytes| bytes.to_vec()).unwrap_or_default()
    }

    /// The array of floats at a place behind the header; empty where there is none.
    pub(crate) fn floats(&self, place: usize) -> Arc<[f32]> {
        let array = self.at(place).dyn_into::<Float32Array>();
        array.map(|array| array.to_vec().into()).unwrap_or_default()
    }

    /// The array of bytes at a place behind the header; empty where there is none.
    pub(crate) fn bytes(&self, place: usize) -> Arc<[u8]> {
        let array = self.at(place).dyn_into::<Uint8Array>();
        array.map(|array| array.to_vec().into()).unwrap_or_default()
    }

    /// The array of bytes at a place behind the header, as it is.
    pub(crate) fn raw(&self, place: usize) -> Option<RawBytes> {
        self.at(place).dyn_into::<Uint8Array>().ok().map(|bytes| RawBytes { bytes })
    }

    fn at(&self, place: usize) -> JsValue {
        u32::try_from(place + 1).map_or(JsValue::UNDEFINED, |index| self.message.get(index))
    }
}

impl WorkerClient {
    /// Starts the worker named by the page; `None` where the browser has no workers.
    ///
    /// `failed` is called when the script or its module cannot be loaded, and when the worker
    /// stops on an error.
    pub(crate) fn start(
        kind: WorkerKind,
        mut heard: impl FnMut(Heard) + 'static,
        mut failed: impl FnMut() + 'static,
    ) -> Option<Self> {
        let worker = Worker::new(&script_address(kind)?).ok()?;
        let on_message = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Ok(message) = event.data().dyn_into::<Array>() {
                heard(Heard { message });
            }
        });
        let on_error = Closure::<dyn FnMut(Event)>::new(move |_: Event| failed());
        worker.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
        worker.set_onerror(Some(on_error.as_ref().unchecked_ref()));
        Some(Self { worker, _on_message: on_message, _on_error: on_error })
    }

    /// Sends a header and, beside it, bytes where there are some; they are copied.
    pub(crate) fn send_bytes(&self, header: &[u8], bytes: Option<&RawBytes>) -> bool {
        let message = Array::of1(&Uint8Array::from(header));
        if let Some(RawBytes { bytes }) = bytes {
            message.push(bytes);
        }
        self.worker.post_message(&message).is_ok()
    }

    /// Sends a header and, beside it, files that the worker reads itself.
    pub(crate) fn send<'a>(&self, header: &[u8], files: impl Iterator<Item = &'a Blob>) -> bool {
        let message = Array::of1(&Uint8Array::from(header));
        for file in files {
            message.push(file);
        }
        self.worker.post_message(&message).is_ok()
    }
}

impl Drop for WorkerClient {
    fn drop(&mut self) {
        self.worker.set_onmessage(None);
        self.worker.set_onerror(None);
        self.worker.terminate();
    }
}

fn script_address(kind: WorkerKind) -> Option<String> {
    super::named(match kind {
        WorkerKind::First => "worker-script",
        WorkerKind::Study => "study-script",
    })
}
