//! Words of the teaching roads. Only the page of the class says them: no part of [`super::Words`].

use crate::lesson::Lesson;
use crate::words::Spoken;

/// What is said of a teaching road.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LessonNote {
    /// Its name.
    pub name: &'static str,
    /// What it shows.
    pub shows: &'static str,
    /// What is often believed. Common practice, no source.
    pub believed: &'static str,
    /// What happens to the first truck on the usual day. No figures: those stand in the plan. Each
    /// statement is held by `tests/property/lessons.rs`.
    pub happens: &'static str,
    /// A question to the class.
    pub question: &'static str,
}

impl Spoken {
    /// The note of one.
    #[must_use]
    pub fn lesson(&self, lesson: Lesson) -> LessonNote {
        let [name, shows, believed, happens, question] = match lesson {
            Lesson::FalseFinish => self.lesson_false_finish(),
            Lesson::ThreeSteps => self.lesson_three_steps(),
            Lesson::ShortAndSteep => self.lesson_short_and_steep(),
            Lesson::LongAndGentle => self.lesson_long_and_gentle(),
            Lesson::Hairpins => self.lesson_hairpins(),
        };
        LessonNote { name, shows, believed, happens, question }
    }
}
