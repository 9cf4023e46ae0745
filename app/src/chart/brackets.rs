//! Brackets over the descents, with as much of their story as there is room for.
//!
//! Every descent first gets room for its number, the worst first; then, in the same order, as
//! long a wording as fits beside the others. What finds no room even for a number keeps its
//! bracket: zooming in brings the words back.

use super::label::{Rows, centred, text_width};
use super::layout::LABEL_ROW;
use super::markup::Anchor;
use super::path::Path;
use super::picture::Bracket;
use super::scene::{Layers, Scene};
use solver::Verdict;
use solver::order::ascending;

/// Most labels written.
const MOST_LABELS: usize = 20;

/// Draws the brackets.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    let shown = shown(scene);
    let y = scene.layout.brackets.bottom() - 8.0;
    let (mut held, mut braked, mut chosen) = (Path::default(), Path::default(), Path::default());
    for (descent, x0, x1) in &shown {
        let path = if scene.chosen == Some(descent.number) {
            &mut chosen
        } else {
            match descent.verdict {
                Verdict::RetarderHolds | Verdict::LittleInReserve => &mut held,
                Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => &mut braked,
            }
        };
        bracket(path, *x0, *x1, y, scene);
    }
    layers.under.path("bracket", &held);
    layers.under.path("bracket braked", &braked);
    layers.under.path("bracket chosen", &chosen);
    write_labels(scene, layers, &shown);
}

/// Number of the descent whose bracket is at `x`, px.
#[must_use]
pub(crate) fn at(scene: &Scene, x: f64) -> Option<usize> {
    let near = |it: &&(Bracket, f64, f64)| it.1 - 6.0 <= x && x <= it.2 + 6.0;
    let distance = |it: &(Bracket, f64, f64)| (0.5 * (it.1 + it.2) - x).abs();
    let all = shown(scene);
    all.iter().filter(near).min_by(|a, b| distance(a).total_cmp(&distance(b))).map(|it| it.0.number)
}

/// Descents in the window with their ends, px, cut at the edges.
fn shown(scene: &Scene) -> Vec<(Bracket, f64, f64)> {
    let (left, right) = (scene.layout.left, scene.layout.right);
    let ends = |descent: &Bracket| {
        let (x0, x1) = (scene.x(descent.from), scene.x(descent.to));
        (x1 > left && x0 < right).then(|| (*descent, x0.max(left), x1.min(right)))
    };
    scene.picture().descents.iter().filter_map(ends).collect()
}

/// One bracket; an end that is cut by the window has no foot.
fn bracket(path: &mut Path, x0: f64, x1: f64, y: f64, scene: &Scene) {
    let foot = |x: f64, edge: f64| if (x - edge).abs() < 1e-6 { y } else { y + 6.0 };
    // A hair inside, so that two descents that meet have two brackets.
    let (a, b) = (x0 + 0.8, (x1 - 0.8).max(x0 + 1.6));
    let (left, right) = (foot(x0, scene.layout.left), foot(x1, scene.layout.right));
    path.polyline(&[(a, left), (a, y), (b, y), (b, right)]);
}

fn write_labels(scene: &Scene, layers: &mut Layers, shown: &[(Bracket, f64, f64)]) {
    // The chosen one, then the worst verdict, then the widest: no picture is a million wide.
    let rank =
        |it: &Bracket| f64::from(it.verdict as u8) + if scene.chosen == Some(it.number) { 10.0 } else { 0.0 };
    let order = ascending(shown.iter().map(|(it, x0, x1)| -(1e6 * rank(it) + (x1 - x0))));
    let size = scene.layout.text_size();
    let step = scene.picture().step();
    let room = |text: &str, x0: f64, x1: f64| {
        let width = text_width(text, size);
        centred(0.5 * (x0 + x1), width, scene.layout.left, scene.layout.right)
    };
    let mut rows = Rows::new(scene.layout.bracket_rows);
    let mut placed = Vec::new();
    for (descent, x0, x1) in order.into_iter().map(|index| shown[index]) {
        let number = descent.number.to_string();
        let narrow = room(&number, x0, x1);
        if let Some(row) = rows.place(narrow.0, narrow.1) {
            placed.push((descent, (x0, x1), row, number, narrow));
        }
        if placed.len() == MOST_LABELS {
            break;
        }
    }
    for (descent, (x0, x1), row, mut text, narrow) in placed {
        let mut stretch = narrow;
        let length = (descent.to - descent.from) as f64 * step;
        for wording in scene.labels.bracket(&descent, length, scene.prepared.units) {
            let wide = room(&wording, x0, x1);
            // A label that reaches beyond its bracket would be read as its neighbour's.
            let own = wide.1 - wide.0 <= x1 - x0 + 6.0;
            if own && rows.widen(row, stretch, wide) {
                (text, stretch) = (wording, wide);
                break;
            }
        }
        let base = scene.layout.brackets.bottom() - 13.0 - row as f64 * LABEL_ROW;
        let class = if scene.chosen == Some(descent.number) { "label strong" } else { "label" };
        layers.over.text(class, Anchor::Middle, (0.5 * (stretch.0 + stretch.1), base), &text);
    }
}
