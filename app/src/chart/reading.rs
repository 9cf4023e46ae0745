//! The readings that may fill the profile, as small numbers along the road.

use super::picture::{RoadPicture, small, value};
use crate::format::Units;
use solver::HeatStep;

/// What fills the profile, the strip and the plan shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reading {
    /// Gear.
    Gear,
    /// Retarder stage.
    Stage,
    /// Brake heat.
    Heat,
    /// Speed.
    Speed,
    /// Grade.
    Grade,
}

/// Steps of grade that are told apart by colour, the steepest downhill first.
///
/// The edges are every 2 %, as steep hills are told apart on signs; common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum GradeStep {
    /// Steeper than −10 %.
    Down10 = 0,
    /// −8 to −10 %.
    Down8 = 1,
    /// −6 to −8 %.
    Down6 = 2,
    /// −4 to −6 %.
    Down4 = 3,
    /// −2 to −4 %.
    Down2 = 4,
    /// Within 2 %.
    Level = 5,
    /// Up 2 to 5 %.
    Up2 = 6,
    /// Up more than 5 %.
    Up5 = 7,
}

impl GradeStep {
    /// All steps, the steepest downhill first.
    pub const ALL: [Self; 8] =
        [Self::Down10, Self::Down8, Self::Down6, Self::Down4, Self::Down2, Self::Level, Self::Up2, Self::Up5];

    /// The step of a grade, rise over run.
    #[must_use]
    pub fn of(grade: f64) -> Self {
        // Sums of floats may end a hair flatter than a grade that was meant to be on the edge:
        // the steeper step is the cautious one.
        let down = -grade + 1e-6;
        if down >= 0.10 {
            Self::Down10
        } else if down >= 0.08 {
            Self::Down8
        } else if down >= 0.06 {
            Self::Down6
        } else if down >= 0.04 {
            Self::Down4
        } else if down >= 0.02 {
            Self::Down2
        } else if grade < 0.02 {
            Self::Level
        } else if grade < 0.05 {
            Self::Up2
        } else {
            Self::Up5
        }
    }
}

/// Width of a step of speed, km/h or mph.
pub const SPEED_STEP: u32 = 10;
/// Colours of the gear scale; `chart.css` defines as many.
const GEAR_TONES: usize = 12;
/// Stages told apart by a class; beyond them the hatching is as dense as it gets.
const STAGE_TONES: usize = 8;
/// Colours of the speed scale.
const SPEED_TONES: usize = 6;

impl Reading {
    /// All readings, in the order of their buttons.
    pub const ALL: [Self; 5] = [Self::Gear, Self::Stage, Self::Heat, Self::Speed, Self::Grade];

    /// Its name in classes and test marks.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::Gear => "gear",
            Self::Stage => "stage",
            Self::Heat => "heat",
            Self::Speed => "speed",
            Self::Grade => "grade",
        }
    }

    /// The reading of each grid point as a small number: the gear, the stage, the heat step,
    /// the step of speed or the step of grade. `None` where nothing is said.
    #[must_use]
    pub fn along(self, picture: &RoadPicture, units: Units) -> Vec<Option<u8>> {
        let known = |index: usize| picture.is_assessed(index);
        let one = |index: usize| match self {
            Self::Gear => small(&picture.gear, index),
            Self::Stage => small(&picture.stage, index),
            Self::Heat => small(&picture.heat, index),
            Self::Speed => value(&picture.speed, index).map(|speed| speed_step(speed, units)),
            Self::Grade => None,
        };
        let mut all: Vec<Option<u8>> = match self {
            Self::Grade => grade_steps(picture),
            Self::Gear | Self::Stage | Self::Heat | Self::Speed => (0..picture.points()).map(one).collect(),
        };
        for (index, step) in all.iter_mut().enumerate() {
            if !known(index) {
                *step = None;
            }
        }
        all
    }

    /// The more severe of two: the lower gear, the stronger stage, the hotter brakes, the lower
    /// speed, the steeper way down.
    #[must_use]
    pub fn worse(self, a: u8, b: u8) -> u8 {
        match self {
            Self::Gear | Self::Speed | Self::Grade => a.min(b),
            Self::Stage | Self::Heat => a.max(b),
        }
    }
}

fn speed_step(metres_per_second: f64, units: Units) -> u8 {
    let speed = metres_per_second / units.metres_per_second_per_speed();
    // A hair, so that a hold speed of exactly 40 does not fall into the step below.
    ((speed + 1e-3) / f64::from(SPEED_STEP)).floor().clamp(0.0, 250.0) as u8
}

fn grade_steps(picture: &RoadPicture) -> Vec<Option<u8>> {
    let mut all = vec![None; picture.points()];
    for slope in &picture.slopes {
        let end = (slope.to + 1).min(all.len());
        let step = GradeStep::of(f64::from(slope.grade)) as u8;
        if slope.from < end {
            all[slope.from..end].fill(Some(step));
        }
    }
    all
}

/// Colours of one reading: the scale is spread over the values in use, so that neighbours
/// differ at a glance whichever five of twelve gears a road needs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Tones {
    reading: Reading,
    used: Vec<u8>,
    classes: Vec<String>,
}

impl Tones {
    /// Colours for the values that occur in `along`.
    #[must_use]
    pub(crate) fn of(reading: Reading, along: &[Option<u8>]) -> Self {
        let mut seen = [false; 256];
        for value in along.iter().flatten() {
            seen[usize::from(*value)] = true;
        }
        let used: Vec<u8> = (0..=u8::MAX).filter(|value| seen[usize::from(*value)]).collect();
        let classes = (0..used.len()).map(|rank| class(reading, rank, &used)).collect();
        Self { reading, used, classes }
    }

    /// The reading.
    #[must_use]
    pub(crate) fn reading(&self) -> Reading {
        self.reading
    }

    /// Values in use, rising.
    #[must_use]
    pub(crate) fn used(&self) -> &[u8] {
        &self.used
    }

    /// Classes of an area filled with a value.
    #[must_use]
    pub(crate) fn filled(&self, value: u8) -> String {
        format!("tone {}", self.class(value))
    }

    /// Class of a value: `gear-7`, `heat-2`. It sets the tone and the text colour on it.
    #[must_use]
    pub(crate) fn class(&self, value: u8) -> &str {
        let rank = self.used.partition_point(|it| *it < value);
        self.classes.get(rank).map_or("", String::as_str)
    }
}

/// The tone of a gear by its rank among those in use, the lowest first: slow is dark, fast is light, by day
/// and by night. Few gears keep clear of the ends of the scale, which are meant for many.
#[must_use]
pub(crate) fn gear_tone(rank: usize, used: usize) -> usize {
    let (first, last) = match used {
        0..=1 => return 1,
        2..=3 => (1, GEAR_TONES - 3),
        _ => (0, GEAR_TONES - 1),
    };
    first + (rank * (last - first) + (used - 1) / 2) / (used - 1)
}

fn class(reading: Reading, rank: usize, used: &[u8]) -> String {
    let spread = |tones: usize| {
        if used.len() < 2 {
            tones / 3
        } else {
            (rank * (tones - 1) + (used.len() - 1) / 2) / (used.len() - 1)
        }
    };
    let step = match reading {
        Reading::Gear => gear_tone(rank, used.len()),
        Reading::Speed => spread(SPEED_TONES),
        Reading::Stage => usize::from(used[rank]).min(STAGE_TONES),
        Reading::Heat => usize::from(used[rank]).min(HeatStep::ALL.len() - 1),
        Reading::Grade => usize::from(used[rank]).min(GradeStep::ALL.len() - 1),
    };
    format!("{}-{step}", reading.key())
}

#[cfg(test)]
mod tests {
    use super::{GradeStep, Reading, Tones};
    use crate::chart::sample;
    use crate::format::Units;

    #[test]
    fn the_severe_one_wins() {
        assert_eq!(Reading::Gear.worse(5, 9), 5);
        assert_eq!(Reading::Speed.worse(3, 8), 3);
        assert_eq!(Reading::Grade.worse(GradeStep::Down8 as u8, GradeStep::Up5 as u8), 1);
        assert_eq!(Reading::Stage.worse(0, 3), 3);
        assert_eq!(Reading::Heat.worse(2, 1), 2);
    }

    #[test]
    fn grades_on_an_edge_take_the_steeper_step() {
        assert_eq!(GradeStep::of(-0.06), GradeStep::Down6);
        assert_eq!(GradeStep::of(-0.059_999_9), GradeStep::Down6);
        assert_eq!(GradeStep::of(-0.0599), GradeStep::Down4);
        assert_eq!(GradeStep::of(0.0), GradeStep::Level);
        assert_eq!(GradeStep::of(0.08), GradeStep::Up5);
        assert!(GradeStep::of(-0.3) < GradeStep::of(-0.03));
    }

    #[test]
    fn gears_in_use_spread_over_the_whole_scale() {
        let along = [Some(5), Some(6), None, Some(7), Some(12), Some(6)];
        let tones = Tones::of(Reading::Gear, &along);
        assert_eq!(tones.used(), [5, 6, 7, 12]);
        assert_eq!(tones.class(5), "gear-0");
        assert_eq!(tones.class(12), "gear-11");
        let mut classes: Vec<_> = [5, 6, 7, 12].iter().map(|g| tones.class(*g)).collect();
        classes.dedup();
        assert_eq!(classes.len(), 4);
    }

    #[test]
    fn few_gears_keep_clear_of_the_ends_of_the_scale_and_slow_is_always_first() {
        for used in 1..=12 {
            let tones: Vec<_> = (0..used).map(|rank| super::gear_tone(rank, used)).collect();
            assert!(tones.windows(2).all(|pair| pair[0] < pair[1]), "{tones:?}");
            assert!(tones.iter().all(|tone| *tone < super::GEAR_TONES), "{tones:?}");
        }
        assert_eq!([0, 1].map(|rank| super::gear_tone(rank, 2)), [1, 9]);
        assert_eq!([0, 3].map(|rank| super::gear_tone(rank, 4)), [0, 11]);
    }

    #[test]
    fn nothing_is_said_of_what_was_not_assessed() {
        let picture = sample::pass();
        for reading in Reading::ALL {
            let along = reading.along(&picture, Units::Metric);
            assert_eq!(along.len(), picture.points());
            for (index, value) in along.iter().enumerate() {
                assert_eq!(value.is_some(), picture.is_assessed(index), "{reading:?} at {index}");
            }
        }
    }
}
