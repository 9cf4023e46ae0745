//! What is said, in which order and with which numbers: the same in every language. The words stand in the
//! catalogues (`app/words/`), each message a method of [`crate::words::Spoken`]; what is put together of them are its
//! methods here.

mod access;
mod card;
mod chart;
mod class;
mod entry;
mod exercise;
mod form;
mod lesson;
mod link;
mod page;
mod road;
mod roadside;
mod two;

pub use ::words::say;
pub use exercise::{Figures, Label, Line, Term};
pub use lesson::LessonNote;
pub use two::TwoRow;
