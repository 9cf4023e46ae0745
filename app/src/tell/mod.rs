//! What is said, in which order and with which numbers: the same in every language. The words stand in the
//! catalogues (`app/words/`), each message a method of [`crate::words::Spoken`]; what is put together of them are its
//! methods here.

mod access;
mod card;
mod chart;
mod class;
mod descent;
mod entry;
mod exercise;
mod export;
mod file;
mod finding;
mod form;
mod language;
mod lesson;
mod link;
mod page;
mod plan;
mod road;
mod roadside;
pub mod say;
mod study;
mod time;
mod two;
mod way;
mod why;

pub use descent::Curves;
pub use exercise::{Figures, Label, Line, Term};
pub use export::captions;
pub use lesson::LessonNote;
pub use two::TwoRow;
