//! The temperature lane: brakes now, brakes after one hard stop, and the limit.

use super::band::{between, inside};
use super::layout::Lane;
use super::markup::Anchor;
use super::path::Path;
use super::scale::Scale;
use super::scene::{Layers, Scene};
use super::ticks::nice_ticks;
use crate::format;

/// Room above the limit line for its label, px.
const HEAD: f64 = 18.0;
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
    write_labels(scene, layers, y_limit);
    write_marks(scene, layers, &up);
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

fn write_labels(scene: &Scene, layers: &mut Layers, y_limit: f64) {
    let limit = scene.labels.heat_limit(f64::from(scene.picture().heat_limit_c), scene.prepared.units);
    layers.over.text("tick haloed", Anchor::End, (scene.layout.right - 4.0, y_limit - 4.0), &limit);
    scene.sample(layers, Lane::Temperature, 74.0, "after-stop", scene.labels.after_stop());
}

fn write_marks(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let (factor, offset) = match scene.prepared.units {
        format::Units::Metric => (1.0, 0.0),
        format::Units::Imperial => (1.8, 32.0),
    };
    let (low, high) = up.domain();
    for mark in nice_ticks(low * factor + offset, high * factor + offset, 3).values {
        let y = up.at((mark - offset) / factor).min(scene.layout.temperature.bottom() - 2.0) + 4.0;
        if !scene.layout.compact && (y - scene.sample_base(Lane::Temperature)).abs() < 11.0 {
            continue;
        }
        layers.over.text("tick", Anchor::End, (scene.layout.left - 6.0, y), &format::whole(mark));
    }
}
