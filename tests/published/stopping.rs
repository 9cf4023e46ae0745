//! MFDD (UN Regulation 13) and stopping distances (FMVSS 121: 74 FR 37122, 76 FR 44829).

use solver::motion::{mean_deceleration, stopping_distance};
use solver::units::{Metres, MetresPerSecond};
use tests::evidence::check;
use tests::trucks::MPH;

const FOOT: f64 = 0.3048;

/// d_m = (v_b² − v_e²)/(25.92·(s_e − s_b)), v_b = 0.8·v_0, v_e = 0.1·v_0, in km/h and m.
#[test]
fn mean_fully_developed_deceleration() {
    for v0_kmh in [60.0, 80.0, 100.0] {
        let (vb, ve) = (0.8 * v0_kmh, 0.1 * v0_kmh);
        let way = 23.7;
        let printed = (vb * vb - ve * ve) / (25.92 * way);
        let speed = MetresPerSecond::from_kmh;
        check("MFDD", printed, mean_deceleration(speed(vb), speed(ve), Metres(way)), 1e-12);
    }
}

/// Distances are printed; the decelerations follow from them.
#[test]
fn stopping_distances_as_decelerations() {
    for (mph, feet, deceleration) in [
        (60.0, 250.0, 4.72),
        (60.0, 310.0, 3.81),
        (60.0, 355.0, 3.32),
        (60.0, 235.0, 5.02),
        (20.0, 32.0, 4.10),
    ] {
        let (speed, way) = (MetresPerSecond(mph * MPH), Metres(feet * FOOT));
        let ours = mean_deceleration(speed, MetresPerSecond(0.0), way);
        check(&format!("{mph} mph in {feet} ft"), deceleration, ours, 0.01);
        check("and back", way.0, stopping_distance(speed, ours).0, 1e-9);
    }
}

/// The stop in reserve is reckoned with brakes no better than the weakest of those.
#[test]
fn the_stop_in_reserve_is_gentler_than_any_of_them() {
    let weakest = mean_deceleration(MetresPerSecond(60.0 * MPH), MetresPerSecond(0.0), Metres(355.0 * FOOT));
    assert!(solver::constants::STOP_DECELERATION < weakest);
}
