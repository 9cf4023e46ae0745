//! What exercises are drawn from: a road, a truck and a day.

use super::chance::Chance;
use super::ground::{Ground, Slope};
use super::round;
use crate::format::Units;
use solver::day::Day;
use solver::motion::Trip;
use solver::truck::Truck;

/// Most draws of what is given before an exercise is set as it came, or left out.
pub(super) const DRAWS: usize = 12;

/// What exercises are drawn from.
pub(super) struct Setting<'a> {
    pub(super) ground: &'a Ground,
    pub(super) truck: &'a Truck,
    pub(super) day: &'a Day,
    pub(super) units: Units,
}

impl<'a> Setting<'a> {
    /// The truck with 60 to 100 % of the mass entered, rounded; as entered where that is no truck.
    pub(super) fn laden(&self, chance: &mut Chance) -> Truck {
        /// Shares of the gross mass, %.
        const SHARES: [u8; 9] = [60, 65, 70, 75, 80, 85, 90, 95, 100];
        let mut spec = self.truck.spec().clone();
        let entered = spec.gross_mass_kg;
        let share = f64::from(chance.pick(&SHARES).copied().unwrap_or(100)) / 100.0;
        spec.gross_mass_kg = round::mass(entered * share, entered, self.units);
        spec.drive_axle_mass_kg *= spec.gross_mass_kg / entered;
        Truck::new(spec).unwrap_or_else(|_| self.truck.clone())
    }

    pub(super) fn trip<'b>(&'b self, truck: &'b Truck) -> Trip<'b> {
        Trip { truck, day: self.day }
    }

    pub(super) fn slope(&self, chance: &mut Chance) -> Option<&'a Slope> {
        chance.pick(&self.ground.slopes)
    }

    /// A speed to keep on a slope: what the plan holds there, or one or two steps of 5 less; in
    /// whole fives, never below one five.
    pub(super) fn pace(&self, slope: &Slope, chance: &mut Chance) -> u32 {
        let hold = round::fives_within(slope.hold, self.units);
        let less = u32::try_from(chance.below(3)).unwrap_or(0);
        hold.saturating_sub(less).max(hold.min(2)).max(1)
    }
}
