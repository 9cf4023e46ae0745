//! Every sentence that a person reads, by language.
//!
//! A language is one folder here that implements all traits of [`Words`]; a sentence that it
//! lacks does not compile. Numbers come from [`crate::format`].
//!
//! To add a language: copy `en/`, translate, and add it to [`words`].

mod card;
mod chart;
pub mod en;
mod entry;
mod export;
mod offline;
mod page;
mod plan;
mod road;
mod roadside;
pub mod say;
mod study;
mod two;

pub use card::CardWords;
pub use chart::ChartWords;
pub use entry::{EntryProblem, EntryWords};
pub use export::{ExportWords, captions};
pub use offline::OfflineWords;
pub use page::{PageWords, WorkTrouble};
pub use plan::{Curves, PlanWords};
pub use road::RoadWords;
pub use roadside::RoadsideWords;
pub use study::StudyWords;
pub use two::{TwoRow, TwoWords};

/// All that a language must be able to say.
pub trait Words:
    Send
    + Sync
    + PageWords
    + OfflineWords
    + PlanWords
    + CardWords
    + ExportWords
    + StudyWords
    + EntryWords
    + RoadWords
    + RoadsideWords
    + TwoWords
    + ChartWords
{
}

impl<T> Words for T where
    T: Send
        + Sync
        + PageWords
        + OfflineWords
        + PlanWords
        + CardWords
        + ExportWords
        + ExportWords
        + StudyWords
        + EntryWords
        + RoadWords
        + RoadsideWords
        + TwoWords
        + ChartWords
{
}

/// The words of the language chosen.
#[must_use]
pub fn words() -> &'static dyn Words {
    &en::English
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
