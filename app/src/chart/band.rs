//! A band between two lines: where a value lies in nine of ten runs.

use super::decimate::clip;
use super::path::Path;
use super::picture::Ends;
use super::scale::Scale;
use super::scene::Scene;

/// The pieces of a line as far as they lie in the window, none higher than `top`, px.
pub(crate) fn inside(scene: &Scene, values: &[f32], up: &Scale, top: f64) -> Vec<Vec<(f64, f64)>> {
    let kept = |piece: Vec<(f64, f64)>| {
        let low: Vec<_> = piece.into_iter().map(|(x, y)| (x, y.max(top))).collect();
        clip(&low, scene.layout.left, scene.layout.right)
    };
    scene.lines(values, up).into_iter().map(kept).collect()
}

/// Out along one end, back along the other.
pub(crate) fn between(scene: &Scene, band: &Ends, up: &Scale, top: f64) -> Path {
    let mut path = Path::default();
    for (below, above) in inside(scene, &band.low, up, top).iter().zip(inside(scene, &band.high, up, top)) {
        let outline: Vec<_> = above.iter().chain(below.iter().rev()).copied().collect();
        path.polyline(&outline);
        path.close();
    }
    path
}
