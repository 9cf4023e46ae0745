//! The three lanes of bands: gear, stage and brake heat.

use super::bands::Band;
use super::label::{Rows, text_width};
use super::layout::{Lane, Row};
use super::markup::Anchor;
use super::path::Path;
use super::picture::value;
use super::reading::Reading;
use super::scene::{HATCHES, Layers, Scene, widest};
use crate::format;
use solver::HeatStep;

/// Most labels of a lane.
const MOST_GEARS: usize = 14;
const MOST_STAGES: usize = 10;
const MOST_HEATS: usize = 8;

/// Draws the gear lane: on descents a number in each band that is wide enough, elsewhere in muted figures.
pub(crate) fn draw_gear(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.gear;
    let tones = &scene.prepared.gear_tones;
    let worse = |a, b| Reading::Gear.worse(a, b);
    let all = scene.bands(&scene.prepared.held, worse);
    let corner = (scene.layout.left, row.top);
    layers.under.rectangle("ground", corner, (scene.layout.plot_width(), row.height), 0.0);
    for gear in tones.used() {
        layers.under.path(&tones.filled(*gear), &boxes(&all, row, |it| it == *gear));
    }
    layers.under.path("parting", &partings(&all, row));
    let size = scene.layout.text_size();
    let needed = |gear: u8| BOLD * text_width(&gear.to_string(), size) + 3.0;
    let base = row.middle() + 5.0;
    for band in widest(&all, needed(1), MOST_GEARS) {
        let Some(gear) = band.value.filter(|it| needed(*it) <= band.width()) else { continue };
        let class = format!("on strong {}", tones.class(gear));
        layers.over.text(&class, Anchor::Middle, (band.middle(), base), &gear.to_string());
    }
    let elsewhere = scene.bands(&scene.prepared.elsewhere, worse);
    for band in widest(&elsewhere, needed(1) + 8.0, MOST_GEARS) {
        let Some(gear) = band.value.filter(|it| needed(*it) + 8.0 <= band.width()) else { continue };
        layers.over.text("tick", Anchor::Middle, (band.middle(), base), &gear.to_string());
    }
    scene.title(layers, Lane::Gear);
}

/// Draws the stage lane: more lines are more stage, the number in a small pill.
pub(crate) fn draw_stage(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.stage;
    if !row.is_there() {
        return;
    }
    let all = scene.bands(&scene.prepared.stage_drawn, |a, b| Reading::Stage.worse(a, b));
    scene.frame(layers, Lane::Stage);
    for stage in 1..=HATCHES {
        let path = boxes(&all, row, |it| it > 0 && it.min(HATCHES) == stage);
        layers.under.patterned("hatched", &scene.hatch(stage), &path);
    }
    layers.under.path("edge", &partings(&all, row));
    let mut pills = Path::default();
    let size = scene.layout.text_size();
    let mut texts = Vec::new();
    for band in widest(&all, 15.0, MOST_STAGES) {
        let Some(stage) = band.value else { continue };
        let text = scene.labels.short_stage(stage);
        let width = text_width(&text, size) + 8.0;
        if width + 2.0 > band.width() {
            continue;
        }
        if stage > 0 {
            pills.rectangle(band.middle() - 0.5 * width, row.middle() - 8.5, width, 17.0);
            texts.push(("strong", band.middle(), text));
        } else if on_descent(scene, band.middle()) {
            // Elsewhere nobody asks for one.
            texts.push(("tick", band.middle(), text));
        }
    }
    layers.over.path("pill", &pills);
    for (class, x, text) in texts {
        layers.over.text(class, Anchor::Middle, (x, row.middle() + 5.0), &text);
    }
    scene.title(layers, Lane::Stage);
}

fn on_descent(scene: &Scene, x: f64) -> bool {
    scene.picture().descent_at(scene.picture().nearest(scene.across().back(x))).is_some()
}

/// Draws the heat lane: steps with a mark and a word, and the hottest place.
pub(crate) fn draw_heat(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.heat;
    if !row.is_there() {
        return;
    }
    let all = scene.bands(&scene.prepared.heat, |a, b| Reading::Heat.worse(a, b));
    scene.frame(layers, Lane::Heat);
    for step in HeatStep::ALL {
        let class = format!("tone heat-{}", step as u8);
        layers.under.path(&class, &boxes(&all, row, |it| it == step as u8));
    }
    layers.under.path("parting", &partings(&all, row));
    let mut rows = Rows::new(1);
    write_hottest(scene, layers, &all, &mut rows);
    // The hottest first: where there is not room for all words, it is the one that must be read.
    for step in HeatStep::ALL.into_iter().rev() {
        let own: Vec<Band> = all.iter().copied().filter(|it| it.value == Some(step as u8)).collect();
        write_heat(
            scene,
            layers,
            step,
            &widest(&own, marks_width(step) + 6.0, MOST_HEATS / 4 + 1),
            &mut rows,
        );
    }
    scene.title(layers, Lane::Heat);
}

/// A line where the brakes are hottest, with their temperature.
fn write_hottest(scene: &Scene, layers: &mut Layers, all: &[Band], rows: &mut Rows) {
    let Some(index) = scene.prepared.hottest_at else { return };
    let Some(celsius) = value(&scene.picture().temperature, index) else { return };
    if !scene.window.shows(scene.picture().place_of(index)) {
        return;
    }
    let (row, x) = (scene.layout.heat, scene.x(index));
    let mut line = Path::default();
    line.polyline(&[(x, row.top), (x, row.bottom())]);
    layers.under.path("edge", &line);
    let text = format::temperature(celsius, scene.prepared.units);
    let width = text_width(&text, scene.layout.text_size());
    for (anchor, at, x0) in [(Anchor::Start, x + 6.0, x + 6.0), (Anchor::End, x - 6.0, x - 6.0 - width)] {
        let step = all.iter().find(|it| it.x0 <= x0 && x0 + width <= it.x1).and_then(|it| it.value);
        let Some(step) = step else { continue };
        if rows.place(x0, x0 + width).is_some() {
            layers.over.text(&format!("on heat-{step}"), anchor, (at, row.middle() + 5.0), &text);
            return;
        }
    }
}

/// Marks and words of one step; the words go first where there is not room for both.
fn write_heat(scene: &Scene, layers: &mut Layers, step: HeatStep, own: &[Band], rows: &mut Rows) {
    let row = scene.layout.heat;
    let word = scene.labels.heat_step(step);
    let (mark, text) = (marks_width(step), BOLD * text_width(word, scene.layout.text_size()));
    let gap = if mark > 0.0 { 5.0 } else { 0.0 };
    let mut marks = Path::default();
    for band in own {
        let full = mark + gap + text;
        // At the beginning of a long band, where a reader begins; else in the middle.
        let lead = |width: f64| {
            if band.width() > width + 40.0 { band.x0 + 10.0 } else { band.middle() - 0.5 * width }
        };
        let x0 = lead(full);
        let with_word = full + 8.0 <= band.width() && rows.place(x0, x0 + full).is_some();
        let x0 = if with_word { x0 } else { lead(mark) };
        if !with_word && (mark <= 0.0 || rows.place(x0, x0 + mark).is_none()) {
            continue;
        }
        for count in 0..marks_of(step) {
            let x = x0 + MARK_STEP * f64::from(count);
            marks.polyline(&[
                (x, row.middle() + 5.0),
                (x + 9.0, row.middle() + 5.0),
                (x + 4.5, row.middle() - 4.0),
            ]);
            marks.close();
        }
        if with_word {
            let class = format!("on strong heat-{}", step as u8);
            let place = (x0 + mark + gap, row.middle() + 5.0);
            layers.over.text(&class, Anchor::Start, place, word);
        }
    }
    layers.over.path(&format!("mark heat-{}", step as u8), &marks);
}

const MARK_STEP: f64 = 10.0;
/// Bold letters are wider by this.
const BOLD: f64 = 1.1;

/// Marks of a step: none is cool, three are over the limit.
fn marks_of(step: HeatStep) -> u8 {
    match step {
        HeatStep::Cool => 0,
        HeatStep::Warm => 1,
        HeatStep::Hot => 2,
        HeatStep::OverLimit => 3,
    }
}

fn marks_width(step: HeatStep) -> f64 {
    (f64::from(marks_of(step)) * MARK_STEP - 1.0).max(0.0)
}

/// Boxes of all bands with a wanted value, as one path.
fn boxes(all: &[Band], row: Row, wanted: impl Fn(u8) -> bool) -> Path {
    let mut path = Path::default();
    for band in all.iter().filter(|band| band.value.is_some_and(&wanted)) {
        path.rectangle(band.x0, row.top, band.width(), row.height);
    }
    path
}

/// Lines between neighbours that are both wide enough to be seen.
fn partings(all: &[Band], row: Row) -> Path {
    let mut path = Path::default();
    let wide = |pair: &&[Band]| pair.iter().all(|band| band.width() >= 3.0 && band.value.is_some());
    for pair in all.windows(2).filter(wide) {
        path.polyline(&[(pair[0].x1, row.top), (pair[0].x1, row.bottom())]);
    }
    path
}
