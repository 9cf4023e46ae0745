//! Numbers of exercises as text. Finer than elsewhere on the page: who reckons along must come to
//! the same figures. That does not make them better known.

use crate::exercise::{Exercise, Hill};
use crate::format::{NO_BREAK, Units, numerals, shown_as, whole};
use solver::atmosphere::density;
use solver::constants::{GRAVITY, MPH};
use solver::limits::Quantity;
use solver::units::{Celsius, Metres};

/// Newtons in a pound-force.
fn newtons_per_pound() -> f64 {
    GRAVITY / shown_as(Quantity::Mass, Units::Imperial).factor
}

/// Joules in a Btu (international table).
const JOULES_PER_BTU: f64 = 1_055.055_852_62;
/// Degrees Fahrenheit in a kelvin.
const FAHRENHEIT_PER_KELVIN: f64 = 1.8;

/// A number with so many decimals, its thousands apart and a true minus sign.
pub(super) fn fixed(value: f64, decimals: usize) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let text = format!("{:.decimals$}", value.abs());
    let (head, tail) = text.split_once('.').unwrap_or((&text, ""));
    let sign = if value < 0.0 && text.contains(|c: char| ('1'..='9').contains(&c)) { "−" } else { "" };
    let head = whole(head.parse().unwrap_or(f64::NAN));
    if tail.is_empty() {
        format!("{sign}{head}")
    } else {
        format!("{sign}{head}{}{tail}", numerals().decimal)
    }
}

/// A number with no more decimals than it needs.
pub(super) fn trimmed(value: f64, most: usize) -> String {
    let text = fixed(value, most);
    if most == 0 {
        return text;
    }
    let text = text.trim_end_matches('0');
    text.strip_suffix(numerals().decimal).unwrap_or(text).to_owned()
}

fn with(number: &str, unit: &str) -> String {
    format!("{number}{NO_BREAK}{unit}")
}

/// How figures of one exercise are written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// Units.
    pub(super) units: Units,
    /// Decimals of kN, MJ and kBtu: a small vehicle on a short hill needs one more.
    decimals: usize,
}

impl Figures {
    /// Of an exercise.
    #[must_use]
    pub fn of(exercise: &Exercise, units: Units) -> Self {
        let large = match exercise {
            Exercise::ControlSpeed(it) => it.shown.forces.gravity.0 >= 1e4,
            Exercise::GearChoice(it) => it.written_out().is_some_and(|it| it.held.forces.gravity.0 >= 1e4),
            Exercise::BrakingWork(it) => it.left.0 >= 1e7,
            Exercise::Haste(_) | Exercise::BrakeHeat(_) => true,
        };
        Self { units, decimals: if large { 1 } else { 2 } }
    }

    /// kg: “24 t”, “53,000 lb”.
    #[must_use]
    pub fn mass(self, kilograms: f64) -> String {
        let shown = shown_as(Quantity::Mass, self.units);
        match self.units {
            Units::Metric => with(&trimmed(kilograms * shown.factor, 3), shown.unit),
            Units::Imperial => with(&fixed(kilograms * shown.factor, 0), shown.unit),
        }
    }

    /// m/s: “36 km/h”, “27.4 km/h”.
    #[must_use]
    pub fn speed(self, metres_per_second: f64) -> String {
        with(&trimmed(metres_per_second / self.units.metres_per_second_per_speed(), 1), self.units.speed())
    }

    /// m along the road: “5.1 km”.
    #[must_use]
    pub fn length(self, metres: f64) -> String {
        with(&trimmed(metres / self.units.metres_per_distance(), 1), self.units.distance())
    }

    /// m: “5,100 m”, “16,896 ft”.
    #[must_use]
    pub fn metres(self, metres: f64) -> String {
        with(&fixed(metres / self.units.metres_per_height(), 0), self.units.height())
    }

    /// W: “120 kW”.
    #[must_use]
    pub fn power(self, watts: f64) -> String {
        let unit = shown_as(Quantity::Power, self.units).unit;
        with(&trimmed(watts / self.units.watts_per_power(), 1), unit)
    }

    /// °C: “236 °C”.
    #[must_use]
    pub fn temperature(self, celsius: f64) -> String {
        let shown = shown_as(Quantity::Temperature, self.units);
        with(&fixed(celsius * shown.factor + shown.offset, 0), shown.unit)
    }

    /// A share or a grade: “70 %”, “6.5 %”.
    #[must_use]
    pub fn per_cent(self, share: f64) -> String {
        with(&trimmed(share * 100.0, 1), "%")
    }

    /// s, in minutes: “10.2 min”.
    #[must_use]
    pub fn minutes(self, seconds: f64) -> String {
        with(&fixed(seconds / 60.0, 1), "min")
    }

    /// A plain ratio: “1.78”.
    #[must_use]
    pub fn ratio(self, ratio: f64) -> String {
        trimmed(ratio, 2)
    }

    /// J: “99 MJ”, “94.1 kBtu”.
    #[must_use]
    pub fn energy(self, joules: f64) -> String {
        match self.units {
            Units::Metric => with(&fixed(joules / 1e6, self.decimals), "MJ"),
            Units::Imperial => with(&fixed(joules / JOULES_PER_BTU / 1e3, self.decimals), "kBtu"),
        }
    }

    /// N: “24.6 kN”, “5,584 lbf”.
    pub(super) fn force(self, newtons: f64) -> String {
        match self.units {
            Units::Metric => with(&fixed(newtons / 1e3, self.decimals), "kN"),
            Units::Imperial => with(&fixed(newtons / newtons_per_pound(), 0), "lbf"),
        }
    }

    /// m², “5.68 m²”, “61.1 ft²”.
    pub(super) fn area(self, square_metres: f64) -> String {
        let shown = shown_as(Quantity::Area, self.units);
        with(&trimmed(square_metres * shown.factor, 2), shown.unit)
    }

    /// Density of the air as this set of units reckons with it: kg/m³, or over that at sea level.
    pub(super) fn density(self, hill: &Hill) -> String {
        match self.units {
            Units::Metric => with(&fixed(hill.air.density, 3), "kg/m³"),
            Units::Imperial => fixed(hill.air.density / density_at_sea_level(), 3),
        }
    }

    /// J/K: “157.1 kJ/K”, “82.7 Btu/°F”.
    pub(super) fn capacity(self, joules_per_kelvin: f64) -> String {
        match self.units {
            Units::Metric => with(&fixed(joules_per_kelvin / 1e3, 1), "kJ/K"),
            Units::Imperial => {
                with(&fixed(joules_per_kelvin / JOULES_PER_BTU / FAHRENHEIT_PER_KELVIN, 1), "Btu/°F")
            }
        }
    }

    /// W/K: “74.9 W/K”, “142.0 Btu/h·°F”.
    pub(super) fn cooling(self, watts_per_kelvin: f64) -> String {
        match self.units {
            Units::Metric => with(&fixed(watts_per_kelvin, 1), "W/K"),
            Units::Imperial => {
                let per_hour = watts_per_kelvin * 3_600.0 / JOULES_PER_BTU / FAHRENHEIT_PER_KELVIN;
                with(&fixed(per_hour, 1), "Btu/h·°F")
            }
        }
    }

    /// W as heat by the hour where engine power is counted in hp: “179,100 Btu/h”.
    pub(super) fn heat_power(self, watts: f64) -> String {
        match self.units {
            Units::Metric => with(&fixed(watts / 1e3, 1), "kW"),
            Units::Imperial => with(&fixed(watts * 3_600.0 / JOULES_PER_BTU, 0), "Btu/h"),
        }
    }
}

/// kg/m³.
fn density_at_sea_level() -> f64 {
    /// Of the standard atmosphere at sea level.
    const STANDARD: Celsius = Celsius(15.0);
    density(1.0, Metres(0.0), STANDARD)
}

/// Air resistance in lbf is this times the ratio of densities, ft² and mph²: ½·ρ₀ in those units.
pub(super) fn drag_in_pounds() -> f64 {
    let square_foot = 1.0 / shown_as(Quantity::Area, Units::Imperial).factor;
    0.5 * density_at_sea_level() * MPH * MPH * square_foot / newtons_per_pound()
}

/// Foot-pounds in a Btu.
pub(super) fn foot_pounds_per_btu() -> f64 {
    JOULES_PER_BTU / newtons_per_pound() / Units::Imperial.metres_per_height()
}

/// Btu/h in a horsepower.
pub(super) fn btu_per_hour_per_horsepower() -> f64 {
    Units::Imperial.watts_per_power() * 3_600.0 / JOULES_PER_BTU
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_keep_their_decimals_and_signs() {
        let told =
            [fixed(1_234.567, 2), fixed(-0.04, 1), fixed(-0.06, 1), fixed(f64::NAN, 1), fixed(9.999, 0)];
        assert_eq!(told, ["1,234.57", "0.0", "−0.1", "–", "10"]);
        assert_eq!([trimmed(30.0, 1), trimmed(1_000.0, 0), trimmed(0.0051, 5)], ["30", "1,000", "0.0051"]);
    }

    /// Values of the conversions as printed in tables of units (from memory).
    #[test]
    fn units_of_the_one_are_those_of_the_other() {
        assert!((newtons_per_pound() - 4.448_222).abs() < 1e-5);
        assert!((foot_pounds_per_btu() - 778.169).abs() < 0.01);
        assert!((btu_per_hour_per_horsepower() - 2_544.43).abs() < 0.05);
        assert!((drag_in_pounds() - 0.002_56).abs() < 5e-6, "the q = 0.00256·V² of wind tables");
    }
}
