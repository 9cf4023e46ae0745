//! A seed always gives one set. Sets are sensible for every seed, and right.

use super::right::laden;
use super::samples::{ROADS, SEEDS, every_ground, every_sheet, planned, sheet};
use super::*;
use solver::day::{Load, Surface};
use solver::motion::Answer;
use solver::motion::Trip;
use solver::truck::{Preset, Retarder, Stage};
use solver::units::Grade;

const DAY: Day = Day::USUAL;

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
    let wanted = [
        "22000 kg -8.5 % gear 5 stage 3",
        "36000 kg -8.0 % gear 1 stage 2",
        "34000 kg -6.5 % 7@52 6@38 5@27 4@20",
        "25000 kg 400 m of 5100 m at 20 km/h, 80 %",
        "5100 m at 25 and 35 km/h",
        "5100 m at 15 km/h with 80 kW, Drive 0.44",
    ];
    assert_eq!(told, wanted);
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
