//! Constant grade: the run settles where the control speed says, and holds what it says.

use solver::day::Day;
use solver::motion::{Answer, BrakeHeat, Hold, Run, State, Trip, control_speed};
use solver::road::Road;
use solver::truck::Preset;
use solver::units::{Celsius, Grade, Metres, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::preset;

const GRADE: f64 = -0.06;

fn slope(metres: usize) -> Road {
    let heights = (0..=metres / 10).map(|k| 300.0 + GRADE * 10.0 * (k as f64 - metres as f64 / 20.0));
    Road::from_heights("slope", 10.0, heights.collect()).expect("a road")
}

/// Held below the control speed of full stage, the truck keeps that speed with cold service brakes; retarder
/// and motoring take exactly the demand.
#[test]
fn a_held_slope_is_steady() {
    let (truck, day, road) = (preset(Preset::FiveAxle36), Day::USUAL, slope(4_000));
    let trip = Trip { truck: &truck, day: &day };
    let speed = MetresPerSecond::from_kmh(35.0);
    let gear = trip.lowest_gear_within(speed, 0.95).expect("a gear");
    let start = State::settled(speed, gear, BrakeHeat::uniform(day.air()));
    let hold = Hold { from: 0, to: road.cells(), gear, speed, snub: None };
    let run = Run::along(trip, &road, 0, road.cells(), &[hold], start);
    for sample in &run.samples {
        check("m/s", speed.0, sample.speed.0, 1e-12);
        check("carried", 1.0, sample.carried, 0.0);
        check("°C", day.air_c, sample.hottest.0, 1e-9);
    }
    let demand = trip.demand(speed, Grade(GRADE), trip.air(Metres(300.0)));
    let way = 4_000.0 * (1.0 + GRADE * GRADE).sqrt();
    // Air thins a little over the slope; the middle stands for the whole.
    check("work", 1.0, -run.ledger.holding.0 / (demand.0 * way), 1e-4);
}

/// In a gear one too high the truck gains the slack. Then the service brakes take exactly what full stage
/// does not hold.
#[test]
fn a_gear_too_high_takes_the_service_brakes() {
    let (truck, day, road) = (preset(Preset::FiveAxle36), Day::USUAL, slope(6_000));
    let trip = Trip { truck: &truck, day: &day };
    let gear = truck
        .gears()
        .find(|gear| {
            control_speed(trip, *gear, truck.full_stage(), Grade(GRADE), Metres(300.0))
                == Answer::Overruns { above: None }
        })
        .expect("a gear overruns");
    let speed = truck.road_speed(gear, truck.highest_engine_speed() * 0.8);
    let start = State::settled(speed, gear, BrakeHeat::uniform(Celsius(66.0)));
    let hold = Hold { from: 0, to: road.cells(), gear, speed, snub: None };
    let run = Run::along(trip, &road, 0, road.cells(), &[hold], start);
    let end = run.end.speed;
    let slack = (speed.0 + 5.0 / 3.6).min(truck.road_speed(gear, truck.highest_engine_speed()).0);
    check("m/s", slack, end.0, 1e-9);
    let held = trip.holding(gear, truck.full_stage(), end, trip.air(Metres(300.0)));
    let demand = trip.demand(end, Grade(GRADE), trip.air(Metres(300.0)));
    let last = run.samples.last().expect("samples");
    // The road's end lies 180 m lower than its middle, so the engine holds a little more.
    check("carried", held / demand, last.carried, 0.02);
}

/// A run that starts at the speed at which the truck settles stays there.
#[test]
fn the_settled_speed_stays() {
    let (truck, day) = (preset(Preset::FiveAxle40), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    for gear in truck.gears() {
        let answer = control_speed(trip, gear, truck.full_stage(), Grade(GRADE), Metres(300.0));
        let Answer::Settles { speed, engine_speed } = answer else {
            continue;
        };
        let surplus = trip.holding(gear, truck.full_stage(), speed, trip.air(Metres(300.0)))
            - trip.demand(speed, Grade(GRADE), trip.air(Metres(300.0)));
        check("N of surplus, as a share of the weight", 0.0, surplus / trip.weight(), 1e-9);
        check("1/min", truck.engine_speed(gear, speed).0, engine_speed.0, 1e-9);
        let (slower, faster) = (speed * 0.98, speed * 1.02);
        let at = |v: MetresPerSecond| {
            trip.holding(gear, truck.full_stage(), v, trip.air(Metres(300.0)))
                > trip.demand(v, Grade(GRADE), trip.air(Metres(300.0)))
        };
        assert!(!at(slower) && at(faster), "not stable in {gear:?}");
    }
}
