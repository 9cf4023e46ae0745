//! What was noticed and repaired on the way from the file to the road.
//!
//! Nothing is changed silently: each repair is a finding with its kind, how often, the place of
//! the first one, and what was done about it. How a log has them stands in `telling`.

use serde::{Deserialize, Serialize};

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

/// Why a stretch of road gets no grade and no advice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Unassessed {
    /// No points: the road between is not known.
    Gap,
    /// Points, but no heights over more than can be filled.
    NoHeights,
    /// Heights jump and do not come back: one side is wrong, and nobody knows which.
    Step,
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
    /// The road was made of several recordings, `count` of them; the heights of all are used as far as they
    /// lie on each other.
    RecordingsCombined {
        /// How much of the road at least two of them know, metres.
        common_m: f64,
    },
    /// Two recordings of one road differ by more than both may be off; the steeper is used.
    RecordingsDisagree {
        /// How far they are apart at most, metres of height …
        apart_m: f64,
        /// … over this length, metres.
        length_m: f64,
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
