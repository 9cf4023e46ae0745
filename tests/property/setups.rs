//! What a driver expects of each setup on a steady grade: directions and orders (common practice, no source),
//! none of our own figures.

use solver::Plan;
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Choice, Verdict};
use solver::road::Road;
use solver::truck::{Preset, RetarderKind, Truck};
use tests::trucks::truck;

/// Grades of the table, per cent.
const GRADES: [i32; 6] = [-2, -4, -6, -8, -10, -12];

/// An even hill of 6 km between level ends.
fn hill(per_cent: i32) -> Road {
    let rise = f64::from(per_cent) / 100.0;
    let heights =
        (0..=900).map(|k: i32| 1_500.0 + 10.0 * rise * f64::from(k.clamp(150, 750) - 150)).collect();
    Road::from_heights("hill", 10.0, heights).expect("heights are sound")
}

fn setup(preset: Preset, kind: RetarderKind) -> Truck {
    let mut spec = preset.spec();
    spec.take_retarder(RetarderKind::None);
    spec.take_retarder(kind);
    truck(spec)
}

fn plan(truck: &Truck, day: &Day, per_cent: i32) -> Option<Plan> {
    let (plan, _) = solver::analyse(&hill(per_cent), truck, day, &mut |_| true).expect("not stopped");
    (!plan.descents.is_empty()).then_some(plan)
}

/// The answer as numbers: 2 for held by the retarder, 1 with the service brakes, 0 for no safe speed; and the
/// speed. No descent at all is best.
fn told(truck: &Truck, day: &Day, per_cent: i32) -> (u8, f64) {
    let Some(plan) = plan(truck, day, per_cent) else { return (2, f64::INFINITY) };
    match &plan.descents[0].choice {
        Choice::Held(advice) => {
            (if advice.verdict <= Verdict::LittleInReserve { 2 } else { 1 }, advice.speed.kmh())
        }
        Choice::NoSafeSpeed(_) => (0, 0.0),
    }
}

/// A retarder added to another, or to none.
const ADDED: [(RetarderKind, RetarderKind); 12] = {
    use RetarderKind::{
        CompressionAndElectromagnetic, CompressionAndHydrodynamic, CompressionRelease, Electromagnetic,
        ExhaustAndElectromagnetic, ExhaustAndHydrodynamic, ExhaustValve, Hydrodynamic, None,
    };
    [
        (None, ExhaustValve),
        (None, CompressionRelease),
        (None, Hydrodynamic),
        (None, Electromagnetic),
        (ExhaustValve, CompressionRelease),
        (ExhaustValve, ExhaustAndHydrodynamic),
        (ExhaustValve, ExhaustAndElectromagnetic),
        (Hydrodynamic, ExhaustAndHydrodynamic),
        (Hydrodynamic, CompressionAndHydrodynamic),
        (CompressionRelease, CompressionAndHydrodynamic),
        (CompressionRelease, CompressionAndElectromagnetic),
        (Electromagnetic, CompressionAndElectromagnetic),
    ]
};

/// A further retarder never gives a worse verdict, nor a slower speed with an equal verdict.
#[test]
fn another_retarder_never_makes_it_slower() {
    for preset in Preset::ALL {
        for (less, more) in ADDED {
            let (weaker, stronger) = (setup(preset, less), setup(preset, more));
            for grade in GRADES {
                let (before, after) =
                    (told(&weaker, &Day::USUAL, grade), told(&stronger, &Day::USUAL, grade));
                let name = preset.key();
                assert!(after >= before, "{name} on {grade} %: {less:?} {before:?}, {more:?} {after:?}");
            }
        }
    }
}

/// A steeper hill never gives a better verdict, nor a faster speed with an equal verdict.
#[test]
fn a_steeper_hill_is_never_taken_faster() {
    for preset in Preset::ALL {
        for kind in RetarderKind::ALL {
            let truck = setup(preset, kind);
            let list = GRADES.map(|grade| told(&truck, &Day::USUAL, grade));
            let falls = list.windows(2).all(|pair| pair[1] <= pair[0]);
            assert!(falls, "{}, {kind:?}: {list:?}", preset.key());
        }
    }
}

/// A loaded combination with a shaft retarder goes down a motorway's grade in a gear and at a speed that its
/// drivers know: not at walking pace, and not in top gear.
#[test]
fn a_hydrodynamic_retarder_holds_in_the_gears_that_people_drive() {
    use RetarderKind::{CompressionAndHydrodynamic, ExhaustAndHydrodynamic, Hydrodynamic};
    for kind in [Hydrodynamic, ExhaustAndHydrodynamic, CompressionAndHydrodynamic] {
        let truck = setup(Preset::FiveAxle40, kind);
        for grade in [-4, -5, -6] {
            let (word, kmh) = told(&truck, &Day::USUAL, grade);
            assert!(word == 2 && (30.0..=80.0).contains(&kmh), "{kind:?} on {grade} %: {word}, {kmh} km/h");
        }
        // Alone it does not hold 40 t on −8 % at any speed: 3,500 N·m give 19 of 27 kN.
        let (word, kmh) = told(&truck, &Day::USUAL, -8);
        assert!(kind == Hydrodynamic || (word == 2 && kmh >= 15.0), "{kind:?}: {word}, {kmh} km/h");
    }
}

/// Snubs may make it faster, but not by another class: where the retarder alone asks for walking pace, they
/// do not give the speed of a country road. No snub begins below 20 km/h.
#[test]
fn snubs_never_turn_a_walk_into_a_run() {
    let day = Day { service_brakes: ServiceBrakes::MaySnub, ..Day::USUAL };
    for preset in Preset::ALL {
        for kind in RetarderKind::ALL {
            let truck = setup(preset, kind);
            for grade in GRADES {
                let ((word, kmh), (with_word, with_kmh)) =
                    (told(&truck, &Day::USUAL, grade), told(&truck, &day, grade));
                let name = preset.key();
                let walks = word == 2 && kmh < 11.0;
                assert!(!walks || with_kmh < 45.0, "{name}, {kind:?} on {grade} %: {kmh} becomes {with_kmh}");
                assert!(
                    with_word != 1 || with_kmh >= 20.0 - 1e-6,
                    "{name}, {kind:?} on {grade} %: {with_kmh}"
                );
            }
        }
    }
}

/// In the hottest air the coolant sustains less power, so nothing gets faster. It never sustains less than
/// 0.27 of the full power (HYD-DERATE, printed), so the power does not fall to nothing.
#[test]
fn hot_air_takes_from_a_hydrodynamic_retarder_and_leaves_the_printed_share() {
    use solver::motion::Trip;
    use solver::truck::{Driveline, Warmth};
    use solver::units::{Metres, MetresPerSecond};
    let truck = setup(Preset::FiveAxle40, RetarderKind::Hydrodynamic);
    let Some(Driveline::Hydrodynamic(it)) = truck.spec().retarder.driveline() else { panic!("its kind") };
    let speed = MetresPerSecond::from_kmh(60.0);
    let gear = Trip { truck: &truck, day: &Day::USUAL }.lowest_gear_within(speed, 1.0).expect("a gear");
    let mut before = f64::INFINITY;
    for air_c in [-20.0, 0.0, 25.0, 40.0, 60.0] {
        let day = Day { air_c, ..Day::USUAL };
        let ambient = Trip { truck: &truck, day: &day }.air(Metres(0.0)).ambient;
        let kw = truck.shaft_power(gear, truck.full_stage(), speed, ambient, Warmth::SUSTAINED).0 / 1e3;
        assert!(kw <= before && kw >= 0.27 * it.short_power_kw * (1.0 - 1e-9), "{air_c} °C: {kw} kW");
        assert!(air_c <= 25.0 || kw < before, "{air_c} °C: {kw} kW");
        before = kw;
        let told = GRADES.map(|grade| (told(&truck, &Day::USUAL, grade), told(&truck, &day, grade)));
        assert!(
            air_c < Day::USUAL.air_c || told.iter().all(|(usual, hot)| hot <= usual),
            "{air_c} °C: {told:?}"
        );
    }
}

/// No gear is recommended in which the converter does not lock up: it would not hold the truck.
#[test]
fn no_gear_is_advised_that_does_not_lock_up() {
    for preset in [Preset::CoachConverter, Preset::Refuse26] {
        for kind in RetarderKind::ALL {
            let truck = setup(preset, kind);
            for plan in GRADES.into_iter().filter_map(|grade| plan(&truck, &Day::USUAL, grade)) {
                if let Choice::Held(advice) = &plan.descents[0].choice {
                    assert!(truck.is_coupled(advice.gear), "{}, {kind:?}: {advice:?}", preset.key());
                }
            }
        }
    }
}

/// A table whose last row is the highest engine speed holds there, however the speed was rounded.
#[test]
fn the_last_row_of_a_table_counts() {
    let truck = setup(Preset::FiveAxle36, RetarderKind::EnginePowerTable);
    let highest = truck.highest_engine_speed();
    let full = truck.retarding_power(truck.full_stage(), highest);
    for gear in truck.gears() {
        let turned = truck.engine_speed(gear, truck.road_speed(gear, highest));
        let power = truck.retarding_power(truck.full_stage(), turned);
        assert!((power.0 - full.0).abs() <= 1e-6 * full.0, "{gear:?}: {power:?}, {full:?}");
    }
}

/// A gearbox that shifts up by itself keeps the truck below that speed, and the plan says so.
#[test]
fn a_box_that_shifts_up_by_itself_is_held_below_that() {
    use solver::plan::Note;
    let mut spec = Preset::FiveAxle40.spec();
    spec.highest_rpm = 2_400.0;
    spec.shifts_up_rpm = Some(1_900.0);
    let truck = truck(spec);
    assert!(truck.shifts_up_early());
    let plan = plan(&truck, &Day::USUAL, -6).expect("a descent");
    let Choice::Held(advice) = &plan.descents[0].choice else { panic!("{:?}", plan.descents) };
    assert!(truck.engine_speed(advice.gear, advice.speed).0 <= 1_900.0, "{advice:?}");
    assert!(plan.notes.contains(&Note::ShiftsUpByItself), "{:?}", plan.notes);
}
