//! Every bound and threshold of reading and cleaning in one place.
//!
//! A value with no source beside it is our own choice, made on public tracks and on generated roads whose
//! truth is known. None of them is a physical constant.

/// Largest file that is read, bytes.
pub const MOST_BYTES: usize = 200_000_000;
/// Most track and route points that are read.
pub const MOST_POINTS: usize = 2_000_000;
/// Most courses of a file: tracks, routes, and stretches too far apart to be one road.
pub const MOST_COURSES: usize = 1_000;
/// Most waypoints that are kept; more are counted and left out.
pub const MOST_WAYPOINTS: usize = 2_000;
/// Most posted limits of a road; a person enters them one by one.
pub const MOST_LIMITS: usize = 200;
/// Deepest nesting of elements. A real file stays below ten.
pub const MOST_NESTING: usize = 100;
/// Longest tag with its attributes, bytes. A real one stays below 4 kB.
pub const LONGEST_TAG: usize = 65_536;
/// Longest name, symbol or number that is kept, bytes.
pub const LONGEST_TEXT: usize = 400;
/// Longest road, metres; it bounds the work and memory of a grid.
pub const LONGEST_ROAD_M: f64 = 3_000_000.0;
/// Shortest road, metres: a shorter one says nothing about a hill.
pub const SHORTEST_ROAD_M: f64 = 500.0;
/// Share of points without a usable place above which the file is not trusted.
pub const BAD_POINTS_SHARE: f64 = 0.05;

/// Lowest height that is believed, metres. The lowest road on earth lies near −430 m.
pub const LOWEST_HEIGHT_M: f64 = -600.0;
/// Greatest height that is believed, metres. The highest roads lie near 6,000 m.
pub const GREATEST_HEIGHT_M: f64 = 9_000.0;

/// Spacing that the grid aims at, metres.
pub const STEP_M: f64 = 10.0;
/// Points nearer than this to the last one kept are one point, metres.
pub const MERGE_M: f64 = 1.5;
/// A step longer than this is a gap: the road between is not known, metres.
pub const GAP_M: f64 = 300.0;
/// Missing heights are filled across at most this distance, metres.
pub const FILL_M: f64 = 200.0;
/// Segments of one track farther apart than this are separate choices, metres.
pub const JOIN_M: f64 = 2_000.0;
/// Coarsest spacing, metres: at least half of the road's length must be finer.
pub const COARSEST_M: f64 = 150.0;
/// An assessed stretch shorter than this between two unassessed ones is not assessed, metres.
pub const SLIVER_M: f64 = 150.0;
/// A place belongs to the road when it lies no farther from it than this, metres.
pub const NEAR_ROAD_M: f64 = 150.0;
