//! The speed lane: a line with figures, and the limit.

use super::band::between;
use super::bands::{Band, bands};
use super::decimate::clip;
use super::label::{Rows, text_width};
use super::layout::Lane;
use super::markup::Anchor;
use super::path::Path;
use super::scale::Scale;
use super::scene::{Layers, Scene, widest};
use super::ticks::nice_ticks;
use crate::format;

/// Most figures written.
const MOST_FIGURES: usize = 9;
/// Room on either side of a figure: on a climb the speed changes all the time, and a row of
/// figures would say less than a few, px.
const FIGURE_ROOM: f64 = 14.0;
/// Room above the fastest, for its figure, px.
const HEAD: f64 = 18.0;

/// Speeds, m/s, to px; the same for every window of a road.
#[must_use]
pub(crate) fn speed_scale(scene: &Scene) -> Scale {
    let row = scene.layout.speed;
    let fastest = scene.prepared.fastest.max(f64::from(scene.picture().speed_limit)).max(1.0);
    Scale::new((0.0, fastest), (row.bottom(), row.top + HEAD))
}

/// Draws the speed lane.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let up = speed_scale(scene);
    scene.frame(layers, Lane::Speed);
    let limit = f64::from(scene.picture().speed_limit);
    let y_limit = up.at(limit);
    layers.under.line("limit", (scene.layout.left, y_limit), (scene.layout.right, y_limit));
    if let Some(band) = &scene.picture().speed_band {
        layers.under.path("sureness", &between(scene, band, &up, scene.layout.speed.top + 1.0));
    }
    let mut path = Path::default();
    for piece in scene.lines(&scene.picture().speed, &up) {
        path.polyline(&clip(&piece, scene.layout.left, scene.layout.right));
    }
    layers.under.path("speed-line", &path);
    draw_posted(scene, layers, &up);
    draw_bends(scene, layers, &up);
    let mut rows = Rows::new(1);
    let text = scene.labels.speed_limit(limit, scene.prepared.units);
    let width = text_width(&text, scene.layout.text_size());
    let right = scene.layout.right - 4.0;
    layers.over.text("tick haloed", Anchor::End, (right, y_limit - 4.0), &text);
    let _ = rows.place(right - width, right);
    write_figures(scene, layers, &up, &mut rows);
    write_marks(scene, layers, &up);
    scene.title(layers, Lane::Speed);
}

/// Posted limits: the line of the limit, lower for a stretch, with posts at its ends.
fn draw_posted(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let mut path = Path::default();
    for posted in &scene.picture().posted {
        let (from, to) = (scene.x(posted.from), scene.x(posted.to));
        let (left, right) = (scene.layout.left, scene.layout.right);
        if to < left || from > right {
            continue;
        }
        let (y, foot) = (up.at(f64::from(posted.speed)), scene.layout.speed.bottom());
        for end in [from, to] {
            if (left..=right).contains(&end) {
                path.polyline(&[(end, foot), (end, y)]);
            }
        }
        path.polyline(&[(from.max(left), y), (to.min(right), y)]);
    }
    layers.under.path("limit posted", &path);
}

/// What each curve allows: a short bar on the road's line or above it.
fn draw_bends(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let mut path = Path::default();
    for bend in &scene.picture().bends {
        let (from, to) = (scene.x(bend.from), scene.x(bend.to));
        if to < scene.layout.left || from > scene.layout.right {
            continue;
        }
        let y = up.at(f64::from(bend.speed));
        let from = from.max(scene.layout.left);
        path.polyline(&[(from, y), (to.max(from + 1.0).min(scene.layout.right), y)]);
    }
    layers.under.path("bend-cap", &path);
    if scene.picture().bends.is_empty() {
        return;
    }
    scene.sample(layers, Lane::Speed, 92.0, "bend-cap", scene.labels.bend_caps());
}

/// The speed of each stretch that is driven at one, above the line.
fn write_figures(scene: &Scene, layers: &mut Layers, up: &Scale, rows: &mut Rows) {
    let prepared = scene.prepared;
    let unit = prepared.units.metres_per_second_per_speed();
    let all: Vec<Band> =
        bands(&prepared.whole_speed, scene.picture().step(), scene.window, &scene.across(), u8::min);
    let size = scene.layout.text_size();
    for band in widest(&all, 24.0, MOST_FIGURES) {
        let Some(speed) = band.value else { continue };
        let text = speed.to_string();
        let half = 0.5 * text_width(&text, size);
        let y = up.at(f64::from(speed) * unit) - 5.0;
        let room = half + FIGURE_ROOM;
        if rows.place(band.middle() - room, band.middle() + room).is_some() {
            layers.over.text("strong haloed", Anchor::Middle, (band.middle(), y), &text);
        }
    }
}

fn write_marks(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let unit = scene.prepared.units.metres_per_second_per_speed();
    for mark in nice_ticks(0.0, up.domain().1 / unit, 2).values {
        let crowded = (up.at(mark * unit) + 4.0 - scene.sample_base(Lane::Speed)).abs() < 11.0;
        if !scene.layout.compact && crowded && !scene.picture().bends.is_empty() {
            continue;
        }
        let place =
            (scene.layout.left - 6.0, up.at(mark * unit).min(scene.layout.speed.bottom() - 2.0) + 4.0);
        layers.over.text("tick", Anchor::End, place, &format::whole(mark));
    }
}
