//! Random hills, each with one thing in it that may mislead a plan.

use super::built::tangent;
use super::{Alignment, Bend, Chance, Plan, Tangent, TrueRoad};

/// The feature of a hill.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hill {
    /// Random grades, with bends and hairpins.
    Random,
    /// An even hill with steep pitches.
    Pitches,
    /// Steps with nearly level road between.
    Stairs,
    /// Long and mild, then short and steep.
    MildThenSteep,
    /// Two hills with 200 to 300 m between.
    Relief,
    /// A short steep pitch at the foot.
    SteepFoot,
    /// Down, up again at once, and on down.
    Sag,
}

impl Hill {
    /// All features.
    pub const ALL: [Self; 7] = [
        Self::Random,
        Self::Pitches,
        Self::Stairs,
        Self::MildThenSteep,
        Self::Relief,
        Self::SteepFoot,
        Self::Sag,
    ];

    /// A road with such a hill, between 900 m and 900 m of nearly level road.
    #[must_use]
    pub fn road(self, seed: u64) -> TrueRoad {
        let mut chance = Chance::new(seed);
        let inner = match self {
            Self::Random => return TrueRoad::random(seed, 9_000.0),
            Self::Pitches => pitches(&mut chance),
            Self::Stairs => stairs(&mut chance),
            Self::MildThenSteep => mild_then_steep(&mut chance),
            Self::Relief => relief(&mut chance),
            Self::SteepFoot => steep_foot(&mut chance),
            Self::Sag => sag(&mut chance),
        };
        let mut tangents = vec![tangent(900.0, -0.2, chance.between(60.0, 200.0))];
        tangents.extend(inner);
        tangents.push(tangent(900.0, -0.2, 100.0));
        let start_m = chance.between(600.0, 1_900.0);
        let bends = vec![Bend::straight(1e6)];
        let plan = Plan { lat_deg: -40.0, lon_deg: -20.0, heading_deg: chance.between(0.0, 360.0), bends };
        TrueRoad { alignment: Alignment::new(start_m, &tangents), plan }
    }
}

fn down(chance: &mut Chance, length_m: (f64, f64), percent: (f64, f64)) -> Tangent {
    let curve_m = chance.between(50.0, 120.0);
    tangent(chance.between(length_m.0, length_m.1), -chance.between(percent.0, percent.1), curve_m)
}

fn pitches(chance: &mut Chance) -> Vec<Tangent> {
    let count = 2 + (chance.bits() % 4) as usize;
    let percent = chance.between(3.0, 6.0);
    (0..count)
        .flat_map(|_| {
            let even = down(chance, (500.0, 1_500.0), (percent, percent));
            [even, down(chance, (100.0, 400.0), (7.0, 14.0))]
        })
        .collect()
}

fn stairs(chance: &mut Chance) -> Vec<Tangent> {
    let count = 5 + (chance.bits() % 8) as usize;
    let (steep, between) = (chance.between(6.0, 12.0), chance.between(-0.5, 2.0));
    (0..count)
        .flat_map(|_| {
            let step = down(chance, (150.0, 400.0), (steep, steep));
            [step, down(chance, (100.0, 300.0), (between, between))]
        })
        .collect()
}

fn mild_then_steep(chance: &mut Chance) -> Vec<Tangent> {
    vec![down(chance, (2_000.0, 7_000.0), (1.5, 3.5)), down(chance, (500.0, 1_500.0), (7.0, 12.0))]
}

fn relief(chance: &mut Chance) -> Vec<Tangent> {
    vec![
        down(chance, (1_000.0, 2_500.0), (5.0, 9.0)),
        down(chance, (200.0, 300.0), (-2.0, 0.5)),
        down(chance, (1_000.0, 2_500.0), (5.0, 9.0)),
    ]
}

fn steep_foot(chance: &mut Chance) -> Vec<Tangent> {
    vec![down(chance, (2_000.0, 6_000.0), (3.5, 6.0)), down(chance, (200.0, 400.0), (9.0, 13.0))]
}

fn sag(chance: &mut Chance) -> Vec<Tangent> {
    vec![
        down(chance, (200.0, 600.0), (8.0, 14.0)),
        down(chance, (200.0, 500.0), (-6.0, -3.0)),
        down(chance, (1_000.0, 2_500.0), (4.0, 7.0)),
    ]
}
