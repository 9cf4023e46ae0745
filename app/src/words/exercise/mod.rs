//! Words of exercises with worked answers. They stand apart from [`super::Words`]: the page of a
//! plan does not carry them.

#[cfg(test)]
mod arithmetic;
mod figures;
mod given;
mod printed;
mod sums;
mod term;

pub use term::{Label, Term};

use crate::exercise::{BrakeHeat, ControlSpeed, Exercise, GearTried};
use crate::format::{self, Units};
use crate::words::LanguageWords;
pub use figures::Figures;
use solver::motion::Answer;
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
    fn question(&self, exercise: &Exercise, units: Units) -> String {
        let figures = Figures::of(exercise, units);
        match exercise {
            Exercise::ControlSpeed(it) => {
                let (mass, grade) = (figures.mass(it.hill.mass.0), figures.per_cent(-it.hill.grade.0));
                self.ask_control_speed(it, &mass, &grade)
            }
            Exercise::GearChoice(it) => {
                let (mass, grade) = (figures.mass(it.hill.mass.0), figures.per_cent(-it.hill.grade.0));
                self.ask_gear(&mass, &grade, &figures.per_cent(it.reserve))
            }
            Exercise::BrakingWork(it) => self.ask_work(
                &figures.mass(it.hill.mass.0),
                &figures.metres(it.drop.0),
                &figures.length(it.length.0),
                &figures.speed(it.speed.0),
                &figures.per_cent(it.carried_share),
            ),
            Exercise::Haste(it) => {
                let [fast, slow] = [it.fast, it.slow].map(|it| figures.speed(it.0));
                self.ask_time(&figures.length(it.length.0), &fast, &slow)
            }
            Exercise::BrakeHeat(it) => {
                let (length, speed) = (figures.length(it.length.0), figures.speed(it.speed.0));
                self.ask_heat(it, &length, &speed, &figures.power(it.power.0))
            }
        }
    }
    /// Whether a truck of this mass settles on this grade, in the gear and stage of the exercise.
    fn ask_control_speed(&self, it: &ControlSpeed, mass: &str, grade: &str) -> String;
    /// Which is the highest gear that holds it with this reserve.
    fn ask_gear(&self, mass: &str, grade: &str, reserve: &str) -> String;
    /// How much energy must be taken away, where engine and retarder carry this share.
    fn ask_work(&self, mass: &str, drop: &str, length: &str, speed: &str, share: &str) -> String;
    /// How much time the faster of two speeds saves.
    fn ask_time(&self, length: &str, fast: &str, slow: &str) -> String;
    /// How warm the brakes of the exercise are at the foot.
    fn ask_heat(&self, it: &BrakeHeat, length: &str, speed: &str, power: &str) -> String;
    /// The answer, in a sentence or two.
    fn solution(&self, exercise: &Exercise, units: Units) -> String {
        let figures = Figures::of(exercise, units);
        match exercise {
            Exercise::ControlSpeed(it) => {
                let speed = figures.speed(it.shown.speed.0);
                match it.answer {
                    Answer::Settles { engine_speed, .. } => {
                        self.settles(&speed, &format::engine_speed(engine_speed.0))
                    }
                    Answer::MoreThanNeeded => self.slows_down().to_owned(),
                    Answer::Overruns { above: Some(_) } => self.gets_away_above(&speed),
                    Answer::Overruns { above: None } | Answer::NotUsable(_) => self.gets_away().to_owned(),
                }
            }
            Exercise::GearChoice(it) => {
                let Some(tried) = it.answer.and_then(|at| it.gears.get(at)) else {
                    return self.no_gear_keeps().to_owned();
                };
                let engine_speed = format::engine_speed(tried.held.engine_speed.0);
                let reserve = format::margin(tried.held.reserve());
                self.gear_chosen(tried, &figures.speed(tried.held.speed.0), &engine_speed, &reserve)
            }
            Exercise::BrakingWork(it) => {
                self.work_left(&figures.energy(it.left.0), &figures.energy(it.service.0))
            }
            Exercise::Haste(it) => self.time_saved(&figures.minutes(it.saved.0), &figures.ratio(it.energy)),
            Exercise::BrakeHeat(it) => {
                let [foot, limit] = [it.foot, it.limit].map(|it| figures.temperature(it.0));
                self.warm_at_foot(&foot, &limit, it.over_limit())
            }
        }
    }
    /// Where it settles.
    fn settles(&self, speed: &str, engine_speed: &str) -> String;
    /// It holds back more than needed at every speed.
    fn slows_down(&self) -> &'static str;
    /// It overruns above this speed.
    fn gets_away_above(&self, speed: &str) -> String;
    /// It overruns at every speed.
    fn gets_away(&self) -> &'static str;
    /// The gear that is the answer, its stage, speed, engine speed and reserve.
    fn gear_chosen(&self, tried: &GearTried, speed: &str, engine_speed: &str, reserve: &str) -> String;
    /// No gear keeps the reserve.
    fn no_gear_keeps(&self) -> &'static str;
    /// The energy to be taken away, and what of it is left for the service brakes.
    fn work_left(&self, left: &str, service: &str) -> String;
    /// The time saved, and how many times as large the energy of motion is.
    fn time_saved(&self, time: &str, times: &str) -> String;
    /// How warm the brakes are at the foot, whether over the limit, and what is left out.
    fn warm_at_foot(&self, foot: &str, limit: &str, over: bool) -> String;
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
