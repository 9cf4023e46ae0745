//! The height profile: the road line, the area under it filled by the chosen reading, crests,
//! and the stretches that were not assessed.

use super::bands::{Band, blanks};
use super::decimate::{clip, covered};
use super::label::text_width;
use super::layout::Lane;
use super::markup::Anchor;
use super::path::Path;
use super::reading::Reading;
use super::scale::Scale;
use super::scene::{HATCHES, Layers, Scene};
use super::ticks::nice_ticks;
use crate::format;
use solver::order::ascending;

/// The least height shown, m: a flat road must not look like a mountain.
const LEAST_HEIGHT_M: f64 = 60.0;
/// Room above the road for the mark of a crest, px.
const CREST: f64 = 14.0;
/// Crests closer than this share a mark, and narrower descents have no lines at their ends, px.
const LEAST_BRACKET: f64 = 10.0;
/// Most grades written into the profile.
const MOST_GRADES: usize = 12;

/// Heights in the window to px.
#[must_use]
pub(crate) fn height_scale(scene: &Scene) -> Scale {
    let (low, high) = scene.picture().heights_in(scene.window);
    let extent = scene.picture().extent_in(scene.window).max(LEAST_HEIGHT_M);
    let middle = 0.5 * (low + high);
    let row = scene.layout.profile;
    // Below the lowest road stands a foot of area, or its colour could not be seen; above the
    // highest the mark of its crest.
    let domain = (middle - 0.64 * extent, middle + 0.5 * extent);
    Scale::new(domain, (row.bottom(), row.top + CREST))
}

/// Draws the profile.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let up = height_scale(scene);
    draw_heights(scene, layers, &up);
    let line: Vec<(f64, f64)> = scene.lines(&scene.picture().heights_m, &up).concat();
    draw_fill(scene, layers, &line);
    draw_blanks(scene, layers, &line);
    draw_recorded(scene, layers, &up);
    let mut road = Path::default();
    road.polyline(&clip(&line, scene.layout.left, scene.layout.right));
    layers.under.path("road-line", &road);
    draw_crests(scene, layers, &up);
    if scene.prepared.fill_tones.reading() == Reading::Grade {
        write_grades(scene, layers);
    }
    scene.title(layers, Lane::Height);
}

fn draw_heights(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let unit = scene.prepared.units.metres_per_height();
    let (low, high) = up.domain();
    let mut grid = Path::default();
    for mark in nice_ticks(low / unit, high / unit, 5).values {
        let y = up.at(mark * unit);
        if y > scene.layout.profile.bottom() - 4.0 || y < scene.layout.profile.top + 4.0 {
            continue;
        }
        grid.polyline(&[(scene.layout.left, y), (scene.layout.right, y)]);
        let place = (scene.layout.left - 6.0, y + 4.5);
        layers.over.text("tick", Anchor::End, place, &format::whole(mark));
    }
    layers.under.path("grid", &grid);
}

/// One area a colour, however many bands have it.
fn draw_fill(scene: &Scene, layers: &mut Layers, line: &[(f64, f64)]) {
    let prepared = scene.prepared;
    let tones = &prepared.fill_tones;
    let reading = tones.reading();
    let all = scene.bands(&prepared.fill, |a, b| reading.worse(a, b));
    let base = scene.layout.profile.bottom();
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
}

/// Thin lines between neighbouring bands that are both wide enough to be seen.
fn partings(all: &[Band], line: &[(f64, f64)], base: f64) -> Path {
    let mut path = Path::default();
    for pair in all.windows(2).filter(|pair| pair.iter().all(|band| band.width() >= 3.0)) {
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
    layers.under.patterned("blank", &format!("{}-blank", scene.ids), &path);
    let label = scene.labels.not_assessed();
    let width = text_width(label, scene.layout.text_size());
    for band in super::scene::widest(&all, width + 8.0, 3) {
        layers.over.text("label", Anchor::Middle, (band.middle(), base - 9.0), label);
    }
}

/// What was recorded, where it is not the road line: once zoomed in, a reader can judge the
/// filter by it. Left out of a window in which it would only thicken the line.
fn draw_recorded(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let picture = scene.picture();
    let cells = covered(picture.points(), picture.step(), scene.window).len();
    if cells as f64 > 4.0 * scene.layout.plot_width() {
        return;
    }
    let mut path = Path::default();
    // A tunnel recorded as its mountain may rise far above the road: what leaves the profile is
    // left out, so that it lies on no label.
    let (top, base) = (scene.layout.profile.top, scene.layout.profile.bottom());
    for piece in scene.lines(&picture.recorded_m, up) {
        let piece = clip(&piece, scene.layout.left, scene.layout.right);
        for inside in piece.split(|(_, y)| *y < top || *y > base) {
            path.polyline(inside);
        }
    }
    layers.under.path("recorded", &path);
}

/// A mark on the road line at each crest, and a thin line down to the lanes at crest and foot.
fn draw_crests(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let picture = scene.picture();
    let (mut marks, mut ends) = (Path::default(), Path::default());
    let mut last_mark = f64::NEG_INFINITY;
    for descent in &picture.descents {
        let wide = scene.x(descent.to) - scene.x(descent.from) >= LEAST_BRACKET;
        for index in [descent.from, descent.to] {
            if wide && scene.window.shows(picture.place_of(index)) {
                let x = scene.x(index);
                ends.polyline(&[(x, scene.layout.brackets.bottom() - 6.0), (x, height_px(scene, up, index))]);
            }
        }
        if scene.window.shows(picture.place_of(descent.from)) {
            let (x, y) = (scene.x(descent.from), height_px(scene, up, descent.from));
            if x - last_mark < LEAST_BRACKET {
                continue;
            }
            last_mark = x;
            marks.polyline(&[(x - 5.5, y - 10.5), (x + 5.5, y - 10.5), (x, y - 1.5)]);
            marks.close();
        }
    }
    layers.under.path("descent-end", &ends);
    layers.over.path("crest", &marks);
}

/// Px of the road line at a grid point.
#[must_use]
pub(crate) fn height_px(scene: &Scene, up: &Scale, index: usize) -> f64 {
    super::picture::value(&scene.picture().heights_m, index).map_or(up.range().0, |it| up.at(it))
}

fn write_grades(scene: &Scene, layers: &mut Layers) {
    let picture = scene.picture();
    let size = scene.layout.text_size();
    let mut shown: Vec<(f64, f64, f64)> = Vec::new();
    for slope in &picture.slopes {
        let x0 = scene.x(slope.from).max(scene.layout.left);
        let x1 = scene.x(slope.to).min(scene.layout.right);
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
