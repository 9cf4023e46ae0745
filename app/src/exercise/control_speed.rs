//! Exercise: does a gear and stage settle on a grade, and where?

use super::chance::Chance;
use super::setting::{DRAWS, Setting};
use super::{Held, Hill, round};
use solver::motion::{Answer, Trip, control_speed};
use solver::truck::{Gear, Stage};
use solver::units::{Metres, MetresPerSecond};

/// Points of the table of holding forces that is given, over the usable engine speeds.
const POINTS: u8 = 5;

/// Slowest speed that a truck is asked to settle at. No truck is driven slower down a public road.
const SLOWEST: MetresPerSecond = MetresPerSecond(5.0 / 3.6);

/// A gear and stage on a grade.
#[derive(Debug, Clone, PartialEq)]
pub struct ControlSpeed {
    /// Truck, grade and air.
    pub hill: Hill,
    /// Gear.
    pub gear: Gear,
    /// Stage.
    pub stage: Stage,
    /// Given: holding force at engine speeds evenly apart, the slowest first.
    pub points: Vec<Held>,
    /// What gear and stage do on the grade; always usable.
    pub answer: Answer,
    /// Where the sums are done: where the truck settles or begins to overrun, else at the point where the
    /// holding force comes nearest to the demand.
    pub shown: Held,
}

/// A gear and stage, and what they do.
#[derive(Clone, Copy)]
struct Candidate {
    gear: Gear,
    stage: Stage,
    answer: Answer,
}

impl ControlSpeed {
    /// An exercise in which the truck settles; where no draw gives one, any exercise.
    pub(super) fn settling(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        Self::draw(setting, chance, true)
    }

    /// An exercise in which the truck does not settle; where no draw gives one, any exercise.
    pub(super) fn not_settling(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        Self::draw(setting, chance, false)
    }

    fn draw(setting: &Setting<'_>, chance: &mut Chance, settles: bool) -> Option<Self> {
        let mut second_best = None;
        for _ in 0..DRAWS {
            let slope = setting.slope(chance)?;
            let truck = setting.laden(chance);
            let steeper = i32::try_from(chance.below(5)).unwrap_or(2) - 2;
            let grade = round::grade(slope.sustained, steeper);
            let trip = setting.trip(&truck);
            let hill = Hill::of(trip, grade, slope.height);
            let all = candidates(trip, &hill, slope.height);
            let (settling, other): (Vec<Candidate>, Vec<Candidate>) = all
                .into_iter()
                .filter(|it| it.is_question(trip, &hill))
                .partition(|it| matches!(it.answer, Answer::Settles { .. }));
            let (wanted, rest) = if settles { (&settling, &other) } else { (&other, &settling) };
            if let Some(candidate) = chance.pick(&near(wanted, &settling)) {
                return Some(Self::of(trip, hill, *candidate));
            }
            if second_best.is_none() {
                second_best = chance.pick(rest).map(|candidate| Self::of(trip, hill, *candidate));
            }
        }
        second_best
    }

    fn of(trip: Trip<'_>, hill: Hill, Candidate { gear, stage, answer }: Candidate) -> Self {
        let low = trip.truck.lowest_engine_speed(stage);
        let high = trip.truck.highest_engine_speed();
        let held = |speed| Held::at(trip, &hill, gear, stage, speed);
        let point = |k: u8| {
            let engine_speed = low + (high - low) * (f64::from(k) / f64::from(POINTS - 1));
            held(trip.truck.road_speed(gear, engine_speed))
        };
        let points: Vec<Held> = (0..POINTS).map(point).collect();
        let nearest = || {
            let by = |a: &&Held, b: &&Held| a.surplus().0.abs().total_cmp(&b.surplus().0.abs());
            points.iter().min_by(by).copied().unwrap_or_else(|| point(0))
        };
        let shown = match answer {
            Answer::Settles { speed, .. } | Answer::Overruns { above: Some(speed) } => held(speed),
            Answer::MoreThanNeeded | Answer::Overruns { above: None } | Answer::NotUsable(_) => nearest(),
        };
        Self { hill, gear, stage, points, answer, shown }
    }
}

impl Candidate {
    /// Whether a class can be asked about it: within what the truck may do on this day.
    fn is_question(&self, trip: Trip<'_>, hill: &Hill) -> bool {
        /// The top of the gear over the day's limit: a table that goes far beyond it teaches nothing.
        /// Assumed.
        const BEYOND: f64 = 1.25;
        let limit = trip.day.speed_limit();
        let top = trip.truck.road_speed(self.gear, trip.truck.highest_engine_speed());
        let within = top <= limit * BEYOND && top >= SLOWEST;
        match self.answer {
            Answer::Settles { speed, .. } => {
                let held = trip.holding(self.gear, self.stage, speed, hill.air);
                within && (SLOWEST..=limit).contains(&speed) && held <= trip.grip_for_retarding(hill.grade)
            }
            Answer::MoreThanNeeded | Answer::Overruns { .. } => within,
            Answer::NotUsable(_) => false,
        }
    }
}

/// What every gear does with every stage; with the retarder off only where there is none.
fn candidates(trip: Trip<'_>, hill: &Hill, height: Metres) -> Vec<Candidate> {
    let none = trip.truck.full_stage().is_off();
    let stages = || trip.truck.stages().filter(move |stage| none || !stage.is_off());
    let of_gear = |gear| {
        stages().map(move |stage| Candidate {
            gear,
            stage,
            answer: control_speed(trip, gear, stage, hill.grade, height),
        })
    };
    trip.truck.gears().flat_map(of_gear).collect()
}

/// Those in gears next to one that settles: first gear on a gentle grade is no question. All, where
/// none settles.
fn near(wanted: &[Candidate], settling: &[Candidate]) -> Vec<Candidate> {
    let gears = || settling.iter().map(|it| it.gear.number());
    let (Some(lowest), Some(highest)) = (gears().min(), gears().max()) else { return wanted.to_vec() };
    let range = lowest.saturating_sub(1)..=highest + 1;
    wanted.iter().filter(|it| range.contains(&it.gear.number())).copied().collect()
}
