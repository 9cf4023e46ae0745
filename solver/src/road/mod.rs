//! From a messy file to a road that can be trusted.
//!
//! ```text
//! bytes ─ gpx ─▶ Document ─ clean, heights ─▶ Line ─ profile ─▶ Profile
//!       ─ artefacts, quality, trend, vertical_curves ─▶ heights ─ segments, places ─▶ Road
//! ```
//!
//! [`read`] takes any bytes; [`survey`] makes a [`Road`] of one course in them. Nothing is
//! changed silently: every repair is a [`Finding`]. A grade is never computed across a gap, and
//! where heights cannot be trusted the road says so instead of giving a number.
//!
//! Distances are horizontal, along the WGS 84 ellipsoid. Heights count from whatever the file
//! counts from: only differences matter.

mod alike;
mod alone;
mod artefacts;
pub mod bounds;
mod clean;
mod cliffs;
mod coarser;
mod combine;
mod curves;
mod disagree;
mod document;
mod doubt;
mod drawn;
mod error;
mod finding;
mod gpx;
mod hairpins;
mod handed;
mod heights;
mod join;
mod part;
mod places;
mod profile;
mod quality;
mod roadside;
mod segments;
mod shown;
mod steady;
mod survey;
mod telling;
mod tilt;
pub mod track;
pub mod trend;
mod turned;
mod vertical_curves;

pub use alike::{Match, lie_on_each_other};
pub use combine::combine;
pub use curves::{Curve, Turn};
pub use document::{Course, CourseKind, Document};
pub use doubt::Doubt;
pub use error::{Bound, FileError, Foreign, Refusal};
pub use finding::{Encoding, Finding, FindingKind, Unassessed};
pub use gpx::read;
pub use join::{Leg, join};
pub(crate) use places::OWN_MARK;
pub use places::{Place, PlaceKind};
pub use quality::{Class, Quality};
pub use roadside::{PostedLimit, Roadside};
pub use segments::GradeSegment;
pub use survey::survey;

use crate::atmosphere::density_ratio;
use crate::units::Metres;
use alone::Alone;
use serde::{Deserialize, Serialize};

/// A stretch of road that gets no grade and no advice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Span {
    /// Grid index of its start.
    pub from: usize,
    /// Grid index of its end; greater than `from`.
    pub to: usize,
    /// Reason why it gets none.
    pub why: Unassessed,
}

/// A road on a uniform grid, cleaned, filtered and judged.
///
/// A road has `cells()` cells and one grid point more. Invariants: heights are finite; cells
/// that cannot be trusted are marked; segments tile the assessed cells without overlap and keep
/// the whole drop of each assessed span.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(try_from = "Parts", into = "Parts")]
pub struct Road {
    name: String,
    step_m: f64,
    heights_m: Vec<f64>,
    recorded_m: Vec<f64>,
    surface_m: Vec<f64>,
    doubt: Doubt,
    /// The recordings of a combined road; empty for a road that is one recording.
    alone: Vec<Alone>,
    density_ratios: Vec<f64>,
    grades: Vec<f64>,
    assessed: Vec<bool>,
    unassessed: Vec<Span>,
    segments: Vec<GradeSegment>,
    curves: Vec<Curve>,
    quality: Quality,
    positions: Vec<(f64, f64)>,
    shape: geo::LineString<f64>,
    places: Vec<Place>,
    limits: Vec<PostedLimit>,
    findings: Vec<Finding>,
    /// Place of each finding on the grid. Places in metres follow from these, so that reversing twice gives
    /// equal numbers.
    finding_spans: Vec<(Option<usize>, Option<usize>)>,
}

/// What a survey found, from which a road is made.
#[derive(Serialize, Deserialize)]
struct Parts {
    name: String,
    step_m: f64,
    heights_m: Vec<f64>,
    recorded_m: Vec<f64>,
    surface_m: Vec<f64>,
    doubt: Doubt,
    alone: Vec<Alone>,
    unassessed: Vec<Span>,
    segments: Vec<GradeSegment>,
    curves: Vec<Curve>,
    quality: Quality,
    positions: Vec<(f64, f64)>,
    places: Vec<Place>,
    limits: Vec<PostedLimit>,
    findings: Vec<Finding>,
}

impl Road {
    fn from_parts(parts: Parts) -> Road {
        let cells = parts.heights_m.len() - 1;
        let mut assessed = vec![true; cells];
        for span in &parts.unassessed {
            assessed[span.from..span.to].fill(false);
        }
        let grades = parts.heights_m.windows(2).map(|pair| (pair[1] - pair[0]) / parts.step_m).collect();
        let index = |at_m: f64| ((at_m / parts.step_m).round().max(0.0) as usize).min(cells);
        let finding_spans = parts
            .findings
            .iter()
            .map(|finding| (finding.from_m.map(index), finding.to_m.map(index)))
            .collect();
        let shape = if parts.positions.is_empty() {
            line_east(cells, parts.step_m)
        } else {
            local_shape(&parts.positions)
        };
        let mut road = Road {
            name: parts.name,
            step_m: parts.step_m,
            density_ratios: parts.heights_m.iter().map(|h| density_ratio(Metres(*h))).collect(),
            heights_m: parts.heights_m,
            recorded_m: parts.recorded_m,
            surface_m: parts.surface_m,
            doubt: parts.doubt,
            alone: parts.alone,
            grades,
            assessed,
            unassessed: parts.unassessed,
            segments: parts.segments,
            curves: parts.curves,
            quality: parts.quality,
            positions: parts.positions,
            shape,
            places: parts.places,
            limits: parts.limits,
            findings: parts.findings,
            finding_spans,
        };
        road.place_findings();
        road
    }

    /// A road whose heights are known: nothing is cleaned or filtered, and the quality is good by definition.
    ///
    /// `step_m` is above 0 and at most 50; there are at least two heights, all finite, metres. The road has
    /// no place on earth: [`Road::positions`] is empty and its shape is a straight line.
    ///
    /// ```
    /// use solver::Road;
    ///
    /// // 2 km of −6 %, a height every 10 m.
    /// let heights = (0..=200).map(|k| 900.0 - 0.6 * f64::from(k)).collect();
    /// let road = Road::from_heights("hill", 10.0, heights)?;
    /// assert_eq!(road.length_m(), 2_000.0);
    /// assert!((road.mean_grade(0, road.cells()) + 0.06).abs() < 1e-9);
    /// # Ok::<(), solver::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`FileError::BadHeights`] where the heights or the step cannot be used.
    pub fn from_heights(name: &str, step_m: f64, heights_m: Vec<f64>) -> Result<Road, FileError> {
        if let Some(index) = heights_m.iter().position(|h| !h.is_finite()) {
            return Err(FileError::BadHeights { index });
        }
        if heights_m.len() < 2 || !(step_m > 0.0 && step_m <= 50.0) {
            return Err(FileError::BadHeights { index: 0 });
        }
        let whole = 0..heights_m.len() - 1;
        let spans = std::slice::from_ref(&whole);
        let roughness = quality::roughness(&heights_m, spans, step_m);
        Ok(Road::from_parts(Parts {
            name: name.to_owned(),
            step_m,
            segments: segments::split(&heights_m, spans, step_m, Class::Good),
            recorded_m: heights_m.clone(),
            surface_m: heights_m.clone(),
            doubt: Doubt::NONE,
            alone: Vec::new(),
            heights_m,
            unassessed: Vec::new(),
            curves: Vec::new(),
            quality: Quality { roughness_before: roughness, roughness_after: roughness, class: Class::Good },
            positions: Vec::new(),
            places: Vec::new(),
            limits: Vec::new(),
            findings: Vec::new(),
        }))
    }

    /// The name of the course; it may be empty.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Horizontal length, metres.
    pub fn length_m(&self) -> f64 {
        self.cells() as f64 * self.step_m
    }

    /// Distance between grid points, metres: close to 10, chosen so that the grid ends where the road does.
    pub fn step_m(&self) -> f64 {
        self.step_m
    }

    /// Number of cells; there is one grid point more.
    pub fn cells(&self) -> usize {
        self.grades.len()
    }

    /// Filtered heights at grid points, metres. They are finite everywhere, and straight across stretches
    /// that are not assessed.
    pub fn heights_m(&self) -> &[f64] {
        &self.heights_m
    }

    /// Recorded heights at grid points before bridging and filtering, metres; NaN where missing.
    pub fn recorded_m(&self) -> &[f64] {
        &self.recorded_m
    }

    /// Heights at grid points that the plan reads, metres: recorded, mended and filled, but not filtered.
    /// They are finite everywhere, and straight across unknown stretches.
    pub fn surface_m(&self) -> &[f64] {
        &self.surface_m
    }

    /// How far height differences of the road may be off.
    pub fn doubt(&self) -> Doubt {
        self.doubt
    }

    /// Density of the standard atmosphere at grid points over that at sea level.
    pub fn density_ratios(&self) -> &[f64] {
        &self.density_ratios
    }

    /// Grade of each cell: rise over horizontal distance, negative downhill.
    pub fn grades(&self) -> &[f64] {
        &self.grades
    }

    /// For each cell, whether its grade may be used.
    pub fn assessed(&self) -> &[bool] {
        &self.assessed
    }

    /// Stretches with one grade each; they tile the assessed cells.
    pub fn segments(&self) -> &[GradeSegment] {
        &self.segments
    }

    /// Curves in plan, in the order of the road. There are none where the file has no points, and none on a
    /// road made from heights. Curves are known where heights are missing, too.
    pub fn curves(&self) -> &[Curve] {
        &self.curves
    }

    /// Stretches that are not assessed, in order.
    pub fn unassessed(&self) -> &[Span] {
        &self.unassessed
    }

    /// How far the heights can be trusted.
    pub fn quality(&self) -> Quality {
        self.quality
    }

    /// Shortest length over which a grade may be quoted, metres.
    pub fn base_length_m(&self) -> f64 {
        self.quality.class.base_length_m()
    }

    /// Mean grade between two grid points. Indices beyond the end mean the end; 0 between a point and itself.
    /// An unassessed stretch counts as a straight line.
    pub fn mean_grade(&self, from: usize, to: usize) -> f64 {
        let last = self.cells();
        let (from, to) = (from.min(last), to.min(last));
        if from == to {
            return 0.0;
        }
        let run_m = (to as f64 - from as f64) * self.step_m;
        (self.heights_m[to] - self.heights_m[from]) / run_m
    }

    /// The steepest downhill stretch of `window_m` between two grid points: its start and its mean grade
    /// (negative). `None` if no assessed window fits or none goes downhill.
    pub fn steepest(&self, from: usize, to: usize, window_m: f64) -> Option<(usize, f64)> {
        let (to, width) = (to.min(self.cells()), profile::cells_in(window_m, self.step_m));
        let mut best: Option<(usize, f64)> = None;
        let mut known = 0;
        for end in from + 1..=to {
            known = if self.assessed[end - 1] { known + 1 } else { 0 };
            if known < width {
                continue;
            }
            let grade = self.mean_grade(end - width, end);
            if grade < best.map_or(0.0, |(_, steepest)| steepest) {
                best = Some((end - width, grade));
            }
        }
        best
    }

    /// The road in plan at grid points: metres east and north of the middle of its extent. It is true to
    /// scale within 1 % on roads that span less than 50 km from south to north.
    pub fn shape(&self) -> &geo::LineString<f64> {
        &self.shape
    }

    /// Latitude and longitude of each grid point, degrees; empty for a road made from heights.
    pub fn positions(&self) -> &[(f64, f64)] {
        &self.positions
    }

    /// Places on the road, in its order: waypoints of the file, or those that a person entered.
    pub fn places(&self) -> &[Place] {
        &self.places
    }

    /// What was found and repaired, in the order of processing.
    pub fn findings(&self) -> &[Finding] {
        &self.findings
    }

    /// Sets the places of the findings from their grid indices.
    fn place_findings(&mut self) {
        let step_m = self.step_m;
        for (finding, (from, to)) in self.findings.iter_mut().zip(&self.finding_spans) {
            finding.from_m = from.map(|i| i as f64 * step_m);
            finding.to_m = to.map(|i| i as f64 * step_m);
        }
    }
}

/// Metres east and north of the middle of the extent, with the radii of its middle latitude.
fn local_shape(positions: &[(f64, f64)]) -> geo::LineString<f64> {
    let (lat0, lon0) = positions[0];
    let turns: Vec<f64> = positions.iter().map(|(_, lon)| track::turn_deg(lon0, *lon)).collect();
    let middle = |low: f64, high: f64| 0.5 * (low + high);
    let range = |values: &mut dyn Iterator<Item = f64>| {
        values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| (low.min(v), high.max(v)))
    };
    let (south, north) = range(&mut positions.iter().map(|(lat, _)| *lat));
    let (west, east) = range(&mut turns.iter().copied());
    let (lat_m, lon_m) = (middle(south, north), middle(west, east));
    debug_assert!(lat0 >= south && lat0 <= north, "the first point lies within the extent");
    let (meridian, parallel) = track::radii_m(lat_m);
    let place = |(position, turn): (&(f64, f64), &f64)| geo::Coord {
        x: (turn - lon_m).to_radians() * parallel,
        y: (position.0 - lat_m).to_radians() * meridian,
    };
    geo::LineString(positions.iter().zip(&turns).map(place).collect())
}

fn line_east(cells: usize, step_m: f64) -> geo::LineString<f64> {
    geo::LineString((0..=cells).map(|i| geo::Coord { x: i as f64 * step_m, y: 0.0 }).collect())
}
