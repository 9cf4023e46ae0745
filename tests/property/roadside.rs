//! Places and posted limits that a person enters on a road.

use proptest::prelude::*;
use solver::analyse;
use solver::day::{Day, ServiceBrakes};
use solver::motion::Trip;
use solver::plan::{Choice, Governs, Lanes, Plan, Verdict};
use solver::road::{Place, PlaceKind, PostedLimit, Road, Roadside};
use solver::study::{SlowFor, study};
use solver::truck::{Gear, Preset, Truck};
use solver::units::{Grade, Metres, MetresPerSecond};
use tests::trucks::preset;

/// A kilometre level, a hill of this grade, a kilometre level.
fn hill(grade: f64, length_m: f64) -> Road {
    let cells = (length_m / 10.0) as usize;
    let fall = |k: usize| 10.0 * grade * (k.clamp(100, 100 + cells) - 100) as f64;
    let heights = (0..=cells + 200).map(|k| 900.0 + fall(k)).collect();
    Road::from_heights("even hill", 10.0, heights).expect("heights are sound")
}

fn posted(road: &Road, from: usize, to: usize, kmh: f64) -> Road {
    road.with_roadside(&Roadside { places: Vec::new(), limits: vec![PostedLimit { from, to, kmh }] })
}

fn planned(road: &Road, truck: &Truck, day: &Day) -> (Plan, Lanes) {
    analyse(road, truck, day, &mut |_| true).expect("not cancelled")
}

fn held(plan: &Plan) -> (Gear, f64, Governs) {
    let advice = plan.descents[0].choice.advice().expect("a speed is found");
    (advice.gear, advice.speed.kmh(), advice.governs)
}

#[test]
fn what_does_not_lie_on_the_road_is_left_out() {
    let road = hill(-0.06, 3_000.0);
    let last = road.cells();
    let place = |index| Place { name: "x".to_owned(), kind: PlaceKind::Other, index, off_m: 0.0 };
    let limit = |from, to, kmh| PostedLimit { from, to, kmh };
    let with = road.with_roadside(&Roadside {
        places: vec![place(last), place(last + 1), place(3)],
        limits: vec![
            limit(50, 90, 40.0),
            limit(90, 50, 40.0),
            limit(7, 7, 40.0),
            limit(0, last + 1, 40.0),
            limit(0, 9, f64::NAN),
            limit(0, 9, 3.0),
            limit(0, last, 60.0),
        ],
    });
    assert_eq!(with.places().iter().map(|it| it.index).collect::<Vec<_>>(), [3, last]);
    assert_eq!(with.limits(), [limit(0, last, 60.0), limit(50, 90, 40.0)]);
    assert_eq!(with.reversed().reversed().limits(), with.limits());
    assert_eq!(with.reversed().limits()[0].to, last - 50);
    let part = with.part(60, 200).expect("long enough");
    assert_eq!(part.limits(), [limit(0, 140, 60.0), limit(0, 30, 40.0)]);
}

/// A limit posted over the whole hill is held like an equal limit of the day.
#[test]
fn posted_on_the_whole_hill_is_as_entered_for_the_day() {
    let truck = preset(Preset::FiveAxle36);
    let road = hill(-0.05, 4_000.0);
    let (free, _) = planned(&road, &truck, &Day::USUAL);
    assert!(held(&free).1 > 31.0, "the hill allows more than 30 km/h");
    let (plan, _) = planned(&posted(&road, 0, road.cells(), 30.0), &truck, &Day::USUAL);
    let (gear, kmh, governs) = held(&plan);
    assert_eq!(governs, Governs::Posted);
    let (of_day, _) = planned(&road, &truck, &Day { speed_limit_kmh: 30.0, ..Day::USUAL });
    assert_eq!((gear, kmh), (held(&of_day).0, held(&of_day).1));
    // A limit on less than half of it lets the rest be driven faster.
    let (plan, _) = planned(&posted(&road, 110, 290, 30.0), &truck, &Day::USUAL);
    assert!(held(&plan).1 > 31.0);
}

/// On gentle ground a fast gear would be enough. Where a low limit is posted, the gear must still hold at
/// that limit, with the reserve.
#[test]
fn the_gear_holds_at_the_posted_limit_too() {
    let truck = preset(Preset::FiveAxle36);
    let day = Day::USUAL;
    let road = hill(-0.045, 6_000.0);
    let (free, _) = planned(&road, &truck, &day);
    let (gear, kmh, _) = held(&free);
    let trip = Trip { truck: &truck, day: &day };
    let limit = MetresPerSecond::from_kmh(0.6 * kmh);
    let air = trip.air(Metres(900.0));
    let margin = |gear: Gear| {
        let grade = Grade(-0.045);
        trip.retarding(gear, limit, grade, air).0 / trip.demand(limit, grade, air).0 - 1.0
    };
    assert!(margin(gear) < day.reserve, "the free gear would not do: {}", margin(gear));
    let with = posted(&road, 300, 500, 0.6 * kmh);
    let (plan, lanes) = planned(&with, &truck, &day);
    let (gear, kmh, governs) = held(&plan);
    assert_eq!(plan.descents[0].choice.verdict(), Verdict::RetarderHolds);
    assert!(margin(gear) >= day.reserve && kmh >= limit.kmh(), "{gear:?} {kmh} {}", margin(gear));
    assert_eq!(governs, Governs::Posted);
    let fastest = lanes.speed[301..=499].iter().copied().fold(0.0_f32, f32::max);
    assert!(f64::from(fastest) <= limit.0 + 0.1, "{fastest}");
    // The place to lift off for it is told.
    let slowing = study(&with, &truck, &day, &plan).slowing;
    let told = slowing.iter().any(|it| it.what == SlowFor::Limit && (it.at.0 - 3_000.0).abs() < 1.0);
    assert!(told || kmh < limit.kmh() + 10.0, "{slowing:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// A limit never makes a hill faster, and is kept on its stretch. A limit not below the day's changes
    /// nothing at all.
    #[test]
    fn a_posted_limit_is_on_the_cautious_side(
        grade in 0.02_f64..0.09,
        from in 50_usize..300,
        length in 20_usize..200,
        kmh in 15.0_f64..80.0,
        snub in any::<bool>(),
    ) {
        let truck = preset(Preset::BDouble);
        let service_brakes = if snub { ServiceBrakes::MaySnub } else { ServiceBrakes::InReserve };
        let day = Day { service_brakes, ..Day::USUAL };
        let road = hill(-grade, 3_000.0);
        let (free, free_lanes) = planned(&road, &truck, &day);
        let idle = posted(&road, from, from + length, day.speed_limit_kmh);
        prop_assert_eq!(&planned(&idle, &truck, &day), &(free.clone(), free_lanes));
        let (plan, lanes) = planned(&posted(&road, from, from + length, kmh), &truck, &day);
        for (with, without) in plan.descents.iter().zip(&free.descents) {
            let speed = |choice: &Choice| choice.advice().map_or(0.0, |it| it.speed.0);
            prop_assert!(speed(&with.choice) <= speed(&without.choice) + 1e-9);
        }
        if !matches!(plan.descents[0].choice, Choice::NoSafeSpeed(_)) {
            let fastest = lanes.speed[from + 1..from + length].iter().copied().fold(0.0_f32, f32::max);
            // As on any hold, the truck may gain 5 km/h before the brakes come in.
            prop_assert!(f64::from(fastest) * 3.6 <= kmh + 5.1, "{} {}", fastest * 3.6, kmh);
        }
    }
}
