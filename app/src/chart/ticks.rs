//! Places of axis marks: round numbers in the unit that is read.

/// Marks of an axis: `first`, `first + step`, … in the unit read.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Ticks {
    /// Distance between two marks, in the unit read; 1, 2 or 5 times a power of ten.
    pub(crate) step: f64,
    /// The marks, in the unit read, rising.
    pub(crate) values: Vec<f64>,
    /// Decimals needed to tell the marks apart.
    pub(crate) decimals: usize,
}

/// No axis carries more marks than this, whatever is asked for.
const MOST_MARKS: usize = 40;

/// Round marks inside `from..=to` (in the unit read), about `wanted` of them and never more
/// than twice that.
///
/// With `wanted` zero, without an extent, or with ends that are not finite there are none.
#[must_use]
pub(crate) fn nice_ticks(from: f64, to: f64, wanted: usize) -> Ticks {
    let extent = to - from;
    if wanted == 0 || !extent.is_finite() || extent <= 0.0 {
        return Ticks { step: 1.0, values: Vec::new(), decimals: 0 };
    }
    let wanted = wanted.min(MOST_MARKS / 2);
    let (step, decimals) = nice_step(extent / wanted as f64);
    let mut values = Vec::new();
    let first = (from / step - 1e-9).ceil();
    for mark in 0..MOST_MARKS {
        let value = (first + mark as f64) * step;
        if value > to + 1e-9 * step {
            break;
        }
        values.push(value);
    }
    Ticks { step, values, decimals }
}

/// The smallest round step of at least `raw`, with the decimals that it needs.
fn nice_step(raw: f64) -> (f64, usize) {
    let mut power = 1.0;
    let mut exponent: i32 = 0;
    // 1e-6 to 1e12 is more than any axis here needs; the bound ends the search.
    for _ in 0..12 {
        if power > raw {
            power /= 10.0;
            exponent -= 1;
        } else if power * 10.0 <= raw {
            power *= 10.0;
            exponent += 1;
        } else {
            break;
        }
    }
    let mut best = (10.0, exponent + 1);
    for candidate in [5.0, 2.0, 1.0] {
        if candidate * power >= raw * (1.0 - 1e-9) {
            best = (candidate, exponent);
        }
    }
    (best.0 * power, usize::try_from(-best.1).unwrap_or(0))
}

#[cfg(test)]
mod tests {
    use super::nice_ticks;

    #[test]
    fn marks_are_round_in_the_unit_read() {
        let km = nice_ticks(0.0, 24.0, 7);
        assert_eq!(km.values, vec![0.0, 5.0, 10.0, 15.0, 20.0]);
        assert_eq!(km.decimals, 0);
        let miles = nice_ticks(3.1, 5.3, 6);
        assert!((miles.step - 0.5).abs() < 1e-12);
        assert_eq!(miles.decimals, 1);
        let metres = nice_ticks(187.0, 912.0, 4);
        assert_eq!(metres.values, vec![200.0, 400.0, 600.0, 800.0]);
        let feet = nice_ticks(613.0, 2992.0, 4);
        assert_eq!(feet.values, vec![1000.0, 2000.0]);
    }

    #[test]
    fn small_steps_get_the_decimals_to_tell_them() {
        let ticks = nice_ticks(0.0, 1.0, 4);
        assert!((ticks.step - 0.5).abs() < 1e-12);
        assert_eq!(ticks.decimals, 1);
        assert_eq!(nice_ticks(4.0, 4.3, 6).decimals, 2);
    }

    #[test]
    fn never_more_than_twice_as_asked_and_always_inside() {
        for wanted in 1..12 {
            for scale in [0.003, 0.7, 1.0, 9.9, 123.0, 45_678.0] {
                let (from, to) = (0.37 * scale, 1.91 * scale);
                let ticks = nice_ticks(from, to, wanted);
                assert!(ticks.values.len() <= 2 * wanted + 1, "{wanted} {scale}");
                assert!(ticks.values.iter().all(|v| *v >= from && *v <= to));
            }
        }
    }

    #[test]
    fn nothing_to_mark() {
        assert!(nice_ticks(1.0, 1.0, 5).values.is_empty());
        assert!(nice_ticks(0.0, f64::NAN, 5).values.is_empty());
        assert!(nice_ticks(0.0, 1.0, 0).values.is_empty());
    }
}
