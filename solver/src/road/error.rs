//! Why a file cannot be used. One closed set; each answer says what was found, and where.

use serde::{Deserialize, Serialize};
use std::fmt;

/// What a file is when it is no GPX file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Foreign {
    /// A web page, often a log-in page saved in place of the track.
    Html,
    /// Keyhole Markup Language.
    Kml,
    /// A gzip archive.
    Gzip,
    /// A zip archive (zipped KML and office documents are such too).
    Zip,
    /// The binary recording of a bicycle or sports device.
    Fit,
    /// JSON or GeoJSON.
    Json,
    /// A PDF document.
    Pdf,
    /// A picture.
    Picture,
    /// Another kind of XML; the name of its outermost element.
    OtherXml(String),
    /// None of these: no mark of a known kind was found.
    Unknown,
}

/// What is refused without reading on, since it serves only to harm.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Refusal {
    /// The file declares its own entities.
    Entities,
    /// Elements are nested deeper than any writer of GPX nests them.
    Nesting,
    /// One tag is longer than any writer of GPX makes it.
    LongTag,
}

/// Which bound a file exceeds.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum Bound {
    /// Size of the file, bytes.
    Bytes(usize),
    /// Number of points; reading stopped there.
    Points,
    /// Number of tracks, routes and stretches far apart; reading stopped there.
    Courses,
    /// Length of the road, metres.
    Length(f64),
}

/// Why no road could be made. Its `Display` is for logs: a key that stays, and its values. What a person reads,
/// with what to do instead, is made of the data themselves.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum FileError {
    /// Nothing in the file, or only blank space.
    Empty,
    /// Not a GPX file.
    NotGpx(Foreign),
    /// GPX, but neither a track, a route nor a waypoint in it.
    NothingInside,
    /// Only waypoints: places, but no road between them.
    WaypointsOnly {
        /// How many waypoints.
        count: usize,
    },
    /// No usable height at any point of the course.
    NoHeights {
        /// Points of the course.
        points: usize,
        /// Every height is the same number (most often 0).
        constant: bool,
        /// Heights carried a unit that is not metres, or were unreadable: how many.
        unreadable: usize,
    },
    /// Points too far apart to know the road between them.
    TooCoarse {
        /// Half of the length has steps longer than this, metres.
        found_m: f64,
        /// The spacing needed, metres.
        needed_m: f64,
    },
    /// More than one point in twenty has no usable latitude and longitude.
    TooManyBadPoints {
        /// Points left out.
        bad: usize,
        /// Points in all.
        points: usize,
        /// Line of the first one, from 1.
        line: usize,
        /// They would fit if latitude and longitude changed places.
        swapped: bool,
    },
    /// The road is too short to say anything about.
    TooShort {
        /// Length found, metres.
        found_m: f64,
        /// Length needed, metres.
        needed_m: f64,
    },
    /// After cleaning, no stretch is left on which grades could be trusted.
    NothingLeft {
        /// Length of the whole road, metres.
        length_m: f64,
    },
    /// A bound of size is exceeded.
    TooLarge(Bound),
    /// Refused as harmful.
    Refused {
        /// What was met.
        what: Refusal,
        /// Line where it begins, from 1.
        line: usize,
    },
    /// A height or step handed over by number cannot be used (roads made from heights alone).
    BadHeights {
        /// Index of the first height that cannot be used, from 0.
        index: usize,
    },
    /// The course asked for is not in the document.
    NoSuchCourse {
        /// Index asked for, from 0.
        asked: usize,
        /// Courses there are.
        found: usize,
    },
    /// Two files that are to be joined do not meet.
    LegsApart {
        /// Number of the second of them, from 1.
        leg: usize,
        /// Distance between the end of the one and the start of the other, metres.
        gap_m: f64,
    },
    /// Files that are to be recordings of one road are not.
    NotOneRoad {
        /// Number of the recording that does not lie on those before, from 1.
        recording: usize,
    },
    /// The caller asked to stop.
    Cancelled,
}

impl std::error::Error for FileError {}

impl fmt::Display for Foreign {
    /// Its key; of other XML with the name of its outermost element.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Foreign::Html => "html",
            Foreign::Kml => "kml",
            Foreign::Gzip => "gzip",
            Foreign::Zip => "zip",
            Foreign::Fit => "fit",
            Foreign::Json => "json",
            Foreign::Pdf => "pdf",
            Foreign::Picture => "picture",
            Foreign::OtherXml(name) => return write!(f, "other-xml element={name:?}"),
            Foreign::Unknown => "unknown",
        })
    }
}

impl fmt::Display for Refusal {
    /// Its key.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Refusal::Entities => "entities",
            Refusal::Nesting => "nesting",
            Refusal::LongTag => "long-tag",
        })
    }
}

impl fmt::Display for Bound {
    /// Its key, and what was found.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Bound::Bytes(found) => write!(f, "bytes found={found}"),
            Bound::Points => f.write_str("points"),
            Bound::Courses => f.write_str("courses"),
            Bound::Length(found_m) => write!(f, "length found_m={found_m:.0}"),
        }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            FileError::Empty => f.write_str("empty"),
            FileError::NotGpx(foreign) => write!(f, "not-gpx {foreign}"),
            FileError::NothingInside => f.write_str("nothing-inside"),
            FileError::WaypointsOnly { count } => write!(f, "waypoints-only count={count}"),
            FileError::NoHeights { points, constant, unreadable } => {
                write!(f, "no-heights points={points} constant={constant} unreadable={unreadable}")
            }
            FileError::TooCoarse { found_m, needed_m } => {
                write!(f, "too-coarse found_m={found_m:.0} needed_m={needed_m:.0}")
            }
            FileError::TooManyBadPoints { bad, points, line, swapped } => {
                write!(f, "too-many-bad-points bad={bad} points={points} line={line} swapped={swapped}")
            }
            FileError::TooShort { found_m, needed_m } => {
                write!(f, "too-short found_m={found_m:.0} needed_m={needed_m:.0}")
            }
            FileError::NothingLeft { length_m } => write!(f, "nothing-left length_m={length_m:.0}"),
            FileError::TooLarge(bound) => write!(f, "too-large {bound}"),
            FileError::Refused { what, line } => write!(f, "refused {what} line={line}"),
            FileError::BadHeights { index } => write!(f, "bad-heights index={index}"),
            FileError::NoSuchCourse { asked, found } => {
                write!(f, "no-such-course asked={asked} found={found}")
            }
            FileError::LegsApart { leg, gap_m } => write!(f, "legs-apart leg={leg} gap_m={gap_m:.0}"),
            FileError::NotOneRoad { recording } => write!(f, "not-one-road recording={recording}"),
            FileError::Cancelled => f.write_str("cancelled"),
        }
    }
}
