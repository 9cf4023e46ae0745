//! Where the gear is changed on the way down: a diamond on the road line, filled at an easing and hollow on
//! the hill. A change down on the hill is no change to be made in passing: it has a bar across the road.

use super::hill::Hill;
use super::label::text_width;
use super::markup::Anchor;
use super::path::Path;
use super::picture::{Change, Hold};
use super::room::Room;
use super::scene::{Layers, Scene};

/// Half the width of a diamond, px.
const DIAMOND: f64 = 8.0;
/// Half the length of the bar across the road, px.
const ACROSS: f64 = 15.0;

/// What is drawn for all changes in the window.
#[derive(Default)]
struct Marks {
    lines: Path,
    easings: Path,
    on_hill: Path,
    bars: Path,
}

/// Draws the changes.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers, hill: &Hill, room: &mut Room) {
    let mut marks = Marks::default();
    for descent in &scene.picture().descents {
        for pair in descent.legs.windows(2) {
            let at = scene.picture().place_of(pair[1].from);
            if let Some(change) = pair[1].change.filter(|_| scene.window.shows(at)) {
                draw_change(scene, layers, hill, room, &mut marks, (&pair[0], &pair[1]), change);
            }
        }
    }
    layers.under.path("change-line", &marks.lines);
    layers.over.path("change easing", &marks.easings);
    layers.over.path("change", &marks.on_hill);
    layers.over.path("change-bar", &marks.bars);
}

fn draw_change(
    scene: &Scene,
    layers: &mut Layers,
    hill: &Hill,
    room: &mut Room,
    marks: &mut Marks,
    (before, leg): (&Hold, &Hold),
    change: Change,
) {
    let x = scene.x(leg.from);
    let y = hill.y(x);
    let lane = scene.layout.gear.middle();
    marks.lines.polyline(&[(x, y), (x, scene.layout.axis.top)]);
    let half = if scene.layout.compact { 0.85 * DIAMOND } else { DIAMOND };
    room.take([x - half, y - half, x + half, y + half]);
    let texts = match change {
        Change::Down => {
            // Across the road line, whatever its slope in px.
            let slope = (hill.y(x + 4.0) - hill.y(x - 4.0)) / 8.0;
            let length = 1.0_f64.hypot(slope);
            let (dx, dy) = (-slope / length * ACROSS, ACROSS / length);
            marks.bars.polyline(&[(x - dx, y - dy), (x + dx, y + dy)]);
            marks.bars.polyline(&[(x, scene.layout.gear.top), (x, scene.layout.gear.bottom())]);
            [String::new(), scene.labels.brake_then(leg, scene.prepared.units)]
        }
        Change::Easing(grade) | Change::Up(grade) => {
            let path =
                if matches!(change, Change::Easing(_)) { &mut marks.easings } else { &mut marks.on_hill };
            for (y, half) in [(y, half), (lane, 0.75 * half)] {
                path.polyline(&[(x, y - half), (x + half, y), (x, y + half), (x - half, y)]);
                path.close();
            }
            [scene.labels.on_grade(f64::from(grade)), scene.labels.change([before.gear, leg.gear])]
        }
    };
    write(scene, layers, room, (x, y), &texts);
}

/// Writes what is changed above the road line, right of the line or left of it, and above that the grade.
fn write(scene: &Scene, layers: &mut Layers, room: &mut Room, (x, y): (f64, f64), texts: &[String; 2]) {
    let size = scene.layout.text_size();
    let width = |text: &str| 1.1 * text_width(text, size);
    let [grade, change] = texts;
    for lift in [24.0, 40.0, 58.0] {
        for right in [true, false] {
            let base = y - lift;
            let area = |wide: f64, high: f64| {
                let x0 = if right { x + 8.0 } else { x - 8.0 - wide };
                [x0, base - high, x0 + wide, base + 3.0]
            };
            let inside = |it: &[f64; 4]| {
                it[0] >= scene.layout.left && it[2] <= scene.layout.right && it[1] >= scene.layout.profile.top
            };
            let full = area(width(change).max(width(grade)), 13.0 + size);
            let short = area(width(change), size);
            let with_grade = !grade.is_empty() && !scene.layout.compact && inside(&full) && room.claim(full);
            if !(with_grade || inside(&short) && room.claim(short)) {
                continue;
            }
            let (anchor, at) = if right { (Anchor::Start, x + 8.0) } else { (Anchor::End, x - 8.0) };
            layers.over.text("strong haloed", anchor, (at, base), change);
            if with_grade {
                layers.over.text("tick haloed", anchor, (at, base - 16.0), grade);
            }
            return;
        }
    }
}
