//! The invented pass that the page opens with.

use super::built::{BuiltIn, tangent};
use super::{Alignment, Bend, Plan, TrueRoad};

/// Valley, climb, a summit with a short false flat, three steps down with two reliefs between.
fn alignment() -> Alignment {
    Alignment::new(
        412.0,
        &[
            tangent(1_400.0, 0.6, 160.0),
            tangent(1_900.0, 4.2, 140.0),
            tangent(2_300.0, 6.4, 160.0),
            tangent(700.0, 3.0, 120.0),
            tangent(2_600.0, 6.9, 180.0),
            tangent(900.0, 0.8, 160.0),
            tangent(450.0, -1.6, 120.0),
            tangent(350.0, 0.4, 120.0),
            // First step.
            tangent(1_700.0, -5.2, 140.0),
            tangent(900.0, -6.6, 120.0),
            tangent(320.0, 0.6, 90.0),
            // Second step, with the steepest stretch.
            tangent(1_100.0, -6.1, 120.0),
            tangent(1_400.0, -8.1, 120.0),
            tangent(650.0, -5.4, 110.0),
            tangent(600.0, -0.5, 130.0),
            // Third step.
            tangent(1_500.0, -6.0, 140.0),
            tangent(1_300.0, -7.1, 140.0),
            tangent(1_100.0, -4.0, 180.0),
            tangent(900.0, -1.2, 160.0),
            tangent(1_930.0, -0.3, 160.0),
        ],
    )
}

/// Sweeping bends in the valleys, hairpins on both sides of the gap; in the open ocean.
fn plan() -> Plan {
    let mut bends =
        vec![Bend::straight(1_100.0), Bend::arc(420.0, 40.0), Bend::straight(800.0), Bend::arc(260.0, -55.0)];
    for k in 0..4 {
        let side = if k % 2 == 0 { 1.0 } else { -1.0 };
        bends.extend([
            Bend::straight(520.0),
            Bend::arc(120.0, side * 35.0),
            Bend::straight(310.0),
            Bend::arc(24.0, side * 168.0),
        ]);
    }
    bends.extend([
        Bend::straight(1_400.0),
        Bend::arc(300.0, 60.0),
        Bend::straight(900.0),
        Bend::arc(380.0, -70.0),
    ]);
    bends.extend([Bend::straight(1_300.0), Bend::arc(210.0, 50.0), Bend::straight(700.0)]);
    for k in 0..5 {
        let side = if k % 2 == 0 { -1.0 } else { 1.0 };
        bends.extend([
            Bend::straight(430.0),
            Bend::arc(150.0, side * 30.0),
            Bend::straight(260.0),
            Bend::arc(19.0, side * 172.0),
        ]);
    }
    bends.extend([
        Bend::straight(900.0),
        Bend::arc(340.0, 55.0),
        Bend::straight(1_200.0),
        Bend::arc(500.0, -60.0),
    ]);
    bends.push(Bend::straight(4_000.0));
    Plan { lat_deg: -36.4, lon_deg: -22.7, heading_deg: 70.0, bends }
}

/// The road that the page opens with.
#[must_use]
pub fn demo() -> BuiltIn {
    BuiltIn {
        file: "demo.gpx",
        name: "Kestrel Gap, eastbound",
        road: TrueRoad { alignment: alignment(), plan: plan() },
        spacing_m: 35.0,
        seed: 20_261,
        places: vec![
            (9_600.0, "Brake check area", "brake check"),
            (15_500.0, "Escape ramp", "escape ramp"),
            (22_600.0, "Lower Kestrel, signal", "village with a signal"),
        ],
    }
}
