//! Rolling resistance in more detail than the plan has it: by speed, by load and by class.
//!
//! The plan takes one coefficient for the whole truck, as entered, at its low end. This module tells how far
//! that coefficient would move; no answer calls it.

use crate::trucks::MPH;
use solver::units::{MetresPerSecond, Newtons};

/// Construction of a tyre: the direction of its plies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Construction {
    /// Radial plies.
    Radial,
    /// Bias plies.
    Bias,
}

impl Construction {
    /// Coefficient at standstill, and its rise for every mile per hour (ROLL, from memory).
    fn at_rest_and_per_mph(self) -> (f64, f64) {
        match self {
            Self::Radial => (0.0041, 0.000_041),
            Self::Bias => (0.0066, 0.000_046),
        }
    }
}

/// Exponent of the coefficient over load: F grows with W^(1 − 0.1) (ROLL-LOAD, printed).
const LOAD_EXPONENT: f64 = -0.1;

/// Rolling resistance coefficient at a road speed: (a + b·V)·C_h with V in mph, a 0.0041 and b
/// 0.000041 for radial, 0.0066 and 0.000046 for bias tyres (ROLL, values from memory).
///
/// `surface_factor` is C_h: 1.0 on smooth concrete, 1.2 on worn or cold pavement, 1.5 on hot
/// asphalt. Meant for speeds from 0 to 30 m/s; nothing is cut off outside them.
#[must_use]
pub(super) fn rolling_at_speed(
    construction: Construction,
    surface_factor: f64,
    speed: MetresPerSecond,
) -> f64 {
    let (at_rest, per_mph) = construction.at_rest_and_per_mph();
    (at_rest + per_mph * (speed.0 / MPH)) * surface_factor
}

/// Rolling resistance coefficient of a tyre under `load`, from the coefficient measured under `test_load`:
/// C·(W/F)^(−0.1) (ROLL-LOAD, exponent printed).
///
/// A tyre under less load than in its test has a slightly larger coefficient. Both loads are above zero;
/// meant for loads from a quarter of the test load to twice it.
#[must_use]
pub(super) fn rolling_with_load(coefficient: f64, load: Newtons, test_load: Newtons) -> f64 {
    coefficient * libm::pow(load / test_load, LOAD_EXPONENT)
}

/// Class of rolling resistance of a heavy vehicle's tyre (LABEL: COM(2008)779, annex, printed).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum LabelClass {
    /// Up to 4.0 kg/t.
    A,
    /// 4.1 to 5.0 kg/t.
    B,
    /// 5.1 to 6.0 kg/t.
    C,
    /// 6.1 to 7.0 kg/t.
    D,
    /// 7.1 to 8.0 kg/t.
    E,
    /// 8.1 kg/t and more.
    F,
}

impl LabelClass {
    /// All classes, the lowest resistance first.
    const ALL: [Self; 6] = [Self::A, Self::B, Self::C, Self::D, Self::E, Self::F];

    /// The highest coefficient of the class: kg/t over 1,000. `None` for the last one, which is
    /// open above.
    #[must_use]
    pub(super) fn upper_bound(self) -> Option<f64> {
        match self {
            Self::A => Some(0.004),
            Self::B => Some(0.005),
            Self::C => Some(0.006),
            Self::D => Some(0.007),
            Self::E => Some(0.008),
            Self::F => None,
        }
    }

    /// The class of a rolling resistance coefficient. The table is in tenths of kg/t, so the coefficient is
    /// first rounded to tenths: 4.04 kg/t is A, 4.06 kg/t is B. NaN is F.
    #[must_use]
    pub(super) fn of(coefficient: f64) -> Self {
        let tenths = (coefficient * 1e4).round();
        let within = |class: &Self| class.upper_bound().is_some_and(|bound| tenths <= (bound * 1e4).round());
        Self::ALL.into_iter().find(within).unwrap_or(Self::F)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_class_ends_at_its_bound_and_the_next_begins_a_tenth_above() {
        for pair in LabelClass::ALL.windows(2) {
            let bound = pair[0].upper_bound().expect("only the last class is open");
            assert_eq!((LabelClass::of(bound), LabelClass::of(bound + 1e-4)), (pair[0], pair[1]));
            assert_eq!((LabelClass::of(bound + 4e-5), LabelClass::of(bound + 6e-5)), (pair[0], pair[1]));
        }
        assert_eq!(LabelClass::of(f64::NAN), LabelClass::F);
    }
}
