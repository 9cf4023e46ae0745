//! The plan shape of the road, north up: the chosen descent is strong, the same cursor, no map.

use super::label::text_width;
use super::labels::Labels;
use super::markup::{Anchor, Markup};
use super::path::Path;
use super::picture::value;
use super::scene::Prepared;
use super::ticks::nice_ticks;
use super::window::Window;

/// Free room about a shape with words, px; the scale bar and the names of the ends stand in it.
const MARGIN: f64 = 22.0;
/// Free room about one without, px.
const BARE_MARGIN: f64 = 8.0;
/// In a smaller drawing the shape fills it, px.
const WORDS_FROM: f64 = 110.0;
/// A lower drawing has no curves, and no names of ends that lie together, px.
const NAMES_FROM: f64 = 150.0;
/// A small shape narrower than this has no words, which would hide it, px.
const NARROW: f64 = 90.0;
/// Text size, px.
const TEXT: f64 = 13.0;
/// Marks of curves nearer than this are one, px.
const BEND_PX: f64 = 4.0;
/// A curve has a mark where it asks for less than this share of the limit.
const SLOW_SHARE: f32 = 0.6;
/// Points of the shape nearer than this are one, px.
const FINEST_PX: f64 = 1.5;

/// The road in plan, in px.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Shape {
    /// Size of the drawing, px.
    size: (f64, f64),
    /// Metres of one px.
    metres_per_px: f64,
    /// Place of the shape's middle, m east and north.
    middle: (f64, f64),
    /// Points kept: grid index, x, y. The first and the last of the road are among them.
    kept: Vec<(usize, f64, f64)>,
}

impl Shape {
    /// The shape for a drawing of this size; `None` where the road has no plan shape.
    #[must_use]
    pub(crate) fn new(prepared: &Prepared, size: (f64, f64)) -> Option<Self> {
        let picture = &prepared.picture;
        let mut box_ = ((f64::INFINITY, f64::NEG_INFINITY), (f64::INFINITY, f64::NEG_INFINITY));
        let place = |index: usize| Some((value(&picture.east_m, index)?, value(&picture.north_m, index)?));
        for (east, north) in (0..picture.points()).filter_map(place) {
            box_.0 = (box_.0.0.min(east), box_.0.1.max(east));
            box_.1 = (box_.1.0.min(north), box_.1.1.max(north));
        }
        let extent = (box_.0.1 - box_.0.0, box_.1.1 - box_.1.0);
        if !extent.0.is_finite() || !extent.1.is_finite() || extent.0.max(extent.1) <= 0.0 {
            return None;
        }
        let margin = if size.0 < WORDS_FROM { BARE_MARGIN } else { MARGIN };
        let room = ((size.0 - 2.0 * margin).max(20.0), (size.1 - 2.0 * margin).max(20.0));
        let mut shape = Self {
            size,
            metres_per_px: (extent.0 / room.0).max(extent.1 / room.1),
            middle: (0.5 * (box_.0.0 + box_.0.1), 0.5 * (box_.1.0 + box_.1.1)),
            kept: Vec::new(),
        };
        let last = picture.points().saturating_sub(1);
        for index in 0..=last {
            let Some((east, north)) = place(index) else { continue };
            let (x, y) = shape.px(east, north);
            let far = |it: &(usize, f64, f64)| (it.1 - x).abs().max((it.2 - y).abs()) >= FINEST_PX;
            if index == last || shape.kept.last().is_none_or(far) {
                shape.kept.push((index, x, y));
            }
        }
        (shape.kept.len() > 1).then_some(shape)
    }

    /// Width of the shape itself, px.
    fn width(&self) -> f64 {
        let ends = |ends: (f64, f64), it: &(usize, f64, f64)| (ends.0.min(it.1), ends.1.max(it.1));
        let (x0, x1) = self.kept.iter().fold((f64::INFINITY, f64::NEG_INFINITY), ends);
        x1 - x0
    }

    fn px(&self, east: f64, north: f64) -> (f64, f64) {
        let x = 0.5 * self.size.0 + (east - self.middle.0) / self.metres_per_px;
        (x, 0.5 * self.size.1 - (north - self.middle.1) / self.metres_per_px)
    }

    /// Px of a grid point.
    #[must_use]
    pub(crate) fn point(&self, prepared: &Prepared, index: usize) -> (f64, f64) {
        let picture = &prepared.picture;
        let east = value(&picture.east_m, index);
        let north = value(&picture.north_m, index);
        east.zip(north).map_or((self.kept[0].1, self.kept[0].2), |(east, north)| self.px(east, north))
    }

    /// The grid point whose place is nearest to (x, y), px.
    #[must_use]
    pub(crate) fn nearest(&self, x: f64, y: f64) -> usize {
        let distance = |it: &(usize, f64, f64)| (it.1 - x) * (it.1 - x) + (it.2 - y) * (it.2 - y);
        let nearest = self.kept.iter().min_by(|a, b| distance(a).total_cmp(&distance(b)));
        nearest.map_or(0, |it| it.0)
    }

    /// Draws the shape: thin all of it, in colour what the window shows and the reading colours, strong the
    /// chosen descent. Words stand where there is room for them.
    #[must_use]
    pub(crate) fn draw(
        &self,
        prepared: &Prepared,
        window: Window,
        chosen: Option<usize>,
        labels: Option<&dyn Labels>,
    ) -> Markup {
        let mut layer = Markup::default();
        let picture = &prepared.picture;
        let tones = &prepared.fill_tones;
        let chosen = chosen.and_then(|number| picture.descent(number));
        let (mut rest, mut casing) = (Path::default(), Path::default());
        let mut coloured: Vec<(u8, Path)> = tones.used().iter().map(|it| (*it, Path::default())).collect();
        for (pair, value) in self.pieces(prepared) {
            let index = (pair[0].0 + pair[1].0) / 2;
            let (from, to) = ((pair[0].1, pair[0].2), (pair[1].1, pair[1].2));
            rest.stretch(from, to);
            if chosen.is_some_and(|it| it.from <= index && index < it.to) {
                casing.stretch(from, to);
            }
            let shown = window.shows(picture.place_of(index));
            if let Some(own) = value.filter(|_| shown) {
                coloured.iter_mut().filter(|it| it.0 == own).for_each(|it| it.1.stretch(from, to));
            }
        }
        layer.path("plan-rest", &rest);
        layer.path("plan-casing", &casing);
        for (value, path) in &coloured {
            layer.path(&format!("plan-road {}", tones.class(*value)), path);
        }
        let words = labels.filter(|_| self.size.1 >= NAMES_FROM || self.width() >= NARROW);
        if self.size.1 >= NAMES_FROM {
            self.draw_bends(&mut layer, prepared);
        }
        self.draw_ends(&mut layer, words);
        let Some(labels) = words else { return layer };
        self.draw_scale_bar(&mut layer, prepared);
        let corner = (self.size.0 - 12.0, 6.0);
        let mut arrow = Path::default();
        arrow.polyline(&[
            (corner.0, corner.1),
            (corner.0 + 5.0, corner.1 + 12.0),
            (corner.0 - 5.0, corner.1 + 12.0),
        ]);
        arrow.close();
        layer.path("north", &arrow);
        layer.text("tick", Anchor::Middle, (corner.0, corner.1 + 25.0), labels.north());
        layer
    }

    /// Neighbouring points with the most severe reading between them. A piece that turns back
    /// on itself within a pixel is drawn all the same: its value is not lost.
    fn pieces<'a>(
        &'a self,
        prepared: &'a Prepared,
    ) -> impl Iterator<Item = (&'a [(usize, f64, f64)], Option<u8>)> + 'a {
        let reading = prepared.fill_tones.reading();
        self.kept.windows(2).map(move |pair| {
            let between = prepared.fill.get(pair[0].0..pair[1].0).unwrap_or(&[]);
            (pair, between.iter().flatten().copied().reduce(|a, b| reading.worse(a, b)))
        })
    }

    /// A ring on each hairpin, a dot on each other curve that asks for much less than the limit,
    /// as far as they lie apart.
    fn draw_bends(&self, layer: &mut Markup, prepared: &Prepared) {
        let picture = &prepared.picture;
        let mut last: Option<(f64, f64)> = None;
        for bend in &picture.bends {
            if !bend.hairpin && bend.speed > SLOW_SHARE * picture.speed_limit {
                continue;
            }
            let at = self.point(prepared, (bend.from + bend.to) / 2);
            let far = last.is_none_or(|it| (it.0 - at.0).abs().max((it.1 - at.1).abs()) >= BEND_PX);
            if far {
                let (class, radius) = if bend.hairpin { ("plan-hairpin", 3.5) } else { ("plan-bend", 2.0) };
                layer.circle(class, at, radius);
                last = Some(at);
            }
        }
    }

    fn draw_ends(&self, layer: &mut Markup, labels: Option<&dyn Labels>) {
        let (Some(first), Some(last)) = (self.kept.first(), self.kept.last()) else { return };
        // Of ends close together the one that lies higher has its name higher.
        let close = (first.1 - last.1).abs() < 60.0 && (first.2 - last.2).abs() < 16.0;
        let shift = if !close {
            0.0
        } else if first.2 <= last.2 {
            -7.0
        } else {
            7.0
        };
        // Names would hide a small shape whose ends lie together.
        let named = labels.filter(|_| !close || self.size.1 >= NAMES_FROM);
        let [from, to] = named.map_or(["", ""], Labels::ends);
        for ((_, x, y), shift, name, class) in
            [(last, -shift, to, "plan-end last"), (first, shift, from, "plan-end")]
        {
            layer.circle(class, (*x, *y), 4.0);
            let width = text_width(name, TEXT);
            let right = x + 9.0 + width <= self.size.0 - 24.0;
            let (anchor, at) = if right { (Anchor::Start, x + 9.0) } else { (Anchor::End, x - 9.0) };
            layer.text("label", anchor, (at, (y + 4.0 + shift).clamp(12.0, self.size.1 - 4.0)), name);
        }
    }

    /// A bar of a round length, a third of the drawing at most.
    fn draw_scale_bar(&self, layer: &mut Markup, prepared: &Prepared) {
        let unit = prepared.units.metres_per_distance();
        let most = 0.34 * self.size.0 * self.metres_per_px / unit;
        let ticks = nice_ticks(0.0, most, 2);
        let Some(length) = ticks.values.last().copied().filter(|it| *it > 0.0) else { return };
        let decimals =
            (0..4).find(|it| (length * 10_f64.powi(*it) - (length * 10_f64.powi(*it)).round()).abs() < 1e-6);
        let decimals = usize::try_from(decimals.unwrap_or(0)).unwrap_or(0);
        let (x, y, width) = (8.0, self.size.1 - 7.0, length * unit / self.metres_per_px);
        let text = format!("{length:.decimals$} {}", prepared.units.distance());
        // On the road it would be read as a part of it.
        let reach = x + width.max(text_width(&text, TEXT)) + 8.0;
        if self.kept.iter().any(|it| it.1 < reach && it.2 > y - 26.0) {
            return;
        }
        let mut bar = Path::default();
        bar.polyline(&[(x, y - 5.0), (x, y), (x + width, y), (x + width, y - 5.0)]);
        layer.path("scale-bar", &bar);
        layer.text("tick haloed", Anchor::Start, (x + 3.0, y - 5.0), &text);
    }
}

#[cfg(test)]
mod tests {
    use super::Shape;
    use crate::chart::reading::Reading;
    use crate::chart::sample;
    use crate::chart::scene::Prepared;
    use crate::format::Units;
    use std::sync::Arc;

    #[test]
    fn the_shape_fits_and_north_is_up() {
        let prepared = Prepared::new(Arc::new(sample::pass()), Reading::Gear, Units::Metric);
        let shape = Shape::new(&prepared, (260.0, 180.0)).expect("the sample has a shape");
        for (_, x, y) in &shape.kept {
            assert!((0.0..=260.0).contains(x) && (0.0..=180.0).contains(y));
        }
        let picture = &prepared.picture;
        let northmost =
            (0..picture.points()).max_by(|a, b| picture.north_m[*a].total_cmp(&picture.north_m[*b]));
        let top = shape.point(&prepared, northmost.expect("the road has points")).1;
        assert!(shape.kept.iter().all(|it| it.2 >= top - 1e-6));
    }

    #[test]
    fn a_click_on_the_road_finds_its_point() {
        let prepared = Prepared::new(Arc::new(sample::pass()), Reading::Heat, Units::Metric);
        let shape = Shape::new(&prepared, (260.0, 180.0)).expect("the sample has a shape");
        for wanted in [0, 600, 1200, 2400] {
            let (x, y) = shape.point(&prepared, wanted);
            let found = shape.point(&prepared, shape.nearest(x, y));
            assert!((found.0 - x).hypot(found.1 - y) < 2.2, "{wanted}");
        }
    }

    #[test]
    fn without_a_shape_nothing_is_drawn() {
        let mut picture = sample::pass();
        picture.east_m = Arc::from([]);
        let prepared = Prepared::new(Arc::new(picture), Reading::Gear, Units::Metric);
        assert!(Shape::new(&prepared, (260.0, 180.0)).is_none());
    }
}
