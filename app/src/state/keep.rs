//! Keeping what is entered on this machine: a moment after the last change, and when the page is left.

use super::kept::{self, Kept};
use super::signals::{Signals, State};
use crate::browser::timer::Timer;
use leptos::prelude::*;

/// Quiet time after the last change before it is kept, ms: not each key is written down.
const PAUSE_MS: i32 = 150;

impl Signals {
    /// Keeps what is entered, in a moment.
    pub(super) fn keep(&'static self) {
        let timer = Timer::after(PAUSE_MS, move || keep_now(self));
        let timed = timer.is_some();
        self.entered.unkept.set_value(Some(timer));
        if !timed {
            keep_now(self);
        }
    }
}

/// Keeps at once what still waits to be kept.
pub(super) fn keep_now(state: State) {
    if state.entered.unkept.try_update_value(Option::take).flatten().is_none() {
        return;
    }
    kept::keep(Kept {
        units: state.units.get_untracked(),
        theme: state.settings.theme.get_untracked(),
        entries: state.entered.entries.get_untracked(),
        trucks: state.entered.trucks.with_untracked(|trucks| trucks.kept.clone()),
    });
    kept::keep_rates(&state.beside.rates.get_untracked());
}

/// Drops what still waits to be kept.
pub(super) fn drop_unkept(state: &Signals) {
    state.entered.unkept.set_value(None);
}
