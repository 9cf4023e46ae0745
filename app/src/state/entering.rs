//! The road shown with all that was entered for it: put away, and shown again.

use super::beside::Beside;
use super::entered::Entered;
use super::signals::Signals;
use super::things::Things;
use super::{fields, work};
use leptos::prelude::*;
use workers::message::Task;

impl Signals {
    /// The road shown, as it was worked out.
    pub(super) fn entered_for_shown(&self) -> Option<Entered> {
        let mut asked = self.shown.asked.get_value()?;
        let roadside = &mut asked.task.road.roadside;
        *roadside = roadside.take().or_else(|| Some(self.roadside.things.with_untracked(Things::roadside)));
        let marker = self.roadside.marker_text.get_untracked();
        Some(Entered { asked, marker, counts_down: self.roadside.counts_down.get_untracked() })
    }

    /// The road shown with its result, as it can be kept beside another.
    pub(super) fn beside_of_shown(&self) -> Option<Beside> {
        Some(Beside { worked: self.shown.worked.get_untracked()?, entered: self.entered_for_shown()? })
    }

    /// Shows a road: its truck, day and markers are entered.
    pub(super) fn show_entered(&'static self, entered: Entered) {
        let Task { ref truck, day, .. } = entered.asked.task;
        let truck = truck.clone();
        fields::put_entries(self, |entries| {
            entries.take_own(truck);
            entries.day = day;
        });
        self.roadside.marker_text.set(entered.marker);
        self.roadside.counts_down.set(entered.counts_down);
        work::open_aim(self, entered.asked.aim());
    }
}
