//! Figures of rows as short text, equal on every machine: rounded to what the tolerance can distinguish,
//! thousands in groups, a true minus sign.

use super::{Expected, Row};

/// A tolerance this small stands for rounding of the arithmetic alone.
const EXACT: f64 = 1e-9;
/// Digits shown of a figure that should be exact.
const EXACT_DIGITS: i32 = 6;

/// A number with this many decimals: groups of thousands, a true minus sign, and no minus
/// before a zero.
#[must_use]
pub fn number(value: f64, decimals: usize) -> String {
    let plain = format!("{:.decimals$}", value.abs());
    let (whole, rest) = plain.split_at(plain.find('.').unwrap_or(plain.len()));
    let mut grouped = String::new();
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index) % 3 == 0 && digit.is_ascii_digit() {
            grouped.push(',');
        }
        grouped.push(digit);
    }
    let is_zero = plain.chars().all(|c| c == '0' || c == '.');
    let sign = if value < 0.0 && !is_zero { "−" } else { "" };
    format!("{sign}{grouped}{rest}")
}

/// Without zeros at the end of the decimals.
fn trimmed(text: &str) -> &str {
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { text }
}

/// Place of the first digit: 0 for 1 to 9, −1 for 0.1 to 0.9.
#[allow(clippy::cast_possible_truncation, reason = "the logarithm of a float is within ±400")]
fn place(value: f64) -> i32 {
    // A little above, so that 0.1 counts as the tenth that it stands for.
    if value == 0.0 { 0 } else { (libm::log10(value.abs()) + 1e-9).floor() as i32 }
}

fn decimals(wanted: i32) -> usize {
    usize::try_from(wanted.clamp(0, 12)).unwrap_or(0)
}

/// Decimals of a figure that is exact except for the arithmetic, or stands alone.
fn exact_decimals(value: f64) -> usize {
    decimals(EXACT_DIGITS - 1 - place(value))
}

/// Fewest decimals that write a figure as it was printed, at most `most`.
fn own_decimals(value: f64, most: usize) -> usize {
    let text = format!("{value:.most$}");
    trimmed(&text).split_once('.').map_or(0, |(_, after)| after.len())
}

/// A figure as printed.
fn printed(value: f64) -> String {
    number(value, own_decimals(value, exact_decimals(value)))
}

fn with_unit(figure: &str, unit: &str) -> String {
    if unit.is_empty() { figure.to_owned() } else { format!("{figure} {unit}") }
}

/// A difference with its sign; "none" where nothing is left at these decimals.
fn signed(difference: f64, decimals: usize, unit: &str) -> String {
    let size = number(difference.abs(), decimals);
    if size.chars().all(|c| c == '0' || c == '.') {
        return "none".to_owned();
    }
    with_unit(&format!("{}{size}", if difference < 0.0 { "−" } else { "+" }), unit)
}

/// A value within a tolerance: the figure, ours and the difference.
fn value_within(row: &Row, value: f64, tolerance: f64) -> [String; 3] {
    if tolerance <= EXACT {
        let decimals = exact_decimals(value);
        let show = |figure: f64| with_unit(trimmed(&number(figure, decimals)), row.unit);
        let expected = format!("exactly {}", show(value));
        return [expected, show(row.ours), signed(row.difference(), decimals, row.unit)];
    }
    // A tolerance that begins with a small digit distinguishes one more digit than its own.
    let first_digit = tolerance / libm::pow(10.0, f64::from(place(tolerance)));
    let told_apart = decimals(i32::from(first_digit < 3.5) - place(tolerance));
    let shown = told_apart.max(own_decimals(value, told_apart.max(1)));
    let rounded = number(tolerance, shown);
    let rounded = trimmed(&rounded);
    let expected = number(value, own_decimals(value, shown).max(own_decimals(tolerance, shown)));
    let expected = with_unit(&format!("{expected} ± {rounded}"), row.unit);
    let ours = with_unit(&number(row.ours, shown), row.unit);
    [expected, ours, signed(row.difference(), shown, row.unit)]
}

/// An upper bound. A figure far below it may be only rounding, which differs between machines; it is only
/// said to be far below.
fn bounded_above(row: &Row, words: &str, bound: f64) -> [String; 3] {
    const FAR: f64 = 0.05;
    let mut texts = bounded(row, words, bound);
    if row.ours > 0.0 && row.ours < bound * FAR {
        texts[1] = with_unit(&format!("below {}", printed(bound * FAR)), row.unit);
    }
    texts
}

/// A bound in words, ours, and by how much the bound is missed.
fn bounded(row: &Row, words: &str, bound: f64) -> [String; 3] {
    let decimals = decimals(2 - place(bound)).max(own_decimals(bound, exact_decimals(bound)));
    let ours = with_unit(trimmed(&number(row.ours, decimals)), row.unit);
    let difference =
        if row.agrees() { "within".to_owned() } else { signed(row.difference(), decimals, row.unit) };
    [with_unit(words, row.unit), ours, difference]
}

/// Expected, ours and the difference of a row, with their unit.
pub(super) fn of(row: &Row) -> [String; 3] {
    match row.expected {
        Expected::Value { value, tolerance } | Expected::KnownDifference { value, tolerance, .. } => {
            value_within(row, value, tolerance)
        }
        Expected::AtLeast(bound) => bounded(row, &format!("at least {}", printed(bound)), bound),
        Expected::AtMost(bound) => bounded_above(row, &format!("at most {}", printed(bound)), bound),
        Expected::MoreThan(bound) => bounded(row, &format!("more than {}", printed(bound)), bound),
        Expected::LessThan(bound) => bounded_above(row, &format!("less than {}", printed(bound)), bound),
        Expected::Between(low, high) => bounded(row, &format!("{} to {}", printed(low), printed(high)), low),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Origin, Status, near};
    use super::*;

    fn texts(expected: Expected, ours: f64) -> [String; 3] {
        let origin = Origin { key: "A", status: Status::Printed, source: "" };
        of(&origin.row("", "kW", expected, ours))
    }

    #[test]
    fn figures_are_as_long_as_their_tolerance() {
        let known = Expected::KnownDifference { value: 18.1, tolerance: 2.0, recorded: 3.0, rounding: 0.1 };
        for (expected, ours, text) in [
            (near(196.2, 0.1), 196.198_7, ["196.2 ± 0.1 kW", "196.20 kW", "none"]),
            (near(0.73, 0.005), 0.726_4, ["0.730 ± 0.005 kW", "0.726 kW", "−0.004 kW"]),
            (
                near(8_935_244.560_48, 0.008_9),
                8_935_244.560_48,
                ["8,935,244.560 ± 0.009 kW", "8,935,244.560 kW", "none"],
            ),
            (near(1.0 / 3.0, 1e-12), 0.333_333_333_333_3, ["exactly 0.333333 kW", "0.333333 kW", "none"]),
            (near(-17.0, 0.5), -17.3, ["−17.0 ± 0.5 kW", "−17.3 kW", "−0.3 kW"]),
            (known, 21.06, ["18.1 ± 2 kW", "21.1 kW", "+3.0 kW"]),
            (near(50.0, 3.0), 51.26, ["50 ± 3 kW", "51.3 kW", "+1.3 kW"]),
            (Expected::AtLeast(2.0), 4.526, ["at least 2 kW", "4.53 kW", "within"]),
            (Expected::AtMost(1.0), 3e-7, ["at most 1 kW", "below 0.05 kW", "within"]),
            (Expected::Between(0.8, 1.1), 1.234_6, ["0.8 to 1.1 kW", "1.235 kW", "+0.135 kW"]),
        ] {
            assert_eq!(texts(expected, ours), text.map(str::to_owned));
        }
    }
}
