//! GPX text of a drive.

use super::Sample;
use std::fmt::Write;

/// A waypoint to be written.
#[derive(Clone, Debug)]
pub struct Mark {
    /// Latitude, degrees.
    pub lat_deg: f64,
    /// Longitude, degrees.
    pub lon_deg: f64,
    /// Height, metres.
    pub height_m: f64,
    /// Name.
    pub name: String,
    /// GPX `type`.
    pub kind: String,
}

/// A GPX 1.1 file with one track of one segment. Places to 1 cm (7 decimals), heights to 1 cm.
#[must_use]
pub fn gpx_text(name: &str, samples: &[Sample], marks: &[Mark], decimals: usize) -> String {
    let mut text = String::with_capacity(80 * (samples.len() + 4 * marks.len()) + 400);
    text.push_str("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.push_str(
        "<gpx version=\"1.1\" creator=\"road generator\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n",
    );
    for mark in marks {
        line(
            &mut text,
            format_args!(
                "<wpt lat=\"{:.decimals$}\" lon=\"{:.decimals$}\"><ele>{:.1}</ele><name>{}</name><type>{}</type></wpt>",
                mark.lat_deg, mark.lon_deg, mark.height_m, mark.name, mark.kind
            ),
        );
    }
    line(&mut text, format_args!("<trk><name>{name}</name><trkseg>"));
    for sample in samples {
        let height = trimmed(sample.height_m);
        line(
            &mut text,
            format_args!(
                "<trkpt lat=\"{:.decimals$}\" lon=\"{:.decimals$}\"><ele>{height}</ele></trkpt>",
                sample.lat_deg, sample.lon_deg
            ),
        );
    }
    text.push_str("</trkseg></trk>\n</gpx>\n");
    text
}

fn line(text: &mut String, content: std::fmt::Arguments<'_>) {
    // Writing to a string cannot fail.
    let _never_fails = text.write_fmt(content);
    text.push('\n');
}

/// Two decimals at most, none where they are zero.
fn trimmed(height_m: f64) -> String {
    let text = format!("{height_m:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
