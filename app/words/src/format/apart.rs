//! The difference of two quantities, of what is written of them: it adds up with what stands beside it.

use super::number::{tenths_in, whole_in};
use super::numerals::{NO_BREAK, Numerals, numerals};

/// What is written of a quantity: “130.5 km”.
struct Written<'a> {
    /// Tenths of its unit.
    tenths: f64,
    /// Whether it has a decimal.
    decimal: bool,
    /// Unit; may be empty.
    unit: &'a str,
}

/// The way from the first to the second of two quantities as they are written, with its sign: from
/// “22.0 km” to “130.5 km” it is “+108.5 km”. `None` where they are not written as one number each,
/// or in other units.
#[must_use]
pub fn apart(first: &str, second: &str) -> Option<String> {
    apart_in(first, second, numerals())
}

fn apart_in(first: &str, second: &str, numerals: Numerals) -> Option<String> {
    let (first, second) = (read(first, numerals)?, read(second, numerals)?);
    if first.unit != second.unit {
        return None;
    }
    let way = second.tenths - first.tenths;
    let sign = if way < 0.0 { "−" } else { "+" };
    let number = if first.decimal || second.decimal {
        tenths_in(way.abs() / 10.0, numerals)
    } else {
        whole_in(way.abs() / 10.0, numerals)
    };
    let blank = if first.unit.is_empty() { "" } else { "\u{a0}" };
    Some(format!("{sign}{number}{blank}{}", first.unit))
}

/// Reads back what [`whole_in`] and [`tenths_in`] wrote, with a unit behind it or none.
fn read(text: &str, numerals: Numerals) -> Option<Written<'_>> {
    let is_unit = |unit: &str| unit.chars().next().is_some_and(|first| !first.is_ascii_digit());
    let (number, unit) = text.rsplit_once(NO_BREAK).filter(|(_, unit)| is_unit(unit)).unwrap_or((text, ""));
    let (mut digits, mut decimals, mut sign) = (0.0, None, 1.0);
    for sign_or_digit in number.chars() {
        match sign_or_digit {
            '−' => sign = -1.0,
            digit if digit.is_ascii_digit() => {
                digits = digits * 10.0 + f64::from(digit.to_digit(10)?);
                decimals = decimals.map(|count: u8| count + 1);
            }
            point if point == numerals.decimal && decimals.is_none() => decimals = Some(0),
            blank if blank == numerals.thousands => {}
            _ => return None,
        }
    }
    let has_digits = number.contains(|c: char| c.is_ascii_digit());
    let tenths = match decimals {
        None => digits * 10.0,
        Some(1) => digits,
        Some(_) => return None,
    };
    has_digits.then_some(Written { tenths: sign * tenths, decimal: decimals.is_some(), unit })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::format::Units::{Imperial, Metric};
    use crate::format::{height, length, temperature, work};

    fn plain(text: Option<String>) -> Option<String> {
        text.map(|it| it.replace(NO_BREAK, " "))
    }

    #[test]
    fn differences_add_up_with_what_is_written() {
        let of = |first: String, second: String| plain(apart(&first, &second));
        // 108.55 km as it is, and 44 °F.
        assert_eq!(of(length(21_960.0, Metric), length(130_540.0, Metric)).as_deref(), Some("+108.5 km"));
        let [warm, hot] = [103.9, 129.0].map(|it| temperature(it, Imperial));
        assert_eq!(
            (warm.replace(NO_BREAK, " "), hot.replace(NO_BREAK, " ")),
            ("220 °F".into(), "270 °F".into())
        );
        assert_eq!(of(hot, warm).as_deref(), Some("−50 °F"));
        assert_eq!(of(height(1_565.4, Metric), height(12.0, Metric)).as_deref(), Some("−1,553 m"));
        assert_eq!(of(work(9.8e6), work(84.0e6)).as_deref(), Some("+74.2 MJ"));
        assert_eq!(of("3".into(), "12".into()).as_deref(), Some("+9"));
        assert_eq!(of("−5".into(), "2".into()).as_deref(), Some("+7"));
    }

    #[test]
    fn what_is_not_one_number_each_has_no_such_difference() {
        for (first, second) in
            [("–", "4"), ("240\u{a0}m", "1.2\u{a0}km"), ("1\u{a0}h 12\u{a0}min", "3\u{a0}min"), ("", "")]
        {
            assert_eq!(apart(first, second), None, "{first} and {second}");
        }
    }

    #[test]
    fn numbers_of_other_languages_are_read_back() {
        let comma = Numerals { thousands: '\u{a0}', decimal: ',', ..numerals() };
        assert_eq!(
            plain(apart_in("1\u{a0}200\u{a0}km", "3,5\u{a0}km", comma)).as_deref(),
            Some("−1 196,5 km")
        );
        assert_eq!(plain(apart_in("1\u{a0}200", "200", comma)).as_deref(), Some("−1 000"));
    }
}
