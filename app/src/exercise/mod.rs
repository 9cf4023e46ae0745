//! Exercises with worked answers for a class, on the descents of a road and the truck entered.
//!
//! An exercise holds what is given, the answer, and every figure of the way to it, as the solver
//! works them out; [`crate::tell`] puts them into sentences. What is given is
//! round in the units chosen, so that a class can reckon with it; so the same seed gives other
//! figures in other units.
//!
//! Exercises teach arithmetic. None of their figures is advice for a road: mass, grade and speed
//! are varied.

mod brake_heat;
mod braking_work;
mod chance;
mod control_speed;
mod forces;
mod gear_choice;
mod ground;
mod haste;
mod round;
mod setting;

pub use brake_heat::BrakeHeat;
pub use braking_work::BrakingWork;
pub use control_speed::ControlSpeed;
pub use forces::{Forces, Held, Hill};
pub use gear_choice::{GearChoice, GearTried};
pub use ground::{Ground, Slope};
pub use haste::Haste;

use crate::format::Units;
use chance::Chance;
use setting::Setting;
use solver::day::Day;
use solver::truck::{Truck, TruckError, TruckSpec};

/// A set of exercises.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What the set was drawn with: a seed gives one set on every machine.
    pub seed: u32,
    /// The units in which what is given is round.
    pub units: Units,
    /// The exercises, in the order in which they are set. Empty for a road without a descent.
    pub exercises: Vec<Exercise>,
    /// The day lets no retarder stage be recommended: exercises on gear and stage are left out.
    pub stages_withheld: bool,
}

/// One exercise.
#[derive(Debug, Clone, PartialEq)]
pub enum Exercise {
    /// Does a gear and stage settle on a grade, and where?
    ControlSpeed(ControlSpeed),
    /// Which is the highest gear that holds a grade with the reserve?
    GearChoice(GearChoice),
    /// How much energy must be taken away on a descent?
    BrakingWork(BrakingWork),
    /// How much time does going faster save?
    Haste(Haste),
    /// How warm are the service brakes at the foot?
    BrakeHeat(BrakeHeat),
}

impl Sheet {
    /// Draws a set.
    ///
    /// # Errors
    /// [`TruckError`] where what was entered is no truck.
    pub fn new(
        seed: u32,
        units: Units,
        ground: &Ground,
        spec: &TruckSpec,
        day: &Day,
    ) -> Result<Self, TruckError> {
        let truck = Truck::new(spec.clone())?;
        let setting = Setting { ground, truck: &truck, day, units };
        let stages_withheld = day.withheld().is_some();
        let drawn = KINDS.into_iter().zip(0..).filter(|((_, staged), _)| !(*staged && stages_withheld));
        let exercises = drawn.filter_map(|((draw, _), place)| draw(&setting, &mut Chance::new(seed, place)));
        Ok(Self { seed, units, exercises: exercises.collect(), stages_withheld })
    }
}

/// Draws one exercise; `None` where ground and truck give none of its kind.
type Draw = fn(&Setting<'_>, &mut Chance) -> Option<Exercise>;

/// The exercises of a set, and whether each is about gear and stage.
const KINDS: [(Draw, bool); 6] = [
    (|setting, chance| ControlSpeed::settling(setting, chance).map(Exercise::ControlSpeed), true),
    (|setting, chance| ControlSpeed::not_settling(setting, chance).map(Exercise::ControlSpeed), true),
    (|setting, chance| GearChoice::draw(setting, chance).map(Exercise::GearChoice), true),
    (|setting, chance| BrakingWork::draw(setting, chance).map(Exercise::BrakingWork), false),
    (|setting, chance| Haste::draw(setting, chance).map(Exercise::Haste), false),
    (|setting, chance| BrakeHeat::draw(setting, chance).map(Exercise::BrakeHeat), false),
];

#[cfg(test)]
mod right;
#[cfg(test)]
pub(crate) mod samples;
#[cfg(test)]
mod tests;
