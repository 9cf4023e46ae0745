//! Words of exercises with worked answers. They stand apart from [`super::Words`]: the page of a
//! plan does not carry them.

#[cfg(test)]
mod arithmetic;
mod figures;
mod given;
mod sums;
mod term;

pub use term::{Label, Term};

use crate::exercise::Exercise;
use crate::format::Units;
use crate::words::LanguageWords;
pub use figures::Figures;
use solver::truck::Gear;

/// A line of what is given, or of the way to an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What it is about.
    pub label: Label,
    /// Numbers, signs and units; the same in every language but for the signs in numbers.
    pub text: String,
    /// Of a gear that is tried: whether it keeps the reserve.
    pub enough: Option<bool>,
}

impl Line {
    fn of(term: Term, text: String) -> Self {
        Self { label: Label::Term(term), text, enough: None }
    }
}

/// Words of exercises with worked answers.
///
/// A blank sheet is [`ExerciseWords::question`] and [`ExerciseWords::given`] with room to write;
/// an answer sheet adds [`ExerciseWords::steps`] and [`ExerciseWords::solution`].
pub trait ExerciseWords: LanguageWords + Send + Sync {
    /// Head of the section.
    fn exercise_head(&self) -> &'static str;
    /// What it is good for.
    fn exercise_sentence(&self) -> &'static str;
    /// Head of a sheet.
    fn sheet_head(&self, seed: u32) -> String;
    /// Title of the sheet without answers.
    fn blank_sheet(&self) -> &'static str;
    /// Title of the sheet with answers.
    fn answer_sheet(&self) -> &'static str;
    /// Draws another set.
    fn another_set(&self) -> &'static str;
    /// That a sheet teaches, and is no advice for a road.
    fn sheet_caution(&self) -> &'static str;
    /// Where the road has no descent to set exercises on.
    fn no_exercises(&self) -> &'static str;
    /// Why exercises on gear and stage are left out.
    fn stages_left_out(&self) -> &'static str;
    /// Head of one, by its number on the sheet, from 1.
    fn exercise(&self, number: usize, exercise: &Exercise) -> String;
    /// Label of what is given.
    fn given_label(&self) -> &'static str;
    /// Label of the room to write.
    fn room_label(&self) -> &'static str;
    /// Label of the worked steps.
    fn steps_label(&self) -> &'static str;
    /// Label of the answer.
    fn solution_label(&self) -> &'static str;
    /// What is asked.
    fn question(&self, exercise: &Exercise, units: Units) -> String;
    /// The answer, in a sentence or two.
    fn solution(&self, exercise: &Exercise, units: Units) -> String;
    /// Name of a quantity.
    fn term(&self, term: Term) -> &'static str;
    /// “Gear 6 at 36 km/h”.
    fn gear_at(&self, gear: Gear, speed: &str) -> String;
    /// Whether a gear that is tried keeps the reserve.
    fn enough(&self, enough: bool) -> &'static str;
    /// What is given beside the question, a line each.
    fn given(&self, exercise: &Exercise, units: Units) -> Vec<String> {
        let figures = Figures::of(exercise, units);
        given::lines(exercise, figures).iter().map(|line| self.line(line, figures)).collect()
    }
    /// The way to the answer, a line each: the formula with its numbers.
    fn steps(&self, exercise: &Exercise, units: Units) -> Vec<String> {
        let figures = Figures::of(exercise, units);
        sums::lines(exercise, figures).iter().map(|line| self.line(line, figures)).collect()
    }
    /// A line with its label.
    #[doc(hidden)]
    fn line(&self, line: &Line, figures: Figures) -> String {
        let label = match line.label {
            Label::Term(term) => self.term(term).to_owned(),
            Label::Gear(gear, speed) => self.gear_at(gear, &figures.speed(speed.0)),
        };
        let judged = line.enough.map_or("", |it| self.enough(it));
        let between = if judged.is_empty() { "" } else { self.semicolon() };
        format!("{label}{}{}{between}{judged}", self.colon(), line.text)
    }
}

#[cfg(test)]
mod tests;
