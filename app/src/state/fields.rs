//! The fields of truck and day: what is typed in them, and what is wrong with it.

use super::Signals;
use crate::entries::{EntryProblem, Field};
use leptos::prelude::*;

/// One field: what is typed, and what is wrong with it.
#[derive(Clone, Copy)]
pub(crate) struct FieldState {
    /// Its text, as typed.
    pub(crate) text: RwSignal<String>,
    /// Why it is not taken.
    pub(crate) problem: RwSignal<Option<EntryProblem>>,
}

impl Signals {
    /// A field's text and problem.
    pub(crate) fn field(&self, field: Field) -> FieldState {
        self.fields[field.index()]
    }

    /// A key was typed in a field.
    pub(crate) fn type_in(&'static self, field: Field, text: String) {
        self.field(field).text.set(text);
        self.read_field(field);
        // The mass on the driven axles follows the gross mass, and the marks may change.
        self.fill_fields_but(Some(field));
        self.keep();
        self.work_out_later();
    }

    pub(super) fn read_field(&self, field: Field) {
        let state = self.field(field);
        let text = state.text.get_untracked();
        let units = self.units.get_untracked();
        let mut entries = self.entries.get_untracked();
        let problem = entries.take(field, &text, units).err();
        if problem.is_none() && entries != self.entries.get_untracked() {
            self.entries.set(entries);
        }
        state.problem.set(problem);
    }

    pub(super) fn fill_fields(&self) {
        self.fill_fields_but(None);
    }

    /// Writes the entries into their fields, but not into one that is being typed in, nor
    /// over a text that could not be taken.
    pub(super) fn fill_fields_but(&self, typed: Option<Field>) {
        let entries = self.entries.get_untracked();
        let units = self.units.get_untracked();
        for field in Field::all().filter(|field| Some(*field) != typed) {
            let state = self.field(field);
            let text = entries.text(field, units);
            if state.problem.get_untracked().is_none() && state.text.get_untracked() != text {
                state.text.set(text);
            }
        }
    }

    /// Whether something keeps the entries from being worked out. Tracked.
    pub(crate) fn is_blocked(&self) -> bool {
        self.first_wrong().is_some() || self.entries.with(|entries| entries.problem().is_some())
    }

    /// The first field whose text could not be taken. Tracked.
    pub(crate) fn first_wrong(&self) -> Option<Field> {
        let wrong = |field: &Field| {
            let problem = self.field(*field).problem.get();
            problem.is_some() && self.entries.with(|entries| entries.has(*field))
        };
        Field::all().find(wrong)
    }
}
