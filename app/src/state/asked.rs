//! What is asked of the worker: files, and what to make of them.

use crate::browser::file::GivenFile;
use crate::entries::Entries;
use crate::lesson::Lesson;
use solver::day::Day;
use solver::road::Roadside;
use solver::truck::TruckSpec;
use workers::message::{Also, Carried, Given, RoadFacts, Task};

/// Where a road comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Origin {
    /// A person gave it: it comes back at the next visit.
    Given,
    /// It is the demo.
    Demo,
    /// It is a teaching road.
    Lesson(Lesson),
}

/// A file on the way, and whether it is driven backwards.
#[derive(Clone)]
pub(crate) struct Leg {
    /// The file.
    pub(crate) file: GivenFile,
    /// Driven against the direction of recording.
    pub(crate) turned: bool,
}

/// One file, or several that are joined; numbered so that two of the same name are told apart.
#[derive(Clone)]
pub(super) struct Source {
    /// Its number.
    pub(super) number: u32,
    /// The files in the order of travel; at least one.
    pub(super) legs: Vec<Leg>,
    /// Recordings of the same road beside the first one.
    pub(super) also: Vec<Also>,
    /// What was put on the recordings before they became one road.
    pub(super) carried: Option<Carried>,
    /// Where they come from.
    pub(super) origin: Origin,
}

impl Source {
    /// The name to call it by: that of its files.
    pub(super) fn name(&self) -> String {
        let names: Vec<&str> = self.legs.iter().map(|leg| leg.file.name.as_str()).collect();
        names.join(" + ")
    }

    /// Files that make one recording.
    pub(super) fn of(legs: Vec<Leg>, origin: Origin) -> Self {
        Self { number: 0, legs, also: Vec::new(), carried: None, origin }
    }

    /// For each file, whether it is driven backwards.
    pub(super) fn turned(&self) -> Vec<bool> {
        self.legs.iter().map(|leg| leg.turned).collect()
    }

    /// Files of another recording of the same road behind these.
    pub(super) fn append(&mut self, other: &Self, course: Option<usize>) {
        let from = self.legs.len();
        self.legs.extend(other.legs.iter().cloned());
        self.also.push(Also { from, course });
        self.also.extend(other.also.iter().map(|it| Also { from: it.from + from, ..*it }));
    }

    /// What the files are to one another.
    pub(super) fn given(&self) -> Given {
        Given { turned: self.turned(), also: self.also.clone(), carried: self.carried.clone() }
    }
}

/// Course, part and direction wanted, beside the entries.
#[derive(Clone)]
pub(super) struct Aim {
    pub(super) source: Source,
    pub(super) course: Option<usize>,
    pub(super) part: Option<(usize, usize)>,
    pub(super) reversed: bool,
    pub(super) roadside: Option<Roadside>,
}

impl Aim {
    /// All of a course in the direction of recording, with what the file has on it.
    pub(super) fn new(source: Source, course: Option<usize>) -> Self {
        Self { source, course, part: None, reversed: false, roadside: None }
    }

    /// The same with truck and day.
    pub(super) fn with(self, entries: Entries) -> Asked {
        let Self { source, course, part, reversed, roadside } = self;
        let task = Task { course, part, reversed, roadside, truck: entries.truck, day: entries.day };
        Asked { source, task }
    }
}

/// What is worked out, or wanted.
#[derive(Clone)]
pub(super) struct Asked {
    /// The files.
    pub(super) source: Source,
    /// Track, part, direction, truck, day.
    pub(super) task: Task,
}

impl Asked {
    /// All of the road of a file, with what the file has on it.
    pub(super) fn file(leg: Leg, truck: TruckSpec, day: Day) -> Self {
        let source = Source::of(vec![leg], Origin::Given);
        let task = Task { course: None, part: None, reversed: false, roadside: None, truck, day };
        Self { source, task }
    }

    /// The same without truck and day.
    pub(super) fn aim(&self) -> Aim {
        let Task { course, part, reversed, ref roadside, .. } = self.task;
        Aim { source: self.source.clone(), course, part, reversed, roadside: roadside.clone() }
    }

    /// Names the course and the part that the answer took.
    pub(super) fn take_road(&mut self, road: &RoadFacts) {
        (self.task.course, self.task.part) = (Some(road.course), road.part);
    }

    /// Whether both are the same part of the same road in the same direction.
    pub(super) fn is_same_road(&self, other: &Self) -> bool {
        let road = |it: &Self| (it.source.number, it.task.course, it.task.part, it.task.reversed);
        road(self) == road(other)
    }

    /// Whether both ask for the same; an unnamed course is any.
    pub(super) fn is(&self, other: &Self) -> bool {
        let same_course = self.task.course == other.task.course
            || self.task.course.is_none()
            || other.task.course.is_none();
        self.source.number == other.source.number
            && same_course
            && self.task.part == other.task.part
            && self.task.reversed == other.task.reversed
            && self.task.roadside == other.task.roadside
            && self.task.truck == other.task.truck
            && self.task.day == other.task.day
    }
}
