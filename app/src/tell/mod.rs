//! What the page says, in which order and with which numbers: the same in every language. The words stand in the
//! catalogues of `app/words/page/`, each message a method of [`crate::words::Spoken`]; what is put together of them are
//! its methods here. What is said of roads, trucks and plans, whoever says it, is put together in the crate `words`.

mod access;
mod card;
mod card_sheet;
mod chart;
mod class;
mod comparison;
mod entry;
mod exercise;
mod form;
mod lesson;
mod link;
mod page;
mod road;
mod roadside;

pub use ::words::say;
pub use exercise::{Figures, Label, Line, Term};
pub use lesson::LessonNote;
