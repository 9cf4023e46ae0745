//! Quantities as text in the units chosen.
//!
//! Rounding takes the cautious side where it matters: a speed to hold and a reserve are
//! rounded down, a brake temperature up. Nothing is shown finer than it is known.

mod apart;
mod entered;
mod mark;
mod number;
mod numerals;
mod units;

pub use apart::apart;
pub use entered::{Shown, parse_number, shown_as, stands_apart, typed};
pub use mark::mark;
pub use number::{tenths, whole};
pub use numerals::NO_BREAK;
pub use numerals::{Numerals, choose, numerals};
pub use units::Units;

use units::{
    KILOGRAMS_PER_POUND, LITRES_PER_US_GALLON, METRES_PER_FOOT, METRES_PER_MILE, NEWTONS_PER_POUND_FORCE,
};

/// Sums of floats may end a hair below a whole number; without this 40 km/h would become 39.
const HAIR: f64 = 1e-6;

fn floor(value: f64) -> f64 {
    (value + HAIR).floor()
}

fn to_step(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

/// A length along the road, to 0.1: “12.2 km”, “7.6 mi”.
#[must_use]
pub fn distance(metres: f64, units: Units) -> String {
    format!("{}{NO_BREAK}{}", distance_number(metres, units), units.distance())
}

/// A place along the road, to 0.1: “km 12.2”, “mi 7.6”. The number alone stands behind the unit, so that a place is
/// not read as a length.
#[must_use]
pub fn place(metres: f64, units: Units) -> String {
    format!("{}{NO_BREAK}{}", units.distance(), distance_number(metres, units))
}

/// A distance without its unit.
#[must_use]
pub fn distance_number(metres: f64, units: Units) -> String {
    tenths(metres / units.metres_per_distance())
}

/// Two places along the road: “km 12.2 to 17.3”.
#[must_use]
pub fn span(from_m: f64, to_m: f64, units: Units) -> String {
    format!("{} {} {}", place(from_m, units), numerals().to, distance_number(to_m, units))
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

/// A speed to hold, without its unit.
#[must_use]
pub fn hold_number(metres_per_second: f64, units: Units) -> String {
    whole(hold_value(metres_per_second, units))
}

/// A speed to hold as a number: whole, rounded down.
#[must_use]
pub fn hold_value(metres_per_second: f64, units: Units) -> f64 {
    floor(metres_per_second / units.metres_per_second_per_speed())
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
