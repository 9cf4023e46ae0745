//! Inputs that are not known exactly, how far they may be off, and the points at which they are tried.

use serde::{Deserialize, Serialize};

/// An input with a spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Input {
    /// Grades, within what the road's heights allow.
    Grade,
    /// Gross mass, ± 5 %.
    Mass,
    /// Rolling resistance, ± 15 %.
    Rolling,
    /// Drag area, ± 10 %.
    Drag,
    /// Force of the retarder, ± 10 %.
    Retarder,
    /// Wind, ± 10 km/h.
    Wind,
    /// Brakes at the start, ± 15 K.
    BrakesAtStart,
    /// Cooling and capacity of the brakes, from half the cooling to the newer constants (GSRS-NEW): measured axles
    /// differ that much.
    Cooling,
}

impl Input {
    /// All inputs.
    pub const ALL: [Self; 8] = [
        Self::Grade,
        Self::Mass,
        Self::Rolling,
        Self::Drag,
        Self::Retarder,
        Self::Wind,
        Self::BrakesAtStart,
        Self::Cooling,
    ];
}

/// Runs of a study, and points of the lattice.
pub const RUNS: usize = 256;

/// Multiplier of the lattice.
const MULTIPLIER: usize = 21;

/// Numbers that a sample needs: one for each input, and one more for the grade.
const DIMENSIONS: usize = Input::ALL.len() + 1;

/// One sample: every input somewhere within its spread. All spreads but that of the grade are assumed, and
/// within a spread every value is equally likely.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sample {
    at: [f64; DIMENSIONS],
}

impl Sample {
    /// The sample with this number, below [`RUNS`]: a lattice rule, (k·21^j mod 256 + ½)/256 in the j-th
    /// dimension (Korobov's form). Each input alone takes 256 even steps. Of all multipliers, 21 keeps the
    /// points of every pair of inputs farthest apart (found by trying all). The sample is equal on every
    /// machine.
    pub(super) fn number(index: usize) -> Self {
        let mut factor = 1;
        let at = std::array::from_fn(|_| {
            let step = (index * factor + RUNS / 2) % RUNS;
            factor = factor * MULTIPLIER % RUNS;
            (step as f64 + 0.5) / RUNS as f64
        });
        Self { at }
    }

    /// Where the input lies within its spread, 0 to 1.
    pub(super) fn share(&self, input: Input) -> f64 {
        self.at[input as usize]
    }

    /// The second number of the grade.
    pub(super) fn wave_length_share(&self) -> f64 {
        self.at[DIMENSIONS - 1]
    }

    /// −1 to 1.
    fn side(&self, input: Input) -> f64 {
        2.0 * self.share(input) - 1.0
    }

    pub(super) fn mass(&self) -> f64 {
        1.0 + 0.05 * self.side(Input::Mass)
    }

    pub(super) fn rolling(&self) -> f64 {
        1.0 + 0.15 * self.side(Input::Rolling)
    }

    pub(super) fn drag(&self) -> f64 {
        1.0 + 0.10 * self.side(Input::Drag)
    }

    pub(super) fn retarder(&self) -> f64 {
        1.0 + 0.10 * self.side(Input::Retarder)
    }

    pub(super) fn wind_kmh(&self) -> f64 {
        10.0 * self.side(Input::Wind)
    }

    pub(super) fn brakes_at_start_k(&self) -> f64 {
        15.0 * self.side(Input::BrakesAtStart)
    }

    /// Place within the band of the brakes, −1 to 1, as [`crate::truck::Truck`] takes it.
    pub(super) fn cooling(&self) -> f64 {
        self.side(Input::Cooling)
    }

    /// Error of the grade at a distance, as a share of its half-width. It is a wave of random phase and of a
    /// random length from 1 to 16 km. So errors of neighbouring stretches belong together, and errors over a
    /// whole pass do not add up.
    pub(super) fn grade_error(&self, at_m: f64) -> f64 {
        let length = 1_000.0 * libm::exp2(4.0 * self.wave_length_share());
        let turns = at_m / length + self.share(Input::Grade);
        libm::sin(2.0 * std::f64::consts::PI * (turns - turns.floor()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn samples_fill_each_input_and_each_pair_evenly() {
        for first in Input::ALL {
            let mut counts = [0; 8];
            for k in 0..RUNS {
                counts[(Sample::number(k).share(first) * 8.0) as usize] += 1;
            }
            assert_eq!(counts, [32; 8], "{first:?}");
            for second in Input::ALL.into_iter().filter(|second| *second != first) {
                let mut counts = [0; 16];
                for k in 0..RUNS {
                    let sample = Sample::number(k);
                    let at = |input| (sample.share(input) * 4.0) as usize;
                    counts[4 * at(first) + at(second)] += 1;
                }
                assert!(
                    counts.iter().all(|count| (12..=20).contains(count)),
                    "{first:?} {second:?}: {counts:?}"
                );
            }
        }
    }
}
