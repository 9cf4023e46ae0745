//! Words of places and posted limits along the road.

use crate::format::Units;
use solver::road::PlaceKind;

/// Words of the section in which places are put on the road.
pub trait RoadsideWords {
    /// Head of the section.
    fn places_head(&self) -> &'static str;
    /// The same in the list of sections.
    fn places_nav(&self) -> &'static str;
    /// How places come on the road, and what none means.
    fn places_sentence(&self, count: usize) -> String;
    /// Puts a place where the cursor stands.
    fn put_here(&self) -> &'static str;
    /// Label of the distance at which one is put.
    fn put_at(&self) -> &'static str;
    /// Puts it there.
    fn put(&self) -> &'static str;
    /// What a kind of place is called.
    fn place_kind(&self, kind: PlaceKind) -> &'static str;
    /// A posted limit in the list of kinds.
    fn posted_limit(&self) -> &'static str;
    /// Label of the kind.
    fn kind_label(&self) -> &'static str;
    /// Label of the name.
    fn name_label(&self) -> &'static str;
    /// Label of a distance, of its beginning, of its end.
    fn at_label(&self) -> [&'static str; 3];
    /// Label of a limit's speed.
    fn limit_label(&self) -> &'static str;
    /// What to know of a kind beside its place; empty for most.
    fn kind_caution(&self, kind: PlaceKind) -> &'static str {
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
    /// Beside a limit whose speed and length nobody entered.
    fn set_the_limit(&self) -> &'static str;
    /// What to know of a quiet zone.
    fn quiet_zone_caution(&self) -> &'static str;
    /// Takes it off the road.
    fn take_off(&self) -> &'static str;
    /// A thing that does not lie on the part of the road that is shown.
    fn not_on_part(&self) -> &'static str;
    /// A distance that is not on the road; its ends as they are typed.
    fn off_road(&self, first: &str, last: &str, units: Units) -> String;
    /// A stretch whose end does not lie behind its beginning.
    fn no_stretch(&self) -> &'static str;
    /// No room for another.
    fn too_many_things(&self) -> &'static str;
    /// Draws the rows of all of so many.
    fn show_all_places(&self, count: usize) -> String;
}
