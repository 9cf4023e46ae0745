//! Retarders: declarations of control units, and figures that manuals and the trade press print.

use super::{Expected, Origin, Row, Status, near, near_or_known, number};
use crate::trucks::{preset, truck};
use solver::truck::{
    Ambient, EngineBrake, EngineCurve, Gear, Preset, Retarder, RetarderKind, Stage, Truck, TruckSpec, Warmth,
};
use solver::units::RevPerMin;

const fn declared(key: &'static str, source: &'static str) -> Origin {
    Origin { key, status: Status::Declared, source }
}

const A: Origin = declared(
    "RET-A",
    "Compression release of a six-cylinder heavy engine of 2015, 12.9 L inferred: its control unit's own curve, in a university's data-bus logs of 2020 and 2021",
);
const B: Origin = declared(
    "RET-B",
    "Compression release of a heavy engine of 2,524 N·m: its control unit's own curve, in a university's data-bus log of 2021",
);
const C: Origin = declared(
    "RET-C",
    "Compression release of a heavy truck, engine not known: its control unit's own curve, frames printed in a test file of an open tool",
);
const D: Origin = declared(
    "RET-D",
    "Exhaust brake of a medium engine, 6.7 L inferred: its control unit's own curve, in two of a university's data-bus logs",
);
const SHAPE: Origin = declared(
    "RET-SHAPE",
    "Mean of the declared curves of RET-A, RET-B and RET-C, torque straight between their points; the shape of ours is made of it",
);
const IDLE: Origin = declared("RET-IDLE", "Declared curve of RET-A: 28 % of its best torque at 600/min");
const EXHAUST: Origin =
    declared("RET-EXH", "Declared curve of RET-D: local exponents of power 1.15, 1.34 and 1.45");
const LITRE: Origin = Origin {
    key: "RET-LITRE",
    status: Status::Printed,
    source: "A maker's brochure of two engines, with RET-A and RET-D: 19.5 to 26.1 kW/L by compression release, 11.7 to 15.8 by an exhaust flap",
};
const RATED: Origin = Origin {
    key: "RET-RATED",
    status: Status::Printed,
    source: "A truck driver's manual: on descents above 1,800/min and below rated speed",
};
const FLUID: Origin = Origin {
    key: "RET-HYD",
    status: Status::Secondary,
    source: "Handbook text in two languages and lecture slides: nearly constant torque over a wide range of shaft speed, a steep fall a little below 1,000/min",
};
const DERATE: Origin = Origin {
    key: "HYD-DERATE",
    status: Status::Printed,
    source: "An operator's manual of an automatic with a retarder at its output, section 4.3.1: hot oil takes capacity down to about 27 %",
};
const TORQUE: Origin = Origin {
    key: "HYD-TORQUE",
    status: Status::Printed,
    source: "Trade press: secondary retarders of 3,500 N·m at most",
};
const EDDY: Origin = Origin {
    key: "RET-EM",
    status: Status::Printed,
    source: "An engineering journal, 2011, 12(4) 611, abstract: torque of an electromagnetic retarder obviously lower in continuous braking",
};
const STAGES: Origin = Origin {
    key: "STAGE-2SW",
    status: Status::Printed,
    source: "An army's technical manual: two switches for two, four and six cylinders; an operator's manual: a column switch of 40, 80 and 100 %",
};
const CUT_OUT: Origin = Origin {
    key: "CUT-2",
    status: Status::Printed,
    source: "Two makers: engine brake off below 900/min, exhaust brake off below 1,000/min",
};

/// Share of full power within which a shape must lie.
const WITHIN: f64 = 0.09;
/// How far records of differences are rounded, shares of power.
const ROUNDING: f64 = 0.005;
/// Engine speed at which our shape is matched to the declared power, 1/min.
const PINNED: f64 = 2_100.0;

/// The 36 t combination with a compression-release brake of our shape.
fn released(peak_power_kw: f64, cut_out_rpm: f64) -> Truck {
    let curve = EngineCurve { peak_power_kw, peak_rpm: PINNED, exponent: None, cut_out_rpm };
    with(Retarder::Engine { brake: EngineBrake::CompressionRelease(curve), stages: vec![1.0] })
}

fn with(retarder: Retarder) -> Truck {
    truck(TruckSpec { retarder, ..Preset::FiveAxle36.spec() })
}

fn begun_with(kind: RetarderKind) -> Truck {
    let mut spec = Preset::FiveAxle36.spec();
    spec.take_retarder(kind);
    truck(spec)
}

fn full_kw(truck: &Truck, rpm: f64) -> f64 {
    truck.retarding_power(truck.full_stage(), RevPerMin(rpm)).0 / 1e3
}

/// Speed, 1/min, power, kW, and the known difference.
type Point = (f64, f64, Option<f64>);

/// Ours matched to the declared power at one speed; the other powers as shares of that.
fn shares(origin: Origin, name: &str, truck: &Truck, pinned_kw: f64, points: &[Point]) -> Vec<Row> {
    let row = |&(rpm, kw, known): &Point| {
        let what =
            format!("{name}: power at {}/min as a share of that which ours is pinned to", number(rpm, 0));
        let expected = near_or_known(kw / pinned_kw, WITHIN, known, ROUNDING);
        origin.row(what, "", expected, full_kw(truck, rpm) / pinned_kw)
    };
    points.iter().map(row).collect()
}

pub(super) fn heavy_of_2015() -> Vec<Row> {
    let points = [(600.0, 25.9, None), (1_100.0, 71.3, None), (1_500.0, 204.5, None), (2_300.0, 336.5, None)];
    shares(A, "Compression release, 328 kW at 2,100/min", &released(328.3, 600.0), 328.3, &points)
}

pub(super) fn strong_heavy() -> Vec<Row> {
    let points = [(700.0, 10.6, None), (1_600.0, 292.0, None), (2_500.0, 537.0, Some(-0.252))];
    shares(B, "Compression release, 419 kW at 2,100/min", &released(419.0, 700.0), 419.0, &points)
}

pub(super) fn heavy_not_identified() -> Vec<Row> {
    let points = [
        (1_100.0, 65.7, None),
        (1_445.0, 138.6, None),
        (1_900.0, 222.2, None),
        (2_135.0, 239.7, None),
        (2_480.0, 249.6, None),
    ];
    shares(C, "Compression release, 237 kW at 2,100/min", &released(237.2, 1_100.0), 237.2, &points)
}

/// The exhaust brake assumed for an engine, with this peak.
fn exhaust(peak_power_kw: f64, peak_rpm: f64) -> Truck {
    let mut spec = Preset::FiveAxle36.spec();
    spec.displacement_l = 6.7;
    spec.take_retarder(RetarderKind::ExhaustValve);
    if let Retarder::Engine { brake: EngineBrake::ExhaustValve(curve), .. } = &mut spec.retarder {
        *curve = EngineCurve { peak_power_kw, peak_rpm, cut_out_rpm: 700.0, exponent: curve.exponent };
    }
    truck(spec)
}

pub(super) fn medium_with_exhaust_brake() -> Vec<Row> {
    let points = [(775.0, 23.7, None), (1_882.0, 65.6, None), (2_448.0, 93.3, None)];
    shares(D, "Exhaust brake, 102 kW at 2,600/min", &exhaust(101.8, 2_600.0), 101.8, &points)
}

/// Our exponent between the two ends of that curve.
pub(super) fn exponent_of_exhaust() -> Vec<Row> {
    let truck = exhaust(101.8, 2_600.0);
    let between = |low: f64, high: f64| {
        let ours = libm::log(full_kw(&truck, high) / full_kw(&truck, low)) / libm::log(high / low);
        let what = format!(
            "Exponent of an exhaust brake's power from {} to {}/min",
            number(low, 0),
            number(high, 0)
        );
        EXHAUST.row(what, "", Expected::Between(1.1, 1.5), ours)
    };
    vec![between(775.0, 1_882.0), between(1_882.0, 2_448.0), between(2_448.0, 2_600.0)]
}

/// From 1,200 to 2,000/min near the mean, at 2,300 not above the strongest of the three.
pub(super) fn shape() -> Vec<Row> {
    let truck = released(300.0, 850.0);
    let share = |rpm: f64| full_kw(&truck, rpm) / 300.0;
    let means = [(1_200.0, 0.323), (1_400.0, 0.513), (1_600.0, 0.693), (1_800.0, 0.820), (2_000.0, 0.947)];
    let mut rows = means
        .map(|(rpm, mean)| {
            let what = format!("Compression release at {}/min over that at 2,100", number(rpm, 0));
            SHAPE.row(what, "", near(mean, WITHIN), share(rpm))
        })
        .to_vec();
    rows.push(SHAPE.row(
        "Compression release at 2,300/min over that at 2,100",
        "",
        Expected::AtMost(1.14),
        share(2_300.0),
    ));
    rows
}

/// The preset counts on no more than the engine that holds best there.
pub(super) fn near_idle() -> Vec<Row> {
    let truck = begun_with(RetarderKind::CompressionRelease);
    let torque = |rpm: f64| full_kw(&truck, rpm) / rpm;
    let best = [1_500.0, 1_700.0, 1_900.0, 2_100.0].map(torque).into_iter().fold(0.0, f64::max);
    let what = "Torque of the 36 t combination's engine brake at 600/min over its best";
    vec![IDLE.row(what, "", Expected::AtMost(0.28), torque(600.0) / best)]
}

/// Assumed power for each engine size among the presets.
pub(super) fn power_by_litre() -> Vec<Row> {
    let mut rows = Vec::new();
    for (kind, low, high, name) in [
        (RetarderKind::CompressionRelease, 19.5, 26.1, "compression release"),
        (RetarderKind::ExhaustValve, 11.7, 15.8, "exhaust brake"),
    ] {
        for preset in [Preset::FiveAxle36, Preset::Rigid18, Preset::BDouble] {
            let mut spec = preset.spec();
            spec.take_retarder(RetarderKind::None);
            spec.take_retarder(kind);
            let (litres, rpm) = (spec.displacement_l, spec.highest_rpm);
            let what = format!("{name} that {litres} L begin with, for each litre");
            rows.push(LITRE.row(
                what,
                "kW/L",
                Expected::Between(low, high),
                full_kw(&truck(spec), rpm) / litres,
            ));
        }
    }
    rows
}

/// Engine speeds told on an even grade.
pub(super) fn engine_speed_told() -> Vec<Row> {
    let row = |(kind, percent): (Preset, f64)| {
        let truck = preset(kind);
        let (rated, name) = (truck.highest_engine_speed().0, &truck.spec().name);
        let ours = super::downgrades::engine_speed(&truck, percent);
        let what = format!("{name}: engine speed told on {percent} %");
        RATED.row(what, "1/min", Expected::Between(1_800.0, rated), ours)
    };
    [(Preset::FiveAxle36, 6.0), (Preset::FiveAxle40, 7.0), (Preset::BDouble, 6.0), (Preset::Tipper26, 8.0)]
        .map(row)
        .to_vec()
}

/// Torque on the shaft at a shaft speed in direct gear, N·m.
///
/// # Panics
/// Never: the truck has a direct gear.
fn shaft_torque(truck: &Truck, shaft_rpm: f64, warmth: Warmth) -> f64 {
    let direct = |gear: &Gear| (truck.ratio(*gear) - 1.0).abs() < 1e-9;
    let gear = truck.gears().find(direct).expect("a direct gear");
    let speed = truck.road_speed(gear, RevPerMin(shaft_rpm));
    truck.shaft_torque(gear, truck.full_stage(), speed, Ambient::STANDARD, warmth)
}

/// Constant within 10 % above 1,200/min, less than half at 500. Our rotor turns twice as fast as the shaft,
/// and above 1,230/min its power bounds it.
pub(super) fn torque_by_shaft_speed() -> Vec<Row> {
    let truck = begun_with(RetarderKind::Hydrodynamic);
    let cold = |rpm: f64| shaft_torque(&truck, rpm, Warmth::COLD);
    let best = [600.0, 900.0, 1_200.0].map(cold).into_iter().fold(0.0, f64::max);
    let flat = [(1_200.0, None), (1_500.0, Some(-0.181)), (1_900.0, Some(-0.354))].map(|(rpm, known)| {
        let what =
            format!("Hydrodynamic retarder: torque at {}/min of the shaft over its best", number(rpm, 0));
        FLUID.row(what, "", near_or_known(1.0, 0.1, known, ROUNDING), cold(rpm) / best)
    });
    let slow = near_or_known(0.25, 0.25, Some(0.75), ROUNDING);
    let what = "Hydrodynamic retarder: torque at 500/min of the shaft over its best, less than half";
    flat.into_iter().chain([FLUID.row(what, "", slow, cold(500.0) / best)]).collect()
}

/// The least share of all engine speeds in direct gear.
pub(super) fn sustained_share() -> Vec<Row> {
    let truck = begun_with(RetarderKind::Hydrodynamic);
    let shares = (0..=12)
        .map(|k| 900.0 + 100.0 * f64::from(k))
        .map(|rpm| shaft_torque(&truck, rpm, Warmth::SUSTAINED) / shaft_torque(&truck, rpm, Warmth::COLD));
    let least = shares.fold(1.0, f64::min);
    let what = "Hydrodynamic retarder: the least share of its full torque that it keeps for good";
    vec![DERATE.row(what, "", Expected::AtLeast(0.27), least)]
}

pub(super) fn largest_torque() -> Vec<Row> {
    let truck = begun_with(RetarderKind::Hydrodynamic);
    let best = [600.0, 900.0, 1_200.0].map(|rpm| shaft_torque(&truck, rpm, Warmth::COLD));
    let what = "Hydrodynamic retarder: torque that one begins with";
    vec![TORQUE.row(what, "N·m", Expected::AtMost(3_500.0), best.into_iter().fold(0.0, f64::max))]
}

pub(super) fn hot_and_cold() -> Vec<Row> {
    let truck = begun_with(RetarderKind::Electromagnetic);
    let at = |warmth| shaft_torque(&truck, 1_000.0, warmth);
    let what = "Electromagnetic retarder: torque in continuous braking over that from cold";
    vec![EDDY.row(what, "", Expected::LessThan(1.0), at(Warmth::SUSTAINED) / at(Warmth::COLD))]
}

/// Share of full retarding that a stage adds to the motoring engine.
fn added(truck: &Truck, stage: Stage) -> f64 {
    let speed = RevPerMin(1_800.0);
    let motoring = truck.motoring_power(speed);
    (truck.retarding_power(stage, speed) - motoring)
        / (truck.retarding_power(truck.full_stage(), speed) - motoring)
}

/// Stages by cylinders are the assumed ones; a column switch is entered.
pub(super) fn stages_by_switches() -> Vec<Row> {
    let cylinders = begun_with(RetarderKind::CompressionRelease);
    let mut spec = cylinders.spec().clone();
    if let Some(shares) = spec.shares_mut() {
        *shares = vec![0.4, 0.8, 1.0];
    }
    let column = truck(spec);
    let rows = |truck: &Truck, name: &str, shares: [f64; 3]| -> Vec<Row> {
        let stages = truck.stages().skip(1).zip(shares);
        let row = |(stage, share): (Stage, f64)| {
            let what = format!("{name}: share that stage {} adds", stage.number());
            STAGES.row(what, "", near(share, 1e-12), added(truck, stage))
        };
        stages.map(row).collect()
    };
    let mut all = rows(&cylinders, "Two, four and six cylinders", [1.0 / 3.0, 2.0 / 3.0, 1.0]);
    all.extend(rows(&column, "Column switch", [0.4, 0.8, 1.0]));
    all
}

/// Speed at which an assumed brake comes on, sought in steps of 10/min.
pub(super) fn cut_outs() -> Vec<Row> {
    let row = |kind: RetarderKind, name: &str, printed: f64| {
        let truck = begun_with(kind);
        let on = |rpm: &f64| {
            truck.retarding_power(truck.full_stage(), RevPerMin(*rpm)).0
                > truck.motoring_power(RevPerMin(*rpm)).0
        };
        let ours = (50..200).map(|k| f64::from(k) * 10.0).find(on).unwrap_or(f64::NAN);
        CUT_OUT.row(format!("Engine speed from which {name} holds"), "1/min", near(printed, 1e-9), ours)
    };
    vec![
        row(RetarderKind::CompressionRelease, "compression release", 900.0),
        row(RetarderKind::ExhaustValve, "an exhaust brake", 1_000.0),
    ]
}
