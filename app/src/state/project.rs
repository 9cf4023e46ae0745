//! The road shown, the one kept beside it and all that was entered for both, as one file: saved,
//! and opened again.
//!
//! The study worker writes and reads the line before the files; their bytes are never unpacked
//! here, only cut out of the whole.

use super::entered::Entered;
use super::{Beside, Carried, Signals, State, shelf, study, two};
use crate::browser::download;
use crate::browser::file::{self, GivenFile};
use crate::trouble::WorkTrouble;
use crate::words::words;
use leptos::prelude::*;
use solver::report::project::{Project, ProjectFile};
use solver::report::truck_file::TruckFileError;
use workers::message::study::StudyRequest;

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

/// The line is read: its road with truck and day is shown, and what was entered is at hand. The
/// road kept here stays beside it unless the project brings another.
pub(super) fn read(state: State, read: Result<Box<Project>, TruckFileError>) {
    let Some(InHand::Opening(behind)) = state.project.try_update_value(Option::take).flatten() else {
        return;
    };
    let roads = read.and_then(|project| roads(*project, &behind).ok_or(TruckFileError::CutOff));
    let (road, beside) = match roads {
        Ok(roads) => roads,
        Err(error) => return state.trouble.set(Some(WorkTrouble::ProjectFile { error })),
    };
    let mine = state.entries.get_untracked();
    road.show(state);
    if let Some(beside) = beside {
        shelf::keep_beside(Some(beside.clone()));
        two::bring(state, beside);
    }
    state.carried.set(Some(Carried::Opened(Box::new(mine))));
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
        let Some(road) = Entered::shown(self) else { return };
        let beside = self.other.with_untracked(|other| other.as_ref().map(Beside::entered));
        let project = Project { road: road.to_project(), beside: beside.as_ref().map(Entered::to_project) };
        let files = road.files().chain(beside.iter().flat_map(Entered::files)).collect();
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
