//! What Escape leaves: a message, a question, what lies over the page, a hint.

use super::signals::{Carried, Signals};
use crate::browser::focus;
use leptos::prelude::*;

impl Signals {
    /// Leaves one thing that was said or asked, without deciding anything. Where there is none, what lies over
    /// the page is closed, the road's panel first; or else the hint at the field that has the keyboard is hidden.
    /// What holds something of the person's stays: files being put in order, a link that was opened, the way
    /// back to former entries.
    pub(crate) fn leave(&'static self) {
        if self.talk.trouble.with_untracked(Option::is_some) {
            self.talk.trouble.set(None);
        } else if self.files.choice.with_untracked(Option::is_some) {
            self.drop_choice();
        } else if self.files.meeting.with_untracked(Option::is_some) {
            self.files.meeting.set(None);
        } else if self.entered.carried.with_untracked(|carried| *carried == Some(Carried::Broken)) {
            self.entered.carried.set(None);
        } else if self.views.road.get_untracked() {
            self.views.road.set(false);
        } else if self.views.alone.get_untracked() {
            self.views.alone.set(false);
        } else if self.entered.drawer.get_untracked() {
            self.entered.drawer.set(false);
        } else {
            focus::hush();
        }
    }
}
