//! The worker: the solver behind messages, in a thread of its own.
//!
//! Nothing here decides anything; requests are answered by [`workers::desk::Desk`]. Leptos is not
//! linked. The page cancels by ending the worker.

use js_sys::{Date, Uint8Array};
use solver::road::{Bound, FileError, bounds};
use wasm_bindgen::prelude::*;
use web_sys::{Blob, FileReaderSync};
use workers::desk::Desk;
use workers::message::{Arrays, Reply, Request, decode};
use workers::scope::{listen, post};

/// Least time between two progress messages, ms: twenty a second are enough for an eye.
const PROGRESS_GAP_MS: f64 = 50.0;

fn main() {
    std::panic::set_hook(Box::new(|panic| post(0, &Reply::Panicked(panic.to_string()), &Arrays::default())));
    let mut desk = Desk::new();
    listen(move |header, parts| hear(&mut desk, header, parts));
    post(0, &Reply::Ready, &Arrays::default());
}

/// A request, and the files where some are sent along.
fn hear(desk: &mut Desk, header: &[u8], parts: Vec<JsValue>) {
    let Some((number, request)) = decode::<Request>(header) else { return };
    let blobs = parts.into_iter().filter_map(|it| it.dyn_into::<Blob>().ok());
    let files = match read_files(blobs) {
        Ok(files) => files,
        Err(error) => return post(number, &Reply::Failed(error), &Arrays::default()),
    };
    let mut told_at = 0.0;
    desk.answer(request, files, &mut |reply, arrays| {
        if matches!(reply, Reply::Progress(..)) {
            let now = Date::now();
            if now - told_at < PROGRESS_GAP_MS {
                return;
            }
            told_at = now;
        }
        post(number, &reply, &arrays);
    });
}

/// The bytes of the files; what is too large in all is not even read.
fn read_files(blobs: impl Iterator<Item = Blob>) -> Result<Vec<Vec<u8>>, FileError> {
    let blobs: Vec<Blob> = blobs.collect();
    #[allow(clippy::cast_precision_loss, reason = "the bound is far below 2⁵²")]
    let most = bounds::MOST_BYTES as f64;
    let all: f64 = blobs.iter().map(Blob::size).sum();
    if all > most {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a size in bytes")]
        let size = all as usize;
        return Err(FileError::TooLarge(Bound::Bytes(size)));
    }
    blobs.iter().map(read_file).collect()
}

fn read_file(blob: &Blob) -> Result<Vec<u8>, FileError> {
    let buffer = FileReaderSync::new().and_then(|reader| reader.read_as_array_buffer(blob));
    // A file that was moved or locked after it was chosen reads as nothing.
    buffer.map(|buffer| Uint8Array::new(&buffer).to_vec()).map_err(|_| FileError::Empty)
}
