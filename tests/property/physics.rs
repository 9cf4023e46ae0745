//! What must hold for any truck and any hill.

use proptest::prelude::*;
use solver::analyse;
use solver::day::Day;
use solver::motion::{Answer, BrakeHeat, Run, State, Trip, control_speed};
use solver::plan::Choice;
use solver::road::Road;
use solver::truck::{Preset, Truck};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond};
use tests::trucks::{preset, truck};

fn any_preset() -> impl Strategy<Value = Preset> {
    (0..Preset::ALL.len()).prop_map(|k| Preset::ALL[k])
}

fn with_mass(kind: Preset, factor: f64) -> Truck {
    let mut spec = kind.spec();
    spec.gross_mass_kg *= factor;
    spec.drive_axle_mass_kg *= factor;
    truck(spec)
}

/// A control speed as a number: 0 where it holds more than needed at any speed, infinite where it overruns.
fn settled(answer: Answer) -> f64 {
    match answer {
        Answer::Settles { speed, .. } => speed.0,
        // It holds more than needed at least up to a speed.
        Answer::MoreThanNeeded | Answer::Overruns { above: Some(_) } => 0.0,
        Answer::Overruns { above: None } | Answer::NotUsable(_) => f64::INFINITY,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn heavier_never_needs_less_holding(kind in any_preset(), i in -0.15..-0.01f64, kmh in 5.0..90.0f64, more in 1.0..1.5f64) {
        let day = Day::USUAL;
        let (light, heavy) = (with_mass(kind, 1.0), with_mass(kind, more));
        let demand = |truck: &Truck| {
            let trip = Trip { truck, day: &day };
            trip.demand(MetresPerSecond::from_kmh(kmh), Grade(i), trip.air(Metres(0.0))).0
        };
        // A truck that is not pushed needs no holding, however heavy.
        prop_assert!(demand(&heavy).max(0.0) >= demand(&light).max(0.0));
    }

    #[test]
    fn heavier_never_settles_slower(kind in any_preset(), i in -0.12..-0.02f64, more in 1.0..1.3f64) {
        let day = Day::USUAL;
        let (light, heavy) = (with_mass(kind, 1.0), with_mass(kind, more));
        for gear in light.gears() {
            let at = |truck: &Truck| settled(control_speed(Trip { truck, day: &day }, gear, truck.full_stage(), Grade(i), Metres(0.0)));
            prop_assert!(at(&heavy) >= at(&light) * (1.0 - 1e-9));
        }
    }

    #[test]
    fn more_stage_never_settles_faster(kind in any_preset(), i in -0.12..-0.02f64, height in 0.0..3_000.0f64) {
        let (truck, day) = (preset(kind), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        for gear in truck.gears() {
            let speeds: Vec<f64> = truck
                .stages()
                .map(|stage| control_speed(trip, gear, stage, Grade(i), Metres(height)))
                // Grades beyond the grip of the driven axles are no question of speed.
                .filter(|answer| !matches!(answer, Answer::NotUsable(_)))
                .map(settled)
                .collect();
            prop_assert!(speeds.windows(2).all(|pair| pair[1] <= pair[0] * (1.0 + 1e-9)), "{speeds:?}");
        }
    }

    #[test]
    fn a_flat_road_adds_no_brake_heat(kind in any_preset(), kmh in 20.0..80.0f64, start_c in 40.0..300.0f64) {
        let truck = preset(kind);
        let day = Day { brakes_at_start_c: start_c, ..Day::USUAL };
        let trip = Trip { truck: &truck, day: &day };
        let road = Road::from_heights("flat", 10.0, vec![100.0; 500]).expect("a road");
        let speed = MetresPerSecond::from_kmh(kmh);
        let gear = trip.lowest_gear_within(speed, 1.0).expect("a gear");
        let start = State::settled(speed, gear, BrakeHeat::uniform(Celsius(start_c)));
        let run = Run::along(trip, &road, 0, road.cells(), &[], start);
        prop_assert!(run.ledger.service.0.abs() < f64::MIN_POSITIVE);
        prop_assert!(run.samples.windows(2).all(|pair| pair[1].hottest <= pair[0].hottest));
    }

    #[test]
    fn a_steeper_hill_is_never_advised_faster(kind in any_preset(), i in 0.03..0.08f64, more in 1.05..1.5f64) {
        let advised = |grade: f64| {
            let (truck, day) = (preset(kind), Day::USUAL);
            let heights = (0..400_u32).map(|k| 500.0 - f64::from(k.saturating_sub(50)) * 10.0 * grade);
            let road = Road::from_heights("hill", 10.0, heights.collect()).expect("a road");
            let (plan, _) = analyse(&road, &truck, &day, &mut |_| true).expect("not cancelled");
            match plan.descents.first().map(|d| d.choice) {
                Some(Choice::Held(advice)) => advice.speed.0,
                Some(Choice::NoSafeSpeed(_)) => 0.0,
                None => f64::INFINITY,
            }
        };
        prop_assert!(advised(i * more) <= advised(i));
    }
}

/// Advice keeps its promises: in the run, no engine overspeed, and brakes below the heat limit with one stop
/// in hand.
#[test]
fn advice_keeps_its_promises() {
    let heights = (0..1_500).map(|k| {
        let s = f64::from(k) * 10.0;
        900.0 - 0.055 * s + 20.0 * (s / 700.0).sin()
    });
    let road = Road::from_heights("steps", 10.0, heights.collect()).expect("a road");
    for kind in Preset::ALL {
        for service_brakes in [solver::ServiceBrakes::InReserve, solver::ServiceBrakes::MaySnub] {
            let (truck, day) = (preset(kind), Day { service_brakes, ..Day::USUAL });
            let (plan, lanes) = analyse(&road, &truck, &day, &mut |_| true).expect("not cancelled");
            assert!(!plan.descents.is_empty());
            for d in &plan.descents {
                let Choice::Held(advice) = d.choice else {
                    continue;
                };
                assert!(advice.hottest_after_stop.0 <= day.heat_limit_c);
                for point in d.from + 1..=d.to {
                    let n = f64::from(lanes.engine_speed[point]);
                    assert!(n <= truck.highest_engine_speed().0 + 0.5, "{} at {point}: {n}", kind.key());
                }
            }
        }
    }
}
