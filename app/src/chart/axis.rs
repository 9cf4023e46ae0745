//! The distance axis below the lanes, and its faint lines through the profile.

use super::label::{Rows, centred, text_width};
use super::markup::Anchor;
use super::path::Path;
use super::scene::{Layers, Scene};
use super::ticks::nice_ticks;
use crate::format;

/// Px that a mark of the axis needs about it.
const ROOM_PX: f64 = 80.0;

/// Draws the axis. The last mark carries the unit.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let unit = scene.prepared.units.metres_per_distance();
    let across = scene.across();
    let (left, right) = (scene.layout.left, scene.layout.right);
    let wanted = ((right - left) / ROOM_PX).clamp(2.0, 10.0) as usize;
    let ticks = nice_ticks(scene.window.from / unit, scene.window.to / unit, wanted);
    let size = scene.layout.text_size();
    let row = scene.layout.axis;
    let mut marks = Path::default();
    let mut rows = Rows::new(1);
    let last = ticks.values.len().saturating_sub(1);
    let mut labels = Vec::new();
    for (number, mark) in ticks.values.iter().enumerate() {
        let x = across.at(mark * unit);
        marks.polyline(&[(x, row.top), (x, row.top + 5.0)]);
        let figure = format::mark(*mark, ticks.decimals);
        let text =
            if number == last { format!("{figure} {}", scene.prepared.units.distance()) } else { figure };
        labels.push((x, text));
    }
    // The one with the unit first: it must not be the one that is dropped.
    for (x, text) in labels.iter().rev() {
        let (x0, x1) = centred(*x, text_width(text, size), left - 4.0, scene.layout.width - 2.0);
        if rows.place(x0, x1).is_some() {
            layers.over.text("tick", Anchor::Middle, (0.5 * (x0 + x1), row.top + 19.0), text);
        }
    }
    layers.under.path("axis-mark", &marks);
}
