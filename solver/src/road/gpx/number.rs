//! Numbers as files write them.

use super::decimal::read_decimal;

/// A number read from an attribute or an element, and how it was written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Number {
    /// Written as GPX asks.
    Plain(f64),
    /// Blanks around it.
    Padded(f64),
    /// A comma stands for the decimal point.
    Comma {
        value: f64,
        /// Whether exactly three digits follow the comma: it may then separate thousands.
        thousands: bool,
    },
    /// “m” behind it.
    Metres(f64),
    /// Another unit behind it.
    ForeignUnit,
    /// No number, or not a finite one.
    Unreadable,
    /// Nothing written at all.
    Blank,
}

/// Reads a number tolerantly; never guesses a unit.
pub(super) fn read_number(written: &str) -> Number {
    // Nearly every number is read here.
    if let Some(value) = read_decimal(written) {
        return if value.is_finite() { Number::Plain(value) } else { Number::Unreadable };
    }
    let trimmed = written.trim_matches(|c: char| c.is_whitespace() || c == '\0');
    if trimmed.is_empty() {
        return Number::Blank;
    }
    if trimmed.len() != written.len()
        && let Some(value) = finite(trimmed)
    {
        return Number::Padded(value);
    }
    if let Some(number) = read_comma(trimmed) {
        return number;
    }
    let digits =
        trimmed.trim_end_matches(|c: char| c.is_ascii_alphabetic() || !c.is_ascii() || c == '\'' || c == '.');
    let unit = trimmed[digits.len()..].trim_start_matches('.');
    let Some(value) = finite(digits.trim_end()) else {
        return Number::Unreadable;
    };
    match unit {
        "" => Number::Unreadable,
        "m" | "M" | "metres" | "meters" | "metre" | "meter" => Number::Metres(value),
        _other => Number::ForeignUnit,
    }
}

fn read_comma(trimmed: &str) -> Option<Number> {
    let (whole, decimals) = trimmed.split_once(',')?;
    let plain = decimals.bytes().all(|b| b.is_ascii_digit()) && !decimals.is_empty() && !whole.contains('.');
    if !plain || whole.is_empty() {
        return None;
    }
    let mut joined = String::with_capacity(trimmed.len());
    joined.push_str(whole);
    joined.push('.');
    joined.push_str(decimals);
    let value = finite(&joined)?;
    Some(Number::Comma { value, thousands: decimals.len() == 3 })
}

fn finite(written: &str) -> Option<f64> {
    read_decimal(written).filter(|value| value.is_finite())
}

#[cfg(test)]
mod tests {
    use super::{Number, read_number};

    #[test]
    fn reads_what_files_write() {
        let cases = [
            ("12.5", Number::Plain(12.5)),
            ("-0.25", Number::Plain(-0.25)),
            (" 12.5\n", Number::Padded(12.5)),
            ("12,5", Number::Comma { value: 12.5, thousands: false }),
            ("1,234", Number::Comma { value: 1.234, thousands: true }),
            ("1,234.5", Number::Unreadable),
            ("310 m", Number::Metres(310.0)),
            ("310m", Number::Metres(310.0)),
            ("1017 ft", Number::ForeignUnit),
            ("1017'", Number::ForeignUnit),
            ("nan", Number::Unreadable),
            ("-inf", Number::Unreadable),
            ("1e999", Number::Unreadable),
            ("", Number::Blank),
            ("  ", Number::Blank),
            ("abc", Number::Unreadable),
            ("5..", Number::Unreadable),
        ];
        for (written, expected) in cases {
            assert_eq!(read_number(written), expected, "{written:?}");
        }
    }
}
