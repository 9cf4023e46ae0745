//! Roads for tests of the page.

/// A road that falls 8 % for 5 km after 2 km of level, as a GPX file of points 20 m apart.
pub(crate) fn hill() -> Vec<u8> {
    let mut text = String::from("<gpx version=\"1.1\"><trk><name>Test hill</name><trkseg>");
    let mut height = 900.0;
    for point in 0..450_u32 {
        let lat = -40.0 + f64::from(point) * 20.0 / 111_000.0;
        if (100..350).contains(&point) {
            height -= 1.6;
        }
        text.push_str(&format!("<trkpt lat=\"{lat:.7}\" lon=\"-20\"><ele>{height:.1}</ele></trkpt>"));
    }
    text.push_str("</trkseg></trk></gpx>");
    text.into_bytes()
}
