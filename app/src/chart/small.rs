//! A road as small as a line of text: its heights, with its descents dark.

use super::decimate::{clip, lines};
use super::markup::Markup;
use super::path::Path;
use super::picture::RoadPicture;
use super::scale::Scale;
use super::window::Window;

/// Draws a road of this size, px. It fills the width, whatever its length.
#[must_use]
pub(crate) fn draw(picture: &RoadPicture, (width, height): (f64, f64)) -> String {
    let whole = Window::whole(picture.length_m());
    let across = Scale::new((0.0, whole.to), (0.0, width));
    let (low, high) = picture.heights_in(whole);
    // A level road stays level: 60 m fill the height at least.
    let up = Scale::new((low - 0.1 * (high - low).max(60.0), high.max(low + 60.0)), (height, 2.0));
    let line = lines(&picture.heights_m, picture.step(), whole, &across, &up).concat();
    let mut ground = Path::default();
    ground.area(&line, height);
    let mut descents = Path::default();
    for descent in &picture.descents {
        let [from, to] = [descent.from, descent.to].map(|it| across.at(picture.place_of(it)));
        descents.area(&clip(&line, from, to), height);
    }
    let mut road = Path::default();
    road.polyline(&line);
    let mut layer = Markup::default();
    layer.path("ground", &ground);
    layer.path("down", &descents);
    layer.path("road", &road);
    layer.into_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chart::sample;

    #[test]
    fn a_small_road_stays_within_its_size() {
        let text = draw(&sample::pass(), (94.0, 22.0));
        let numbers = text.split(|it: char| !(it.is_ascii_digit() || it == '.' || it == '-'));
        let numbers: Vec<f64> = numbers.filter_map(|it| it.parse().ok()).collect();
        assert!(numbers.len() > 50);
        assert!(numbers.iter().all(|it| (-0.1..=94.1).contains(it)), "{text}");
        assert_eq!(text.matches("<path").count(), 3);
    }
}
