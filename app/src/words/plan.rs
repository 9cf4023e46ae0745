//! Words of the plan: the sentence that decides, verdicts, descents.

use super::Piece;
use crate::format::{self, Units};
use solver::day::{Day, ServiceBrakes};
use solver::plan::{Advice, Choice, Descent, HeatStep, Verdict};
use solver::truck::{Gear, Stage};

/// Words of the plan.
pub trait PlanWords {
    /// A verdict.
    fn verdict(&self, verdict: Verdict) -> &'static str;
    /// A heat step.
    fn heat_step(&self, step: HeatStep) -> &'static str;
    /// “stage 3” or “retarder off”.
    fn stage(&self, stage: Stage) -> String;
    /// “gear 5”.
    fn gear(&self, gear: Gear) -> String;
    /// “gear 5, stage 3, 38 km/h”.
    fn in_short(&self, advice: &Advice, units: Units) -> String {
        let speed = format::hold_speed(advice.speed.0, units);
        format!("{}, {}, {speed}", self.gear(advice.gear), self.stage(advice.stage))
    }
    /// The sentence that decides, for the deciding one of `count` descents.
    fn decides(&self, descent: &Descent, count: usize, units: Units) -> Vec<Piece>;
    /// Where the road has no descent.
    fn no_descent(&self, partly_unassessed: bool) -> &'static str;
    /// When to engage the gear, and what the descent was chosen for.
    fn chosen_for(&self, descent: &Descent, units: Units) -> String;
    /// Label of all descents in road order.
    fn along_label(&self) -> &'static str;
    /// One of them: where it begins, gear, stage, speed.
    fn along(&self, descent: &Descent, units: Units) -> String;
    /// How many more the list below holds.
    fn along_more(&self, count: usize) -> String;
    /// Label of the other way to use the service brakes.
    fn other_mode_label(&self, day: &Day) -> &'static str;
    /// The advice with the service brakes used in the other way, and the minutes between.
    fn other_mode(&self, descent: &Descent, day: &Day, units: Units) -> String {
        let other = match day.service_brakes {
            ServiceBrakes::InReserve => &descent.snubbing,
            ServiceBrakes::MaySnub => &descent.in_reserve,
        };
        let (Some(here), Some(there)) = (descent.choice.advice(), other.advice()) else {
            return self.choice(other, units);
        };
        let same = here.gear == there.gear
            && here.stage == there.stage
            && format::hold_number(here.speed.0, units) == format::hold_number(there.speed.0, units);
        if same {
            return self.same_choice().to_owned();
        }
        self.choice_apart(&self.choice(other, units), there.time.0 - here.time.0)
    }
    /// The other way comes to the same.
    fn same_choice(&self) -> &'static str;
    /// What the other way comes to, and the time that it takes more, s; less where negative.
    fn choice_apart(&self, choice: &str, more_s: f64) -> String;
    /// Label of the answer with more mass.
    fn heavier_label(&self) -> &'static str;
    /// The answer with more mass.
    fn heavier(&self, heavier: Option<&Choice>, units: Units) -> String;
    /// Label of brake heat.
    fn heat_label(&self) -> &'static str;
    /// Brake heat of an advice.
    fn brake_heat(&self, advice: &Advice, day: &Day, units: Units) -> String;
    /// How to snub.
    fn snub(&self, advice: &Advice, units: Units) -> Option<String>;
    /// A short form of a choice: “gear 5, stage 3, 38 km/h”.
    fn choice(&self, choice: &Choice, units: Units) -> String;
    /// Parked use.
    fn parked(&self) -> &'static str;
    /// Cautions, each a sentence.
    fn cautions(&self) -> &'static [&'static str];
    /// Head of the list.
    fn descents_head(&self, count: usize) -> String;
    /// Buttons of the order.
    fn order(&self) -> &'static str;
    /// Worst first.
    fn worst_first(&self) -> &'static str;
    /// As they come.
    fn road_order(&self) -> &'static str;
    /// Heads of the list's columns: descent, from, length, drop, mean, steepest, gear,
    /// stage, hold, brakes after a stop.
    fn columns(&self) -> [&'static str; 10];
    /// A descent by its number.
    fn descent(&self, number: usize) -> String;
    /// Opens or closes the details.
    fn details_of(&self, number: usize) -> String;
}
