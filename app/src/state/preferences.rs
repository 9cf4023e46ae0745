//! How the page is shown.

use super::kept;
use super::signals::Signals;
use crate::browser::theme::{self, Theme};
use crate::entries::Field;
use crate::format::Units;
use leptos::prelude::*;

impl Signals {
    /// Shows other units; what could not be read is looked at again in them.
    pub(crate) fn set_units(&'static self, units: Units) {
        self.units.set(units);
        for field in Field::all() {
            if self.field(field).problem.get_untracked().is_some() {
                self.read_field(field);
            }
        }
        self.fill_fields();
        self.keep();
        self.work_out_later();
    }

    /// Shows another theme.
    pub(crate) fn set_theme(&'static self, theme: Theme) {
        self.settings.theme.set(theme);
        theme::show(theme);
        self.keep();
    }

    /// Shows targets of another size.
    pub(crate) fn set_gloves(&self, gloves: bool) {
        self.settings.gloves.set(gloves);
        theme::show_gloves(gloves);
        kept::keep_gloves(gloves);
    }
}
