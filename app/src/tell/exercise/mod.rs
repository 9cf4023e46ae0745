//! Words of exercises with worked answers. The page of a plan does not carry them.

#[cfg(test)]
mod arithmetic;
mod figures;
mod given;
mod line;
mod printed;
mod sums;
mod term;

pub use line::Line;
pub use term::{Label, Term};

use crate::exercise::Exercise;
use crate::format::{self, Units};
use crate::tell::say::capital;
use crate::words::Spoken;
pub use figures::Figures;
use solver::motion::Answer;

impl Spoken {
    /// What is asked.
    #[must_use]
    pub fn question(&self, exercise: &Exercise, units: Units) -> String {
        let figures = Figures::of(exercise, units);
        match exercise {
            Exercise::ControlSpeed(it) => {
                let (mass, grade) = (figures.mass(it.hill.mass.0), figures.per_cent(-it.hill.grade.0));
                self.ask_control_speed(&self.gear(it.gear), &self.stage(it.stage), &mass, &grade)
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
                self.ask_heat(it.place, it.axles, &length, &speed, &figures.power(it.power.0))
            }
        }
    }

    /// The answer, in a sentence or two.
    #[must_use]
    pub fn solution(&self, exercise: &Exercise, units: Units) -> String {
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
                let (gear, stage) = (capital(&self.gear(tried.gear)), self.stage(tried.stage));
                self.gear_chosen(&gear, &stage, &figures.speed(tried.held.speed.0), &engine_speed, &reserve)
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

    /// What is given beside the question, a line each.
    #[must_use]
    pub fn given(&self, exercise: &Exercise, units: Units) -> Vec<String> {
        let figures = Figures::of(exercise, units);
        given::lines(exercise, figures).iter().map(|line| self.line(line, figures)).collect()
    }

    /// The way to the answer, a line each: the formula with its numbers.
    #[must_use]
    pub fn steps(&self, exercise: &Exercise, units: Units) -> Vec<String> {
        let figures = Figures::of(exercise, units);
        sums::lines(exercise, figures).iter().map(|line| self.line(line, figures)).collect()
    }

    /// A line with its label.
    #[doc(hidden)]
    #[must_use]
    pub fn line(&self, line: &Line, figures: Figures) -> String {
        let label = match line.label {
            Label::Term(term) => self.term(term).to_owned(),
            Label::Gear(gear, speed) => self.gear_at(&capital(&self.gear(gear)), &figures.speed(speed.0)),
        };
        let judged = line.enough.map_or("", |it| self.enough(it));
        let between = if judged.is_empty() { "" } else { self.semicolon() };
        format!("{label}{}{}{between}{judged}", self.colon(), line.text)
    }
}

#[cfg(test)]
mod tests;
