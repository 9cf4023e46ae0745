//! What is said, in which order and with which numbers: the same in every language. The words stand in the
//! catalogues (`app/words/`), each message a method of [`crate::words::Spoken`]; what is put together of them are its
//! methods here.

mod access;
mod chart;
mod class;
mod exercise;
mod export;
mod lesson;
mod link;
mod time;

pub use exercise::{Figures, Label, Line, Term};
pub use export::captions;
pub use lesson::LessonNote;
