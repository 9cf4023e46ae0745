//! Every sentence that a person reads, by language.
//!
//! A language is one folder here that implements all traits of [`Words`]; a sentence that it
//! lacks does not compile. Numbers come from [`crate::format`].
//!
//! To add a language: copy `en/`, translate, name it in [`LANGUAGES`], give it a program in
//! `bin/` and a row in `xtask/src/dist/languages.rs`.

use crate::format;
use std::sync::OnceLock;

mod access;
mod card;
mod chart;
pub mod de;
mod descent;
pub mod en;
mod entry;
pub mod es;
mod exercise;
mod export;
pub mod fr;
mod language;
mod lesson;
mod link;
mod offline;
mod page;
mod plan;
mod road;
mod roadside;
pub mod say;
mod study;
mod two;
mod why;

pub use access::AccessWords;
pub use card::CardWords;
pub use chart::ChartWords;
pub use descent::{Curves, DescentWords};
pub use entry::{EntryProblem, EntryWords};
pub use exercise::{ExerciseWords, Figures, Label, Line, Term};
pub use export::{ExportWords, captions};
pub use language::{LANGUAGES, LanguageWords};
pub use lesson::{LessonNote, LessonWords};
pub use link::LinkWords;
pub use offline::OfflineWords;
pub use page::{PageWords, WorkTrouble};
pub use plan::PlanWords;
pub use road::RoadWords;
pub use roadside::RoadsideWords;
pub use study::StudyWords;
pub use two::{TwoRow, TwoWords};
pub use why::WhyWords;

/// All that a language must be able to say.
pub trait Words:
    Send
    + Sync
    + LanguageWords
    + LinkWords
    + PageWords
    + OfflineWords
    + PlanWords
    + WhyWords
    + DescentWords
    + CardWords
    + ExportWords
    + StudyWords
    + EntryWords
    + RoadWords
    + RoadsideWords
    + TwoWords
    + ChartWords
    + AccessWords
{
}

impl<T> Words for T where
    T: Send
        + Sync
        + LanguageWords
        + LinkWords
        + PageWords
        + OfflineWords
        + PlanWords
        + WhyWords
        + DescentWords
        + CardWords
        + ExportWords
        + StudyWords
        + EntryWords
        + RoadWords
        + RoadsideWords
        + TwoWords
        + ChartWords
        + AccessWords
{
}

static SPOKEN: OnceLock<&'static dyn Words> = OnceLock::new();

/// Chooses the language, once, before anything is shown. A page holds one language: only it is
/// linked, and who wants another opens the page in that language.
pub fn speak(language: &'static dyn Words) {
    format::choose(language.numerals());
    let _ = SPOKEN.set(language);
}

/// The words of the language chosen.
///
/// # Panics
/// Where none was: the page begins with it. Tests speak English.
#[must_use]
pub fn words() -> &'static dyn Words {
    #[cfg(test)]
    {
        SPOKEN.get().copied().unwrap_or(&en::English)
    }
    #[cfg(not(test))]
    {
        SPOKEN.get().copied().unwrap_or_else(|| unreachable!("the page begins by choosing its language"))
    }
}

/// A part of a sentence; what decides is set apart.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece {
    /// Set as the rest.
    Plain(String),
    /// Set so that it is read first.
    Strong(String),
}

/// The sentence without its marks, for a screen reader or a test.
#[must_use]
pub fn joined(pieces: &[Piece]) -> String {
    pieces
        .iter()
        .map(|piece| match piece {
            Piece::Plain(text) | Piece::Strong(text) => text.as_str(),
        })
        .collect()
}

#[cfg(test)]
mod tests;
