//! Where each part of the picture stands, for the space that there is.
//!
//! Drawn to real pixels. The page decides width and height; the lanes keep their heights, and the profile
//! takes all the rest. Nothing depends on the window shown but the strip of the whole road, which stands
//! only while a part is shown and takes its height from the profile: lanes and axis never move.

use super::scale::Scale;
use super::window::Window;

/// Parts of the picture that have a title.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lane {
    /// Height profile.
    Height,
    /// Gear.
    Gear,
    /// Retarder stage.
    Stage,
    /// Brake heat.
    Heat,
    /// Speed.
    Speed,
    /// Brake temperature.
    Temperature,
}

impl Lane {
    /// Those that have their title in the column left of them.
    pub const TITLED: [Self; 5] = [Self::Gear, Self::Stage, Self::Heat, Self::Speed, Self::Temperature];
}

/// A horizontal strip of the picture, px. A part that is left out has no height.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Row {
    /// Upper edge.
    pub(crate) top: f64,
    /// Height.
    pub(crate) height: f64,
}

impl Row {
    /// Lower edge.
    #[must_use]
    pub(crate) fn bottom(&self) -> f64 {
        self.top + self.height
    }

    /// Middle.
    #[must_use]
    pub(crate) fn middle(&self) -> f64 {
        self.top + 0.5 * self.height
    }

    /// Whether it is drawn.
    #[must_use]
    pub(crate) fn is_there(&self) -> bool {
        self.height > 0.0
    }
}

/// The space that there is, px.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Space {
    /// Width.
    pub(crate) width: f64,
    /// Height.
    pub(crate) height: f64,
    /// Least size of what is pressed: larger for fingers, and for gloves.
    pub(crate) target: f64,
}

/// What of a picture decides about the places of its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Contents {
    /// It has descents.
    pub(crate) descents: bool,
    /// It shows a part of the road.
    pub(crate) zoomed: bool,
    /// The profile is filled by brake heat.
    pub(crate) heat: bool,
    /// Width of the widest title, px.
    pub(crate) titles: f64,
}

/// Places of all parts, px.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Layout {
    /// Width of the drawing.
    pub(crate) width: f64,
    /// Height of the drawing.
    pub(crate) height: f64,
    /// Left edge of what is drawn along the road.
    pub(crate) left: f64,
    /// Right edge.
    pub(crate) right: f64,
    /// Whether there is little room, as on a phone.
    pub(crate) compact: bool,
    /// Least size of what is pressed.
    pub(crate) target: f64,
    /// The strip of the whole road.
    pub(crate) strip: Row,
    /// Numbered bars of the descents.
    pub(crate) bars: Row,
    /// Height profile.
    pub(crate) profile: Row,
    /// Gear lane.
    pub(crate) gear: Row,
    /// Stage lane.
    pub(crate) stage: Row,
    /// Heat lane.
    pub(crate) heat: Row,
    /// Speed lane.
    pub(crate) speed: Row,
    /// Temperature lane.
    pub(crate) temperature: Row,
    /// Marks of the distance axis.
    pub(crate) axis: Row,
}

/// Below this width there is little room, px.
const COMPACT_BELOW: f64 = 640.0;
/// No picture is smaller, px; a page being laid out may report less for a moment.
const SMALLEST: (f64, f64) = (240.0, 180.0);
/// From this height on the brake temperature has a lane of its own, px.
const TALL: f64 = 620.0;
/// Height of a bar, px.
const BAR: f64 = 30.0;
/// Space between titles and the edges, px.
const TITLE_ROOM: f64 = 12.0;

impl Layout {
    /// The layout for a space.
    #[must_use]
    pub(crate) fn new(space: Space, has: Contents) -> Self {
        let (width, height) = (space.width.max(SMALLEST.0), space.height.max(SMALLEST.1));
        let compact = width < COMPACT_BELOW;
        let (least, right) = if compact { (46.0, width - 4.0) } else { (60.0, width - 10.0) };
        let left = (has.titles + TITLE_ROOM).clamp(least, 1.4 * least);
        let (band, line, temperature, gap) =
            if compact { (22.0, 42.0, 56.0, 4.0) } else { (26.0, 54.0, 74.0, 5.0) };
        let tall = height >= TALL;
        let bars = if has.descents { BAR } else { 0.0 };
        let axis = if compact { 20.0 } else { 24.0 };
        // Gear, stage, heat, speed, temperature.
        let mut lanes = [band, band, band, line, temperature];
        if !tall {
            if has.heat {
                (lanes[3], lanes[4]) = (0.0, line);
            } else {
                lanes[4] = 0.0;
            }
        }
        let above = 4.0 + bars + 8.0;
        let below = |lanes: &[f64; 5]| {
            lanes.iter().filter(|it| **it > 0.0).map(|it| it + gap).sum::<f64>() + 2.0 + axis
        };
        let least_profile = if compact { 84.0 } else { 110.0 };
        // What the picture can do without first.
        for lane in [2, 4, 3, 1] {
            if height - above - below(&lanes) < least_profile {
                lanes[lane] = 0.0;
            }
        }
        let mut top = 4.0;
        let mut row = |lead: f64, height: f64| {
            let row = Row { top: top + if height > 0.0 { lead } else { 0.0 }, height };
            top = row.bottom();
            row
        };
        let rest = (height - above - below(&lanes)).max(24.0);
        let strip = if has.zoomed { space.target.min(0.4 * rest) } else { 0.0 };
        let strip = row(0.0, strip);
        let bars = row(if has.zoomed { 4.0 } else { 0.0 }, bars);
        let profile_top = bars.bottom() + 8.0;
        let profile_bottom = height - below(&lanes);
        let profile = Row { top: profile_top, height: (profile_bottom - profile_top).max(24.0) };
        top = profile.bottom() + 2.0;
        let mut row = |height: f64| {
            let row = Row { top: top + if height > 0.0 { gap } else { 0.0 }, height };
            top = row.bottom();
            row
        };
        let [gear, stage, heat, speed, temperature] = lanes.map(&mut row);
        let axis = Row { top, height: axis };
        Self {
            width,
            height: axis.bottom(),
            left,
            right,
            compact,
            target: space.target,
            strip,
            bars,
            profile,
            gear,
            stage,
            heat,
            speed,
            temperature,
            axis,
        }
    }

    /// Metres along the road to px.
    #[must_use]
    pub(crate) fn across(&self, window: Window) -> Scale {
        Scale::new((window.from, window.to), (self.left, self.right))
    }

    /// Width of what is drawn along the road, px.
    #[must_use]
    pub(crate) fn plot_width(&self) -> f64 {
        self.right - self.left
    }

    /// Size of the text, px: 13, and 12 where there is little room.
    #[must_use]
    pub(crate) fn text_size(&self) -> f64 {
        if self.compact { 12.0 } else { 13.0 }
    }

    /// The row of a lane.
    #[must_use]
    pub(crate) fn lane(&self, lane: Lane) -> Row {
        match lane {
            Lane::Height => self.profile,
            Lane::Gear => self.gear,
            Lane::Stage => self.stage,
            Lane::Heat => self.heat,
            Lane::Speed => self.speed,
            Lane::Temperature => self.temperature,
        }
    }

    /// Size of the plan shape in a corner, and enlarged, px.
    #[must_use]
    pub(crate) fn plan_size(&self, large: bool) -> (f64, f64) {
        let (width, height) = (self.plot_width(), self.profile.height);
        if large {
            ((0.6 * width).min(1.6 * height), 0.92 * height)
        } else if self.compact {
            (84.0_f64.min(0.4 * width), (0.4 * height).clamp(44.0, 56.0))
        } else {
            (200.0_f64.min(0.3 * width), (0.4 * height).clamp(48.0, 124.0))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Contents, Lane, Layout, Space};

    const PLAIN: Contents = Contents { descents: true, zoomed: false, heat: false, titles: 38.0 };

    fn of(width: f64, height: f64, has: Contents) -> Layout {
        Layout::new(Space { width, height, target: 36.0 }, has)
    }

    #[test]
    fn rows_follow_each_other_and_fill_the_space() {
        for width in [0.0, 320.0, 360.0, 639.0, 640.0, 950.0, 2400.0] {
            for height in [0.0, 180.0, 240.0, 338.0, 500.0, 619.0, 620.0, 900.0] {
                for (descents, zoomed, heat) in
                    [(true, false, false), (true, true, true), (false, false, true), (false, true, false)]
                {
                    let has = Contents { descents, zoomed, heat, titles: 58.0 };
                    let it = of(width, height, has);
                    let lanes = [it.gear, it.stage, it.heat, it.speed, it.temperature];
                    let rows = [it.strip, it.bars, it.profile].into_iter().chain(lanes).chain([it.axis]);
                    let rows: Vec<_> = rows.collect();
                    let order = rows.windows(2).all(|pair| pair[0].bottom() <= pair[1].top + 1e-9);
                    assert!(order, "{width} {height} {has:?} {it:?}");
                    assert!((it.height - height.max(180.0)).abs() < 1e-6, "{height} {}", it.height);
                    assert!(it.left < it.right && it.right <= it.width);
                    assert!(it.profile.height >= 24.0 && it.gear.is_there());
                }
            }
        }
    }

    #[test]
    fn the_profile_takes_what_the_lanes_leave() {
        let (low, high) = (of(950.0, 500.0, PLAIN), of(950.0, 600.0, PLAIN));
        assert!((high.profile.height - low.profile.height - 100.0).abs() < 1e-6);
        assert!(low.profile.height >= 0.5 * low.height, "{low:?}");
        let phone = of(360.0, 338.0, PLAIN);
        assert!(phone.profile.height >= 0.4 * phone.height, "{phone:?}");
        assert!(phone.heat.is_there() && phone.speed.is_there());
    }

    #[test]
    fn temperature_has_its_lane_where_there_is_room_or_where_it_is_asked_for() {
        let hot = Contents { heat: true, ..PLAIN };
        assert!(!of(950.0, 500.0, PLAIN).temperature.is_there());
        assert!(of(950.0, 620.0, PLAIN).temperature.is_there());
        let (cool, heat) = (of(950.0, 500.0, PLAIN), of(950.0, 500.0, hot));
        assert!(!heat.speed.is_there());
        assert_eq!(cool.speed, heat.temperature, "it stands where the speed stood");
        assert_eq!(cool.profile, heat.profile, "nothing else moves");
    }

    #[test]
    fn zooming_moves_no_lane() {
        for (width, height) in [(950.0, 500.0), (360.0, 338.0), (468.0, 300.0), (1500.0, 760.0)] {
            let (whole, part) =
                (of(width, height, PLAIN), of(width, height, Contents { zoomed: true, ..PLAIN }));
            for lane in Lane::TITLED {
                assert_eq!(whole.lane(lane), part.lane(lane));
            }
            assert_eq!(whole.axis, part.axis);
            assert!(part.strip.is_there() && !whole.strip.is_there());
        }
    }

    #[test]
    fn long_titles_widen_their_column_a_little() {
        assert!((of(950.0, 500.0, PLAIN).left - 60.0).abs() < 1e-9);
        let long = of(950.0, 500.0, Contents { titles: 400.0, ..PLAIN });
        assert!(long.left <= 84.0 + 1e-9);
    }
}
