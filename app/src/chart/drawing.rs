//! The picture put together, as the text of its two layers.

use super::markup::Markup;
use super::room::Room;
use super::scene::{HATCHES, Layers, Scene, hatch_id};
use super::{axis, figures, flags, lanes, legs, profile, speed, temperature};

/// Draws all parts of the picture.
///
/// The labels of each lane stand in a group with the lane's test mark; its areas and lines,
/// over which the cursor runs, in the lower layer.
#[must_use]
pub(crate) fn draw(scene: &Scene) -> Layers {
    let mut layers = Layers::default();
    let hill = scene.hill();
    let mut room = Room::default();
    if let Some(area) = scene.kept_free {
        room.take(area);
    }
    profile::draw(scene, &mut layers, &hill, &mut room);
    legs::draw(scene, &mut layers, &hill, &mut room);
    figures::draw(scene, &mut layers, &hill);
    flags::draw(scene, &mut layers, &hill, &mut room);
    axis::draw(scene, &mut layers);
    type Part = fn(&Scene, &mut Layers);
    let parts: [(&str, Part); 5] = [
        ("lane-gear", lanes::draw_gear),
        ("lane-stage", lanes::draw_stage),
        ("lane-heat", lanes::draw_heat),
        ("lane-speed", speed::draw),
        ("temperature", temperature::draw),
    ];
    for (mark, part) in parts {
        layers.over.group(mark);
        part(scene, &mut layers);
        layers.over.end();
    }
    layers
}

/// The patterns that a drawing fills with: a hatching for each stage, and one for blanks.
#[must_use]
pub(crate) fn patterns(ids: &str) -> Markup {
    let mut layer = Markup::default();
    for stage in 1..=HATCHES {
        // From 13 px to 3.5 px: the strongest is dense, and still lines at twice the pixels.
        let spacing = 13.0 * small_power(0.6, stage - 1);
        layer.hatch(&hatch_id(ids, stage), "hatch", spacing.max(3.2));
    }
    layer.hatch(&format!("{ids}-blank"), "hatch-blank", 9.0);
    layer.hatch(&format!("{ids}-no-speed"), "hatch-no-speed", 7.0);
    layer
}

/// `base` to a small whole power.
fn small_power(base: f64, times: u8) -> f64 {
    (0..times).fold(1.0, |product, _| product * base)
}

#[cfg(test)]
mod tests {
    use super::draw;
    use crate::chart::Ends;
    use crate::chart::layout::{Contents, Layout, Space};
    use crate::chart::profile::height_scale;
    use crate::chart::reading::Reading;
    use crate::chart::sample;
    use crate::chart::scene::{Prepared, Scene};
    use crate::chart::window::Window;
    use crate::chart::{plan_shape, strip};
    use crate::format::Units;
    use std::sync::Arc;

    fn scene(prepared: &Prepared, window: Window, (width, height): (f64, f64)) -> Scene<'_> {
        let heat = prepared.fill_tones.reading() == Reading::Heat;
        let zoomed = !window.is_whole(prepared.picture.length_m());
        let has = Contents { descents: !prepared.picture.descents.is_empty(), zoomed, heat, titles: 40.0 };
        let layout = Layout::new(Space { width, height, target: 36.0 }, has);
        let up = height_scale(&prepared.picture, window, &layout);
        let kept_free =
            Some([layout.left, layout.profile.top, layout.left + 200.0, layout.profile.top + 90.0]);
        Scene { prepared, window, layout, up, kept_free, chosen: Some(2), ids: "t", labels: &sample::Plain }
    }

    fn nodes(prepared: &Prepared, window: Window, size: (f64, f64)) -> usize {
        let layers = draw(&scene(prepared, window, size));
        layers.under.nodes() + layers.over.nodes()
    }

    #[test]
    fn few_nodes_however_long_the_road() {
        let picture = Arc::new(sample::long(50_000));
        assert!(picture.points() >= 50_000);
        let length = picture.length_m();
        for reading in Reading::ALL {
            let prepared = Prepared::new(Arc::clone(&picture), reading, Units::Metric);
            for window in
                [Window::whole(length), Window { from: 1e5, to: 1.3e5 }, Window { from: 9e4, to: 9.2e4 }]
            {
                for size in [(360.0, 338.0), (950.0, 500.0), (1500.0, 800.0)] {
                    let count = nodes(&prepared, window, size);
                    assert!(count < 190, "{reading:?} {window:?} {size:?}: {count}");
                }
            }
            assert!(strip::draw(&prepared, (0.0, 1000.0), 36.0, "t").nodes() < 24);
            let shape = plan_shape::Shape::new(&prepared, (260.0, 180.0)).expect("the sample has a shape");
            assert!(shape.draw(&prepared, Window::whole(length), None, Some(&sample::Plain)).nodes() < 30);
        }
    }

    #[test]
    fn the_same_road_is_drawn_the_same_twice() {
        let prepared = Prepared::new(Arc::new(sample::pass()), Reading::Grade, Units::Imperial);
        let scene = scene(&prepared, Window::whole(prepared.picture.length_m()), (950.0, 500.0));
        assert_eq!(draw(&scene), draw(&scene));
    }

    #[test]
    fn a_road_without_anything_is_drawn_without_a_panic() {
        let mut picture = sample::pass();
        for lane in [
            &mut picture.recorded_m,
            &mut picture.speed,
            &mut picture.engine_speed,
            &mut picture.temperature,
            &mut picture.after_stop,
            &mut picture.carried,
            &mut picture.east_m,
            &mut picture.heights_m,
        ] {
            *lane = Arc::from([]);
        }
        picture.gear = Arc::from([]);
        picture.assessed = Arc::from([]);
        picture.descents.clear();
        picture.places.clear();
        picture.slopes.clear();
        let prepared = Prepared::new(Arc::new(picture), Reading::Gear, Units::Metric);
        assert!(nodes(&prepared, Window::whole(0.0), (950.0, 500.0)) > 0);
    }

    #[test]
    fn the_band_of_temperature_is_drawn_once_it_is_known() {
        let mut picture = sample::pass();
        let under = |picture: &crate::chart::RoadPicture| {
            let prepared = Prepared::new(Arc::new(picture.clone()), Reading::Gear, Units::Metric);
            let window = Window::whole(picture.length_m());
            draw(&scene(&prepared, window, (950.0, 700.0))).under.into_string()
        };
        assert!(!under(&picture).contains("sureness"));
        let shifted = |by: f32| picture.temperature.iter().map(|it| it + by).collect();
        picture.temperature_band = Some(Ends { low: shifted(-20.0), high: shifted(25.0) });
        assert_eq!(under(&picture).matches("sureness").count(), 1);
    }

    #[test]
    fn names_from_the_file_stay_text() {
        let prepared = Prepared::new(Arc::new(sample::pass()), Reading::Gear, Units::Metric);
        let scene = scene(&prepared, Window::whole(prepared.picture.length_m()), (950.0, 500.0));
        let text = draw(&scene).over.into_string();
        assert!(text.contains("Escape ramp &lt;left&gt;") && !text.contains("<left>"));
    }
}
