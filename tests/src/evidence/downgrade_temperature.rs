//! The published downgrade brake-temperature model (GSRS; FHWA-IP-88-015, FHWA-RD-79-116).
//!
//! Form and constants are values from memory ("recalled constants"; two independent recalls agree):
//! T(L) = T0 + [T∞ − T0 + K2·HP_B]·[1 − exp(−K1·L/V)], K1 = 1.23 + 0.0256·V, K2 = 1/(0.100 + 0.00208·V),
//! HP_B = (W·θ − F)·V/375 − 73, F = 459.35 + 0.132·V², T_E = 3.11e-7·W·V²; lb, mph, mi, hp, °F; T0 150,
//! T∞ 90, limit 500. The tables are computed from these.
//!
//! Ours is one lump with the default constants. The source's capacity varies a little with speed, and the
//! tables are rounded to a tenth; hence the tolerance.

use super::{Origin, Row, Status, near, number};
use crate::trucks::{HORSEPOWER, MPH, POUND, preset, truck};
use solver::day::Day;
use solver::motion::{BrakeHeat, HeatLump, Trip};
use solver::truck::{AxleGroup, AxlePlace, Preset, Truck};
use solver::units::{Celsius, Grade, MetresPerSecond, Seconds, Watts};

/// °F.
const TENTH: f64 = 0.1;
/// Source of all rows here.
const SOURCE: &str = "Published downgrade brake-temperature model (FHWA-IP-88-015, FHWA-RD-79-116); constants from memory, two recalls agree";
const GSRS: Origin = Origin { key: "GSRS", status: Status::FromMemory, source: SOURCE };
const SPLIT: Origin = Origin { key: "GSRS-SPLIT", status: Status::FromMemory, source: SOURCE };
const VMAX: Origin = Origin { key: "GSRS-VMAX", status: Status::FromMemory, source: SOURCE };

pub(super) fn fahrenheit(celsius: Celsius) -> f64 {
    celsius.0 * 1.8 + 32.0
}

pub(super) fn celsius(fahrenheit: f64) -> Celsius {
    Celsius((fahrenheit - 32.0) / 1.8)
}

/// Five axles of drums as one lump at a road speed, each cooling like a trailer's. The plan takes the
/// source's law unchanged for those, and lets the tractor's cool better (RECOVER).
pub(super) fn whole_truck(truck: &Truck, mph: f64) -> HeatLump {
    let groups = truck.spec().axle_groups.iter().map(|it| AxleGroup { place: AxlePlace::Trailer, ..*it });
    let groups: Vec<AxleGroup> = groups.collect();
    let speed = MetresPerSecond(mph * MPH);
    HeatLump {
        capacity: groups.iter().map(AxleGroup::heat_capacity).sum(),
        cooling: groups.iter().map(|g| g.cooling(speed)).sum(),
    }
}

/// Braking power of the source, hp.
pub(super) fn braking_hp(pounds: f64, grade: f64, mph: f64) -> f64 {
    (pounds * grade - (459.35 + 0.132 * mph * mph)) * mph / 375.0 - 73.0
}

/// Our temperature in °F after `miles` from `from` °F.
pub(super) fn after(pounds: f64, grade: f64, miles: f64, mph: f64, from: f64) -> f64 {
    let truck = preset(Preset::FiveAxle36);
    let power = Watts(braking_hp(pounds, grade, mph) * HORSEPOWER);
    let time = Seconds(miles / mph * 3_600.0);
    fahrenheit(whole_truck(&truck, mph).after(celsius(from), celsius(90.0), power, time))
}

fn percent(grade: f64) -> String {
    number(grade * 100.0, 0)
}

/// Temperature at the foot, and the rise of one emergency stop.
pub(super) fn temperatures() -> Vec<Row> {
    let foot = |(pounds, grade, miles, mph, expected): (f64, f64, f64, f64, f64)| {
        let (weight, slope) = (number(pounds, 0), percent(grade));
        let what = format!("Brakes of {weight} lb after {miles} mi of {slope} % at {mph} mph, from 150 °F");
        GSRS.row(what, "°F", near(expected, TENTH), after(pounds, grade, miles, mph, 150.0))
    };
    let mut rows = [
        (80_000.0, 0.06, 3.0, 20.0, 389.0),
        (80_000.0, 0.06, 6.0, 20.0, 573.1),
        (80_000.0, 0.06, 6.0, 30.0, 667.2),
        (80_000.0, 0.04, 6.0, 30.0, 407.6),
        (60_000.0, 0.06, 6.0, 30.0, 472.5),
        (70_000.0, 0.05, 5.0, 40.0, 441.9),
        (80_000.0, 0.07, 6.0, 15.0, 598.0),
    ]
    .map(foot)
    .to_vec();
    let stop = |(pounds, mph, expected): (f64, f64, f64)| {
        let what = format!("Rise of the brakes of {} lb by one stop from {mph} mph", number(pounds, 0));
        GSRS.row(what, "°F", near(expected, TENTH), rise_of_one_stop(pounds, mph))
    };
    rows.extend(
        [
            (80_000.0, 20.0, 10.0),
            (80_000.0, 30.0, 22.4),
            (60_000.0, 30.0, 16.8),
            (70_000.0, 40.0, 34.8),
            (80_000.0, 15.0, 5.6),
        ]
        .map(stop),
    );
    rows
}

/// T_E, the rise of one emergency stop in °F, with our imbalance allowance on the level.
pub(super) fn rise_of_one_stop(pounds: f64, mph: f64) -> f64 {
    // One group, so that the groups' shares do not matter, as in the source.
    let mut spec = Preset::FiveAxle36.spec();
    let mut whole = spec.axle_groups[0];
    whole.axles = 5;
    whole.effort_share = 1.0;
    spec.axle_groups = vec![whole];
    spec.gross_mass_kg = pounds * POUND;
    spec.drive_axle_mass_kg = 10_000.0;
    let (truck, day) = (truck(spec), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let brakes = BrakeHeat::uniform(Celsius(66.0));
    let rise = brakes.hottest_after_stop(trip, MetresPerSecond(mph * MPH), Grade(0.0)) - brakes.hottest(trip);
    rise.0 * 1.8
}

/// Stretches one after the other, with cooling.
pub(super) fn chained() -> Vec<Row> {
    let half = after(80_000.0, 0.06, 3.0, 20.0, 150.0);
    let both = after(80_000.0, 0.06, 3.0, 20.0, half);
    let whole = after(80_000.0, 0.06, 6.0, 20.0, 150.0);
    let gentle = after(80_000.0, 0.04, 3.0, 20.0, 150.0);
    let steep = after(80_000.0, 0.06, 3.0, 20.0, gentle);
    let mut rows = vec![
        SPLIT.row(
            "Brakes of 80,000 lb after 3 mi and again 3 mi of 6 % at 20 mph",
            "°F",
            near(573.1, TENTH),
            both,
        ),
        SPLIT.row(
            "Brakes after twice 3 mi of 6 %, less those after once 6 mi",
            "°F",
            near(0.0, 1e-9),
            both - whole,
        ),
        SPLIT.row("Brakes of 80,000 lb after 3 mi of 4 % at 20 mph", "°F", near(250.5, TENTH), gentle),
        SPLIT.row(
            "Brakes of 80,000 lb after 3 mi of 4 % and 3 mi of 6 % at 20 mph",
            "°F",
            near(466.4, TENTH),
            steep,
        ),
    ];
    let truck = preset(Preset::FiveAxle36);
    rows.extend([(0.0, 0.25, 391.5), (0.0, 0.5, 311.7), (55.0, 0.25, 302.0)].map(
        |(mph, hours, expected)| {
            let time = Seconds(hours * 3_600.0);
            let cooled = whole_truck(&truck, mph).after(celsius(500.0), celsius(90.0), Watts(0.0), time);
            let what = format!("Brakes of 500 °F after {hours} h of cooling at {mph} mph");
            SPLIT.row(what, "°F", near(expected, TENTH), fahrenheit(cooled))
        },
    ));
    rows
}

/// The fastest constant speed that keeps 500 °F with one stop in hand.
pub(super) fn fastest() -> Vec<Row> {
    const MILES: [f64; 4] = [4.0, 6.0, 8.0, 10.0];
    let mut rows = Vec::new();
    for (pounds, grade, expected) in [
        (80_000.0, 0.04, [85.7, 45.4, 30.6, 25.4]),
        (80_000.0, 0.05, [43.6, 23.2, 18.4, 16.4]),
        (80_000.0, 0.06, [23.8, 15.5, 13.3, 12.2]),
        (70_000.0, 0.06, [37.9, 20.7, 16.8, 15.2]),
        (60_000.0, 0.06, [83.0, 31.8, 23.2, 20.0]),
    ] {
        for (miles, mph) in MILES.into_iter().zip(expected) {
            let kept = |v: f64| after(pounds, grade, miles, v, 150.0) + 3.11e-7 * pounds * v * v <= 500.0;
            let ours = (50..2_000).map(|tenth| f64::from(tenth) * 0.05).take_while(|v| kept(*v)).last();
            let (weight, slope) = (number(pounds, 0), percent(grade));
            let what = format!(
                "Fastest speed of {weight} lb down {miles} mi of {slope} % within 500 °F, one stop in hand"
            );
            rows.push(VMAX.row(what, "mph", near(mph, 0.2), ours.unwrap_or(0.0)));
        }
    }
    rows
}
