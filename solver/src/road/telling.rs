//! Findings for logs: a key that stays, and its values. Sentences for a person are made of the data themselves.

use super::finding::{Encoding, Finding, FindingKind, Unassessed};
use std::fmt;

impl fmt::Display for Encoding {
    /// Its name.
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
    /// Its key.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Unassessed::Gap => "gap",
            Unassessed::NoHeights => "no-heights",
            Unassessed::Step => "step",
            Unassessed::Sliver => "sliver",
        })
    }
}

impl fmt::Display for Finding {
    /// “cut-off line=31 count=1 from_m=0 to_m=650”.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} count={}", self.kind, self.count)?;
        if let Some(from) = self.from_m {
            write!(f, " from_m={from:.0}")?;
        }
        self.to_m.map_or(Ok(()), |to| write!(f, " to_m={to:.0}"))
    }
}

impl fmt::Display for FindingKind {
    /// Its key and values.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::EncodingRepaired { declared: Some(name), read_as } => {
                write!(f, "encoding-repaired declared={name:?} read_as={:?}", read_as.to_string())
            }
            Self::EncodingRepaired { declared: None, read_as } => {
                write!(f, "encoding-repaired read_as={:?}", read_as.to_string())
            }
            Self::JunkBeforeStart => f.write_str("junk-before-start"),
            Self::CutOff { line } => write!(f, "cut-off line={line}"),
            Self::UndeclaredPrefix { prefix, line } => {
                write!(f, "undeclared-prefix prefix={prefix:?} line={line}")
            }
            Self::BadReference { line } => write!(f, "bad-reference line={line}"),
            Self::TagsRepaired { line } => write!(f, "tags-repaired line={line}"),
            Self::DocumentTypeIgnored { line } => write!(f, "document-type-ignored line={line}"),
            Self::DecimalComma { line } => write!(f, "decimal-comma line={line}"),
            Self::Padding { line } => write!(f, "padding line={line}"),
            Self::MetresWritten { line } => write!(f, "metres-written line={line}"),
            Self::ForeignUnit { line } => write!(f, "foreign-unit line={line}"),
            Self::HeightUnreadable { line } => write!(f, "height-unreadable line={line}"),
            Self::PointsDropped { line } => write!(f, "points-dropped line={line}"),
            Self::WaypointsLeftOut { kept } => write!(f, "waypoints-left-out kept={kept}"),
            Self::RouteShapeUsed => f.write_str("route-shape-used"),
            Self::SegmentsJoined { widest_m } => write!(f, "segments-joined widest_m={widest_m:.0}"),
            Self::StopsMerged => f.write_str("stops-merged"),
            Self::JumpsRejected => f.write_str("jumps-rejected"),
            Self::ZeroHeights => f.write_str("zero-heights"),
            Self::SpikesRemoved { largest_m } => write!(f, "spikes-removed largest_m={largest_m:.0}"),
            Self::HeightsFilled { longest_m } => write!(f, "heights-filled longest_m={longest_m:.0}"),
            Self::NotAssessed { why } => write!(f, "not-assessed why={why}"),
            Self::TunnelBridged { rise_m } => write!(f, "tunnel-bridged rise_m={rise_m:.0}"),
            Self::ViaductBridged { drop_m } => write!(f, "viaduct-bridged drop_m={drop_m:.0}"),
            Self::VerySteep { grade } => write!(f, "very-steep grade={grade:.3}"),
            Self::RecordingsCombined { common_m } => write!(f, "recordings-combined common_m={common_m:.0}"),
            Self::RecordingsDisagree { apart_m, length_m } => {
                write!(f, "recordings-disagree apart_m={apart_m:.0} length_m={length_m:.0}")
            }
            Self::RoughHeights { roughness, base_m, poor, from_terrain } => write!(
                f,
                "rough-heights roughness={roughness:.1} base_m={base_m:.0} poor={poor} from_terrain={from_terrain}"
            ),
        }
    }
}
