//! GEODESIC. Distances on the WGS 84 ellipsoid.
//!
//! Source: Karney 2013, “Algorithms for geodesics”, Journal of Geodesy 87, 43–55, and the test
//! cases of GeographicLib made from its GeodTest set; the lines below were copied from the unit
//! tests of the crate geographiclib-rs 0.2.7, `src/geodesic.rs`, which carries them.

use super::{Expected, Origin, Row, Status, near, number};
use geo::{Distance, Geodesic, Point};
use solver::road::track;

const PUBLISHED: Origin = Origin {
    key: "GEODESIC",
    status: Status::Printed,
    source: "Karney 2013, Journal of Geodesy 87: lines of the GeodTest set, distances held to a billionth",
};
const OWN_BOUND: Origin = Origin {
    key: "GEODESIC",
    status: Status::Computed,
    source: "The geodesic of the lines above; the bound is our own",
};

/// lat1, lon1, lat2, lon2 in degrees, s12 in metres.
const GEODTEST: [(f64, f64, f64, f64, f64); 8] = [
    (35.60777, -139.44815, -11.17491, -69.95921, 8_935_244.560_481_83),
    (55.52454, 106.05087, 77.03196, 197.18234, 4_105_086.171_392_44),
    (-21.97856, 142.59065, 41.84138, 98.56635, 8_394_328.894_657_671),
    (-66.99028, 112.2363, -12.70631, 285.90344, 11_150_344.231_208_025),
    (-17.42761, 173.34268, -15.84784, 5.93557, 16_076_603.163_118_068),
    (32.84994, 48.28919, -56.28556, 202.29132, 16_727_068.943_816_46),
    (6.96833, 52.74123, -7.39675, 206.17291, 17_102_477.249_695_84),
    (-50.56724, -16.30485, -33.56571, -94.97412, 6_455_670.511_866_87),
];
/// Tolerance as a share of the distance.
const BILLIONTH: f64 = 1e-9;

fn karney_m(lat1: f64, lon1: f64, lat2: f64, lon2: f64) -> f64 {
    Geodesic.distance(Point::new(lon1, lat1), Point::new(lon2, lat2))
}

/// Largest relative difference between our step and the geodesic over all directions, for steps of this
/// length at this latitude.
fn worst(lat_deg: f64, length_m: f64) -> f64 {
    let (meridian, parallel) = track::radii_m(lat_deg);
    (0..36)
        .map(|k| f64::from(k) * 10.0_f64.to_radians())
        .map(|bearing| {
            let lat2 = lat_deg + (length_m * bearing.cos() / meridian).to_degrees();
            let lon2 = 179.9999 + (length_m * bearing.sin() / parallel).to_degrees();
            let ours = track::step_m(lat_deg, 179.9999, lat2, lon2);
            (ours / karney_m(lat_deg, 179.9999, lat2, lon2) - 1.0).abs()
        })
        .fold(0.0, f64::max)
}

/// First the reference against the published lines, then our own step against the reference.
pub(super) fn distances() -> Vec<Row> {
    let line = |(lat1, lon1, lat2, lon2, s12): (f64, f64, f64, f64, f64)| {
        let place = |lat, lon| format!("{}°, {}°", number(lat, 5), number(lon, 5));
        let what = format!("Distance from {} to {}", place(lat1, lon1), place(lat2, lon2));
        PUBLISHED.row(what, "m", near(s12, s12 * BILLIONTH), karney_m(lat1, lon1, lat2, lon2))
    };
    let mut rows = GEODTEST.map(line).to_vec();
    // Across the date line, where there are roads for trucks. Usual steps of a track are shorter still, where
    // only rounding remains.
    let km = [-55.0, -36.4, 0.0, 20.0, 44.0, 60.0, 71.0, 75.0].map(|lat| (lat, 1_000.0));
    let usual = [-55.0, 0.0, 44.0, 70.0].map(|lat| (lat, 100.0));
    rows.extend(km.into_iter().chain(usual).map(|(lat, length_m)| {
        let what = format!(
            "Largest difference of our steps of {} m at latitude {}° from the geodesic",
            number(length_m, 0),
            trimmed(lat)
        );
        OWN_BOUND.row(what, "µm/km", Expected::LessThan(1.0), worst(lat, length_m) / BILLIONTH)
    }));
    // Long steps are cut into pieces along the straight line in latitude and longitude, which
    // is a little longer than the geodesic.
    let long = track::step_m(46.0, 6.0, 47.5, 9.0) / karney_m(46.0, 6.0, 47.5, 9.0) - 1.0;
    let what = "Difference of one step of 280 km from the geodesic";
    rows.push(OWN_BOUND.row(what, "m/km", Expected::LessThan(0.2), long.abs() * 1e3));
    rows
}

fn trimmed(latitude: f64) -> String {
    number(latitude, usize::from(latitude.fract() != 0.0))
}
