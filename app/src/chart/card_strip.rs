//! The strip profile of the card: black on white, what a printer and a cab lamp can show.

use super::decimate::lines;
use super::markup::{Anchor, Markup};
use super::path::Path;
use super::picture::RoadPicture;
use super::scale::Scale;
use super::ticks::nice_ticks;
use super::window::Window;
use crate::format::{self, Units};
use crate::marker::Marker;

/// Size of the drawing, px of its own.
pub(crate) const SIZE: (f64, f64) = (720.0, 150.0);
/// Top of the heights, their foot, and the base line of the lower scale.
const TOP: f64 = 40.0;
const FOOT: f64 = 122.0;

/// A descent on the strip: its number, grid points, and what stands above it.
pub(crate) struct Labelled {
    pub(crate) number: usize,
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) label: String,
}

/// Draws the strip.
#[must_use]
pub(crate) fn draw(picture: &RoadPicture, descents: &[Labelled], marker: Marker) -> Markup {
    let mut layer = Markup::default();
    let whole = Window::whole(picture.length_m());
    let across = Scale::new((0.0, whole.to), (4.0, SIZE.0 - 4.0));
    let (low, high) = picture.heights_in(whole);
    let up = Scale::new((low - 0.05 * (high - low).max(60.0), high.max(low + 60.0)), (FOOT, TOP));
    let pieces = lines(&picture.heights_m, picture.step(), whole, &across, &up);
    let mut road = Path::default();
    for piece in &pieces {
        road.polyline(piece);
    }
    let line: Vec<(f64, f64)> = pieces.concat();
    for descent in descents {
        let (x0, x1) =
            (across.at(descent.from as f64 * picture.step()), across.at(descent.to as f64 * picture.step()));
        let mut area = Path::default();
        area.area(&super::decimate::clip(&line, x0, x1), FOOT);
        layer.path("card-fall", &area);
        layer.line("card-edge", (x0, TOP - 8.0), (x0, FOOT));
        layer.line("card-edge", (x1, TOP - 8.0), (x1, FOOT));
        let middle = 0.5 * (x0 + x1);
        layer.text("card-number", Anchor::Middle, (middle, 12.0), &descent.number.to_string());
        if x1 - x0 >= 9.0 * descent.label.chars().count() as f64 {
            layer.text("card-gear", Anchor::Middle, (middle, 29.0), &descent.label);
        }
    }
    layer.path("card-road", &road);
    layer.line("card-axis", (4.0, FOOT), (SIZE.0 - 4.0, FOOT));
    for (units, unit, y) in [(Units::Metric, "km", FOOT + 12.0), (Units::Imperial, "mile", FOOT + 25.0)] {
        axis(&mut layer, &across, (whole.to, y), units, unit, marker);
    }
    layer
}

/// Marks of one unit below the road.
fn axis(
    layer: &mut Markup,
    across: &Scale,
    (length, y): (f64, f64),
    units: Units,
    unit: &str,
    marker: Marker,
) {
    let per = units.metres_per_distance();
    let (a, b) = (marker.at(0.0) / per, marker.at(length) / per);
    // Both rows find no room on a phone: the style leaves the second out there.
    let class = match units {
        Units::Metric => "card-tick",
        Units::Imperial => "card-tick second",
    };
    layer.text(class, Anchor::Start, (4.0, y), unit);
    for mark in nice_ticks(a.min(b), a.max(b), 8).values {
        let metres =
            if marker.counts_down { marker.at_start_m - mark * per } else { mark * per - marker.at_start_m };
        let x = across.at(metres);
        // The unit stands at the beginning.
        if (34.0..=SIZE.0 - 12.0).contains(&x) {
            layer.text(class, Anchor::Middle, (x, y), &format::whole(mark));
        }
    }
}
