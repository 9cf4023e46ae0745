//! Trucks and days that several checks use.

use solver::day::Day;
use solver::truck::{EngineBrake, EngineCurve, Preset, Retarder, TorquePoint, Truck, TruckSpec};
use solver::units::{RevPerMin, Watts};

/// Metres per second in one mile per hour. Exact.
pub const MPH: f64 = 0.447_04;
/// Metres in one foot. Exact.
pub const FOOT: f64 = 0.3048;
/// Kilograms in one pound. Exact.
pub const POUND: f64 = 0.453_592_37;
/// Watts in one mechanical horsepower.
pub const HORSEPOWER: f64 = 745.699_872;

/// A preset as a truck.
///
/// # Panics
/// Never: every preset is a valid truck, and a test of the solver checks that.
#[must_use]
pub fn preset(preset: Preset) -> Truck {
    truck(preset.spec())
}

/// A truck with this data.
///
/// # Panics
/// Where the data make no valid truck; the sentence says why.
#[must_use]
pub fn truck(spec: TruckSpec) -> Truck {
    Truck::new(spec).unwrap_or_else(|e| panic!("not a truck: {e}"))
}

/// Rated power of a truck: the largest on its full-load curve.
#[must_use]
pub fn rated_power(truck: &Truck) -> Watts {
    let power = |p: &TorquePoint| p.torque_nm * RevPerMin(p.engine_speed_rpm).radians_per_second();
    Watts(truck.spec().full_load.iter().map(power).fold(0.0, f64::max))
}

/// The loaded 80,000 lb combination with another retarder, or none.
#[must_use]
pub fn loaded_80_000_lb(retarder: Retarder) -> TruckSpec {
    let mut spec = Preset::FiveAxle36.spec();
    spec.retarder = retarder;
    spec
}

/// A retarder with this peak power at the presets' governed speed, in thirds.
#[must_use]
pub fn in_thirds(peak_power_kw: f64) -> Retarder {
    let curve = EngineCurve { peak_power_kw, peak_rpm: 2_100.0, exponent: Some(1.85), cut_out_rpm: 850.0 };
    let brake = EngineBrake::CompressionRelease(curve);
    Retarder::Engine { brake, stages: vec![1.0 / 3.0, 2.0 / 3.0, 1.0] }
}

/// No retarder: the motoring engine alone holds.
#[must_use]
pub fn no_retarder() -> Retarder {
    Retarder::None
}

/// The loaded 80,000 lb combination with this mass per rated power, kg/kW; its whole engine is scaled.
#[must_use]
pub fn with_mass_to_power(kg_per_kw: f64) -> TruckSpec {
    let mut spec = Preset::FiveAxle36.spec();
    let rated = rated_power(&truck(spec.clone())).0 / 1e3;
    let factor = spec.gross_mass_kg / kg_per_kw / rated;
    for point in &mut spec.full_load {
        point.torque_nm *= factor;
    }
    spec
}

/// A gearbox with a gear for any speed: as many close steps as a truck may have.
#[must_use]
pub fn ideal_gears() -> Vec<f64> {
    (0..32).map(|k| 25.0 * 0.89_f64.powi(k)).collect()
}

/// The usual day in the standard atmosphere at sea level: 15 °C.
#[must_use]
pub fn standard_day() -> Day {
    Day { air_c: 15.0, speed_limit_kmh: 110.0, ..Day::USUAL }
}
