//! What this machine remembers between visits. The road itself is not among it, but what a person
//! put on it is.

use crate::browser::storage;
use crate::browser::theme::Theme;
use crate::entries::Entries;
use crate::format::Units;
use serde::{Deserialize, Serialize};
use solver::road::Roadside;
use solver::truck::{Preset, TruckSpec};

/// The name carries a number: it counts up when the shape of [`Kept`] changes, and what was
/// kept in the old shape is then forgotten rather than misread. The line for a newer version
/// promises that truck and day stay: once people use the page, an old shape is to be read as well.
const NAME: &str = "steadygrade.kept.2";
/// Whether targets are large.
const GLOVES: &str = "steadygrade.gloves.1";
/// What was put on roads, under a number of its own.
const ROADS: &str = "steadygrade.roads.1";
/// Most roads whose places are remembered.
const MOST_ROADS: usize = 30;

/// Remembered choices.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(super) struct Kept {
    /// Units.
    pub(super) units: Units,
    /// Theme.
    pub(super) theme: Theme,
    /// Truck and day.
    pub(super) entries: Entries,
    /// Trucks of one's own.
    pub(super) trucks: Vec<TruckSpec>,
}

/// What is remembered, or else the first preset on the usual day.
pub(super) fn recall() -> Kept {
    let kept = storage::recall(NAME).and_then(|bytes| postcard::from_bytes::<Kept>(&bytes).ok());
    kept.filter(|kept| kept.entries.is_sound()).unwrap_or_else(|| Kept {
        units: Units::Metric,
        theme: Theme::System,
        entries: Entries::of(Preset::FiveAxle36),
        trucks: Vec::new(),
    })
}

/// Remembers; entries that do not fit together are not worth remembering.
pub(super) fn keep(mut now: Kept) {
    if !now.entries.is_sound() {
        now.entries = recall().entries;
    }
    if let Ok(bytes) = postcard::to_allocvec(&now) {
        storage::keep(NAME, &bytes);
    }
}

/// Whether large targets were chosen.
pub(super) fn gloves() -> bool {
    storage::recall(GLOVES).is_some_and(|bytes| bytes == [1])
}

/// Remembers that.
pub(super) fn keep_gloves(gloves: bool) {
    storage::keep(GLOVES, &[u8::from(gloves)]);
}

/// What was put on a road.
pub(super) fn roadside(key: &str) -> Option<Roadside> {
    roads().into_iter().find(|(other, _)| other == key).map(|(_, it)| it)
}

/// Remembers what was put on a road; of many roads those changed last.
pub(super) fn keep_roadside(key: &str, roadside: &Roadside) {
    let mut all = roads();
    all.retain(|(other, _)| other != key);
    all.insert(0, (key.to_owned(), roadside.clone()));
    all.truncate(MOST_ROADS);
    if let Ok(bytes) = postcard::to_allocvec(&all) {
        storage::keep(ROADS, &bytes);
    }
}

/// Forgets all of it.
pub(super) fn forget() {
    storage::forget_all("steadygrade.");
}

fn roads() -> Vec<(String, Roadside)> {
    storage::recall(ROADS).and_then(|bytes| postcard::from_bytes(&bytes).ok()).unwrap_or_default()
}
