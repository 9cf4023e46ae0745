//! Entries: how the stored number is shown in the chosen units, and how typed text is read.

use super::numerals::{Numerals, numerals};
use super::units::{KILOGRAMS_PER_POUND, KILOWATTS_PER_HORSEPOWER, METRES_PER_FOOT, Units};
use solver::limits::{Limit, Quantity};

/// How an entry is shown: shown = stored × `factor` + `offset`, with a unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shown {
    /// Unit as written behind the field; empty for a plain number.
    pub unit: &'static str,
    /// Shown units per stored unit.
    pub factor: f64,
    /// Added after the factor; only temperatures have one.
    pub offset: f64,
    /// The field shows multiples of this, 0 for no such rounding: nobody knows a truck to a pound.
    pub multiple: f64,
}

/// Newton metres in a pound-force foot.
const NEWTON_METRES_PER_POUND_FOOT: f64 = 1.355_817_948;
/// 50 mph over 80 km/h.
const MILES_50_OVER_KM_80: f64 = 1.005_84;
const INCHES_PER_METRE: f64 = 12.0 / METRES_PER_FOOT;

/// Whether a blank stands between a number and this unit: “80 km/h”, but “1,910/min”.
#[must_use]
pub fn stands_apart(unit: &str) -> bool {
    !unit.is_empty() && !unit.starts_with('/')
}

/// How a quantity is shown in these units.
#[must_use]
pub fn shown_as(quantity: Quantity, units: Units) -> Shown {
    let plain = |unit, factor| Shown { unit, factor, offset: 0.0, multiple: 0.0 };
    let to = |multiple, shown| Shown { multiple, ..shown };
    match (quantity, units) {
        (Quantity::Mass, Units::Metric) => plain("t", 1e-3),
        (Quantity::Mass, Units::Imperial) => to(10.0, plain("lb", 1.0 / KILOGRAMS_PER_POUND)),
        (Quantity::Length, Units::Metric) => plain("m", 1.0),
        (Quantity::Length, Units::Imperial) => to(0.1, plain("in", INCHES_PER_METRE)),
        (Quantity::Area, Units::Metric) => plain("m²", 1.0),
        (Quantity::Area, Units::Imperial) => to(1.0, plain("ft²", 1.0 / (METRES_PER_FOOT * METRES_PER_FOOT))),
        (Quantity::Inertia, Units::Metric | Units::Imperial) => plain("kg·m²", 1.0),
        (Quantity::Number, Units::Metric | Units::Imperial) => plain("", 1.0),
        (Quantity::Share, Units::Metric | Units::Imperial) => plain("%", 100.0),
        (Quantity::Volume, Units::Metric | Units::Imperial) => plain("l", 1.0),
        (Quantity::EngineSpeed, Units::Metric | Units::Imperial) => plain("/min", 1.0),
        (Quantity::EngineSpeedAtPace, Units::Metric) => to(1.0, plain("/min", 1.0)),
        (Quantity::EngineSpeedAtPace, Units::Imperial) => to(1.0, plain("/min", MILES_50_OVER_KM_80)),
        (Quantity::Power, Units::Metric) => plain("kW", 1.0),
        (Quantity::Power, Units::Imperial) => to(1.0, plain("hp", 1.0 / KILOWATTS_PER_HORSEPOWER)),
        (Quantity::Temperature, Units::Metric) => plain("°C", 1.0),
        (Quantity::Temperature, Units::Imperial) => to(1.0, Shown { offset: 32.0, ..plain("°F", 1.8) }),
        (Quantity::Torque, Units::Metric) => plain("N·m", 1.0),
        (Quantity::Torque, Units::Imperial) => to(1.0, plain("lb·ft", 1.0 / NEWTON_METRES_PER_POUND_FOOT)),
        (Quantity::Time, Units::Metric | Units::Imperial) => plain("s", 1.0),
        (Quantity::Minutes, Units::Metric | Units::Imperial) => plain("min", 1.0),
        (Quantity::Speed, Units::Metric) => plain("km/h", 1.0),
        (Quantity::Speed, Units::Imperial) => {
            let kmh = Units::Imperial.metres_per_second_per_speed() * 3.6;
            to(1.0, plain("mph", 1.0 / kmh))
        }
    }
}

impl Shown {
    /// The text of a stored value for its field: as few decimals as its size needs.
    #[must_use]
    pub fn text(&self, stored: f64) -> String {
        let shown = stored * self.factor + self.offset;
        if self.multiple > 0.0 {
            return trimmed((shown / self.multiple).round() * self.multiple);
        }
        trimmed(shown)
    }

    /// The stored value of a shown one.
    #[must_use]
    pub fn stored(&self, shown: f64) -> f64 {
        (shown - self.offset) / self.factor
    }

    /// The ends of a range as text, rounded inwards: what is named is accepted.
    #[must_use]
    pub fn range(&self, limit: &Limit) -> (String, String) {
        let low = limit.min * self.factor + self.offset;
        let high = limit.max * self.factor + self.offset;
        let step = decimals(low.abs().max(high.abs()));
        let scale = 10_f64.powi(step);
        let inward_low = (low * scale - 1e-6).ceil() / scale;
        let inward_high = (high * scale + 1e-6).floor() / scale;
        (trimmed(inward_low), trimmed(inward_high))
    }
}

/// Decimals that a number of this size deserves in a field.
fn decimals(size: f64) -> i32 {
    if size >= 500.0 {
        0
    } else if size >= 60.0 {
        1
    } else if size >= 1.0 {
        3
    } else {
        4
    }
}

/// The number with no trailing zeros; an ASCII minus, so that it can be typed back.
fn trimmed(value: f64) -> String {
    trimmed_in(value, numerals())
}

fn trimmed_in(value: f64, numerals: Numerals) -> String {
    trimmed_to(value, usize::try_from(decimals(value.abs())).unwrap_or(0), numerals)
}

/// A number of a list, or a place on the road, as it is typed: up to two decimals.
#[must_use]
pub fn typed(value: f64) -> String {
    trimmed_to(value, 2, numerals())
}

fn trimmed_to(value: f64, places: usize, numerals: Numerals) -> String {
    let text = format!("{value:.places$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.replace('.', numerals.decimal.encode_utf8(&mut [0; 4])) }
}

/// Reads a typed number. Blanks are ignored; a comma before exactly three digits stands
/// between thousands, any other single comma is a decimal comma; the true minus sign is
/// taken as a minus. In a language with a decimal comma every comma and point is a decimal one.
/// `None` for anything that is not one finite number: no unit is guessed.
#[must_use]
pub fn parse_number(text: &str) -> Option<f64> {
    parse_in(text, numerals())
}

fn parse_in(text: &str, numerals: Numerals) -> Option<f64> {
    let compact: String =
        text.chars().filter(|c| !c.is_whitespace()).map(|c| if c == '−' { '-' } else { c }).collect();
    let plain = if numerals.decimal == ',' {
        compact.replace(',', ".")
    } else if compact.contains(',') {
        without_commas(&compact)?
    } else {
        compact
    };
    decimal(&plain)
}

/// Most digits of a typed number: so many are held exactly, and nobody knows a truck to more.
const MOST_DIGITS: u32 = 15;

/// Reads sign, digits, point, digits. Numerator and power of ten are exact, so their quotient
/// is the nearest number; the standard parser gives the same one but brings tables of 10 KB.
fn decimal(text: &str) -> Option<f64> {
    let (negative, unsigned) = match text.as_bytes().first()? {
        b'-' => (true, &text[1..]),
        b'+' => (false, &text[1..]),
        _ => (false, text),
    };
    let (mut numerator, mut divisor, mut digits, mut after_point) = (0_u64, 1_u64, 0, false);
    for byte in unsigned.bytes() {
        match byte {
            b'0'..=b'9' if digits < MOST_DIGITS => {
                numerator = numerator * 10 + u64::from(byte - b'0');
                divisor *= if after_point { 10 } else { 1 };
                digits += 1;
            }
            b'.' if !after_point => after_point = true,
            _ => return None,
        }
    }
    #[allow(clippy::cast_precision_loss, reason = "15 digits fit into the 53 bits")]
    let value = numerator as f64 / divisor as f64;
    (digits > 0).then_some(if negative { -value } else { value })
}

fn without_commas(text: &str) -> Option<String> {
    let mut groups = text.split(',');
    let first = groups.next()?;
    let rest: Vec<&str> = groups.collect();
    let before_point = |group: &&str| group.split('.').next().map_or(0, str::len) == 3;
    let whole_groups = rest.split_last().is_some_and(|(last, inner)| {
        before_point(last) && inner.iter().all(|group| group.len() == 3 && !group.contains('.'))
    });
    if whole_groups && !first.is_empty() && !first.contains('.') {
        return Some(text.replace(',', ""));
    }
    (rest.len() == 1 && !text.contains('.')).then(|| text.replace(',', "."))
}

#[cfg(test)]
mod tests {
    use super::*;
    use solver::limits;

    #[test]
    fn typed_numbers() {
        let read = [
            ("36.3", 36.3),
            (" 36,3 ", 36.3),
            ("80,000", 80_000.0),
            ("1,234,567.5", 1_234_567.5),
            ("36 287", 36_287.0),
            ("−5", -5.0),
            (".5", 0.5),
        ];
        for (text, value) in read {
            let found = parse_number(text).expect(text);
            assert!((found - value).abs() < 1e-9, "{text}: {found}");
        }
        for text in ["", "36 t", "1e3", "inf", "NaN", "1,2,3", "1.2.3", "12,34.5", "abc", "-"] {
            assert_eq!(parse_number(text), None, "{text}");
        }
    }

    #[test]
    fn decimals_are_those_of_the_standard_parser() {
        for text in ["0.1", "36.287", "-0.0051", "123456789012345", "0.00000000000001", "9.99", "+5.", "70.3"]
        {
            let standard: f64 = text.parse().expect(text);
            assert_eq!(parse_number(text).map(f64::to_bits), Some(standard.to_bits()), "{text}");
        }
        for text in [".", "+", "--1", "1.2.3", "1234567890123456", "0x10"] {
            assert_eq!(parse_number(text), None, "{text}");
        }
    }

    #[test]
    fn what_is_shown_is_read_back() {
        for limit in &limits::ALL {
            for units in [Units::Metric, Units::Imperial] {
                let shown = shown_as(limit.quantity, units);
                let (low, high) = shown.range(limit);
                for text in [low, high] {
                    let value = shown.stored(parse_number(&text).expect(&text));
                    assert!(limit.check(value).is_ok(), "{:?}: {text} gives {value}", limit.entry);
                }
            }
        }
    }

    #[test]
    fn with_a_decimal_comma() {
        let comma = Numerals::comma("bis");
        let read =
            [("36,287", 36.287), ("0,500", 0.5), ("36.287", 36.287), ("1 910", 1_910.0), ("−5,5", -5.5)];
        for (text, value) in read {
            let found = parse_in(text, comma).expect(text);
            assert!((found - value).abs() < 1e-9, "{text}: {found}");
        }
        for text in ["1.910,5", "1,234,567", "", ","] {
            assert_eq!(parse_in(text, comma), None, "{text}");
        }
        assert_eq!(trimmed_in(36.287, comma), "36,287");
        assert_eq!(["15,86", "1", "0"], [15.86, 1.0, -0.001].map(|value| trimmed_to(value, 2, comma)));
        for value in [0.25, 3.5, 36.287, 1_910.0] {
            assert_eq!(parse_in(&trimmed_in(value, comma), comma), Some(value), "typed back as shown");
        }
    }

    #[test]
    fn units_of_the_road() {
        let mass = shown_as(Quantity::Mass, Units::Metric);
        assert_eq!(mass.text(36_287.0), "36.287");
        assert_eq!(mass.text(40_000.0), "40");
        assert_eq!(shown_as(Quantity::Mass, Units::Imperial).text(36_287.0), "80000");
        assert_eq!(shown_as(Quantity::Share, Units::Metric).text(0.15), "15");
        assert_eq!(shown_as(Quantity::Temperature, Units::Imperial).text(260.0), "500");
        assert_eq!(shown_as(Quantity::Speed, Units::Imperial).text(80.467_2), "50");
    }
}
