//! Decimal text to a float, without the tables of the standard parser.
//!
//! Those tables are 10 KB that do not compress, a twelfth of what a browser loads of the solver. A coordinate
//! or a height means at most 15 digits. Up to that many, the answer is the nearest float, bit for bit that of
//! the standard parser: numerator and power of ten are exact (W. D. Clinger, How to read floating point
//! numbers accurately, PLDI 1990). With more digits it is off by at most one unit in the last place.

/// Digits held: 64 bits hold no more, and the digits behind are dropped.
const MOST_DIGITS: u32 = 19;
/// Powers of ten up to this one are exact.
const EXACT_POWER: u32 = 22;
/// Beyond this exponent a number is zero or infinite, whatever its digits.
const LARGEST_EXPONENT: i32 = 400;

/// Reads sign, digits with a decimal point, and an exponent. `None` for anything else, “inf” and “nan”
/// included. Infinite where the number is too large.
pub(super) fn read_decimal(written: &str) -> Option<f64> {
    let (negative, unsigned) = match written.as_bytes() {
        [b'-', rest @ ..] => (true, rest),
        [b'+', rest @ ..] => (false, rest),
        rest => (false, rest),
    };
    let end = unsigned.iter().position(|byte| matches!(byte, b'e' | b'E')).unwrap_or(unsigned.len());
    let (digits, exponent) = (&unsigned[..end], unsigned.get(end + 1..));
    let (numerator, power) = read_digits(digits)?;
    let exponent = exponent.map_or(Some(0), read_exponent)?;
    let value = scaled(numerator as f64, (power + exponent).clamp(-LARGEST_EXPONENT, LARGEST_EXPONENT));
    Some(if negative { -value } else { value })
}

/// The digits as a whole number, and the power of ten that multiplies it.
fn read_digits(digits: &[u8]) -> Option<(u64, i32)> {
    let (mut numerator, mut held, mut power) = (0_u64, 0, 0_i32);
    let (mut seen, mut after_point) = (false, false);
    for byte in digits {
        match byte {
            b'0'..=b'9' => {
                seen = true;
                let dropped = held >= MOST_DIGITS;
                if !dropped {
                    numerator = numerator * 10 + u64::from(byte - b'0');
                    held += u32::from(numerator > 0);
                }
                // A digit dropped before the point counts as a zero; a digit dropped behind it does not
                // count.
                power = power.saturating_add(i32::from(dropped) - i32::from(after_point));
            }
            b'.' if !after_point => after_point = true,
            _ => return None,
        }
    }
    seen.then_some((numerator, power))
}

fn read_exponent(written: &[u8]) -> Option<i32> {
    let (negative, digits) = match written {
        [b'-', rest @ ..] => (true, rest),
        [b'+', rest @ ..] => (false, rest),
        rest => (false, rest),
    };
    if digits.is_empty() || !digits.iter().all(u8::is_ascii_digit) {
        return None;
    }
    let add = |sum: i32, digit: &u8| sum.saturating_mul(10).saturating_add(i32::from(digit - b'0'));
    let size = digits.iter().fold(0, add).min(1_000_000);
    Some(if negative { -size } else { size })
}

/// `value`·10^`power`, by exact powers as far as possible.
fn scaled(mut value: f64, power: i32) -> f64 {
    let mut left = power.unsigned_abs();
    // At most LARGEST_EXPONENT / EXACT_POWER + 1 turns.
    while left > 0 {
        let step = left.min(EXACT_POWER);
        let ten = (0..step).fold(1.0, |product, _| product * 10.0);
        value = if power < 0 { value / ten } else { value * ten };
        left -= step;
    }
    value
}

#[cfg(test)]
mod tests {
    use super::read_decimal;

    fn standard(text: &str) -> f64 {
        text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
    }

    #[test]
    fn up_to_15_digits_it_is_the_nearest_float() {
        let mut seed = 7_u64;
        for _ in 0..20_000 {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            let (digits, decimals) = ((seed >> 16) % 1_000_000_000_000_000, (seed >> 9) as usize % 16);
            let text = digits.to_string();
            let padded = format!("{text:0>16}");
            let (whole, rest) = padded.split_at(padded.len() - decimals);
            let text = format!("{}.{rest}", if whole.is_empty() { "0" } else { whole });
            assert_eq!(read_decimal(&text).map(f64::to_bits), Some(standard(&text).to_bits()), "{text}");
        }
    }

    #[test]
    fn with_more_digits_it_is_one_unit_off_at_most() {
        for text in [
            "45.12345678901234567890123",
            "-179.99999999999999999",
            "0.00000000000000000000012345678901234567",
            "12345678901234567890123",
            "9007199254740993",
            "1.7976931348623157",
        ] {
            let read = read_decimal(text).expect(text);
            let apart = read.to_bits().abs_diff(standard(text).to_bits());
            assert!(apart <= 1, "{text}: {read}, {apart} units off");
        }
    }

    #[test]
    fn the_grammar_is_that_of_the_standard_parser_without_words() {
        for text in
            ["1", "-1", "+1", "1.", ".5", "-.5", "007", "1e3", "1E-3", "1.5e+2", "0e9999999999", "0", "-0"]
        {
            assert_eq!(read_decimal(text).map(f64::to_bits), Some(standard(text).to_bits()), "{text}");
        }
        for text in [
            "", "-", "+", ".", "e5", "1e", "1e+", "1.2.3", "--1", "1 ", " 1", "1,5", "0x1", "inf", "nan",
            "1e5.0",
        ] {
            assert_eq!(read_decimal(text), None, "{text}");
            assert!(text.parse::<f64>().map_or(true, |it| !it.is_finite()), "{text}");
        }
        assert_eq!(read_decimal("1e999"), Some(f64::INFINITY));
        assert_eq!(read_decimal("1e-999").map(f64::to_bits), Some(0));
    }
}
