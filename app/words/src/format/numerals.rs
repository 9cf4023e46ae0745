//! How the language chosen writes numbers.

use std::sync::OnceLock;

/// Between a number and its unit: “15” at the end of a line and “%” on the next are misread.
pub const NO_BREAK: char = '\u{a0}';

/// Signs in and between numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Numerals {
    /// Between whole and tenths.
    pub decimal: char,
    /// Between groups of three digits.
    pub thousands: char,
    /// Between two ends: “12.2 to 17.3 km”.
    pub to: &'static str,
}

impl Numerals {
    /// As in English: 1,910.5.
    pub const POINT: Self = Self { decimal: '.', thousands: ',', to: "to" };

    /// As on the European continent: 1 910,5. A blank between groups, since a point there is read
    /// as a decimal point by whoever is used to one.
    #[must_use]
    pub const fn comma(to: &'static str) -> Self {
        Self { decimal: ',', thousands: NO_BREAK, to }
    }
}

static CHOSEN: OnceLock<Numerals> = OnceLock::new();

/// Chooses, once, before anything is shown.
pub fn choose(numerals: Numerals) {
    // A second choice would come from a second page in one module: there is none.
    let _ = CHOSEN.set(numerals);
}

/// The signs of numbers chosen; English where none were.
#[must_use]
pub fn numerals() -> Numerals {
    CHOSEN.get().copied().unwrap_or(Numerals::POINT)
}
