//! The road shown, the one kept beside it and all that was entered for both, as one file: saved,
//! and opened again.
//!
//! The study worker writes and reads the line before the files; their bytes are never unpacked
//! here, only cut out of the whole.

use super::beside::Beside;
use super::entered::Entered;
use super::question::Told;
use super::signals::{Carried, Signals, State};
use super::{comparing, kept_roads, study_worker};
use crate::browser::download;
use crate::browser::file::{self, GivenFile};
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use solver::report::project::{Project, ProjectFile, ProjectRoad};
use solver::report::truck_file::TruckFileError;
use workers::message::study::{StudyReply, StudyRequest};

/// How the name of a project ends.
pub(super) const ENDING: &str = ".steadygrade";

/// The line is written: it is saved with the files behind it.
fn save(state: State, road: &str, line: &str, files: &[GivenFile]) {
    let saved =
        file::joined(line, files).is_some_and(|all| download::save_file(&words().project_name(road), &all));
    if !saved {
        state.talk.trouble.set(Some(WorkTrouble::CannotExport));
    }
}

/// The line is read: its road with truck and day is shown, and what was entered is at hand. The
/// road kept here stays beside it unless the project brings another.
fn read(state: State, read: Result<Box<Project>, TruckFileError>, behind: &GivenFile) {
    let roads = read.and_then(|project| roads(*project, behind).ok_or(TruckFileError::CutOff));
    let (road, beside) = match roads {
        Ok(roads) => roads,
        Err(error) => return state.talk.trouble.set(Some(WorkTrouble::ProjectFile { error })),
    };
    let mine = state.entered.entries.get_untracked();
    state.show_entered(road);
    if let Some(beside) = beside {
        kept_roads::keep_beside(Some(beside.clone()));
        comparing::bring(state, beside);
    }
    state.entered.carried.set(Some(Carried::Opened(Box::new(mine))));
}

/// The road and the one beside it, with their files cut out of what is behind the line.
fn roads(project: Project, behind: &GivenFile) -> Option<(Entered, Option<Entered>)> {
    let mut at = 0.0;
    let mut cut = |it: &ProjectFile| {
        #[allow(clippy::cast_precision_loss, reason = "the browser counts bytes in doubles itself")]
        let end = at + it.bytes as f64;
        let file = file::slice(behind, at, end, &it.name);
        at = end;
        file
    };
    let road = Entered::of_project(project.road, &mut cut)?;
    let beside = match project.beside {
        Some(beside) => Some(Entered::of_project(beside, &mut cut)?),
        None => None,
    };
    Some((road, beside))
}

impl Signals {
    /// Saves the road shown and the one beside it with all that was entered for them.
    pub(crate) fn save_project(&'static self) {
        let Some(road) = self.entered_for_shown() else { return };
        let beside = self.beside.road.with_untracked(|other| other.as_ref().map(Beside::entered));
        let noted = |mut road: ProjectRoad| {
            if untrack(|| self.is_not_yours(&road.truck)) {
                words().example_export().clone_into(&mut road.note);
            }
            road
        };
        let project = Project {
            road: noted(road.to_project()),
            beside: beside.as_ref().map(|it| noted(it.to_project())),
        };
        let files: Vec<GivenFile> = road.files().chain(beside.iter().flat_map(Entered::files)).collect();
        let name = self.shown.worked.with_untracked(|worked| worked.as_ref().map(|it| it.road.name.clone()));
        let name = name.unwrap_or_default();
        study_worker::ask(self, StudyRequest::WriteProject(Box::new(project)), move |told| match told {
            Told::Reply(StudyReply::ProjectWritten(line), _) => save(self, &name, &line, &files),
            Told::Reply(..) | Told::GivenUp => self.talk.trouble.set(Some(WorkTrouble::CannotExport)),
        });
    }

    /// Opens a project.
    pub(crate) fn open_project(&'static self, given: GivenFile) {
        leptos::task::spawn_local(async move {
            match file::first_line(&given).await {
                Some((line, behind)) => {
                    let bytes = behind.bytes();
                    study_worker::ask(self, StudyRequest::ReadProject(line, bytes), move |told| match told {
                        Told::Reply(StudyReply::ProjectRead(project), _) => read(self, project, &behind),
                        Told::Reply(..) | Told::GivenUp => {
                            self.talk.trouble.set(Some(WorkTrouble::CannotStart))
                        }
                    });
                }
                None => {
                    let error = TruckFileError::CutOff;
                    self.talk.trouble.set(Some(WorkTrouble::ProjectFile { error }));
                }
            }
        });
    }
}
