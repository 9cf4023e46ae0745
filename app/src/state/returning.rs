//! What comes back at the next visit, and how all of it is forgotten.

use super::signals::{Signals, State};
use super::{comparing, keep, kept, kept_roads, work};
use crate::browser::{self, database};

/// Opens what was kept, or else the demo.
pub(super) fn open(state: State) {
    leptos::task::spawn_local(async move {
        let kept = kept_roads::recall().await;
        // Somebody may have chosen a file by then.
        if work::is_idle(state) {
            match kept {
                Some(aim) => work::open_aim(state, aim),
                None => state.open_demo(),
            }
        }
        if let Some(beside) = kept_roads::recall_beside().await
            && comparing::is_free(state)
        {
            comparing::bring(state, beside);
        }
    });
}

impl Signals {
    /// Forgets all that is kept on this machine, and begins anew.
    pub(crate) fn forget_all(&self) {
        keep::drop_unkept(self);
        kept::forget();
        leptos::task::spawn_local(async {
            database::forget().await;
            browser::reload();
        });
    }
}
