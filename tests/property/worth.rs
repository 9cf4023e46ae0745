//! What a wrong entry costs, held against plans made anew and against what any driver would expect.

use solver::day::Day;
use solver::limits::{Entry, off};
use solver::plan::Plan;
use solver::road::Road;
use solver::study::{Difference, worth};
use solver::truck::{Preset, RetarderKind, Truck, TruckSpec};
use solver::{Verdict, analyse, limits};
use tests::trucks::truck;

/// A steady hill of 6 km between level roads: long enough for heat, and even all the way.
fn hill(grade: f64) -> Road {
    let fall = |k: usize| 10.0 * grade * (k.clamp(100, 700) - 100) as f64;
    let heights = (0..=1_000).map(|k| 800.0 + fall(k)).collect();
    Road::from_heights("even hill", 10.0, heights).expect("heights are sound")
}

fn planned(road: &Road, truck: &Truck) -> Plan {
    analyse(road, truck, &Day::USUAL, &mut |_| true).expect("not cancelled").0
}

fn of(road: &Road, spec: &TruckSpec, entry: Entry) -> Option<solver::study::Worth> {
    let truck = truck(spec.clone());
    worth(road, &truck, &Day::USUAL, &planned(road, &truck), entry)
}

#[test]
fn each_entry_is_as_planned_anew() {
    let road = hill(-0.065);
    for preset in [Preset::FiveAxle36, Preset::FiveAxle40Both, Preset::CoachConverter] {
        let spec = preset.spec();
        let plan = planned(&road, &truck(spec.clone()));
        let shown = plan.deciding().expect("a descent").choice;
        let mut moved = 0;
        for limit in limits::ALL {
            let entry = limit.entry;
            let told = of(&road, &spec, entry);
            let (Some(value), Some(off)) = (spec.get(entry), off(entry)) else {
                assert_eq!(told, None, "{entry:?} is none of this truck's");
                continue;
            };
            let told = told.unwrap_or_else(|| panic!("{entry:?} is an entry"));
            for (at, said) in off.around(entry, value).into_iter().zip([told.less, told.more]) {
                let Some(at) = at else { continue };
                let mut other = spec.clone();
                if entry == Entry::GrossMass {
                    other.drive_axle_mass_kg *= at / value;
                }
                other.enter(entry, at);
                let Ok(other) = Truck::new(other) else {
                    assert_eq!(said, None, "{entry:?} {at}: no such truck");
                    continue;
                };
                let anew = planned(&road, &other).deciding().expect("a descent").choice;
                let said = said.unwrap_or_else(|| panic!("{entry:?} {at} can be planned"));
                assert_eq!(
                    said.verdict,
                    Some(anew.verdict()).filter(|it| *it != shown.verdict()),
                    "{entry:?}"
                );
                let (Some(one), Some(two)) = (shown.advice(), anew.advice()) else { continue };
                let speed = two.speed.kmh() - one.speed.kmh();
                assert!((said.speed_kmh - speed).abs() < 1e-9, "{entry:?} {at}: {said:?}, {speed}");
                let number = |gear: solver::Gear| i32::from(gear.number());
                assert_eq!(i32::from(said.gears), number(two.gear) - number(one.gear), "{entry:?} {at}");
                moved += usize::from(!said.is_none());
            }
        }
        assert!(moved > 6, "{preset:?}: {moved} would be a road on which nothing matters");
    }
}

/// Checks that a change for the worse makes nothing faster.
fn is_no_better(difference: Option<Difference>, what: &str) {
    let Some(it) = difference else { return };
    assert!(it.speed_kmh <= 1e-9, "{what}: {it:?}");
}

#[test]
fn what_makes_it_worse_never_makes_it_faster() {
    for (preset, grade) in [
        (Preset::FiveAxle36, -0.05),
        (Preset::FiveAxle36, -0.07),
        (Preset::FiveAxle40, -0.06),
        (Preset::FiveAxle40Both, -0.08),
        (Preset::Tipper26, -0.09),
    ] {
        let (road, spec) = (hill(grade), preset.spec());
        let told = |entry| of(&road, &spec, entry).unwrap_or_else(|| panic!("{entry:?}"));
        let name = |what: &str| format!("{preset:?} at {grade}, {what}");
        is_no_better(told(Entry::GrossMass).more, &name("heavier"));
        is_no_better(told(Entry::RetarderPeakPower).less, &name("a weaker retarder"));
        is_no_better(told(Entry::RollingResistance).less, &name("easier rolling"));
        is_no_better(told(Entry::DragArea).less, &name("less air"));
        is_no_better(told(Entry::DriveAxleMass).less, &name("less grip"));
        is_no_better(told(Entry::Displacement).less, &name("a smaller engine"));
        is_no_better(told(Entry::HighestEngineSpeed).less, &name("fewer turns"));
    }
}

/// Told is the side that a driver would notice first: a hill without a safe speed before any gear.
#[test]
fn the_larger_difference_leads() {
    let no_change = Difference { gears: 0, speed_kmh: 0.0, stages: 0, verdict: None };
    let two = |less, more| {
        let off = off(Entry::GrossMass).expect("it has one");
        solver::study::Worth { entry: Entry::GrossMass, off, less, more }.largest()
    };
    let gear = Difference { gears: -1, speed_kmh: -9.0, ..no_change };
    let fast = Difference { speed_kmh: 12.0, ..no_change };
    let closed = Difference { verdict: Some(Verdict::NoSafeSpeed), ..no_change };
    assert_eq!(two(Some(gear), Some(fast)), Some(gear));
    assert_eq!(two(Some(gear), Some(closed)), Some(closed));
    assert_eq!(two(None, Some(no_change)), Some(no_change));
    assert_eq!(two(None, None), None);
    assert!(no_change.is_none() && !closed.is_none() && !fast.is_none());
}

#[test]
fn a_road_without_a_descent_tells_nothing() {
    let level = Road::from_heights("level", 10.0, vec![300.0; 400]).expect("heights are sound");
    assert_eq!(of(&level, &Preset::FiveAxle36.spec(), Entry::GrossMass), None);
}

/// An assumed retarder follows the engine, so an error of the litres includes its own.
#[test]
fn litres_are_worth_more_while_the_retarder_is_assumed_by_them() {
    let road = hill(-0.065);
    let mut spec = Preset::FiveAxle36.spec();
    spec.take_retarder(RetarderKind::ExhaustValve);
    let slower = |spec: &TruckSpec| {
        let less = of(&road, spec, Entry::Displacement).and_then(|it| it.less);
        less.expect("it can be planned").speed_kmh
    };
    let (assumed, power) = (slower(&spec), spec.get(Entry::RetarderPeakPower).expect("a brake"));
    spec.set(Entry::RetarderPeakPower, power);
    assert!(assumed <= slower(&spec), "{assumed} against {}", slower(&spec));
}
