//! What is asked of the worker: files, and what to make of them.

use crate::browser::file::GivenFile;
use crate::entries::Entries;
use crate::lesson::Lesson;
use solver::day::Day;
use solver::truck::TruckSpec;
use workers::message::{Also, Carried, Given, RoadChoice, RoadFacts, Task};

/// Where a road comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Origin {
    /// A person gave it: it comes back at the next visit.
    Given,
    /// The road is the demo.
    Demo,
    /// The road is a teaching road.
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
    /// The number of the source.
    pub(super) number: u32,
    /// The files in the order of travel; at least one.
    pub(super) legs: Vec<Leg>,
    /// Recordings of the same road beside the first one.
    pub(super) also: Vec<Also>,
    /// What was put on the recordings before they became one road.
    pub(super) carried: Option<Carried>,
    /// Where the files come from.
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

/// A road wanted, beside the entries.
#[derive(Clone)]
pub(super) struct Aim {
    pub(super) source: Source,
    pub(super) road: RoadChoice,
}

impl Aim {
    /// Asks for this road with truck and day.
    pub(super) fn with(self, entries: Entries) -> Asked {
        let Self { source, road } = self;
        Asked { source, task: Task { road, truck: entries.truck, day: entries.day } }
    }
}

/// What is worked out, or wanted.
#[derive(Clone)]
pub(super) struct Asked {
    /// The files.
    pub(super) source: Source,
    /// Road, truck, day.
    pub(super) task: Task,
}

impl Asked {
    /// All of the road of a file, with what the file has on it.
    pub(super) fn file(leg: Leg, truck: TruckSpec, day: Day) -> Self {
        let source = Source::of(vec![leg], Origin::Given);
        let task = Task::whole(truck, day);
        Self { source, task }
    }

    /// The road without truck and day.
    pub(super) fn aim(&self) -> Aim {
        Aim { source: self.source.clone(), road: self.task.road.clone() }
    }

    /// Names the course and the part that the answer took.
    pub(super) fn take_road(&mut self, road: &RoadFacts) {
        (self.task.road.course, self.task.road.part) = (Some(road.course), road.part);
    }

    /// Whether both name one part of one road in one direction.
    pub(super) fn is_same_road(&self, other: &Self) -> bool {
        let bare = |it: &Self| RoadChoice { roadside: None, ..it.task.road.clone() };
        self.source.number == other.source.number && bare(self) == bare(other)
    }

    /// Whether both ask for one road, truck and day. A course without a name fits any.
    pub(super) fn is(&self, other: &Self) -> bool {
        let mut task = other.task.clone();
        if task.road.course.is_none() || self.task.road.course.is_none() {
            task.road.course = self.task.road.course;
        }
        self.source.number == other.source.number && self.task == task
    }
}
