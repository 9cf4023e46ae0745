//! A second opinion: one descent by a general solver of differential equations.
//!
//! Our run steps along the road in cells and uses exact exponentials for heat. The other is an adaptive
//! Runge-Kutta method of order 5 that uses neither and works to 1e-10. Both get equal forces: this checks how
//! the forces are added up along the road, not the forces themselves.

use ode_solvers::dopri5::Dopri5;
use ode_solvers::{SVector, System};
use solver::constants::SPEED_SLACK;
use solver::day::Day;
use solver::motion::{Air, BrakeHeat, Hold, Run, State, Trip};
use solver::road::Road;
use solver::truck::{Gear, Preset, Truck};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::preset;

/// Agreement asked for.
const WITHIN: f64 = 1e-3;
const GRADE: Grade = Grade(-0.085);
const STEP_M: f64 = 10.0;
const START_C: f64 = 66.0;

/// Speed and the temperatures of three axle groups, along the slope.
type Values = SVector<f64, 4>;

/// Full stage on one grade; with `held` the service brakes keep the speed, else they are off.
struct Descent<'a> {
    trip: Trip<'a>,
    gear: Gear,
    air: Air,
    held: bool,
}

impl System<f64, Values> for Descent<'_> {
    fn system(&self, _: f64, now: &Values, rate: &mut Values) {
        let Self { trip, gear, air, held } = self;
        let speed = MetresPerSecond(now[0]);
        let truck = trip.truck;
        let push = trip.demand(speed, GRADE, *air).0 - trip.retarding(*gear, speed, GRADE, *air).0;
        let mass = truck.mass().0 * truck.rotating_factor(*gear);
        rate[0] = if *held { 0.0 } else { push / mass / speed.0 };
        let power = if *held { push * speed.0 } else { 0.0 };
        for (index, group) in truck.spec().axle_groups.iter().enumerate() {
            let gained =
                power * group.effort_share - group.cooling(speed) * (now[index + 1] - trip.day.air_c);
            rate[index + 1] = gained / group.heat_capacity() / speed.0;
        }
    }
}

fn integrate(descent: Descent<'_>, from: Values, way: f64) -> Values {
    if way <= 0.0 {
        return from;
    }
    let mut solver = Dopri5::new(descent, 0.0, way, way, from, 1e-10, 1e-10);
    solver.integrate().expect("a smooth problem");
    *solver.y_out().last().expect("its end")
}

/// The lowest gear in which full stage falls short by a tenth at this speed. Nearer to balance our driver
/// would use less than full stage, and the two would differ.
fn too_high_a_gear(trip: Trip<'_>, speed: MetresPerSecond, air: Air) -> Gear {
    let short = |gear: &Gear| trip.retarding(*gear, speed, GRADE, air) < trip.demand(speed, GRADE, air) * 0.9;
    let top = MetresPerSecond(speed.0 + SPEED_SLACK);
    let turns = |gear: &Gear| trip.truck.engine_speed(*gear, top) <= trip.truck.highest_engine_speed();
    trip.truck.gears().filter(turns).find(short).expect("a gear that overruns")
}

fn compare(truck: &Truck, day: &Day) {
    let trip = Trip { truck, day };
    let speed = MetresPerSecond::from_kmh(50.0);
    let heights: Vec<f64> = (0..=400).map(|k| 1_000.0 + GRADE.0 * STEP_M * f64::from(k)).collect();
    // Both get the air of the middle of the road everywhere.
    let road = Road::from_heights("one grade", STEP_M, heights).expect("heights are sound");
    let cells = road.cells();
    let gear = too_high_a_gear(trip, speed, trip.air(Metres(1_000.0)));
    let hold = Hold { from: 0, to: cells, gear, speed, snub: None };
    let start = State::settled(speed, gear, BrakeHeat::uniform(Celsius(START_C)));
    let mut ours: Vec<State> = Vec::new();
    let _ = Run::watched(trip, &road, &[hold], start, &mut |state| ours.push(*state));

    let slope = 1.0 / GRADE.sin_cos().1;
    let top = speed.0 + SPEED_SLACK;
    let mut now = Values::from([speed.0, START_C, START_C, START_C]);
    let mut gaining = true;
    for (cell, state) in ours.iter().enumerate() {
        let air = trip.air_on(&road, cell);
        let way = STEP_M * slope;
        let make = |held| Descent { trip, gear, air, held };
        let mut left = way;
        if gaining {
            let free = integrate(make(false), now, way);
            if free[0] < top {
                (now, left) = (free, 0.0);
            } else {
                // The point at which the slack is used up, by bisection.
                let (mut before, mut behind) = (0.0, way);
                for _ in 0..40 {
                    let middle = 0.5 * (before + behind);
                    if integrate(make(false), now, middle)[0] < top {
                        before = middle;
                    } else {
                        behind = middle;
                    }
                }
                (now, left, gaining) = (integrate(make(false), now, before), way - before, false);
            }
        }
        now = integrate(make(true), now, left);
        check("speed over theirs", 1.0, state.speed.0 / now[0], WITHIN);
        for index in 0..truck.spec().axle_groups.len() {
            let theirs = now[index + 1];
            check("temperature over theirs", 1.0, state.brakes.of_group(index).0 / theirs, WITHIN);
        }
    }
    assert!(!gaining && now[1] > START_C + 20.0, "the slack was used up and the brakes were worked: {now}");
}

#[test]
fn a_general_solver_agrees_on_speed_and_temperature() {
    for kind in [Preset::FiveAxle36, Preset::FiveAxle40, Preset::BDouble, Preset::Tipper26] {
        compare(&preset(kind), &Day { speed_limit_kmh: 100.0, ..Day::USUAL });
    }
}
