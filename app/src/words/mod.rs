//! Every sentence that a person reads, by language.
//!
//! A language is one folder here that implements all traits of [`Words`]; a sentence that it
//! lacks does not compile. Numbers come from [`crate::format`]. Which sentence is said, in which order
//! and with which number format is the same in all: it stands in the traits, which ask for words.
//!
//! To add a language: copy `en/`, translate, name it in [`LANGUAGES`] and in `SPOKEN`, give it a
//! feature in `Cargo.toml`, and a row in `xtask/src/dist/languages.rs`.

mod access;
mod card;
mod chart;
mod class;
mod de;
mod descent;
mod en;
mod entry;
mod es;
mod exercise;
mod export;
mod form;
mod fr;
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
mod way;
mod why;

pub use access::AccessWords;
pub use card::CardWords;
pub use chart::ChartWords;
pub use class::ClassWords;
pub use descent::{Curves, DescentWords};
pub use entry::EntryWords;
pub use exercise::{ExerciseWords, Figures, Label, Line, Term};
pub use export::{ExportWords, captions};
pub use form::FormWords;
pub use language::{LANGUAGES, LanguageWords};
pub use lesson::{LessonNote, LessonWords};
pub use link::LinkWords;
pub use offline::OfflineWords;
pub use page::PageWords;
pub use plan::PlanWords;
pub use road::RoadWords;
pub use roadside::RoadsideWords;
pub use study::StudyWords;
pub use two::{TwoRow, TwoWords};
pub use way::WayWords;
pub use why::WhyWords;

use std::ops::Deref;

/// All that a language must be able to say.
pub trait Words:
    Send
    + Sync
    + LanguageWords
    + LinkWords
    + PageWords
    + OfflineWords
    + PlanWords
    + WayWords
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
        + WayWords
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

/// The language of this build, by its feature. One that were chosen when the page starts would keep
/// calls from being resolved: 3 KB more of the compressed page. So would a pointer to it that
/// closures keep: of each word, called or not, they would keep a function.
#[derive(Debug, Clone, Copy)]
pub struct Spoken;

impl Deref for Spoken {
    type Target = dyn Words;

    fn deref(&self) -> &(dyn Words + 'static) {
        SPOKEN
    }
}

const SPOKEN: &dyn Words = if cfg!(feature = "es") {
    &es::Spanish
} else if cfg!(feature = "fr") {
    &fr::French
} else if cfg!(feature = "de") {
    &de::German
} else {
    &en::English
};

/// The words of the language that this page is built in. Tests speak English.
#[must_use]
pub fn words() -> Spoken {
    Spoken
}

/// All that a language must be able to say to a class; the road page does not carry it.
pub trait Taught: ClassWords + LessonWords + ExerciseWords {}

impl<T: ClassWords + LessonWords + ExerciseWords> Taught for T {}

/// The same for the words of the class view.
#[derive(Debug, Clone, Copy)]
pub struct SpokenInClass;

impl Deref for SpokenInClass {
    type Target = dyn Taught;

    fn deref(&self) -> &(dyn Taught + 'static) {
        TAUGHT
    }
}

const TAUGHT: &dyn Taught = if cfg!(feature = "es") {
    &es::Spanish
} else if cfg!(feature = "fr") {
    &fr::French
} else if cfg!(feature = "de") {
    &de::German
} else {
    &en::English
};

/// The words of the class view, in the language of this build.
#[must_use]
pub fn class_words() -> SpokenInClass {
    SpokenInClass
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
