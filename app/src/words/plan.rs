//! Words of the plan: the sentence that decides, verdicts, descents, table.

use super::Piece;
use crate::format::{self, Units};
use solver::day::{Day, ServiceBrakes};
use solver::motion::{Answer, Unusable};
use solver::plan::{Advice, Choice, Descent, HeatStep, Note, Plan, SlowCurve, Verdict};
use solver::truck::Stage;

/// The curves of a descent that ask for less than its speed; there is at least one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curves {
    /// How many.
    pub count: usize,
    /// How many of them are hairpins.
    pub hairpins: usize,
    /// The slowest of them.
    pub slowest: SlowCurve,
    /// Where that one begins, m from the start of the road.
    pub at_m: f64,
}

impl Curves {
    /// Those of a descent, where there are any.
    #[must_use]
    pub fn of(plan: &Plan, descent: &Descent, step_m: f64) -> Option<Self> {
        let slowest = *plan.slow_curves(descent).min_by(|a, b| a.speed.0.total_cmp(&b.speed.0))?;
        #[allow(clippy::cast_precision_loss, reason = "a road has far fewer than 2⁵² grid points")]
        let at_m = slowest.curve.from as f64 * step_m;
        Some(Self {
            count: plan.slow_curves(descent).count(),
            hairpins: plan.slow_curves(descent).filter(|it| it.curve.hairpin).count(),
            slowest,
            at_m,
        })
    }
}

/// Words of the plan.
pub trait PlanWords {
    /// A verdict.
    fn verdict(&self, verdict: Verdict) -> &'static str;
    /// A heat step.
    fn heat_step(&self, step: HeatStep) -> &'static str;
    /// “stage 3” or “retarder off”.
    fn stage(&self, stage: Stage) -> String;
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
    /// Label of what governs.
    fn governs_label(&self) -> &'static str;
    /// What keeps the speed from being higher; or why no speed was found, and what would
    /// change that.
    fn governs(&self, descent: &Descent, day: &Day, units: Units) -> String;
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
    /// A note of the plan.
    fn note(&self, note: Note) -> &'static str;
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
    /// Label of the sign.
    fn sign_label(&self) -> &'static str;
    /// What a sign would state.
    fn sign(&self, grade: &str, length: &str) -> String;
    /// Label and sentence of the advice in full.
    fn advice_label(&self) -> &'static str;
    /// Gear, stage, speed, engine speed, reserve, time.
    fn advice(&self, descent: &Descent, units: Units) -> String;
    /// Label of the way down.
    fn way_label(&self) -> &'static str;
    /// One stage span.
    fn stage_span(&self, stage: Stage, from_m: f64, to_m: f64, units: Units) -> String;
    /// Label of reliefs.
    fn relief_label(&self) -> &'static str;
    /// One relief.
    fn relief(&self, from_m: f64, to_m: f64, units: Units) -> String;
    /// Label of the grades.
    fn grades_label(&self) -> &'static str;
    /// Mean and steepest grades, each over its length; `base_m` is what the heights can hold.
    fn grades(&self, descent: &Descent, base_m: f64, units: Units) -> Vec<String>;
    /// Label of the curves.
    fn curves_label(&self) -> &'static str;
    /// Curves of a descent that ask for less than its speed.
    fn curves(&self, curves: &Curves, units: Units) -> Vec<String>;
    /// Label of the climb.
    fn climb_label(&self) -> &'static str;
    /// Gear that climbs the same hill.
    fn climb(&self, descent: &Descent, units: Units) -> String;
    /// The descent ends where the road is not assessed.
    fn cut_short(&self) -> &'static str;
    /// Brakes on arrival.
    fn at_crest(&self, descent: &Descent, units: Units) -> String;
    /// Caption of the table.
    fn table_caption(&self, descent: &Descent, units: Units) -> String;
    /// Heads: gear, speed range.
    fn table_heads(&self) -> [&'static str; 3];
    /// Head of a stage column.
    fn table_stage(&self, stage: usize) -> String;
    /// One answer, first line and second line.
    fn answer(&self, answer: &Answer, units: Units) -> (String, Option<String>);
    /// Why a cell is not usable.
    fn unusable(&self, why: Unusable) -> &'static str;
    /// What the words of the table mean.
    fn table_legend(&self) -> &'static [(&'static str, &'static str)];
    /// The row chosen.
    fn table_chosen(&self) -> &'static str;
    /// Totals of the road, one line.
    fn totals(&self, totals: &solver::plan::Totals, units: Units) -> String;
}
