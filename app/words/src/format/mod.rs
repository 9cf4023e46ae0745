//! Quantities as text in the units chosen.
//!
//! Rounding takes the cautious side where it matters: a speed to hold and a reserve are
//! rounded down, a brake temperature up. Nothing is shown finer than it is known.

mod apart;
mod entered;
mod mark;
mod numerals;

pub use apart::apart;
pub use entered::{Shown, parse_number, shown_as, stands_apart, typed};
pub use mark::mark;
pub use numerals::{Numerals, choose, numerals};

use serde::{Deserialize, Serialize};

/// The two sets of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Units {
    /// km/h, m, t, °C.
    Metric,
    /// mph, ft, lb, °F.
    Imperial,
}

const METRES_PER_MILE: f64 = 1_609.344;
const METRES_PER_FOOT: f64 = 0.3048;
/// Exact: a pound of 0.453 592 37 kg at 9.806 65 m/s².
const NEWTONS_PER_POUND_FORCE: f64 = 4.448_221_615_260_5;
const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;
const KILOWATTS_PER_HORSEPOWER: f64 = 0.745_699_872;
const LITRES_PER_US_GALLON: f64 = 3.785_411_784;
/// Between a number and its unit: “15” at the end of a line and “%” on the next are misread.
pub const NO_BREAK: char = '\u{a0}';
/// Sums of floats may end a hair below a whole number; without this 40 km/h would become 39.
const HAIR: f64 = 1e-6;

impl Units {
    /// Metres per kilometre or mile.
    #[must_use]
    pub fn metres_per_distance(self) -> f64 {
        match self {
            Self::Metric => 1_000.0,
            Self::Imperial => METRES_PER_MILE,
        }
    }

    /// Metres per metre or foot.
    #[must_use]
    pub fn metres_per_height(self) -> f64 {
        match self {
            Self::Metric => 1.0,
            Self::Imperial => METRES_PER_FOOT,
        }
    }

    /// m/s per km/h or mph.
    #[must_use]
    pub fn metres_per_second_per_speed(self) -> f64 {
        match self {
            Self::Metric => 1.0 / 3.6,
            Self::Imperial => METRES_PER_MILE / 3_600.0,
        }
    }

    /// Litres per litre or gallon.
    #[must_use]
    pub fn litres_per_fuel(self) -> f64 {
        match self {
            Self::Metric => 1.0,
            Self::Imperial => LITRES_PER_US_GALLON,
        }
    }

    /// W per kW or hp.
    #[must_use]
    pub fn watts_per_power(self) -> f64 {
        match self {
            Self::Metric => 1e3,
            Self::Imperial => 1e3 * KILOWATTS_PER_HORSEPOWER,
        }
    }

    /// N per kN or thousand pounds-force.
    #[must_use]
    pub fn newtons_per_force(self) -> f64 {
        match self {
            Self::Metric => 1e3,
            Self::Imperial => 1e3 * NEWTONS_PER_POUND_FORCE,
        }
    }

    /// The unit of an axis of forces: “kN” or “1,000 lbf”.
    #[must_use]
    pub fn force(self) -> &'static str {
        match self {
            Self::Metric => "kN",
            Self::Imperial => "1,000\u{a0}lbf",
        }
    }

    /// “km” or “mi”.
    #[must_use]
    pub fn distance(self) -> &'static str {
        match self {
            Self::Metric => "km",
            Self::Imperial => "mi",
        }
    }

    /// “m” or “ft”.
    #[must_use]
    pub fn height(self) -> &'static str {
        match self {
            Self::Metric => "m",
            Self::Imperial => "ft",
        }
    }

    /// “km/h” or “mph”.
    #[must_use]
    pub fn speed(self) -> &'static str {
        match self {
            Self::Metric => "km/h",
            Self::Imperial => "mph",
        }
    }

    /// “°C” or “°F”.
    #[must_use]
    pub fn temperature(self) -> &'static str {
        match self {
            Self::Metric => "°C",
            Self::Imperial => "°F",
        }
    }

    /// The other set.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Metric => Self::Imperial,
            Self::Imperial => Self::Metric,
        }
    }
}

/// A whole number with its thousands apart and a true minus sign.
#[must_use]
pub fn whole(value: f64) -> String {
    whole_in(value, numerals())
}

fn whole_in(value: f64, numerals: Numerals) -> String {
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

fn tenths_in(value: f64, numerals: Numerals) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let rounded = (value.abs() * 10.0).round();
    let sign = if value < 0.0 && rounded > 0.0 { "−" } else { "" };
    let tenth = rounded % 10.0;
    format!("{sign}{}{}{tenth:.0}", whole_in((rounded / 10.0).floor(), numerals), numerals.decimal)
}

fn floor(value: f64) -> f64 {
    (value + HAIR).floor()
}

fn to_step(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

/// A place or a length along the road, to 0.1: “12.2 km”, “7.6 mi”.
#[must_use]
pub fn distance(metres: f64, units: Units) -> String {
    format!("{}{NO_BREAK}{}", distance_number(metres, units), units.distance())
}

/// The same without its unit.
#[must_use]
pub fn distance_number(metres: f64, units: Units) -> String {
    tenths(metres / units.metres_per_distance())
}

/// Two places along the road: “12.2 to 17.3 km”.
#[must_use]
pub fn span(from_m: f64, to_m: f64, units: Units) -> String {
    format!(
        "{} {} {}{NO_BREAK}{}",
        distance_number(from_m, units),
        numerals().to,
        distance_number(to_m, units),
        units.distance()
    )
}

/// A length: below a kilometre or half a mile to 10 m or 50 ft, else as [`distance`].
#[must_use]
pub fn length(metres: f64, units: Units) -> String {
    match units {
        Units::Metric if metres < 995.0 => format!("{}{NO_BREAK}m", whole(to_step(metres, 10.0))),
        Units::Imperial if metres < METRES_PER_MILE * 0.5 => {
            format!("{}{NO_BREAK}ft", whole(to_step(metres / METRES_PER_FOOT, 50.0)))
        }
        Units::Metric | Units::Imperial => distance(metres, units),
    }
}

/// A height, to a metre or 10 ft: “910 m”, “2,990 ft”.
#[must_use]
pub fn height(metres: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{NO_BREAK}m", whole(metres.round())),
        Units::Imperial => format!("{}{NO_BREAK}ft", whole(to_step(metres / METRES_PER_FOOT, 10.0))),
    }
}

/// A speed to hold, rounded **down**: “40 km/h”.
#[must_use]
pub fn hold_speed(metres_per_second: f64, units: Units) -> String {
    format!("{}{NO_BREAK}{}", hold_number(metres_per_second, units), units.speed())
}

/// The same without its unit.
#[must_use]
pub fn hold_number(metres_per_second: f64, units: Units) -> String {
    whole(floor(metres_per_second / units.metres_per_second_per_speed()))
}

/// A speed that is met, not held, to the nearest whole: “41 km/h”.
#[must_use]
pub fn met_speed(metres_per_second: f64, units: Units) -> String {
    let speed = metres_per_second / units.metres_per_second_per_speed();
    format!("{}{NO_BREAK}{}", whole(speed.round()), units.speed())
}

/// An engine speed, to 10/min: “1,910/min”.
#[must_use]
pub fn engine_speed(per_minute: f64) -> String {
    format!("{}/min", whole(to_step(per_minute, 10.0)))
}

/// A temperature, rounded **up** to 5 °C or 10 °F.
#[must_use]
pub fn temperature(celsius: f64, units: Units) -> String {
    let (value, step) = match units {
        Units::Metric => (celsius, 5.0),
        Units::Imperial => (celsius * 1.8 + 32.0, 10.0),
    };
    let rounded = ((value - HAIR) / step).ceil() * step;
    format!("{}{NO_BREAK}{}", whole(rounded), units.temperature())
}

/// A temperature as entered, to the nearest whole degree.
#[must_use]
pub fn entered_temperature(celsius: f64, units: Units) -> String {
    let value = match units {
        Units::Metric => celsius,
        Units::Imperial => celsius * 1.8 + 32.0,
    };
    format!("{}{NO_BREAK}{}", whole(value.round()), units.temperature())
}

/// By how much something gets warmer, rounded **up** to 5 °C or 10 °F.
#[must_use]
pub fn warmer(kelvin: f64, units: Units) -> String {
    let (value, step) = match units {
        Units::Metric => (kelvin, 5.0),
        Units::Imperial => (kelvin * 1.8, 10.0),
    };
    format!("{}{NO_BREAK}{}", whole(((value - HAIR) / step).ceil() * step), units.temperature())
}

/// A grade with its sign, to 0.1 %: “−6.2 %”.
#[must_use]
pub fn grade(rise_over_run: f64) -> String {
    format!("{}{NO_BREAK}%", tenths(rise_over_run * 100.0))
}

/// A share or a reserve, rounded **down** to whole per cent: “18 %”.
#[must_use]
pub fn margin(share: f64) -> String {
    format!("{}{NO_BREAK}%", whole(floor(share * 100.0)))
}

/// A share to the nearest whole per cent: “18 %”.
#[must_use]
pub fn share(share: f64) -> String {
    format!("{}{NO_BREAK}%", whole((share * 100.0).round()))
}

/// Fuel: “17 l”, “4.4 gal”.
#[must_use]
pub fn fuel(litres: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{NO_BREAK}l", whole(litres.round())),
        Units::Imperial => format!("{}{NO_BREAK}gal", tenths(litres / LITRES_PER_US_GALLON)),
    }
}

/// A power: “212 kW”, “284 hp”.
#[must_use]
pub fn power(watts: f64, units: Units) -> String {
    let unit = match units {
        Units::Metric => "kW",
        Units::Imperial => "hp",
    };
    format!("{}{NO_BREAK}{unit}", whole((watts / units.watts_per_power()).round()))
}

/// A force: “24.8 kN”, “5,600 lbf”.
#[must_use]
pub fn force(newtons: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{NO_BREAK}kN", tenths(newtons / 1e3)),
        Units::Imperial => {
            format!("{}{NO_BREAK}lbf", whole(to_step(newtons / NEWTONS_PER_POUND_FORCE, 100.0)))
        }
    }
}

/// A mass: “36.3 t”, “80,000 lb”.
#[must_use]
pub fn mass(kilograms: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{NO_BREAK}t", tenths(kilograms / 1_000.0)),
        Units::Imperial => format!("{}{NO_BREAK}lb", whole(to_step(kilograms / KILOGRAMS_PER_POUND, 100.0))),
    }
}

/// A mass not to be exceeded, rounded **down** to 0.1 t or 100 lb.
#[must_use]
pub fn mass_at_most(kilograms: f64, units: Units) -> String {
    let step = match units {
        Units::Metric => 100.0,
        Units::Imperial => 100.0 * KILOGRAMS_PER_POUND,
    };
    mass(floor(kilograms / step) * step, units)
}

/// Work, to 1 MJ or 0.1 MJ below ten: “84 MJ”. The same in both sets of units.
#[must_use]
pub fn work(joules: f64) -> String {
    let megajoules = joules / 1e6;
    let text = if megajoules < 9.95 { tenths(megajoules) } else { whole(megajoules.round()) };
    format!("{text}{NO_BREAK}MJ")
}

/// Road-sign rounding: whole per cent and whole km or miles, without the sign of the grade.
/// (“6 %”, “9 km”); a short hill keeps metres or feet.
#[must_use]
pub fn as_sign(mean: f64, metres: f64, units: Units) -> (String, String) {
    let per_cent = format!("{}{NO_BREAK}%", whole((mean.abs() * 100.0).round()));
    let unit = units.metres_per_distance();
    let long = if metres / unit >= 0.95 {
        format!("{}{NO_BREAK}{}", whole((metres / unit).round()), units.distance())
    } else {
        match units {
            Units::Metric => format!("{}{NO_BREAK}m", whole(to_step(metres, 100.0))),
            Units::Imperial => format!("{}{NO_BREAK}mi", tenths(metres / unit)),
        }
    };
    (per_cent, long)
}

#[cfg(test)]
mod tests;
