//! What an instrument records of a road.

use super::{Chance, TrueRoad};
use std::f64::consts::PI;

/// Kinds of instrument and of heights. The figures are our own choice. They give roughness (2.5 to 2.8 points
/// on public recordings, 5 to 26 on poor ones) and errors of 100 m grades of the size seen on public tracks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Instrument {
    /// Truth, to the centimetre.
    Exact,
    /// A recorder with a barometer: smooth drift with the weather, steps of 0.2 m.
    Recorder,
    /// A satellite receiver without a barometer: errors of metres that last for hundreds of metres.
    Receiver,
    /// Heights of a coarse terrain model: errors of metres from cell to cell, whole metres.
    Terrain,
}

/// A stretch on which terrain heights are those of the hill above a tunnel or, with a negative rise, of the
/// valley below a bridge.
#[derive(Clone, Copy, Debug)]
pub struct Bump {
    /// Start, metres along the road.
    pub from_m: f64,
    /// End, metres along the road.
    pub to_m: f64,
    /// Greatest distance from the road, metres.
    pub rise_m: f64,
}

/// A recorded point.
#[derive(Clone, Copy, Debug)]
pub struct Sample {
    /// True distance along the road, metres.
    pub s_m: f64,
    /// Recorded latitude, degrees.
    pub lat_deg: f64,
    /// Recorded longitude, degrees.
    pub lon_deg: f64,
    /// Recorded height, metres.
    pub height_m: f64,
}

/// One drive along a road.
#[derive(Clone, Debug)]
pub struct Drive {
    /// The instrument that records it.
    pub instrument: Instrument,
    /// Distance between points, metres.
    pub spacing_m: f64,
    /// Tunnels and bridges.
    pub bumps: Vec<Bump>,
    /// Errors of place that change within [`JITTER_LENGTH_M`], metres: they lengthen the track.
    pub jitter_m: f64,
    /// Seed of its errors.
    pub seed: u64,
}

/// Distance over which the correlation of quick errors of place falls to 1/e, metres.
const JITTER_LENGTH_M: f64 = 20.0;

/// Correlated errors: one autoregressive step per point. `length_m` is the distance over which
/// the correlation falls to 1/e.
struct Wander {
    value: f64,
    keep: f64,
    push: f64,
}

impl Wander {
    fn new(sigma: f64, length_m: f64, spacing_m: f64) -> Wander {
        let keep = libm::exp(-spacing_m / length_m);
        Wander { value: 0.0, keep, push: sigma * (1.0 - keep * keep).sqrt() }
    }

    fn next(&mut self, chance: &mut Chance) -> f64 {
        self.value = self.keep * self.value + self.push * chance.normal();
        self.value
    }
}

impl Drive {
    /// A plain drive without tunnels.
    #[must_use]
    pub fn new(instrument: Instrument, spacing_m: f64, seed: u64) -> Drive {
        Drive { instrument, spacing_m, bumps: Vec::new(), jitter_m: 0.0, seed }
    }

    /// The recorded points, first and last of the road included.
    #[must_use]
    pub fn record(&self, road: &TrueRoad) -> Vec<Sample> {
        let count = (road.length_m() / self.spacing_m).ceil().max(1.0) as usize;
        let distances: Vec<f64> =
            (0..=count).map(|k| (k as f64 * self.spacing_m).min(road.length_m())).collect();
        let mut chance = Chance::new(self.seed);
        let errors = self.height_errors(&mut chance, &distances);
        let shifts = self.shifts_m(&mut chance, distances.len());
        let places = road.plan.places(&distances);
        distances
            .iter()
            .zip(places)
            .zip(errors.iter().zip(shifts))
            .map(|((s_m, (lat, lon)), (error_m, (north_m, east_m)))| {
                let (meridian, parallel) = solver::road::track::radii_m(lat);
                let height = road.alignment.height_m(*s_m) + error_m + self.bump_m(*s_m);
                Sample {
                    s_m: *s_m,
                    lat_deg: lat + north_m / meridian * 180.0 / PI,
                    lon_deg: lon + east_m / parallel * 180.0 / PI,
                    height_m: self.rounded(height),
                }
            })
            .collect()
    }

    fn rounded(&self, height_m: f64) -> f64 {
        let unit = match self.instrument {
            Instrument::Exact => 0.01,
            Instrument::Recorder => 0.2,
            Instrument::Receiver => 0.1,
            Instrument::Terrain => 1.0,
        };
        (height_m / unit).round() * unit
    }

    /// A flat-topped hill: flanks of a tenth of its length, at most 150 m.
    fn bump_m(&self, s_m: f64) -> f64 {
        self.bumps
            .iter()
            .filter(|bump| (bump.from_m..=bump.to_m).contains(&s_m))
            .map(|bump| {
                let flank = (0.1 * (bump.to_m - bump.from_m)).min(150.0);
                let inside = (s_m - bump.from_m).min(bump.to_m - s_m);
                bump.rise_m * (inside / flank).min(1.0)
            })
            .sum()
    }

    fn height_errors(&self, chance: &mut Chance, distances_m: &[f64]) -> Vec<f64> {
        let spacing = self.spacing_m;
        match self.instrument {
            Instrument::Exact => vec![0.0; distances_m.len()],
            Instrument::Recorder => {
                let phase = chance.between(0.0, 2.0 * PI);
                let mut lag = Wander::new(0.25, 60.0, spacing);
                let drift = |s: f64| 3.0 * libm::sin(2.0 * PI * s / 25_000.0 + phase);
                distances_m.iter().map(|s| drift(*s) + lag.next(chance) + 0.08 * chance.normal()).collect()
            }
            Instrument::Receiver => {
                let (mut slow, mut fast) =
                    (Wander::new(3.0, 800.0, spacing), Wander::new(0.8, 40.0, spacing));
                distances_m.iter().map(|_| slow.next(chance) + fast.next(chance)).collect()
            }
            Instrument::Terrain => {
                let mut wander = Wander::new(2.0, 60.0, spacing);
                distances_m.iter().map(|_| wander.next(chance)).collect()
            }
        }
    }

    /// Errors of place, metres north and east.
    fn shifts_m(&self, chance: &mut Chance, count: usize) -> Vec<(f64, f64)> {
        let mut shifts = self.slow_shifts_m(chance, count);
        if self.jitter_m > 0.0 {
            let mut north = Wander::new(self.jitter_m, JITTER_LENGTH_M, self.spacing_m);
            let mut east = Wander::new(self.jitter_m, JITTER_LENGTH_M, self.spacing_m);
            for shift in &mut shifts {
                *shift = (shift.0 + north.next(chance), shift.1 + east.next(chance));
            }
        }
        shifts
    }

    /// Shifts that change slowly: a receiver smooths its track.
    fn slow_shifts_m(&self, chance: &mut Chance, count: usize) -> Vec<(f64, f64)> {
        let sigma_m = match self.instrument {
            Instrument::Exact | Instrument::Terrain => return vec![(0.0, 0.0); count],
            Instrument::Recorder => 1.0,
            Instrument::Receiver => 2.0,
        };
        let mut north = Wander::new(sigma_m, 1_500.0, self.spacing_m);
        let mut east = Wander::new(sigma_m, 1_500.0, self.spacing_m);
        (0..count).map(|_| (north.next(chance), east.next(chance))).collect()
    }
}
