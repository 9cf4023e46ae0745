//! The annotated road as a GPX 1.1 file that other programs read.
//!
//! Written with the crate gpx. Crests, feet and changes of stage are waypoints with plain
//! text; the road itself is a track with the filtered heights, so that what was planned on
//! can be looked at.

use crate::plan::{Choice, Descent, Lanes, Plan};
use crate::road::{OWN_MARK, Road};
use geo::Point;
use gpx::{Gpx, GpxVersion, Metadata, Track, TrackSegment, Waypoint};

/// Decimals kept of a degree: about a centimetre.
const PLACE: f64 = 1e7;

/// The words that stand in the file with every advice.
const CAUTION: &str = "Worked out from entries and recorded heights, which err. Not permission to descend: \
posted signs, local law and the vehicle maker's limits come first.";

/// Writes the road with its plan as GPX 1.1.
#[must_use]
pub fn annotated(road: &Road, plan: &Plan, lanes: &Lanes) -> String {
    let mut waypoints = Vec::new();
    for descent in &plan.descents {
        waypoints.extend(of_descent(road, lanes, descent));
    }
    waypoints.extend(road.places().iter().map(|place| {
        let mut waypoint = at(road, place.index);
        waypoint.name = Some(place.name.clone());
        let word = place.kind.word();
        waypoint.type_ = (!word.is_empty()).then(|| word.to_owned());
        waypoint
    }));
    let mut segment = TrackSegment::new();
    segment.points = (0..=road.cells()).map(|point| at(road, point)).collect();
    let mut track = Track::new();
    track.name = Some(road.name().to_owned());
    track.segments.push(segment);
    let file = Gpx {
        version: GpxVersion::Gpx11,
        creator: Some("Steadygrade".to_owned()),
        metadata: Some(Metadata {
            name: Some(road.name().to_owned()),
            description: Some(CAUTION.to_owned()),
            ..Metadata::default()
        }),
        waypoints,
        tracks: vec![track],
        routes: Vec::new(),
    };
    let mut bytes = Vec::new();
    gpx::write(&file, &mut bytes)
        .unwrap_or_else(|e| unreachable!("no time and no broken text was given: {e}"));
    String::from_utf8(bytes).unwrap_or_else(|e| unreachable!("the writer writes UTF-8: {e}"))
}

fn at(road: &Road, point: usize) -> Waypoint {
    let (lat, lon) = road.positions()[point];
    let round = |degrees: f64| (degrees * PLACE).round() / PLACE;
    let mut waypoint = Waypoint::new(Point::new(round(lon), round(lat)));
    waypoint.elevation = Some((road.heights_m()[point] * 10.0).round() / 10.0);
    waypoint
}

/// Crest, changes of stage, foot.
fn of_descent(road: &Road, lanes: &Lanes, descent: &Descent) -> Vec<Waypoint> {
    let n = descent.number;
    let mut marks = vec![named(road, descent.from, format!("Crest {n}: {}", advice(descent)), "crest")];
    if let Choice::Held(held) = &descent.choice {
        let changes = descent.stages.iter().filter(|span| span.from > descent.from);
        marks.extend(changes.map(|span| {
            let stage = match span.stage.number() {
                0 => "retarder off".to_owned(),
                stage => format!("stage {stage}"),
            };
            named(road, span.from, format!("Gear {}, {stage}", held.gear.number()), "stage")
        }));
    }
    let next = lanes.gear.get(descent.to + 1).copied().filter(|gear| *gear != Lanes::BLANK);
    let after = next.map_or(String::new(), |gear| format!(", then gear {gear}"));
    marks.push(named(road, descent.to, format!("Foot {n}{after}"), "foot"));
    marks
}

fn named(road: &Road, point: usize, name: String, kind: &str) -> Waypoint {
    let mut waypoint = at(road, point);
    waypoint.name = Some(name);
    waypoint.description = Some(CAUTION.to_owned());
    waypoint.type_ = Some(format!("{OWN_MARK}{kind}"));
    waypoint
}

fn advice(descent: &Descent) -> String {
    match &descent.choice {
        Choice::Held(held) => {
            let kmh = (held.speed.kmh() + 1e-6).floor();
            let stage = match held.stage.number() {
                0 => "retarder off".to_owned(),
                stage => format!("stage {stage}"),
            };
            format!("gear {}, {stage}, hold {kmh} km/h", held.gear.number())
        }
        Choice::NoSafeSpeed(_) => "no safe speed found".to_owned(),
    }
}
