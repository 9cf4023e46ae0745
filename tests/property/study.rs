//! What must hold for a study of a plan, checked by driving it.

use solver::day::Day;
use solver::motion::{BrakeHeat, Hold, Run, State, Trip, control_speed};
use solver::plan::{Descent, Lanes, Plan};
use solver::road::Road;
use solver::study::{NotMeasured, RUNS, Seen, SlowFor, measured, study, sureness};
use solver::truck::{AxlePlace, BrakeKind, Preset, Retarder, SLACK_STROKE, Truck, stroke_limit_at};
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, RevPerMin};
use solver::{Answer, analyse};
use tests::evidence::check;
use tests::generate::{Drive, Instrument, TrueRoad, demo};
use tests::trucks::{preset, truck};
use tests::truth::survey_drive;

fn planned(road: &Road, truck: &Truck, day: &Day) -> (Plan, Lanes) {
    analyse(road, truck, day, &mut |_| true).expect("not cancelled")
}

/// A long even hill after a kilometre of level road, and level road behind it.
fn hill(grade: f64, length_m: f64) -> Road {
    let cells = (length_m / 10.0) as usize;
    let fall = |k: usize| 10.0 * grade * (k.clamp(100, 100 + cells) - 100) as f64;
    let heights = (0..=cells + 200).map(|k| 1_500.0 + fall(k)).collect();
    Road::from_heights("even hill", 10.0, heights).expect("heights are sound")
}

/// From each point the truck is driven to the foot at the plan's speed without its retarder. It keeps the
/// limit exactly where the study says that it is held.
#[test]
fn a_lost_retarder_is_as_driven_without_one() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let road = hill(-0.07, 9_000.0);
    let (plan, _) = planned(&road, &truck, &day);
    let lost = &study(&road, &truck, &day, &plan).lost[0];
    let descent = &plan.descents[0];
    let from = lost.held_from.expect("held near the foot").0;
    assert!(
        from > descent.crest.0 + 500.0 && from < descent.foot.0 - 500.0,
        "the limit lies on the way: {from}"
    );
    let mut spec = truck.spec().clone();
    spec.retarder = Retarder::None;
    let without = tests::trucks::truck(spec);
    // For two seconds before the driver brakes, the engine alone holds back.
    let trip = Trip { truck: &truck, day: &day };
    let (card, grade, air) = (descent.hold(), Grade(-0.07), trip.air(Metres(1_250.0)));
    let push = trip.demand(card.speed, grade, air)
        - trip.holding(card.gear, solver::truck::Stage::OFF, card.speed, air);
    let gaining = push.0 / (truck.mass().0 * truck.rotating_factor(card.gear));
    let noticed = MetresPerSecond(card.speed.0 + 2.0 * gaining);
    // On the way there the retarder holds and the brakes cool.
    let mut brakes: Vec<BrakeHeat> = Vec::new();
    let start = solver::plan::start_state(trip, &road);
    let _ = Run::watched(trip, &road, &plan.holds(), start, &mut |state| brakes.push(state.brakes));
    let keeps = |at_m: f64| {
        let at = (at_m / road.step_m()) as usize;
        let hold = Hold { from: at, speed: noticed, ..card };
        let start = State::settled(hold.speed, hold.gear, brakes[at]);
        let run = Run::along(Trip { truck: &without, day: &day }, &road, at, descent.to, &[hold], start);
        run.hottest().0 <= day.heat_limit_c
    };
    assert!(keeps(from + 150.0) && !keeps(from - 150.0), "{from}");
    // On a gentler hill the truck is held all the way.
    let gentle = hill(-0.035, 4_000.0);
    let (plan, _) = planned(&gentle, &truck, &day);
    let lost = &study(&gentle, &truck, &day, &plan).lost[0];
    assert_eq!(lost.held_from, Some(plan.descents[0].crest));
    assert_eq!(lost.stop_until, Some(plan.descents[0].foot));
}

/// Where the study says to lift off, full stage in its gear brings the truck to the speed asked for.
#[test]
fn lifting_off_there_is_enough() {
    let text = demo().text();
    let document = solver::road::read(text.as_bytes(), &mut |_| true).expect("the demo is sound");
    let road = solver::road::survey(&document, 0, &mut |_| true).expect("the demo is sound");
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let (plan, _) = planned(&road, &truck, &day);
    let trip = Trip { truck: &truck, day: &day };
    let slowing = study(&road, &truck, &day, &plan).slowing;
    assert!(slowing.iter().any(|it| matches!(it.what, SlowFor::Curve(_))));
    assert!(slowing.iter().any(|it| !matches!(it.what, SlowFor::Curve(_))));
    let mut driven = 0;
    for it in slowing.iter().filter(|it| it.cut_out.is_none()) {
        let Some((from, mut speed)) = it.lift_off else { continue };
        let mass = truck.mass().0 * truck.rotating_factor(it.gear);
        let (first, last) =
            ((from.0 / road.step_m()).round() as usize, (it.at.0 / road.step_m()).round() as usize);
        for cell in first..last {
            let (grade, air) = (Grade(road.grades()[cell]), trip.air_on(&road, cell));
            let force = trip.demand(speed, grade, air) - trip.retarding(it.gear, speed, grade, air);
            let way = road.step_m() / grade.sin_cos().1;
            speed = MetresPerSecond((speed.0 * speed.0 + 2.0 * force.0 / mass * way).max(0.0).sqrt());
        }
        assert!(
            speed.0 <= it.to.0 + 0.4,
            "at {:?}: {:.1} instead of {:.1} km/h",
            it.at,
            speed.kmh(),
            it.to.kmh()
        );
        driven += 1;
    }
    assert!(driven > 0, "something could be driven");
}

/// A retarder that gives 80 % is found to give 80 %. Impossible observations are refused.
#[test]
fn what_held_is_found_again() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let (weak, grade, height) = (truck.with_retarding(0.8), Grade(-0.06), Metres(300.0));
    let trip = |truck| Trip { truck, day: &day };
    let mut found = 0;
    for gear in truck.gears() {
        let answer = control_speed(trip(&weak), gear, weak.full_stage(), grade, height);
        let Answer::Settles { speed, engine_speed } = answer else { continue };
        let stage = weak.full_stage().number();
        let seen = Seen { gear: gear.number(), stage, engine_speed, speed, grade, height };
        let of = |seen| measured(trip(&truck), seen);
        let told = of(seen).expect("a steady speed tells it");
        check("factor", 0.8, told.factor, 1e-6);
        check("scale", 0.8, told.scale, 1e-6);
        assert!(told.power.0 < told.assumed.0);
        assert_eq!(of(Seen { stage: 0, ..seen }), Err(NotMeasured::Off));
        let gauges = of(Seen { engine_speed: engine_speed * 1.3, ..seen });
        assert!(matches!(gauges, Err(NotMeasured::GaugesDiffer(_))), "{gauges:?}");
        assert_eq!(of(Seen { grade: Grade(0.0), ..seen }), Err(NotMeasured::NotPushed));
        let steep = of(Seen { grade: Grade(-0.14), ..seen });
        assert!(matches!(steep, Err(NotMeasured::OutOfReach(_))), "{steep:?}");
        found += 1;
    }
    assert!(found >= 1);
    let (engine_speed, speed) = (RevPerMin(1_900.0), MetresPerSecond(8.0));
    let none = Seen { gear: 44, stage: 3, engine_speed, speed, grade, height };
    assert_eq!(measured(trip(&truck), none), Err(NotMeasured::NoSuchStage));
}

/// Two runs agree and lie around the plan itself; a heavier truck is never surer.
#[test]
fn sureness_is_the_same_twice_and_lies_around_the_plan() {
    let day = Day { brakes_at_start_c: 120.0, heat_limit_c: 180.0, ..Day::USUAL };
    let road = survey_drive(&TrueRoad::random(5, 15_000.0), &Drive::new(Instrument::Recorder, 12.0, 5));
    let mut kept = Vec::new();
    for factor in [1.0, 1.15] {
        let mut spec = Preset::FiveAxle36.spec();
        spec.gross_mass_kg *= factor;
        spec.drive_axle_mass_kg *= factor;
        let truck = truck(spec);
        let (plan, lanes) = planned(&road, &truck, &day);
        let again = || sureness(&road, &truck, &day, &plan, &mut |_| true).expect("a road with descents");
        let (sure, bands) = again();
        assert_eq!((&sure, &bands), (&again().0, &again().1));
        assert_eq!((sure.runs, sure.descents.len()), (RUNS, plan.descents.len()));
        let inside = |values: &[f32], [low, high]: &[Vec<f32>; 2]| {
            let on = values.iter().zip(low.iter().zip(high)).filter(|(value, _)| value.is_finite());
            let all = on.clone().count() as f64;
            on.filter(|(value, (low, high))| (**low - 0.7..=**high + 0.7).contains(*value)).count() as f64
                / all
        };
        // The band covers nine in ten runs, point by point. The plan itself may leave it where it only just
        // holds, and on cells of twice the length.
        assert!(inside(&lanes.temperature, &bands.temperature) > 0.9);
        assert!(inside(&lanes.speed, &bands.speed) > 0.8);
        kept.push(sure.descents.iter().map(|it| it.kept).min().expect("a descent"));
    }
    assert!(kept[1] <= kept[0] + RUNS / 20, "{kept:?}");
}

#[test]
fn sureness_can_be_stopped_and_is_not_said_of_a_level_road() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day::USUAL);
    let road = hill(-0.06, 3_000.0);
    let (plan, _) = planned(&road, &truck, &day);
    let mut asked = 0;
    let mut stop = |_| {
        asked += 1;
        asked < 5
    };
    assert!(sureness(&road, &truck, &day, &plan, &mut stop).is_none() && asked == 5);
    let level = hill(0.0, 3_000.0);
    let (plan, _) = planned(&level, &truck, &day);
    assert!(sureness(&level, &truck, &day, &plan, &mut |_| true).is_none());
}

/// A group that brakes less leaves more to the others, which come out hotter than as adjusted on hills that
/// work the brakes. The group itself does not: drums stop braking at the limit of their stroke, and discs do
/// half of their work.
#[test]
fn a_group_out_of_adjustment_heats_the_others() {
    for (kind, length_m, loaded_most) in [
        (Preset::FiveAxle36, 3_000.0, None),
        (Preset::FiveAxle36, 6_000.0, None),
        (Preset::FiveAxle40, 3_000.0, Some(AxlePlace::Drive)),
    ] {
        let mut spec = kind.spec();
        spec.retarder = Retarder::None;
        let truck = truck(spec);
        let day = Day { service_brakes: solver::ServiceBrakes::MaySnub, speed_limit_kmh: 50.0, ..Day::USUAL };
        let road = hill(-0.04, length_m);
        let (plan, _) = planned(&road, &truck, &day);
        let adjusted = plan.totals.hottest_after_stop.0;
        let all = study(&road, &truck, &day, &plan).adjustment;
        assert_eq!(all.len(), 3);
        for it in &all {
            let least = match it.brake {
                BrakeKind::Drum => adjusted.min(stroke_limit_at(SLACK_STROKE).0),
                BrakeKind::Disc if loaded_most == Some(it.place) => 0.0,
                BrakeKind::Disc => adjusted,
            };
            assert!(it.hottest_after_stop.0 >= least - 1e-9, "{adjusted}: {it:?}");
            assert_eq!(it.kept, it.hottest_after_stop.0 <= day.heat_limit_c);
        }
        let hottest = all.iter().map(|it| it.hottest_after_stop.0).fold(0.0, f64::max);
        let worked = adjusted > stroke_limit_at(SLACK_STROKE).0 + 10.0;
        assert!(!worked || hottest > adjusted + 30.0, "{adjusted}: {all:?}");
    }
}

/// A change that is named really changes it: the lighter or stronger truck is held with the reserve.
#[test]
fn what_would_change_it_does() {
    let day = Day::USUAL;
    let road = hill(-0.15, 3_000.0);
    let verdict = |truck: &Truck| {
        let (plan, _) = planned(&road, truck, &day);
        plan.descents[0].choice.verdict()
    };
    let mut spec = Preset::BDouble.spec();
    spec.take_retarder(solver::truck::RetarderKind::ExhaustValve);
    let heavy = truck(spec);
    let (plan, _) = planned(&road, &heavy, &day);
    let descent: &Descent = &plan.descents[0];
    assert_ne!(descent.choice.verdict(), solver::Verdict::RetarderHolds);
    let change = descent.change.expect("something would change it");
    let mass = change.mass.expect("a lighter truck").0;
    let lighter = heavy.heavier(mass / heavy.mass().0 * 0.999).expect("in range");
    assert_eq!(verdict(&lighter), solver::Verdict::RetarderHolds);
    let stronger = heavy.with_retarding(change.retarding.expect("a stronger retarder") * 1.001);
    assert_eq!(verdict(&stronger), solver::Verdict::RetarderHolds);
    // A hill that is held needs no change.
    let (plan, _) = planned(&hill(-0.03, 3_000.0), &preset(Preset::FiveAxle36), &day);
    assert_eq!(plan.descents[0].change, None);
}

/// For brakes too hot at the crest, the temperature that would be cool enough is told.
#[test]
fn hot_brakes_are_told_how_cool_they_must_be() {
    let day = Day { brakes_at_start_c: 400.0, ..Day::USUAL };
    let truck = preset(Preset::FiveAxle36);
    let road = hill(-0.06, 4_000.0);
    let (plan, _) = planned(&road, &truck, &day);
    let descent = &plan.descents[0];
    assert_eq!(descent.choice.verdict(), solver::Verdict::NoSafeSpeed);
    let cool = descent.change.and_then(|it| it.cool_to).expect("cooling would do");
    assert!(cool.0 > day.air_c && cool < Celsius(day.heat_limit_c), "{cool:?}");
    let rested = Day { brakes_at_start_c: cool.0, ..day };
    let (plan, _) = planned(&road, &truck, &rested);
    assert_ne!(plan.descents[0].choice.verdict(), solver::Verdict::NoSafeSpeed);
}
