//! How sure a plan is: one plan driven many times, with every input within its spread.

use super::input::{Input, RUNS, Sample};
use super::quantile::{first_order, quantile};
use crate::constants::SPEED_SLACK;
use crate::day::Day;
use crate::motion::{Hold, Run, Sample as Driven, Trip, caps};
use crate::plan::{Descent, Plan, start_state};
use crate::road::Road;
use crate::truck::Truck;
use crate::units::MetresPerSecond;
use serde::{Deserialize, Serialize};
use std::ops::Range;

/// Most cells of a road that is driven so often, about 1,000 km; it bounds the time.
const MOST_CELLS: usize = 100_000;

/// Most points at which the bands are computed; the points between take the value before.
const MOST_POINTS: usize = 8_000;

/// Within this of the slack above the hold speed, m/s, the service brakes hold the truck, not the retarder.
const NEARLY: f64 = 0.05;

/// The band from 5 to 95 %.
const BAND: (f64, f64) = (0.05, 0.95);

/// How sure a plan is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Sureness {
    /// Runs driven.
    pub runs: usize,
    /// Each descent in road order.
    pub descents: Vec<DescentSureness>,
}

/// How sure the plan of one descent is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DescentSureness {
    /// Runs in which the retarder alone held the speed, up to 5 km/h more on short steep bits. The places
    /// that the plan tells as touches of the service brakes are left out.
    pub held: usize,
    /// Runs in which the brakes, with one hard stop, kept the limit.
    pub kept: usize,
    /// Hottest brakes after one hard stop, °C: the values below which 5 % and 95 % of the runs lie.
    pub after_stop_c: (f32, f32),
    /// Fastest speed on the way, m/s, at 5 % and 95 %.
    pub fastest: (f32, f32),
    /// Inputs that move the brake heat most, each with its share of the variance, largest first; only shares
    /// above 5 %.
    pub matters: Vec<(Input, f32)>,
}

/// Bands along the road, one value a grid point; NaN where the road was not assessed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Bands {
    /// Speed, m/s, 5 % and 95 %.
    pub speed: [Vec<f32>; 2],
    /// Hottest brakes, °C, 5 % and 95 %.
    pub temperature: [Vec<f32>; 2],
}

/// Outcome of one run on one descent.
struct Outcome {
    held: bool,
    kept: bool,
    after_stop: f64,
    fastest: f64,
}

impl Outcome {
    /// Joins the outcomes of two legs of one descent.
    fn and(self, other: Self) -> Self {
        Self {
            held: self.held && other.held,
            kept: self.kept && other.kept,
            after_stop: self.after_stop.max(other.after_stop),
            fastest: self.fastest.max(other.fastest),
        }
    }
}

/// Drives the plan of this road, truck and day 256 times. `None` on a road that is too long or has no
/// descent, and when `progress` answers `false`.
///
/// The driver keeps to the card: gear and hold speed stay those of the plan. Where the retarder falls short
/// the service brakes help.
#[must_use]
pub fn sureness(
    road: &Road,
    truck: &Truck,
    day: &Day,
    plan: &Plan,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<(Sureness, Bands)> {
    if road.cells() > MOST_CELLS || plan.descents.is_empty() {
        return None;
    }
    let card = Card::of(road, Trip { truck, day }, plan);
    let half_widths = half_widths(&card.road);
    let (cells, step) = (card.road.cells(), card.road.step_m());
    let stride = cells.div_ceil(MOST_POINTS);
    let mut shaken = card.road.clone();
    let mut kept = Kept { points: cells.div_ceil(stride), speed: Vec::new(), temperature: Vec::new() };
    let mut outcomes: Vec<Vec<Outcome>> = plan.descents.iter().map(|_| Vec::with_capacity(RUNS)).collect();
    for index in 0..RUNS {
        let sample = Sample::number(index);
        let truck = truck_of(truck, &sample);
        let day = day_of(day, &sample);
        let trip = Trip { truck: &truck, day: &day };
        shaken.tilt(&card.road, |cell| half_widths[cell] * sample.grade_error(cell as f64 * step));
        let run = Run::by_card(trip, &shaken, &card.caps, &card.holds, start_state(trip, &shaken));
        kept.take(&run, stride);
        for (list, holds) in outcomes.iter_mut().zip(&card.of_descents) {
            let legs =
                card.holds[holds.clone()].iter().map(|hold| outcome(trip, &run, hold, &card.touched, step));
            list.extend(legs.reduce(Outcome::and));
        }
        if !progress((index + 1) as f32 / RUNS as f32) {
            return None;
        }
    }
    let descents = outcomes.iter().map(|list| summary(list)).collect();
    Some((Sureness { runs: RUNS, descents }, kept.bands(road, stride)))
}

/// What the driver keeps to, on a grid of twice the road's step: driving a plan 256 times does not need ten
/// metres.
struct Card {
    road: Road,
    holds: Vec<Hold>,
    /// The range of holds that are the legs of each descent.
    of_descents: Vec<Range<usize>>,
    caps: Vec<f64>,
    /// Cells where the plan tells that the service brakes are touched.
    touched: Vec<bool>,
}

impl Card {
    fn of(road: &Road, trip: Trip<'_>, plan: &Plan) -> Self {
        let fine = plan.holds();
        let fine_caps = caps(trip, road, &fine);
        let coarse = road.coarser();
        let last = coarse.cells();
        // A cap is kept from its coarse point on: a slower point between two is slowed for at the first. A
        // hold that ends between two is kept to the second.
        let cap = |point: usize| {
            let fine = (2 * point).min(road.cells());
            fine_caps[fine].min(fine_caps[fine.saturating_sub(1)])
        };
        let hold = |it: &Hold| Hold { from: it.from / 2, to: it.to.div_ceil(2).min(last), ..*it };
        // Holds that meet in the middle of a coarse cell must not overlap.
        let mut holds: Vec<Hold> = fine.iter().map(hold).collect();
        for index in 1..holds.len() {
            holds[index].from = holds[index].from.max(holds[index - 1].to);
        }
        let mut first = 0;
        let legs = |descent: &Descent| {
            let from = first;
            first += descent.holds().len();
            from..first
        };
        let of_descents = plan.descents.iter().map(legs).collect();
        let caps = (0..=last).map(cap).collect();
        Self { holds, of_descents, caps, touched: touched(&coarse, plan), road: coarse }
    }
}

/// Cells of touches. A heavier truck or a weaker retarder takes longer until it is back at its speed: a touch
/// is followed by as much road again.
fn touched(road: &Road, plan: &Plan) -> Vec<bool> {
    let mut touched = vec![false; road.cells()];
    for touch in plan.descents.iter().flat_map(|descent| &descent.touches) {
        let (from, to) = (touch.from.0, 2.0 * touch.to.0 - touch.from.0);
        let from = (from / road.step_m()) as usize;
        let to = ((to / road.step_m()).ceil() as usize).min(road.cells());
        touched[from.min(to)..to].fill(true);
    }
    touched
}

/// Half-width of the error of each cell's grade.
fn half_widths(road: &Road) -> Vec<f64> {
    let mut widths = vec![0.0; road.cells()];
    for segment in road.segments() {
        widths[segment.from..segment.to].fill(segment.plus_minus);
    }
    widths
}

fn truck_of(truck: &Truck, sample: &Sample) -> Truck {
    truck.shaken(sample.mass(), sample.rolling(), sample.drag(), sample.retarder(), sample.cooling())
}

fn day_of(day: &Day, sample: &Sample) -> Day {
    Day {
        headwind_kmh: day.headwind_kmh + sample.wind_kmh(),
        brakes_at_start_c: day.brakes_at_start_c + sample.brakes_at_start_k(),
        ..*day
    }
}

fn outcome(trip: Trip<'_>, run: &Run, hold: &Hold, touched: &[bool], step_m: f64) -> Outcome {
    let samples = &run.samples[hold.from..hold.to];
    let most = |value: &dyn Fn(&Driven) -> f64| samples.iter().map(value).fold(f64::NEG_INFINITY, f64::max);
    let after_stop = most(&|sample| sample.after_stop.0);
    let fastest = most(&|sample| sample.speed.0);
    let elsewhere = samples.iter().zip(&touched[hold.from..hold.to]);
    let elsewhere = elsewhere.map(|(sample, touched)| (!touched).then_some(sample));
    let slack = MetresPerSecond(hold.speed.0 + SPEED_SLACK);
    let gained = elsewhere.clone().flatten().any(|sample| sample.speed.0 >= slack.0 - NEARLY);
    // Where the highest engine speed is nearer than the slack, the service brakes take over there. They may
    // while the gear is changed at the crest, and they may take what would have gone into the slack.
    let (truck, spec) = (trip.truck, trip.truck.spec());
    let overspeed = truck.road_speed(hold.gear, truck.highest_engine_speed());
    let change_m = (spec.transmission.shift_time().0 + spec.retarder_delay_s) * overspeed.0 + step_m;
    let most_j = (0.5 * spec.gross_mass_kg * (slack.0 * slack.0 - overspeed.0 * overspeed.0)).max(0.0);
    let (mut braked_m, mut braked_j, mut braked) = (0.0, 0.0, false);
    for sample in elsewhere {
        match sample.filter(|it| it.speed.0 >= overspeed.0 - NEARLY && it.carried < 1.0) {
            Some(sample) => {
                braked_m += step_m;
                braked_j += sample.to_hold.0 * (1.0 - sample.carried) * step_m;
                braked |= braked_m > change_m && braked_j > most_j;
            }
            None => (braked_m, braked_j) = (0.0, 0.0),
        }
    }
    Outcome {
        // Slowing for a curve is no failure to hold: only the slack above the speed is given up.
        held: !gained && !braked,
        kept: after_stop <= trip.day.heat_limit_c,
        after_stop,
        fastest,
    }
}

fn summary(outcomes: &[Outcome]) -> DescentSureness {
    let count = |is: &dyn Fn(&Outcome) -> bool| outcomes.iter().filter(|it| is(it)).count();
    let band = |value: &dyn Fn(&Outcome) -> f64| {
        let mut values: Vec<f32> = outcomes.iter().map(|it| value(it) as f32).collect();
        (quantile(&mut values, BAND.0), quantile(&mut values, BAND.1))
    };
    let heat: Vec<f64> = outcomes.iter().map(|it| it.after_stop).collect();
    DescentSureness {
        held: count(&|it| it.held),
        kept: count(&|it| it.kept),
        after_stop_c: band(&|it| it.after_stop),
        fastest: band(&|it| it.fastest),
        matters: matters(&heat),
    }
}

/// Inputs ordered by their share of the variance.
fn matters(heat: &[f64]) -> Vec<(Input, f32)> {
    /// Smaller shares are not told.
    const TOLD: f64 = 0.05;
    let samples: Vec<Sample> = (0..heat.len()).map(Sample::number).collect();
    let share = |input: Input| {
        let own = first_order(samples.iter().map(|sample| sample.share(input)), heat);
        match input {
            Input::Grade => own.max(first_order(samples.iter().map(Sample::wave_length_share), heat)),
            Input::Mass
            | Input::Rolling
            | Input::Drag
            | Input::Retarder
            | Input::Wind
            | Input::BrakesAtStart
            | Input::Cooling => own,
        }
    };
    let mut told: Vec<(Input, f32)> = Vec::new();
    for input in Input::ALL {
        let share = share(input);
        if share > TOLD {
            let at = told.partition_point(|(_, other)| f64::from(*other) >= share);
            told.insert(at, (input, share as f32));
        }
    }
    told
}

/// Speeds and temperatures of all runs at the kept points, run after run.
struct Kept {
    points: usize,
    speed: Vec<f32>,
    temperature: Vec<f32>,
}

impl Kept {
    fn take(&mut self, run: &Run, stride: usize) {
        for sample in run.samples.iter().step_by(stride) {
            self.speed.push(sample.speed.0 as f32);
            self.temperature.push(sample.hottest.0 as f32);
        }
    }

    fn bands(&self, road: &Road, stride: usize) -> Bands {
        Bands {
            speed: self.band(&self.speed, road, stride),
            temperature: self.band(&self.temperature, road, stride),
        }
    }

    fn band(&self, values: &[f32], road: &Road, stride: usize) -> [Vec<f32>; 2] {
        let mut ends = [Vec::with_capacity(self.points), Vec::with_capacity(self.points)];
        let mut of_point = Vec::with_capacity(RUNS);
        for point in 0..self.points {
            of_point.clear();
            of_point.extend(values.iter().skip(point).step_by(self.points));
            ends[0].push(quantile(&mut of_point, BAND.0));
            ends[1].push(quantile(&mut of_point, BAND.1));
        }
        let along = |end: &Vec<f32>| {
            // A grid point has the value of the cell that ends there; the first point has the value at the
            // start.
            let at = |point: usize| {
                let cell = point.saturating_sub(1);
                let kept = (cell / 2 / stride).min(end.len() - 1);
                if road.assessed()[cell] { end[kept] } else { f32::NAN }
            };
            (0..=road.cells()).map(at).collect()
        };
        [along(&ends[0]), along(&ends[1])]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::truck::{Preset, TruckSpec};

    /// Three passes of different steepness, with bumps that a grid of 20 m cannot follow exactly.
    fn passes() -> Road {
        let height = |k: u32| {
            let s = f64::from(k) * 10.0;
            900.0 + 320.0 * libm::sin(s / 2_100.0) + 14.0 * libm::sin(s / 190.0) - 0.004 * s
        };
        Road::from_heights("passes", 10.0, (0..=4_000).map(height).collect()).expect("heights are sound")
    }

    /// Where the highest engine speed is nearer than the slack, the service brakes take over there.
    #[test]
    fn a_truck_that_its_service_brakes_keep_at_the_highest_engine_speed_is_not_held() {
        let height = |k: u32| 900.0 - 0.06 * 10.0 * f64::from(k.clamp(100, 600) - 100);
        let road =
            Road::from_heights("hill", 10.0, (0..=700).map(height).collect()).expect("heights are sound");
        let (truck, day) = (Truck::new(Preset::FiveAxle36.spec()).expect("a preset"), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        let (plan, _) = crate::plan::plan(&road, &truck, &day, &mut |_| true).expect("not stopped");
        let card = Card::of(&road, trip, &plan);
        let hold = card.holds[0];
        let overspeed = truck.road_speed(hold.gear, truck.highest_engine_speed()).0;
        assert!(overspeed < hold.speed.0 + SPEED_SLACK, "{overspeed} and {}", hold.speed.0);
        let driven = |scale: f64| {
            let weak =
                Truck::new(TruckSpec { retarding_scale: scale, ..truck.spec().clone() }).expect("a truck");
            let trip = Trip { truck: &weak, day: &day };
            let run = Run::by_card(trip, &card.road, &card.caps, &card.holds, start_state(trip, &card.road));
            outcome(trip, &run, &hold, &card.touched, card.road.step_m()).held
        };
        assert!(driven(1.0) && !driven(0.4), "the planned one is held, the weak one is not");
    }

    /// Largest difference of a descent's hottest brakes between the grids of 20 m and 10 m, K: at most, and
    /// in the mean over all descents here (measured: 9.8 where a leg is slowed for, 2.7 on average).
    const COARSER: (f64, f64) = (10.0, 3.0);

    #[test]
    fn the_coarser_grid_tells_the_same() {
        let (road, day) = (passes(), Day::USUAL);
        let mut apart = Vec::new();
        for kind in [Preset::FiveAxle36, Preset::FiveAxle40, Preset::Rigid18] {
            let truck = Truck::new(kind.spec()).expect("a preset");
            let trip = Trip { truck: &truck, day: &day };
            let (plan, _) = crate::plan::plan(&road, &truck, &day, &mut |_| true).expect("not stopped");
            let card = Card::of(&road, trip, &plan);
            let coarse =
                Run::by_card(trip, &card.road, &card.caps, &card.holds, start_state(trip, &card.road));
            let fine = Run::along(trip, &road, 0, road.cells(), &plan.holds(), start_state(trip, &road));
            for (descent, hold) in plan.descents.iter().zip(&card.holds) {
                let hottest = |samples: &[Driven]| samples.iter().map(|s| s.hottest.0).fold(0.0, f64::max);
                let (a, b) = (
                    hottest(&fine.samples[descent.from..descent.to]),
                    hottest(&coarse.samples[hold.from..hold.to]),
                );
                apart.push((a - b).abs());
            }
        }
        let largest = apart.iter().copied().fold(0.0, f64::max);
        let mean = apart.iter().sum::<f64>() / apart.len() as f64;
        assert!(
            apart.len() > 5 && largest <= COARSER.0 && mean <= COARSER.1,
            "{mean} K, at most {largest} K: {apart:?}"
        );
    }
}
