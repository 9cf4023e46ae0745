//! UN Regulation 13, Annex 4: the downhill endurance test (type II: 6 km, −6 %, 30 km/h) and
//! that of endurance braking (type II A: the same at −7 %).
//!
//! Test conditions are printed; the figures follow from them with g = 9.81 m/s² and the grade
//! taken for the sine. So does this check: it asks gravity on the grade whose sine is the
//! printed grade, rolling resistance on the level (the source leaves out the cosine), and
//! scales to that g.

use solver::constants::GRAVITY;
use solver::day::Day;
use solver::motion::{Trip, held_grade};
use solver::truck::Preset;
use solver::units::{Grade, Metres, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::{preset, truck};

const SPEED: MetresPerSecond = MetresPerSecond(30.0 / 3.6);
/// The figures are rounded to a tenth.
const ROUNDING: f64 = 0.1;

fn grade_of_sine(sine: f64) -> Grade {
    Grade(-sine / (1.0 - sine * sine).sqrt())
}

/// Gross power and power less 1 % rolling, kW, and energy over 6 km, MJ.
fn test_figures(mass_kg: f64, sine: f64) -> (f64, f64, f64) {
    let mut spec = Preset::FiveAxle40.spec();
    spec.gross_mass_kg = mass_kg;
    spec.drive_axle_mass_kg = 5_000.0;
    spec.rolling_resistance = 0.01;
    let (truck, day) = (truck(spec), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let grade = grade_of_sine(sine);
    let g = 9.81 / GRAVITY;
    let gross = trip.gravity(grade) * g;
    let net = gross - trip.rolling(Grade(0.0)) * g;
    ((gross * SPEED).0 / 1e3, (net * SPEED).0 / 1e3, (gross * Metres(6_000.0)).0 / 1e6)
}

#[test]
fn r13_type_ii_power_and_energy() {
    for (mass_kg, gross, net, energy) in [
        (40_000.0, 196.2, 163.5, 141.26),
        (18_000.0, 88.3, 73.6, 63.57),
        (26_000.0, 127.5, 106.3, 91.82),
        (44_000.0, 215.8, 179.8, 155.39),
    ] {
        let ours = test_figures(mass_kg, 0.06);
        check(&format!("{mass_kg} kg, gross kW"), gross, ours.0, ROUNDING);
        check(&format!("{mass_kg} kg, net kW"), net, ours.1, ROUNDING);
        check(&format!("{mass_kg} kg, MJ"), energy, ours.2, ROUNDING);
    }
}

#[test]
fn r13_type_ii_a_power() {
    for (mass_kg, gross, net) in [
        (40_000.0, 228.9, 196.2),
        (18_000.0, 103.0, 88.3),
        (26_000.0, 148.8, 127.5),
        (44_000.0, 251.8, 215.8),
    ] {
        let ours = test_figures(mass_kg, 0.07);
        check(&format!("{mass_kg} kg, gross kW"), gross, ours.0, ROUNDING);
        check(&format!("{mass_kg} kg, net kW"), net, ours.1, ROUNDING);
    }
}

/// A vehicle whose retarder gives the net power of the type II A test must come out of ours as
/// one that is held at 30 km/h on −7 %.
#[test]
fn a_vehicle_that_meets_type_ii_a_is_held_at_30_on_7_percent() {
    let (truck, day) = (preset(Preset::FiveAxle40), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let gear = trip.lowest_gear_within(SPEED, 1.0).expect("a gear for 30 km/h");
    let force = trip.holding(gear, truck.full_stage(), SPEED, trip.air(Metres(0.0)));
    assert!((force * SPEED).0 >= 196.2e3, "this truck does not meet the test it stands for");
    let held = held_grade(trip, gear, truck.full_stage(), SPEED, Metres(0.0)).expect("not a wall");
    assert!(held.0 <= -0.07, "held only {held:?}");
}
