//! What every part of the picture needs to draw itself.

use super::bands::{Band, bands};
use super::decimate::lines;
use super::hill::Hill;
use super::labels::Labels;
use super::layout::{Lane, Layout};
use super::markup::{Anchor, Markup};
use super::picture::{Bracket, Pitch, RoadPicture, value};
use super::reading::{Reading, Tones};
use super::room::Area;
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
    /// Gear to hold inside descents.
    pub(crate) held: Vec<Option<u8>>,
    /// Gear outside them.
    pub(crate) elsewhere: Vec<Option<u8>>,
    /// Colours of the gears inside descents.
    pub(crate) gear_tones: Tones,
    /// Stage along the road.
    pub(crate) stage: Vec<Option<u8>>,
    /// What of it the lane shows: of a long road descents only.
    pub(crate) stage_drawn: Vec<Option<u8>>,
    /// Heat step along the road.
    pub(crate) heat: Vec<Option<u8>>,
    /// Speed along the road in whole km/h or mph, rounded down as a speed to hold is.
    pub(crate) whole_speed: Vec<Option<u8>>,
    /// Greatest speed, m/s.
    pub(crate) fastest: f64,
    /// Greatest temperature after a stop, °C.
    pub(crate) hottest: f64,
    /// Grid point at which the brakes are hottest.
    pub(crate) hottest_at: Option<usize>,
    /// The steepest stretch of each descent.
    pitches: Vec<(usize, Pitch)>,
}

impl Prepared {
    /// Works it out.
    #[must_use]
    pub(crate) fn new(picture: Arc<RoadPicture>, reading: Reading, units: Units) -> Self {
        let gear = Reading::Gear.along(&picture, units);
        let (held, elsewhere) = parted(&gear, &picture);
        // Gears are told where one is to be held; on a climb the driver chooses.
        let fill = if reading == Reading::Gear { held.clone() } else { reading.along(&picture, units) };
        let stage = Reading::Stage.along(&picture, units);
        let unit = units.metres_per_second_per_speed();
        let whole =
            |index| value(&picture.speed, index).map(|it| (it / unit + 1e-3).floor().clamp(0.0, 254.0) as u8);
        let pitch = |it: &Bracket| picture.pitch(it).map(|pitch| (it.number, pitch));
        Self {
            units,
            fill_tones: Tones::of(reading, &fill),
            fill,
            gear_tones: Tones::of(Reading::Gear, &held),
            gear,
            held,
            elsewhere,
            stage_drawn: stage_drawn(&stage, &picture),
            stage,
            heat: Reading::Heat.along(&picture, units),
            whole_speed: (0..picture.points()).map(whole).collect(),
            fastest: greatest(&picture.speed),
            hottest: greatest(&picture.after_stop).max(greatest(&picture.temperature)),
            hottest_at: hottest_at(&picture.temperature),
            pitches: picture.descents.iter().filter_map(pitch).collect(),
            picture,
        }
    }

    /// The steepest stretch of a descent, by its number.
    #[must_use]
    pub(crate) fn pitch(&self, number: usize) -> Option<Pitch> {
        self.pitches.iter().find(|it| it.0 == number).map(|it| it.1)
    }
}

/// Inside descents the gear of each leg, and outside them the gear driven. For a curve the truck slows in a
/// lower gear, but what is to be held is the leg's.
fn parted(driven: &[Option<u8>], picture: &RoadPicture) -> (Vec<Option<u8>>, Vec<Option<u8>>) {
    let (mut inside, mut outside) = (vec![None; driven.len()], driven.to_vec());
    for descent in &picture.descents {
        // A value holds from its grid point to the next, so that a foot is no part of its descent.
        outside[descent.from.min(driven.len())..descent.to.min(driven.len())].fill(None);
        for (leg, to) in picture.legs(descent) {
            let cells = inside.iter_mut().enumerate().take(to).skip(leg.from);
            for (index, held) in cells {
                *held = picture.is_assessed(index).then_some(leg.gear);
            }
        }
    }
    (inside, outside)
}

fn stage_drawn(all: &[Option<u8>], picture: &RoadPicture) -> Vec<Option<u8>> {
    if !picture.is_long() {
        return all.to_vec();
    }
    let mut inside = vec![None; all.len()];
    for descent in &picture.descents {
        let (from, to) = (descent.from.min(all.len()), descent.to.min(all.len()));
        inside[from..to].copy_from_slice(&all[from..to]);
    }
    inside
}

fn greatest(lane: &[f32]) -> f64 {
    lane.iter().filter(|it| it.is_finite()).fold(0.0, |most, it| most.max(f64::from(*it)))
}

fn hottest_at(lane: &[f32]) -> Option<usize> {
    let known = (0..lane.len()).filter(|index| lane[*index].is_finite());
    known.reduce(|hottest, index| if lane[index] > lane[hottest] { index } else { hottest })
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
    /// Heights, m, to px.
    pub(crate) up: Scale,
    /// Where the plan shape stands, on which nothing is written.
    pub(crate) kept_free: Option<Area>,
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

    /// The road line in the window.
    #[must_use]
    pub(crate) fn hill(&self) -> Hill {
        Hill { line: self.lines(&self.picture().heights_m, &self.up).concat() }
    }

    /// Px of the road line at a grid point.
    #[must_use]
    pub(crate) fn y(&self, index: usize) -> f64 {
        value(&self.picture().heights_m, index).map_or(self.up.range().0, |it| self.up.at(it))
    }

    /// Stretch between two grid points, px, as far as it lies in the window.
    #[must_use]
    pub(crate) fn shown(&self, from: usize, to: usize) -> Option<(f64, f64)> {
        let (x0, x1) = (self.x(from), self.x(to));
        (x1 > self.layout.left && x0 < self.layout.right)
            .then(|| (x0.max(self.layout.left), x1.min(self.layout.right)))
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

    /// Writes the title of a lane into the column left of it.
    pub(crate) fn title(&self, layers: &mut Layers, lane: Lane) {
        let place = (self.layout.left - 8.0, self.layout.lane(lane).middle() + 4.5);
        layers.over.text("title", Anchor::End, place, self.labels.lane_title(lane));
    }

    /// A sample of a lane's second line with its name, in the lane's upper corner; gives its end, px.
    pub(crate) fn sample(&self, layers: &mut Layers, lane: Lane, class: &str, name: &str) -> f64 {
        let (x, y) = (self.layout.left + 6.0, self.layout.lane(lane).top + 14.0);
        layers.over.line(class, (x, y - 4.0), (x + 18.0, y - 4.0));
        layers.over.text("tick haloed", Anchor::Start, (x + 23.0, y), name);
        x + 23.0 + super::label::text_width(name, self.layout.text_size())
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
