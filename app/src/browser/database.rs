//! Roads kept in the browser's database: their files as they were given, each behind a header.
//!
//! Every failure is silent: a browser without a database, or one that is full, only forgets.

use super::file::GivenFile;
use js_sys::{Array, Function, Promise, Uint8Array};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, IdbDatabase, IdbObjectStore, IdbRequest, IdbTransactionMode};

const DATABASE: &str = "steadygrade";
const STORE: &str = "roads";

/// Which road; one of each is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Slot {
    /// The one last opened.
    Last,
    /// The one beside it.
    Beside,
}

impl Slot {
    fn key(self) -> JsValue {
        JsValue::from_str(match self {
            Self::Last => "last",
            Self::Beside => "beside",
        })
    }
}

/// Keeps a header and the files behind it, in place of what was kept there.
pub(crate) async fn keep(slot: Slot, header: Vec<u8>, files: Vec<GivenFile>) {
    let record = Array::of1(&Uint8Array::from(&header[..]));
    for file in files {
        record.push(&file.name.into());
        record.push(&file.blob);
    }
    let put = |store: &IdbObjectStore| store.put_with_key(&record, &slot.key());
    let _ = with_store(IdbTransactionMode::Readwrite, put).await;
}

/// Keeps nothing there any more.
pub(crate) async fn clear(slot: Slot) {
    let delete = |store: &IdbObjectStore| store.delete(&slot.key());
    let _ = with_store(IdbTransactionMode::Readwrite, delete).await;
}

/// The header and the files that are kept there.
pub(crate) async fn recall(slot: Slot) -> Option<(Vec<u8>, Vec<GivenFile>)> {
    let get = |store: &IdbObjectStore| store.get(&slot.key());
    let record: Array = with_store(IdbTransactionMode::Readonly, get).await?.dyn_into().ok()?;
    let header: Uint8Array = record.get(0).dyn_into().ok()?;
    let file = |at: u32| {
        let blob: Blob = record.get(at + 1).dyn_into().ok()?;
        Some(GivenFile { name: record.get(at).as_string()?, blob })
    };
    let files = (1..record.length()).step_by(2).map(file).collect::<Option<Vec<_>>>()?;
    Some((header.to_vec(), files))
}

/// Forgets all of it.
pub(crate) async fn forget() {
    let _ = with_store(IdbTransactionMode::Readwrite, IdbObjectStore::clear).await;
}

async fn with_store(
    mode: IdbTransactionMode,
    ask: impl FnOnce(&IdbObjectStore) -> Result<IdbRequest, JsValue>,
) -> Option<JsValue> {
    let database = open().await?;
    let transaction = database.transaction_with_str_and_mode(STORE, mode).ok()?;
    let request = ask(&transaction.object_store(STORE).ok()?).ok()?;
    let answer = answer(&request).await;
    database.close();
    answer
}

async fn open() -> Option<IdbDatabase> {
    let request = super::window()?.indexed_db().ok()??.open(DATABASE).ok()?;
    let opening = request.clone();
    let make = Closure::once(move || {
        if let Ok(Ok(database)) = opening.result().map(JsCast::dyn_into::<IdbDatabase>) {
            let _ = database.create_object_store(STORE);
        }
    });
    request.set_onupgradeneeded(Some(make.as_ref().unchecked_ref()));
    answer(&request).await?.dyn_into().ok()
}

/// What a request comes to; `None` where it fails.
async fn answer(request: &IdbRequest) -> Option<JsValue> {
    let promise = Promise::new(&mut |done: Function, failed: Function| {
        request.set_onsuccess(Some(&done));
        request.set_onerror(Some(&failed));
    });
    JsFuture::from(promise).await.ok()?;
    request.result().ok()
}
