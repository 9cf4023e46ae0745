//! What is asked of the worker: a file, and what to make of it.

use crate::browser::file::GivenFile;
use crate::message::Task;

/// A file, numbered so that two of the same name are told apart.
#[derive(Clone)]
pub(super) struct Source {
    /// Its number.
    pub(super) number: u32,
    /// The file.
    pub(super) file: GivenFile,
    /// Whether it is the demo.
    pub(super) demo: bool,
}

/// What is worked out, or wanted.
#[derive(Clone)]
pub(super) struct Asked {
    /// The file.
    pub(super) source: Source,
    /// Track, direction, truck, day.
    pub(super) task: Task,
}

impl Asked {
    /// Whether both ask for the same; an unnamed course is any.
    pub(super) fn is(&self, other: &Self) -> bool {
        let same_course = self.task.course == other.task.course
            || self.task.course.is_none()
            || other.task.course.is_none();
        self.source.number == other.source.number
            && same_course
            && self.task.reversed == other.task.reversed
            && self.task.truck == other.task.truck
            && self.task.day == other.task.day
    }
}
