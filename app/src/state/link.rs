//! A link that carries truck and day: never the road, and never over what is entered.

use super::question::Told;
use super::signals::{Carried, Signals, State, Written};
use super::{fields, study_worker};
use crate::browser::link;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use solver::day::Day;
use solver::report::truck_file::TruckFileError;
use solver::truck::TruckSpec;
use workers::message::study::{StudyReply, StudyRequest};

/// Looks whether the page was opened by a link that carries something. It is read when the first
/// answer stands or fails: the study worker is not loaded before.
pub(super) fn look(state: State) {
    match link::take_carried() {
        Some(Some(text)) => {
            let text = StoredValue::new(Some(text));
            Effect::new(move |_| {
                let answered =
                    state.shown.worked.with(Option::is_some) || state.talk.trouble.with(Option::is_some);
                let text = answered.then(|| text.try_update_value(Option::take)).flatten().flatten();
                if let Some(text) = text {
                    study_worker::ask(state, StudyRequest::ReadLink(text), move |told| match told {
                        Told::Reply(StudyReply::LinkRead(found), _) => read(state, found),
                        Told::Reply(..) | Told::GivenUp => cannot(state),
                    });
                }
            });
        }
        Some(None) => state.entered.carried.set(Some(Carried::Broken)),
        None => {}
    }
}

fn cannot(state: State) {
    state.talk.trouble.set(Some(WorkTrouble::CannotStart));
}

/// Takes what the study worker read in a link.
fn read(state: State, read: Result<Box<(TruckSpec, Day)>, TruckFileError>) {
    state.entered.carried.set(Some(read.map_or(Carried::Broken, Carried::Offered)));
}

/// Makes a link of the text and copies it where the browser allows that.
fn written(state: State, text: &str) {
    let Some(address) = link::address_with(text) else { return };
    leptos::task::spawn_local(async move {
        let copied = link::copy(address.clone()).await;
        state.entered.link.set(Some(Written { address, copied }));
    });
}

impl Signals {
    /// Asks for a link with truck and day.
    pub(crate) fn write_link(&'static self) {
        self.entered.link.set(None);
        let entries = self.entered.entries.get_untracked();
        study_worker::ask(
            self,
            StudyRequest::WriteLink(entries.truck, entries.day),
            move |told| match told {
                Told::Reply(StudyReply::LinkWritten(text), _) => written(self, &text),
                Told::Reply(..) | Told::GivenUp => cannot(self),
            },
        );
    }

    /// Uses truck and day of the link.
    pub(crate) fn take_carried(&'static self) {
        if let Some(Carried::Offered(carried)) = self.entered.carried.get_untracked() {
            let mine = self.entered.entries.get_untracked();
            let (truck, day) = *carried;
            fields::put_entries(self, |entries| {
                entries.take_own(truck);
                entries.day = day;
            });
            self.confirm_truck();
            self.entered.carried.set(Some(Carried::Taken(Box::new(mine))));
        }
    }

    /// Takes what was entered before the link was used.
    pub(crate) fn leave_carried(&'static self) {
        if let Some(Carried::Taken(mine) | Carried::Opened(mine)) = self.entered.carried.get_untracked() {
            fields::put_entries(self, |entries| *entries = *mine);
        }
        self.entered.carried.set(None);
    }
}
