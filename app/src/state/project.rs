//! A road with truck, day and all that was put on it, as one file: saved, and opened again.
//!
//! The study worker writes and reads the line before the files; their bytes are never unpacked
//! here, only cut out of the whole.

use super::asked::{Aim, Asked, Leg, Origin, Source};
use super::{Carried, Signals, State, link, study, work};
use crate::browser::download;
use crate::browser::file::{self, GivenFile};
use crate::message::study::StudyRequest;
use crate::words::{WorkTrouble, words};
use leptos::prelude::*;
use solver::report::project::{Project, ProjectFile};
use solver::report::truck_file::TruckFileError;

/// How the name of a project ends.
pub(super) const ENDING: &str = ".steadygrade";

/// What waits for the line before the files.
pub(super) enum InHand {
    /// Files to be saved behind it.
    Saving(Vec<GivenFile>),
    /// The part of a project behind it.
    Opening(GivenFile),
}

/// The line is written: it is saved with the files behind it.
pub(super) fn written(state: State, line: String) {
    let Some(InHand::Saving(files)) = state.project.try_update_value(Option::take).flatten() else { return };
    let road = state.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.name.clone()));
    let name = words().project_name(&road.unwrap_or_default());
    let saved = file::joined(&line, &files).is_some_and(|all| download::save_file(&name, &all));
    if !saved {
        state.trouble.set(Some(WorkTrouble::CannotExport));
    }
}

/// The line is read: its truck, its day and its road are taken, and what was entered is at hand.
pub(super) fn read(state: State, read: Result<Box<Project>, TruckFileError>) {
    let Some(InHand::Opening(behind)) = state.project.try_update_value(Option::take).flatten() else {
        return;
    };
    let project = match read {
        Ok(project) => *project,
        Err(error) => return state.trouble.set(Some(WorkTrouble::ProjectFile { error })),
    };
    let Some(legs) = legs(&project.files, &behind) else {
        return state.trouble.set(Some(WorkTrouble::ProjectFile { error: TruckFileError::CutOff }));
    };
    let aim = Aim {
        part: project.part,
        reversed: project.reversed,
        roadside: Some(project.roadside),
        ..Aim::new(Source { number: 0, legs, origin: Origin::Given }, project.course)
    };
    let mine = state.entries.get_untracked();
    link::put_entries(state, |entries| {
        entries.take_own(project.truck);
        entries.day = project.day;
    });
    state.marker_text.set(project.marker);
    state.counts_down.set(project.counts_down);
    work::open_aim(state, aim);
    state.carried.set(Some(Carried::Opened(Box::new(mine))));
}

fn legs(files: &[ProjectFile], behind: &GivenFile) -> Option<Vec<Leg>> {
    let mut at = 0.0;
    let one = |it: &ProjectFile| {
        #[allow(clippy::cast_precision_loss, reason = "the browser counts bytes in doubles itself")]
        let end = at + it.bytes as f64;
        let file = file::slice(behind, at, end, &it.name)?;
        at = end;
        Some(Leg { file, turned: it.backwards })
    };
    files.iter().map(one).collect()
}

impl Signals {
    /// Saves the road shown with truck, day and all that was put on it.
    pub(crate) fn save_project(&'static self) {
        let Some(Asked { source, task }) = work::shown(self) else { return };
        let file = |leg: &Leg| ProjectFile {
            name: leg.file.name.clone(),
            bytes: leg.file.bytes(),
            backwards: leg.turned,
        };
        let project = Project {
            truck: task.truck,
            day: task.day,
            course: task.course,
            part: task.part,
            reversed: task.reversed,
            roadside: self.things.with_untracked(super::Things::roadside),
            marker: self.marker_text.get_untracked(),
            counts_down: self.counts_down.get_untracked(),
            files: source.legs.iter().map(file).collect(),
        };
        let files = source.legs.into_iter().map(|leg| leg.file).collect();
        self.project.set_value(Some(InHand::Saving(files)));
        study::ask(self, StudyRequest::WriteProject(Box::new(project)));
    }

    /// Opens a project.
    pub(crate) fn open_project(&'static self, given: GivenFile) {
        leptos::task::spawn_local(async move {
            match file::first_line(&given).await {
                Some((line, behind)) => {
                    let bytes = behind.bytes();
                    self.project.set_value(Some(InHand::Opening(behind)));
                    study::ask(self, StudyRequest::ReadProject(line, bytes));
                }
                None => {
                    let error = TruckFileError::CutOff;
                    self.trouble.set(Some(WorkTrouble::ProjectFile { error }));
                }
            }
        });
    }
}
