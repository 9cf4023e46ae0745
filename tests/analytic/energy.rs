//! The books of work close, and their entries follow from mechanics.

use solver::day::Day;
use solver::motion::{BrakeHeat, Hold, Run, State, Trip};
use solver::road::Road;
use solver::truck::{Preset, Truck};
use solver::units::{Celsius, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::preset;

/// Largest imbalance as a share of the work done, as the model promises.
const CLOSED: f64 = 1e-9;

fn waves() -> Road {
    let heights = (0..1_500).map(|k| {
        let s = f64::from(k) * 10.0;
        600.0 - 0.03 * s + 25.0 * (s / 900.0).sin() + 60.0 * (s / 4_000.0).cos()
    });
    Road::from_heights("waves", 10.0, heights.collect()).expect("a road")
}

/// A run along the road at a held speed, with the day's brake temperature at the start.
fn run(truck: &Truck, day: &Day, road: &Road, hold_kmh: f64) -> (Run, State) {
    let trip = Trip { truck, day };
    let speed = MetresPerSecond::from_kmh(hold_kmh);
    let gear = trip.lowest_gear_within(speed, 0.95).expect("a gear");
    let start = State::settled(speed, gear, BrakeHeat::uniform(Celsius(day.brakes_at_start_c)));
    let hold = Hold { from: 0, to: road.cells(), gear, speed, snub: None };
    (Run::along(trip, road, 0, road.cells(), &[hold], start), start)
}

#[test]
fn the_books_close() {
    let (road, day) = (waves(), Day { headwind_kmh: 15.0, ..Day::USUAL });
    for kind in Preset::ALL {
        let truck = preset(kind);
        for hold_kmh in [20.0, 35.0, 60.0] {
            let (run, _) = run(&truck, &day, &road, hold_kmh);
            let l = run.ledger;
            let done = l.gravity.0.abs() + l.holding.0.abs() + l.service.0.abs() + l.pulling.0;
            assert!(l.imbalance().0.abs() <= CLOSED * done, "{}: {:?}", kind.key(), l);
        }
    }
}

/// Gravity's entry is m·g times the height lost. Kinetic energy's, in one gear, is that of the two end
/// speeds. The run adds up neither in this way.
#[test]
fn gravity_and_kinetic_energy_are_those_of_the_ends() {
    let (truck, day, road) = (preset(Preset::FiveAxle36), Day::USUAL, waves());
    let trip = Trip { truck: &truck, day: &day };
    let (run, start) = run(&truck, &day, &road, 30.0);
    let lost = road.heights_m()[0] - road.heights_m()[road.cells()];
    let gravity = trip.weight().0 * lost;
    check("gravity", 1.0, run.ledger.gravity.0 / gravity, CLOSED);
    let mass = truck.mass().0 * truck.rotating_factor(start.gear);
    let square = |v: MetresPerSecond| v.0 * v.0;
    let kinetic = 0.5 * mass * (square(run.end.speed) - square(start.speed));
    check("kinetic", kinetic / gravity, run.ledger.kinetic.0 / gravity, CLOSED);
}

/// All work of the service brakes is in the brakes, except what the air takes. They begin at air temperature,
/// so that nothing is lost before they work.
#[test]
fn brake_heat_is_brake_work() {
    let day = Day { brakes_at_start_c: Day::USUAL.air_c, ..Day::USUAL };
    let mut spec = Preset::FiveAxle36.spec();
    spec.retarder = solver::truck::Retarder::None;
    let truck = tests::trucks::truck(spec);
    let road = Road::from_heights("short", 10.0, (0..60).map(|k| 500.0 - 0.6 * f64::from(k)).collect())
        .expect("a road");
    let (run, start) = run(&truck, &day, &road, 60.0);
    let trip = Trip { truck: &truck, day: &day };
    check("°C at the start", day.air().0, start.brakes.hottest(trip).0, 0.0);
    let group = truck.spec().axle_groups[1];
    let gained = run.end.brakes.hottest(trip).0 - day.air().0;
    let uncooled = -run.ledger.service.0 * group.effort_share / group.heat_capacity();
    // Cooling at the final temperature bounds the heat lost to the air in that time.
    let cooled = group.cooling(run.end.speed) * gained * run.ledger.time.0 / group.heat_capacity();
    assert!(gained > 10.0, "hardly worked: {gained} K");
    assert!(gained < uncooled && gained > uncooled - cooled, "{gained} {uncooled} {cooled}");
}
