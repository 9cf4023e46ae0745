//! English words of use without a network.

use super::English;
use crate::words::OfflineWords;

impl OfflineWords for English {
    fn works_offline(&self) -> &'static str {
        "This page works without a network now."
    }
    fn newer(&self) -> &'static str {
        "A new version of this page is ready. Truck, day, the road and its places stay. The marker entered for the card, a road kept beside and what held today do not."
    }
    fn load_newer(&self) -> &'static str {
        "New version: load it"
    }
    fn later(&self) -> &'static str {
        "Later"
    }
    fn forget_all(&self) -> &'static str {
        "Forget all that is kept on this machine"
    }
    fn forget_really(&self) -> &'static str {
        "Really forget trucks, entries, roads and places? Press once more"
    }
    fn save_page(&self) -> &'static str {
        "Save this page as one file (for a stick)"
    }
}
