//! Words of the teaching roads. Only the page of the class says them: no part of [`super::Words`].

use crate::lesson::Lesson;

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

/// Words of the teaching roads.
pub trait LessonWords {
    /// Head of their list.
    fn lessons_head(&self) -> &'static str;
    /// That they are invented.
    fn lessons_invented(&self) -> &'static str;
    /// For which truck and day it is said what happens.
    fn lessons_said_for(&self) -> &'static str;
    /// Label of what one shows.
    fn lesson_shows_label(&self) -> &'static str;
    /// Label of what is often believed.
    fn lesson_believed_label(&self) -> &'static str;
    /// Label of what happens.
    fn lesson_happens_label(&self) -> &'static str;
    /// Label of the question.
    fn lesson_question_label(&self) -> &'static str;
    /// The note of one.
    fn lesson(&self, lesson: Lesson) -> LessonNote;
}
