//! What every part of the picture needs to draw itself.

use super::bands::{Band, bands};
use super::decimate::lines;
use super::labels::Labels;
use super::layout::{Lane, Layout};
use super::markup::{Anchor, Markup};
use super::picture::{RoadPicture, value};
use super::reading::{Reading, Tones};
use super::scale::Scale;
use super::window::Window;
use crate::format::Units;
use solver::order::ascending;
use std::sync::Arc;

/// What is worked out once for a picture, a reading and a set of units, whatever the zoom.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Prepared {
    /// The picture.
    pub(crate) picture: Arc<RoadPicture>,
    /// The units read.
    pub(crate) units: Units,
    /// The reading that fills the profile, along the road.
    pub(crate) fill: Vec<Option<u8>>,
    /// Its colours.
    pub(crate) fill_tones: Tones,
    /// Gear along the road.
    pub(crate) gear: Vec<Option<u8>>,
    /// Colours of the gears.
    pub(crate) gear_tones: Tones,
    /// Stage along the road.
    pub(crate) stage: Vec<Option<u8>>,
    /// Heat step along the road.
    pub(crate) heat: Vec<Option<u8>>,
    /// Speed along the road in whole km/h or mph, rounded down as a speed to hold is.
    pub(crate) whole_speed: Vec<Option<u8>>,
    /// Greatest speed, m/s.
    pub(crate) fastest: f64,
    /// Greatest temperature after a stop, °C.
    pub(crate) hottest: f64,
}

impl Prepared {
    /// Works it out.
    #[must_use]
    pub(crate) fn new(picture: Arc<RoadPicture>, reading: Reading, units: Units) -> Self {
        let fill = reading.along(&picture, units);
        let gear = Reading::Gear.along(&picture, units);
        let unit = units.metres_per_second_per_speed();
        let whole =
            |index| value(&picture.speed, index).map(|it| (it / unit + 1e-3).floor().clamp(0.0, 254.0) as u8);
        Self {
            units,
            fill_tones: Tones::of(reading, &fill),
            fill,
            gear_tones: Tones::of(Reading::Gear, &gear),
            gear,
            stage: Reading::Stage.along(&picture, units),
            heat: Reading::Heat.along(&picture, units),
            whole_speed: (0..picture.points()).map(whole).collect(),
            fastest: greatest(&picture.speed),
            hottest: greatest(&picture.after_stop).max(greatest(&picture.temperature)),
            picture,
        }
    }
}

fn greatest(lane: &[f32]) -> f64 {
    lane.iter().filter(|it| it.is_finite()).fold(0.0, |most, it| most.max(f64::from(*it)))
}

/// One view of a prepared picture.
#[derive(Clone, Copy)]
pub(crate) struct Scene<'a> {
    /// What is drawn.
    pub(crate) prepared: &'a Prepared,
    /// The stretch shown.
    pub(crate) window: Window,
    /// Where the parts stand.
    pub(crate) layout: Layout,
    /// Number of the descent that is looked at.
    pub(crate) chosen: Option<usize>,
    /// Prefix of the ids of this drawing's patterns.
    pub(crate) ids: &'a str,
    /// What is written in it.
    pub(crate) labels: &'a dyn Labels,
}

/// The two layers of a drawing: the cursor moves between them, so that it never crosses a label.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Layers {
    /// Areas and lines.
    pub(crate) under: Markup,
    /// Labels and marks.
    pub(crate) over: Markup,
}

impl Scene<'_> {
    /// The picture.
    #[must_use]
    pub(crate) fn picture(&self) -> &RoadPicture {
        &self.prepared.picture
    }

    /// Metres along the road to px.
    #[must_use]
    pub(crate) fn across(&self) -> Scale {
        self.layout.across(self.window)
    }

    /// Px of a grid point.
    #[must_use]
    pub(crate) fn x(&self, index: usize) -> f64 {
        self.across().at(self.picture().place_of(index))
    }

    /// Bands of a reading.
    #[must_use]
    pub(crate) fn bands(&self, along: &[Option<u8>], worse: impl Fn(u8, u8) -> u8) -> Vec<Band> {
        bands(along, self.picture().step(), self.window, &self.across(), worse)
    }

    /// Pieces of a line.
    #[must_use]
    pub(crate) fn lines(&self, values: &[f32], up: &Scale) -> Vec<Vec<(f64, f64)>> {
        lines(values, self.picture().step(), self.window, &self.across(), up)
    }

    /// Id of the pattern of a stage; stages beyond the last pattern share it.
    #[must_use]
    pub(crate) fn hatch(&self, stage: u8) -> String {
        hatch_id(self.ids, stage)
    }

    /// Writes the title of a lane and frames it.
    pub(crate) fn title(&self, layers: &mut Layers, lane: Lane) {
        let row = self.layout.lane(lane);
        let name = self.labels.lane(lane);
        let unit = self.labels.lane_unit(lane, self.prepared.units);
        if self.layout.compact {
            // The profile is known by its shape, and its title would stand among the flags.
            if lane != Lane::Height {
                let text = if unit.is_empty() { name.to_owned() } else { format!("{name}, {unit}") };
                layers.over.text("title", Anchor::Start, (self.layout.left, row.top - 4.0), &text);
            }
            return;
        }
        let base = if unit.is_empty() { row.middle() + 4.5 } else { row.middle() - 3.0 };
        layers.over.text("title", Anchor::Start, (2.0, base), name);
        layers.over.text("tick", Anchor::Start, (2.0, base + 16.0), unit);
    }

    /// Base line of the sample of a lane's second line on a wide picture, px.
    pub(crate) fn sample_base(&self, lane: Lane) -> f64 {
        self.layout.lane(lane).middle() + 31.0
    }

    /// A sample of a lane's second line with its name: beside the title, which is above the lane
    /// on a narrow picture (and `title_width` px wide there) and left of it on a wide one.
    pub(crate) fn sample(&self, layers: &mut Layers, lane: Lane, title_width: f64, class: &str, name: &str) {
        let (x, y) = if self.layout.compact {
            (self.layout.left + title_width, self.layout.lane(lane).top - 4.0)
        } else {
            (2.0, self.sample_base(lane))
        };
        layers.over.line(class, (x, y - 4.0), (x + 18.0, y - 4.0));
        layers.over.text("tick", Anchor::Start, (x + 22.0, y), name);
    }

    /// Frames a lane.
    pub(crate) fn frame(&self, layers: &mut Layers, lane: Lane) {
        let row = self.layout.lane(lane);
        let corner = (self.layout.left, row.top);
        layers.under.rectangle("frame", corner, (self.layout.plot_width(), row.height), 0.0);
    }
}

/// Patterns of stage hatching that exist: lines get denser with the stage.
pub(crate) const HATCHES: u8 = 6;

/// Id of the pattern of a stage.
#[must_use]
pub(crate) fn hatch_id(ids: &str, stage: u8) -> String {
    format!("{ids}-hatch-{}", stage.clamp(1, HATCHES))
}

/// The widest bands of at least `least` px, no more than `most` of them.
#[must_use]
pub(crate) fn widest(all: &[Band], least: f64, most: usize) -> Vec<Band> {
    let wide: Vec<Band> = all.iter().copied().filter(|band| band.width() >= least).collect();
    let widest_first = ascending(wide.iter().map(|band| -band.width()));
    widest_first.into_iter().take(most).map(|index| wide[index]).collect()
}
