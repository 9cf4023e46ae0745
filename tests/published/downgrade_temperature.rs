//! The published downgrade brake-temperature model (GSRS; FHWA-IP-88-015, FHWA-RD-79-116).
//!
//! Form and constants are values from memory ("recalled constants"; two independent recalls
//! agree): T(L) = T0 + [T∞ − T0 + K2·HP_B]·[1 − exp(−K1·L/V)], K1 = 1.23 + 0.0256·V,
//! K2 = 1/(0.100 + 0.00208·V), HP_B = (W·θ − F)·V/375 − 73, F = 459.35 + 0.132·V²,
//! T_E = 3.11e-7·W·V²; lb, mph, mi, hp, °F; T0 150, T∞ 90, limit 500. The tables are computed
//! from that.
//!
//! Ours is one lump of the default constants; the source's capacity is not quite the same at
//! all speeds, and the tables are rounded to a tenth: hence the tolerance.

use solver::day::Day;
use solver::motion::{BrakeHeat, HeatLump, Trip};
use solver::truck::{Preset, Truck};
use solver::units::{Celsius, Grade, MetresPerSecond, Seconds, Watts};
use tests::evidence::check;
use tests::trucks::{HORSEPOWER, MPH, POUND, preset, truck};

/// °F.
const TENTH: f64 = 0.1;

fn fahrenheit(celsius: Celsius) -> f64 {
    celsius.0 * 1.8 + 32.0
}

fn celsius(fahrenheit: f64) -> Celsius {
    Celsius((fahrenheit - 32.0) / 1.8)
}

/// The five axles of the preset as one lump at a road speed.
fn whole_truck(truck: &Truck, mph: f64) -> HeatLump {
    let groups = &truck.spec().axle_groups;
    let speed = MetresPerSecond(mph * MPH);
    HeatLump {
        capacity: groups.iter().map(|g| g.heat_capacity()).sum(),
        cooling: groups.iter().map(|g| g.cooling(speed)).sum(),
    }
}

/// Braking power of the source, hp.
fn braking_hp(pounds: f64, grade: f64, mph: f64) -> f64 {
    (pounds * grade - (459.35 + 0.132 * mph * mph)) * mph / 375.0 - 73.0
}

/// Our temperature in °F after `miles` from `from` °F.
fn after(pounds: f64, grade: f64, miles: f64, mph: f64, from: f64) -> f64 {
    let truck = preset(Preset::FiveAxle36);
    let power = Watts(braking_hp(pounds, grade, mph) * HORSEPOWER);
    let time = Seconds(miles / mph * 3_600.0);
    fahrenheit(whole_truck(&truck, mph).after(celsius(from), celsius(90.0), power, time))
}

#[test]
fn temperature_at_the_foot() {
    for (pounds, grade, miles, mph, expected) in [
        (80_000.0, 0.06, 3.0, 20.0, 389.0),
        (80_000.0, 0.06, 6.0, 20.0, 573.1),
        (80_000.0, 0.06, 6.0, 30.0, 667.2),
        (80_000.0, 0.04, 6.0, 30.0, 407.6),
        (60_000.0, 0.06, 6.0, 30.0, 472.5),
        (70_000.0, 0.05, 5.0, 40.0, 441.9),
        (80_000.0, 0.07, 6.0, 15.0, 598.0),
    ] {
        let ours = after(pounds, grade, miles, mph, 150.0);
        check(&format!("{pounds} lb {grade} {miles} mi {mph} mph"), expected, ours, TENTH);
    }
}

/// T_E, the rise of one emergency stop, with our imbalance allowance on the level.
#[test]
fn rise_of_one_stop() {
    let day = Day::USUAL;
    for (pounds, mph, expected) in [
        (80_000.0, 20.0, 10.0),
        (80_000.0, 30.0, 22.4),
        (60_000.0, 30.0, 16.8),
        (70_000.0, 40.0, 34.8),
        (80_000.0, 15.0, 5.6),
    ] {
        // One group, so that the shares of the groups play no part, as in the source.
        let mut spec = Preset::FiveAxle36.spec();
        let mut whole = spec.axle_groups[0];
        whole.axles = 5;
        whole.effort_share = 1.0;
        spec.axle_groups = vec![whole];
        spec.gross_mass_kg = pounds * POUND;
        spec.drive_axle_mass_kg = 10_000.0;
        let truck = truck(spec);
        let trip = Trip { truck: &truck, day: &day };
        let brakes = BrakeHeat::uniform(Celsius(66.0));
        let rise =
            brakes.hottest_after_stop(trip, MetresPerSecond(mph * MPH), Grade(0.0)) - brakes.hottest(trip);
        check(&format!("{pounds} lb {mph} mph"), expected, rise.0 * 1.8, 0.1);
    }
}

#[test]
fn chained_stretches_and_cooling() {
    let half = after(80_000.0, 0.06, 3.0, 20.0, 150.0);
    check("3 + 3 mi", 573.1, after(80_000.0, 0.06, 3.0, 20.0, half), TENTH);
    check(
        "3 + 3 mi is 6 mi",
        after(80_000.0, 0.06, 6.0, 20.0, 150.0),
        after(80_000.0, 0.06, 3.0, 20.0, half),
        1e-9,
    );
    let first = after(80_000.0, 0.04, 3.0, 20.0, 150.0);
    check("3 mi of 4 %", 250.5, first, TENTH);
    check("then 3 mi of 6 %", 466.4, after(80_000.0, 0.06, 3.0, 20.0, first), TENTH);
    let truck = preset(Preset::FiveAxle36);
    for (mph, hours, expected) in [(0.0, 0.25, 391.5), (0.0, 0.5, 311.7), (55.0, 0.25, 302.0)] {
        let time = Seconds(hours * 3_600.0);
        let cooled = whole_truck(&truck, mph).after(celsius(500.0), celsius(90.0), Watts(0.0), time);
        check(&format!("{hours} h at {mph} mph"), expected, fahrenheit(cooled), TENTH);
    }
}

/// The fastest constant speed that keeps 500 °F with one stop in hand.
#[test]
fn fastest_speed_within_the_limit() {
    const MILES: [f64; 4] = [4.0, 6.0, 8.0, 10.0];
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
            check(&format!("{pounds} lb {grade} {miles} mi"), mph, ours.unwrap_or(0.0), 0.2);
        }
    }
}
