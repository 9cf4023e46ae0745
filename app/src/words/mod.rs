//! Every sentence that a person reads, in the language of this build.
//!
//! What is said of roads, trucks and plans comes from the crate `words`. What only the page says stands in
//! `app/words/page/`, a catalogue for each language; while building, each message there becomes a method of
//! [`Spoken`], so that one that is missing, misspelt or unused does not build. What is put together of messages
//! stands in [`crate::tell`].

pub use ::words::{Piece, joined};

#[cfg(test)]
pub(crate) use ::words::Tongue;

use std::ops::Deref;

/// What the page says: its own words, and through them those of the crate `words`, since a crate can add no
/// methods to a type of another.
#[derive(Debug, Clone, Copy)]
pub struct Spoken(::words::Spoken);

impl Deref for Spoken {
    type Target = ::words::Spoken;

    fn deref(&self) -> &Self::Target {
        &self.0
    }
}

/// The words of the language that this page is built in. Tests speak English.
#[must_use]
pub const fn words() -> Spoken {
    Spoken(::words::words())
}

/// The page in every language.
#[cfg(test)]
pub(crate) const IN_ALL: [Spoken; 4] = {
    let [en, es, fr, de] = Tongue::ALL;
    [Spoken(en.words()), Spoken(es.words()), Spoken(fr.words()), Spoken(de.words())]
};

// Written by `build.rs`: the messages of `app/words/page/` as methods of `Spoken`.
#[cfg(not(test))]
include!(concat!(env!("OUT_DIR"), "/words.rs"));
#[cfg(test)]
include!(concat!(env!("OUT_DIR"), "/words_of_all.rs"));

#[cfg(test)]
mod tests;
