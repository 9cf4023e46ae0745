//! Numbers as a language writes them.

use super::numerals::{Numerals, numerals};

/// A whole number with its thousands apart and a true minus sign.
#[must_use]
pub fn whole(value: f64) -> String {
    whole_in(value, numerals())
}

pub(super) fn whole_in(value: f64, numerals: Numerals) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let digits = format!("{:.0}", value.abs());
    let mut text = String::with_capacity(digits.len() + 4);
    if value < 0.0 && digits != "0" {
        text.push('−');
    }
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            text.push(numerals.thousands);
        }
        text.push(digit);
    }
    text
}

/// A number with one decimal, its thousands apart and a true minus sign.
#[must_use]
pub fn tenths(value: f64) -> String {
    tenths_in(value, numerals())
}

pub(super) fn tenths_in(value: f64, numerals: Numerals) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let rounded = (value.abs() * 10.0).round();
    let sign = if value < 0.0 && rounded > 0.0 { "−" } else { "" };
    let tenth = rounded % 10.0;
    format!("{sign}{}{}{tenth:.0}", whole_in((rounded / 10.0).floor(), numerals), numerals.decimal)
}
