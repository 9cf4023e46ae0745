//! Lines of an exercise, before a language has them.

use super::term::{Label, Term};

/// A line of what is given, or of the way to an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What it is about.
    pub label: Label,
    /// Numbers, signs and units; the same in every language but for the signs in numbers.
    pub text: String,
    /// Of a gear that is tried: whether it keeps the reserve.
    pub enough: Option<bool>,
}

impl Line {
    pub(super) fn of(term: Term, text: String) -> Self {
        Self { label: Label::Term(term), text, enough: None }
    }
}
