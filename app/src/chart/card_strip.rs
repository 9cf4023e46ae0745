//! The strip profile of the card: black on white, what a printer and a cab lamp can show.

use super::decimate::{clip, lines};
use super::markup::{Anchor, Markup};
use super::path::Path;
use super::picture::RoadPicture;
use super::scale::Scale;
use super::ticks::nice_ticks;
use super::window::Window;
use crate::format::{self, Units};
use crate::marker::Marker;

/// Top of the heights.
const TOP: f64 = 22.0;
/// What is left below the road for its figures.
const BELOW: f64 = 18.0;
/// What is left on either side: room for the unit.
const SIDES: (f64, f64) = (24.0, 5.0);
/// Numbers nearer than this share a label.
const NEAR: f64 = 22.0;

/// What the strip shows.
#[derive(Clone, Copy)]
pub(crate) struct Strip<'a> {
    /// The road.
    pub(crate) picture: &'a RoadPicture,
    /// Its descents, along the road.
    pub(crate) descents: &'a [Labelled],
    /// What was not assessed, by grid points.
    pub(crate) unknown: &'a [(usize, usize)],
    /// What is counted along the road.
    pub(crate) marker: Marker,
    /// In which units.
    pub(crate) units: Units,
    /// What stands before the figures.
    pub(crate) unit: &'a str,
    /// Size of the drawing, px of its own.
    pub(crate) size: (f64, f64),
}

/// A descent on the strip: its number, grid points, and whether it stands on this page.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Labelled {
    pub(crate) number: usize,
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) is_here: bool,
}

/// Draws the strip.
#[must_use]
pub(crate) fn draw(strip: Strip<'_>) -> Markup {
    let Strip { picture, descents, size: (wide, high), .. } = strip;
    let foot = high - BELOW;
    let mut layer = Markup::default();
    let whole = Window::whole(picture.length_m());
    let across = Scale::new((0.0, whole.to), (SIDES.0, wide - SIDES.1));
    let (low, bound) = picture.heights_in(whole);
    let up = Scale::new((low - 0.05 * (bound - low).max(60.0), bound.max(low + 60.0)), (foot, TOP));
    let pieces = lines(&picture.heights_m, picture.step(), whole, &across, &up);
    let line: Vec<(f64, f64)> = pieces.concat();
    let at = |index: usize| across.at(index as f64 * picture.step());
    let below = |from: usize, to: usize| {
        let mut area = Path::default();
        area.area(&clip(&line, at(from), at(to)), foot);
        area
    };
    let mut ground = Path::default();
    ground.area(&line, foot);
    layer.path("card-ground", &ground);
    for it in descents {
        layer.path(if it.is_here { "card-here" } else { "card-other" }, &below(it.from, it.to));
    }
    layer.hatch("card-unknown", "card-hatch", 3.0);
    for (from, to) in strip.unknown {
        layer.path("card-blank", &below(*from, *to));
        layer.patterned("card-blank-lines", "card-unknown", &below(*from, *to));
    }
    let mut road = Path::default();
    pieces.iter().for_each(|piece| road.polyline(piece));
    layer.path("card-road", &road);
    layer.line("card-axis", (SIDES.0, foot), (wide - SIDES.1, foot));
    for run in descents.chunk_by(|a, b| a.is_here && b.is_here) {
        if let ([first, ..], [.., last]) = (run, run) {
            let (from, to) = ((at(first.from), foot + 2.5), (at(last.to), foot + 2.5));
            if first.is_here {
                layer.line("card-underline", from, to);
            }
        }
    }
    numbers(&mut layer, descents, &at);
    axis(&mut layer, &across, strip, foot);
    layer
}

/// The numbers of the descents above them; those too near to each other share one label.
fn numbers(layer: &mut Markup, descents: &[Labelled], at: &impl Fn(usize) -> f64) {
    let middle = |it: &Labelled| 0.5 * (at(it.from) + at(it.to));
    let mut end = 0.0;
    for group in descents.chunk_by(|a, b| a.is_here == b.is_here && middle(b) - middle(a) < NEAR) {
        let ([first, ..], [.., last]) = (group, group) else { continue };
        let text = match group.len() {
            1 => first.number.to_string(),
            _ => format!("{}–{}", first.number, last.number),
        };
        let half = 3.8 * text.chars().count() as f64;
        let x = (0.5 * (middle(first) + middle(last))).max(end + half);
        end = x + half + 3.0;
        layer.text(
            if first.is_here { "card-number" } else { "card-number other" },
            Anchor::Middle,
            (x, 11.0),
            &text,
        );
        for it in group {
            layer.line("card-edge", (middle(it), 14.0), (middle(it), TOP - 2.0));
        }
    }
}

/// Figures below the road.
fn axis(layer: &mut Markup, across: &Scale, strip: Strip<'_>, foot: f64) {
    let per = strip.units.metres_per_distance();
    let (marker, length) = (strip.marker, strip.picture.length_m());
    let (a, b) = (marker.at(0.0) / per, marker.at(length) / per);
    let y = foot + 14.0;
    layer.text("card-tick", Anchor::Start, (0.0, y), strip.unit);
    let ticks = nice_ticks(a.min(b), a.max(b), 8);
    for mark in ticks.values {
        let x = across.at(marker.place_of(mark * per));
        // The unit stands at the beginning.
        let begin = 7.0 * strip.unit.chars().count() as f64 + 10.0;
        if (begin..=strip.size.0 - 12.0).contains(&x) {
            layer.text("card-tick", Anchor::Middle, (x, y), &format::mark(mark, ticks.decimals));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chart::sample;

    fn strip<'a>(picture: &'a RoadPicture, descents: &'a [Labelled], marker: Marker) -> Strip<'a> {
        let (unknown, units, size) = (&[][..], Units::Metric, (718.0, 96.0));
        Strip { picture, descents, unknown, marker, units, unit: "km", size }
    }

    fn texts(markup: &str, class: &str) -> Vec<String> {
        let texts = markup.split("<text ").filter(|it| it.contains(&format!("class=\"{class}\"")));
        texts.filter_map(|it| Some(it.split_once('>')?.1.split_once("</text>")?.0.to_owned())).collect()
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
            for (units, unit) in [(Units::Metric, "km"), (Units::Imperial, "Meile")] {
                let text = draw(Strip { units, unit, ..strip(&picture, &[], marker) }).into_string();
                assert!(text.contains(&format!(">{unit}</text>")), "{text}");
                let number = |it: &String| it.replace('−', "-").replace(',', "").parse().ok();
                let marks: Vec<f64> = texts(&text, "card-tick").iter().filter_map(number).collect();
                assert!(marks.len() >= 3, "{points}: {marks:?}");
                let steps: Vec<f64> = marks.windows(2).map(|it| it[1] - it[0]).collect();
                assert!(steps.iter().all(|it| (it - steps[0]).abs() < 1e-9 && it.abs() > 1e-3), "{marks:?}");
            }
        }
    }

    #[test]
    fn every_descent_is_drawn_and_those_of_the_page_are_underlined() {
        let picture = sample::pass();
        let last = picture.points() - 1;
        let descent = |number: usize| Labelled {
            number,
            from: (number - 1) * last / 20,
            to: (number - 1) * last / 20 + last / 40,
            is_here: (5..=9).contains(&number),
        };
        let descents: Vec<Labelled> = (1..=20).map(descent).collect();
        let text = draw(strip(&picture, &descents, Marker::NONE)).into_string();
        let count = |class: &str| text.matches(&format!("class=\"{class}\"")).count();
        assert_eq!((count("card-here"), count("card-other"), count("card-edge")), (5, 15, 20));
        assert_eq!(count("card-underline"), 1, "they follow each other");
        let numbers = |class| {
            texts(&text, class)
                .iter()
                .map(|it| match it.split_once('–') {
                    Some((a, b)) => {
                        1 + b.parse::<usize>().expect("a number") - a.parse::<usize>().expect("a number")
                    }
                    None => 1,
                })
                .sum::<usize>()
        };
        assert_eq!((numbers("card-number"), numbers("card-number other")), (5, 15));
    }
}
