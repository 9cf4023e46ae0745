//! Quantities as types: SI units inside, and only the operators that mean something.
//!
//! A `Grade` added to a `Metres` does not compile; power times time is energy. Inside a formula `.0` takes
//! the bare number. What a function returns is a quantity again.

use serde::{Deserialize, Serialize};
use std::ops::{Add, Div, Mul, Neg, Sub};

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self { Self(self.0 + other.0) }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self { Self(self.0 - other.0) }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self { Self(-self.0) }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self { Self(self.0 * factor) }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self { Self(self.0 / divisor) }
        }
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 { self.0 / other.0 }
        }
    };
}

quantity!(
    /// Length or height, m.
    Metres
);
quantity!(
    /// Time, s.
    Seconds
);
quantity!(
    /// Road speed or wind, m/s.
    MetresPerSecond
);
quantity!(
    /// Mass, kg.
    Kilograms
);
quantity!(
    /// Force along the road, N.
    Newtons
);
quantity!(
    /// Power, W.
    Watts
);
quantity!(
    /// Work or heat, J.
    Joules
);
quantity!(
    /// Temperature, °C. The difference of two is in K and has the same size.
    Celsius
);
quantity!(
    /// Engine or shaft speed, 1/min.
    RevPerMin
);
quantity!(
    /// Rise over horizontal distance; **negative is downhill** in the direction of travel.
    Grade
);

impl Mul<MetresPerSecond> for Newtons {
    type Output = Watts;
    fn mul(self, speed: MetresPerSecond) -> Watts {
        Watts(self.0 * speed.0)
    }
}

impl Mul<Seconds> for Watts {
    type Output = Joules;
    fn mul(self, time: Seconds) -> Joules {
        Joules(self.0 * time.0)
    }
}

impl Mul<Metres> for Newtons {
    type Output = Joules;
    fn mul(self, way: Metres) -> Joules {
        Joules(self.0 * way.0)
    }
}

impl Div<MetresPerSecond> for Metres {
    type Output = Seconds;
    fn div(self, speed: MetresPerSecond) -> Seconds {
        Seconds(self.0 / speed.0)
    }
}

impl MetresPerSecond {
    /// From kilometres per hour.
    #[must_use]
    pub fn from_kmh(kmh: f64) -> Self {
        Self(kmh / 3.6)
    }

    /// In kilometres per hour.
    #[must_use]
    pub fn kmh(self) -> f64 {
        self.0 * 3.6
    }
}

impl RevPerMin {
    /// Angular speed in rad/s.
    #[must_use]
    pub fn radians_per_second(self) -> f64 {
        self.0 * std::f64::consts::PI / 30.0
    }
}

impl Grade {
    /// (sin θ, cos θ) of the slope angle θ = atan(i), exactly: i/√(1+i²) and 1/√(1+i²).
    #[must_use]
    pub fn sin_cos(self) -> (f64, f64) {
        let hypotenuse = (1.0 + self.0 * self.0).sqrt();
        (self.0 / hypotenuse, 1.0 / hypotenuse)
    }
}
