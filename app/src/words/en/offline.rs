//! English words of use without a network.

use super::English;
use crate::words::OfflineWords;

impl OfflineWords for English {
    fn works_offline(&self) -> &'static str {
        "This page works without a network now."
    }
    fn newer(&self) -> &'static str {
        "A new version of this page is ready. Truck and day stay as entered. The road, its markers and what held today do not: have the file at hand."
    }
    fn load_newer(&self) -> &'static str {
        "New version: load it"
    }
    fn later(&self) -> &'static str {
        "Later"
    }
    fn save_page(&self) -> &'static str {
        "Save this page as one file (for a stick)"
    }
}
