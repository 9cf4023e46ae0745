//! The fields of truck and day: what is typed in them, and what is wrong with it.

use super::signals::{FieldState, Signals, State};
use crate::entries::{Entries, Field};
use leptos::prelude::*;
use solver::day::Day;
use solver::limits;
use solver::truck::Preset;

/// Changes all entries at once; what was typed and not taken is dropped. Whether the truck is one's own is
/// not asked here.
pub(super) fn put_entries(state: State, change: impl FnOnce(&mut Entries)) {
    for field in Field::all() {
        state.field(field).problem.set(None);
    }
    change_entries(state, change);
}

fn change_entries(state: State, change: impl FnOnce(&mut Entries)) {
    state.entered.entries.update(change);
    for field in Field::all() {
        if !state.entered.entries.with_untracked(|entries| entries.has(field)) {
            state.field(field).problem.set(None);
        }
    }
    state.fill_fields();
    state.keep();
    state.work_out_later();
}

impl Signals {
    /// A field's text and problem.
    pub(crate) fn field(&self, field: Field) -> FieldState {
        self.entered.fields[field.index()]
    }

    /// A key was typed in a field.
    pub(crate) fn type_in(&'static self, field: Field, text: String) {
        self.field(field).text.set(text);
        self.read_field(field);
        let of_truck = match field {
            Field::Number(entry) => Day::USUAL.get(entry).is_none(),
            Field::Gears | Field::Stages | Field::Table => true,
        };
        if of_truck && self.field(field).problem.with_untracked(Option::is_none) {
            self.confirm_truck();
        }
        // The mass on the driven axles follows the gross mass, and the marks may change.
        self.fill_fields_but(Some(field));
        self.keep();
        self.work_out_later();
    }

    /// Changes the truck otherwise than by a field.
    pub(crate) fn change_truck(&'static self, change: impl FnOnce(&mut Entries)) {
        change_entries(self, change);
        self.confirm_truck();
    }

    /// Takes a preset.
    pub(crate) fn take_preset(&'static self, preset: Preset) {
        self.entered.entries.update(|entries| entries.take_preset(preset));
        self.confirm_truck();
        let truck = preset.spec();
        for field in Field::all() {
            let of_truck = match field {
                Field::Number(entry) => truck.get(entry).is_some(),
                Field::Gears | Field::Stages | Field::Table => true,
            };
            if of_truck {
                self.field(field).problem.set(None);
            }
        }
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Changes the day's choices, or takes the usual day.
    pub(crate) fn change_day(&'static self, change: impl FnOnce(&mut Day)) {
        self.entered.entries.update(|entries| change(&mut entries.day));
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Takes the usual day; what was typed for it is dropped.
    pub(crate) fn take_usual_day(&'static self) {
        for limit in limits::ALL {
            if Day::USUAL.get(limit.entry).is_some() {
                self.field(Field::Number(limit.entry)).problem.set(None);
            }
        }
        self.change_day(|day| *day = Day::USUAL);
    }

    pub(super) fn read_field(&self, field: Field) {
        let state = self.field(field);
        let text = state.text.get_untracked();
        let units = self.units.get_untracked();
        let mut entries = self.entered.entries.get_untracked();
        let problem = entries.take(field, &text, units).err();
        if problem.is_none() && entries != self.entered.entries.get_untracked() {
            self.entered.entries.set(entries);
        }
        state.problem.set(problem);
    }

    pub(super) fn fill_fields(&self) {
        self.fill_fields_but(None);
    }

    /// Writes the entries into their fields, but not into one that is being typed in, nor
    /// over a text that could not be taken.
    pub(super) fn fill_fields_but(&self, typed: Option<Field>) {
        let entries = self.entered.entries.get_untracked();
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
        self.first_wrong().is_some() || self.entered.entries.with(|entries| entries.problem().is_some())
    }

    /// The first field whose text could not be taken. Tracked.
    pub(crate) fn first_wrong(&self) -> Option<Field> {
        let wrong = |field: &Field| {
            let problem = self.field(*field).problem.get();
            problem.is_some() && self.entered.entries.with(|entries| entries.has(*field))
        };
        Field::all().find(wrong)
    }
}
