//! Words of one descent's details, and of its table.

use crate::cab;
use crate::format::Units;
use solver::motion::{Answer, Unusable};
use solver::plan::{Descent, Plan, SlowCurve, Totals};
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
        let slowest = plan.slowest_curve(descent)?;
        Some(Self {
            count: plan.slow_curves(descent).count(),
            hairpins: plan.slow_curves(descent).filter(|it| it.curve.hairpin).count(),
            slowest,
            at_m: cab::metres(slowest.curve.from, step_m),
        })
    }
}

/// Words of one descent's details.
pub trait DescentWords {
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
    fn totals(&self, totals: &Totals, units: Units) -> String;
}
