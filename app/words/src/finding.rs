//! What was noticed or repaired in a file.

use crate::Spoken;
use crate::format::{tenths, whole};
use solver::road::{Finding, FindingKind, Span};

impl Spoken {
    /// What was found and done, without the place.
    #[must_use]
    pub fn finding(&self, finding: &Finding) -> String {
        use FindingKind as Kind;
        let count = finding.count;
        match &finding.kind {
            Kind::EncodingRepaired { declared: Some(declared), read_as } => {
                self.found_encoding(declared, &read_as.to_string())
            }
            Kind::EncodingRepaired { declared: None, read_as } => {
                self.found_no_encoding(&read_as.to_string())
            }
            Kind::JunkBeforeStart => self.found_junk_before(count),
            Kind::CutOff { line } => self.found_cut_off(*line),
            Kind::UndeclaredPrefix { prefix, line } => self.found_undeclared_prefix(prefix, *line),
            Kind::BadReference { line } => self.found_bad_reference(count, *line),
            Kind::TagsRepaired { line } => self.found_tags_repaired(count, *line),
            Kind::DocumentTypeIgnored { line } => self.found_document_type(*line),
            Kind::DecimalComma { line } => self.found_decimal_comma(count, *line),
            Kind::Padding { line } => self.found_padding(count, *line),
            Kind::MetresWritten { line } => self.found_metres_written(count, *line),
            Kind::ForeignUnit { line } => self.found_foreign_unit(count, *line),
            Kind::HeightUnreadable { line } => self.found_height_unreadable(count, *line),
            Kind::PointsDropped { line } => self.found_points_dropped(count, *line),
            Kind::WaypointsLeftOut { kept } => self.found_waypoints_left_out(count, *kept),
            Kind::RouteShapeUsed => self.found_route_shape(count),
            // Counted are the joints.
            Kind::SegmentsJoined { widest_m } => self.found_segments_joined(count + 1, &whole(*widest_m)),
            Kind::StopsMerged => self.found_stops_merged(count),
            Kind::JumpsRejected => self.found_jumps(count),
            Kind::ZeroHeights => self.found_zero_heights(count),
            Kind::SpikesRemoved { largest_m } => self.found_spikes(count, &whole(*largest_m)),
            Kind::HeightsFilled { longest_m } => self.found_heights_filled(count, &whole(*longest_m)),
            Kind::NotAssessed { why } => self.found_not_assessed(*why),
            Kind::TunnelBridged { rise_m } => self.found_tunnel(&whole(*rise_m)),
            Kind::ViaductBridged { drop_m } => self.found_viaduct(&whole(*drop_m)),
            Kind::VerySteep { grade } => self.found_very_steep(count, &tenths(grade * 100.0)),
            Kind::RecordingsCombined { common_m } => self.found_combined(count, &tenths(common_m / 1000.0)),
            Kind::RecordingsDisagree { apart_m, length_m } => {
                self.found_disagree(&whole(*apart_m), &whole(*length_m))
            }
            Kind::RoughHeights { roughness, base_m, poor, from_terrain } => {
                self.found_rough(&tenths(*roughness), &whole(*base_m), *from_terrain, *poor)
            }
        }
    }

    /// Why a stretch is not assessed, behind its place.
    #[must_use]
    pub fn unassessed(&self, span: &Span) -> String {
        self.unassessed_because(span.why)
    }
}
