//! One table of what may be entered: ranges for validation, error text, forms and test generators.

mod off;

pub use off::{Off, off};

use serde::{Deserialize, Serialize};
use std::fmt;

/// Every single number that a person may enter for truck or day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Entry {
    /// Gross combination mass.
    GrossMass,
    /// Mass on the driven axles.
    DriveAxleMass,
    /// Loaded rolling radius of the driven tyres.
    RollingRadius,
    /// Inertia of all wheels together.
    WheelInertia,
    /// Rolling resistance coefficient; the low end for a descent.
    RollingResistance,
    /// Drag coefficient times frontal area.
    DragArea,
    /// Engine displacement.
    Displacement,
    /// Lowest engine speed that is of use for holding and pulling.
    LowestEngineSpeed,
    /// Highest engine speed allowed with the wheels driving the engine.
    HighestEngineSpeed,
    /// Ratio of the driven axle.
    AxleRatio,
    /// Efficiency of the driven axle.
    AxleEfficiency,
    /// Retarding power of all stages at the peak speed, motoring included.
    RetarderPeakPower,
    /// Engine speed of the retarder's peak power.
    RetarderPeakSpeed,
    /// How steeply retarding power rises with engine speed.
    RetarderExponent,
    /// Engine speed below which the retarder is off.
    RetarderCutOut,
    /// Lateral acceleration at which the vehicle would tip, standing on a tilt table.
    RolloverThreshold,
    /// Air temperature.
    AirTemperature,
    /// Brake temperature at the start.
    BrakesAtStart,
    /// Headwind.
    Headwind,
    /// Posted or own speed limit.
    SpeedLimit,
    /// Reserve of holding force.
    Reserve,
    /// Highest brake temperature.
    HeatLimit,
    /// Superelevation of the curves.
    Superelevation,
    /// Time after a shift until a retarder at the engine holds again.
    RetarderDelay,
    /// Measured retarding power over the power that the data state.
    RetardingScale,
    /// Torque of a retarder on the propeller shaft.
    ShaftTorque,
    /// Shaft speed from which a shaft retarder has its full torque, or at which it peaks.
    ShaftSpeed,
    /// Short-term power of a hydrodynamic retarder.
    ShortPower,
    /// Duration of the short-term power.
    ShortTime,
    /// Power that the coolant carries away continuously.
    SustainedPower,
    /// Engine speed for which the sustained power is stated.
    SustainedSpeed,
    /// Hot torque over cold torque of an electromagnetic retarder.
    HotShare,
    /// Time in which an electromagnetic retarder becomes hot.
    WarmUpTime,
    /// Lowest gear in which a torque converter locks up.
    LockUpGear,
    /// Engine speed below which the lock-up opens.
    LockUpSpeed,
    /// Time that the truck stands at each brake check.
    BrakeCheckStop,
    /// Engine speed at which a gearbox that shifts by itself shifts up.
    ShiftsUpSpeed,
    /// Rated power of the engine. It follows from the full-load curve, and entering it scales the curve.
    RatedPower,
    /// Engine speed at which the governor cuts the fuel: the end of the full-load curve. Entering it
    /// stretches the curve.
    GovernedSpeed,
    /// Engine speed at 80 km/h in top gear. It follows from the axle ratio, and entering it sets the ratio.
    TopGearSpeed,
}

/// Kind of number that an entry is; the page shows it in the chosen units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    /// kg.
    Mass,
    /// m.
    Length,
    /// m².
    Area,
    /// kg·m².
    Inertia,
    /// A plain number.
    Number,
    /// A share; 0.15 is shown as 15 %.
    Share,
    /// Litres.
    Volume,
    /// 1/min.
    EngineSpeed,
    /// 1/min at 80 km/h; shown at 50 mph to people who drive in miles.
    EngineSpeedAtPace,
    /// kW.
    Power,
    /// °C.
    Temperature,
    /// km/h.
    Speed,
    /// N·m.
    Torque,
    /// s.
    Time,
    /// min.
    Minutes,
}

impl Entry {
    /// Stable key, as in the truck file's spelling but for the unit.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::GrossMass => "gross_mass",
            Self::DriveAxleMass => "drive_axle_mass",
            Self::RollingRadius => "rolling_radius",
            Self::WheelInertia => "wheel_inertia",
            Self::RollingResistance => "rolling_resistance",
            Self::DragArea => "drag_area",
            Self::Displacement => "displacement",
            Self::LowestEngineSpeed => "lowest_engine_speed",
            Self::HighestEngineSpeed => "highest_engine_speed",
            Self::AxleRatio => "axle_ratio",
            Self::AxleEfficiency => "axle_efficiency",
            Self::RetarderPeakPower => "retarder_peak_power",
            Self::RetarderPeakSpeed => "retarder_peak_speed",
            Self::RetarderExponent => "retarder_exponent",
            Self::RetarderCutOut => "retarder_cut_out",
            Self::AirTemperature => "air_temperature",
            Self::BrakesAtStart => "brakes_at_start",
            Self::Headwind => "headwind",
            Self::SpeedLimit => "speed_limit",
            Self::Reserve => "reserve",
            Self::HeatLimit => "heat_limit",
            Self::RolloverThreshold => "rollover_threshold",
            Self::Superelevation => "superelevation",
            Self::RetarderDelay => "retarder_delay",
            Self::RetardingScale => "retarding_scale",
            Self::ShaftTorque => "shaft_torque",
            Self::ShaftSpeed => "shaft_speed",
            Self::ShortPower => "short_power",
            Self::ShortTime => "short_time",
            Self::SustainedPower => "sustained_power",
            Self::SustainedSpeed => "sustained_speed",
            Self::HotShare => "hot_share",
            Self::WarmUpTime => "warm_up_time",
            Self::LockUpGear => "lock_up_gear",
            Self::LockUpSpeed => "lock_up_speed",
            Self::BrakeCheckStop => "brake_check_stop",
            Self::ShiftsUpSpeed => "shifts_up_speed",
            Self::RatedPower => "rated_power",
            Self::GovernedSpeed => "governed_speed",
            Self::TopGearSpeed => "top_gear_speed",
        }
    }
}

impl Quantity {
    /// The unit of the stored number.
    #[must_use]
    pub fn unit(self) -> &'static str {
        match self {
            Self::Mass => "kg",
            Self::Length => "m",
            Self::Area => "m²",
            Self::Inertia => "kg·m²",
            Self::Number | Self::Share => "",
            Self::Volume => "l",
            Self::EngineSpeed | Self::EngineSpeedAtPace => "1/min",
            Self::Power => "kW",
            Self::Temperature => "°C",
            Self::Speed => "km/h",
            Self::Torque => "N·m",
            Self::Time => "s",
            Self::Minutes => "min",
        }
    }
}

/// The range of one entry, ends included, in the unit of its quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The entry.
    pub entry: Entry,
    /// Kind and unit of the entry.
    pub quantity: Quantity,
    /// Smallest value accepted.
    pub min: f64,
    /// Largest value accepted.
    pub max: f64,
    /// A sensible step for a form, in the same unit.
    pub step: f64,
}

/// An entry outside its range. Its `Display` is for logs: a key that stays, and its values.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct OutOfRange {
    /// The entry; [`of`] has its range.
    pub entry: Entry,
    /// What was entered.
    pub value: f64,
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Limit { min, max, quantity, .. } = *of(self.entry);
        let (key, unit) = (self.entry.key(), quantity.unit());
        write!(f, "out-of-range entry={key} value={} min={min} max={max} unit={unit:?}", self.value)
    }
}

impl std::error::Error for OutOfRange {}

impl Limit {
    /// Accepts a finite value within the range.
    ///
    /// # Errors
    /// [`OutOfRange`] for anything else, NaN included.
    pub fn check(&self, value: f64) -> Result<f64, OutOfRange> {
        if value >= self.min && value <= self.max {
            Ok(value)
        } else {
            Err(OutOfRange { entry: self.entry, value })
        }
    }
}

macro_rules! limit {
    ($entry:ident, $quantity:ident, $min:expr, $max:expr, $step:expr) => {
        Limit { entry: Entry::$entry, quantity: Quantity::$quantity, min: $min, max: $max, step: $step }
    };
}

/// The table. Ranges are wide enough for any road-going heavy vehicle. They keep out slips of the finger and
/// mistaken units, not unusual trucks.
pub const ALL: [Limit; 40] = [
    limit!(GrossMass, Mass, 3_500.0, 200_000.0, 100.0),
    limit!(DriveAxleMass, Mass, 1_000.0, 60_000.0, 100.0),
    limit!(RollingRadius, Length, 0.30, 0.75, 0.001),
    limit!(WheelInertia, Inertia, 10.0, 2_000.0, 1.0),
    limit!(RollingResistance, Number, 0.002, 0.03, 0.0001),
    limit!(DragArea, Area, 1.0, 20.0, 0.1),
    limit!(Displacement, Volume, 1.0, 30.0, 0.1),
    limit!(LowestEngineSpeed, EngineSpeed, 500.0, 2_500.0, 50.0),
    limit!(HighestEngineSpeed, EngineSpeed, 1_200.0, 4_500.0, 50.0),
    limit!(AxleRatio, Number, 1.5, 12.0, 0.01),
    limit!(AxleEfficiency, Share, 0.80, 1.0, 0.005),
    limit!(RetarderPeakPower, Power, 0.0, 800.0, 5.0),
    limit!(RetarderPeakSpeed, EngineSpeed, 1_000.0, 4_500.0, 50.0),
    limit!(RetarderExponent, Number, 1.0, 2.5, 0.05),
    limit!(RetarderCutOut, EngineSpeed, 500.0, 2_000.0, 50.0),
    limit!(RolloverThreshold, Number, 0.2, 1.0, 0.01),
    limit!(AirTemperature, Temperature, -50.0, 60.0, 1.0),
    limit!(BrakesAtStart, Temperature, -50.0, 600.0, 1.0),
    limit!(Headwind, Speed, -80.0, 80.0, 1.0),
    limit!(SpeedLimit, Speed, 10.0, 130.0, 1.0),
    limit!(Reserve, Share, 0.0, 1.0, 0.01),
    limit!(HeatLimit, Temperature, 100.0, 600.0, 5.0),
    limit!(Superelevation, Share, 0.0, 0.12, 0.01),
    limit!(RetarderDelay, Time, 0.0, 5.0, 0.1),
    limit!(RetardingScale, Share, 0.3, 1.5, 0.01),
    limit!(ShaftTorque, Torque, 200.0, 6_000.0, 50.0),
    limit!(ShaftSpeed, EngineSpeed, 200.0, 3_000.0, 50.0),
    limit!(ShortPower, Power, 20.0, 1_000.0, 5.0),
    limit!(ShortTime, Time, 5.0, 600.0, 5.0),
    limit!(SustainedPower, Power, 20.0, 800.0, 5.0),
    limit!(SustainedSpeed, EngineSpeed, 800.0, 3_000.0, 50.0),
    limit!(HotShare, Share, 0.2, 1.0, 0.05),
    limit!(WarmUpTime, Time, 20.0, 1_200.0, 10.0),
    limit!(LockUpGear, Number, 1.0, 12.0, 1.0),
    limit!(LockUpSpeed, EngineSpeed, 700.0, 2_000.0, 50.0),
    limit!(BrakeCheckStop, Minutes, 0.0, 120.0, 5.0),
    limit!(ShiftsUpSpeed, EngineSpeed, 300.0, 5_000.0, 50.0),
    limit!(RatedPower, Power, 30.0, 800.0, 5.0),
    limit!(GovernedSpeed, EngineSpeed, 1_200.0, 4_500.0, 50.0),
    limit!(TopGearSpeed, EngineSpeedAtPace, 400.0, 4_500.0, 10.0),
];

/// Bounds of lists and of searches, named so that every loop has one.
pub mod bounds {
    /// Most gears of a gearbox.
    pub const GEARS: usize = 32;
    /// Most retarder stages, "off" not counted.
    pub const STAGES: usize = 12;
    /// Most rows of a retarder table.
    pub const TABLE_ROWS: usize = 24;
    /// Lowest and highest speed of a retarder table, 1/min.
    pub const TABLE_RPM: (f64, f64) = (200.0, 5_000.0);
    /// Largest value of a retarder table, kW or N·m.
    pub const TABLE_VALUE: f64 = 10_000.0;
    /// Lowest and highest speed of an engine curve, 1/min.
    pub const CURVE_RPM: (f64, f64) = (300.0, 5_000.0);
    /// Most points of an engine curve.
    pub const CURVE_POINTS: usize = 64;
    /// Most axle groups.
    pub const AXLE_GROUPS: usize = 8;
    /// Most axles of one group.
    pub const AXLES_OF_GROUP: u8 = 12;
    /// Smallest and largest gear ratio.
    pub const GEAR_RATIO: (f64, f64) = (0.3, 40.0);
    /// Largest torque of an engine curve, N·m.
    pub const TORQUE: f64 = 6_000.0;
}

/// The range of one entry.
#[must_use]
pub fn of(entry: Entry) -> &'static Limit {
    // The table has the order of the enum; a test checks that.
    &ALL[entry as usize]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_has_the_order_of_the_enum() {
        for limit in &ALL {
            assert_eq!(of(limit.entry), limit);
            assert!(limit.min < limit.max && limit.step > 0.0);
        }
    }

    #[test]
    fn nan_is_outside_every_range() {
        for limit in &ALL {
            assert!(limit.check(f64::NAN).is_err());
        }
    }
}
