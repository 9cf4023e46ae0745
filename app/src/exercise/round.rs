//! What is given, rounded in the units chosen.

use crate::format::{Units, shown_as};
use solver::limits::Quantity;
use solver::units::{Celsius, Grade, Metres, MetresPerSecond, Watts};

/// `value` to the nearest multiple of `step`, both in one unit.
fn to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

/// kg in the unit that masses are rounded to: 1 t or 1,000 lb.
fn mass_step(units: Units) -> f64 {
    match units {
        Units::Metric => 1_000.0,
        Units::Imperial => 1_000.0 / shown_as(Quantity::Mass, units).factor,
    }
}

/// A mass, to 1 t or 1,000 lb, no more than `most`; kg.
pub(super) fn mass(kilograms: f64, most: f64, units: Units) -> f64 {
    let step = mass_step(units);
    let rounded = to(kilograms, step);
    if rounded > most { (most / step).floor() * step } else { rounded }
}

/// Half per cents of a downgrade, 2 to 20 %: a class reckons with no gentler one, and no truck
/// road is steeper. Assumed.
const HALF_PERCENTS: (i32, i32) = (4, 40);

/// A downgrade rounded to half a per cent, and so many halves steeper.
pub(super) fn grade(downgrade: Grade, steeper: i32) -> Grade {
    #[allow(clippy::cast_possible_truncation, reason = "a grade is far below 10⁶")]
    let halves = (-downgrade.0 * 200.0).round() as i32 + steeper;
    Grade(-f64::from(halves.clamp(HALF_PERCENTS.0, HALF_PERCENTS.1)) / 200.0)
}

/// A length along the road, to 0.1 km or 0.1 mi.
pub(super) fn length(length: Metres, units: Units) -> Metres {
    let unit = units.metres_per_distance();
    Metres((length.0 / unit * 10.0).round().max(1.0) / 10.0 * unit)
}

/// A height lost, to 10 m or 50 ft.
pub(super) fn drop(drop: Metres, units: Units) -> Metres {
    let step = match units {
        Units::Metric => 10.0,
        Units::Imperial => 50.0 * units.metres_per_height(),
    };
    Metres(to(drop.0, step).max(step))
}

/// How many fives of km/h or mph are within a speed.
pub(super) fn fives_within(speed: MetresPerSecond, units: Units) -> u32 {
    // A hair more: 40 km/h in m/s and back may be a little less than 40.
    let fives = speed.0 / units.metres_per_second_per_speed() / 5.0 + 1e-6;
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a speed is small and not negative"
    )]
    let fives = fives.max(0.0) as u32;
    fives
}

/// A speed of so many fives of km/h or mph.
pub(super) fn of_fives(fives: u32, units: Units) -> MetresPerSecond {
    MetresPerSecond(f64::from(fives) * 5.0 * units.metres_per_second_per_speed())
}

/// The fastest speed in whole km/h or mph that is within a speed.
pub(super) fn speed_within(speed: MetresPerSecond, units: Units) -> MetresPerSecond {
    let unit = units.metres_per_second_per_speed();
    MetresPerSecond((speed.0 / unit + 1e-6).floor() * unit)
}

/// A temperature, to whole degrees of the units.
pub(super) fn temperature(celsius: Celsius, units: Units) -> Celsius {
    let shown = shown_as(Quantity::Temperature, units);
    Celsius(((celsius.0 * shown.factor + shown.offset).round() - shown.offset) / shown.factor)
}

/// A power, to 10 kW or 10 hp, never none.
pub(super) fn power(power: Watts, units: Units) -> Watts {
    let step = 10.0 * units.watts_per_power();
    Watts(to(power.0, step).max(step))
}
