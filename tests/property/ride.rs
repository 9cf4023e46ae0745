//! What must hold for a ride along a plan, as planned and with one thing otherwise.

use solver::analyse;
use solver::day::{Day, Surface};
use solver::motion::{Run, Trip};
use solver::plan::{Lanes, Plan, start_state};
use solver::road::{Place, PlaceKind, Road, Roadside};
use solver::study::{RideEnd, RideLanes, Slip, part_at, ride};
use solver::truck::{Preset, Retarder, Stage, Truck};
use solver::units::{Grade, Metres, MetresPerSecond};
use tests::evidence::check;
use tests::generate::{Drive, Instrument, TrueRoad};
use tests::trucks::{preset, truck};
use tests::truth::survey_drive;

fn planned(road: &Road, truck: &Truck, day: &Day) -> (Plan, Lanes) {
    analyse(road, truck, day, &mut |_| true).expect("not cancelled")
}

fn driven(road: &Road, truck: &Truck, day: &Day, slip: Slip) -> (RideEnd, RideLanes) {
    let (plan, _) = planned(road, truck, day);
    ride(road, truck, day, &plan, slip).unwrap_or_else(|| panic!("{slip:?} can be driven"))
}

/// Level, 15 km of −6.5 %, level.
fn hill() -> Road {
    let fall = |k: usize| 0.65 * (k.clamp(200, 1_700) - 200) as f64;
    let heights = (0..=1_900).map(|k| 1_000.0 - fall(k)).collect();
    Road::from_heights("hill that matters", 10.0, heights).expect("heights are sound")
}

/// A truck and a day that just hold that hill.
fn just_held() -> (Truck, Day) {
    let day = Day { reserve: 0.0, speed_limit_kmh: 38.0, ..Day::USUAL };
    (preset(Preset::FiveAxle36).with_retarding(0.675), day)
}

/// Rolling roads with bends, as an instrument would have them.
fn roads() -> impl Iterator<Item = Road> {
    [3, 5, 8].into_iter().map(|seed| {
        survey_drive(&TrueRoad::random(seed, 15_000.0), &Drive::new(Instrument::Recorder, 15.0, seed))
    })
}

fn same(a: &[f32], b: &[f32]) -> bool {
    a.len() == b.len() && a.iter().zip(b).all(|(a, b)| a.to_bits() == b.to_bits())
}

/// Plan and ride go different ways through the program; both give equal bits.
#[test]
fn the_ride_as_planned_is_the_plan() {
    for road in roads().chain([hill()]) {
        for kind in [Preset::FiveAxle36, Preset::Rigid18, Preset::CoachConverter] {
            let (truck, day) = (preset(kind), Day { headwind_kmh: 12.0, ..Day::USUAL });
            let (plan, lanes) = planned(&road, &truck, &day);
            let (end, ride) = ride(&road, &truck, &day, &plan, Slip::Planned).expect("a plan can be driven");
            assert!(same(&ride.speed, &lanes.speed) && same(&ride.temperature, &lanes.temperature));
            assert!(same(&ride.after_stop, &lanes.after_stop));
            assert!(same(&ride.engine_speed, &lanes.engine_speed));
            assert_eq!((&ride.gear, &ride.stage), (&lanes.gear, &lanes.stage), "{}", kind.key());
            let t = plan.totals;
            assert_eq!(
                (end.time, end.hottest, end.hottest_after_stop),
                (t.time, t.hottest, t.hottest_after_stop)
            );
            assert_eq!((end.service_work, end.holding_work), (t.service_work, t.holding_work));
            assert_eq!(part_at(&ride, &ride), None);
        }
    }
}

/// On a hill that the retarder just holds, each slip costs brake heat, and the two rides part at least
/// somewhere.
#[test]
fn a_slip_heats_the_brakes_on_a_hill_that_matters() {
    let (road, (truck, day)) = (hill(), just_held());
    let (plan, _) = planned(&road, &truck, &day);
    let margin = plan.descents[0].choice.advice().map(|advice| advice.margin);
    assert!(margin.is_some_and(|margin| (0.0..0.02).contains(&margin)), "the hill matters: {margin:?}");
    let (right, right_lanes) = driven(&road, &truck, &day, Slip::Planned);
    assert_eq!((right.over_limit_from, right.overspeed_from, right.without_safe_speed), (None, None, 0));
    for slip in Slip::ALL.into_iter().filter(|slip| *slip != Slip::Planned) {
        let (wrong, lanes) = driven(&road, &truck, &day, slip);
        // The slack above the speed lets a low gear hold more: a tenth of mass costs little.
        let by = if slip == Slip::Heavier { 0.5 } else { 20.0 };
        let (hot, cool) = (wrong.hottest_after_stop.0, right.hottest_after_stop.0);
        assert!(hot > cool + by, "{slip:?}: {hot} against {cool} °C");
        let at = part_at(&right_lanes, &lanes).unwrap_or_else(|| panic!("{slip:?} differs"));
        assert_eq!(right_lanes.gear[..at], lanes.gear[..at], "{slip:?}");
        if slip == Slip::HotBrakes {
            assert_eq!(at, 0);
            check("start, °C", 66.0 + 0.6 * (260.0 - 66.0), wrong.brakes_at_start.0, 1e-9);
            check("service work", right.service_work.0, wrong.service_work.0, 1e-6);
        } else {
            assert!(wrong.service_on_descents.0 > right.service_on_descents.0, "{slip:?}");
        }
    }
}

/// Each slip is recognised by its traces in the lanes.
#[test]
fn a_slip_is_what_it_is_called() {
    let (road, (truck, day)) = (hill(), just_held());
    let (plan, _) = planned(&road, &truck, &day);
    let card = plan.descents[0].hold();
    let middle = card.from.midpoint(card.to);
    let at = |slip| driven(&road, &truck, &day, slip);
    let (_, high) = at(Slip::GearHigh);
    assert_eq!(high.gear[middle], card.gear.number() + 1);
    let (end, fast) = at(Slip::Faster);
    assert!(f64::from(fast.speed[middle]) >= card.speed.0 + 10.0 / 3.6 - 0.01);
    assert!(end.above_card.0 >= 10.0 / 3.6 - 1e-9, "{end:?}");
    // At that speed the planned gear would turn the engine too fast, and so would the gear below the one taken.
    let gear = truck.gears().find(|gear| gear.number() == fast.gear[middle]).expect("a gear");
    let speed = MetresPerSecond(card.speed.0 + 10.0 / 3.6);
    assert!(gear > card.gear && truck.engine_speed(gear, speed) <= truck.highest_engine_speed());
    let below = truck.gears().rev().find(|lower| *lower < gear).expect("a lower gear");
    assert!(truck.engine_speed(below, speed) > truck.highest_engine_speed());
    // Ten per cent more mass is ten per cent more push.
    let ((_, heavy), (_, right)) = (at(Slip::Heavier), at(Slip::Planned));
    check("push", 1.1, f64::from(heavy.gravity[middle] / right.gravity[middle]), 1e-5);
}

/// Faster goes above the day's limit, but only where a descent is held. Elsewhere nothing changes, and a
/// curve stays a curve.
#[test]
fn faster_is_faster_on_descents_alone() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day { speed_limit_kmh: 40.0, ..Day::USUAL });
    let mut above = 0;
    for road in roads().chain([hill()]) {
        let (plan, _) = planned(&road, &truck, &day);
        let Some((_, fast)) = ride(&road, &truck, &day, &plan, Slip::Faster) else { continue };
        let inside = |point: usize| plan.descents.iter().any(|it| it.from < point && point < it.to);
        let limit = day.speed_limit().0 as f32;
        for (point, speed) in fast.speed.iter().enumerate() {
            above += usize::from(*speed > limit + 1.0);
            assert!(inside(point) || *speed <= limit + 0.01, "{point}: {speed}");
        }
        for slow in plan.curves.iter().filter(|slow| slow.speed < day.speed_limit()) {
            let fastest = fast.speed[slow.curve.from..=slow.curve.to].iter().copied().fold(0.0, f32::max);
            assert!(f64::from(fastest) <= slow.speed.0 + 0.01, "{slow:?}: {fastest}");
        }
    }
    assert!(above > 500, "{above} points above the limit");
}

/// Down to half-way nothing changes. From there on the next weaker stage holds, as on a truck that never had
/// a stronger one.
#[test]
fn a_lost_stage_is_the_plan_until_half_way() {
    let (road, (truck, day)) = (hill(), just_held());
    let (plan, _) = planned(&road, &truck, &day);
    let (_, right) = driven(&road, &truck, &day, Slip::Planned);
    let (end, lost) = driven(&road, &truck, &day, Slip::StageLost);
    let half_way = plan.descents[0].from.midpoint(plan.descents[0].to);
    assert_eq!(end.lost_at, Some(Metres(half_way as f64 * road.step_m())));
    let until = ..half_way;
    for (a, b) in [
        (&right.time, &lost.time),
        (&right.speed, &lost.speed),
        (&right.temperature, &lost.temperature),
        (&right.held, &lost.held),
        (&right.braked, &lost.braked),
    ] {
        assert!(same(&a[until], &b[until]));
    }
    assert_eq!((&right.gear[until], &right.stage[until]), (&lost.gear[until], &lost.stage[until]));
    let strongest = truck.full_stage().number();
    assert_eq!(right.stage[half_way + 100], strongest, "the hill takes the strongest stage");
    // To the end of the grade; the descent ends some metres behind it.
    assert!(lost.stage[half_way..=1_690].iter().all(|stage| *stage == strongest - 1));
    // The force there is that of the whole truck's next weaker stage at that speed.
    let trip = Trip { truck: &truck, day: &day };
    let point = half_way + 150;
    let stages: Vec<Stage> = truck.stages().collect();
    let weaker = stages[stages.len() - 2];
    let mean = 0.5 * f64::from(lost.speed[point - 1] + lost.speed[point]);
    let gives = trip.holding(
        plan.descents[0].hold().gear,
        weaker,
        MetresPerSecond(mean),
        trip.air_on(&road, point - 1),
    );
    check("held", 1.0, f64::from(lost.held[point]) / gives.0, 1e-5);
    assert!(lost.braked[point] > 1_000.0 && right.braked[point] < 1.0);
}

/// Every kind of retarder loses exactly its strongest stage; a truck without one has none to lose.
#[test]
fn the_next_weaker_stage_is_the_strongest_then() {
    let speed = MetresPerSecond(14.0);
    let mut tried = 0;
    for kind in Preset::ALL {
        let whole = preset(kind);
        let Some(without) = whole.without_strongest_stage() else {
            assert_eq!(whole.full_stage(), Stage::OFF, "{}", kind.key());
            continue;
        };
        let stages: Vec<Stage> = whole.stages().collect();
        let weaker = stages[stages.len() - 2];
        assert_eq!(without.full_stage(), weaker, "{}", kind.key());
        for gear in whole.gears() {
            let held = |truck: &Truck, stage| {
                truck
                    .holding_force(
                        gear,
                        stage,
                        speed,
                        solver::truck::Ambient { altitude_factor: 0.9, ..solver::truck::Ambient::STANDARD },
                        solver::truck::Warmth::SUSTAINED,
                    )
                    .0
            };
            assert_eq!(held(&without, weaker).to_bits(), held(&whole, weaker).to_bits(), "{}", kind.key());
        }
        tried += 1;
    }
    assert!(tried > 3);
}

/// Time goes on and ends as in the books of the run. A stop at a brake check counts, at the end of the road
/// too.
#[test]
fn time_goes_on_and_ends_as_the_books_say() {
    let check_at = |index| Place { index, name: "Stop".to_owned(), kind: PlaceKind::BrakeCheck, off_m: 0.0 };
    let road = hill();
    let last = road.cells();
    let road =
        road.with_roadside(&Roadside { places: vec![check_at(300), check_at(last)], limits: Vec::new() });
    let truck = preset(Preset::FiveAxle36);
    let day = Day { brake_check_stop_min: 10.0, ..Day::USUAL };
    let (plan, _) = planned(&road, &truck, &day);
    let trip = Trip { truck: &truck, day: &day };
    let run = Run::along(trip, &road, 0, last, &plan.holds(), start_state(trip, &road));
    assert_eq!(run.samples.last().map(|sample| sample.time), Some(run.ledger.time));
    for slip in Slip::ALL {
        let (end, lanes) = driven(&road, &truck, &day, slip);
        assert!(lanes.time.windows(2).all(|pair| pair[0] <= pair[1]), "{slip:?}");
        assert_eq!(lanes.time.first(), Some(&0.0));
        let told = f64::from(*lanes.time.last().expect("points"));
        check("time", 1.0, told / end.time.0, 1e-6);
        assert!(
            lanes.time[301] - lanes.time[300] >= 600.0 && lanes.time[last] - lanes.time[last - 1] >= 600.0
        );
        // Summed by hand over the cells, without the stops: twice the way over the sum of speeds.
        let moving: f64 = (1..=last)
            .map(|point| {
                let way = road.step_m() / Grade(road.grades()[point - 1]).sin_cos().1;
                2.0 * way / f64::from(lanes.speed[point - 1] + lanes.speed[point])
            })
            .sum();
        let shifts = told - 1_200.0 - moving;
        // Changes of gear while pulling take time and no way; there are a few of them before the hill.
        assert!((-0.1..60.0).contains(&shifts), "{slip:?}: {shifts}");
    }
}

/// m·a is the sum of all forces. A speed is told in single precision, 6e-8 of it either way. So rounding of
/// both ends may change m·(v₂² − v₁²)/(2·s) by m·v²·2·6e-8·2/(2·s), and the forces by 6e-8 of the largest;
/// three times that is allowed. Crests are left out: there the lanes show the gear of the descent, which is
/// engaged already, and not that of the last cell before.
#[test]
fn forces_explain_the_change_of_speed() {
    let (truck, day) = (preset(Preset::FiveAxle36), Day { headwind_kmh: 10.0, ..Day::USUAL });
    for road in roads().chain([hill()]) {
        let (plan, _) = planned(&road, &truck, &day);
        for slip in Slip::ALL {
            let Some((_, lanes)) = ride(&road, &truck, &day, &plan, slip) else { continue };
            let heavier = truck.heavier(1.1).expect("in range");
            let truck = if slip == Slip::Heavier { &heavier } else { &truck };
            let crest = |point: usize| plan.descents.iter().any(|it| it.from == point);
            let mut compared = 0;
            for point in (1..lanes.points()).filter(|point| road.assessed()[point - 1] && !crest(*point)) {
                let (v1, v2) = (f64::from(lanes.speed[point - 1]), f64::from(lanes.speed[point]));
                let Some(gear) = truck.gears().find(|it| it.number() == lanes.gear[point]) else { continue };
                if v1.is_nan() {
                    continue;
                }
                let way = road.step_m() / Grade(road.grades()[point - 1]).sin_cos().1;
                let mass = truck.mass().0 * truck.rotating_factor(gear);
                let pushes = mass * (v2 * v2 - v1 * v1) / (2.0 * way);
                let of = |lane: &[f32]| f64::from(lane[point]);
                let (gravity, resistance) = (of(&lanes.gravity), of(&lanes.resistance));
                let (held, braked, pulled) = (of(&lanes.held), of(&lanes.braked), of(&lanes.pulled));
                let left = gravity - resistance - held - braked + pulled;
                let most = gravity.abs().max(resistance.abs()).max(held).max(braked).max(pulled);
                let fast = v1.max(v2);
                let bound = 3.0 * 6e-8 * (2.0 * mass * fast * fast / way + 5.0 * most);
                assert!((pushes - left).abs() <= bound, "{slip:?} at {point}: {pushes} and {left}, {bound}");
                assert!(held >= 0.0 && braked >= 0.0 && pulled >= 0.0);
                compared += 1;
            }
            assert!(compared > 500, "{compared}");
        }
    }
}

/// Places are told where the lanes first show them, and never without cause.
#[test]
fn the_limit_is_passed_where_it_is_said() {
    let (road, (truck, day)) = (hill(), just_held());
    let day = Day { heat_limit_c: 200.0, ..day };
    let mut passed = 0;
    for slip in Slip::ALL {
        let (end, lanes) = driven(&road, &truck, &day, slip);
        let first = lanes.after_stop.iter().position(|it| f64::from(*it) > day.heat_limit_c);
        assert_eq!(end.over_limit_from, first.map(|at| Metres(at as f64 * road.step_m())), "{slip:?}");
        assert_eq!(end.over_limit_from.is_some(), end.hottest_after_stop.0 > day.heat_limit_c);
        passed += usize::from(first.is_some());
        let turns =
            lanes.engine_speed.iter().position(|it| f64::from(*it) > truck.highest_engine_speed().0 + 0.5);
        assert_eq!(end.overspeed_from, turns.map(|at| Metres(at as f64 * road.step_m())), "{slip:?}");
    }
    assert!(passed >= 1, "some slip passes the limit on such a hill");
}

/// Where no speed is safe there is no right way. The plan is shown as far as it says anything, and no wrong
/// way stands beside it.
#[test]
fn without_a_safe_speed_nothing_is_set_side_by_side() {
    let (road, truck) = (hill(), preset(Preset::FiveAxle36));
    let day = Day { brakes_at_start_c: 400.0, ..Day::USUAL };
    let (plan, lanes) = planned(&road, &truck, &day);
    let (end, shown) = ride(&road, &truck, &day, &plan, Slip::Planned).expect("the plan itself");
    assert_eq!((end.without_safe_speed, end.over_limit_from), (1, Some(Metres(0.0))));
    let descent = &plan.descents[0];
    for point in descent.from..=descent.to {
        assert!(shown.speed[point].is_nan() && shown.held[point].is_nan() && shown.gravity[point].is_nan());
        assert_eq!((shown.gear[point], shown.stage[point]), (Lanes::BLANK, Lanes::BLANK));
        assert!(shown.time[point].is_finite());
        assert_eq!(shown.temperature[point].to_bits(), lanes.temperature[point].to_bits());
    }
    for slip in Slip::ALL.into_iter().filter(|slip| *slip != Slip::Planned) {
        assert_eq!(ride(&road, &truck, &day, &plan, slip), None, "{slip:?}");
    }
}

/// A mass out of range, no stage to lose, and a day on which no stage is recommended.
#[test]
fn what_cannot_be_driven_is_none() {
    let road = hill();
    let of = |truck: &Truck, day: &Day, slip| {
        let (plan, _) = planned(&road, truck, day);
        ride(&road, truck, day, &plan, slip)
    };
    let gentle = Day { service_brakes: solver::ServiceBrakes::MaySnub, ..Day::USUAL };
    let mut spec = Preset::FiveAxle36.spec();
    spec.gross_mass_kg = solver::limits::ALL
        .iter()
        .find(|limit| limit.entry == solver::Entry::GrossMass)
        .map(|limit| limit.max)
        .expect("a limit of mass");
    assert_eq!(of(&truck(spec), &gentle, Slip::Heavier), None);
    let mut spec = Preset::FiveAxle36.spec();
    spec.retarder = Retarder::None;
    let level = Road::from_heights("level", 10.0, vec![100.0; 400]).expect("heights are sound");
    let without = truck(spec);
    for (truck, day) in [
        (&without, &Day::USUAL),
        (&preset(Preset::FiveAxle36), &Day { surface: Surface::Snow, ..Day::USUAL }),
        (&preset(Preset::FiveAxle36), &Day::USUAL),
    ] {
        let (plan, _) = planned(&level, truck, day);
        assert_eq!(ride(&level, truck, day, &plan, Slip::StageLost), None);
        assert!(ride(&level, truck, day, &plan, Slip::Heavier).is_some());
    }
}
