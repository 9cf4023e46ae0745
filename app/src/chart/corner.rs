//! The upper corner in which the plan shape stands: the one with more sky.

use super::layout::Layout;
use super::picture::{RoadPicture, value};
use super::room::Area;
use super::scale::Scale;
use super::window::Window;

/// A side of the picture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Corner {
    /// Upper left.
    Left,
    /// Upper right.
    Right,
}

/// Places of the road that are looked at.
const SAMPLES: usize = 48;
/// Space between the shape and the edges of the profile, px.
const EDGE: f64 = 4.0;

/// The corner for a shape of this size. One that had room keeps its place: nothing jumps while zooming.
#[must_use]
pub(crate) fn corner(
    picture: &RoadPicture,
    window: Window,
    (layout, up): (&Layout, &Scale),
    size: (f64, f64),
    before: Option<Corner>,
) -> Corner {
    let sky = |corner: Corner| {
        let area = area(corner, layout, size);
        let across = layout.across(window);
        let (from, to) = (across.back(area[0]), across.back(area[2]));
        let at = |sample: usize| picture.nearest(from + (to - from) * sample as f64 / SAMPLES as f64);
        let heights = (0..=SAMPLES).filter_map(|sample| value(&picture.heights_m, at(sample)));
        heights.fold(layout.profile.height, |least, height| least.min(up.at(height) - layout.profile.top))
    };
    let skies = [Corner::Left, Corner::Right].map(|it| (it, sky(it)));
    if let Some((kept, _)) = skies.into_iter().find(|it| Some(it.0) == before && it.1 >= size.1) {
        return kept;
    }
    if skies[0].1 >= skies[1].1 { Corner::Left } else { Corner::Right }
}

/// Where a shape of this size stands in a corner.
#[must_use]
pub(crate) fn area(corner: Corner, layout: &Layout, (width, height): (f64, f64)) -> Area {
    let x = match corner {
        Corner::Left => layout.left + EDGE,
        Corner::Right => layout.right - EDGE - width,
    };
    let y = layout.profile.top;
    [x, y, x + width, y + height]
}

#[cfg(test)]
mod tests {
    use super::{Corner, area, corner};
    use crate::chart::layout::{Contents, Layout, Space};
    use crate::chart::profile::height_scale;
    use crate::chart::sample;
    use crate::chart::window::Window;

    #[test]
    fn it_is_the_one_with_more_sky_and_stays_while_there_is_enough() {
        let space = Space { width: 950.0, height: 500.0, target: 36.0 };
        let has = Contents { descents: true, zoomed: false, heat: false, titles: 40.0 };
        let layout = Layout::new(space, has);
        let mut picture = sample::pass();
        let whole = Window::whole(picture.length_m());
        let size = layout.plan_size(false);
        // A hill that falls all the way has its sky on the right, one that rises on the left.
        let points = picture.points();
        let falling: Vec<f32> = (0..points).map(|it| 900.0 - it as f32 * 0.2).collect();
        let rising: Vec<f32> = falling.iter().rev().copied().collect();
        for (heights, wanted) in [(falling, Corner::Right), (rising, Corner::Left)] {
            picture.heights_m = heights.into();
            let up = height_scale(&picture, whole, &layout);
            let at = |before| corner(&picture, whole, (&layout, &up), size, before);
            assert_eq!(at(None), wanted);
            let other = if wanted == Corner::Left { Corner::Right } else { Corner::Left };
            assert_eq!(at(Some(other)), wanted, "the hill stands there");
        }
        // Level: both have enough, and none jumps.
        picture.heights_m = vec![500.0; points].into();
        let up = height_scale(&picture, whole, &layout);
        for before in [Corner::Left, Corner::Right] {
            assert_eq!(corner(&picture, whole, (&layout, &up), size, Some(before)), before);
            let area = area(before, &layout, size);
            assert!(area[0] >= layout.left && area[2] <= layout.right);
        }
    }
}
