//! Reads a printed sum back and reckons it, for tests: each number stands for all that would be
//! rounded to it.

/// From least to most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Span {
    low: f64,
    high: f64,
}

impl Span {
    fn of(ends: [f64; 4]) -> Self {
        let low = ends.into_iter().fold(f64::INFINITY, f64::min);
        Self { low, high: ends.into_iter().fold(f64::NEG_INFINITY, f64::max) }
    }

    fn each(self, other: Self, f: impl Fn(f64, f64) -> f64) -> Self {
        let (a, b) = (self, other);
        Self::of([f(a.low, b.low), f(a.low, b.high), f(a.high, b.low), f(a.high, b.high)])
    }

    fn map(self, f: impl Fn(f64) -> f64) -> Self {
        let (low, high) = (f(self.low), f(self.high));
        Self::of([low, high, low, high])
    }

    fn meets(self, other: Self) -> bool {
        self.low <= other.high && other.low <= self.high
    }

    /// Width over size: how much rounding leaves open.
    pub(super) fn open(self) -> f64 {
        (self.high - self.low) / self.high.abs().max(self.low.abs())
    }
}

/// Whether a sum holds, with its left side: of “a × b = c” whether the numbers as they are printed
/// give c to its last digit, of “a × b ≈ c” whether they do not, but the two sides can be the same
/// number. `None` where it is no sum.
pub(super) fn holds(text: &str) -> Option<(bool, Span)> {
    let (exact, (left, right)) = match text.split_once(" = ") {
        Some(sides) => (true, sides),
        None => (false, text.split_once(" ≈ ")?),
    };
    let [open_left, open_right] = [left, right].map(|side| whole(side, true));
    // Half of the last digit of what is printed on the right: the most that rounding it once takes.
    let last = half_of_last(right);
    let as_printed = (whole(left, false).low - whole(right, false).low).abs() <= last * (1.0 + 1e-6) + 1e-12;
    Some((as_printed == exact && open_left.meets(open_right), open_left))
}

/// Half of the last digit of a single number.
fn half_of_last(text: &str) -> f64 {
    let digits = text.split('\u{a0}').next().unwrap_or(text);
    let decimals = digits.split_once('.').map_or(0, |(_, tail)| tail.len());
    let part = if text.ends_with('%') { 0.01 } else { 1.0 };
    0.5 * part * 0.1_f64.powi(i32::try_from(decimals).expect("few decimals"))
}

/// The value of a side: all that its numbers can stand for, or just what is printed.
fn whole(text: &str, open: bool) -> Span {
    let mut reader = Reader { rest: text, open };
    let value = reader.sum();
    assert!(reader.rest.trim().is_empty(), "{text}: left over “{}”", reader.rest);
    value
}

struct Reader<'a> {
    rest: &'a str,
    open: bool,
}

impl Reader<'_> {
    fn takes(&mut self, sign: &str) -> bool {
        let Some(rest) = self.rest.trim_start_matches(' ').strip_prefix(sign) else { return false };
        self.rest = rest;
        true
    }

    fn sum(&mut self) -> Span {
        let mut value = self.product();
        loop {
            if self.takes("+ ") {
                value = value.each(self.product(), |a, b| a + b);
            } else if self.takes("− ") {
                value = value.each(self.product(), |a, b| a - b);
            } else {
                return value;
            }
        }
    }

    fn product(&mut self) -> Span {
        let mut value = self.factor();
        loop {
            if self.takes("× ") {
                value = value.each(self.factor(), |a, b| a * b);
            } else if self.takes("÷ ") {
                value = value.each(self.factor(), |a, b| a / b);
            } else {
                return value;
            }
        }
    }

    fn factor(&mut self) -> Span {
        if self.takes("√") {
            return self.factor().map(f64::sqrt);
        }
        if self.takes("e^") {
            return self.factor().map(f64::exp);
        }
        if self.takes("−") {
            return self.factor().map(|it| -it);
        }
        if self.takes("(") {
            let value = self.sum();
            assert!(self.takes(")"), "no end of a bracket in “{}”", self.rest);
            return value;
        }
        self.number()
    }

    /// A number and its unit.
    fn number(&mut self) -> Span {
        let text = self.rest.trim_start_matches(' ');
        let end = text.find(|c: char| !c.is_ascii_digit() && c != '.' && c != ',').unwrap_or(text.len());
        let (digits, rest) = text.split_at(end);
        let plain: String = digits.chars().filter(|c| *c != ',').collect();
        let value: f64 = plain.parse().unwrap_or_else(|_| panic!("no number in “{text}”"));
        let decimals = plain.split_once('.').map_or(0, |(_, tail)| tail.len());
        let unit_end = match rest.strip_prefix('\u{a0}') {
            Some(unit) => '\u{a0}'.len_utf8() + unit.find([' ', ')']).unwrap_or(unit.len()),
            None => 0,
        };
        self.rest = &rest[unit_end..];
        let unit = rest[..unit_end].trim_start_matches('\u{a0}');
        let half = if !self.open {
            0.0
        } else if unit.is_empty() && is_exact(value, decimals) {
            1e-12 * value
        } else {
            // A hundredth of the last digit more, for the last bit.
            0.505 * 0.1_f64.powi(i32::try_from(decimals.max(least_decimals(unit))).expect("few decimals"))
        };
        if unit == "%" {
            return Span { low: (value - half) / 100.0, high: (value + half) / 100.0 };
        }
        Span { low: value - half, high: value + half }
    }
}

/// Whole numbers without a unit, 3.6 and shares of at most two decimals stand for themselves.
fn is_exact(value: f64, decimals: usize) -> bool {
    decimals == 0 || (value - 3.6).abs() < 1e-9 || (value < 1.0 && decimals <= 2)
}

/// Decimals to which a quantity is rounded even where they are not written: “30 km/h” is no 30.4.
fn least_decimals(unit: &str) -> usize {
    match unit {
        "km" | "mi" | "km/h" | "mph" | "kW" | "hp" => 1,
        "m²" | "ft²" => 2,
        "t" => 3,
        _ => 0,
    }
}

#[test]
fn sums_are_read_as_they_are_meant() {
    for right in [
        "36\u{a0}t × 9.81\u{a0}m/s² × 0.0698 = 24.7\u{a0}kN",
        "24.6\u{a0}kN − 1.8\u{a0}kN + 0.2\u{a0}kN = 23.0\u{a0}kN",
        "0.07 ÷ √(1 + 0.07 × 0.07) = 0.0698",
        "e^(−10.20\u{a0}min ÷ 35.0\u{a0}min) = 0.747",
        "(27.4\u{a0}km/h − 10\u{a0}km/h) ÷ 3.6 = 4.83\u{a0}m/s",
        "19.4\u{a0}kN ÷ 21.0\u{a0}kN − 1 = −7.6\u{a0}%",
        "1,300\u{a0}m ÷ 2 = 650\u{a0}m",
        "29.0\u{a0}kN − 1.6\u{a0}kN − 0.0\u{a0}kN ≈ 27.3\u{a0}kN",
        "19.4\u{a0}kN ÷ 21.0\u{a0}kN − 1 ≈ −7.7\u{a0}%",
    ] {
        assert_eq!(holds(right).map(|it| it.0), Some(true), "{right}");
    }
    for wrong in [
        "36\u{a0}t × 9.81\u{a0}m/s² × 0.0698 = 25.1\u{a0}kN",
        "24.6\u{a0}kN − 1.8\u{a0}kN − 0.2\u{a0}kN = 23.0\u{a0}kN",
        "e^(−10.20\u{a0}min ÷ 35.0\u{a0}min) = 0.757",
        "19.4\u{a0}kN ÷ 21.0\u{a0}kN − 1 = 7.6\u{a0}%",
        "1,300\u{a0}m ÷ 2 = 652\u{a0}m",
        "29.0\u{a0}kN − 1.6\u{a0}kN − 0.0\u{a0}kN = 27.3\u{a0}kN",
        "29.0\u{a0}kN − 1.6\u{a0}kN − 0.0\u{a0}kN ≈ 27.4\u{a0}kN",
        "29.0\u{a0}kN − 1.6\u{a0}kN − 0.0\u{a0}kN ≈ 26.9\u{a0}kN",
    ] {
        assert_eq!(holds(wrong).map(|it| it.0), Some(false), "{wrong}");
    }
    assert_eq!(holds("38\u{a0}km/h"), None);
}
