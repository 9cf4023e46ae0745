//! Whether two roads lie on the same ground, and where a point of one lies on the other.

use super::Road;
use super::profile::cells_in;
use super::track;
use geo::{Coord, Line, LineLocatePoint, Point, Vector2DOps};

/// A point within this distance of the other road lies on it, metres: both sides of a road, and the errors of
/// two receivers.
const NEAR_M: f64 = 25.0;
/// Two roads are one where this share of the shorter lies on the other (assumed).
const SHARE: f64 = 0.8;
/// Directions within this cosine are one direction.
const SAME_WAY: f64 = 0.7;
/// Directions are taken over this length to either side, metres.
const WAY_M: f64 = 30.0;
/// From one grid point to the next, the place on the other road moves on by at most this many cells.
const MOST_CELLS: usize = 5;
/// Where the roads part, the search for the other road is repeated every so many cells.
const SEEK_CELLS: usize = 10;

/// Where the grid points of one road lie on another.
#[derive(Clone, Debug, PartialEq)]
pub struct Match {
    /// For each grid point the index on the other road's grid, with its fraction.
    places: Vec<Option<f64>>,
}

impl Match {
    /// The place on the second road of a grid point of the first: an index with its fraction. `None` where it
    /// lies off that road.
    #[must_use]
    pub fn place(&self, point: usize) -> Option<f64> {
        self.places.get(point).copied().flatten()
    }

    /// The grid point of the first road nearest to a grid point of the second; `None` where that lies off the
    /// first road.
    pub(super) fn point_at(&self, index: usize) -> Option<usize> {
        let off = |place: &Option<f64>| place.map(|place| (place - index as f64).abs());
        let near = self.places.iter().enumerate().filter_map(|(point, place)| Some((point, off(place)?)));
        let (point, off) = near.min_by(|(_, a), (_, b)| a.total_cmp(b))?;
        (off <= MOST_CELLS as f64).then_some(point)
    }

    /// How many grid points of the first road lie on the second.
    #[must_use]
    pub fn points(&self) -> usize {
        self.places.iter().flatten().count()
    }
}

/// Whether two roads are one: most of the shorter lies on the other, in one direction. A road without
/// positions never matches.
#[must_use]
pub fn lie_on_each_other(a: &Road, b: &Road) -> Option<Match> {
    let &(lat, lon) = a.positions().first()?;
    b.positions().first()?;
    let (meridian, parallel) = track::radii_m(lat);
    let flat = |road: &Road| -> Vec<Coord<f64>> {
        let place = |(lat_deg, lon_deg): &(f64, f64)| Coord {
            x: track::turn_deg(lon, *lon_deg).to_radians() * parallel,
            y: (lat_deg - lat).to_radians() * meridian,
        };
        road.positions().iter().map(place).collect()
    };
    let walk =
        Walk { a: flat(a), b: flat(b), way: (cells_in(WAY_M, a.step_m()), cells_in(WAY_M, b.step_m())) };
    let found = Match { places: walk.places() };
    let shorter_m = a.length_m().min(b.length_m());
    (found.points() as f64 * a.step_m() >= SHARE * shorter_m).then_some(found)
}

/// Both roads on one plane, metres.
struct Walk {
    a: Vec<Coord<f64>>,
    b: Vec<Coord<f64>>,
    /// Cells over which the direction is taken on each.
    way: (usize, usize),
}

impl Walk {
    /// Goes forwards along both, never back. So a loop or the next leg of a hairpin is not taken for the
    /// road.
    fn places(&self) -> Vec<Option<f64>> {
        let mut places = Vec::with_capacity(self.a.len());
        // The place of the last point, and the number of points since the road was lost.
        let (mut at, mut lost) = (0, SEEK_CELLS);
        for i in 0..self.a.len() {
            let found = if lost == 0 {
                self.nearest(i, at, at + MOST_CELLS)
            } else if lost.is_multiple_of(SEEK_CELLS) {
                // Where the road passes twice, the first pass counts.
                (at..self.b.len())
                    .find_map(|cell| self.nearest(i, cell, cell + 1).map(|_| cell))
                    .and_then(|cell| self.nearest(i, cell, cell + MOST_CELLS))
            } else {
                None
            };
            places.push(found);
            match found {
                Some(place) => (at, lost) = (place as usize, 0),
                None => lost += 1,
            }
        }
        places
    }

    /// The nearest place on cells `from..to` of the second road, if it is near and has the same direction.
    fn nearest(&self, i: usize, from: usize, to: usize) -> Option<f64> {
        let point = Point(self.a[i]);
        let here = direction(&self.a, i, self.way.0);
        let mut best: Option<(f64, f64)> = None;
        for cell in from..to.min(self.b.len() - 1) {
            let line = Line::new(self.b[cell], self.b[cell + 1]);
            // Most cells of a long road are far off.
            if (line.start.x - point.x()).abs() > 2.0 * NEAR_M
                || (line.start.y - point.y()).abs() > 2.0 * NEAR_M
            {
                continue;
            }
            let way = line.line_locate_point(&point).unwrap_or(0.0);
            let on = line.start + line.delta() * way;
            let off2 = (on - point.0).magnitude_squared();
            let there = direction(&self.b, cell, self.way.1);
            let cosine =
                here.dot_product(there) / (here.magnitude_squared() * there.magnitude_squared()).sqrt();
            let fits = off2 <= NEAR_M * NEAR_M && cosine >= SAME_WAY;
            if fits && best.is_none_or(|(least, _)| off2 < least) {
                best = Some((off2, cell as f64 + way));
            }
        }
        best.map(|(_, place)| place)
    }
}

/// Direction from some cells before a point to as many behind it.
fn direction(line: &[Coord<f64>], at: usize, cells: usize) -> Coord<f64> {
    line[(at + cells).min(line.len() - 1)] - line[at.saturating_sub(cells)]
}
