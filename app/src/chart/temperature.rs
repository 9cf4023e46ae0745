//! The temperature lane: brakes now, brakes after one hard stop, and the limit.

use super::band::{between, inside};
use super::label::{Rows, centred, text_width};
use super::layout::Lane;
use super::markup::Anchor;
use super::path::Path;
use super::picture::value;
use super::scale::Scale;
use super::scene::{Layers, Scene};
use crate::format;

/// Room above the limit line for its label, px.
const HEAD: f64 = 16.0;
/// The scale reaches no further than this many times the limit: beyond it the figure in the
/// readout tells more than a line that flattens everything else.
const FARTHEST: f64 = 1.6;

/// Temperatures, °C, to px; the same for every window of a road.
#[must_use]
pub(crate) fn temperature_scale(scene: &Scene) -> Scale {
    let row = scene.layout.temperature;
    let limit = f64::from(scene.picture().heat_limit_c).max(1.0);
    let high = scene.prepared.hottest.clamp(limit, FARTHEST * limit);
    let low = f64::from(scene.picture().start_c).min(0.0);
    Scale::new((low, high), (row.bottom(), row.top + HEAD))
}

/// Draws the temperature lane.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    if !scene.layout.temperature.is_there() {
        return;
    }
    let up = temperature_scale(scene);
    let picture = scene.picture();
    let (left, right) = (scene.layout.left, scene.layout.right);
    scene.frame(layers, Lane::Temperature);
    let y_limit = up.at(f64::from(picture.heat_limit_c));
    draw_band(scene, layers, &up);
    let after = pieces(scene, &picture.after_stop, &up);
    let mut over = Path::default();
    for piece in &after {
        let above: Vec<_> = piece.iter().map(|(x, y)| (*x, y.min(y_limit))).collect();
        if above.iter().any(|(_, y)| *y < y_limit - 0.05) {
            over.area(&above, y_limit);
        }
    }
    layers.under.path("beyond", &over);
    layers.under.line("limit", (left, y_limit), (right, y_limit));
    layers.under.path("after-stop", &joined(&after));
    layers.under.path("brakes", &joined(&pieces(scene, &picture.temperature, &up)));
    write_labels(scene, layers, &up, y_limit);
    scene.title(layers, Lane::Temperature);
}

fn pieces(scene: &Scene, values: &[f32], up: &Scale) -> Vec<Vec<(f64, f64)>> {
    inside(scene, values, up, scene.layout.temperature.top + 1.0)
}

fn joined(all: &[Vec<(f64, f64)>]) -> Path {
    let mut path = Path::default();
    for piece in all {
        path.polyline(piece);
    }
    path
}

/// The 5 to 95 % band, where it has been worked out.
fn draw_band(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let Some(band) = &scene.picture().temperature_band else { return };
    layers.under.path("sureness", &between(scene, band, up, scene.layout.temperature.top + 1.0));
}

fn write_labels(scene: &Scene, layers: &mut Layers, up: &Scale, y_limit: f64) {
    let (picture, units) = (scene.picture(), scene.prepared.units);
    let mut rows = Rows::new(1);
    let size = scene.layout.text_size();
    let limit = scene.labels.heat_limit(f64::from(picture.heat_limit_c), units);
    let right = scene.layout.right - 4.0;
    let _ = rows.place(right - text_width(&limit, size), right);
    layers.over.text("tick haloed", Anchor::End, (right, y_limit - 4.0), &limit);
    let end = scene.sample(layers, Lane::Temperature, "after-stop", scene.labels.after_stop());
    let _ = rows.place(scene.layout.left, end);
    let hottest = scene.prepared.hottest_at.filter(|it| scene.window.shows(picture.place_of(*it)));
    let Some((index, celsius)) = hottest.and_then(|it| Some((it, value(&picture.temperature, it)?))) else {
        return;
    };
    let text = format::temperature(celsius, units);
    let width = text_width(&text, size);
    let (x0, x1) = centred(scene.x(index), width, scene.layout.left + 4.0, right);
    let (top, bottom) = (scene.layout.temperature.top + 13.0, scene.layout.temperature.bottom() - 4.0);
    if rows.place(x0, x1).is_some() {
        let y = (up.at(celsius) - 6.0).clamp(top, bottom);
        layers.over.text("strong haloed", Anchor::Middle, (0.5 * (x0 + x1), y), &text);
    }
}
