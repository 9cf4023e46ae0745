//! Roads kept on this machine: the one last opened, as it was looked at, and the one beside it with its
//! own truck and day.

use super::asked::{Aim, Asked, Leg, Origin, Source};
use super::entered::Entered;
use super::former;
use crate::browser::database::{self, Slot};
use serde::{Deserialize, Serialize};
use solver::report::project::ProjectRoad;
use workers::message::{Also, RoadChoice};

/// Number of the shape of what is kept: another shape is not read.
const SHAPE: u8 = 2;

/// The one before, which knew nothing of several recordings: nothing stands where they do now.
const SHAPE_OF_ONE: u8 = 1;

/// That of the road beside, whose truck has changed and which may have several recordings since; the ones
/// before, in the first of which a day had no lead, are read too.
const SHAPE_BESIDE: u8 = 3;

/// No recordings beside the first, as they are written.
const NO_MORE: u8 = 0;

/// What stands before the files.
#[derive(Serialize, Deserialize)]
struct Header {
    shape: u8,
    turned: Vec<bool>,
    course: Option<usize>,
    part: Option<(usize, usize)>,
    reversed: bool,
    also: Vec<Also>,
}

/// Keeps what is shown, unless it is of the page's own: the road that the person gave stays.
pub(super) fn keep(asked: &Asked) {
    if asked.source.origin != Origin::Given {
        return;
    }
    let header = Header {
        shape: SHAPE,
        turned: asked.source.turned(),
        course: asked.task.road.course,
        part: asked.task.road.part,
        reversed: asked.task.road.reversed,
        also: asked.source.also.clone(),
    };
    let files = asked.source.legs.iter().map(|leg| leg.file.clone()).collect();
    if let Ok(header) = postcard::to_allocvec(&header) {
        leptos::task::spawn_local(database::keep(Slot::Last, header, files));
    }
}

/// Keeps the road beside the one shown, or none.
pub(super) fn keep_beside(entered: Option<Entered>) {
    leptos::task::spawn_local(async move {
        let Some(entered) = entered else { return database::clear(Slot::Beside).await };
        if let Ok(header) = postcard::to_allocvec(&(SHAPE_BESIDE, entered.to_project())) {
            database::keep(Slot::Beside, header, entered.files().collect()).await;
        }
    });
}

/// The road last opened, as it was looked at.
pub(super) async fn recall() -> Option<Aim> {
    let (mut bytes, files) = database::recall(Slot::Last).await?;
    if bytes.first() == Some(&SHAPE_OF_ONE) {
        bytes.push(NO_MORE);
    }
    let header: Header = postcard::from_bytes(&bytes).ok()?;
    let sound = [SHAPE, SHAPE_OF_ONE].contains(&header.shape)
        && !files.is_empty()
        && header.turned.len() == files.len();
    let legs = files.into_iter().zip(header.turned).map(|(file, turned)| Leg { file, turned }).collect();
    let source = Source { also: header.also, ..Source::of(legs, Origin::Given) };
    let Header { course, part, reversed, .. } = header;
    sound.then_some(Aim { source, road: RoadChoice { course, part, reversed, roadside: None } })
}

/// The one beside it.
pub(super) async fn recall_beside() -> Option<Entered> {
    let (bytes, files) = database::recall(Slot::Beside).await?;
    let bytes = match bytes.first() {
        Some(&before @ (1 | 2)) => {
            let mut anew = former::beside(&bytes, SHAPE_BESIDE, before == 2)?;
            anew.push(NO_MORE);
            anew
        }
        Some(&SHAPE_BESIDE) => bytes,
        Some(_) | None => return None,
    };
    let (_, road): (u8, ProjectRoad) = postcard::from_bytes(&bytes).ok()?;
    let sound = !files.is_empty() && road.files.len() == files.len();
    let mut files = files.into_iter();
    sound.then(|| Entered::of_project(road, |_| files.next())).flatten()
}
