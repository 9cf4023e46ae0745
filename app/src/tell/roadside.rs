//! Words of places and posted limits along the road.

use crate::words::Spoken;
use solver::road::PlaceKind;

impl Spoken {
    /// What to know of a kind beside its place; empty for most.
    #[must_use]
    pub fn kind_caution(&self, kind: PlaceKind) -> &'static str {
        match kind {
            PlaceKind::QuietZone => self.quiet_zone_caution(),
            PlaceKind::Summit
            | PlaceKind::BrakeCheck
            | PlaceKind::EscapeRamp
            | PlaceKind::Settlement
            | PlaceKind::Stop
            | PlaceKind::Parking
            | PlaceKind::Tunnel
            | PlaceKind::Bridge
            | PlaceKind::Danger
            | PlaceKind::ChainUp
            | PlaceKind::Exit
            | PlaceKind::Other => "",
        }
    }
}
