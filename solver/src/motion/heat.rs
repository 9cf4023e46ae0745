//! Heat of the service brakes: lumps with exact exponential steps.

use super::forces::Trip;
use super::stopping::stopping_distance;
use crate::constants::{STOP_DECELERATION, STOP_IMBALANCE};
use crate::limits::bounds::AXLE_GROUPS;
use crate::truck::AxleGroup;
use crate::units::{Celsius, Grade, Joules, MetresPerSecond, Seconds, Watts};

/// One lump: C·dT/dt = P − hA·(T − T_air).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatLump {
    /// Heat capacity C, J/K.
    pub capacity: f64,
    /// Heat given off hA, W/K.
    pub cooling: f64,
}

impl HeatLump {
    /// Temperature after `time` with constant power and cooling, exactly:
    /// T∞ + (T − T∞)·exp(−hA·t/C) with T∞ = T_air + P/hA.
    #[must_use]
    pub fn after(self, from: Celsius, air: Celsius, power: Watts, time: Seconds) -> Celsius {
        let settled = air.0 + power.0 / self.cooling;
        Celsius(settled + (from.0 - settled) * libm::exp(-self.cooling * time.0 / self.capacity))
    }

    /// The temperature from which [`HeatLump::after`] leads to `to`.
    #[must_use]
    pub fn before(self, to: Celsius, air: Celsius, power: Watts, time: Seconds) -> Celsius {
        let settled = air.0 + power.0 / self.cooling;
        Celsius(settled + (to.0 - settled) * libm::exp(self.cooling * time.0 / self.capacity))
    }
}

/// Temperatures of a truck's axle groups.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrakeHeat {
    temperatures: [f64; AXLE_GROUPS],
}

impl BrakeHeat {
    /// All groups at one temperature.
    #[must_use]
    pub fn uniform(at: Celsius) -> Self {
        Self { temperatures: [at.0; AXLE_GROUPS] }
    }

    /// Temperatures after `time` at a steady speed with the service brakes taking `power`.
    #[must_use]
    pub fn after(mut self, trip: Trip<'_>, power: Watts, speed: MetresPerSecond, time: Seconds) -> Self {
        let out = trip.truck.out_above().filter(|(index, above)| self.temperatures[*index] >= above.0);
        for (index, (temperature, group)) in self.temperatures.iter_mut().zip(groups(trip)).enumerate() {
            let lump = HeatLump {
                capacity: trip.truck.heat_capacity(group),
                cooling: trip.truck.cooling(group, speed),
            };
            let share = match out {
                None => group.effort_share,
                Some((it, _)) if it == index => 0.0,
                Some((it, _)) => group.effort_share / (1.0 - groups(trip)[it].effort_share),
            };
            *temperature = lump.after(Celsius(*temperature), trip.day.air(), power * share, time).0;
        }
        self
    }

    /// Warms each group by as much as `other`'s group is above a temperature.
    #[must_use]
    pub fn warmer_by(mut self, other: Self, above: Celsius) -> Self {
        for (temperature, other) in self.temperatures.iter_mut().zip(other.temperatures) {
            *temperature += other - above.0;
        }
        self
    }

    /// Group by group the warmer of the two.
    #[must_use]
    pub fn at_least(mut self, other: Self) -> Self {
        for (temperature, other) in self.temperatures.iter_mut().zip(other.temperatures) {
            *temperature = temperature.max(other);
        }
        self
    }

    /// The hottest group.
    #[must_use]
    pub fn hottest(&self, trip: Trip<'_>) -> Celsius {
        Celsius(self.each(trip).map(|(t, _)| t).fold(f64::NEG_INFINITY, f64::max))
    }

    /// The hottest group after one hard stop from this speed on this grade. The heat is half of m·v², half as
    /// much again for brakes that do not share evenly, and the hill's work over the stopping distance.
    /// Rolling, air, engine and retarder are left out: the cautious side.
    #[must_use]
    pub fn hottest_after_stop(&self, trip: Trip<'_>, speed: MetresPerSecond, grade: Grade) -> Celsius {
        self.hottest_with(trip, stopping_work(trip, speed, grade))
    }

    /// The hottest group after the service brakes have taken this work at once.
    #[must_use]
    pub fn hottest_with(&self, trip: Trip<'_>, work: Joules) -> Celsius {
        // Work that a group out of adjustment takes before it stops braking; the others share the rest.
        let out = trip.truck.out_above().map(|(index, above)| {
            let group = &groups(trip)[index];
            let room = (above.0 - self.temperatures[index]).max(0.0) * trip.truck.heat_capacity(group);
            (index, (work.0 * group.effort_share).min(room), 1.0 - group.effort_share)
        });
        let taken = |index: usize, group: &AxleGroup| match out {
            None => work.0 * group.effort_share,
            Some((it, takes, _)) if it == index => takes,
            Some((_, takes, others)) => (work.0 - takes) * group.effort_share / others,
        };
        let after = |(index, (t, group)): (usize, (f64, &AxleGroup))| {
            t + taken(index, group) / trip.truck.heat_capacity(group)
        };
        Celsius(self.each(trip).enumerate().map(after).fold(f64::NEG_INFINITY, f64::max))
    }

    /// Temperature of a group by its index.
    #[must_use]
    pub fn of_group(&self, index: usize) -> Celsius {
        Celsius(self.temperatures[index])
    }

    fn each<'a>(&'a self, trip: Trip<'a>) -> impl Iterator<Item = (f64, &'a AxleGroup)> {
        self.temperatures.iter().copied().zip(groups(trip))
    }
}

fn groups(trip: Trip<'_>) -> &[AxleGroup] {
    &trip.truck.spec().axle_groups
}

/// Heat of one hard stop: [`BrakeHeat::hottest_after_stop`].
fn stopping_work(trip: Trip<'_>, speed: MetresPerSecond, grade: Grade) -> Joules {
    let kinetic = 0.5 * trip.truck.mass().0 * speed.0 * speed.0;
    let hill = trip.gravity(grade).0.max(0.0) * stopping_distance(speed, STOP_DECELERATION).0;
    Joules(STOP_IMBALANCE * kinetic + hill)
}
