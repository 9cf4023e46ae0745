//! The run as arrays for the pictures.

use super::answer::{Choice, Descent};
use super::stages::StageSpan;
use crate::day::Day;
use crate::motion::{Hold, Run, Sample, Trip};
use crate::road::Road;
use crate::units::{Celsius, Grade, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// The run along the road as arrays on the road's grid points, one value a point.
///
/// NaN, and [`Lanes::BLANK`] in the small integers, stand where the road was not assessed:
/// draw nothing there.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Lanes {
    /// Speed, m/s.
    pub speed: Vec<f32>,
    /// Engine speed, 1/min.
    pub engine_speed: Vec<f32>,
    /// Hottest axle group, °C.
    pub temperature: Vec<f32>,
    /// Hottest axle group after one hard stop there, °C.
    pub after_stop: Vec<f32>,
    /// Share of the force to hold that retarder and motoring carry, 0 to 1; 1 where nothing must be held.
    pub carried: Vec<f32>,
    /// Gear.
    pub gear: Vec<u8>,
    /// Stage, 0 is off.
    pub stage: Vec<u8>,
    /// Heat step: see [`HeatStep`].
    pub heat: Vec<u8>,
}

impl Lanes {
    /// Stands in `gear`, `stage` and `heat` where nothing is said.
    pub const BLANK: u8 = u8::MAX;
}

/// Steps of brake heat. Each is told by a word and a mark, never by colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[repr(u8)]
pub enum HeatStep {
    /// Up to 30 % of the way from the usual temperature at the start, or a lower one entered, to the limit.
    /// Assumed. Brakes that start hot are hot from the start.
    Cool = 0,
    /// Below 60 % of that way.
    Warm = 1,
    /// Up to the limit.
    Hot = 2,
    /// A stop from here would pass the limit.
    OverLimit = 3,
}

impl HeatStep {
    /// All steps, the coolest first.
    pub const ALL: [Self; 4] = [Self::Cool, Self::Warm, Self::Hot, Self::OverLimit];

    /// The step of a temperature after one hard stop, on the way from `start` to `limit`.
    #[must_use]
    pub fn of(after_stop: Celsius, start: Celsius, limit: Celsius) -> Self {
        if after_stop.0 > limit.0 {
            return Self::OverLimit;
        }
        let start = start.0.min(Day::USUAL.brakes_at_start_c);
        let way = (after_stop.0 - start) / (limit.0 - start);
        if way < 0.3 {
            Self::Cool
        } else if way < 0.6 {
            Self::Warm
        } else {
            Self::Hot
        }
    }
}

impl Lanes {
    /// The lanes of a plan. Inside a descent, gear and stage are those of the advice from the crest on. The
    /// gear is engaged before the crest, and the stage changes by grades, not by metres. Between two legs
    /// they are those of the driver who slows for the next leg. Unassessed road stays blank.
    pub(super) fn of(trip: Trip<'_>, road: &Road, run: &Run, descents: &[Descent]) -> Self {
        let mut lanes = Self::driven(&|_| trip, road, run);
        for descent in descents {
            match &descent.choice {
                Choice::Held(_) => {
                    for hold in descent.holds() {
                        let own = |span: &&StageSpan| span.from >= hold.from && span.from < hold.to;
                        let spans: Vec<StageSpan> = descent.stages.iter().filter(own).copied().collect();
                        lanes.advise(trip, &hold, &spans);
                    }
                }
                Choice::NoSafeSpeed(_) => lanes.say_nothing(descent.from, descent.to),
            }
        }
        lanes
    }

    /// A run along the whole road, one value a grid point. The first is from the start state, each other from
    /// the cell before it. `trip_on` is given the cell.
    pub(crate) fn driven<'a>(trip_on: &dyn Fn(usize) -> Trip<'a>, road: &Road, run: &Run) -> Self {
        let mut lanes = Self::default();
        let grade = Grade(road.grades().first().copied().unwrap_or(0.0));
        if let Some(sample) = run.samples.first() {
            let trip = trip_on(0);
            let (speed, brakes) = (run.start.speed, run.start.brakes);
            let hottest = brakes.hottest(trip);
            let after_stop = brakes.hottest_after_stop(trip, speed, grade);
            lanes.push(trip, road, 0, Sample { speed, hottest, after_stop, ..*sample });
        }
        for (cell, sample) in run.samples.iter().enumerate() {
            lanes.push(trip_on(cell), road, cell, *sample);
        }
        lanes
    }

    fn push(&mut self, trip: Trip<'_>, road: &Road, cell: usize, sample: Sample) {
        let assessed = road.assessed()[cell];
        let value = |x: f64| if assessed { x as f32 } else { f32::NAN };
        let small = |x: u8| if assessed { x } else { Self::BLANK };
        let day = trip.day;
        let step = HeatStep::of(sample.after_stop, Celsius(day.brakes_at_start_c), Celsius(day.heat_limit_c));
        self.speed.push(value(sample.speed.0));
        self.engine_speed.push(value(trip.truck.engine_speed(sample.gear, sample.speed).0));
        self.temperature.push(value(sample.hottest.0));
        self.after_stop.push(value(sample.after_stop.0));
        self.carried.push(value(sample.carried));
        self.gear.push(small(sample.gear.number()));
        let air = trip.air_on(road, cell);
        let grade = Grade(road.grades()[cell]);
        let stage = trip.weakest_stage(sample.gear, sample.speed, grade, air, sample.to_hold);
        self.stage.push(small(stage.number()));
        self.heat.push(small(step as u8));
    }

    /// Writes a hold with its stages from its first point on.
    pub(crate) fn advise(&mut self, trip: Trip<'_>, hold: &Hold, stages: &[StageSpan]) {
        for span in stages {
            for point in span.from..=span.to {
                if self.gear[point] != Self::BLANK {
                    self.stage[point] = span.stage.number();
                }
            }
        }
        let crest = hold.from;
        if self.gear[crest] == Self::BLANK {
            return;
        }
        let speed = MetresPerSecond(f64::from(self.speed[crest]));
        self.gear[crest] = hold.gear.number();
        self.engine_speed[crest] = trip.truck.engine_speed(hold.gear, speed).0 as f32;
        self.carried[crest] = self.carried[crest + 1];
    }

    /// Without a safe speed no gear, stage or speed is shown.
    pub(crate) fn say_nothing(&mut self, from: usize, to: usize) {
        let inside = from..=to;
        self.gear[inside.clone()].fill(Self::BLANK);
        self.stage[inside.clone()].fill(Self::BLANK);
        self.engine_speed[inside.clone()].fill(f32::NAN);
        self.carried[inside.clone()].fill(f32::NAN);
        self.speed[inside].fill(f32::NAN);
    }
}

#[cfg(test)]
mod tests {
    use super::HeatStep;
    use crate::day::Day;
    use crate::plan::plan;
    use crate::road::Road;
    use crate::truck::{Preset, Truck};
    use crate::units::Celsius;

    /// A gentle hill, a stretch nearly level, and a steep one.
    #[test]
    fn each_leg_shows_its_gear_from_its_first_point_to_where_the_truck_slows() {
        let rise = |cell: u32| match cell {
            200..800 => -0.4,
            800..900 => -0.05,
            900..1_400 => -0.9,
            _ => 0.0,
        };
        let heights = (0..1_600).scan(900.0, |height, cell| {
            *height += rise(cell);
            Some(*height)
        });
        let road =
            Road::from_heights("two hills in one", 10.0, heights.collect()).expect("heights are sound");
        let truck = Truck::new(Preset::FiveAxle36.spec()).expect("a preset");
        let (plan, lanes) = plan(&road, &truck, &Day::USUAL, &mut |_| true).expect("not stopped");
        let [descent] = &plan.descents[..] else { panic!("{}", plan.descents.len()) };
        let [first, second] = descent.legs[..] else { panic!("{:?}", descent.legs) };
        assert!(second.gear < first.gear && first.slows_from < first.to, "{:?}", descent.legs);
        for leg in [first, second] {
            let shown = &lanes.gear[leg.from..=leg.slows_from];
            assert!(shown.iter().all(|gear| *gear == leg.gear.number()), "{:?}: {shown:?}", leg.gear);
        }
        let between = &lanes.gear[first.slows_from..=second.from];
        assert!(between.windows(2).all(|it| it[1] <= it[0]), "the driver changes down: {between:?}");
    }

    #[test]
    fn brakes_hot_at_the_start_are_not_called_cool() {
        let of = |after_stop, start| HeatStep::of(Celsius(after_stop), Celsius(start), Celsius(260.0));
        assert_eq!([90.0, 130.0, 190.0, 261.0].map(|it| of(it, 66.0)), HeatStep::ALL);
        for start in [240.0, 260.0, 400.0] {
            assert_eq!(of(245.0, start), HeatStep::Hot);
            assert_eq!(of(261.0, start), HeatStep::OverLimit);
        }
        assert_eq!(of(100.0, 0.0), HeatStep::Warm, "from cold brakes the way is longer");
    }
}
