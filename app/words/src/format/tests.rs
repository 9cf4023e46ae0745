//! What a person reads for a number, in both sets of units.

use super::Units::{Imperial, Metric};
use super::mark::mark_in;
use super::number::{tenths_in, whole_in};
use super::*;

/// The text with plain blanks, as it is typed here.
fn plain(text: &str) -> String {
    text.replace(NO_BREAK, " ")
}

fn sign(mean: f64, metres: f64, units: Units) -> String {
    let (grade, long) = as_sign(mean, metres, units);
    plain(&format!("{grade} {long}"))
}

fn mps(kmh: f64) -> f64 {
    kmh / 3.6
}

#[test]
fn a_hold_speed_is_never_rounded_up() {
    assert_eq!(plain(&hold_speed(mps(40.99), Metric)), "40 km/h");
    assert_eq!(plain(&hold_speed(mps(40.0), Metric)), "40 km/h");
    for whole in 1..200 {
        let text = hold_number(mps(f64::from(whole)), Metric);
        assert_eq!(text, whole.to_string(), "a whole speed keeps its number");
    }
    assert_eq!(plain(&hold_speed(mps(40.0), Imperial)), "24 mph");
    assert_eq!(plain(&hold_speed(25.0 * 0.44704, Imperial)), "25 mph");
}

#[test]
fn temperatures_go_up_to_the_step() {
    assert_eq!(plain(&temperature(66.0, Metric)), "70 °C");
    assert_eq!(plain(&temperature(260.0, Metric)), "260 °C");
    assert_eq!(plain(&temperature(260.0, Imperial)), "500 °F");
    assert_eq!(plain(&temperature(100.1, Imperial)), "220 °F");
    assert_eq!(plain(&temperature(-7.0, Metric)), "−5 °C");
    assert_eq!(plain(&entered_temperature(66.0, Imperial)), "151 °F");
}

#[test]
fn margins_go_down_to_whole_per_cent() {
    assert_eq!(plain(&margin(0.159)), "15 %");
    assert_eq!(plain(&margin(0.15)), "15 %");
    assert_eq!(plain(&margin(-0.051)), "−6 %");
}

#[test]
fn grades_and_heights() {
    assert_eq!(plain(&grade(-0.0624)), "−6.2 %");
    assert_eq!(plain(&grade(-0.0004)), "0.0 %");
    assert_eq!(plain(&height(911.4, Metric)), "911 m");
    assert_eq!(plain(&height(911.4, Imperial)), "2,990 ft");
}

#[test]
fn distances_and_lengths() {
    assert_eq!(plain(&distance(12_249.0, Metric)), "12.2 km");
    assert_eq!(plain(&distance(12_249.0, Imperial)), "7.6 mi");
    assert_eq!(plain(&place(12_249.0, Metric)), "km 12.2");
    assert_eq!(plain(&place(12_249.0, Imperial)), "mi 7.6");
    assert_eq!(plain(&span(12_249.0, 17_300.0, Metric)), "km 12.2 to 17.3");
    assert_eq!(plain(&length(447.0, Metric)), "450 m");
    assert_eq!(plain(&length(996.0, Metric)), "1.0 km");
    assert_eq!(plain(&length(447.0, Imperial)), "1,450 ft");
    assert_eq!(plain(&length(1_609.344, Imperial)), "1.0 mi");
}

#[test]
fn masses() {
    assert_eq!(plain(&mass(36_287.0, Metric)), "36.3 t");
    assert_eq!(plain(&mass(36_287.0, Imperial)), "80,000 lb");
    assert_eq!(plain(&mass_at_most(31_999.0, Metric)), "31.9 t");
    assert_eq!(plain(&mass_at_most(31_999.0, Imperial)), "70,500 lb");
}

#[test]
fn signs_state_whole_numbers() {
    assert_eq!(sign(-0.0613, 9_100.0, Metric), "6 % 9 km");
    assert_eq!(sign(-0.0613, 9_100.0, Imperial), "6 % 6 mi");
    assert_eq!(sign(-0.078, 760.0, Metric), "8 % 800 m");
    assert_eq!(sign(-0.078, 760.0, Imperial), "8 % 0.5 mi");
}

#[test]
fn what_is_not_a_number_shows_a_dash() {
    assert_eq!(whole(f64::NAN), "–");
    assert_eq!(tenths(f64::INFINITY), "–");
    assert_eq!(plain(&grade(f64::NAN)), "– %");
}

#[test]
fn thousands_and_signs() {
    assert_eq!(whole(1_234_567.0), "1,234,567");
    assert_eq!(whole(-999.6), "−1,000");
    assert_eq!(whole(-0.2), "0");
    assert_eq!(tenths(9.96), "10.0");
    assert_eq!(engine_speed(1_914.0), "1,910/min");
    assert_eq!(plain(&work(8.4e6)), "8.4 MJ");
    assert_eq!(plain(&work(84.4e6)), "84 MJ");
}

#[test]
fn each_language_has_its_signs() {
    let comma = Numerals::comma("bis");
    assert_eq!(tenths_in(-1_234.56, comma), "−1\u{a0}234,6");
    assert_eq!(whole_in(1_910.0, comma), "1\u{a0}910");
    assert_eq!(tenths_in(1_234.56, Numerals::POINT), "1,234.6");
}

#[test]
fn marks_of_an_axis_are_written_as_the_language_does() {
    let marks =
        [(0.5, 1, "0.5"), (2.0, 0, "2"), (-1.5, 1, "−1.5"), (-0.001, 2, "0.00"), (1_234.996, 2, "1,235.00")];
    for (value, decimals, text) in marks {
        assert_eq!(mark_in(value, decimals, Numerals::POINT), text);
    }
    assert_eq!(mark_in(2.5, 1, Numerals::comma("bis")), "2,5");
    assert_eq!(mark_in(f64::NAN, 2, Numerals::POINT), "–");
    assert_eq!(mark_in(4.05, 2, Numerals::POINT), "4.05");
}
