//! Forces: resistance alone, wheel inertia, axle efficiency, friction that retarding asks of the driven
//! axles, and resistance as an equivalent grade.

use super::{Origin, Row, Status, near, number};
use crate::trucks::{POUND, preset, standard_day, truck};
use solver::day::Day;
use solver::motion::Trip;
use solver::truck::{Ambient, Gear, Preset, Truck, Warmth};
use solver::units::{Grade, Metres, MetresPerSecond, RevPerMin};

const NAT: Origin = Origin {
    key: "NAT",
    status: Status::Computed,
    source: "Equation of resistance with g = 9.81; frontal area of vans second-hand from SAE J1489",
};
const INERTIA: Origin = Origin {
    key: "INERTIA",
    status: Status::Printed,
    source: "40 CFR 1037.528, example: 56.7 kg for each tyre",
};
const AXLE: Origin = Origin {
    key: "AXLE",
    status: Status::Printed,
    source: "40 CFR 1036.545(f): axle efficiency 0.955 when driving, its inverse on overrun",
};
const ADHESION: Origin = Origin {
    key: "ADHESION",
    status: Status::Computed,
    source: "Equation M·(G − 0.006)/(mass on the driven axles); no printed figures",
};
const GRADE_EQUIV: Origin = Origin {
    key: "GRADE-EQUIV",
    status: Status::Printed,
    source: "Journal of Transportation Engineering 115(4), 1989, abstract: streamlining and radial tyres act like 0.34 % more grade",
};
const SEA: Metres = Metres(0.0);

/// Resistance alone of 36,287 kg, 10 m², C_d 0.7, C_rr 0.0065, 1.225 kg/m³.
pub(super) fn natural_resistance() -> Vec<Row> {
    let mut spec = Preset::FiveAxle36.spec();
    spec.drag_area_m2 = 7.0;
    spec.rolling_resistance = 0.0065;
    let (truck, day) = (truck(spec), standard_day());
    let trip = Trip { truck: &truck, day: &day };
    let mut rows = Vec::new();
    for (kmh, kilowatts, percent) in
        [(30.0, 21.8, 0.73), (50.0, 43.6, 0.88), (70.0, 76.5, 1.11), (90.0, 124.8, 1.40)]
    {
        let speed = MetresPerSecond::from_kmh(kmh);
        let resistance = -trip.demand(speed, Grade(0.0), trip.air(SEA));
        let power = (resistance * speed).0 / 1e3;
        rows.extend([
            NAT.row(
                format!("Power that rolling and air take from 36,287 kg at {kmh} km/h"),
                "kW",
                near(kilowatts, 0.05),
                power,
            ),
            NAT.row(
                format!("Downgrade that rolling and air of 36,287 kg balance at {kmh} km/h"),
                "%",
                near(percent, 0.005),
                resistance / trip.weight() * 100.0,
            ),
        ]);
    }
    rows
}

/// 16,108 kg with 18 tyres has an effective mass of 17,129 kg.
pub(super) fn wheels_as_mass() -> Vec<Row> {
    let mut spec = Preset::FiveAxle36.spec();
    spec.gross_mass_kg = 16_108.0;
    spec.drive_axle_mass_kg = 8_000.0;
    let r = spec.rolling_radius_m;
    spec.wheel_inertia_kg_m2 = 18.0 * 56.7 * r * r;
    let truck = truck(spec);
    let wheels = truck.wheels_as_mass();
    vec![
        INERTIA.row(
            "Mass of 16,108 kg with its 18 turning wheels",
            "kg",
            near(17_129.0, 0.5),
            (truck.mass() + wheels).0,
        ),
        INERTIA.row("Turning of one wheel as a mass", "kg", near(56.7, 0.1), wheels.0 / 18.0),
    ]
}

/// Efficiency 0.955 driving, 1/0.955 overrunning; of all gears the one farthest from it.
pub(super) fn axle_both_ways() -> Vec<Row> {
    let with = |efficiency: f64| {
        let mut spec = Preset::FiveAxle36.spec();
        spec.axle_efficiency = efficiency;
        truck(spec)
    };
    let (printed, lossless) = (with(0.955), with(1.0));
    let full = printed.full_stage();
    let at = |gear: Gear| printed.road_speed(gear, RevPerMin(1_500.0));
    let held = |gear: Gear| {
        let held =
            |truck: &Truck| truck.holding_force(gear, full, at(gear), Ambient::STANDARD, Warmth::SUSTAINED);
        held(&printed) / held(&lossless)
    };
    let pulled = |gear: Gear| printed.pulling_force(gear, at(gear)) / lossless.pulling_force(gear, at(gear));
    let farthest = |from: f64, ratio: &dyn Fn(Gear) -> f64| {
        let ratios = printed.gears().map(ratio);
        ratios.max_by(|a, b| (a - from).abs().total_cmp(&(b - from).abs())).unwrap_or(f64::NAN)
    };
    vec![
        AXLE.row(
            "Holding force at the wheels over that of an axle without loss, the gear farthest off",
            "",
            near(1.0 / 0.955, 1e-12),
            farthest(1.0 / 0.955, &held),
        ),
        AXLE.row(
            "Pulling force at the wheels over that of an axle without loss, the gear farthest off",
            "",
            near(0.955, 1e-12),
            farthest(0.955, &pulled),
        ),
    ]
}

/// Ours has sine and cosine where the equation has the grade and 1.
pub(super) fn adhesion() -> Vec<Row> {
    let row = |(gross_t, drive_t, grade, expected): (f64, f64, f64, f64)| {
        let mut spec = Preset::FiveAxle40.spec();
        spec.gross_mass_kg = gross_t * 1e3;
        spec.drive_axle_mass_kg = drive_t * 1e3;
        spec.rolling_resistance = 0.006;
        let (truck, day) = (truck(spec), Day::USUAL);
        let trip = Trip { truck: &truck, day: &day };
        let slope = Grade(-grade);
        let demand = trip.demand(MetresPerSecond(0.0), slope, trip.air(SEA)).0;
        let dry = trip.grip_for_retarding(slope).0 / day.surface.friction();
        let percent = number(grade * 100.0, 0);
        let what = format!(
            "Friction that holding {gross_t} t on −{percent} % asks of {drive_t} t on the driven axles"
        );
        ADHESION.row(what, "", near(expected, 0.001), demand / dry)
    };
    [
        (40.0, 11.5, 0.06, 0.188),
        (40.0, 11.5, 0.08, 0.257),
        (40.0, 19.0, 0.06, 0.114),
        (15.0, 6.0, 0.06, 0.135),
    ]
    .map(row)
    .to_vec()
}

/// 0.34 % of 80,000 lb. The tolerance of 1 lb is the print's rounding.
pub(super) fn grade_equivalent() -> Vec<Row> {
    let trip = Trip { truck: &preset(Preset::FiveAxle36), day: &Day::USUAL };
    let gravity = trip.gravity(Grade(-0.0034)).0 / solver::constants::GRAVITY / POUND;
    let weight = trip.weight().0 / solver::constants::GRAVITY / POUND;
    vec![GRADE_EQUIV.row(
        "Push of gravity on 80,000 lb by 0.34 % more grade",
        "lb",
        near(272.0, 1.0),
        gravity * 80_000.0 / weight,
    )]
}
