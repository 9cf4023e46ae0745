//! Answers against sums written anew.

use super::samples::{ROADS, every_sheet, planned};
use super::*;
use solver::motion::Answer;
use solver::plan::HOLD_SHARE;
use solver::truck::{Preset, Retarder, Warmth};
use solver::units::{Celsius, Metres, MetresPerSecond};

const DAY: Day = Day::USUAL;

/// The truck of an exercise.
pub(super) fn laden(spec: &TruckSpec, hill: &Hill) -> Truck {
    let mut spec = spec.clone();
    spec.drive_axle_mass_kg *= hill.mass.0 / spec.gross_mass_kg;
    spec.gross_mass_kg = hill.mass.0;
    Truck::new(spec).expect("a truck")
}

/// Density of the air by ISO 2533, written anew, kg/m³.
fn density(height: Metres, air: Celsius) -> f64 {
    let ratio = (1.0 - 2.255_77e-5 * height.0).powf(4.2559);
    1.225 * ratio * (288.15 - 0.0065 * height.0) / (air.0 + 273.15)
}

/// Demand by angles, written anew, N.
fn demand(hill: &Hill, speed: f64) -> f64 {
    let angle = (-hill.grade.0).atan();
    let weight = hill.mass.0 * 9.806_65;
    let against = speed + hill.headwind.0;
    weight * angle.sin()
        - hill.rolling * weight * angle.cos()
        - 0.5 * hill.air.density * hill.drag_area_m2 * against * against.abs()
}

fn close(what: &str, a: f64, b: f64, share: f64) {
    assert!((a - b).abs() <= share * b.abs().max(1e-9), "{what}: {a} is not {b}");
}

#[test]
fn a_truck_settles_where_holding_force_and_demand_are_one() {
    every_sheet(&DAY, |spec, ground, sheet| {
        for exercise in &sheet.exercises[..2] {
            let Exercise::ControlSpeed(it) = exercise else { panic!("{exercise:?}") };
            let truck = laden(spec, &it.hill);
            let held = |v| {
                let ambient = it.hill.air.ambient;
                truck.holding_force(it.gear, it.stage, MetresPerSecond(v), ambient, Warmth::SUSTAINED).0
            };
            let of = |rpm: f64| {
                rpm * std::f64::consts::TAU / 60.0 * truck.spec().rolling_radius_m
                    / (truck.ratio(it.gear) * truck.spec().axle_ratio)
            };
            let low = of(truck.lowest_engine_speed(it.stage).0);
            let high = of(truck.highest_engine_speed().0);
            let speeds = || (0..=200).map(|k| low + (high - low) * f64::from(k) / 200.0);
            let what = format!("{} seed {}", spec.name, sheet.seed);
            match it.answer {
                Answer::Settles { speed, .. } => {
                    close(&what, held(speed.0), demand(&it.hill, speed.0), 1e-3);
                    assert!(
                        speeds().filter(|v| *v < speed.0 * 0.999).all(|v| held(v) < demand(&it.hill, v)),
                        "{what}"
                    );
                }
                Answer::MoreThanNeeded => {
                    assert!(speeds().all(|v| held(v) > demand(&it.hill, v) * 0.999), "{what}");
                }
                Answer::Overruns { above: None } => {
                    assert!(speeds().all(|v| held(v) < demand(&it.hill, v) * 1.001), "{what}");
                }
                Answer::Overruns { above: Some(speed) } => {
                    close(&what, held(speed.0), demand(&it.hill, speed.0), 1e-3);
                    assert!(held(speed.0 * 1.001) < demand(&it.hill, speed.0 * 1.001), "{what}: {speed:?}");
                }
                Answer::NotUsable(why) => panic!("{what}: {why:?}"),
            }
            let here = ground.slopes.iter().map(|slope| density(slope.height, DAY.air()));
            assert!(here.into_iter().any(|rho| (rho - it.hill.air.density).abs() < 1e-6), "{what}");
            for point in it.points.iter().chain([&it.shown]) {
                close(&what, point.holding.0, held(point.speed.0), 1e-12);
                close(&what, point.forces.demand.0, demand(&it.hill, point.speed.0), 1e-9);
            }
        }
    });
}

#[test]
fn no_higher_gear_keeps_the_reserve() {
    let (mut found, mut none) = (0, 0);
    every_sheet(&DAY, |spec, _, sheet| {
        let Exercise::GearChoice(it) = &sheet.exercises[2] else { panic!("{sheet:?}") };
        let truck = laden(spec, &it.hill);
        let unit = sheet.units.metres_per_second_per_speed();
        let keeps = |gear| {
            let turned = truck.road_speed(gear, truck.highest_engine_speed() * HOLD_SHARE).0;
            let speed = (turned.min(DAY.speed_limit().0) / unit + 1e-6).floor() * unit;
            let full = truck.full_stage();
            let fits = truck.engine_speed(gear, MetresPerSecond(speed)) >= truck.lowest_engine_speed(full)
                && truck.is_coupled(gear)
                && speed >= 5.0 / 3.6;
            let ambient = it.hill.air.ambient;
            let held = truck.holding_force(gear, full, MetresPerSecond(speed), ambient, Warmth::SUSTAINED).0;
            let demand = demand(&it.hill, speed);
            (fits && demand > 0.0 && held / demand - 1.0 >= DAY.reserve).then_some(speed)
        };
        // Dry: full stage is within the grip of the driven axles, or the table says a weaker one.
        let all_full = it.gears.iter().all(|tried| tried.stage == truck.full_stage());
        let highest = truck.gears().rev().find_map(|gear| keeps(gear).map(|speed| (gear, speed)));
        let told = it.answer.map(|at| (it.gears[at].gear, it.gears[at].held.speed.0));
        if all_full {
            assert_eq!(told.map(|it| it.0), highest.map(|it| it.0), "{} seed {}", spec.name, sheet.seed);
            if let (Some(told), Some(highest)) = (told, highest) {
                close("speed", told.1, highest.1, 1e-9);
            }
        }
        if let Some(at) = it.answer {
            found += 1;
            assert!(it.gears[..at].iter().all(|tried| !tried.keeps(it.reserve)), "{it:?}");
        } else {
            none += 1;
        }
    });
    assert!(found > 20 * none, "{found} with an answer, {none} without");
}

/// A plan and an exercise that ask the same come to the same gear and speed.
#[test]
fn the_gear_of_an_exercise_is_that_of_the_plan() {
    let mut compared = 0;
    for preset in Preset::ALL {
        let mut spec = preset.spec();
        // Where what is held falls with speed a plan may hold between two gears' tops: on the shaft, and near
        // the top of a declared shape.
        spec.curve_by_exponent(true);
        if !matches!(spec.retarder, Retarder::Engine { .. }) {
            continue;
        }
        let truck = Truck::new(spec.clone()).expect("a truck");
        let plan = planned(ROADS[0], &spec, &DAY);
        let (descent, ground) = (&plan.descents[0], Ground::of(&plan));
        let setting = Setting { ground: &ground, truck: &truck, day: &DAY, units: Units::Metric };
        let trip = setting.trip(&truck);
        let hill = Hill::of(trip, descent.sustained.grade, descent.sustained.height);
        let all = gear_choice::gears(&setting, trip, &hill);
        let tried = all.iter().find(|it| it.keeps(DAY.reserve)).expect("a gear holds 8 %");
        let advice = descent.choice.advice().expect("held");
        assert_eq!(tried.gear, advice.gear, "{}", spec.name);
        assert!((tried.held.speed.kmh() - advice.speed.kmh()).abs() < 1e-6, "{}", spec.name);
        close("reserve", tried.held.reserve(), advice.margin, 1e-6);
        compared += 1;
    }
    assert!(compared >= 5, "{compared}");
}

#[test]
fn the_books_of_braking_work_close() {
    every_sheet(&DAY, |spec, _, sheet| {
        let Exercise::BrakingWork(it) = &sheet.exercises[3] else { panic!("{sheet:?}") };
        let what = format!("{} seed {}", spec.name, sheet.seed);
        let weight = it.hill.mass.0 * 9.806_65;
        let fall = weight * it.drop.0;
        let cosine = (it.drop.0 / it.length.0).asin().cos();
        let rolled = it.hill.rolling * weight * it.length.0 * cosine;
        let drag = 0.5 * it.hill.air.density * it.hill.drag_area_m2 * it.speed.0 * it.speed.0 * it.length.0;
        close(&what, it.gravity.0, fall, 1e-9);
        close(&what, it.left.0, fall - rolled - drag, 1e-9);
        close(&what, it.service.0, (1.0 - it.carried_share) * (fall - rolled - drag), 1e-9);
        close(&what, (it.carried + it.service).0, it.left.0, 1e-12);
    });
}

#[test]
fn time_saved_is_the_difference_of_two_times() {
    every_sheet(&DAY, |_, _, sheet| {
        let Exercise::Haste(it) = &sheet.exercises[4] else { panic!("{sheet:?}") };
        close("saved", it.saved.0, it.length.0 / it.slow.0 - it.length.0 / it.fast.0, 1e-9);
        close("energy", it.energy, it.fast.0.powi(2) / it.slow.0.powi(2), 1e-9);
    });
}

/// C·dT/dt = P − hA·(T − Tₐ), by small steps of a method of fourth order.
#[test]
fn the_temperature_at_the_foot_solves_its_equation() {
    every_sheet(&DAY, |spec, _, sheet| {
        let Exercise::BrakeHeat(it) = &sheet.exercises[5] else { panic!("{sheet:?}") };
        let (steps, group) = (100, it.share * it.power.0);
        let slope = |t: f64| (group - it.lump.cooling * (t - it.air.0)) / it.lump.capacity;
        let step = it.length.0 / it.speed.0 / f64::from(steps);
        let foot = (0..steps).fold(it.start.0, |t, _| {
            let a = slope(t);
            let b = slope(t + 0.5 * step * a);
            let c = slope(t + 0.5 * step * b);
            let d = slope(t + step * c);
            t + step * (a + 2.0 * b + 2.0 * c + d) / 6.0
        });
        assert!((foot - it.foot.0).abs() < 0.01, "{} seed {}: {foot} {it:?}", spec.name, sheet.seed);
        let (constant, time) = (it.lump.capacity / it.lump.cooling, it.length.0 / it.speed.0);
        close("ahead", it.ahead, (-time / constant).exp(), 1e-9);
        assert_eq!(it.over_limit(), it.foot.0 > 260.0);
        let axles = spec.axle_groups.iter().find(|group| group.place == it.place).expect("of this truck");
        close("capacity", it.lump.capacity, axles.heat_capacity(), 1e-12);
    });
}
