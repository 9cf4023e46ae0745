//! Where the model promises a direction, finite differences check it.

use proptest::prelude::*;
use solver::day::{Day, ServiceBrakes};
use solver::motion::{Answer, BrakeHeat, HeatLump, Trip, control_speed, ramp_length};
use solver::plan::Choice;
use solver::road::Road;
use solver::truck::{Preset, RetarderKind, Truck};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, Seconds, Watts};
use tests::trucks::{ideal_gears, preset, truck};

fn settled(answer: Answer) -> f64 {
    match answer {
        Answer::Settles { speed, .. } => speed.0,
        // It holds more than needed at least up to a speed.
        Answer::MoreThanNeeded | Answer::Overruns { above: Some(_) } => 0.0,
        Answer::Overruns { above: None } | Answer::NotUsable(_) => f64::INFINITY,
    }
}

/// An even hill of 3 km between level ends.
fn hill(grade: f64) -> Road {
    let heights = (0..=500).map(|k| 1_200.0 + 10.0 * grade * f64::from(k.clamp(100, 400) - 100)).collect();
    Road::from_heights("hill", 10.0, heights).expect("heights are sound")
}

/// A gear for any speed: the steps of a real gearbox would hide the direction.
fn stepless() -> Truck {
    let mut spec = Preset::FiveAxle36.spec();
    spec.gears = ideal_gears();
    truck(spec)
}

fn hold_kmh(truck: &Truck, day: &Day, grade: f64) -> f64 {
    let (plan, _) = solver::analyse(&hill(grade), truck, day, &mut |_| true).expect("not stopped");
    match &plan.descents[0].choice {
        Choice::Held(advice) => advice.speed.kmh(),
        Choice::NoSafeSpeed(_) => 0.0,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn thinner_air_never_settles_slower(i in -0.12..-0.02f64, low in 0.0..2_000.0f64, more in 10.0..2_000.0f64) {
        let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        for gear in truck.gears() {
            let at = |height| settled(control_speed(trip, gear, truck.full_stage(), Grade(i), Metres(height)));
            prop_assert!(at(low + more) >= at(low) * (1.0 - 1e-9));
        }
    }

    #[test]
    fn more_heat_in_is_never_cooler(t in 20.0..400.0f64, p in 0.0..3e5f64, more in 1.0..1e5f64, time in 1.0..2_000.0f64) {
        let lump = HeatLump { capacity: 3.9e5, cooling: 200.0 };
        let after = |from, power| lump.after(Celsius(from), Celsius(32.0), Watts(power), Seconds(time)).0;
        prop_assert!(after(t, p + more) > after(t, p));
        prop_assert!(after(t + 1.0, p) >= after(t, p));
        // The way back undoes the way there.
        let again = lump.before(Celsius(after(t, p)), Celsius(32.0), Watts(p), Seconds(time.min(600.0))).0;
        let forth = lump.after(Celsius(again), Celsius(32.0), Watts(p), Seconds(time.min(600.0))).0;
        prop_assert!((forth - after(t, p)).abs() < 1e-6);
    }

    #[test]
    fn a_faster_stop_is_a_hotter_stop(kmh in 10.0..90.0f64, more in 1.0..20.0f64, i in -0.1..0.0f64) {
        let (truck, day) = (preset(Preset::FiveAxle40), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        let brakes = BrakeHeat::uniform(Celsius(100.0));
        let after = |kmh, i| brakes.hottest_after_stop(trip, MetresPerSecond::from_kmh(kmh), Grade(i)).0;
        prop_assert!(after(kmh + more, i) > after(kmh, i));
        prop_assert!(after(kmh, i - 0.01) > after(kmh, i));
    }

    #[test]
    fn a_faster_truck_and_a_falling_ramp_need_more_gravel(kmh in 20.0..150.0f64, r in 0.05..0.3f64, g in -0.03..0.1f64) {
        let length = |kmh, r, g| ramp_length(MetresPerSecond::from_kmh(kmh), r, Grade(g)).map(|it| it.0);
        prop_assert!(length(kmh + 1.0, r, g) > length(kmh, r, g));
        prop_assert!(length(kmh, r, g) > length(kmh, r + 0.01, g));
        prop_assert!(length(kmh, r, g) > length(kmh, r, g + 0.01));
    }
}

/// With a gear for every speed, no hold speed rises with mass, grade or the reserve, and none falls with more
/// retarding. One step of the search, 1 km/h, is tolerated.
#[test]
fn hold_speeds_go_the_right_way() {
    let truck = stepless();
    for grade in [-0.04, -0.06, -0.08, -0.1] {
        let day = Day::USUAL;
        let here = hold_kmh(&truck, &day, grade);
        let heavier = truck.heavier(1.08).expect("in range");
        assert!(hold_kmh(&heavier, &day, grade) <= here + 1.01, "{grade}: heavier");
        assert!(hold_kmh(&truck, &day, grade - 0.005) <= here + 1.01, "{grade}: steeper");
        assert!(
            hold_kmh(&truck, &Day { reserve: 0.3, ..day }, grade) <= here + 1.01,
            "{grade}: more reserve"
        );
        assert!(hold_kmh(&truck.with_retarding(1.1), &day, grade) >= here - 1.01, "{grade}: more retarding");
        let snubs = Day { service_brakes: ServiceBrakes::MaySnub, ..day };
        assert!(hold_kmh(&truck, &snubs, grade) >= here - 1.01, "{grade}: snubs allowed");
    }
}

/// Of two retarders the stronger never holds slower: a hydrodynamic one beside the engine brake.
#[test]
fn two_retarders_hold_no_slower_than_one() {
    let with = |kind| {
        let mut spec = stepless().spec().clone();
        spec.take_retarder(kind);
        truck(spec)
    };
    let (one, both) =
        (with(RetarderKind::CompressionRelease), with(RetarderKind::CompressionAndHydrodynamic));
    for grade in [-0.05, -0.07, -0.09] {
        let (one, both) = (hold_kmh(&one, &Day::USUAL, grade), hold_kmh(&both, &Day::USUAL, grade));
        assert!(both >= one - 1.01, "{grade}: {both} after {one}");
    }
}
