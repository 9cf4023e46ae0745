//! The invented teaching roads of the page. On each of them one thing goes otherwise than is usually
//! believed. `tests/property/lessons.rs` checks that it does.

use super::built::{BuiltIn, tangent};
use super::{Alignment, Bend, Plan, TrueRoad};

/// What a teaching road shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lesson {
    /// A long grade that eases as if it were over, and goes on steeper.
    FalseFinish,
    /// Three equal steps with level road between: each finds the heat that the one before left in the brakes.
    ThreeSteps,
    /// Short and steep, with a town at the foot.
    ShortAndSteep,
    /// Gentle, and very long.
    LongAndGentle,
    /// Hairpins: the curves set the speed, not the grade.
    Hairpins,
}

impl Lesson {
    /// All lessons.
    pub const ALL: [Self; 5] =
        [Self::FalseFinish, Self::ThreeSteps, Self::ShortAndSteep, Self::LongAndGentle, Self::Hairpins];
}

/// A teaching road.
#[must_use]
pub fn lesson(lesson: Lesson) -> BuiltIn {
    match lesson {
        Lesson::FalseFinish => false_finish(),
        Lesson::ThreeSteps => three_steps(),
        Lesson::ShortAndSteep => short_and_steep(),
        Lesson::LongAndGentle => long_and_gentle(),
        Lesson::Hairpins => hairpins(),
    }
}

/// A straight and a bend for each entry: length and radius in metres, turn in degrees.
fn winding(bends: &[(f64, f64, f64)]) -> Vec<Bend> {
    let each = |&(straight_m, radius_m, turn_deg): &(f64, f64, f64)| {
        [Bend::straight(straight_m), Bend::arc(radius_m, turn_deg)]
    };
    bends.iter().flat_map(each).chain([Bend::straight(5_000.0)]).collect()
}

fn false_finish() -> BuiltIn {
    let alignment = Alignment::new(
        640.0,
        &[
            tangent(900.0, 1.5, 160.0),
            tangent(700.0, 0.3, 160.0),
            tangent(4_200.0, -4.2, 180.0),
            // It looks as if it were over.
            tangent(460.0, -0.3, 120.0),
            tangent(1_300.0, -4.8, 140.0),
            tangent(1_000.0, -7.2, 140.0),
            tangent(700.0, -3.6, 180.0),
            tangent(1_400.0, -0.4, 160.0),
        ],
    );
    let bends = winding(&[
        (700.0, 420.0, 35.0),
        (1_000.0, 360.0, -45.0),
        (900.0, 480.0, 40.0),
        (1_300.0, 520.0, -30.0),
        (1_100.0, 380.0, 40.0),
        (900.0, 420.0, -35.0),
    ]);
    BuiltIn {
        file: "lesson-false-finish.gpx",
        name: "Lornet Bank, northbound",
        road: TrueRoad { alignment, plan: Plan { lat_deg: -37.2, lon_deg: -23.4, heading_deg: 15.0, bends } },
        spacing_m: 25.0,
        seed: 31_001,
        places: vec![
            (1_300.0, "Lornet Top, brake check", "brake check"),
            (7_700.0, "Lornet escape ramp", "escape ramp"),
            (9_700.0, "Lornet Mill", "village"),
        ],
    }
}

fn three_steps() -> BuiltIn {
    let step = [tangent(3_400.0, -7.4, 140.0), tangent(1_200.0, 0.0, 140.0)];
    let mut tangents = vec![tangent(700.0, 2.0, 160.0), tangent(500.0, 0.0, 140.0)];
    tangents.extend(step.iter().chain(&step).chain(&step));
    let bends = winding(&[
        (900.0, 500.0, 30.0),
        (1_200.0, 450.0, -40.0),
        (1_400.0, 480.0, 35.0),
        (1_300.0, 520.0, -35.0),
        (1_500.0, 460.0, 30.0),
    ]);
    BuiltIn {
        file: "lesson-three-steps.gpx",
        name: "Sallow Stairs, southbound",
        road: TrueRoad {
            alignment: Alignment::new(960.0, &tangents),
            plan: Plan { lat_deg: -37.6, lon_deg: -24.1, heading_deg: 175.0, bends },
        },
        spacing_m: 25.0,
        seed: 31_002,
        places: vec![
            (1_000.0, "Sallow Head, brake check", "brake check"),
            (10_300.0, "Sallow escape ramp", "escape ramp"),
            (11_600.0, "Sallow Foot, junction", "junction"),
        ],
    }
}

fn short_and_steep() -> BuiltIn {
    let alignment = Alignment::new(
        210.0,
        &[
            tangent(1_700.0, 0.6, 160.0),
            tangent(700.0, 1.0, 360.0),
            tangent(1_500.0, -9.8, 360.0),
            tangent(2_100.0, -0.3, 160.0),
        ],
    );
    let bends = winding(&[(800.0, 350.0, 30.0), (700.0, 300.0, -35.0), (900.0, 260.0, 30.0)]);
    BuiltIn {
        file: "lesson-short-and-steep.gpx",
        name: "Quill Hill, down into Quillbridge",
        road: TrueRoad {
            alignment,
            plan: Plan { lat_deg: -38.0, lon_deg: -23.0, heading_deg: 300.0, bends },
        },
        spacing_m: 25.0,
        seed: 31_003,
        places: vec![
            (2_000.0, "Quill Top, lay-by", "parking"),
            (3_850.0, "Quillbridge", "town"),
            (4_050.0, "Market Cross, signal", "signal"),
        ],
    }
}

fn long_and_gentle() -> BuiltIn {
    let alignment = Alignment::new(
        930.0,
        &[
            tangent(800.0, 1.0, 200.0),
            tangent(5_200.0, -4.0, 300.0),
            tangent(4_600.0, -4.1, 300.0),
            tangent(5_400.0, -4.0, 300.0),
            tangent(1_600.0, -0.2, 240.0),
        ],
    );
    let bends = winding(&[
        (1_500.0, 900.0, 30.0),
        (2_200.0, 1_100.0, -35.0),
        (2_400.0, 950.0, 40.0),
        (2_000.0, 1_200.0, -30.0),
        (2_300.0, 1_000.0, 35.0),
    ]);
    BuiltIn {
        file: "lesson-long-and-gentle.gpx",
        name: "Wendle Vale, westbound",
        road: TrueRoad {
            alignment,
            plan: Plan { lat_deg: -38.4, lon_deg: -24.0, heading_deg: 265.0, bends },
        },
        spacing_m: 25.0,
        seed: 31_004,
        places: vec![
            (600.0, "Wendle Head, brake check", "brake check"),
            (13_000.0, "Wendle escape ramp", "escape ramp"),
            (16_600.0, "Wendle Ford", "village"),
        ],
    }
}

fn hairpins() -> BuiltIn {
    let alignment = Alignment::new(
        760.0,
        &[tangent(1_000.0, 1.0, 160.0), tangent(5_600.0, -4.5, 200.0), tangent(1_400.0, -0.3, 160.0)],
    );
    let mut bends = vec![Bend::straight(1_100.0)];
    for (k, straight_m) in
        [430.0, 360.0, 480.0, 400.0, 450.0, 380.0, 460.0, 420.0, 390.0, 440.0].into_iter().enumerate()
    {
        let side = if k % 2 == 0 { 1.0 } else { -1.0 };
        bends.extend([Bend::straight(straight_m), Bend::arc(15.0, side * 172.0)]);
    }
    bends.push(Bend::straight(4_000.0));
    BuiltIn {
        file: "lesson-hairpins.gpx",
        name: "Corbel Turns, downhill",
        road: TrueRoad { alignment, plan: Plan { lat_deg: -36.9, lon_deg: -24.8, heading_deg: 90.0, bends } },
        spacing_m: 20.0,
        seed: 31_005,
        places: vec![(700.0, "Corbel Top, brake check", "brake check"), (6_900.0, "Corbel", "village")],
    }
}
