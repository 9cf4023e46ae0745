//! ROLL, ROLL-LOAD and LABEL: rolling resistance by speed, by load and by class. The plan uses none of it
//! ([`super::NOT_USED`]).

use super::tyres::{Construction, LabelClass, rolling_at_speed, rolling_with_load};
use super::{Origin, Row, Status, near};
use crate::trucks::MPH;
use solver::units::{MetresPerSecond, Newtons};

const ROLL: Origin = Origin {
    key: "ROLL",
    status: Status::FromMemory,
    source: "An equation for truck tyres, quoted in a 1992 textbook of vehicle dynamics: radial (0.0041 + 0.000041·V)·C, bias (0.0066 + 0.000046·V)·C, V in mph",
};
const ROLL_LOAD: Origin = Origin {
    key: "ROLL-LOAD",
    status: Status::Computed,
    source: "EU heavy-vehicle CO2 regulation, generic data: exponent −0.1 of load over test load printed, figures computed from it",
};
const LABEL: Origin = Origin {
    key: "LABEL",
    status: Status::Printed,
    source: "COM(2008)779, annex: classes of rolling resistance of tyres for heavy vehicles",
};
/// The equation is exact, and so is the check, except for the arithmetic.
const ARITHMETIC: f64 = 1e-9;

/// Coefficient by tyre, surface and speed.
pub(super) fn by_speed() -> Vec<Row> {
    let row = |(construction, surface, mph, expected): (Construction, f64, f64, f64)| {
        let tyre = match construction {
            Construction::Radial => "radial",
            Construction::Bias => "bias",
        };
        let what =
            format!("Rolling resistance coefficient of {tyre} tyres at {mph} mph, surface factor {surface}");
        ROLL.row(
            what,
            "",
            near(expected, ARITHMETIC),
            rolling_at_speed(construction, surface, MetresPerSecond(mph * MPH)),
        )
    };
    use Construction::{Bias, Radial};
    [
        (Radial, 1.0, 0.0, 0.004_1),
        (Radial, 1.0, 30.0, 0.005_33),
        (Radial, 1.0, 60.0, 0.006_56),
        (Radial, 1.2, 60.0, 0.007_872),
        (Radial, 1.5, 60.0, 0.009_84),
        (Bias, 1.0, 0.0, 0.006_6),
        (Bias, 1.0, 30.0, 0.007_98),
        (Bias, 1.0, 60.0, 0.009_36),
        (Bias, 1.2, 60.0, 0.011_232),
        (Bias, 1.5, 60.0, 0.014_04),
    ]
    .map(row)
    .to_vec()
}

/// Coefficient of a tyre of 6 kg/t in its test, by load over test load. The factors are the inverse of that
/// ratio's tenth root.
pub(super) fn by_load() -> Vec<Row> {
    let row = |(share, words, factor): (f64, &str, f64)| {
        let test_load = Newtons(25_000.0);
        let ours = rolling_with_load(0.006, test_load * share, test_load) * 1e3;
        let what = format!("Rolling resistance of a tyre of 6 kg/t at {words} its test load");
        ROLL_LOAD.row(what, "kg/t", near(6.0 * factor, ARITHMETIC), ours)
    };
    [(0.5, "half of", 1.071_773_462_536), (1.0, "exactly", 1.0), (2.0, "twice", 0.933_032_991_537)]
        .map(row)
        .to_vec()
}

/// Where each class ends (its bound, and the coefficient at which sorting changes), and where the next
/// begins.
pub(super) fn label_classes() -> Vec<Row> {
    // Tenths of kg/t, as the table has them.
    let tenths =
        |class: LabelClass| (1..=150_u8).filter(move |t| LabelClass::of(f64::from(*t) * 1e-4) == class);
    let mut rows = Vec::new();
    for (class, first, last) in [
        (LabelClass::A, None, Some(4.0)),
        (LabelClass::B, Some(4.1), Some(5.0)),
        (LabelClass::C, Some(5.1), Some(6.0)),
        (LabelClass::D, Some(6.1), Some(7.0)),
        (LabelClass::E, Some(7.1), Some(8.0)),
        (LabelClass::F, Some(8.1), None),
    ] {
        let shown = |tenth: Option<u8>| tenth.map_or(f64::NAN, |t| f64::from(t) / 10.0);
        if let Some(first) = first {
            let ours = shown(tenths(class).next());
            rows.push(LABEL.row(
                format!("Least rolling resistance of class {class:?}"),
                "kg/t",
                near(first, ARITHMETIC),
                ours,
            ));
        }
        if let Some(last) = last {
            let ours = shown(tenths(class).next_back());
            let bound = class.upper_bound().map_or(f64::NAN, |bound| bound * 1e3);
            rows.extend([
                LABEL.row(
                    format!("Highest rolling resistance of class {class:?}"),
                    "kg/t",
                    near(last, ARITHMETIC),
                    ours,
                ),
                LABEL.row(
                    format!("Upper bound stated for class {class:?}"),
                    "kg/t",
                    near(last, ARITHMETIC),
                    bound,
                ),
            ]);
        }
    }
    rows
}
