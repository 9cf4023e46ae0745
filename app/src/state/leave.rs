//! What Escape leaves: a message, a question, a hint.

use super::Signals;
use crate::browser::focus;
use leptos::prelude::*;

impl Signals {
    /// Leaves what was said or asked, without deciding anything, and hides the hint at the field
    /// that has the keyboard.
    pub(crate) fn leave(&'static self) {
        self.trouble.set(None);
        self.carried.set(None);
        if self.choice.with_untracked(Option::is_some) {
            self.drop_choice();
        }
        self.legs.set(Vec::new());
        focus::hush();
    }
}
