//! MFDD (UN Regulation 13), stopping distances (FMVSS 121: 74 FR 37122, 76 FR 44829), and the
//! length of escape ramps (value from memory).

use super::{Expected, Origin, Row, Status, near, number};
use crate::trucks::{FOOT, MPH};
use solver::constants::STOP_DECELERATION;
use solver::motion::{ramp_length, stopping_distance};
use solver::units::{Grade, MetresPerSecond};

const MFDD: Origin = Origin {
    key: "MFDD",
    status: Status::Computed,
    source: "UN Regulation 13, definition of mean fully developed deceleration, printed: (v_b² − v_e²)/(25.92·(s_e − s_b))",
};
const STOP: Origin = Origin {
    key: "STOP",
    status: Status::Computed,
    source: "FMVSS 121 (74 FR 37122, 76 FR 44829): distances printed, decelerations computed from them",
};
const RAMP: Origin = Origin {
    key: "RAMP",
    status: Status::FromMemory,
    source: "AASHTO, geometric design of highways: L = V²/(254·(R + G)), from memory, figures computed",
};

/// d_m with v_b = 0.8·v_0, v_e = 0.1·v_0, in km/h and m, over the distance that our stop takes between the
/// two. The definition must give back the deceleration kept in reserve.
pub(super) fn mean_fully_developed() -> Vec<Row> {
    let row = |v0_kmh: f64| {
        let (vb, ve) = (0.8 * v0_kmh, 0.1 * v0_kmh);
        let to_stand = |kmh: f64| stopping_distance(MetresPerSecond::from_kmh(kmh), STOP_DECELERATION).0;
        let ours = (vb * vb - ve * ve) / (25.92 * (to_stand(vb) - to_stand(ve)));
        let what = format!(
            "Deceleration by that definition of our stop from {v0_kmh} km/h with {STOP_DECELERATION} m/s²"
        );
        MFDD.row(what, "m/s²", near(STOP_DECELERATION, 1e-12), ours)
    };
    [60.0, 80.0, 100.0].map(row).to_vec()
}

/// Distances of the required stops from their decelerations; the tolerance is their rounding. And the stop in
/// reserve is computed with brakes no better than the weakest of those.
pub(super) fn distances() -> Vec<Row> {
    let row = |(mph, feet, deceleration): (f64, f64, f64)| {
        let ours = stopping_distance(MetresPerSecond(mph * MPH), deceleration).0 / FOOT;
        let what = format!("Distance of a stop from {mph} mph with {deceleration:.2} m/s²");
        STOP.row(what, "ft", near(feet, feet * 0.005 / deceleration), ours)
    };
    let mut rows = [
        (60.0, 250.0, 4.72),
        (60.0, 310.0, 3.81),
        (60.0, 355.0, 3.32),
        (60.0, 235.0, 5.02),
        (20.0, 32.0, 4.10),
    ]
    .map(row)
    .to_vec();
    let fastest = 60.0 * MPH;
    let weakest = fastest * fastest / (2.0 * 355.0 * FOOT);
    rows.push(STOP.row(
        "Deceleration kept in reserve for one hard stop, over that of the gentlest stop asked for",
        "",
        Expected::LessThan(1.0),
        STOP_DECELERATION / weakest,
    ));
    rows
}

/// Escape ramps: speed km/h, resistance of the bed, grade, length in m to a tenth.
pub(super) fn ramps() -> Vec<Row> {
    let row = |(kmh, bed, grade, metres): (f64, f64, f64, f64)| {
        let ours = ramp_length(MetresPerSecond::from_kmh(kmh), bed, Grade(grade));
        let slope = number(grade * 100.0, 0);
        let what = format!("Length of an escape ramp for {kmh} km/h, bed resistance {bed}, grade {slope} %");
        RAMP.row(what, "m", near(metres, 0.1), ours.map_or(f64::NAN, |length| length.0))
    };
    [(140.0, 0.25, 0.05, 257.2), (130.0, 0.25, 0.0, 266.1), (145.0, 0.25, -0.02, 359.9)].map(row).to_vec()
}
