//! Data of vehicles: gears, motoring, power for mass, rolling resistance, road load.

use super::{Expected, Origin, Row, Status, near, near_or_known, number};
use crate::trucks::{MPH, preset, rated_power, standard_day, truck};
use solver::motion::Trip;
use solver::truck::{Preset, gear_sets};
use solver::units::{Grade, Metres, MetresPerSecond, RevPerMin};

const OVERDRIVE: Origin = Origin {
    key: "GEAR-10OD",
    status: Status::Printed,
    source: "A national laboratory's vehicle simulator, data of 1998: ten-speed overdrive",
};
const DIRECT: Origin = Origin {
    key: "GEAR-10D",
    status: Status::Printed,
    source: "A national laboratory's vehicle simulator, data of 1998: ten-speed direct",
};
const THIRD: Origin = Origin {
    key: "CTRL-10",
    status: Status::Printed,
    source: "An operator's handbook: without an engine brake third gear, 10 mph at 2,000/min; hill and mass are not stated",
};
const SMALL: Origin = Origin {
    key: "MOTOR-2",
    status: Status::Declared,
    source: "Nominal friction torque of a 6.7 L engine, warm, as its control unit states it",
};
const LARGE: Origin = Origin {
    key: "MOTOR-3",
    status: Status::Declared,
    source: "Torque of a heavy engine with the fuel off, as its control unit states it in an open record of driving; its displacement is not known",
};
const HISTORY: Origin = Origin {
    key: "RR-HIST",
    status: Status::Printed,
    source: "A national research council's table of trucks by age: rolling resistance 0.0068 in the middle of the 2000s, 0.0055 for the best, 0.0045 as a goal",
};
const POWER: Origin = Origin {
    key: "PM-CN",
    status: Status::Printed,
    source: "An abstract of 2021: 5.2 kW/t for six axles and 49 t, 8.3 kW/t for the design truck of the same country",
};
const LOAD: Origin = Origin {
    key: "ROAD-LOAD",
    status: Status::Secondary,
    source: "A doctoral data set's summary: 117 kW in the mean of both ways from the engine of about 30 t at 28.8 m/s, 30 to 46 m behind another truck",
};

/// The largest difference of any ratio.
fn apart(ours: &[f64], theirs: &[f64]) -> f64 {
    let largest = ours.iter().zip(theirs).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
    if ours.len() == theirs.len() { largest } else { f64::NAN }
}

pub(super) fn ten_overdrive() -> Vec<Row> {
    let theirs = [12.80, 9.25, 6.76, 4.90, 3.58, 2.61, 1.89, 1.38, 1.00, 0.73];
    let ours = apart(&gear_sets::TEN_OVERDRIVE, &theirs);
    vec![OVERDRIVE.row(
        "Largest difference of a ratio of the ten-speed overdrive set",
        "",
        near(0.0, 1e-9),
        ours,
    )]
}

pub(super) fn ten_direct() -> Vec<Row> {
    let theirs = [14.78, 11.00, 8.17, 6.00, 4.46, 3.31, 2.46, 1.83, 1.34, 1.00];
    let ours = apart(&gear_sets::TEN_DIRECT, &theirs);
    vec![DIRECT.row("Largest difference of a ratio of the ten-speed direct set", "", near(0.0, 1e-9), ours)]
}

/// The tolerance is half a step to the neighbouring gears, since axle and tyres are not stated.
///
/// # Panics
/// Never: the gear set has ten gears.
pub(super) fn third_gear() -> Vec<Row> {
    let truck = preset(Preset::FiveAxle36);
    let third = truck.gears().nth(2).expect("ten gears");
    let ours = truck.road_speed(third, RevPerMin(2_000.0)).0 / MPH;
    vec![THIRD.row("Speed of the 36 t combination in third gear at 2,000/min", "mph", near(10.0, 1.7), ours)]
}

/// Motoring torque by our fit, N·m.
fn motoring(litres: f64, rpm: f64) -> f64 {
    let mut spec = Preset::FiveAxle36.spec();
    spec.displacement_l = litres;
    let speed = RevPerMin(rpm);
    truck(spec).motoring_power(speed).0 / speed.radians_per_second()
}

/// The tolerance is that of MOTOR-3, 12 %. The fit is of a larger engine, and low for a small one, which is
/// the cautious side.
pub(super) fn motoring_of_a_small_engine() -> Vec<Row> {
    [
        (1_200.0, 122.0, Some(-33.5)),
        (1_300.0, 133.0, Some(-39.5)),
        (1_500.0, 144.0, Some(-38.8)),
        (1_600.0, 155.0, Some(-43.1)),
    ]
    .map(|(rpm, torque, known)| {
        let what = format!("Motoring torque of 6.7 L at {}/min", number(rpm, 0));
        SMALL.row(what, "N·m", near_or_known(torque, 0.12 * torque, known, 0.5), motoring(6.7, rpm))
    })
    .to_vec()
}

/// Declared in steps of 28 N·m.
pub(super) fn motoring_of_a_large_engine() -> Vec<Row> {
    [
        (1_200.0, 169.0),
        (1_600.0, 239.0),
        (1_700.0, 243.0),
        (1_800.0, 252.0),
        (2_000.0, 280.0),
        (2_100.0, 308.0),
    ]
    .map(|(rpm, torque)| {
        let what = format!("Motoring torque of 12.7 L at {}/min", number(rpm, 0));
        LARGE.row(what, "N·m", near(torque, 0.12 * torque), motoring(12.7, rpm))
    })
    .to_vec()
}

/// A lower coefficient is the cautious side on a descent.
pub(super) fn rolling_by_age() -> Vec<Row> {
    let coefficient = |kind: &Preset| kind.spec().rolling_resistance;
    let most = Preset::ALL.iter().map(coefficient).fold(0.0, f64::max);
    let least = Preset::ALL.iter().map(coefficient).fold(1.0, f64::min);
    let of = |what: &str, ours| HISTORY.row(what, "", Expected::Between(0.0045, 0.0068), ours);
    vec![
        of("Highest rolling resistance of a preset", most),
        of("Lowest rolling resistance of a preset", least),
    ]
}

pub(super) fn power_for_mass() -> Vec<Row> {
    [Preset::FiveAxle40, Preset::BDouble]
        .map(|kind| {
            let truck = preset(kind);
            let ours = rated_power(&truck).0 / truck.mass().0;
            POWER.row(
                format!("{}: rated power for mass", kind.spec().name),
                "kW/t",
                Expected::Between(5.2, 8.3),
                ours,
            )
        })
        .to_vec()
}

/// At the wheels. Theirs includes the engine's auxiliaries and the other truck's wake.
pub(super) fn load_of_the_road() -> Vec<Row> {
    let mut spec = Preset::FiveAxle36.spec();
    spec.gross_mass_kg = 30_000.0;
    spec.drag_area_m2 = 5.0;
    spec.rolling_resistance = 0.0055;
    let (truck, day) = (truck(spec), standard_day());
    let trip = Trip { truck: &truck, day: &day };
    let speed = MetresPerSecond(28.8);
    let power = -(trip.demand(speed, Grade(0.0), trip.air(Metres(0.0))) * speed).0 / 1e3;
    let what = "Power at the wheels of 30 t, 5 m² of drag area, coefficient 0.0055, at 28.8 m/s";
    vec![LOAD.row(what, "kW", near(117.0, 0.15 * 117.0), power)]
}
