//! Figures held against sources outside the project: rows of data that tests assert and that a page can show.
//!
//! A [`Row`] is one figure of a source beside ours. [`KEYS`] names every check and the function that makes
//! its rows; `public/evidence.json` is written from these rows.

mod built_roads;
mod climbing;
mod cooling;
mod curves;
mod downgrade_temperature;
mod downgrades;
mod drums;
mod forces;
#[cfg(not(target_arch = "wasm32"))]
mod geodesic;
mod hills;
#[cfg(not(target_arch = "wasm32"))]
mod json;
mod keys;
mod regulation_13;
mod retarders;
mod rolling;
mod service_brakes;
mod stopping;
mod text;
mod trade;
mod tyres;
mod upgrades;
mod vehicles;

#[cfg(not(target_arch = "wasm32"))]
pub use json::json;
pub use keys::{KEYS, NOT_USED, Rows};
pub use text::number;

/// What a source's figure is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// Printed in a source that was read.
    Printed,
    /// Well known, but the source was not open.
    FromMemory,
    /// Computed from an equation that the source states: checks the arithmetic.
    Computed,
    /// From another's copy or excerpt of a source that was not open itself.
    Secondary,
    /// Read from a truck's own data: what its control unit declares, not what a test bench measured.
    Declared,
    /// Common practice, no source.
    CommonPractice,
}

impl Status {
    /// The status in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Printed => "printed",
            Self::FromMemory => "value from memory",
            Self::Computed => "computed from a stated equation",
            Self::Secondary => "secondary: another's copy or excerpt",
            Self::Declared => "declared by a control unit",
            Self::CommonPractice => "common practice",
        }
    }
}

/// The source's figure, and how near ours must come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Expected {
    /// A value, within a tolerance either way.
    Value {
        /// The source's figure.
        value: f64,
        /// Largest difference of ours from it.
        tolerance: f64,
    },
    /// This or more.
    AtLeast(f64),
    /// This or less.
    AtMost(f64),
    /// More than this.
    MoreThan(f64),
    /// Less than this.
    LessThan(f64),
    /// From the one to the other, ends included.
    Between(f64, f64),
    /// A miss that is kept in sight. It fails when its figure changes, and when the miss is gone.
    KnownDifference {
        /// The source's figure.
        value: f64,
        /// Largest difference of ours that would be no miss.
        tolerance: f64,
        /// Ours less the source's, as recorded.
        recorded: f64,
        /// Rounding of the record.
        rounding: f64,
    },
}

/// One figure of a source, and ours.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Key of the source, as in `solver/docs/sources.md`.
    pub key: &'static str,
    /// What the source's figure is worth.
    pub status: Status,
    /// The source in words.
    pub source: &'static str,
    /// What was computed, in words.
    pub what: String,
    /// Unit of both figures; empty for a plain number.
    pub unit: &'static str,
    /// What the source has.
    pub expected: Expected,
    /// What the project has.
    pub ours: f64,
}

impl Row {
    /// Whether ours agrees with the source. A known difference does not.
    #[must_use]
    pub fn agrees(&self) -> bool {
        let ours = self.ours;
        match self.expected {
            Expected::Value { value, tolerance } | Expected::KnownDifference { value, tolerance, .. } => {
                (ours - value).abs() <= tolerance
            }
            Expected::AtLeast(bound) => ours >= bound,
            Expected::AtMost(bound) => ours <= bound,
            Expected::MoreThan(bound) => ours > bound,
            Expected::LessThan(bound) => ours < bound,
            Expected::Between(low, high) => (low..=high).contains(&ours),
        }
    }

    /// What the row is worth, in words: how its figure was obtained, and whether an answer rests on what it
    /// checks.
    #[must_use]
    pub fn standing(&self) -> String {
        let words = self.status.words();
        match NOT_USED.iter().find(|(key, _)| *key == self.key) {
            None => words.to_owned(),
            Some((_, instead)) => format!("{words}; not used by any answer: {instead}"),
        }
    }

    /// Whether the row is kept as a difference that is known.
    #[must_use]
    pub fn is_known_difference(&self) -> bool {
        match self.expected {
            Expected::KnownDifference { .. } => true,
            Expected::Value { .. }
            | Expected::AtLeast(_)
            | Expected::AtMost(_)
            | Expected::MoreThan(_)
            | Expected::LessThan(_)
            | Expected::Between(..) => false,
        }
    }

    /// Ours less the source's figure, or less the bound that it misses; zero within bounds.
    #[must_use]
    pub fn difference(&self) -> f64 {
        let ours = self.ours;
        match self.expected {
            Expected::Value { value, .. } | Expected::KnownDifference { value, .. } => ours - value,
            Expected::AtLeast(bound) | Expected::MoreThan(bound) => (ours - bound).min(0.0),
            Expected::AtMost(bound) | Expected::LessThan(bound) => (ours - bound).max(0.0),
            Expected::Between(low, high) => (ours - low).min(0.0) + (ours - high).max(0.0),
        }
    }

    /// Ours agrees with the source, or differs as recorded.
    ///
    /// # Errors
    /// A sentence with the source's figure, ours, the difference and the tolerance.
    pub fn holds(&self) -> Result<(), String> {
        let Self { key, what, unit, expected, ours, .. } = self;
        let difference = self.difference();
        if let Expected::KnownDifference { value, tolerance, recorded, rounding } = *expected {
            return if self.agrees() {
                Err(format!(
                    "{key}: {what}: no DIFFERENCE any more: the source has {value} ± {tolerance} {unit}, ours is {ours}"
                ))
            } else if (difference - recorded).abs() <= rounding {
                Ok(())
            } else {
                Err(format!(
                    "{key}: {what}: DIFFERENCE recorded as {recorded:+} {unit}, now {difference:+.6} (the source has {value}, ours is {ours})"
                ))
            };
        }
        if self.agrees() {
            return Ok(());
        }
        Err(format!(
            "{key}: {what}: the source has {expected:?} {unit}, ours is {ours} (difference {difference:+.6})"
        ))
    }
}

/// A value within a tolerance.
pub(crate) fn near(value: f64, tolerance: f64) -> Expected {
    Expected::Value { value, tolerance }
}

/// A value within a tolerance; where `recorded` is given, a miss that is known.
pub(crate) fn near_or_known(value: f64, tolerance: f64, recorded: Option<f64>, rounding: f64) -> Expected {
    match recorded {
        None => near(value, tolerance),
        Some(recorded) => Expected::KnownDifference { value, tolerance, recorded, rounding },
    }
}

/// Origin of rows: what all rows of a check have in common.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Origin {
    pub(crate) key: &'static str,
    pub(crate) status: Status,
    pub(crate) source: &'static str,
}

impl Origin {
    /// A row of this origin.
    pub(crate) fn row(
        self,
        what: impl Into<String>,
        unit: &'static str,
        expected: Expected,
        ours: f64,
    ) -> Row {
        let Self { key, status, source } = self;
        Row { key, status, source, what: what.into(), unit, expected, ours }
    }
}

/// The rows of one key.
///
/// # Panics
/// Where there is no such key.
#[must_use]
pub fn of(key: &str) -> Vec<Row> {
    let found = KEYS.iter().find(|(name, _)| *name == key);
    found.unwrap_or_else(|| panic!("no check has the key {key}")).1()
}

/// All rows, in the order of [`KEYS`].
#[must_use]
pub fn all() -> Vec<Row> {
    KEYS.iter().flat_map(|(_, rows)| rows()).collect()
}

/// Holds every row of a key, and tells the known differences.
///
/// # Panics
/// Where a row does not hold; the message names all such rows.
#[track_caller]
pub fn hold(key: &str) {
    let rows = of(key);
    for row in rows.iter().filter(|row| row.is_known_difference()) {
        let [expected, ours, difference] = text::of(row);
        println!("DIFFERENCE {key}: {}: the source has {expected}, ours is {ours} ({difference})", row.what);
    }
    let misses: Vec<String> = rows.iter().filter_map(|row| row.holds().err()).collect();
    assert!(misses.is_empty(), "\n{}", misses.join("\n"));
}

/// Holds `ours` against a value that needs no source. On a miss the test fails and says by how much.
///
/// # Panics
/// Where the two differ by more than `tolerance`, or ours is not a number.
#[track_caller]
pub fn check(what: &str, expected: f64, ours: f64, tolerance: f64) {
    let difference = ours - expected;
    assert!(
        difference.abs() <= tolerance,
        "{what}: expected {expected}, ours is {ours} (difference {difference:+.6}, tolerance {tolerance})"
    );
}

#[cfg(test)]
mod tests {
    use super::*;

    fn holds(expected: Expected, ours: f64) -> bool {
        let origin = Origin { key: "A", status: Status::Printed, source: "" };
        origin.row("", "", expected, ours).holds().is_ok()
    }

    #[test]
    fn every_kind_of_row_can_fail() {
        let known = Expected::KnownDifference { value: 10.0, tolerance: 2.0, recorded: 3.0, rounding: 0.1 };
        for (expected, good, bad) in [
            (near(1.0, 0.1), [0.95, 1.05], [0.8, 1.2]),
            (Expected::AtLeast(1.0), [1.0, 2.0], [0.9, -1.0]),
            (Expected::AtMost(1.0), [1.0, 0.0], [1.1, 2.0]),
            (Expected::MoreThan(1.0), [1.1, 2.0], [1.0, 0.0]),
            (Expected::LessThan(1.0), [0.9, 0.0], [1.0, 2.0]),
            (Expected::Between(1.0, 2.0), [1.0, 2.0], [0.9, 2.1]),
            // A different figure fails, and so does a miss that is gone.
            (known, [13.0, 13.05], [13.2, 11.0]),
        ] {
            assert!(good.iter().all(|ours| holds(expected, *ours)), "{expected:?}");
            assert!(!bad.iter().any(|ours| holds(expected, *ours)), "{expected:?}");
            assert!(!holds(expected, f64::NAN), "{expected:?}");
        }
    }
}
