//! What was noticed and repaired on the way from the file to the road.
//!
//! Nothing is changed silently: each repair is a finding with its kind, how often, the place of
//! the first one, and what was done about it.

use serde::{Deserialize, Serialize};
use std::fmt;

/// How the bytes of the file were read as text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Encoding {
    /// UTF-8.
    Utf8,
    /// UTF-16, low byte first.
    Utf16LowFirst,
    /// UTF-16, high byte first.
    Utf16HighFirst,
    /// windows-1252, of which Latin-1 is a part.
    Windows1252,
}

impl fmt::Display for Encoding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Encoding::Utf8 => "UTF-8",
            Encoding::Utf16LowFirst => "UTF-16 (little-endian)",
            Encoding::Utf16HighFirst => "UTF-16 (big-endian)",
            Encoding::Windows1252 => "windows-1252",
        })
    }
}

/// Why a stretch of road gets no grade and no advice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Unassessed {
    /// No points: the road between is not known.
    Gap,
    /// Points, but no heights over more than can be filled.
    NoHeights,
    /// Heights jump and do not come back: one side is wrong, and nobody knows which.
    Step,
    /// Steeper for longer than a road for trucks is: the heights are not believed.
    TooSteep,
    /// Too short a stretch between two others that are not assessed.
    Sliver,
}

/// What was found, and what was done about it. Line numbers count from 1 and name the first case.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum FindingKind {
    /// The text was not in the encoding it declared.
    EncodingRepaired {
        /// The encoding declared, if any.
        declared: Option<String>,
        /// The encoding it was read in.
        read_as: Encoding,
    },
    /// Something stood before the XML; `count` is bytes skipped.
    JunkBeforeStart,
    /// The file ends in the middle or breaks at an XML error; all before it is used.
    CutOff {
        /// Line where reading ended.
        line: usize,
    },
    /// Element names carry a prefix that the file does not declare.
    UndeclaredPrefix {
        /// The first such prefix.
        prefix: String,
        /// Its line.
        line: usize,
    },
    /// A bare `&` or an entity that is not defined; kept as written.
    BadReference {
        /// Line of the first.
        line: usize,
    },
    /// Tags that do not match, or points outside their element; read as they were meant.
    TagsRepaired {
        /// Line of the first.
        line: usize,
    },
    /// A document type declaration; nothing it names is fetched.
    DocumentTypeIgnored {
        /// Its line.
        line: usize,
    },
    /// Numbers with a decimal comma.
    DecimalComma {
        /// Line of the first.
        line: usize,
    },
    /// Numbers with blanks around them.
    Padding {
        /// Line of the first.
        line: usize,
    },
    /// Heights written with “m” behind them; read as metres.
    MetresWritten {
        /// Line of the first.
        line: usize,
    },
    /// Heights written with another unit; taken as missing, never converted by guess.
    ForeignUnit {
        /// Line of the first.
        line: usize,
    },
    /// Heights that are no number, infinite, or no height on earth; taken as missing.
    HeightUnreadable {
        /// Line of the first.
        line: usize,
    },
    /// Points without a usable latitude and longitude; left out.
    PointsDropped {
        /// Line of the first.
        line: usize,
    },
    /// More waypoints than are kept; the rest are left out.
    WaypointsLeftOut {
        /// How many are kept.
        kept: usize,
    },
    /// The points between a route's turns, written there by a device, were used.
    RouteShapeUsed,
    /// Segments of a track joined across small gaps.
    SegmentsJoined {
        /// The widest of these gaps, metres.
        widest_m: f64,
    },
    /// Points at the same place, or stops; merged.
    StopsMerged,
    /// Points that jump away and back; left out.
    JumpsRejected,
    /// Heights of exactly zero, or constant over a whole segment, that stand for “unknown”.
    ZeroHeights,
    /// Single heights that stick out; taken as missing and filled.
    SpikesRemoved {
        /// The largest, metres.
        largest_m: f64,
    },
    /// Missing heights filled by straight lines; `count` is places.
    HeightsFilled {
        /// The longest one, metres.
        longest_m: f64,
    },
    /// A stretch that gets no advice.
    NotAssessed {
        /// Why.
        why: Unassessed,
    },
    /// Heights climb and fall again as over a hill above a tunnel; a straight line took their place.
    TunnelBridged {
        /// How far the heights stood off that line, metres.
        rise_m: f64,
    },
    /// Heights fall and climb again as into a valley below a bridge; a straight line took their place.
    ViaductBridged {
        /// How far the heights stood off that line, metres.
        drop_m: f64,
    },
    /// Steeper than 13 % over 200 m: rare on roads for trucks.
    VerySteep {
        /// Steepest mean grade over 200 m, as a fraction without sign.
        grade: f64,
    },
    /// Heights vary more than a road does; grades hold over longer distances only.
    RoughHeights {
        /// Roughness, percentage points.
        roughness: f64,
        /// Shortest length over which a grade may be quoted, metres.
        base_m: f64,
        /// True when the grades are advisory only.
        poor: bool,
        /// True when tunnels or bridges show that the heights come from a terrain model.
        from_terrain: bool,
    },
}

/// One thing noticed on the way from file to road.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Finding {
    /// What, and what was done.
    pub kind: FindingKind,
    /// How many cases; at least 1.
    pub count: usize,
    /// Where the first case begins, metres along the road, if it has a place there.
    pub from_m: Option<f64>,
    /// Where the first case ends, metres along the road.
    pub to_m: Option<f64>,
}

impl fmt::Display for Unassessed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Unassessed::Gap => "the file has no points there",
            Unassessed::NoHeights => "the file has no heights there",
            Unassessed::Step => "the heights jump there and do not come back",
            Unassessed::TooSteep => "the heights there are steeper than a road for trucks",
            Unassessed::Sliver => "the stretch between two others without assessment is too short",
        })
    }
}

/// “1 point”, “7 points”.
struct Counted(usize, &'static str, &'static str);

impl fmt::Display for Counted {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let noun = if self.0 == 1 { self.1 } else { self.2 };
        write!(f, "{} {noun}", self.0)
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write_kind(f)?;
        match (self.from_m, self.to_m) {
            (Some(from), Some(to)) if to > from => {
                write!(f, " (km {:.2} to {:.2}).", from / 1000.0, to / 1000.0)
            }
            (Some(from), _) => write!(f, " (from km {:.2}).", from / 1000.0),
            (None, _) => write!(f, "."),
        }
    }
}

impl Finding {
    /// The sentence without its place and full stop.
    fn write_kind(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let n = self.count;
        match &self.kind {
            FindingKind::EncodingRepaired { declared, read_as } => match declared {
                Some(name) => write!(f, "The file says its text is {name}, but it was read as {read_as}"),
                None => write!(f, "The file does not name its encoding; it was read as {read_as}"),
            },
            FindingKind::JunkBeforeStart => write!(f, "{} before the start of the file skipped", Counted(n, "byte", "bytes")),
            FindingKind::CutOff { line } => write!(f, "The file breaks off at line {line}; everything before it is used"),
            FindingKind::UndeclaredPrefix { prefix, line } => write!(f, "The prefix “{prefix}” is used but not declared, first in line {line}; read all the same"),
            FindingKind::BadReference { line } => write!(f, "{} with a stray “&”, first in line {line}; kept as written", Counted(n, "text", "texts")),
            FindingKind::TagsRepaired { line } => write!(f, "{} out of place, first in line {line}; read as they were meant", Counted(n, "tag", "tags")),
            FindingKind::DocumentTypeIgnored { line } => write!(f, "A document type in line {line} is ignored; nothing was fetched"),
            FindingKind::DecimalComma { line } => write!(f, "{} with a decimal comma, first in line {line}; read as decimals", Counted(n, "number", "numbers")),
            FindingKind::Padding { line } => write!(f, "{} with blanks around, first in line {line}; blanks ignored", Counted(n, "number", "numbers")),
            FindingKind::MetresWritten { line } => write!(f, "{} written with “m”, first in line {line}; read as metres", Counted(n, "height", "heights")),
            FindingKind::ForeignUnit { line } => write!(f, "{} with a unit that is not metres, first in line {line}; taken as missing, since a unit is never guessed", Counted(n, "height", "heights")),
            FindingKind::HeightUnreadable { line } => write!(f, "{} not usable as a number of metres, first in line {line}; taken as missing", Counted(n, "height", "heights")),
            FindingKind::PointsDropped { line } => write!(f, "{} without a usable latitude and longitude, first in line {line}; left out", Counted(n, "point", "points")),
            FindingKind::WaypointsLeftOut { kept } => write!(f, "{} left out; the first {kept} are kept", Counted(n, "waypoint", "waypoints")),
            FindingKind::RouteShapeUsed => write!(f, "{} between the turns of the route used for its shape", Counted(n, "point", "points")),
            FindingKind::SegmentsJoined { widest_m } => write!(f, "{} of the track joined; the widest gap is {widest_m:.0} m", Counted(n + 1, "segment", "segments")),
            FindingKind::StopsMerged => write!(f, "{} at the place of the one before; merged", Counted(n, "point", "points")),
            FindingKind::JumpsRejected => write!(f, "{} far off the track; left out", Counted(n, "point", "points")),
            FindingKind::ZeroHeights => write!(f, "{} of zero or without any change; taken as missing", Counted(n, "height", "heights")),
            FindingKind::SpikesRemoved { largest_m } => write!(f, "{} sticking out by up to {largest_m:.0} m; replaced from their neighbours", Counted(n, "height", "heights")),
            FindingKind::HeightsFilled { longest_m } => write!(f, "Missing heights filled at {}, the longest over {longest_m:.0} m", Counted(n, "place", "places")),
            FindingKind::NotAssessed { why } => write!(f, "No grade and no advice on this stretch: {why}"),
            FindingKind::TunnelBridged { rise_m } => write!(f, "Heights rise by {rise_m:.0} m and fall again, as above a tunnel; a straight line is used"),
            FindingKind::ViaductBridged { drop_m } => write!(f, "Heights fall by {drop_m:.0} m and rise again, as below a bridge; a straight line is used"),
            FindingKind::VerySteep { grade } => write!(f, "Steeper than most roads for trucks: {:.1} % over 200 m at {}; check it against the signs", grade * 100.0, Counted(n, "place", "places")),
            FindingKind::RoughHeights { roughness, base_m, poor, from_terrain } => {
                if *from_terrain {
                    write!(f, "Heights seem to come from a terrain model, not from the road")?;
                } else {
                    write!(f, "Heights are rough")?;
                }
                let advisory = if *poor { ", and is advisory only" } else { "" };
                write!(f, " ({roughness:.1} points between neighbouring 100 m); a grade holds over {base_m:.0} m or more{advisory}")
            }
        }
    }
}
