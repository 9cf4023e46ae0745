//! SNUB, SIGN, GRADE-EQUIV: how the service brakes are used, what a road authority posts, and
//! what a truck's resistance is worth.

use solver::Day;
use solver::day::ServiceBrakes;
use solver::motion::{BrakeHeat, HeatLump, Trip};
use solver::plan::Choice;
use solver::road::Road;
use solver::truck::{Preset, Retarder};
use solver::units::{Celsius, Grade, MetresPerSecond, Seconds, Watts};
use tests::evidence::check;
use tests::trucks::{MPH, POUND, ideal_gears, loaded_80_000_lb, preset, truck};

/// Source: US commercial driver's licence manual, section 2.16.4 (printed): from the safe speed
/// to 5 mph below in about three seconds. The deceleration follows: 5 mph/3 s = 0.745 m/s².
const SNUB_SECONDS: f64 = 3.0;

/// Source: as above for the snub; that snubbing and steady dragging heat the brakes about alike
/// in the mean is printed second-hand. Tolerance: 5 % of the rise.
#[test]
fn snubs_heat_as_much_as_dragging_does() {
    check("deceleration of a snub", 0.745, 5.0 * MPH / SNUB_SECONDS, 0.001);
    let trip = Trip { truck: &preset(Preset::FiveAxle36), day: &Day::USUAL };
    // 36 t on −6 % with nothing else to hold it: the speed lost in a snub comes back in `off`.
    let speed = MetresPerSecond(20.0 * MPH - 2.5 * MPH);
    let push = trip.demand(speed, Grade(-0.06), trip.air(solver::units::Metres(0.0)));
    let gaining = push.0 / trip.truck.mass().0;
    let off = Seconds(5.0 * MPH / gaining);
    let braked = Watts((push.0 + trip.truck.mass().0 * 5.0 * MPH / SNUB_SECONDS) * speed.0);
    let steady = push * speed;
    let (mut snubbed, mut dragged) = (BrakeHeat::uniform(Celsius(66.0)), BrakeHeat::uniform(Celsius(66.0)));
    let cycle = Seconds(SNUB_SECONDS + off.0);
    for _ in 0..30 {
        snubbed = snubbed.after(trip, braked, speed, Seconds(SNUB_SECONDS));
        snubbed = snubbed.after(trip, Watts(0.0), speed, off);
        dragged = dragged.after(trip, steady, speed, cycle);
    }
    let rise = |heat: BrakeHeat| heat.hottest(trip).0 - 66.0;
    assert!(rise(dragged) > 50.0, "the brakes are worked: {:.0} K", rise(dragged));
    check("rise by snubs over rise by dragging", 1.0, rise(snubbed) / rise(dragged), 0.05);
}

/// Source: none, arithmetic: a lump that is heated forever settles at T_air + P/hA, which bounds
/// the check above.
#[test]
fn a_lump_settles_where_heat_and_cooling_balance() {
    let lump = HeatLump { capacity: 4e5, cooling: 200.0 };
    let settled = lump.after(Celsius(66.0), Celsius(32.0), Watts(40_000.0), Seconds(1e6));
    check("settled temperature", 32.0 + 40_000.0 / 200.0, settled.0, 1e-6);
}

/// Source: a state department of transportation's page on a 6 % grade (printed): by mass it
/// posts 37 mph for 60,000 to 65,000 lb and 18 mph for 75,000 to 80,000 lb. Ours, without a
/// retarder and with the service brakes used, must order the two the same way.
#[test]
fn the_heavier_truck_is_slower_as_posted() {
    let heights = (0..=1_000).map(|k| 1_200.0 - f64::from(k.min(960)) * 0.6).collect();
    let road = Road::from_heights("posted grade", 10.0, heights).expect("heights are sound");
    let day = Day { service_brakes: ServiceBrakes::MaySnub, speed_limit_kmh: 90.0, ..Day::USUAL };
    let speed = |pounds: f64| {
        let mut spec = loaded_80_000_lb(Retarder::None);
        let factor = pounds * POUND / spec.gross_mass_kg;
        spec.gross_mass_kg *= factor;
        spec.drive_axle_mass_kg *= factor;
        // Real gears come in steps that may hide the order: a gear for any speed.
        spec.gears = ideal_gears();
        let (plan, _) = solver::analyse(&road, &truck(spec), &day, &mut |_| true).expect("not cancelled");
        match &plan.descents[0].choice {
            Choice::Held(advice) => advice.speed.0 / MPH,
            Choice::NoSafeSpeed(_) => 0.0,
        }
    };
    let (lighter, heavier) = (speed(62_500.0), speed(77_500.0));
    println!("posted 37 and 18 mph; ours {lighter:.0} and {heavier:.0} mph");
    assert!(lighter > heavier, "{lighter:.1} and {heavier:.1} mph");
    assert!(
        lighter <= 37.0 && heavier <= 18.0,
        "never faster than posted: {lighter:.1} and {heavier:.1} mph"
    );
}

/// Source: Journal of Transportation Engineering 115(4), 1989, abstract (printed): streamlining
/// and radial tyres act like 0.34 % more grade, 272 lb at 80,000 lb. Tolerance 1 lb: print.
#[test]
fn less_resistance_is_like_a_steeper_grade() {
    let trip = Trip { truck: &preset(Preset::FiveAxle36), day: &Day::USUAL };
    let gravity = trip.gravity(Grade(-0.0034)).0 / solver::constants::GRAVITY / POUND;
    let weight = trip.weight().0 / solver::constants::GRAVITY / POUND;
    check("0.34 % of 80,000 lb", 272.0, gravity * 80_000.0 / weight, 1.0);
}
