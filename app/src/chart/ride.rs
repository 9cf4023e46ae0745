//! The profile that a ride goes along, with the truck on it; and the truck with what acts on it.

use super::decimate::lines;
use super::markup::{Anchor, Markup};
use super::path::Path;
use super::picture::RoadPicture;
use super::scale::Scale;
use super::ticks::nice_ticks;
use super::window::Window;
use crate::format::Units;

/// Width of the drawings, px of their own.
pub(crate) const WIDTH: f64 = 1_200.0;
/// Room at both sides, px: for the truck and the last figure.
const SIDE: f64 = 34.0;
/// Room below the profile for figures, px.
const FIGURES: f64 = 38.0;
/// Room above it for the truck, px.
const ABOVE: f64 = 26.0;

/// Scales of a profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Profile {
    across: Scale,
    up: Scale,
    height: f64,
}

impl Profile {
    /// The profile of a road in a drawing of this height.
    pub(crate) fn new(picture: &RoadPicture, height: f64) -> Self {
        let whole = Window::whole(picture.length_m());
        let (low, high) = picture.heights_in(whole);
        let room = 0.1 * (high - low).max(40.0);
        Self {
            across: Scale::new((0.0, whole.to), (SIDE, WIDTH - SIDE)),
            up: Scale::new((low - room, high.max(low + 40.0)), (height - FIGURES, ABOVE)),
            height,
        }
    }

    /// Where a distance from the start lies, px from the left.
    pub(crate) fn x(&self, at_m: f64) -> f64 {
        self.across.at(at_m)
    }

    /// The distance of a place in the drawing, m.
    pub(crate) fn distance(&self, x: f64) -> f64 {
        self.across.back(x)
    }

    /// The point of the road at a distance from the start, px.
    pub(crate) fn point(&self, picture: &RoadPicture, at_m: f64) -> (f64, f64) {
        let at = at_m / picture.step();
        let before = (at.max(0.0) as usize).min(picture.points().saturating_sub(1));
        let height = |index: usize| picture.heights_m.get(index).map_or(0.0, |it| f64::from(*it));
        let (a, b) = (height(before), height((before + 1).min(picture.points().saturating_sub(1))));
        (self.x(at_m), self.up.at(a + (b - a) * (at - before as f64).clamp(0.0, 1.0)))
    }

    /// Draws road, descents and distances.
    pub(crate) fn draw(&self, picture: &RoadPicture, units: Units) -> Markup {
        let mut layer = Markup::default();
        let whole = Window::whole(picture.length_m());
        let base = self.height - FIGURES;
        let line: Vec<(f64, f64)> =
            lines(&picture.heights_m, picture.step(), whole, &self.across, &self.up).concat();
        let mut ground = Path::default();
        ground.area(&line, base);
        layer.path("ride-ground", &ground);
        for descent in &picture.descents {
            let ends = [descent.from, descent.to].map(|it| it as f64 * picture.step());
            let within: Vec<(f64, f64)> = super::decimate::clip(&line, self.x(ends[0]), self.x(ends[1]));
            let mut path = Path::default();
            path.polyline(&within);
            layer.path("ride-descent", &path);
        }
        let mut road = Path::default();
        road.polyline(&line);
        layer.path("ride-road", &road);
        let unit = units.metres_per_distance();
        let ticks = nice_ticks(0.0, whole.to / unit, 8);
        let last = ticks.values.len().saturating_sub(1);
        for (number, mark) in ticks.values.iter().enumerate() {
            let x = self.x(mark * unit);
            layer.line("ride-tick", (x, base), (x, base + 6.0));
            let figure = format!("{mark:.*}", ticks.decimals);
            let text = if number == last { format!("{figure}\u{a0}{}", units.distance()) } else { figure };
            layer.text("ride-figure", Anchor::Middle, (x, base + 32.0), &text);
        }
        layer
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chart::sample;

    #[test]
    fn the_truck_is_on_the_road() {
        let picture = sample::pass();
        let profile = Profile::new(&picture, 160.0);
        let text = profile.draw(&picture, Units::Metric).into_string();
        assert_eq!(text.matches("ride-descent").count(), picture.descents.len());
        assert!(text.contains("km") && !text.contains("NaN"));
        let (start, _) = profile.point(&picture, 0.0);
        let (end, _) = profile.point(&picture, picture.length_m());
        assert!((start - SIDE).abs() < 0.5 && (end - WIDTH + SIDE).abs() < 0.5, "{start} {end}");
        let high = picture.heights_m.iter().copied().fold(f32::MIN, f32::max);
        let top = picture.heights_m.iter().position(|it| *it >= high).expect("a summit");
        let (x, y) = profile.point(&picture, top as f64 * picture.step());
        assert!(y < ABOVE + 12.0, "the summit is at the top: {y}");
        assert!((profile.distance(x) - top as f64 * picture.step()).abs() < 1.0);
    }
}
