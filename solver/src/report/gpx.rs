//! The annotated road as a GPX 1.1 file that other programs read.
//!
//! The crate gpx writes it. Crests, feet and changes of gear and stage are waypoints with plain text. The
//! road itself is a track with the filtered heights, which can so be looked at.

use crate::plan::{Descent, Lanes, Leg, Plan};
use crate::road::{OWN_MARK, Road};
use crate::truck::{Gear, Stage};
use geo::Point;
use gpx::{Gpx, GpxVersion, Metadata, Track, TrackSegment, Waypoint};
use serde::{Deserialize, Serialize};

/// Decimals kept of a degree: about a centimetre.
const PLACE: f64 = 1e7;

/// The texts of a file; the caller chooses language and units.
pub trait Wording {
    /// The caution beside every advice: what it is not, and what comes first.
    fn caution(&self) -> String;
    /// At a crest: what to do from there.
    fn crest(&self, descent: &Descent) -> String;
    /// Where the stage changes on the way down.
    fn change(&self, gear: Gear, stage: Stage) -> String;
    /// Where a gear is engaged, or from where it may be, with the stage there.
    fn leg(&self, leg: &Leg, stage: Stage) -> String;
    /// At the foot, and which gear is next where one is.
    fn foot(&self, descent: &Descent, next: Option<u8>) -> String;
}

/// The texts of one file, in the order in which they stand there.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Captions {
    caution: String,
    descents: Vec<DescentCaptions>,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct DescentCaptions {
    crest: String,
    changes: Vec<String>,
    foot: String,
}

impl Captions {
    /// The texts for a plan; `gears` is the gear at each grid point, as in [`Lanes::gear`].
    #[must_use]
    pub fn of(plan: &Plan, gears: &[u8], wording: &dyn Wording) -> Self {
        let one = |descent: &Descent| {
            let change = |change: Change<'_>| match (change.changed, change.leg) {
                (true, leg) => wording.leg(leg, change.stage),
                (false, leg) => wording.change(leg.gear, change.stage),
            };
            let next = gears.get(descent.to + 1).copied().filter(|gear| *gear != Lanes::BLANK);
            DescentCaptions {
                crest: wording.crest(descent),
                changes: changes(descent).into_iter().map(change).collect(),
                foot: wording.foot(descent, next),
            }
        };
        Self { caution: wording.caution(), descents: plan.descents.iter().map(one).collect() }
    }
}

/// A change of gear or stage behind the crest.
struct Change<'a> {
    at: usize,
    stage: Stage,
    /// The leg that it is on.
    leg: &'a Leg,
    /// Whether the gear changes too: the leg begins here.
    changed: bool,
}

/// Places behind the crest where gear or stage changes, along the road; empty where no speed is safe.
fn changes(descent: &Descent) -> Vec<Change<'_>> {
    let mut all = Vec::new();
    for leg in &descent.legs {
        let within = |at: usize| (leg.from..leg.to).contains(&at);
        let first = descent.stages.iter().find(|span| span.from <= leg.from && leg.from < span.to);
        if leg.from > descent.from {
            let stage = first.map_or(leg.stage, |span| span.stage);
            all.push(Change { at: leg.from, stage, leg, changed: true });
        }
        let spans = descent.stages.iter().filter(|span| span.from > leg.from && within(span.from));
        all.extend(spans.map(|span| Change { at: span.from, stage: span.stage, leg, changed: false }));
    }
    all
}

/// Writes the road with its plan as GPX 1.1; `None` for a road with heights along a distance but no
/// positions. `captions` must be those of this plan, or they would stand at wrong places. A descent without
/// captions gets no marks.
#[must_use]
pub fn annotated(road: &Road, plan: &Plan, captions: &Captions) -> Option<String> {
    if road.positions().len() <= road.cells() {
        return None;
    }
    let mut waypoints = Vec::new();
    for (descent, said) in plan.descents.iter().zip(&captions.descents) {
        waypoints.extend(of_descent(road, descent, said, &captions.caution));
    }
    waypoints.extend(road.places().iter().map(|place| {
        let mut waypoint = at(road, place.index);
        waypoint.name = Some(plain(&place.name));
        let word = place.kind.word();
        waypoint.type_ = (!word.is_empty()).then(|| word.to_owned());
        waypoint
    }));
    let mut segment = TrackSegment::new();
    segment.points = (0..=road.cells()).map(|point| at(road, point)).collect();
    let mut track = Track::new();
    track.name = Some(plain(road.name()));
    track.segments.push(segment);
    let file = Gpx {
        version: GpxVersion::Gpx11,
        creator: Some("Steadygrade".to_owned()),
        metadata: Some(Metadata {
            name: Some(plain(road.name())),
            description: Some(captions.caution.clone()),
            ..Metadata::default()
        }),
        waypoints,
        tracks: vec![track],
        routes: Vec::new(),
    };
    let mut bytes = Vec::new();
    gpx::write(&file, &mut bytes)
        .unwrap_or_else(|e| unreachable!("no time and no broken text was given: {e}"));
    Some(String::from_utf8(bytes).unwrap_or_else(|e| unreachable!("the writer writes UTF-8: {e}")))
}

/// Removes the characters that XML 1.0 cannot hold and the writer would let through:
/// <https://www.w3.org/TR/xml/#charsets>.
fn plain(name: &str) -> String {
    let fits = |c: &char| matches!(c, '\t' | '\n' | '\r' | ' '..='\u{fffd}' | '\u{10000}'..);
    name.chars().filter(fits).collect()
}

fn at(road: &Road, point: usize) -> Waypoint {
    let (lat, lon) = road.positions()[point];
    let round = |degrees: f64| (degrees * PLACE).round() / PLACE;
    let mut waypoint = Waypoint::new(Point::new(round(lon), round(lat)));
    waypoint.elevation = Some((road.heights_m()[point] * 10.0).round() / 10.0);
    waypoint
}

/// Crest, changes of gear and stage, foot.
fn of_descent(road: &Road, descent: &Descent, said: &DescentCaptions, caution: &str) -> Vec<Waypoint> {
    let mark = |point: usize, name: &str, kind: &str| {
        let mut waypoint = at(road, point);
        waypoint.name = Some(name.to_owned());
        waypoint.description = Some(caution.to_owned());
        waypoint.type_ = Some(format!("{OWN_MARK}{kind}"));
        waypoint
    };
    let mut marks = vec![mark(descent.from, &said.crest, "crest")];
    let on_the_way = changes(descent).into_iter().zip(&said.changes);
    marks.extend(
        on_the_way.map(|(change, name)| mark(change.at, name, if change.changed { "gear" } else { "stage" })),
    );
    marks.push(mark(descent.to, &said.foot, "foot"));
    marks
}
