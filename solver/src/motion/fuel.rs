//! Fuel consumption: linear in power and engine speed.

use super::forces::Trip;
use crate::truck::Gear;
use crate::units::{Joules, MetresPerSecond, Newtons, Watts};

/// Efficiency of the fuel burnt beyond turning the engine over (value from memory).
const INDICATED_EFFICIENCY: f64 = 0.42;
/// Heating value of diesel fuel, J/kg (value from memory).
const HEATING_VALUE: f64 = 42.8e6;
/// Density of diesel fuel, kg/l (value from memory).
const DENSITY: f64 = 0.84;

/// Fuel power while the engine pulls with this force at the wheels: the motoring power plus the brake power
/// over 0.42. No fuel is burnt while the wheels drive the engine.
#[must_use]
pub fn fuel_power(trip: Trip<'_>, gear: Gear, speed: MetresPerSecond, pull: Newtons) -> Watts {
    if pull.0 <= 0.0 {
        return Watts(0.0);
    }
    let engine = trip.truck.engine_speed(gear, speed);
    let brake = trip.truck.torque_to_pull(gear, speed, pull) * engine.radians_per_second();
    trip.truck.motoring_power(engine) + Watts(brake / INDICATED_EFFICIENCY)
}

/// Litres of diesel fuel with this energy.
#[must_use]
pub fn litres_of_fuel(energy: Joules) -> f64 {
    energy.0 / HEATING_VALUE / DENSITY
}
