//! What Escape leaves: a message, a question, a hint.

use super::{Carried, Signals};
use crate::browser::focus;
use leptos::prelude::*;

impl Signals {
    /// Leaves one thing that was said or asked, without deciding anything; where there is none,
    /// the hint at the field that has the keyboard is hidden. What holds something of the person's
    /// stays: files being put in order, a link that was opened, the way back to former entries.
    pub(crate) fn leave(&'static self) {
        if self.trouble.with_untracked(Option::is_some) {
            self.trouble.set(None);
        } else if self.choice.with_untracked(Option::is_some) {
            self.drop_choice();
        } else if self.meeting.with_untracked(Option::is_some) {
            self.meeting.set(None);
        } else if self.carried.with_untracked(|carried| *carried == Some(Carried::Broken)) {
            self.carried.set(None);
        } else {
            focus::hush();
        }
    }
}
