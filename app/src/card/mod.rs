//! The card for the cab before it is drawn: its facts, how much room its texts take, and which page each row
//! stands on. All of it is pure, so that the pages are the same in every browser.

pub mod facts;
pub mod pages;
pub mod room;
pub mod sheet;
