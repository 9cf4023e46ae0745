//! Marks of an axis.

use super::number::whole_in;
use super::numerals::{Numerals, numerals};

/// A mark of an axis with so many decimals, as the language writes numbers.
#[must_use]
pub fn mark(value: f64, decimals: usize) -> String {
    mark_in(value, decimals, numerals())
}

pub(super) fn mark_in(value: f64, decimals: usize, numerals: Numerals) -> String {
    if decimals == 0 || !value.is_finite() {
        return whole_in(value, numerals);
    }
    let scale = (0..decimals).fold(1.0, |scale, _| scale * 10.0);
    let rounded = (value.abs() * scale).round();
    let sign = if value < 0.0 && rounded > 0.0 { "−" } else { "" };
    let head = whole_in((rounded / scale).floor(), numerals);
    format!("{sign}{head}{}{:0decimals$.0}", numerals.decimal, rounded % scale)
}
