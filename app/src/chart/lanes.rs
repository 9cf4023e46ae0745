//! The three lanes of bands: gear, stage and brake heat.

use super::bands::Band;
use super::label::text_width;
use super::layout::{Lane, Row};
use super::markup::Anchor;
use super::path::Path;
use super::reading::Reading;
use super::scene::{HATCHES, Layers, Scene, widest};
use solver::HeatStep;

/// Most labels of a lane.
const MOST_GEARS: usize = 14;
const MOST_STAGES: usize = 10;
const MOST_HEATS: usize = 8;

/// Draws the gear lane: a number in each band that is wide enough.
pub(crate) fn draw_gear(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.gear;
    let tones = &scene.prepared.gear_tones;
    let all = scene.bands(&scene.prepared.gear, |a, b| Reading::Gear.worse(a, b));
    scene.frame(layers, Lane::Gear);
    for gear in tones.used() {
        layers.under.path(&tones.filled(*gear), &boxes(&all, row, |it| it == *gear));
    }
    layers.under.path("parting", &partings(&all, row));
    let size = scene.layout.text_size();
    for band in widest(&all, text_width("8", size) + 5.0, MOST_GEARS) {
        let Some(gear) = band.value else { continue };
        let text = gear.to_string();
        if BOLD * text_width(&text, size) + 3.0 <= band.width() {
            let class = format!("on strong {}", tones.class(gear));
            layers.over.text(&class, Anchor::Middle, (band.middle(), row.middle() + 5.0), &text);
        }
    }
    scene.title(layers, Lane::Gear);
}

/// Draws the stage lane: more lines are more stage, the number in a small pill.
pub(crate) fn draw_stage(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.stage;
    let all = scene.bands(&scene.prepared.stage, |a, b| Reading::Stage.worse(a, b));
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
            pills.rectangle(band.middle() - 0.5 * width, row.middle() - 9.0, width, 18.0);
        }
        texts.push((if stage > 0 { "strong" } else { "tick" }, band.middle(), text));
    }
    layers.over.path("pill", &pills);
    for (class, x, text) in texts {
        layers.over.text(class, Anchor::Middle, (x, row.middle() + 5.0), &text);
    }
    scene.title(layers, Lane::Stage);
}

/// Draws the heat lane: steps with a mark and a word.
pub(crate) fn draw_heat(scene: &Scene, layers: &mut Layers) {
    let row = scene.layout.heat;
    let all = scene.bands(&scene.prepared.heat, |a, b| Reading::Heat.worse(a, b));
    scene.frame(layers, Lane::Heat);
    for step in HeatStep::ALL {
        let class = format!("tone heat-{}", step as u8);
        layers.under.path(&class, &boxes(&all, row, |it| it == step as u8));
    }
    layers.under.path("parting", &partings(&all, row));
    let size = scene.layout.text_size();
    for step in HeatStep::ALL {
        let own: Vec<Band> = all.iter().copied().filter(|it| it.value == Some(step as u8)).collect();
        write_heat(scene, layers, step, &widest(&own, marks_width(step) + 6.0, MOST_HEATS / 4 + 1), size);
    }
    scene.title(layers, Lane::Heat);
}

/// Marks and words of one step; the words go first where there is not room for both.
fn write_heat(scene: &Scene, layers: &mut Layers, step: HeatStep, own: &[Band], size: f64) {
    let row = scene.layout.heat;
    let word = scene.labels.heat_step(step);
    let (mark, text) = (marks_width(step), BOLD * text_width(word, size));
    let gap = if mark > 0.0 { 5.0 } else { 0.0 };
    let mut marks = Path::default();
    for band in own {
        let full = mark + gap + text;
        let with_word = full + 8.0 <= band.width();
        let x0 = band.middle() - 0.5 * if with_word { full } else { mark };
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
    for pair in all.windows(2).filter(|pair| pair.iter().all(|band| band.width() >= 3.0)) {
        path.polyline(&[(pair[0].x1, row.top), (pair[0].x1, row.bottom())]);
    }
    path
}
