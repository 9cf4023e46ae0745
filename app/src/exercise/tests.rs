//! Sets are the same for the same seed, sensible for every seed, and right.

use super::samples::{ROADS, SEEDS, every_ground, every_sheet, planned, sheet};
use super::*;
use solver::day::{Load, Surface};
use solver::motion::Answer;
use solver::plan::HOLD_SHARE;
use solver::truck::{Preset, Retarder, Stage, Warmth};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond};

const DAY: Day = Day::USUAL;

/// The truck of an exercise.
fn laden(spec: &TruckSpec, hill: &Hill) -> Truck {
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

/// What is given, in the figures of the sheet.
fn given(exercise: &Exercise) -> String {
    let hill = |it: &Hill| format!("{:.0} kg {:.1} %", it.mass.0, it.grade.0 * 100.0);
    match exercise {
        Exercise::ControlSpeed(it) => {
            format!("{} gear {} stage {}", hill(&it.hill), it.gear.number(), it.stage.number())
        }
        Exercise::GearChoice(it) => {
            let gears: Vec<String> =
                it.gears.iter().map(|g| format!("{}@{:.0}", g.gear.number(), g.held.speed.kmh())).collect();
            format!("{} {}", hill(&it.hill), gears.join(" "))
        }
        Exercise::BrakingWork(it) => format!(
            "{:.0} kg {:.0} m of {:.0} m at {:.0} km/h, {:.0} %",
            it.hill.mass.0,
            it.drop.0,
            it.length.0,
            it.speed.kmh(),
            it.carried_share * 100.0
        ),
        Exercise::Haste(it) => {
            format!("{:.0} m at {:.0} and {:.0} km/h", it.length.0, it.slow.kmh(), it.fast.kmh())
        }
        Exercise::BrakeHeat(it) => format!(
            "{:.0} m at {:.0} km/h with {:.0} kW, {:?} {:.2}",
            it.length.0,
            it.speed.kmh(),
            it.power.0 / 1e3,
            it.place,
            it.share
        ),
    }
}

#[test]
fn a_seed_gives_the_set_that_it_gave_yesterday() {
    let spec = Preset::FiveAxle36.spec();
    let ground = Ground::of(&planned(ROADS[0], &spec, &DAY));
    let told: Vec<String> =
        sheet(7, Units::Metric, &ground, &spec, &DAY).exercises.iter().map(given).collect();
    assert_eq!(told, ["?"]);
}

#[test]
fn other_seeds_give_other_sets() {
    let spec = Preset::FiveAxle40.spec();
    let ground = Ground::of(&planned(ROADS[2], &spec, &DAY));
    let of = |seed| sheet(seed, Units::Metric, &ground, &spec, &DAY).exercises;
    let all: Vec<_> = (0..SEEDS).map(of).collect();
    for (seed, exercises) in (0..SEEDS).zip(&all) {
        assert_eq!(&of(seed), exercises, "seed {seed} twice");
    }
    let twins = (0..all.len()).filter(|at| all[..*at].contains(&all[*at])).count();
    assert_eq!(twins, 0, "sets that another seed gave already");
    for kind in 0..KINDS.len() {
        let mut seen: Vec<String> = all.iter().map(|set| given(&set[kind])).collect();
        seen.sort();
        seen.dedup();
        assert!(seen.len() >= 20, "exercise {kind}: only {} of {SEEDS} differ", seen.len());
    }
}

#[test]
fn every_set_is_whole_and_what_is_given_is_round() {
    let (mut sets, mut told_apart) = (0, 0);
    every_sheet(&DAY, |spec, ground, sheet| {
        let at = format!("{} seed {} on {} descents", spec.name, sheet.seed, ground.slopes.len());
        let kinds: Vec<u8> = sheet.exercises.iter().map(kind).collect();
        assert_eq!(kinds, [0, 0, 1, 2, 3, 4], "{at}");
        sets += 1;
        for exercise in &sheet.exercises {
            let text = format!("{exercise:?}");
            assert!(!text.contains("NaN") && !text.contains("inf"), "{at}: {text}");
            round_and_in_range(exercise, spec, sheet.units, &at);
        }
        let Exercise::ControlSpeed(first) = &sheet.exercises[0] else { panic!("{at}") };
        assert!(matches!(first.answer, Answer::Settles { .. }), "{at}: {first:?}");
        let Exercise::ControlSpeed(second) = &sheet.exercises[1] else { panic!("{at}") };
        told_apart += u32::from(!matches!(second.answer, Answer::Settles { .. }));
    });
    assert!(told_apart * 10 >= sets * 9, "only {told_apart} of {sets} second exercises do not settle");
}

fn kind(exercise: &Exercise) -> u8 {
    match exercise {
        Exercise::ControlSpeed(_) => 0,
        Exercise::GearChoice(_) => 1,
        Exercise::BrakingWork(_) => 2,
        Exercise::Haste(_) => 3,
        Exercise::BrakeHeat(_) => 4,
    }
}

/// Whether `value` is a multiple of `step`.
fn multiple(value: f64, step: f64) -> bool {
    (value / step - (value / step).round()).abs() < 1e-6
}

fn round_and_in_range(exercise: &Exercise, spec: &TruckSpec, units: Units, at: &str) {
    let speed = units.metres_per_second_per_speed();
    let (ton, height) = match units {
        Units::Metric => (1_000.0, 10.0),
        Units::Imperial => (453.592_37, 50.0 * 0.3048),
    };
    let far = units.metres_per_distance() * 0.1;
    let hill = |it: &Hill| {
        let mass = it.mass.0;
        assert!(multiple(mass, ton) || (mass - spec.gross_mass_kg).abs() < 1e-6, "{at}: {mass} kg");
        assert!(
            mass <= spec.gross_mass_kg + 1e-6 && mass >= 0.6 * spec.gross_mass_kg - 500.0,
            "{at}: {mass}"
        );
    };
    let grade = |it: &Hill| {
        assert!(multiple(it.grade.0, 0.005) && (-0.2..=-0.02).contains(&it.grade.0), "{at}: {:?}", it.grade);
    };
    let limit = DAY.speed_limit().0 + 1e-6;
    match exercise {
        Exercise::ControlSpeed(it) => {
            hill(&it.hill);
            grade(&it.hill);
            assert!(!it.stage.is_off() && it.points.len() == 5, "{at}");
            assert!(it.points.windows(2).all(|w| w[0].speed < w[1].speed), "{at}");
            assert!(it.shown.speed.0 > 0.0 && it.shown.speed.0 <= 1.25 * limit, "{at}: {:?}", it.shown);
        }
        Exercise::GearChoice(it) => {
            hill(&it.hill);
            grade(&it.hill);
            assert!(
                (1..=4).contains(&it.gears.len()) && it.answer.is_none_or(|n| n < it.gears.len()),
                "{at}"
            );
            assert!(
                it.gears.iter().all(|g| multiple(g.held.speed.0, speed) && g.held.speed.0 <= limit),
                "{at}"
            );
        }
        Exercise::BrakingWork(it) => {
            hill(&it.hill);
            assert!(multiple(it.drop.0, height) && multiple(it.length.0, far), "{at}: {it:?}");
            assert!(multiple(it.speed.0, 5.0 * speed) && it.speed.0 <= limit, "{at}: {it:?}");
            assert!(it.service.0 > 0.0 && it.carried > it.service * 0.99, "{at}: {it:?}");
        }
        Exercise::Haste(it) => {
            assert!(multiple(it.length.0, far), "{at}");
            assert!(it.slow.0 > 0.0 && it.slow < it.fast && it.fast.0 <= limit, "{at}: {it:?}");
            assert!(it.saved.0 > 1.0 && it.saved.0 < 7_200.0, "{at}: {it:?}");
        }
        Exercise::BrakeHeat(it) => {
            assert!(multiple(it.power.0, 10.0 * units.watts_per_power()) && it.power.0 > 0.0, "{at}: {it:?}");
            assert!(it.foot > it.start && it.foot < it.settled && it.foot.0 <= 450.0, "{at}: {it:?}");
            assert!((0.0..1.0).contains(&it.ahead), "{at}: {it:?}");
        }
    }
}

#[test]
fn a_truck_settles_where_holding_force_and_demand_are_one() {
    every_sheet(&DAY, |spec, ground, sheet| {
        for exercise in &sheet.exercises[..2] {
            let Exercise::ControlSpeed(it) = exercise else { panic!("{exercise:?}") };
            let truck = laden(spec, &it.hill);
            let held = |v| {
                let altitude = it.hill.air.altitude_factor;
                truck.holding_force(it.gear, it.stage, MetresPerSecond(v), altitude, Warmth::SUSTAINED).0
            };
            let of = |rpm: f64| {
                rpm * std::f64::consts::TAU / 60.0 * truck.spec().rolling_radius_m
                    / (truck.ratio(it.gear) * truck.spec().axle_ratio)
            };
            let low = of(truck.lowest_engine_speed(it.stage).0);
            let high = of(truck.spec().highest_rpm);
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
                    assert!(held(speed.0 * 1.01) < demand(&it.hill, speed.0 * 1.01), "{what}");
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
            let altitude = it.hill.air.altitude_factor;
            let held = truck.holding_force(gear, full, MetresPerSecond(speed), altitude, Warmth::SUSTAINED).0;
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
        let spec = preset.spec();
        // On the shaft the margin falls with speed: a plan may then hold between two gears' tops.
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

/// C·dT/dt = P − hA·(T − T_air), by small steps of a method of fourth order.
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

#[test]
fn no_stage_is_asked_about_where_none_is_recommended() {
    let spec = Preset::FiveAxle36.spec();
    for (surface, load) in
        [(Surface::Ice, Load::Laden), (Surface::Snow, Load::Laden), (Surface::Wet, Load::Empty)]
    {
        let day = Day { surface, load, ..DAY };
        let ground = Ground::of(&planned(ROADS[0], &spec, &day));
        let sheet = sheet(3, Units::Metric, &ground, &spec, &day);
        assert!(sheet.stages_withheld);
        assert_eq!(sheet.exercises.iter().map(kind).collect::<Vec<_>>(), [2, 3, 4]);
    }
}

#[test]
fn in_the_wet_no_table_asks_more_than_the_driven_axles_grip() {
    let day = Day { surface: Surface::Wet, ..DAY };
    for (spec, ground) in every_ground(&day) {
        for seed in 0..20 {
            let sheet = sheet(seed, Units::Metric, &ground, &spec, &day);
            assert!(!sheet.stages_withheld && sheet.exercises.len() >= 5, "{}", spec.name);
            for exercise in &sheet.exercises {
                let (hill, held) = match exercise {
                    Exercise::ControlSpeed(it) if matches!(it.answer, Answer::Settles { .. }) => {
                        (it.hill, it.shown)
                    }
                    Exercise::GearChoice(it) => {
                        let Some(at) = it.answer else { continue };
                        (it.hill, it.gears[at].held)
                    }
                    _ => continue,
                };
                let truck = laden(&spec, &hill);
                let grip = Trip { truck: &truck, day: &day }.grip_for_retarding(hill.grade);
                assert!(held.holding <= grip, "{} seed {seed}: {exercise:?}", spec.name);
            }
        }
    }
}

#[test]
fn without_ground_or_retarder_the_rest_is_asked() {
    let mut spec = Preset::Rigid18.spec();
    assert!(sheet(1, Units::Metric, &Ground::default(), &spec, &DAY).exercises.is_empty());
    spec.retarder = Retarder::None;
    let ground = Ground::of(&planned(ROADS[1], &spec, &DAY));
    let sheet = sheet(1, Units::Metric, &ground, &spec, &DAY);
    for exercise in &sheet.exercises {
        if let Exercise::ControlSpeed(it) = exercise {
            assert_eq!(it.stage, Stage::OFF);
        }
    }
    assert_eq!(sheet.exercises.len(), 6);
    spec.gross_mass_kg = 1.0;
    assert!(Sheet::new(1, Units::Metric, &ground, &spec, &DAY).is_err());
}

#[test]
fn small_trucks_and_odd_days_give_sets_too() {
    let mut spec = Preset::Rigid18.spec();
    (spec.gross_mass_kg, spec.drive_axle_mass_kg) = (3_550.0, 1_100.0);
    let day = Day { headwind_kmh: -40.0, speed_limit_kmh: 30.0, air_c: -20.0, ..DAY };
    let ground = Ground::of(&planned(ROADS[3], &spec, &day));
    for seed in 0..SEEDS {
        for units in [Units::Metric, Units::Imperial] {
            let sheet = sheet(seed, units, &ground, &spec, &day);
            assert!(sheet.exercises.len() >= 4, "seed {seed}: {sheet:?}");
            let text = format!("{sheet:?}");
            assert!(!text.contains("NaN") && !text.contains("inf"), "seed {seed}: {text}");
        }
    }
}

#[test]
fn a_grade_given_is_a_half_per_cent_and_no_cliff() {
    let rounded = [(-0.0612, 0), (-0.0612, 2), (-0.001, -2), (-0.6, 2)]
        .map(|(grade, steeper)| round::grade(Grade(grade), steeper).0);
    let wanted = [-0.06, -0.07, -0.02, -0.2];
    for (a, b) in rounded.into_iter().zip(wanted) {
        assert!((a - b).abs() < 1e-12, "{rounded:?}");
    }
}
