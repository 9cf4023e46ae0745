//! The shape of a road from above: straights and arcs, laid on the ellipsoid.

use super::Chance;
use solver::road::track;
use std::f64::consts::PI;

/// A straight or an arc.
#[derive(Clone, Copy, Debug)]
pub struct Bend {
    /// Length, metres.
    pub length_m: f64,
    /// Turn per metre, radians; positive turns right, 0 is straight.
    pub curvature: f64,
}

impl Bend {
    /// A straight.
    #[must_use]
    pub fn straight(length_m: f64) -> Bend {
        Bend { length_m, curvature: 0.0 }
    }

    /// An arc that turns by `turn_deg` (positive right) with this radius.
    #[must_use]
    pub fn arc(radius_m: f64, turn_deg: f64) -> Bend {
        let turn = turn_deg * PI / 180.0;
        Bend { length_m: radius_m * turn.abs(), curvature: turn.signum() / radius_m }
    }
}

/// The shape of a road from above.
#[derive(Clone, Debug)]
pub struct Plan {
    /// Latitude of the start, degrees.
    pub lat_deg: f64,
    /// Longitude of the start, degrees.
    pub lon_deg: f64,
    /// Direction at the start, degrees clockwise from north.
    pub heading_deg: f64,
    /// Straights and arcs in order; the last goes on for ever.
    pub bends: Vec<Bend>,
}

/// Length of the pieces of an arc, so short that a chord equals the arc within a micrometre.
const PIECE_M: f64 = 0.5;

impl Plan {
    /// Random straights, bends and hairpins of at least this length, somewhere in the open ocean.
    #[must_use]
    pub fn random(chance: &mut Chance, length_m: f64) -> Plan {
        let mut bends = Vec::new();
        let mut sum = 0.0;
        while sum < length_m {
            let turn = if chance.happens(0.5) { 1.0 } else { -1.0 };
            let bend = if chance.happens(0.2) {
                Bend::arc(chance.between(12.0, 25.0), turn * chance.between(150.0, 190.0))
            } else {
                Bend::arc(chance.between(60.0, 600.0), turn * chance.between(10.0, 70.0))
            };
            let straight = Bend::straight(chance.between(50.0, 500.0));
            sum += bend.length_m + straight.length_m;
            bends.extend([straight, bend]);
        }
        Plan {
            lat_deg: chance.between(-45.0, -35.0),
            lon_deg: chance.between(-30.0, -15.0),
            heading_deg: chance.between(0.0, 360.0),
            bends,
        }
    }

    /// The bends with where they begin, metres from the start.
    pub fn placed(&self) -> impl Iterator<Item = (f64, Bend)> {
        self.bends.iter().scan(0.0, |at_m, bend| {
            let from_m = *at_m;
            *at_m += bend.length_m;
            Some((from_m, *bend))
        })
    }

    /// Latitude and longitude at increasing distances, degrees.
    #[must_use]
    pub fn places(&self, distances_m: &[f64]) -> Vec<(f64, f64)> {
        let mut walk = Walk {
            lat_deg: self.lat_deg,
            lon_deg: self.lon_deg,
            heading: self.heading_deg * PI / 180.0,
            s_m: 0.0,
            bend: 0,
            bend_end_m: self.bends.first().map_or(f64::INFINITY, |bend| bend.length_m),
        };
        distances_m
            .iter()
            .map(|s_m| {
                walk.go_to(&self.bends, *s_m);
                (walk.lat_deg, walk.lon_deg)
            })
            .collect()
    }
}

struct Walk {
    lat_deg: f64,
    lon_deg: f64,
    heading: f64,
    s_m: f64,
    bend: usize,
    bend_end_m: f64,
}

impl Walk {
    fn go_to(&mut self, bends: &[Bend], s_m: f64) {
        // Each pass advances by a piece or to the next bend.
        while self.s_m < s_m {
            while self.s_m >= self.bend_end_m && self.bend + 1 < bends.len() {
                self.bend += 1;
                self.bend_end_m += bends[self.bend].length_m;
            }
            let curvature = bends.get(self.bend).map_or(0.0, |bend| bend.curvature);
            let end = if self.bend + 1 < bends.len() { self.bend_end_m.min(s_m) } else { s_m };
            let whole = end - self.s_m;
            let piece = if curvature.abs() > 0.0 { whole.min(PIECE_M) } else { whole.min(20.0) };
            self.go(piece, curvature * piece);
            self.s_m = if piece < whole { self.s_m + piece } else { end };
        }
    }

    /// Advances by a chord, with half of the turn before it and half after.
    fn go(&mut self, piece_m: f64, turn: f64) {
        let heading = self.heading + 0.5 * turn;
        let (north, east) = (piece_m * libm::cos(heading), piece_m * libm::sin(heading));
        // The radii at the middle of the piece; two rounds are enough for a few metres.
        let mut lat_deg = self.lat_deg;
        let mut parallel = 1.0;
        for _ in 0..2 {
            let (meridian, across) = track::radii_m(0.5 * (self.lat_deg + lat_deg));
            lat_deg = self.lat_deg + north / meridian * 180.0 / PI;
            parallel = across;
        }
        self.lat_deg = lat_deg;
        self.lon_deg += east / parallel * 180.0 / PI;
        self.heading += turn;
    }
}
