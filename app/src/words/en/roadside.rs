//! English words of places and posted limits.

use super::English;
use crate::format::{self, Units};
use crate::words::RoadsideWords;
use solver::road::PlaceKind;

impl RoadsideWords for English {
    fn places_head(&self) -> &'static str {
        "Places and posted limits"
    }
    fn places_nav(&self) -> &'static str {
        "Places"
    }
    fn places_sentence(&self, count: usize) -> String {
        let found = match count {
            0 => {
                "None are on this road yet. That does not mean there are none: look for brake checks, escape ramps, signals and limits yourself."
            }
            1 => "One is on this road. There may be more.",
            _ => "There may be more than these.",
        };
        format!(
            "{found} They come from the file’s waypoints; put others where the cursor stands in the picture, or by their distance. They are kept on this machine."
        )
    }
    fn put_here(&self) -> &'static str {
        "Put a place here"
    }
    fn put_at(&self) -> &'static str {
        "Put a place at"
    }
    fn put(&self) -> &'static str {
        "Put"
    }
    fn place_kind(&self, kind: PlaceKind) -> &'static str {
        match kind {
            PlaceKind::Summit => "summit",
            PlaceKind::BrakeCheck => "brake check",
            PlaceKind::EscapeRamp => "escape ramp",
            PlaceKind::Settlement => "village or town",
            PlaceKind::Stop => "stop, signals or junction",
            PlaceKind::Parking => "parking or rest area",
            PlaceKind::Tunnel => "tunnel",
            PlaceKind::Bridge => "bridge",
            PlaceKind::Danger => "danger",
            PlaceKind::ChainUp => "chain-up area",
            PlaceKind::QuietZone => "quiet zone",
            PlaceKind::Exit => "exit",
            PlaceKind::Other => "other place",
        }
    }
    fn posted_limit(&self) -> &'static str {
        "posted limit"
    }
    fn kind_label(&self) -> &'static str {
        "Kind"
    }
    fn name_label(&self) -> &'static str {
        "Name"
    }
    fn at_label(&self) -> [&'static str; 3] {
        ["At", "From", "To"]
    }
    fn limit_label(&self) -> &'static str {
        "Limit"
    }
    fn set_the_limit(&self) -> &'static str {
        "Speed and end are assumed, and count already. Set what the sign says."
    }
    fn quiet_zone_caution(&self) -> &'static str {
        "A sign here may forbid engine brakes. The plan still counts on the retarder: where the sign forbids it, go slower in a lower gear, and keep the service brakes cool."
    }
    fn take_off(&self) -> &'static str {
        "Remove"
    }
    fn not_on_part(&self) -> &'static str {
        "not on the part shown"
    }
    fn off_road(&self, first: &str, last: &str, units: Units) -> String {
        let unit = units.distance();
        format!("That is not on this road: it goes from {first} to {last} {unit}.")
    }
    fn no_stretch(&self) -> &'static str {
        "A limit must end behind where it begins."
    }
    fn too_many_things(&self) -> &'static str {
        "A hundred is the most that fits. Remove one first."
    }
    fn show_all_places(&self, count: usize) -> String {
        format!("Show all {}", format::whole(count as f64))
    }
}
