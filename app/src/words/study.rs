//! Words of what follows from a plan: what would change it, how sure it is, what if.

use crate::format::Units;
use solver::plan::{Carried, Change};
use solver::study::{Adjustment, DescentSureness, Lost, Measured, NotMeasured, Slowing};

/// Words of a study.
pub trait StudyWords {
    /// Label of what would change the answer.
    fn change_label(&self) -> &'static str;
    /// What would let the retarder hold it with the reserve.
    fn change(&self, change: &Change, reserve: f64, units: Units) -> Vec<String>;
    /// Label of what is carried into a rise.
    fn carried_label(&self) -> &'static str;
    /// What is carried into a rise.
    fn carried(&self, carried: Carried, units: Units) -> String;
    /// Label of how sure it is.
    fn sure_label(&self) -> &'static str;
    /// How sure it is, of so many runs.
    fn sure(&self, sure: &DescentSureness, runs: usize, units: Units) -> Vec<String>;
    /// Why it is not worked out.
    fn too_long_to_be_sure(&self) -> &'static str;
    /// While that is worked out.
    fn studying(&self, share: f32) -> String;
    /// What is still worked out.
    fn not_yet(&self) -> &'static str;
    /// Label of the lost retarder.
    fn lost_label(&self) -> &'static str;
    /// What is left then.
    fn lost(&self, lost: &Lost, crest_m: f64, foot_m: f64, units: Units) -> Vec<String>;
    /// Label of brakes out of adjustment.
    fn adjustment_label(&self) -> &'static str;
    /// What comes of it, a sentence a group.
    fn adjustment(&self, all: &[Adjustment], units: Units) -> Vec<String>;
    /// Label of slowing ahead.
    fn slowing_label(&self) -> &'static str;
    /// What the list of it means.
    fn slowing_sentence(&self) -> &'static str;
    /// Heads of its columns: place, what, speed, where, gear, the service brakes alone.
    fn slowing_heads(&self) -> [&'static str; 6];
    /// One row of it.
    fn slowing(&self, slowing: &Slowing, units: Units) -> [String; 6];
    /// How many more there are.
    fn slowing_more(&self, count: usize) -> String;
    /// How sure it is, in one sentence.
    fn sure_in_short(&self, sure: &DescentSureness, runs: usize) -> String;
    /// Head of the evidence.
    fn evidence_head(&self) -> &'static str;
    /// What it is.
    fn evidence_sentence(&self) -> &'static str;
    /// How many values there are, and how many are known to differ.
    fn evidence_count(&self, rows: usize, known: usize) -> String;
    /// Heads of its columns: what, the source's value, ours, the difference.
    fn evidence_heads(&self) -> [&'static str; 4];
    /// Mark of a value that is known to differ.
    fn evidence_difference(&self) -> &'static str;
    /// It cannot be fetched.
    fn evidence_missing(&self) -> &'static str;
    /// Head of the panel in which a steady speed is entered.
    fn measured_head(&self) -> &'static str;
    /// What it is for.
    fn measured_sentence(&self) -> &'static str;
    /// Labels of gear, stage, engine speed, speed, grade and place.
    fn measured_fields(&self) -> [&'static str; 6];
    /// Hint of the place.
    fn measured_place_hint(&self) -> &'static str;
    /// Works it out.
    fn measure(&self) -> &'static str;
    /// A field that cannot be read.
    fn measured_missing(&self) -> &'static str;
    /// What was measured.
    fn measured(&self, measured: &Measured, units: Units) -> String;
    /// Why nothing was.
    fn not_measured(&self, why: &NotMeasured) -> String;
    /// Scales the truck's retarder by it.
    fn use_measured(&self) -> &'static str;
    /// Back to what its data say.
    fn undo_measured(&self) -> &'static str;
    /// What is in use now.
    fn scale_in_use(&self, scale: f64) -> String;
}
