//! All that the road view draws.
//!
//! Plain slices in SI units, one value a grid point of the road, built by the page's state
//! from the worker's answer. The arrays are shared, so that a picture is cheap to clone and
//! nothing is copied when an entry changes.
//!
//! Invariant: every array has one value a grid point, [`RoadPicture::points`] of them, or is
//! empty, which reads as "nothing known". Functions here and in the chart read through
//! [`value`] and never index past an end.

pub(crate) use super::along::Pitch;
pub use super::along::{Bend, Bracket, Change, Flag, Hold, Posted, Slope};
use super::window::Window;
use solver::Lanes;
use std::sync::Arc;

/// One road, as it is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct RoadPicture {
    /// Distance of two grid points, m.
    pub step_m: f32,
    /// Heights, m; finite everywhere, straight across what was not assessed.
    pub heights_m: Arc<[f32]>,
    /// Heights as recorded, m; NaN where none was.
    pub recorded_m: Arc<[f32]>,
    /// Stretches of one grade, as a sign would state them; they tile what was assessed.
    pub slopes: Vec<Slope>,
    /// Whether the road was assessed at each point.
    pub assessed: Arc<[bool]>,
    /// Speed, m/s; NaN where nothing is said.
    pub speed: Arc<[f32]>,
    /// Engine speed, 1/min; NaN where nothing is said.
    pub engine_speed: Arc<[f32]>,
    /// Hottest service brakes, °C; NaN where nothing is said.
    pub temperature: Arc<[f32]>,
    /// Hottest service brakes after one hard stop there, °C; NaN where nothing is said.
    pub after_stop: Arc<[f32]>,
    /// 5 and 95 % ends of the brake temperature, °C; `None` until they are worked out.
    pub temperature_band: Option<Ends>,
    /// 5 and 95 % ends of the speed, m/s.
    pub speed_band: Option<Ends>,
    /// Share of what must be held that retarder and motoring carry, 0 to 1.
    pub carried: Arc<[f32]>,
    /// Gear; [`Lanes::BLANK`] where nothing is said.
    pub gear: Arc<[u8]>,
    /// Stage, 0 is off; [`Lanes::BLANK`] where nothing is said.
    pub stage: Arc<[u8]>,
    /// Heat step, `solver::HeatStep as u8`; [`Lanes::BLANK`] where nothing is said.
    pub heat: Arc<[u8]>,
    /// Place of each point east of the first, m; empty where the road has no plan shape.
    pub east_m: Arc<[f32]>,
    /// Place of each point north of the first, m.
    pub north_m: Arc<[f32]>,
    /// Gears of the truck.
    pub gears: u8,
    /// Stages of its retarder, "off" not counted; 0 without a retarder.
    pub stages: u8,
    /// Highest brake temperature allowed, °C.
    pub heat_limit_c: f32,
    /// Brake temperature at the start, °C.
    pub start_c: f32,
    /// Speed limit entered, m/s.
    pub speed_limit: f32,
    /// Descents in road order.
    pub descents: Vec<Bracket>,
    /// Number of the hardest descent; `None` of a road without one.
    pub hardest: Option<usize>,
    /// Curves that ask for less than the limit, in road order.
    pub bends: Vec<Bend>,
    /// Places along the road, in road order.
    pub places: Vec<Flag>,
    /// Limits posted on stretches, in road order.
    pub posted: Vec<Posted>,
    /// The road that this one stands beside, on one scale.
    pub beside: Option<Beside>,
}

/// Heights of a road beside which another is drawn on one scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Beside {
    /// Distance of two grid points, m.
    pub step_m: f32,
    /// Heights, m.
    pub heights_m: Arc<[f32]>,
}

/// Between these ends a value lies in nine of ten runs.
#[derive(Debug, Clone, PartialEq)]
pub struct Ends {
    /// 5 % end.
    pub low: Arc<[f32]>,
    /// 95 % end.
    pub high: Arc<[f32]>,
}

/// From this length on speed and stage are drawn on descents only, m.
const LONG_M: f64 = 60_000.0;
/// Over this length the steepest stretch of a descent is meant, m.
const PITCH_M: f64 = 200.0;

impl RoadPicture {
    /// Grid points.
    #[must_use]
    pub fn points(&self) -> usize {
        self.heights_m.len()
    }

    /// Distance of two grid points, m.
    #[must_use]
    pub fn step(&self) -> f64 {
        f64::from(self.step_m)
    }

    /// Length of the picture, m: that of the road, or of a longer one beside it.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        let beside = self.beside.as_ref();
        let other =
            beside.map_or(0.0, |it| it.heights_m.len().saturating_sub(1) as f64 * f64::from(it.step_m));
        self.place_of(self.points().saturating_sub(1)).max(other)
    }

    /// This picture on one scale with another.
    #[must_use]
    pub fn beside(&self, other: &Self) -> Self {
        let beside = Some(Beside { step_m: other.step_m, heights_m: other.heights_m.clone() });
        Self { beside, ..self.clone() }
    }

    /// Whether it is so long that only descents can be read in lanes that change all the time.
    #[must_use]
    pub(crate) fn is_long(&self) -> bool {
        self.length_m() >= LONG_M
    }

    /// Distance of a grid point from the start, m.
    #[must_use]
    pub fn place_of(&self, index: usize) -> f64 {
        index as f64 * self.step()
    }

    /// The grid point nearest to a place, m from the start.
    #[must_use]
    pub fn nearest(&self, at_m: f64) -> usize {
        let last = self.points().saturating_sub(1);
        ((at_m / self.step().max(1e-3)).round().max(0.0) as usize).min(last)
    }

    /// Whether the road was assessed at a point.
    #[must_use]
    pub fn is_assessed(&self, index: usize) -> bool {
        self.assessed.get(index).copied().unwrap_or(false)
    }

    /// The stretch of one grade that a point lies on.
    #[must_use]
    pub fn slope_at(&self, index: usize) -> Option<&Slope> {
        let next = self.slopes.partition_point(|slope| slope.to <= index);
        let last_point = self.slopes.last().filter(|slope| slope.to == index);
        self.slopes.get(next).filter(|slope| slope.from <= index).or(last_point)
    }

    /// The descent that a point lies on, crest and foot included.
    #[must_use]
    pub fn descent_at(&self, index: usize) -> Option<&Bracket> {
        self.descents.iter().rev().find(|it| it.from <= index && index <= it.to)
    }

    /// The curve that a point lies on.
    #[must_use]
    pub fn bend_at(&self, index: usize) -> Option<&Bend> {
        let next = self.bends.partition_point(|bend| bend.to < index);
        self.bends.get(next).filter(|bend| bend.from <= index)
    }

    /// The steepest 200 m of a descent, or all of a shorter one; `None` where no height is known.
    #[must_use]
    pub(crate) fn pitch(&self, descent: &Bracket) -> Option<Pitch> {
        let to = descent.to.min(self.points().saturating_sub(1));
        let wanted = (PITCH_M / self.step().max(1e-3)).round().max(1.0) as usize;
        let over = wanted.min(to.checked_sub(descent.from).filter(|it| *it > 0)?);
        let fall = |from: usize| Some(value(&self.heights_m, from)? - value(&self.heights_m, from + over)?);
        let known = |from: &usize| self.is_assessed(*from) && self.is_assessed(from + over);
        let mut steepest: Option<(usize, f64)> = None;
        for from in (descent.from..=to - over).filter(known) {
            let Some(fall) = fall(from) else { continue };
            if steepest.is_none_or(|it| fall > it.1) {
                steepest = Some((from, fall));
            }
        }
        let (from, fall) = steepest?;
        Some(Pitch { from, to: from + over, grade: -fall / (over as f64 * self.step()) })
    }

    /// The weakest and the strongest stage between two grid points, as the stage lane shows them; `None` where
    /// nothing is said. Off, 0, counts only where nothing else is asked for: on a short easing the lever rests.
    #[must_use]
    pub(crate) fn stages_in(&self, from: usize, to: usize) -> Option<(u8, u8)> {
        let all = (from..to).filter(|index| self.is_assessed(*index));
        let all: Vec<u8> = all.filter_map(|index| small(&self.stage, index)).collect();
        let high = *all.iter().max()?;
        let low = all.into_iter().filter(|stage| *stage > 0).min().unwrap_or(high);
        Some((low, high))
    }

    /// The legs of a descent with their ends, by grid points.
    pub(crate) fn legs<'a>(&self, descent: &'a Bracket) -> impl Iterator<Item = (&'a Hold, usize)> {
        let next = descent.legs.iter().skip(1).map(|leg| leg.from).chain([descent.to]);
        descent.legs.iter().zip(next)
    }

    /// The descent of a number.
    #[must_use]
    pub fn descent(&self, number: usize) -> Option<&Bracket> {
        self.descents.iter().find(|it| it.number == number)
    }

    /// How far the end lies from the start, m, and in which of eight directions: north is 0, east 2.
    #[must_use]
    pub fn leads(&self) -> Option<(f64, usize)> {
        let last = self.points().checked_sub(1)?;
        let apart = |lane: &[f32]| Some(value(lane, last)? - value(lane, 0)?);
        let (east, north) = (apart(&self.east_m)?, apart(&self.north_m)?);
        let eighths = (east.atan2(north) / std::f64::consts::FRAC_PI_4).round().rem_euclid(8.0);
        Some((east.hypot(north), eighths as usize))
    }

    /// Where the cursor begins: the crest of the hardest descent; the start of a road without one.
    #[must_use]
    pub fn first_look(&self) -> usize {
        self.hardest.and_then(|number| self.descent(number)).map_or(0, |it| it.from)
    }

    /// Least and greatest height inside a window, m.
    #[must_use]
    pub(crate) fn heights_in(&self, window: Window) -> (f64, f64) {
        ends_in(&self.heights_m, self.step(), window)
    }

    /// Greatest difference of heights inside a window, m, on this road or the one beside it.
    #[must_use]
    pub(crate) fn extent_in(&self, window: Window) -> f64 {
        let (low, high) = self.heights_in(window);
        let other = self.beside.as_ref().map(|it| ends_in(&it.heights_m, f64::from(it.step_m), window));
        (high - low).max(other.map_or(0.0, |(low, high)| high - low))
    }
}

fn ends_in(heights_m: &[f32], step: f64, window: Window) -> (f64, f64) {
    let range = super::decimate::covered(heights_m.len(), step, window);
    let mut ends = (f64::INFINITY, f64::NEG_INFINITY);
    for height in &heights_m[range] {
        let height = f64::from(*height);
        if height.is_finite() {
            ends = (ends.0.min(height), ends.1.max(height));
        }
    }
    if ends.0 <= ends.1 { ends } else { (0.0, 0.0) }
}

/// Value of a lane at a point; `None` past its end and where it is not finite.
#[must_use]
pub(crate) fn value(lane: &[f32], index: usize) -> Option<f64> {
    lane.get(index).map(|it| f64::from(*it)).filter(|it| it.is_finite())
}

/// Value of a lane of small numbers at a point; `None` past its end and where it is blank.
#[must_use]
pub(crate) fn small(lane: &[u8], index: usize) -> Option<u8> {
    lane.get(index).copied().filter(|it| *it != Lanes::BLANK)
}

#[cfg(test)]
mod tests {
    use crate::chart::sample;
    use crate::chart::window::Window;

    #[test]
    fn two_pictures_share_length_and_extent() {
        let long = sample::long(4_000);
        let pass = sample::pass();
        let both = [long.beside(&pass), pass.beside(&long)];
        let window = Window::whole(both[0].length_m());
        assert!((both[0].length_m() - both[1].length_m()).abs() < 1e-6);
        assert!((both[0].extent_in(window) - both[1].extent_in(window)).abs() < 1e-6);
        assert!(both[1].heights_in(window) == pass.heights_in(window), "its own heights are its own");
        let past_its_end = Window { from: 0.9 * window.to, to: window.to };
        let (low, high) = both[1].heights_in(past_its_end);
        assert!((high - low).abs() < 1e-6, "past its end there is no height");
    }

    #[test]
    fn where_the_road_leads() {
        let mut picture = sample::pass();
        let ends = |from: f32, to: f32| {
            let mut lane = vec![f32::NAN; picture.points()];
            (lane[0], lane[picture.points() - 1]) = (from, to);
            lane.into()
        };
        let ways: [(f32, f32); 8] = [
            (0.0, 9.0),
            (9.0, 9.0),
            (9.0, 0.0),
            (9.0, -9.0),
            (0.0, -9.0),
            (-9.0, -9.0),
            (-9.0, 0.0),
            (-9.0, 9.0),
        ];
        let lanes = ways.map(|(east, north)| (ends(1.0, 1.0 + east), ends(2.0, 2.0 + north)));
        for (eighth, (east, north)) in lanes.into_iter().enumerate() {
            (picture.east_m, picture.north_m) = (east, north);
            let (away, towards) = picture.leads().expect("both ends have a place");
            assert_eq!(towards, eighth);
            assert!((9.0..13.0).contains(&away), "{away}");
        }
        picture.east_m = Vec::new().into();
        assert_eq!(picture.leads(), None);
    }

    #[test]
    fn the_steepest_stretch_lies_where_the_hill_falls_most() {
        let picture = sample::pass();
        // A stretch of 1.4 km at 8.1 % begins the second descent; the first falls by 5.8 % all along.
        let second = picture.pitch(&picture.descents[1]).expect("its heights are known");
        assert!((second.grade + 0.081).abs() < 1e-3, "{second:?}");
        assert_eq!((second.from, second.to), (picture.descents[1].from, picture.descents[1].from + 20));
        let first = picture.pitch(&picture.descents[0]).expect("known");
        assert!((first.grade + 0.058).abs() < 1e-3, "{first:?}");
        let mut short = picture.descents[0].clone();
        short.to = short.from + 5;
        assert_eq!(picture.pitch(&short).map(|it| it.to - it.from), Some(5));
        short.to = short.from;
        assert_eq!(picture.pitch(&short), None);
    }

    #[test]
    fn what_a_point_lies_on() {
        let picture = sample::pass();
        let second = &picture.descents[1];
        assert_eq!(picture.descent_at(second.from + 1).map(|it| it.number), Some(2));
        assert_eq!(picture.first_look(), second.from, "the hardest descent is looked at first");
        let slope = picture.slope_at(second.from + 20).copied();
        assert!(slope.is_some_and(|it| it.grade < -0.03));
        assert!(picture.slope_at(picture.points() - 1).is_some(), "the last point too");
        assert_eq!(picture.nearest(1e9), picture.points() - 1);
        assert_eq!(picture.nearest(-5.0), 0);
        let bend = picture.bends[1];
        assert_eq!(picture.bend_at(bend.from + 3), Some(&bend));
        assert_eq!(picture.bend_at(bend.to + 1), None);
    }
}
