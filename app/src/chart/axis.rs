//! The distance axis below the lanes: where descents begin and gears change, and round distances between.

use super::label::{Rows, centred, text_width};
use super::markup::Anchor;
use super::path::Path;
use super::scene::{Layers, Scene};
use super::ticks::nice_ticks;
use crate::format::{self, Units};

/// Px that a mark of the axis needs about it.
const ROOM_PX: f64 = 90.0;

/// Draws the axis. Its unit stands in the column of the titles.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let units = scene.prepared.units;
    let (left, right) = (scene.layout.left, scene.layout.right);
    let row = scene.layout.axis;
    let base = row.bottom() - 5.0;
    let unit = match units {
        Units::Metric => units.distance(),
        Units::Imperial => scene.labels.mile(),
    };
    layers.over.text("tick", Anchor::End, (left - 8.0, base), unit);
    let wanted = ((right - left) / ROOM_PX).clamp(2.0, 10.0) as usize;
    let per = units.metres_per_distance();
    let ticks = nice_ticks(scene.window.from / per, scene.window.to / per, wanted);
    let size = scene.layout.text_size();
    let mut marks = Path::default();
    let mut rows = Rows::new(1);
    for (x, text) in told(scene) {
        let (x0, x1) = centred(x, 1.08 * text_width(&text, size), left - 4.0, scene.layout.width - 1.0);
        if rows.place(x0, x1).is_some() {
            marks.polyline(&[(x, row.top), (x, row.top + 5.0)]);
            layers.over.text("strong", Anchor::Middle, (0.5 * (x0 + x1), base), &text);
        }
    }
    for mark in &ticks.values {
        let x = scene.across().at(mark * per);
        marks.polyline(&[(x, row.top), (x, row.top + 4.0)]);
        let text = format::mark(*mark, ticks.decimals);
        let (x0, x1) = centred(x, text_width(&text, size), left - 4.0, scene.layout.width - 1.0);
        if rows.place(x0, x1).is_some() {
            layers.over.text("tick", Anchor::Middle, (0.5 * (x0 + x1), base), &text);
        }
    }
    layers.under.path("axis-mark", &marks);
}

/// Crests and changes in the window with their distances, px: those of the chosen descent first.
fn told(scene: &Scene) -> Vec<(f64, String)> {
    let picture = scene.picture();
    let is_chosen = |number: usize| scene.chosen == Some(number);
    let (chosen, others): (Vec<_>, Vec<_>) = picture.descents.iter().partition(|it| is_chosen(it.number));
    let ordered = || chosen.iter().chain(&others);
    let crests = ordered().map(|it| it.from);
    let changes = ordered().flat_map(|it| it.legs.iter().skip(1).map(|leg| leg.from));
    let shown = crests.chain(changes).map(|index| (scene.x(index), picture.place_of(index)));
    let shown = shown.filter(|(_, at)| scene.window.shows(*at));
    shown.map(|(x, at)| (x, scene.labels.place(at, scene.prepared.units))).collect()
}
