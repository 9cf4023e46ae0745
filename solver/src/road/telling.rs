//! Findings as sentences.

use super::finding::{Encoding, Finding, FindingKind, Unassessed};
use std::fmt;

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

impl fmt::Display for Unassessed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Unassessed::Gap => "the file has no points there",
            Unassessed::NoHeights => "the file has no heights there",
            Unassessed::Step => "the heights jump there and do not come back",
            Unassessed::Sliver => "the stretch between two others without assessment is too short",
        })
    }
}

/// “1 point”, “7 points”.
struct Counted(usize, &'static str);

impl fmt::Display for Counted {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plural = if self.0 == 1 { "" } else { "s" };
        write!(f, "{} {}{plural}", self.0, self.1)
    }
}

impl fmt::Display for Finding {
    /// One sentence: what, how often, what was done, and the place along the road if there is one.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.what().fmt(f)?;
        match (self.from_m, self.to_m) {
            (Some(from), Some(to)) if to > from => {
                write!(f, " (km {:.2} to {:.2}).", from / 1000.0, to / 1000.0)
            }
            (Some(from), _) => write!(f, " (from km {:.2}).", from / 1000.0),
            (None, _) => write!(f, "."),
        }
    }
}

/// A finding without its place and without a full stop.
struct What<'a>(&'a Finding);

impl fmt::Display for What<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.tell_reading(f)?;
        self.0.tell_points(f)?;
        self.0.tell_heights(f)
    }
}

/// One of the three tells each kind; the other two write nothing for it.
impl Finding {
    /// What was found and done, without the place and without a full stop.
    pub fn what(&self) -> impl fmt::Display {
        What(self)
    }

    /// Repairs to the text of the file.
    fn tell_reading(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use FindingKind as Kind;
        let counted = |noun| Counted(self.count, noun);
        match &self.kind {
            Kind::EncodingRepaired { declared: Some(name), read_as } => {
                write!(f, "The file says its text is {name}, but it was read as {read_as}")
            }
            Kind::EncodingRepaired { declared: None, read_as } => {
                write!(f, "The file does not name its encoding; it was read as {read_as}")
            }
            Kind::JunkBeforeStart => write!(f, "{} before the start of the file skipped", counted("byte")),
            Kind::CutOff { line } => {
                write!(f, "The file breaks off at line {line}; everything before it is used")
            }
            Kind::UndeclaredPrefix { prefix, line } => {
                write!(
                    f,
                    "The prefix “{prefix}” is used but not declared, first in line {line}; read all the same"
                )
            }
            Kind::BadReference { line } => {
                write!(f, "{} with a stray “&”, first in line {line}; kept as written", counted("text"))
            }
            Kind::TagsRepaired { line } => {
                write!(f, "{} out of place, first in line {line}; read as meant", counted("tag"))
            }
            Kind::DocumentTypeIgnored { line } => {
                write!(f, "A document type in line {line} is ignored; nothing was fetched")
            }
            Kind::DecimalComma { line } => {
                write!(
                    f,
                    "{} with a decimal comma, first in line {line}; read as decimals",
                    counted("number")
                )
            }
            Kind::Padding { line } => {
                write!(f, "{} with blanks around, first in line {line}; blanks ignored", counted("number"))
            }
            Kind::MetresWritten { line } => {
                write!(f, "{} written with “m”, first in line {line}; read as metres", counted("height"))
            }
            Kind::ForeignUnit { .. }
            | Kind::HeightUnreadable { .. }
            | Kind::PointsDropped { .. }
            | Kind::WaypointsLeftOut { .. }
            | Kind::RouteShapeUsed
            | Kind::SegmentsJoined { .. }
            | Kind::StopsMerged
            | Kind::JumpsRejected
            | Kind::ZeroHeights
            | Kind::SpikesRemoved { .. }
            | Kind::HeightsFilled { .. }
            | Kind::NotAssessed { .. }
            | Kind::TunnelBridged { .. }
            | Kind::ViaductBridged { .. }
            | Kind::VerySteep { .. }
            | Kind::RecordingsCombined { .. }
            | Kind::RecordingsDisagree { .. }
            | Kind::RoughHeights { .. } => Ok(()),
        }
    }

    /// Points that were left out, merged or joined.
    fn tell_points(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use FindingKind as Kind;
        let counted = |noun| Counted(self.count, noun);
        match &self.kind {
            Kind::ForeignUnit { line } => write!(
                f,
                "{} with a unit that is not metres, first in line {line}; taken as missing, since a unit is never guessed",
                counted("height")
            ),
            Kind::HeightUnreadable { line } => write!(
                f,
                "{} not usable as a number of metres, first in line {line}; taken as missing",
                counted("height")
            ),
            Kind::PointsDropped { line } => write!(
                f,
                "{} without a usable latitude and longitude, first in line {line}; left out",
                counted("point")
            ),
            Kind::WaypointsLeftOut { kept } => {
                write!(f, "{} left out; the first {kept} are kept", counted("waypoint"))
            }
            Kind::RouteShapeUsed => {
                write!(f, "{} between the turns of the route used for its shape", counted("point"))
            }
            Kind::SegmentsJoined { widest_m } => write!(
                f,
                "{} of the track joined; the widest gap is {widest_m:.0} m",
                Counted(self.count + 1, "segment")
            ),
            Kind::StopsMerged => write!(f, "{} at the place of the one before; merged", counted("point")),
            Kind::JumpsRejected => write!(f, "{} far off the track; left out", counted("point")),
            Kind::EncodingRepaired { .. }
            | Kind::JunkBeforeStart
            | Kind::CutOff { .. }
            | Kind::UndeclaredPrefix { .. }
            | Kind::BadReference { .. }
            | Kind::TagsRepaired { .. }
            | Kind::DocumentTypeIgnored { .. }
            | Kind::DecimalComma { .. }
            | Kind::Padding { .. }
            | Kind::MetresWritten { .. }
            | Kind::ZeroHeights
            | Kind::SpikesRemoved { .. }
            | Kind::HeightsFilled { .. }
            | Kind::NotAssessed { .. }
            | Kind::TunnelBridged { .. }
            | Kind::ViaductBridged { .. }
            | Kind::VerySteep { .. }
            | Kind::RecordingsCombined { .. }
            | Kind::RecordingsDisagree { .. }
            | Kind::RoughHeights { .. } => Ok(()),
        }
    }

    /// Heights that were mended, withdrawn or noted.
    fn tell_heights(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use FindingKind as Kind;
        let counted = |noun| Counted(self.count, noun);
        match &self.kind {
            Kind::ZeroHeights => {
                write!(f, "{} of zero or without any change; taken as missing", counted("height"))
            }
            Kind::SpikesRemoved { largest_m } => {
                write!(f, "{} sticking out by up to {largest_m:.0} m; taken as missing", counted("height"))
            }
            Kind::HeightsFilled { longest_m } => write!(
                f,
                "Missing heights filled by straight lines at {}, the longest over {longest_m:.0} m",
                counted("place")
            ),
            Kind::NotAssessed { why } => write!(f, "No grade and no advice on this stretch: {why}"),
            Kind::TunnelBridged { rise_m } => write!(
                f,
                "Heights rise by {rise_m:.0} m and fall again, as above a tunnel; a straight line is used"
            ),
            Kind::ViaductBridged { drop_m } => write!(
                f,
                "Heights fall by {drop_m:.0} m and rise again, as below a bridge; a straight line is used"
            ),
            Kind::VerySteep { grade } => write!(
                f,
                "Steeper than most roads for trucks at {}, by up to {:.1} % over 200 m; check it against the signs",
                counted("place"),
                grade * 100.0
            ),
            Kind::RecordingsCombined { common_m } => write!(
                f,
                "{} of this road combined to one; at least two of them know {:.1} km of it",
                counted("recording"),
                common_m / 1000.0
            ),
            Kind::RecordingsDisagree { apart_m, length_m } => write!(
                f,
                "The two recordings differ by up to {apart_m:.0} m of height over {length_m:.0} m; the steeper one is used"
            ),
            Kind::RoughHeights { roughness, base_m, poor, from_terrain } => {
                tell_rough(f, *roughness, *base_m, *poor, *from_terrain)
            }
            Kind::EncodingRepaired { .. }
            | Kind::JunkBeforeStart
            | Kind::CutOff { .. }
            | Kind::UndeclaredPrefix { .. }
            | Kind::BadReference { .. }
            | Kind::TagsRepaired { .. }
            | Kind::DocumentTypeIgnored { .. }
            | Kind::DecimalComma { .. }
            | Kind::Padding { .. }
            | Kind::MetresWritten { .. }
            | Kind::ForeignUnit { .. }
            | Kind::HeightUnreadable { .. }
            | Kind::PointsDropped { .. }
            | Kind::WaypointsLeftOut { .. }
            | Kind::RouteShapeUsed
            | Kind::SegmentsJoined { .. }
            | Kind::StopsMerged
            | Kind::JumpsRejected => Ok(()),
        }
    }
}

fn tell_rough(
    f: &mut fmt::Formatter<'_>,
    roughness: f64,
    base_m: f64,
    poor: bool,
    from_terrain: bool,
) -> fmt::Result {
    let what = if from_terrain {
        "Heights seem to come from a terrain model, not from the road"
    } else {
        "Heights are rough"
    };
    let advisory = if poor { ", and is advisory only" } else { "" };
    write!(
        f,
        "{what} ({roughness:.1} points between neighbouring 100 m); a grade holds over {base_m:.0} m or more{advisory}"
    )
}
