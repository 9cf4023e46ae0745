//! UN Regulation 13, Annex 4: the downhill endurance test (type II: 6 km, −6 %, 30 km/h) and the endurance
//! braking test (type II A: 6 km, −7 %, 30 km/h).
//!
//! Test conditions are printed. The figures follow from them with g = 9.81 m/s² and the grade taken for the
//! sine. This check does likewise: it takes gravity on the grade whose sine is the printed grade and rolling
//! resistance on the level (the source leaves out the cosine), and scales to that g.

use super::{Expected, Origin, Row, Status, near, number};
use crate::held_grade::held_grade;
use crate::trucks::{preset, truck};
use solver::constants::GRAVITY;
use solver::day::Day;
use solver::motion::Trip;
use solver::truck::Preset;
use solver::units::{Grade, Metres, MetresPerSecond};

const SPEED: MetresPerSecond = MetresPerSecond(30.0 / 3.6);
/// The figures are rounded to a tenth.
const ROUNDING: f64 = 0.1;

const TYPE_II: Origin = Origin {
    key: "R13-II",
    status: Status::Computed,
    source: "UN Regulation 13, Annex 4, type II test: conditions printed, figures computed from them",
};
const TYPE_II_A: Origin = Origin {
    key: "R13-IIA",
    status: Status::Computed,
    source: "UN Regulation 13, Annex 4, type II A test: conditions printed, figures computed from them",
};

fn grade_of_sine(sine: f64) -> Grade {
    Grade(-sine / (1.0 - sine * sine).sqrt())
}

/// Our model's figures for a test.
struct Figures {
    /// Power, kW.
    gross: f64,
    /// Power less 1 % rolling resistance, kW.
    net: f64,
    /// Energy over 6 km, MJ.
    energy: f64,
}

fn test_figures(mass_kg: f64, sine: f64) -> Figures {
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
    Figures {
        gross: (gross * SPEED).0 / 1e3,
        net: (net * SPEED).0 / 1e3,
        energy: (gross * Metres(6_000.0)).0 / 1e6,
    }
}

/// Both powers of a test, printed and ours.
fn powers(test: Origin, mass_kg: f64, percent: u8, [gross, net]: [f64; 2], ours: &Figures) -> [Row; 2] {
    let what = format!("Braking power of {} kg on −{percent} % at 30 km/h", number(mass_kg, 0));
    let less = format!("{what}, less 1 % rolling resistance");
    [
        test.row(what, "kW", near(gross, ROUNDING), ours.gross),
        test.row(less, "kW", near(net, ROUNDING), ours.net),
    ]
}

/// 6 km at −6 % and 30 km/h.
pub(super) fn type_ii() -> Vec<Row> {
    let mut rows = Vec::new();
    for (mass_kg, gross, net, energy) in [
        (40_000.0, 196.2, 163.5, 141.26),
        (18_000.0, 88.3, 73.6, 63.57),
        (26_000.0, 127.5, 106.3, 91.82),
        (44_000.0, 215.8, 179.8, 155.39),
    ] {
        let ours = test_figures(mass_kg, 0.06);
        rows.extend(powers(TYPE_II, mass_kg, 6, [gross, net], &ours));
        let mass = number(mass_kg, 0);
        rows.push(TYPE_II.row(
            format!("Braking work of {mass} kg over 6 km"),
            "MJ",
            near(energy, ROUNDING),
            ours.energy,
        ));
    }
    rows
}

/// 6 km at −7 % and 30 km/h, and a vehicle that meets the test: a truck whose retarder gives the net power
/// must come out as held at 30 km/h.
///
/// # Panics
/// Never: the preset has a gear for 30 km/h, and holds less than a wall asks.
pub(super) fn type_ii_a() -> Vec<Row> {
    let mut rows = Vec::new();
    for (mass_kg, gross, net) in [
        (40_000.0, 228.9, 196.2),
        (18_000.0, 103.0, 88.3),
        (26_000.0, 148.8, 127.5),
        (44_000.0, 251.8, 215.8),
    ] {
        rows.extend(powers(TYPE_II_A, mass_kg, 7, [gross, net], &test_figures(mass_kg, 0.07)));
    }
    let (truck, day) = (preset(Preset::FiveAxle40), Day::USUAL);
    let trip = Trip { truck: &truck, day: &day };
    let gear = trip.lowest_gear_within(SPEED, 1.0).expect("a gear for 30 km/h");
    let force = trip.holding(gear, truck.full_stage(), SPEED, trip.air(Metres(0.0)));
    let held = held_grade(trip, gear, truck.full_stage(), SPEED, Metres(0.0)).expect("not a wall");
    rows.extend([
        TYPE_II_A.row(
            "Holding power at 30 km/h of the 40 t truck that stands for those that pass",
            "kW",
            Expected::AtLeast(196.2),
            (force * SPEED).0 / 1e3,
        ),
        TYPE_II_A.row(
            "Steepest downgrade that the 40 t truck holds at 30 km/h without the service brakes",
            "%",
            Expected::AtLeast(7.0),
            -held.0 * 100.0,
        ),
    ]);
    rows
}
