//! Flags of the places along the road: a mark on a pole in the sky above it, with its name where there is room.

use super::hill::Hill;
use super::label::{shortened, text_width};
use super::markup::Anchor;
use super::path::Path;
use super::picture::Flag;
use super::room::Room;
use super::scene::{Layers, Scene};
use solver::road::PlaceKind;

/// Most names written.
const MOST_NAMES: usize = 10;
/// Half the width of a mark, px.
const MARK: f64 = 6.5;
/// From the pole to its name, px.
const LEAD: f64 = 11.0;
/// A name is cut to this, px.
const LONGEST_NAME: f64 = 150.0;
/// Heights of a mark above the road, px: the first that is free.
const LIFTS: [f64; 4] = [36.0, 56.0, 76.0, 20.0];

/// Draws the flags.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers, hill: &Hill, room: &mut Room) {
    let picture = scene.picture();
    let (mut poles, mut plain, mut ramps) = (Path::default(), Path::default(), Path::default());
    let mut names = 0;
    for flag in picture.places.iter().filter(|it| scene.window.shows(picture.place_of(it.at))) {
        let (x, road) = (scene.x(flag.at), scene.y(flag.at));
        let top = scene.layout.profile.top + MARK;
        let heights = LIFTS.map(|lift| (road - lift).max(top));
        let found = heights.into_iter().find(|y| room.claim([x - MARK, y - MARK, x + MARK, y + MARK]));
        let Some(y) = found else {
            // Without room for its mark the pole still says that something is there.
            poles.polyline(&[(x, road - 14.0), (x, road)]);
            continue;
        };
        poles.polyline(&[(x, y + 4.0), (x, road)]);
        draw_mark(flag.kind, x, y, &mut plain, &mut ramps);
        if !scene.layout.compact
            && names < MOST_NAMES
            && write_name(scene, layers, (hill, room), flag, (x, y))
        {
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
            plain.rectangle(x - 5.0, y - 5.0, 10.0, 10.0)
        }
        PlaceKind::EscapeRamp => {
            ramps.polyline(&[(x - 6.0, y + 5.0), (x + 6.0, y + 5.0), (x + 6.0, y - 5.0)]);
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
            plain.polyline(&[(x, y - 6.0), (x + 6.0, y), (x, y + 6.0), (x - 6.0, y)]);
            plain.close();
        }
    }
}

/// Writes a name in the sky right of its mark, or left of it; tells whether there was room.
fn write_name(
    scene: &Scene,
    layers: &mut Layers,
    (hill, room): (&Hill, &mut Room),
    flag: &Flag,
    (x, y): (f64, f64),
) -> bool {
    let size = scene.layout.text_size();
    let Some(text) = shortened(&flag.name, size, LONGEST_NAME) else { return false };
    let width = text_width(&text, size);
    for (anchor, at, x0) in [(Anchor::Start, x + LEAD, x + LEAD), (Anchor::End, x - LEAD, x - LEAD - width)] {
        let area = [x0, y - 8.0, x0 + width, y + 8.0];
        let inside = x0 >= scene.layout.left && x0 + width <= scene.layout.right;
        let in_sky = hill.ends(x0, x0 + width).0 >= y + 4.0;
        // Not over its own mark, which is taken.
        if inside && in_sky && room.claim(area) {
            layers.over.text("label", anchor, (at, y + 4.5), &text);
            return true;
        }
    }
    false
}
