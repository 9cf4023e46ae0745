//! Which view of the page is in front. It stands in the address behind `#`, so that a link leads to it and
//! the browser's way back works.

use super::signals::{Signals, State, View};
use crate::browser::{self, address};
use leptos::prelude::*;

/// Behind `#` while truck and day are open: they lie over the view in front.
const TRUCK: &str = "truck";

/// Follows the address as long as the page lives.
pub(super) fn follow(state: State) {
    let read = move || {
        let key = address::key();
        state.entered.drawer.set(key == TRUCK);
        // Another key leads to a place within a view; without one the page begins.
        if let Some(view) = View::of(&key).or((key.is_empty()).then_some(View::Road)) {
            state.views.front.set(view);
        }
    };
    read();
    address::watch(read);
    let room_below = state.views.room_below;
    room_below.set(browser::room_below(move |room| room_below.set(room)));
    // Closed by a button, truck and day leave the address as well.
    Effect::new(move |_| match (state.entered.drawer.get(), address::key() == TRUCK) {
        (true, false) => address::go(TRUCK),
        (false, true) => address::go(state.views.front.get_untracked().key()),
        (true, true) | (false, false) => {}
    });
}

impl Signals {
    /// Brings a view to the front.
    pub(crate) fn go(&self, view: View) {
        address::go(view.key());
        self.entered.drawer.set(false);
        self.views.front.set(view);
    }

    /// Brings the road to the front with a descent in hand.
    pub(crate) fn look_at_descent(&self, number: usize) {
        self.shown.chosen_descent.set(Some(number));
        self.go(View::Road);
    }

    /// Brings the road to the front with a stretch of it in sight, m from the start.
    pub(crate) fn look_at_stretch(&self, from_m: f64, to_m: f64) {
        // Set anew even where it is the same: somebody may have moved on since.
        self.shown.look_at.set(None);
        self.shown.look_at.set(Some((from_m, to_m)));
        self.go(View::Road);
    }
}
