//! Why a file cannot be used. The set is closed; each answer says what, where and what to do.

use super::bounds;
use serde::{Deserialize, Serialize};
use std::fmt;

/// What a file is that is no GPX file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Foreign {
    /// A web page, often a log-in page saved in place of the track.
    Html,
    /// Keyhole Markup Language.
    Kml,
    /// A gzip archive.
    Gzip,
    /// A zip archive (zipped KML and office documents are archives, too).
    Zip,
    /// The binary recording of a bicycle or sports device.
    Fit,
    /// JSON or GeoJSON.
    Json,
    /// A PDF document.
    Pdf,
    /// A picture.
    Picture,
    /// Another kind of XML, with the name of its outermost element.
    OtherXml(String),
    /// No mark of a known kind was found.
    Unknown,
}

/// Content that is refused without reading on, since it can only do harm.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Refusal {
    /// The file declares its own entities.
    Entities,
    /// Elements are nested deeper than [`bounds::MOST_NESTING`].
    Nesting,
    /// One tag is longer than [`bounds::LONGEST_TAG`].
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

/// Why no road could be made. Its `Display` is one sentence or two for the person at the page:
/// what was found, where, and what to do instead.
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
        /// Whether every height is one and the same number (most often 0).
        constant: bool,
        /// Number of heights that were unreadable or had a unit other than metres.
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
        /// Line of the first such point, from 1.
        line: usize,
        /// Whether they would fit if latitude and longitude changed places.
        swapped: bool,
    },
    /// The road is too short for anything to be said about it.
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
        /// Content that was found.
        what: Refusal,
        /// Line where the refused content begins, from 1.
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

const ASK_GPX: &str = "Export the track as GPX and choose that file.";
const ASK_HEIGHTS: &str = "Record the road with a device that stores heights, or add heights to the track with a route planner, and export it again.";

impl fmt::Display for Foreign {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Foreign::Html => write!(
                f,
                "This is a web page, not a GPX file. Log in where the track is kept and download the track itself as GPX."
            ),
            Foreign::Kml => write!(f, "This is a KML file, which seldom carries usable heights. {ASK_GPX}"),
            Foreign::Gzip => write!(f, "This is a gzip archive. Unpack it and choose the GPX file inside."),
            Foreign::Zip => write!(f, "This is a zip archive. Unpack it and choose the GPX file inside."),
            Foreign::Fit => write!(f, "This is a binary FIT recording, not a GPX file. {ASK_GPX}"),
            Foreign::Json => write!(f, "This is a JSON file, not a GPX file. {ASK_GPX}"),
            Foreign::Pdf => write!(f, "This is a PDF document, not a GPX file. {ASK_GPX}"),
            Foreign::Picture => write!(f, "This is a picture, not a GPX file. {ASK_GPX}"),
            Foreign::OtherXml(name) => write!(
                f,
                "This is an XML file of another kind: its outermost element is “{name}”, not “gpx”. {ASK_GPX}"
            ),
            Foreign::Unknown => write!(f, "This is not a GPX file. {ASK_GPX}"),
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Refusal::Entities => write!(f, "the file declares entities of its own"),
            Refusal::Nesting => write!(f, "elements are nested more than {} deep", bounds::MOST_NESTING),
            Refusal::LongTag => write!(f, "one tag is longer than {} kB", bounds::LONGEST_TAG / 1024),
        }
    }
}

impl fmt::Display for Bound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Bound::Bytes(found) => write!(
                f,
                "The file has {} MB; at most {} MB can be read. Export a shorter part of the track, or fewer points.",
                found / 1_000_000,
                bounds::MOST_BYTES / 1_000_000
            ),
            Bound::Points => write!(
                f,
                "The file has more than {} million points. Export a shorter part of the track, or fewer points.",
                bounds::MOST_POINTS / 1_000_000
            ),
            Bound::Courses => write!(
                f,
                "The file has more than {} tracks, or pieces of a track far apart. Export the road that you want alone.",
                bounds::MOST_COURSES
            ),
            Bound::Length(found_m) => write!(
                f,
                "The road is {:.0} km long; at most {:.0} km can be worked out. Export a shorter part of it.",
                found_m / 1000.0,
                bounds::LONGEST_ROAD_M / 1000.0
            ),
        }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            FileError::Empty => write!(f, "The file is empty. {ASK_GPX}"),
            FileError::NotGpx(foreign) => foreign.fmt(f),
            FileError::NothingInside => write!(
                f,
                "The GPX file has no track and no route in it. Export the track itself, not only its summary."
            ),
            FileError::WaypointsOnly { count } => write!(
                f,
                "The file has only waypoints ({count}): places, but no road between them. Export the track or the route."
            ),
            FileError::NoHeights { points, constant, unreadable } => {
                no_heights(f, *points, *constant, *unreadable)
            }
            FileError::TooCoarse { found_m, needed_m } => write!(
                f,
                "The points are too far apart: about {found_m:.0} m, and {needed_m:.0} m at most is needed to see the grades. Export it as a track with all points, not as a route of a few turns."
            ),
            FileError::TooManyBadPoints { bad, points, line, swapped } => {
                write!(
                    f,
                    "{bad} of {points} points have no usable latitude and longitude, the first in line {line}. "
                )?;
                if *swapped {
                    write!(
                        f,
                        "It looks as if latitude and longitude had changed places; correct that where the file is made and export it again."
                    )
                } else {
                    write!(f, "Export the track again.")
                }
            }
            FileError::TooShort { found_m, needed_m } => write!(
                f,
                "The road is only {found_m:.0} m long; at least {needed_m:.0} m is needed. Choose a longer track."
            ),
            FileError::NothingLeft { length_m } => write!(
                f,
                "On none of the {:.1} km could the heights be trusted, so no grade can be given. {ASK_HEIGHTS}",
                length_m / 1000.0
            ),
            FileError::TooLarge(bound) => bound.fmt(f),
            FileError::Refused { what, line } => write!(
                f,
                "The file is refused at line {line}: {what}, which no track needs. Export the track again from where it was made."
            ),
            FileError::BadHeights { index } => write!(
                f,
                "Height number {} cannot be used: at least two finite heights at a step above 0 m and at most 50 m are needed.",
                index + 1
            ),
            FileError::NoSuchCourse { asked, found } => write!(
                f,
                "Track number {} was asked for, but the file has {found}. Choose one of those.",
                asked + 1
            ),
            FileError::LegsApart { leg, gap_m } => write!(
                f,
                "File {leg} begins {:.1} km from where file {} ends, so no road leads from the one to the other. Change the order, or turn one of them round.",
                gap_m / 1000.0,
                leg - 1
            ),
            FileError::NotOneRoad { recording } => write!(
                f,
                "Recording {recording} is no second recording of the same road: too little of it lies on the ones before, its heights are quite others, or it is one of them again. Compare the files, or join them."
            ),
            FileError::Cancelled => write!(f, "Stopped as asked; choose a file to start again."),
        }
    }
}

fn no_heights(f: &mut fmt::Formatter<'_>, points: usize, constant: bool, unreadable: usize) -> fmt::Result {
    if unreadable > 0 {
        write!(
            f,
            "None of the {points} points has a height in plain metres; {unreadable} heights could not be read, or carry a unit that is not guessed. Export the heights in metres, as plain numbers."
        )
    } else if constant {
        write!(
            f,
            "All heights in the file are the same number, so it does not know the hills ({points} points). {ASK_HEIGHTS}"
        )
    } else {
        write!(f, "None of the {points} points has a height, so the road cannot be assessed. {ASK_HEIGHTS}")
    }
}
