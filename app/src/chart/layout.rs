//! Where each part of the picture stands, for the width that there is.
//!
//! Drawn to real pixels: on a phone the lanes keep their height and the text its size, and
//! what gives way is the column of titles, which then stand above their lanes. Heights do not
//! depend on the window shown, so that nothing below jumps while zooming.

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

/// A horizontal strip of the picture, px.
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
    /// Whether titles stand above their lanes.
    pub(crate) compact: bool,
    /// Rows of bracket labels.
    pub(crate) bracket_rows: usize,
    /// Rows of flag labels.
    pub(crate) flag_rows: usize,
    /// Brackets of the descents and their labels; without height where there are none.
    pub(crate) brackets: Row,
    /// Flags of places; without height where there are none.
    pub(crate) flags: Row,
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

/// Below this width titles stand above their lanes, px.
const COMPACT_BELOW: f64 = 640.0;
/// No picture is narrower, px; a page being laid out may report less for a moment.
const NARROWEST: f64 = 240.0;
/// Height of a row of labels, px.
pub(crate) const LABEL_ROW: f64 = 18.0;
/// Most rows of labels of one kind: more would push the road off the screen.
const MOST_ROWS: usize = 2;
/// So many descents find room side by side on a wide picture.
const EASY_DESCENTS: usize = 3;

impl Layout {
    /// The layout for `width` px of a road with so many descents and places.
    #[must_use]
    pub(crate) fn new(width: f64, descents: usize, places: usize) -> Self {
        let width = width.max(NARROWEST);
        let compact = width < COMPACT_BELOW;
        let (left, right) = if compact { (38.0, width - 6.0) } else { (112.0, width - 14.0) };
        let title = if compact { 17.0 } else { 0.0 };
        let gap = if compact { 3.0 } else { 6.0 };
        let mut top = 2.0;
        let mut row = |lead: f64, height: f64| {
            let row = Row { top: top + lead, height };
            top = row.bottom();
            row
        };
        let labels = |rows: usize, line: f64| rows as f64 * LABEL_ROW + line;
        let bracket_rows = if descents <= EASY_DESCENTS && !compact { 1 } else { MOST_ROWS };
        let flag_rows = places.clamp(1, MOST_ROWS);
        let brackets = row(0.0, if descents > 0 { labels(bracket_rows, 12.0) } else { 0.0 });
        let flags = row(0.0, if places > 0 { labels(flag_rows, 4.0) } else { 4.0 });
        let profile = row(0.0, if compact { 168.0 } else { 232.0 });
        let gear = row(title + gap + 2.0, 30.0);
        let stage = row(title + gap, 30.0);
        let heat = row(title + gap, 30.0);
        let speed = row(title + gap, if compact { 56.0 } else { 64.0 });
        let temperature = row(title + gap, if compact { 92.0 } else { 104.0 });
        let axis = row(0.0, 26.0);
        Self {
            width,
            height: axis.bottom(),
            left,
            right,
            compact,
            bracket_rows,
            flag_rows,
            brackets,
            flags,
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

    /// Size of the text, px; never below 12.
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
}

#[cfg(test)]
mod tests {
    use super::Layout;

    #[test]
    fn rows_follow_each_other_and_stay_inside() {
        for width in [0.0, 320.0, 360.0, 639.0, 640.0, 1100.0, 2400.0] {
            for (descents, places) in [(9, 4), (0, 1), (2, 0), (0, 0)] {
                let it = Layout::new(width, descents, places);
                let rows = [
                    it.brackets,
                    it.flags,
                    it.profile,
                    it.gear,
                    it.stage,
                    it.heat,
                    it.speed,
                    it.temperature,
                    it.axis,
                ];
                assert!(rows.windows(2).all(|pair| pair[0].bottom() <= pair[1].top + 1e-9));
                assert!(it.axis.bottom() <= it.height);
                assert!(it.left < it.right && it.right <= it.width);
                assert!(it.text_size() >= 12.0);
            }
        }
    }
}
