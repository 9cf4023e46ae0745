//! The road last opened comes back at the next visit, as it was looked at.

use super::asked::{Aim, Asked, Leg, Origin, Source};
use super::{Signals, State, kept, work};
use crate::browser::{self, shelf};
use serde::{Deserialize, Serialize};

/// Number of the shape of [`Header`]: another shape is not read.
const SHAPE: u8 = 1;

/// What stands before the files.
#[derive(Serialize, Deserialize)]
struct Header {
    shape: u8,
    turned: Vec<bool>,
    course: Option<usize>,
    part: Option<(usize, usize)>,
    reversed: bool,
}

/// Keeps what is shown, unless it is of the page's own: the road that the person gave stays.
pub(super) fn keep(asked: &Asked) {
    if asked.source.origin != Origin::Given {
        return;
    }
    let header = Header {
        shape: SHAPE,
        turned: asked.source.turned(),
        course: asked.task.course,
        part: asked.task.part,
        reversed: asked.task.reversed,
    };
    let files = asked.source.legs.iter().map(|leg| leg.file.clone()).collect();
    if let Ok(header) = postcard::to_allocvec(&header) {
        leptos::task::spawn_local(shelf::keep(header, files));
    }
}

/// Opens what was kept, or else the demo.
pub(super) fn open(state: State) {
    leptos::task::spawn_local(async move {
        match recall().await {
            // Somebody may have chosen a file by then.
            Some(aim) if work::is_idle(state) => work::open_aim(state, aim),
            Some(_) => {}
            None => state.open_demo(),
        }
    });
}

async fn recall() -> Option<Aim> {
    let (bytes, files) = shelf::recall().await?;
    let header: Header = postcard::from_bytes(&bytes).ok()?;
    let sound = header.shape == SHAPE && !files.is_empty() && header.turned.len() == files.len();
    let legs = files.into_iter().zip(header.turned).map(|(file, turned)| Leg { file, turned }).collect();
    let aim = Aim::new(Source { number: 0, legs, origin: Origin::Given }, header.course);
    sound.then_some(Aim { part: header.part, reversed: header.reversed, ..aim })
}

impl Signals {
    /// Forgets all that is kept on this machine, and begins anew.
    pub(crate) fn forget_all(&self) {
        kept::forget();
        leptos::task::spawn_local(async {
            shelf::forget().await;
            browser::reload();
        });
    }
}
