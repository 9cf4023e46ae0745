//! Each teaching road shows what the page says about it (`app/words/page/en.ftl`). The usual reader reads it,
//! and the usual solver plans it, with the first truck on the usual day.

use solver::day::{Day, ServiceBrakes};
use solver::motion::{Hold, Run, Trip};
use solver::plan::{Descent, HeatStep, Lanes, Plan, start_state};
use solver::road::{Class, PlaceKind, Road, read, survey};
use solver::truck::{Gear, Preset, Retarder, Truck};
use solver::{Choice, Governs, Verdict, analyse};
use std::path::Path;
use tests::generate::{BuiltIn, Lesson, demo, lesson};
use tests::trucks::{preset, truck};

const SNUBS: Day = Day { service_brakes: ServiceBrakes::MaySnub, ..Day::USUAL };

fn surveyed(built: &BuiltIn) -> Road {
    let document = read(built.text().as_bytes(), &mut |_| true).unwrap_or_else(|e| panic!("not read: {e}"));
    survey(&document, 0, &mut |_| true).unwrap_or_else(|e| panic!("not surveyed: {e}"))
}

fn first_truck() -> Truck {
    preset(Preset::FiveAxle36)
}

fn planned(road: &Road, day: &Day) -> (Plan, Lanes) {
    analyse(road, &first_truck(), day, &mut |_| true).expect("not cancelled")
}

/// The road with its only descent.
fn only_descent(of: Lesson) -> (Road, Descent) {
    let road = surveyed(&lesson(of));
    let (mut plan, _) = planned(&road, &Day::USUAL);
    assert_eq!(plan.descents.len(), 1, "{of:?}");
    (road, plan.descents.remove(0))
}

/// Number of the gear advised, and the speed, km/h.
fn advised(choice: &Choice) -> (u8, f64) {
    let advice = choice.advice().expect("the first truck is held on every teaching road");
    (advice.gear.number(), advice.speed.kmh())
}

fn top_gear(truck: &Truck) -> Gear {
    truck.gears().last().expect("a truck has gears")
}

#[test]
fn what_lies_in_public_is_what_the_generator_gives() {
    let public = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public");
    for built in std::iter::once(demo()).chain(Lesson::ALL.map(lesson)) {
        let text = std::fs::read_to_string(public.join(built.file)).expect(built.file);
        assert!(text == built.text(), "{}: write it again by `cargo run -p tests --bin demo`", built.file);
    }
}

#[test]
fn each_is_read_without_a_word_and_is_near_its_truth() {
    for of in Lesson::ALL {
        let built = lesson(of);
        let road = surveyed(&built);
        assert_eq!(road.findings().len(), 0, "{of:?}: {:?}", road.findings());
        assert_eq!(road.quality().class, Class::Good, "{of:?}");
        assert!((road.length_m() / built.road.length_m() - 1.0).abs() < 0.005, "{of:?}");
        assert_eq!(road.places().len(), built.places.len(), "{of:?}");
        assert!(road.places().iter().all(|it| it.kind != PlaceKind::Other), "{of:?}: {:?}", road.places());
        let (steepest, truth) = (road.steepest(0, road.cells(), 500.0), built.road.alignment.steepest(500.0));
        let (_, steepest) = steepest.expect("longer than 500 m");
        assert!((steepest - truth).abs() < 0.003, "{of:?}: {steepest} for {truth}");
    }
}

/// One descent with an easing of a few hundred metres in it, too short to shift up on. The steepest stretch
/// lies behind the easing; the part before it alone would be driven in a higher gear.
#[test]
fn the_false_finish_goes_on_steeper() {
    let (road, descent) = only_descent(Lesson::FalseFinish);
    let [relief] = descent.reliefs[..] else { panic!("{:?}", descent.reliefs) };
    let metres = |points: usize| points as f64 * road.step_m();
    // The road was built with 460 m of −0.3 %, from 5,800 m on. A stretch under 150 m is no relief.
    assert!(metres(relief.from) > 5_800.0 && metres(relief.to) < 6_260.0, "{relief:?}");
    assert!(descent.sustained.from.0 > metres(relief.to), "{:?}", descent.sustained);
    assert!(metres(relief.from - descent.from) > 2_000.0, "a long grade before it");
    let mean = |from, to| -road.mean_grade(from, to);
    assert!(mean(relief.to, descent.to) > mean(descent.from, relief.from) + 0.005);
    assert!(mean(relief.from, relief.to) < 0.012 && mean(relief.from, relief.to) > 0.0);
    // A driver who looks only as far as the easing.
    let before = road.part(0, (relief.from + relief.to) / 2).expect("long enough");
    let (plan, _) = planned(&before, &Day::USUAL);
    let [first] = &plan.descents[..] else { panic!("{}", plan.descents.len()) };
    let (gear, speed) = advised(&descent.choice);
    let (gear_before, speed_before) = advised(&first.choice);
    assert!(
        gear < gear_before && speed < speed_before - 10.0,
        "{gear}, {speed}; {gear_before}, {speed_before}"
    );
}

/// With the retarder alone, the three answers are alike and the brakes cool. With snubs, each step begins
/// with warmer brakes. The third must not be taken as fast as the first, though by itself it could be.
#[test]
fn three_steps_add_up() {
    let road = surveyed(&lesson(Lesson::ThreeSteps));
    let (plan, lanes) = planned(&road, &Day::USUAL);
    let [first, second, third] = &plan.descents[..] else { panic!("{}", plan.descents.len()) };
    for step in [first, second, third] {
        assert_eq!(step.choice.verdict(), Verdict::RetarderHolds);
        assert_eq!(advised(&step.choice), advised(&first.choice));
        assert!((step.drop.0 / first.drop.0 - 1.0).abs() < 0.03, "like steps");
    }
    assert!(
        second.crest.0 - first.foot.0 < 1_400.0 && third.crest.0 - second.foot.0 < 1_400.0,
        "short reliefs"
    );
    assert!(lanes.heat.iter().all(|step| *step == HeatStep::Cool as u8));

    let (plan, _) = planned(&road, &SNUBS);
    let [first, second, third] = &plan.descents[..] else { panic!("{}", plan.descents.len()) };
    let crests = [first, second, third].map(|it| it.brakes_at_crest.0);
    assert!(crests[1] > crests[0] + 30.0 && crests[2] > crests[1] + 5.0, "{crests:?}");
    let by_itself = road.part(second.to, road.cells()).expect("long enough");
    let (plan, _) = planned(&by_itself, &SNUBS);
    let [alone] = &plan.descents[..] else { panic!("{}", plan.descents.len()) };
    let speeds = [first, third, alone].map(|it| advised(&it.choice).1);
    assert!(speeds[1] < speeds[0] - 5.0, "{speeds:?}");
    assert!((speeds[2] - speeds[0]).abs() < 1.5, "{speeds:?}");
}

/// The shortest descent of all takes the lowest gear and the lowest speed, and ends in a town.
#[test]
fn short_and_steep_takes_the_lowest_gear() {
    let (road, short) = only_descent(Lesson::ShortAndSteep);
    let (gear, speed) = advised(&short.choice);
    let length = |it: &Descent| it.foot.0 - it.crest.0;
    for of in Lesson::ALL.into_iter().filter(|it| *it != Lesson::ShortAndSteep) {
        for other in planned(&surveyed(&lesson(of)), &Day::USUAL).0.descents {
            assert!(length(&short) < 0.6 * length(&other), "{of:?}");
            let (its_gear, its_speed) = advised(&other.choice);
            assert!(gear < its_gear && speed < its_speed, "{of:?}: gear {its_gear}, {its_speed}");
        }
    }
    let at_the_foot = |kind| {
        let place = road.places().iter().find(|it| it.kind == kind).expect("it is there");
        let behind = place.index as f64 * road.step_m() - short.foot.0;
        (-400.0..400.0).contains(&behind)
    };
    assert!(at_the_foot(PlaceKind::Settlement) && at_the_foot(PlaceKind::Stop));
}

/// Driven in top gear at the day's limit with the service brakes alone.
fn on_the_brakes_alone(road: &Road, descent: &Descent) -> Run {
    let mut spec = Preset::FiveAxle36.spec();
    spec.retarder = Retarder::None;
    let (truck, day) = (truck(spec), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let hold = Hold { gear: top_gear(&truck), speed: day.speed_limit(), ..descent.hold() };
    Run::along(trip, road, 0, road.cells(), &[hold], start_state(trip, road))
}

/// The retarder does not hold it at the limit or in top gear. Without the retarder the brakes pass the limit
/// and get hotter than on the short steep hill, since more height is lost.
#[test]
fn long_and_gentle_is_not_harmless() {
    let (long_road, long) = only_descent(Lesson::LongAndGentle);
    let (short_road, short) = only_descent(Lesson::ShortAndSteep);
    assert!(long.foot.0 - long.crest.0 > 14_000.0);
    assert!(long.sustained.grade.0 > -0.045 && short.sustained.grade.0 < 1.5 * long.sustained.grade.0);
    let over_500 = |it: &Descent| it.steepest.iter().find(|it| it.length.0 > 400.0).map(|it| it.grade.0);
    assert!(over_500(&long) > Some(-0.045) && over_500(&short) < Some(-0.09));
    assert!(long.drop.0 > 3.0 * short.drop.0);
    let advice = long.choice.advice().expect("held");
    assert_eq!((advice.verdict, advice.governs), (Verdict::RetarderHolds, Governs::Control));
    assert!(advice.speed.kmh() < Day::USUAL.speed_limit_kmh - 5.0, "{}", advice.speed.kmh());
    assert!(advice.gear < top_gear(&first_truck()));
    let (hot, warm) = (on_the_brakes_alone(&long_road, &long), on_the_brakes_alone(&short_road, &short));
    assert!(hot.hottest().0 > warm.hottest().0 + 30.0, "{:?}, {:?}", hot.hottest(), warm.hottest());
    assert!(hot.hottest().0 > Day::USUAL.heat_limit_c);
}

/// The curves govern: without them the grade is driven faster in a higher gear. Slowing for the curves warms
/// the service brakes of a truck that its retarder holds.
#[test]
fn hairpins_set_the_speed() {
    let (road, descent) = only_descent(Lesson::Hairpins);
    let hairpins = road.curves().iter().filter(|curve| curve.hairpin).count();
    assert_eq!(hairpins, 10);
    let advice = descent.choice.advice().expect("held");
    assert_eq!((advice.verdict, advice.governs), (Verdict::RetarderHolds, Governs::Curve));
    let mut straight = lesson(Lesson::Hairpins);
    straight.road.plan.bends.clear();
    let (plan, _) = planned(&surveyed(&straight), &Day::USUAL);
    let (gear, speed) = advised(&plan.descents[0].choice);
    assert!(gear > advice.gear.number() + 1 && speed > 1.5 * advice.speed.kmh(), "gear {gear}, {speed}");
    let without = plan.descents[0].choice.advice().expect("held").hottest;
    assert!(advice.hottest.0 > descent.brakes_at_crest.0 + 10.0 && advice.hottest.0 > without.0 + 10.0);
}
