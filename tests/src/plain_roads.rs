//! Roads of straight legs, as GPX files: for tests of the page and of its workers.

/// A road that falls 8 % for 5 km after 2 km of level, as a GPX file of points 20 m apart.
#[must_use]
pub fn hill() -> Vec<u8> {
    road("Test hill", &[(100, 0.0), (250, -1.6), (100, 0.0)])
}

/// A road of legs, each so many points 20 m apart with this rise, m, between two of them.
#[must_use]
pub fn road(name: &str, legs: &[(u32, f64)]) -> Vec<u8> {
    let mut text = format!("<gpx version=\"1.1\"><trk><name>{name}</name><trkseg>");
    let (mut height, mut point) = (900.0, 0_u32);
    for (points, rise) in legs {
        for _ in 0..*points {
            height += rise;
            let lat = -40.0 + f64::from(point) * 20.0 / 111_000.0;
            text.push_str(&format!("<trkpt lat=\"{lat:.7}\" lon=\"-20\"><ele>{height:.1}</ele></trkpt>"));
            point += 1;
        }
    }
    text.push_str("</trkseg></trk></gpx>");
    text.into_bytes()
}
