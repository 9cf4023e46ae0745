//! The speed lane: a line, strong on descents, with the speed of each leg, and the limit.

use super::band::between;
use super::decimate::clip;
use super::label::{Rows, text_width};
use super::layout::Lane;
use super::markup::Anchor;
use super::path::Path;
use super::picture::{Bend, value};
use super::reading::Reading;
use super::scale::Scale;
use super::scene::{Layers, Scene};
use crate::format;

/// Room above the fastest, for its figure, and below the slowest, of the lane's height.
const HEAD: f64 = 0.16;
const FOOT: f64 = 0.08;
/// A curve binds where the truck is no further than this from what it allows, m/s.
const BINDS: f64 = 0.3;

/// Speeds, m/s, to px; the same for every window of a road.
#[must_use]
pub(crate) fn speed_scale(scene: &Scene) -> Scale {
    let row = scene.layout.speed;
    let fastest = scene.prepared.fastest.max(f64::from(scene.picture().speed_limit)).max(1.0);
    Scale::new((0.0, fastest), (row.bottom() - FOOT * row.height, row.top + HEAD * row.height))
}

/// Draws the speed lane.
pub(crate) fn draw(scene: &Scene, layers: &mut Layers) {
    if !scene.layout.speed.is_there() {
        return;
    }
    let up = speed_scale(scene);
    scene.frame(layers, Lane::Speed);
    let limit = f64::from(scene.picture().speed_limit);
    let y_limit = up.at(limit);
    layers.under.line("limit", (scene.layout.left, y_limit), (scene.layout.right, y_limit));
    if let Some(band) = scene.picture().speed_band.as_ref().filter(|_| !scene.picture().is_long()) {
        layers.under.path("sureness", &between(scene, band, &up, scene.layout.speed.top + 1.0));
    }
    draw_line(scene, layers, &up);
    draw_posted(scene, layers, &up);
    let mut rows = Rows::new(1);
    draw_bends(scene, layers, &up, &mut rows);
    let text = scene.labels.speed_limit(limit, scene.prepared.units);
    let right = scene.layout.right - 4.0;
    write_figures(scene, layers, &up, &mut rows);
    // Below its line, where no leg has its figure: the truck is slower than the limit.
    let width = text_width(&text, scene.layout.text_size());
    if rows.place(right - width, right).is_some() {
        layers.over.text("tick haloed", Anchor::End, (right, y_limit + 14.0), &text);
    }
    scene.title(layers, Lane::Speed);
}

fn draw_line(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let picture = scene.picture();
    let (left, right) = (scene.layout.left, scene.layout.right);
    let pieces = scene.lines(&picture.speed, up);
    let stretches = |ends: &[(f64, f64)]| {
        let mut path = Path::default();
        for (x0, x1) in ends {
            let within = |piece: &&Vec<(f64, f64)>| {
                piece.first().is_some_and(|it| it.0 <= *x1) && piece.last().is_some_and(|it| it.0 >= *x0)
            };
            for piece in pieces.iter().filter(within) {
                path.polyline(&clip(piece, *x0, *x1));
            }
        }
        path
    };
    if !picture.is_long() {
        layers.under.path("speed-line pale", &stretches(&[(left, right)]));
    }
    let descents: Vec<_> = picture.descents.iter().filter_map(|it| scene.shown(it.from, it.to)).collect();
    layers.under.path("speed-line", &stretches(&descents));
}

/// Posted limits: the line of the limit, lower for a stretch, with posts at its ends.
fn draw_posted(scene: &Scene, layers: &mut Layers, up: &Scale) {
    let mut path = Path::default();
    for posted in &scene.picture().posted {
        let (from, to) = (scene.x(posted.from), scene.x(posted.to));
        let (left, right) = (scene.layout.left, scene.layout.right);
        if to < left || from > right {
            continue;
        }
        let (y, foot) = (up.at(f64::from(posted.speed)), scene.layout.speed.bottom());
        for end in [from, to] {
            if (left..=right).contains(&end) {
                path.polyline(&[(end, foot), (end, y)]);
            }
        }
        path.polyline(&[(from.max(left), y), (to.min(right), y)]);
    }
    layers.under.path("limit posted", &path);
}

/// What each curve allows, as a short bar: where the truck slows for it, and all of them where speed is what
/// is looked at.
fn draw_bends(scene: &Scene, layers: &mut Layers, up: &Scale, rows: &mut Rows) {
    let picture = scene.picture();
    let all = scene.prepared.fill_tones.reading() == Reading::Speed;
    let binds = |bend: &&Bend| {
        let driven = value(&picture.speed, (bend.from + bend.to) / 2);
        all || driven.is_some_and(|it| (it - f64::from(bend.speed)).abs() <= BINDS)
    };
    let mut path = Path::default();
    let told = |bend: &&Bend| !picture.is_long() || picture.descent_at(bend.from).is_some();
    for bend in picture.bends.iter().filter(told).filter(binds) {
        if let Some((x0, x1)) = scene.shown(bend.from, bend.to) {
            let y = up.at(f64::from(bend.speed));
            path.polyline(&[(x0, y), (x1.max(x0 + 1.0).min(scene.layout.right), y)]);
        }
    }
    layers.under.path("bend-cap", &path);
    if all && !path.is_empty() {
        let end = scene.sample(layers, Lane::Speed, "bend-cap", scene.labels.bend_caps());
        let _ = rows.place(scene.layout.left, end);
    }
}

/// The speed of each leg, above its line.
fn write_figures(scene: &Scene, layers: &mut Layers, up: &Scale, rows: &mut Rows) {
    let picture = scene.picture();
    let size = scene.layout.text_size();
    // The chosen descent first: where there is not room for all it is the one looked at.
    let chosen = |number: usize| scene.chosen == Some(number);
    let (first, rest): (Vec<_>, Vec<_>) = picture.descents.iter().partition(|it| chosen(it.number));
    for descent in first.into_iter().chain(rest) {
        for (leg, to) in picture.legs(descent) {
            let Some((x0, x1)) = scene.shown(leg.from, to) else { continue };
            let text = format::hold_number(f64::from(leg.speed), scene.prepared.units);
            let half = 0.55 * text_width(&text, size);
            let middle = 0.5 * (x0 + x1);
            if x1 - x0 >= 2.0 * half && rows.place(middle - half, middle + half).is_some() {
                let y = up.at(f64::from(leg.speed)) - 5.0;
                let y = y.max(scene.layout.speed.top + 12.0);
                layers.over.text("strong haloed", Anchor::Middle, (middle, y), &text);
            }
        }
    }
}
