//! Waypoints of the file, put on the road.

use super::bounds;
use super::document::Waypoint;
use super::track;
use crate::order::ascending;
use serde::{Deserialize, Serialize};

/// Most passes of the road by one waypoint that are told (out and back, loops).
const MOST_PASSES: usize = 4;
/// Largest distance between two recordings of one road, metres. Assumed.
const SAME_ROAD_M: f64 = 20.0;
/// Types of waypoints in our own exports begin with this. Such waypoints are advice for one truck on one day
/// and are not read back as places.
pub(crate) const OWN_MARK: &str = "Steadygrade ";
/// Least metres per degree of latitude; enough for a quick rejection.
const METRES_PER_DEGREE: f64 = 110_000.0;

/// Kind of a place, as told by the words of its type, symbol or name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum PlaceKind {
    /// The top of a pass or hill.
    Summit,
    /// A place to stop and check the brakes.
    BrakeCheck,
    /// A ramp for vehicles whose brakes have failed.
    EscapeRamp,
    /// A village or town.
    Settlement,
    /// Traffic signals, a junction, a level crossing: a place where a stop may be needed.
    Stop,
    /// Parking or a rest area.
    Parking,
    /// A tunnel.
    Tunnel,
    /// A bridge.
    Bridge,
    /// A danger or a warning.
    Danger,
    /// A place to put on or take off snow chains.
    ChainUp,
    /// A stretch that asks for quiet begins here: an engine brake may be forbidden.
    QuietZone,
    /// A way off the road.
    Exit,
    /// None of these, or nothing said.
    Other,
}

impl PlaceKind {
    /// Words that tell the kind; the most specific kinds come first. Common words, no source.
    const WORDS: [(PlaceKind, &'static [&'static str]); 12] = [
        (PlaceKind::EscapeRamp, &["escape", "runaway", "arrester", "emergency ramp"]),
        (PlaceKind::BrakeCheck, &["brake check", "brake-check", "brake_check", "brakecheck", "brake test"]),
        (PlaceKind::ChainUp, &["chain-up", "chain up", "chain area", "chains"]),
        (PlaceKind::QuietZone, &["quiet", "noise", "no engine brake", "no engine brakes"]),
        (PlaceKind::Tunnel, &["tunnel", "gallery"]),
        (PlaceKind::Bridge, &["bridge", "viaduct"]),
        (PlaceKind::Stop, &["signal", "traffic light", "stop", "crossing", "junction", "roundabout"]),
        (PlaceKind::Summit, &["summit", "pass", "col", "crest", "peak", "saddle"]),
        (PlaceKind::Settlement, &["village", "town", "city", "hamlet", "residential"]),
        (PlaceKind::Exit, &["exit", "turn-off", "turnoff", "slip road"]),
        (PlaceKind::Parking, &["parking", "rest area", "lay-by", "layby", "truck stop"]),
        (PlaceKind::Danger, &["danger", "warning", "hazard", "caution"]),
    ];

    /// All kinds, in the order of a list to choose from.
    pub const ALL: [PlaceKind; 13] = [
        PlaceKind::BrakeCheck,
        PlaceKind::EscapeRamp,
        PlaceKind::Stop,
        PlaceKind::Settlement,
        PlaceKind::Exit,
        PlaceKind::Parking,
        PlaceKind::ChainUp,
        PlaceKind::QuietZone,
        PlaceKind::Summit,
        PlaceKind::Tunnel,
        PlaceKind::Bridge,
        PlaceKind::Danger,
        PlaceKind::Other,
    ];

    /// A word by which [`PlaceKind::from_words`] recognises the kind; empty for `Other`.
    #[must_use]
    pub fn word(self) -> &'static str {
        PlaceKind::WORDS.iter().find(|(kind, _)| *kind == self).map_or("", |(_, words)| words[0])
    }

    /// The kind that the words tell. Type comes before symbol, and symbol before name.
    pub fn from_words(kind: &str, symbol: &str, name: &str) -> PlaceKind {
        for text in [kind, symbol, name] {
            let text = text.to_ascii_lowercase();
            let found =
                PlaceKind::WORDS.iter().find(|(_, words)| words.iter().any(|word| has_word(&text, word)));
            if let Some((kind, _)) = found {
                return *kind;
            }
        }
        PlaceKind::Other
    }
}

/// Whether `word` stands in `text` with no letter beside it: a “passing place” is no pass.
fn has_word(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + word.len()..].chars().next();
        !before.is_some_and(is_letter) && !after.is_some_and(is_letter)
    })
}

/// Beyond ASCII everything counts as a letter. The words are English, and tables of all letters are larger
/// than this whole file.
fn is_letter(c: char) -> bool {
    c.is_ascii_alphabetic() || !c.is_ascii()
}

/// A waypoint of the file that lies on the road.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Place {
    /// Its name, perhaps empty.
    pub name: String,
    /// What it is, as far as the file tells.
    pub kind: PlaceKind,
    /// Grid index of the nearest point of the road.
    pub index: usize,
    /// Distance from the road, metres, at most 150.
    pub off_m: f64,
}

/// Puts each waypoint on the road wherever the road passes within 150 m, in the order of the road. Where the
/// road passes twice, the place is on it twice.
pub(super) fn snap(waypoints: &[Waypoint], positions: &[(f64, f64)]) -> Vec<Place> {
    let mut places: Vec<Place> = Vec::new();
    for waypoint in waypoints.iter().filter(|it| !it.kind.starts_with(OWN_MARK)) {
        for (index, off_m) in passes(waypoint, positions) {
            places.push(Place {
                name: waypoint.name.clone(),
                kind: PlaceKind::from_words(&waypoint.kind, &waypoint.symbol, &waypoint.name),
                index,
                off_m,
            });
        }
    }
    // Places at one point keep the order of the file.
    let order = ascending(places.iter().map(|place| place.index as f64));
    order.into_iter().map(|index| places[index].clone()).collect()
}

/// The nearest point of each stretch of road within reach.
fn passes(waypoint: &Waypoint, positions: &[(f64, f64)]) -> Vec<(usize, f64)> {
    let reach_deg = bounds::NEAR_ROAD_M / METRES_PER_DEGREE;
    let mut found: Vec<(usize, f64)> = Vec::new();
    let mut inside = false;
    for (index, (lat, lon)) in positions.iter().enumerate() {
        let maybe = (lat - waypoint.lat_deg).abs() <= reach_deg;
        let off_m =
            if maybe { track::step_m(waypoint.lat_deg, waypoint.lon_deg, *lat, *lon) } else { f64::INFINITY };
        let near = off_m <= bounds::NEAR_ROAD_M;
        let room = found.len() < MOST_PASSES;
        match found.last_mut() {
            Some(best) if near && inside => {
                if off_m < best.1 {
                    *best = (index, off_m);
                }
            }
            Some(_) | None => {
                if near && room {
                    found.push((index, off_m));
                }
            }
        }
        inside = near && (inside || room);
    }
    // Between hairpins other parts of the road are near as well. The place lies on those that are about as
    // near as the nearest.
    let nearest = found.iter().map(|(_, off_m)| *off_m).fold(f64::INFINITY, f64::min);
    found.retain(|(_, off_m)| *off_m <= nearest + SAME_ROAD_M);
    found
}
