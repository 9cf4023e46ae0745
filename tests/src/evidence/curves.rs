//! CURVE and ROLLOVER: radius, side friction and tipping speed against printed figures.

use super::{Origin, Row, Status, near};
use crate::trucks::{FOOT, MPH};
use solver::motion::{curve_radius, design_side_friction, tipping_speed};
use solver::units::MetresPerSecond;

const FRICTION: Origin = Origin {
    key: "CURVE",
    status: Status::Printed,
    source: "A highway engineering handbook, table 2.6: side friction by design speed",
};
const RADIUS: Origin = Origin {
    key: "CURVE",
    status: Status::Printed,
    source: "Worked examples in two public highway manuals: R = V²/(15·(e + f)) and V²/(127·(e + f))",
};
const STATIC: Origin = Origin {
    key: "ROLLOVER",
    status: Status::Computed,
    source: "New Zealand vehicle rule: static threshold 0.35 g printed, speeds computed from √(g·R·SRT)",
};
const DYNAMIC: Origin = Origin {
    key: "ROLLOVER",
    status: Status::Computed,
    source: "SAE 2003-01-3385, abstract: dynamic threshold about 25 % lower printed, speed computed from √(g·R·SRT)",
};

/// Side friction from the table, constant beyond its ends, and least radius. The manuals round the constant:
/// 15 for 14.97 and 127 for 127.1. The tolerance is that rounding.
pub(super) fn friction_and_radius() -> Vec<Row> {
    let friction = |(mph, friction, beyond): (f64, f64, &str)| {
        let ours = design_side_friction(MetresPerSecond(mph * MPH));
        FRICTION.row(
            format!("Side friction that roads are designed for at {mph} mph{beyond}"),
            "",
            near(friction, 1e-9),
            ours,
        )
    };
    let table = [
        (20.0, 0.27, ""),
        (30.0, 0.20, ""),
        (40.0, 0.16, ""),
        (50.0, 0.14, ""),
        (55.0, 0.13, ""),
        (60.0, 0.12, ""),
        (65.0, 0.11, ""),
        (70.0, 0.10, ""),
        (5.0, 0.27, ", below the table: its first figure"),
        (90.0, 0.10, ", above the table: its last figure"),
    ];
    let mut rows = table.map(friction).to_vec();
    let feet = curve_radius(MetresPerSecond(70.0 * MPH), 0.08, 0.10) / FOOT;
    let metres = curve_radius(MetresPerSecond::from_kmh(100.0), 0.08, 0.12);
    rows.extend([
        RADIUS.row(
            "Least radius at 70 mph, superelevation 8 %, side friction 0.10",
            "ft",
            near(1_814.8, 1_814.8 * 0.003),
            feet,
        ),
        RADIUS.row(
            "Least radius at 100 km/h, superelevation 8 %, side friction 0.12",
            "m",
            near(394.0, 0.6),
            metres,
        ),
    ]);
    rows
}

/// Radius, m; threshold, g, in words and as a number; speed, km/h, to a tenth.
pub(super) fn tipping() -> Vec<Row> {
    let row = |(origin, radius, words, threshold, kmh): (Origin, f64, &str, f64, f64)| {
        let what =
            format!("Speed at which a truck with a threshold of {words} tips on a flat curve of {radius} m");
        origin.row(what, "km/h", near(kmh, 0.1), tipping_speed(radius, threshold).kmh())
    };
    [
        (STATIC, 100.0, "0.35 g", 0.35, 66.7),
        (STATIC, 50.0, "0.35 g", 0.35, 47.2),
        (DYNAMIC, 100.0, "0.35 g less a quarter", 0.75 * 0.35, 57.8),
    ]
    .map(row)
    .to_vec()
}
