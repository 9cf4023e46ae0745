//! What this machine remembers between visits. The road itself is not among it.

use crate::browser::storage;
use crate::browser::theme::Theme;
use crate::entries::Entries;
use crate::format::Units;
use serde::{Deserialize, Serialize};
use solver::truck::{Preset, TruckSpec};

/// The name carries a number: it counts up when the shape of [`Kept`] changes, and what was
/// kept in the old shape is then forgotten rather than misread.
const NAME: &str = "steadygrade.kept.2";

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
pub(super) fn keep(units: Units, theme: Theme, entries: &Entries, trucks: &[TruckSpec]) {
    let last = recall();
    let entries = if entries.is_sound() { entries.clone() } else { last.entries };
    if let Ok(bytes) = postcard::to_allocvec(&Kept { units, theme, entries, trucks: trucks.to_vec() }) {
        storage::keep(NAME, &bytes);
    }
}
