//! Invented roads built into the page: their truth, their places, and the file of a drive.

use super::{Drive, Instrument, Mark, Tangent, TrueRoad, gpx_text};

/// A road of the page's own, lying in the open ocean.
#[derive(Clone, Debug)]
pub struct BuiltIn {
    /// The name of its file in `public/`.
    pub file: &'static str,
    /// Its name in the file.
    pub name: &'static str,
    /// Its truth.
    pub road: TrueRoad,
    /// Distance between recorded points, metres.
    pub spacing_m: f64,
    /// Seed of the errors of recording.
    pub seed: u64,
    /// Places: metres from the start, name, GPX `type`.
    pub places: Vec<(f64, &'static str, &'static str)>,
}

impl BuiltIn {
    /// The GPX text of a recorder's drive along it; coordinates to 0.1 m.
    #[must_use]
    pub fn text(&self) -> String {
        let samples = Drive::new(Instrument::Recorder, self.spacing_m, self.seed).record(&self.road);
        let distances: Vec<f64> = self.places.iter().map(|(s_m, _, _)| *s_m).collect();
        let marks: Vec<Mark> = self
            .places
            .iter()
            .zip(self.road.plan.places(&distances))
            .map(|((s_m, name, kind), (lat_deg, lon_deg))| Mark {
                lat_deg,
                lon_deg,
                height_m: self.road.alignment.height_m(*s_m),
                name: (*name).to_owned(),
                kind: (*kind).to_owned(),
            })
            .collect();
        gpx_text(self.name, &samples, &marks, 6)
    }
}

/// A tangent in words: length in metres, grade in percent, parabola in metres.
pub(super) fn tangent(length_m: f64, percent: f64, curve_m: f64) -> Tangent {
    Tangent { length_m, grade: percent / 100.0, curve_m }
}
