//! The elements of GPX 1.0 and 1.1 that the reader knows, by local name.

/// An open element. [`Element::Other`] stands for unknown names, and for known names in a place where they
/// mean something else.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Element {
    Gpx,
    Metadata,
    Track,
    Segment,
    TrackPoint,
    Route,
    RoutePoint,
    /// A point of a route's shape that a device writes into the extensions of a route point.
    ShapePoint,
    Waypoint,
    Height,
    Name,
    Symbol,
    Kind,
    Other,
}

impl Element {
    /// The element with this local name below this parent. A known name at the wrong depth (an `ele` inside
    /// extensions, for example) is `Other`.
    pub(super) fn named(local: &str, parent: Option<Element>) -> Element {
        match local {
            "trkpt" => Element::TrackPoint,
            "ele" if parent.is_some_and(Element::is_point) => Element::Height,
            "trkseg" => Element::Segment,
            "trk" => Element::Track,
            "rte" => Element::Route,
            "rtept" => Element::RoutePoint,
            "rpt" => Element::ShapePoint,
            "wpt" => Element::Waypoint,
            "gpx" => Element::Gpx,
            "metadata" => Element::Metadata,
            "name" if parent.is_some_and(Element::has_name) => Element::Name,
            "sym" if parent == Some(Element::Waypoint) => Element::Symbol,
            "type" if parent == Some(Element::Waypoint) => Element::Kind,
            _unknown => Element::Other,
        }
    }

    /// Whether it carries latitude, longitude and perhaps a height.
    pub(super) fn is_point(self) -> bool {
        match self {
            Element::TrackPoint | Element::RoutePoint | Element::ShapePoint | Element::Waypoint => true,
            Element::Gpx
            | Element::Metadata
            | Element::Track
            | Element::Segment
            | Element::Route
            | Element::Height
            | Element::Name
            | Element::Symbol
            | Element::Kind
            | Element::Other => false,
        }
    }

    /// Whether its text is needed.
    pub(super) fn is_text(self) -> bool {
        match self {
            Element::Height | Element::Name | Element::Symbol | Element::Kind => true,
            Element::Gpx
            | Element::Metadata
            | Element::Track
            | Element::Segment
            | Element::TrackPoint
            | Element::Route
            | Element::RoutePoint
            | Element::ShapePoint
            | Element::Waypoint
            | Element::Other => false,
        }
    }

    fn has_name(self) -> bool {
        match self {
            Element::Gpx | Element::Metadata | Element::Track | Element::Route | Element::Waypoint => true,
            Element::Segment
            | Element::TrackPoint
            | Element::RoutePoint
            | Element::ShapePoint
            | Element::Height
            | Element::Name
            | Element::Symbol
            | Element::Kind
            | Element::Other => false,
        }
    }
}
