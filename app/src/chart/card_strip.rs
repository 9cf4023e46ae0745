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

/// Draws the strip. `mile` is what stands before the marks in miles.
#[must_use]
pub(crate) fn draw(picture: &RoadPicture, descents: &[Labelled], marker: Marker, mile: &str) -> Markup {
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
    for (units, unit, y) in [(Units::Metric, "km", FOOT + 12.0), (Units::Imperial, mile, FOOT + 25.0)] {
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
    let ticks = nice_ticks(a.min(b), a.max(b), 8);
    for mark in ticks.values {
        let x = across.at(marker.place_of(mark * per));
        // The unit stands at the beginning.
        if (34.0..=SIZE.0 - 12.0).contains(&x) {
            layer.text(class, Anchor::Middle, (x, y), &format::mark(mark, ticks.decimals));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chart::sample;

    /// The figures of both axes, from what is drawn.
    fn figures(markup: &str, class: &str) -> Vec<f64> {
        let texts = markup.split("<text ").filter(|it| it.contains(&format!("class=\"{class}\"")));
        let inner = texts.filter_map(|it| Some(it.split_once('>')?.1.split_once("</text>")?.0));
        inner.filter_map(|it| it.replace('−', "-").replace(',', "").parse().ok()).collect()
    }

    #[test]
    fn marks_are_told_apart_however_short_the_road() {
        for (points, at_start_m, counts_down) in [
            (60, 0.0, false),
            (361, 0.0, false),
            (361, 12_000.0, true),
            (2_401, 0.0, false),
            (361, 998_000.0, false),
        ] {
            let mut picture = sample::pass();
            picture.heights_m = picture.heights_m.iter().copied().take(points).collect();
            let marker = Marker { at_start_m, counts_down };
            let text = draw(&picture, &[], marker, "Meile").into_string();
            assert!(text.contains(">Meile</text>") && !text.contains("mile"), "{text}");
            for class in ["card-tick", "card-tick second"] {
                let marks = figures(&text, class);
                assert!(marks.len() >= 3, "{points}: {marks:?}");
                let steps: Vec<f64> = marks.windows(2).map(|it| it[1] - it[0]).collect();
                assert!(steps.iter().all(|it| (it - steps[0]).abs() < 1e-9 && it.abs() > 1e-3), "{marks:?}");
            }
        }
    }
}
