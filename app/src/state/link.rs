//! A link that carries truck and day: never the road, and never over what is entered.

use super::{Signals, State, study};
use crate::browser::link;
use crate::entries::{Entries, Field};
use leptos::prelude::*;
use solver::day::Day;
use solver::report::truck_file::TruckFileError;
use solver::truck::TruckSpec;

/// Where a link or a project that was opened stands.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Carried {
    /// It waits for the person to decide.
    Offered(Box<(TruckSpec, Day)>),
    /// It is in use; what was entered before is at hand.
    Taken(Box<Entries>),
    /// A project was opened; what was entered before is at hand.
    Opened(Box<Entries>),
    /// It cannot be read.
    Broken,
}

/// What became of the link that was asked for.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Written {
    /// The link.
    pub(crate) address: String,
    /// Whether it lies ready to be pasted.
    pub(crate) copied: bool,
}

/// Looks whether the page was opened by a link that carries something. It is read when the first
/// answer stands or fails: an answer ends what the study worker is at.
pub(super) fn look(state: State) {
    match link::take_carried() {
        Some(Some(text)) => {
            let text = StoredValue::new(Some(text));
            Effect::new(move |_| {
                let answered = state.worked.with(Option::is_some) || state.trouble.with(Option::is_some);
                let text = answered.then(|| text.try_update_value(Option::take)).flatten().flatten();
                if let Some(text) = text {
                    study::read_link(state, text);
                }
            });
        }
        Some(None) => state.carried.set(Some(Carried::Broken)),
        None => {}
    }
}

/// What the study worker read in it.
pub(super) fn read(state: State, read: Result<Box<(TruckSpec, Day)>, TruckFileError>) {
    state.carried.set(Some(read.map_or(Carried::Broken, Carried::Offered)));
}

/// The text is there: it becomes a link, which is copied where the browser lets it be.
pub(super) fn written(state: State, text: &str) {
    let Some(address) = link::address_with(text) else { return };
    leptos::task::spawn_local(async move {
        let copied = link::copy(address.clone()).await;
        state.link.set(Some(Written { address, copied }));
    });
}

impl Signals {
    /// Asks for a link with truck and day.
    pub(crate) fn write_link(&'static self) {
        self.link.set(None);
        study::write_link(self);
    }

    /// Uses truck and day of the link.
    pub(crate) fn take_carried(&'static self) {
        if let Some(Carried::Offered(carried)) = self.carried.get_untracked() {
            let mine = self.entries.get_untracked();
            let (truck, day) = *carried;
            put_entries(self, |entries| {
                entries.take_own(truck);
                entries.day = day;
            });
            self.carried.set(Some(Carried::Taken(Box::new(mine))));
        }
    }

    /// Back to what was entered before the link was used.
    pub(crate) fn leave_carried(&'static self) {
        if let Some(Carried::Taken(mine) | Carried::Opened(mine)) = self.carried.get_untracked() {
            put_entries(self, |entries| *entries = *mine);
        }
        self.carried.set(None);
    }
}

/// Changes all entries at once; what was typed and not taken is dropped.
pub(super) fn put_entries(state: State, change: impl FnOnce(&mut Entries)) {
    for field in Field::all() {
        state.field(field).problem.set(None);
    }
    state.change_truck(change);
}
