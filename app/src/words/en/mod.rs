//! English.

mod telling;

/// English words of findings and errors.
pub(super) struct English;
