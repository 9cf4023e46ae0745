//! SNUB and SIGN: use of the service brakes, and speeds that a road authority posts.

use super::{Expected, Origin, Row, Status, near};
use crate::trucks::{MPH, POUND, ideal_gears, loaded_80_000_lb, no_retarder, preset, truck};
use solver::Day;
use solver::day::ServiceBrakes;
use solver::motion::{BrakeHeat, Trip};
use solver::plan::Choice;
use solver::road::Road;
use solver::truck::Preset;
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, Seconds, Watts};

const SNUB: Origin = Origin {
    key: "SNUB",
    status: Status::Printed,
    source: "US commercial driver's licence manual, section 2.16.4: from the safe speed to 5 mph below in about three seconds",
};
const ALIKE: Origin = Origin {
    key: "SNUB",
    status: Status::Printed,
    source: "Printed second-hand: snubbing and steady dragging heat the brakes about alike in the mean",
};
const SIGN: Origin = Origin {
    key: "SIGN",
    status: Status::Printed,
    source: "A state department of transportation's page on a 6 % downgrade: speeds posted by mass",
};

/// Duration of a snub.
const SNUB_SECONDS: f64 = 3.0;
/// Brakes before the first snub, °C.
const COOL: f64 = 66.0;

/// The deceleration follows from the manual, 5 mph/3 s. The tolerance of the heat is 5 % of the rise.
pub(super) fn snubbing() -> Vec<Row> {
    let (snubbed, dragged) = rises();
    vec![
        SNUB.row("Deceleration of a snub", "m/s²", near(0.745, 0.001), 5.0 * MPH / SNUB_SECONDS),
        ALIKE.row(
            "Rise of the dragged brakes, so that they are worked at all",
            "K",
            Expected::MoreThan(50.0),
            dragged,
        ),
        ALIKE.row(
            "Rise of the brakes by snubs over their rise by dragging",
            "",
            near(1.0, 0.05),
            snubbed / dragged,
        ),
    ]
}

/// Rise of the hottest brakes, K, of 36 t on −6 % with nothing else to hold it: by thirty snubs, and by
/// dragging for as long.
fn rises() -> (f64, f64) {
    let trip = Trip { truck: &preset(Preset::FiveAxle36), day: &Day::USUAL };
    // During `off` the truck regains the speed lost in a snub.
    let speed = MetresPerSecond(20.0 * MPH - 2.5 * MPH);
    let push = trip.demand(speed, Grade(-0.06), trip.air(Metres(0.0)));
    let gaining = push.0 / trip.truck.mass().0;
    let off = Seconds(5.0 * MPH / gaining);
    let braked = Watts((push.0 + trip.truck.mass().0 * 5.0 * MPH / SNUB_SECONDS) * speed.0);
    let steady = push * speed;
    let (mut snubbed, mut dragged) = (BrakeHeat::uniform(Celsius(COOL)), BrakeHeat::uniform(Celsius(COOL)));
    let cycle = Seconds(SNUB_SECONDS + off.0);
    for _ in 0..30 {
        snubbed = snubbed.after(trip, braked, speed, Seconds(SNUB_SECONDS));
        snubbed = snubbed.after(trip, Watts(0.0), speed, off);
        dragged = dragged.after(trip, steady, speed, cycle);
    }
    let rise = |heat: BrakeHeat| heat.hottest(trip).0 - COOL;
    (rise(snubbed), rise(dragged))
}

/// The page posts speeds by mass: 37 mph for 60,000 to 65,000 lb and 18 mph for 75,000 to 80,000 lb. Ours,
/// without a retarder and with the service brakes used, must have the two in this order and never be faster.
pub(super) fn posted_speeds() -> Vec<Row> {
    let (lighter, heavier) = (planned_mph(62_500.0), planned_mph(77_500.0));
    vec![
        SIGN.row(
            "Planned speed of 62,500 lb without a retarder, snubs allowed",
            "mph",
            Expected::AtMost(37.0),
            lighter,
        ),
        SIGN.row(
            "Planned speed of 77,500 lb without a retarder, snubs allowed",
            "mph",
            Expected::AtMost(18.0),
            heavier,
        ),
        SIGN.row(
            "Planned speed of the lighter over that of the heavier truck",
            "",
            Expected::MoreThan(1.0),
            lighter / heavier,
        ),
    ]
}

/// Hold speed on 6 km of 6 %, mph; zero where no speed is found.
///
/// # Panics
/// Never: the heights are sound, and nobody stops the plan.
fn planned_mph(pounds: f64) -> f64 {
    let heights = (0..=1_000).map(|k| 1_200.0 - f64::from(k.min(960)) * 0.6).collect();
    let road = Road::from_heights("posted grade", 10.0, heights).expect("heights are sound");
    let day = Day { service_brakes: ServiceBrakes::MaySnub, speed_limit_kmh: 90.0, ..Day::USUAL };
    let mut spec = loaded_80_000_lb(no_retarder());
    let factor = pounds * POUND / spec.gross_mass_kg;
    spec.gross_mass_kg *= factor;
    spec.drive_axle_mass_kg *= factor;
    // The steps of real gears may hide the order, so there is a gear for any speed.
    spec.gears = ideal_gears();
    let (plan, _) = solver::analyse(&road, &truck(spec), &day, &mut |_| true).expect("not cancelled");
    match &plan.descents[0].choice {
        Choice::Held(advice) => advice.speed.0 / MPH,
        Choice::NoSafeSpeed(_) => 0.0,
    }
}
