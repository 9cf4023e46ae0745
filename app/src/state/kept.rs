//! What this machine remembers between visits. The road itself is not among it, but what a person
//! put on it is.

use super::former;
use crate::browser::storage;
use crate::browser::theme::Theme;
use crate::entries::{EXAMPLE, Entries};
use crate::format::Units;
use serde::{Deserialize, Serialize};
use solver::road::Roadside;
use solver::truck::TruckSpec;

/// The name carries a number: it counts up when the shape of [`Kept`] changes, and what was
/// kept in the old shape is then forgotten rather than misread. The line for a newer version
/// promises that truck and day stay: once people use the page, an old shape is to be read as well.
const NAME: &str = "steadygrade.kept.4";
/// The names of the shapes before, the later one first, and whether their days have a lead.
const BEFORE: [(&str, bool); 2] = [("steadygrade.kept.3", true), ("steadygrade.kept.2", false)];
/// Whether targets are large.
const GLOVES: &str = "steadygrade.gloves.1";
/// Whether the truck that the page begins with was said to be one's own.
const EXAMPLE_IS_MINE: &str = "steadygrade.example-is-mine.1";
/// The rates entered, as typed.
const RATES: &str = "steadygrade.rates.1";
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

/// What is remembered, or else the first preset on the usual day. Entries that are out of range by
/// now are given up alone: trucks of one's own stay, and what is wrong with one is told when it is
/// taken.
pub(super) fn recall() -> Kept {
    let usual = || Entries::of(EXAMPLE);
    let now = storage::recall(NAME).and_then(|bytes| postcard::from_bytes::<Kept>(&bytes).ok());
    let before = || {
        let anew = |(name, has_lead)| former::kept(&storage::recall(name)?, has_lead);
        BEFORE.into_iter().find_map(anew).and_then(|bytes| postcard::from_bytes(&bytes).ok())
    };
    let kept = now.or_else(before);
    match kept {
        Some(kept) if kept.entries.is_sound() => kept,
        Some(kept) => Kept { entries: usual(), ..kept },
        None => Kept { units: Units::Metric, theme: Theme::System, entries: usual(), trucks: Vec::new() },
    }
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

/// Remembers whether targets are large.
pub(super) fn keep_gloves(gloves: bool) {
    storage::keep(GLOVES, &[u8::from(gloves)]);
}

/// Whether the truck that the page begins with was said to be one's own.
pub(super) fn example_is_mine() -> bool {
    storage::recall(EXAMPLE_IS_MINE).is_some_and(|bytes| bytes == [1])
}

/// Remembers that.
pub(super) fn keep_example_is_mine() {
    storage::keep(EXAMPLE_IS_MINE, &[1]);
}

/// Rates kept on this machine: fuel, hour; as they were typed.
pub(super) fn rates() -> [String; 2] {
    storage::recall(RATES).and_then(|bytes| postcard::from_bytes(&bytes).ok()).unwrap_or_default()
}

/// Remembers the rates.
pub(super) fn keep_rates(rates: &[String; 2]) {
    if let Ok(bytes) = postcard::to_allocvec(rates) {
        storage::keep(RATES, &bytes);
    }
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

/// Forgets all that this machine remembers.
pub(super) fn forget() {
    storage::forget_all("steadygrade.");
}

fn roads() -> Vec<(String, Roadside)> {
    storage::recall(ROADS).and_then(|bytes| postcard::from_bytes(&bytes).ok()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{Kept, Theme, Units};
    use crate::entries::Entries;
    use solver::limits;
    use solver::truck::Preset;

    /// Trucks of people lie in browsers in this shape. Where this fails it has changed: count up
    /// `NAME` here and `SHAPE` of the roads, read the old shape as well, and then write the new
    /// figures down. An entry that is new goes to the end of the list, or old ones are misread.
    #[test]
    fn the_shape_of_what_is_kept_has_not_changed() {
        let entries = Entries::of(Preset::FiveAxle36);
        let trucks = vec![entries.truck.clone()];
        let kept = Kept { units: Units::Metric, theme: Theme::System, entries, trucks };
        let bytes = postcard::to_allocvec(&kept).map(|bytes| bytes.len());
        let keys = limits::ALL.iter().flat_map(|limit| limit.entry.key().bytes());
        let order = keys.fold(0_u32, |sum, byte| sum.wrapping_mul(31).wrapping_add(u32::from(byte)));
        assert_eq!((bytes, limits::ALL.len(), order), (Ok(962), 40, 1_428_338_791));
    }
}
