//! What the cursor stands on.

use super::picture::{Bend, RoadPicture, small, value};
use solver::HeatStep;

/// What is known of one point of the road. `None` is "not known here".
#[derive(Debug, Clone, PartialEq)]
pub struct Here {
    /// Distance from the start, m.
    pub at_m: f64,
    /// Whether the road was assessed here.
    pub assessed: bool,
    /// Height, m.
    pub height_m: Option<f64>,
    /// Grade of the stretch that the point lies on.
    pub grade: Option<GradeHere>,
    /// Gear.
    pub gear: Option<u8>,
    /// Stage, 0 is off.
    pub stage: Option<u8>,
    /// Speed, m/s.
    pub speed: Option<f64>,
    /// Engine speed, 1/min.
    pub engine_speed: Option<f64>,
    /// Share of what must be held that retarder and motoring carry, 0 to 1; `None` too where nothing
    /// is to be held.
    pub carried: Option<f64>,
    /// Brake temperature, °C.
    pub temperature: Option<f64>,
    /// Brake temperature after one hard stop here, °C.
    pub after_stop: Option<f64>,
    /// Heat step.
    pub heat: Option<HeatStep>,
    /// The descent that the point lies on: its number, and how far it is to the foot, m.
    pub descent: Option<(usize, f64)>,
    /// The next descent ahead: its number, and how far it is to its crest, m.
    pub next_descent: Option<(usize, f64)>,
    /// The curve that the point lies on, where it asks for less than the limit.
    pub bend: Option<Bend>,
    /// The next place ahead: its name, and how far it is, m.
    pub next_place: Option<(String, f64)>,
}

/// A grade with what belongs to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GradeHere {
    /// Rise over run.
    pub grade: f64,
    /// Half-width, rise over run.
    pub plus_minus: f64,
    /// Length over which both are meant, m.
    pub over_m: f64,
}

/// Cells of the readout, in their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReadoutCell {
    /// Distance from the start, in both units.
    At,
    /// Grade with its half-width and length.
    Grade,
    /// Height.
    Height,
    /// Gear.
    Gear,
    /// Stage.
    Stage,
    /// Speed.
    Speed,
    /// Engine speed.
    Engine,
    /// Share that the retarder carries.
    Carried,
    /// Brakes now.
    Brakes,
    /// Brakes after one hard stop here.
    IfStopped,
}

impl ReadoutCell {
    /// All cells: where a line is too short, the last are left out.
    pub const ALL: [Self; 10] = [
        Self::At,
        Self::Grade,
        Self::Gear,
        Self::Stage,
        Self::Speed,
        Self::Engine,
        Self::Height,
        Self::Brakes,
        Self::IfStopped,
        Self::Carried,
    ];

    /// Its name in classes and test marks.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::At => "at",
            Self::Grade => "grade",
            Self::Height => "height",
            Self::Gear => "gear",
            Self::Stage => "stage",
            Self::Speed => "speed",
            Self::Engine => "engine",
            Self::Carried => "carried",
            Self::Brakes => "brakes",
            Self::IfStopped => "if-stopped",
        }
    }
}

/// A place further ahead than this is not spoken of, m.
const PLACES_AHEAD_M: f64 = 3_000.0;

impl Here {
    /// What is known of a grid point; the last one for any index beyond it.
    #[must_use]
    pub fn at(picture: &RoadPicture, index: usize) -> Self {
        let index = index.min(picture.points().saturating_sub(1));
        let assessed = picture.is_assessed(index);
        let lane = |values: &[f32]| value(values, index).filter(|_| assessed);
        let number = |values: &[u8]| small(values, index).filter(|_| assessed);
        let ahead = |other: usize| (other as f64 - index as f64) * picture.step();
        let next = picture.descents.iter().find(|it| it.from > index);
        let place = picture.places.iter().find(|it| it.at >= index && ahead(it.at) <= PLACES_AHEAD_M);
        let grade = picture.slope_at(index).filter(|_| assessed);
        let (stage, descent) = (number(&picture.stage), picture.descent_at(index));
        // All of nothing is no figure: the lane says 1 there. Nothing is to be held on a rise, nor off the
        // descents as long as no stage is on.
        let idle = grade.is_some_and(|it| it.grade >= 0.0) || (descent.is_none() && stage == Some(0));
        let carried = lane(&picture.carried).filter(|share| !(idle && *share >= 1.0));
        let heat = number(&picture.heat).and_then(|step| HeatStep::ALL.get(usize::from(step)).copied());
        Self {
            at_m: picture.place_of(index),
            assessed,
            height_m: value(&picture.heights_m, index).filter(|_| assessed),
            grade: grade.map(|slope| GradeHere {
                grade: f64::from(slope.grade),
                plus_minus: f64::from(slope.plus_minus),
                over_m: (slope.to - slope.from) as f64 * picture.step(),
            }),
            gear: number(&picture.gear),
            stage,
            speed: lane(&picture.speed),
            engine_speed: lane(&picture.engine_speed),
            carried,
            temperature: lane(&picture.temperature),
            after_stop: lane(&picture.after_stop),
            heat,
            descent: descent.map(|it| (it.number, ahead(it.to))),
            next_descent: next.map(|it| (it.number, ahead(it.from))),
            bend: picture.bend_at(index).copied(),
            next_place: place.map(|it| (it.name.clone(), ahead(it.at))),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Here;
    use crate::chart::sample;

    #[test]
    fn a_point_on_a_descent_knows_its_foot_and_what_comes() {
        let picture = sample::pass();
        let descent = &picture.descents[0];
        let here = Here::at(&picture, descent.from + 50);
        let (number, to_foot) = here.descent.expect("it lies on the first descent");
        assert_eq!(number, 1);
        assert!((to_foot - (descent.to - descent.from - 50) as f64 * 10.0).abs() < 1.0);
        assert_eq!(here.next_descent.map(|it| it.0), Some(2));
        assert!(here.grade.is_some_and(|it| it.grade < 0.0 && it.over_m > 100.0));
    }

    #[test]
    fn nothing_is_made_up_where_the_road_was_not_assessed() {
        let picture = sample::pass();
        let blank = (0..picture.points()).find(|i| !picture.is_assessed(*i)).expect("the sample has one");
        let here = Here::at(&picture, blank);
        assert!(!here.assessed);
        let known =
            [here.height_m, here.speed, here.engine_speed, here.carried, here.temperature, here.after_stop];
        assert!(known.iter().all(Option::is_none));
        assert!(here.gear.is_none() && here.stage.is_none() && here.heat.is_none() && here.grade.is_none());
    }

    #[test]
    fn all_of_nothing_is_no_share() {
        let mut picture = sample::pass();
        let descent = picture.descents[0].clone();
        let points = picture.points();
        let put = |picture: &mut crate::chart::RoadPicture, stage: u8, carried: f32| {
            picture.stage = vec![stage; points].into();
            picture.carried = vec![carried; points].into();
        };
        // The sample climbs before its first descent.
        let (rise, down) = (descent.from / 2, (descent.from + descent.to) / 2);
        for (stage, carried, uphill, downhill) in
            [(0, 1.0, None, Some(1.0)), (2, 1.0, None, Some(1.0)), (0, 0.5, Some(0.5), Some(0.5))]
        {
            put(&mut picture, stage, carried);
            assert_eq!(Here::at(&picture, rise).carried, uphill, "stage {stage}");
            assert_eq!(Here::at(&picture, down).carried, downhill, "stage {stage}");
        }
    }

    #[test]
    fn beyond_the_end_is_the_end() {
        let picture = sample::pass();
        assert!((Here::at(&picture, usize::MAX).at_m - picture.length_m()).abs() < 1e-6);
    }
}
