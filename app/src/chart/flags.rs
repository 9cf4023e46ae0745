//! Flags of the places along the road.
//!
//! Their names stand in rows of their own above the profile, each with a pole down to the
//! road, so that no name lies on the profile and none on another. Every place first gets room
//! for its mark, then its name if that fits beside the others; a place without room for a mark
//! keeps its pole, and zooming in brings the rest back.

use super::label::{Rows, shortened, text_width};
use super::layout::LABEL_ROW;
use super::markup::Anchor;
use super::path::Path;
use super::picture::Flag;
use super::profile::{height_px, height_scale};
use super::scene::{Layers, Scene};
use solver::road::PlaceKind;

/// Most names written.
const MOST_NAMES: usize = 10;
/// Half the width of a mark, px.
const MARK: f64 = 6.0;
/// From the pole to its name, px.
const LEAD: f64 = 9.0;
/// A name is cut to this, px.
const LONGEST_NAME: f64 = 190.0;

/// Draws the flags.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let up = height_scale(scene);
    let picture = scene.picture();
    let mut rows = Rows::new(scene.layout.flag_rows);
    let (mut poles, mut plain, mut ramps) = (Path::default(), Path::default(), Path::default());
    let mut marked = Vec::new();
    for flag in picture.places.iter().filter(|it| scene.window.shows(picture.place_of(it.at))) {
        let x = scene.x(flag.at);
        let row = rows.place(x - MARK, x + MARK);
        let y = scene.layout.flags.bottom() - 8.0 - row.unwrap_or(0) as f64 * LABEL_ROW;
        poles.polyline(&[(x, y + 4.0), (x, height_px(scene, &up, flag.at))]);
        if let Some(row) = row {
            draw_mark(flag.kind, x, y, &mut plain, &mut ramps);
            marked.push((flag, row, x, y));
        }
    }
    let mut names = 0;
    for (flag, row, x, y) in marked {
        if names < MOST_NAMES && write_name(scene, layers, &mut rows, (flag, row), (x, y)) {
            names += 1;
        }
    }
    layers.under.path("pole", &poles);
    layers.over.path("flag", &plain);
    layers.over.path("flag ramp", &ramps);
}

/// The mark at the head of a pole: a wedge for an escape ramp, a square where one can stop, a
/// diamond for the rest.
fn draw_mark(kind: PlaceKind, x: f64, y: f64, plain: &mut Path, ramps: &mut Path) {
    match kind {
        PlaceKind::BrakeCheck | PlaceKind::Parking | PlaceKind::ChainUp => {
            plain.rectangle(x - 4.0, y - 4.0, 8.0, 8.0)
        }
        PlaceKind::EscapeRamp => {
            ramps.polyline(&[(x - 5.0, y + 4.5), (x + 5.0, y + 4.5), (x + 5.0, y - 4.5)]);
            ramps.close();
        }
        PlaceKind::Summit
        | PlaceKind::Settlement
        | PlaceKind::Stop
        | PlaceKind::Tunnel
        | PlaceKind::Bridge
        | PlaceKind::Danger
        | PlaceKind::QuietZone
        | PlaceKind::Exit
        | PlaceKind::Other => {
            plain.polyline(&[(x, y - 5.0), (x + 5.0, y), (x, y + 5.0), (x - 5.0, y)]);
            plain.close();
        }
    }
}

/// Writes a name right of its pole, or left of it where the right is taken or the picture ends;
/// tells whether there was room.
fn write_name(
    scene: &Scene,
    layers: &mut Layers,
    rows: &mut Rows,
    (flag, row): (&Flag, usize),
    (x, y): (f64, f64),
) -> bool {
    let size = scene.layout.text_size();
    let longest = LONGEST_NAME.min(0.42 * scene.layout.plot_width());
    let Some(text) = shortened(&flag.name, size, longest) else { return false };
    let reach = LEAD + text_width(&text, size);
    let mark = (x - MARK, x + MARK);
    let right = x + reach <= scene.layout.right && rows.widen(row, mark, (x - MARK, x + reach));
    if right {
        layers.over.text("label", Anchor::Start, (x + LEAD, y + 4.5), &text);
        return true;
    }
    let left = x - reach >= scene.layout.left && rows.widen(row, mark, (x - reach, x + MARK));
    if left {
        layers.over.text("label", Anchor::End, (x - LEAD, y + 4.5), &text);
    }
    left
}
