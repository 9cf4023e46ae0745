//! A road with all that was entered for it: it can be put away, and be shown again.

use super::asked::{Asked, Leg, Origin, Source};
use crate::browser::file::GivenFile;
use solver::report::project::{ProjectFile, ProjectRecording, ProjectRoad};
use workers::message::{Also, RoadChoice, Task};

/// A road with all that was entered for it.
#[derive(Clone)]
pub(crate) struct Entered {
    pub(super) asked: Asked,
    /// What was typed for the marker at its start.
    pub(super) marker: String,
    pub(super) counts_down: bool,
}

impl Entered {
    /// A road asked for, with nothing entered for its markers.
    pub(super) fn of(asked: Asked) -> Self {
        Self { asked, marker: String::new(), counts_down: false }
    }

    /// The files of the road.
    pub(super) fn files(&self) -> impl Iterator<Item = GivenFile> {
        self.asked.source.legs.iter().map(|leg| leg.file.clone())
    }

    /// A road of a project made of it, which names its files.
    pub(super) fn to_project(&self) -> ProjectRoad {
        let Asked { source, task } = &self.asked;
        let RoadChoice { course, part, reversed, roadside } = task.road.clone();
        let file = |leg: &Leg| ProjectFile {
            name: leg.file.name.clone(),
            bytes: leg.file.bytes(),
            backwards: leg.turned,
        };
        ProjectRoad {
            truck: task.truck.clone(),
            day: task.day,
            course,
            part,
            reversed,
            roadside,
            marker: self.marker.clone(),
            counts_down: self.counts_down,
            note: String::new(),
            invented: source.origin != Origin::Given,
            files: source.legs.iter().map(file).collect(),
            also: source
                .also
                .iter()
                .map(|it| ProjectRecording { from: it.from, course: it.course })
                .collect(),
        }
    }

    /// A road of a project with its files; `None` where one is missing.
    pub(super) fn of_project(
        road: ProjectRoad,
        mut file: impl FnMut(&ProjectFile) -> Option<GivenFile>,
    ) -> Option<Self> {
        let leg = |it: &ProjectFile| Some(Leg { file: file(it)?, turned: it.backwards });
        let legs = road.files.iter().map(leg).collect::<Option<Vec<_>>>()?;
        let origin = if road.invented { Origin::Demo } else { Origin::Given };
        let choice = RoadChoice {
            course: road.course,
            part: road.part,
            reversed: road.reversed,
            roadside: road.roadside,
        };
        let task = Task { road: choice, truck: road.truck, day: road.day };
        let also = road.also.iter().map(|it| Also { from: it.from, course: it.course }).collect();
        let asked = Asked { source: Source { also, ..Source::of(legs, origin) }, task };
        Some(Self { asked, marker: road.marker, counts_down: road.counts_down })
    }
}
