//! The two sets of units.

use serde::{Deserialize, Serialize};

/// The two sets of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Units {
    /// km/h, m, t, °C.
    Metric,
    /// mph, ft, lb, °F.
    Imperial,
}

pub(super) const METRES_PER_MILE: f64 = 1_609.344;
pub(super) const METRES_PER_FOOT: f64 = 0.3048;
/// Exact: a pound of 0.453 592 37 kg at 9.806 65 m/s².
pub(super) const NEWTONS_PER_POUND_FORCE: f64 = 4.448_221_615_260_5;
pub(super) const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;
pub(super) const KILOWATTS_PER_HORSEPOWER: f64 = 0.745_699_872;
pub(super) const LITRES_PER_US_GALLON: f64 = 3.785_411_784;

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
