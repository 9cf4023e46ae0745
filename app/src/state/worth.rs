//! What a wrong entry costs on the road shown: asked for entry by entry, as long as somebody sees it.
//!
//! One question is out at a time, so that a ride or an export asked for in between is not kept waiting.

use super::question::Told;
use super::signals::{Signals, Stage, State, WorthTold};
use super::{study, study_worker};
use leptos::prelude::*;
use solver::limits::Entry;
use solver::study::Worth;
use workers::message::study::{StudyReply, StudyRequest};

/// Forgets what wrong entries cost: a new result is shown, and no answer is about it.
pub(super) fn forget(state: State) {
    let worths = &state.studied.worths;
    if worths.known.with_untracked(|known| !known.is_empty()) {
        worths.known.set(Vec::new());
    }
    worths.asked.set_value(None);
    worths.cannot.set(false);
}

/// Notes that no answer will come.
fn give_up(state: State) {
    state.studied.worths.asked.set_value(None);
    state.studied.worths.cannot.set(true);
}

/// Takes an answer.
fn heard(state: State, entry: Entry, worth: Option<Worth>) {
    let worths = &state.studied.worths;
    if worths.asked.with_value(|asked| *asked == Some(entry)) {
        worths.asked.set_value(None);
        worths.known.update(|known| known.push((entry, worth)));
    }
    go_on(state);
}

/// Asks about the next entry in sight, once the study of the result shown is through.
pub(super) fn go_on(state: State) {
    let worths = &state.studied.worths;
    let busy = state.studied.stage.get_untracked().is_at_work() || worths.asked.with_value(Option::is_some);
    if busy || worths.cannot.get_untracked() {
        return;
    }
    let Some((truck, day)) = study::shown(state, |worked| !worked.plan.descents.is_empty()) else { return };
    let known = worths.known.get_untracked();
    let open = |entry: &Entry| truck.get(*entry).is_some() && !known.iter().any(|(other, _)| other == entry);
    let next =
        worths.wanted.with_value(|wanted| wanted.iter().flat_map(|(_, entries)| entries).copied().find(open));
    if let Some(entry) = next {
        worths.asked.set_value(Some(entry));
        study_worker::ask_about_road(state, StudyRequest::Worth(truck, day, entry), move |told| match told {
            Told::Reply(StudyReply::Worth(_, worth), _) => heard(state, entry, worth),
            Told::Reply(..) | Told::GivenUp => give_up(state),
        });
    }
}

impl Signals {
    /// Asks once more what follows from the result shown, after the study worker did not answer.
    pub(crate) fn study_again(&'static self) {
        if self.studied.stage.get_untracked() == Stage::Failed {
            forget(self);
            study::follow(self, go_on);
        }
    }

    /// A place came into sight that shows what these entries are worth, or went out of it.
    pub(crate) fn show_worths(&'static self, place: &'static str, entries: &[Entry], in_sight: bool) {
        self.studied.worths.wanted.update_value(|wanted| {
            wanted.retain(|(other, _)| *other != place);
            if in_sight {
                wanted.push((place, entries.to_vec()));
            }
        });
        go_on(self);
    }

    /// What can be said of an entry. Tracked.
    pub(crate) fn worth_of(&self, entry: Entry) -> WorthTold {
        let descents = self.shown.worked.with(|worked| worked.as_ref().map(|it| it.plan.descents.len()));
        match descents {
            None => return WorthTold::NoPlan,
            Some(_) if self.shown.stale.get() => return WorthTold::NoPlan,
            Some(0) => return WorthTold::NoDescent,
            Some(_) => {}
        }
        let known =
            self.studied.worths.known.with(|known| known.iter().find(|(other, _)| *other == entry).copied());
        match known {
            Some((_, Some(worth))) => WorthTold::Told(worth),
            Some((_, None)) => WorthTold::Cannot,
            None if self.studied.worths.cannot.get() => WorthTold::Cannot,
            None => WorthTold::AtWork,
        }
    }
}
