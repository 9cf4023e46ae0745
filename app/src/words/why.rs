//! Words of the reasons.

use crate::format::Units;
use solver::day::Day;
use solver::plan::{Advice, Choice, Descent, NoSafeSpeed, Note};

/// Words of the reasons.
pub trait WhyWords {
    /// Label of what governs.
    fn governs_label(&self) -> &'static str;
    /// What keeps the speed from being higher; or why no speed was found.
    fn governs(&self, descent: &Descent, day: &Day, units: Units) -> String {
        match &descent.choice {
            Choice::Held(advice) => self.why_not_faster(advice, day, units),
            Choice::NoSafeSpeed(none) => self.why_no_speed(none, day, units),
        }
    }
    /// What keeps the speed from being higher.
    fn why_not_faster(&self, advice: &Advice, day: &Day, units: Units) -> String;
    /// Why no speed was found.
    fn why_no_speed(&self, none: &NoSafeSpeed, day: &Day, units: Units) -> String;
    /// A note of the plan.
    fn note(&self, note: Note) -> &'static str;
}
