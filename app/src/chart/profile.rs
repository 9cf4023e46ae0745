//! The height profile: the road line, the area under it filled by the chosen reading, where each descent
//! begins and ends, and the stretches that were not assessed.

use super::bands::{Band, blanks};
use super::decimate::{clip, covered};
use super::hill::Hill;
use super::label::text_width;
use super::layout::Layout;
use super::markup::Anchor;
use super::path::Path;
use super::picture::RoadPicture;
use super::reading::Reading;
use super::room::Room;
use super::scale::Scale;
use super::scene::{HATCHES, Layers, Scene};
use super::ticks::nice_ticks;
use super::window::Window;
use crate::format;
use solver::Verdict;
use solver::order::ascending;

/// The least height shown, m: a flat road must not look like a mountain.
const LEAST_HEIGHT_M: f64 = 60.0;
/// Marks of crests closer than this are one, px.
const CREST: f64 = 7.0;
/// Most grades written into the profile.
const MOST_GRADES: usize = 12;

/// Heights in the window to px. Below the lowest road stands a foot of area, or its colour could not be
/// seen; above the highest is sky, in which places are named.
#[must_use]
pub(crate) fn height_scale(picture: &RoadPicture, window: Window, layout: &Layout) -> Scale {
    let (low, high) = picture.heights_in(window);
    let extent = picture.extent_in(window).max(LEAST_HEIGHT_M);
    let middle = 0.5 * (low + high);
    let row = layout.profile;
    let foot = (0.13 * row.height).clamp(8.0, 44.0);
    let sky = (0.22 * row.height).clamp(12.0, 76.0);
    Scale::new((middle - 0.5 * extent, middle + 0.5 * extent), (row.bottom() - foot, row.top + sky))
}

/// Draws the profile.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers, hill: &Hill, room: &mut Room) {
    draw_wash(scene, layers);
    draw_heights(scene, layers);
    draw_fill(scene, layers, &hill.line);
    draw_blanks(scene, layers, &hill.line);
    draw_recorded(scene, layers);
    let mut road = Path::default();
    road.polyline(&clip(&hill.line, scene.layout.left, scene.layout.right));
    layers.under.path("road-line", &road);
    draw_ends(scene, layers, room);
    draw_chosen(scene, layers, hill, room);
    if scene.prepared.fill_tones.reading() == Reading::Grade {
        write_grades(scene, layers);
    }
}

/// The stretch of the chosen descent, from its bar to the axis.
fn draw_wash(scene: &Scene, layers: &mut Layers) {
    let chosen = scene.chosen.and_then(|number| scene.picture().descent(number));
    if let Some((x0, x1)) = chosen.and_then(|it| scene.shown(it.from, it.to)) {
        let top = scene.layout.bars.bottom();
        layers.under.rectangle("wash", (x0, top), (x1 - x0, scene.layout.axis.top - top), 0.0);
    }
}

fn draw_heights(scene: &Scene, layers: &mut Layers) {
    let unit = scene.prepared.units.metres_per_height();
    let row = scene.layout.profile;
    let (low, high) = [row.bottom(), row.top].map(|y| at_px(&scene.up, y)).into();
    let wanted = (row.height / 55.0).clamp(2.0, 6.0) as usize;
    let mut grid = Path::default();
    let ticks = nice_ticks(low / unit, high / unit, wanted);
    let shown = |mark: &&f64| {
        let y = scene.up.at(**mark * unit);
        y < row.bottom() - 8.0 && y > row.top + 10.0
    };
    let marks: Vec<f64> = ticks.values.iter().filter(shown).copied().collect();
    for (number, mark) in marks.iter().enumerate() {
        let y = scene.up.at(mark * unit);
        grid.polyline(&[(scene.layout.left, y), (scene.layout.right, y)]);
        let figure = format::whole(*mark);
        // The topmost has the unit, where there is room for it.
        let full = format!("{figure} {}", scene.prepared.units.height());
        let fits = text_width(&full, scene.layout.text_size()) <= scene.layout.left - 8.0;
        let text = if number + 1 == marks.len() && fits { full } else { figure };
        layers.over.text("tick", Anchor::End, (scene.layout.left - 8.0, y + 4.5), &text);
    }
    layers.under.path("grid", &grid);
}

/// Value of a px, also beyond the scale's ends.
fn at_px(scale: &Scale, px: f64) -> f64 {
    let ((low, high), (from, to)) = (scale.domain(), scale.range());
    low + (px - from) / (to - from) * (high - low)
}

/// The ground, and one area a colour on it, however many bands have it.
fn draw_fill(scene: &Scene, layers: &mut Layers, line: &[(f64, f64)]) {
    let prepared = scene.prepared;
    let tones = &prepared.fill_tones;
    let reading = tones.reading();
    let all = scene.bands(&prepared.fill, |a, b| reading.worse(a, b));
    let base = scene.layout.profile.bottom();
    let mut ground = Path::default();
    ground.area(&clip(line, scene.layout.left, scene.layout.right), base);
    layers.under.path("ground", &ground);
    let areas = |wanted: &dyn Fn(u8) -> bool| {
        let mut path = Path::default();
        for band in all.iter().filter(|band| band.value.is_some_and(wanted)) {
            path.area(&clip(line, band.x0, band.x1), base);
        }
        path
    };
    for value in tones.used() {
        layers.under.path(&tones.filled(*value), &areas(&|it| it == *value));
    }
    match reading {
        Reading::Stage => {
            for stage in 1..=HATCHES {
                let path = areas(&|it| it > 0 && it.min(HATCHES) == stage);
                layers.under.patterned("hatched", &scene.hatch(stage), &path);
            }
        }
        Reading::Gear | Reading::Heat | Reading::Speed | Reading::Grade => {}
    }
    layers.under.path("parting", &partings(&all, line, base));
    let mut unsafe_parts = Path::default();
    for descent in scene.picture().descents.iter().filter(|it| it.verdict == Verdict::NoSafeSpeed) {
        if let Some((x0, x1)) = scene.shown(descent.from, descent.to) {
            unsafe_parts.area(&clip(line, x0, x1), base);
        }
    }
    layers.under.patterned("no-speed", &format!("{}-no-speed", scene.ids), &unsafe_parts);
}

/// Thin lines between neighbouring bands that are both wide enough to be seen.
fn partings(all: &[Band], line: &[(f64, f64)], base: f64) -> Path {
    let mut path = Path::default();
    let wide = |pair: &&[Band]| pair.iter().all(|band| band.width() >= 3.0 && band.value.is_some());
    for pair in all.windows(2).filter(wide) {
        if let Some((x, y)) = clip(line, pair[0].x1, pair[0].x1).first() {
            path.polyline(&[(*x, *y), (*x, base)]);
        }
    }
    path
}

fn draw_blanks(scene: &Scene, layers: &mut Layers, line: &[(f64, f64)]) {
    let base = scene.layout.profile.bottom();
    let known: Vec<Option<u8>> = scene.picture().assessed.iter().map(|it| it.then_some(0)).collect();
    let all = blanks(&known, scene.picture().step(), scene.window, &scene.across());
    let mut path = Path::default();
    for band in &all {
        path.area(&clip(line, band.x0, band.x1), base);
    }
    layers.under.path("unknown", &path);
    layers.under.patterned("blank", &format!("{}-blank", scene.ids), &path);
    let label = scene.labels.not_assessed();
    let width = text_width(label, scene.layout.text_size());
    for band in super::scene::widest(&all, width + 8.0, 3) {
        layers.over.text("label", Anchor::Middle, (band.middle(), base - 9.0), label);
    }
}

/// What was recorded, where it is not the road line: once zoomed in, a reader can judge the
/// filter by it. Left out of a window in which it would only thicken the line.
fn draw_recorded(scene: &Scene, layers: &mut Layers) {
    let picture = scene.picture();
    let cells = covered(picture.points(), picture.step(), scene.window).len();
    if cells as f64 > 4.0 * scene.layout.plot_width() {
        return;
    }
    let mut path = Path::default();
    // A tunnel recorded as its mountain may rise far above the road: what leaves the profile is
    // left out, so that it lies on no label.
    let (top, base) = (scene.layout.profile.top, scene.layout.profile.bottom());
    for piece in scene.lines(&picture.recorded_m, &scene.up) {
        let piece = clip(&piece, scene.layout.left, scene.layout.right);
        for inside in piece.split(|(_, y)| *y < top || *y > base) {
            path.polyline(inside);
        }
    }
    layers.under.path("recorded", &path);
}

/// The chosen descent's stretch of the road line, and its steepest part with its grade.
fn draw_chosen(scene: &Scene, layers: &mut Layers, hill: &Hill, room: &mut Room) {
    let Some(descent) = scene.chosen.and_then(|number| scene.picture().descent(number)) else { return };
    let Some((x0, x1)) = scene.shown(descent.from, descent.to) else { return };
    let stretch = |x0: f64, x1: f64| {
        let mut path = Path::default();
        path.polyline(&clip(&hill.line, x0, x1));
        path
    };
    layers.under.path("road-line chosen", &stretch(x0, x1));
    let Some(pitch) = scene.prepared.pitch(descent.number) else { return };
    let Some((x0, x1)) = scene.shown(pitch.from, pitch.to) else { return };
    // Wide enough to be seen on a long road.
    let x1 = x1.max(x0 + 5.0).min(scene.layout.right);
    layers.under.path("steepest", &stretch(x0, x1));
    let text = format::grade(pitch.grade);
    let width = 1.1 * text_width(&text, scene.layout.text_size());
    let (middle, y) = (0.5 * (x0 + x1), hill.ends(x0, x1).0);
    for (x, base) in [
        (middle + 10.0, y - 4.0),
        (middle - 10.0 - width, y - 8.0),
        (middle - 0.5 * width, y - 12.0),
        (middle + 12.0, y - 26.0),
        (middle - 12.0 - width, y - 26.0),
    ] {
        let inside = x >= scene.layout.left && x + width <= scene.layout.right;
        if inside
            && base - 13.0 > scene.layout.profile.top
            && room.claim([x, base - 12.0, x + width, base + 2.0])
        {
            layers.over.text("strong haloed", Anchor::Start, (x, base), &text);
            return;
        }
    }
}

/// A line from each bar down to the hill with a mark at the crest, and a dotted one at the foot.
fn draw_ends(scene: &Scene, layers: &mut Layers, room: &mut Room) {
    let picture = scene.picture();
    let (mut marks, mut crests, mut feet) = (Path::default(), Path::default(), Path::default());
    let mut last_mark = f64::NEG_INFINITY;
    let top = scene.layout.bars.bottom();
    for descent in &picture.descents {
        let chosen = scene.chosen == Some(descent.number);
        let wide = scene.x(descent.to) - scene.x(descent.from) >= 3.0 * CREST;
        if scene.window.shows(picture.place_of(descent.to)) && (wide || chosen) {
            let x = scene.x(descent.to);
            feet.polyline(&[(x, top), (x, scene.y(descent.to))]);
        }
        if !scene.window.shows(picture.place_of(descent.from)) {
            continue;
        }
        let (x, y) = (scene.x(descent.from), scene.y(descent.from));
        if x - last_mark < CREST && !chosen {
            continue;
        }
        last_mark = x;
        crests.polyline(&[(x, top), (x, (y - 10.0).max(top))]);
        room.take([x - 6.0, y - 11.0, x + 6.0, y - 2.0]);
        marks.polyline(&[(x - 6.0, y - 11.0), (x + 6.0, y - 11.0), (x, y - 2.0)]);
        marks.close();
    }
    layers.under.path("drop", &crests);
    layers.under.path("drop foot", &feet);
    layers.over.path("crest", &marks);
}

fn write_grades(scene: &Scene, layers: &mut Layers) {
    let picture = scene.picture();
    let size = scene.layout.text_size();
    let mut shown: Vec<(f64, f64, f64)> = Vec::new();
    for slope in &picture.slopes {
        let Some((x0, x1)) = scene.shown(slope.from, slope.to) else { continue };
        let text = format::grade(f64::from(slope.grade));
        if x1 - x0 >= text_width(&text, size) + 6.0 {
            shown.push((x0, x1, f64::from(slope.grade)));
        }
    }
    let widest_first = ascending(shown.iter().map(|(x0, x1, _)| x0 - x1));
    for index in widest_first.into_iter().take(MOST_GRADES) {
        let (x0, x1, grade) = shown[index];
        let step = super::reading::GradeStep::of(grade) as u8;
        let class = format!("on {}", scene.prepared.fill_tones.class(step));
        let place = (0.5 * (x0 + x1), scene.layout.profile.bottom() - 9.0);
        layers.over.text(&class, Anchor::Middle, place, &format::grade(grade));
    }
}
