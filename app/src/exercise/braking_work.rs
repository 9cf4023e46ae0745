//! Exercise: how much energy must be taken away on a descent?

use super::chance::Chance;
use super::setting::{DRAWS, Setting};
use super::{Forces, Hill, round};
use solver::units::{Grade, Joules, Metres, MetresPerSecond};

/// Resistance leaves at least this share of gravity's work to be taken away. Assumed: of less
/// nobody would speak of braking.
const LEAST_LEFT: f64 = 0.1;

/// A descent at a steady speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrakingWork {
    /// Truck, mean grade and air.
    pub hill: Hill,
    /// Height lost.
    pub drop: Metres,
    /// Length along the road: what an odometer shows. That of a plan is horizontal, 0.2 % less at 6 %.
    pub length: Metres,
    /// Speed kept.
    pub speed: MetresPerSecond,
    /// The forces.
    pub forces: Forces,
    /// Work of gravity.
    pub gravity: Joules,
    /// Work against rolling resistance.
    pub rolling: Joules,
    /// Work against the air.
    pub air: Joules,
    /// What is left to be taken away.
    pub left: Joules,
    /// Given: share of it that engine and retarder carry.
    pub carried_share: f64,
    /// Work of engine and retarder.
    pub carried: Joules,
    /// Work of the service brakes.
    pub service: Joules,
}

impl BrakingWork {
    pub(super) fn draw(setting: &Setting<'_>, chance: &mut Chance) -> Option<Self> {
        /// Shares carried by engine and retarder, %.
        const CARRIED: [u8; 5] = [50, 60, 70, 80, 90];
        for _ in 0..DRAWS {
            let slope = setting.slope(chance)?;
            let truck = setting.laden(chance);
            let trip = setting.trip(&truck);
            let drop = round::drop(slope.drop, setting.units);
            let length = round::length(slope.length, setting.units);
            let speed = round::of_fives(setting.pace(slope, chance), setting.units);
            let carried_share = f64::from(chance.pick(&CARRIED).copied().unwrap_or(70)) / 100.0;
            let hill = Hill::of(trip, mean_grade(drop, length), slope.height);
            let forces = Forces::at(trip, &hill, speed);
            let left = forces.demand * length;
            let made = Self {
                hill,
                drop,
                length,
                speed,
                forces,
                gravity: forces.gravity * length,
                rolling: forces.rolling * length,
                air: forces.air * length,
                left,
                carried_share,
                carried: left * carried_share,
                service: left - left * carried_share,
            };
            if made.left.0 >= LEAST_LEFT * made.gravity.0 {
                return Some(made);
            }
        }
        None
    }
}

/// The grade of a road of this length along it: its sine is drop over length.
pub(super) fn mean_grade(drop: Metres, length: Metres) -> Grade {
    Grade(-drop.0 / (length.0 * length.0 - drop.0 * drop.0).sqrt())
}
