//! Every sentence that a person reads, in the language of this build.
//!
//! The texts stand in `app/words/`, a catalogue for each language; while building, each message becomes a
//! method of [`Spoken`], so that one that is missing, misspelt or unused does not build. Numbers come from
//! [`crate::format`]; what is put together of messages stands in [`crate::tell`].

/// The language of this build, by its feature. Choosing the language at run time would stop the compiler from
/// inlining these calls: 3 KB more of the compressed page. Tests ask all languages.
#[derive(Debug, Clone, Copy)]
pub struct Spoken {
    #[cfg(test)]
    tongue: Tongue,
}

/// The words of the language that this page is built in. Tests speak English.
#[must_use]
pub fn words() -> Spoken {
    Spoken {
        #[cfg(test)]
        tongue: Tongue::En,
    }
}

/// A language, where tests ask all of them.
#[cfg(test)]
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tongue {
    En,
    Es,
    Fr,
    De,
}

#[cfg(test)]
impl Tongue {
    pub(crate) const ALL: [Self; 4] = [Self::En, Self::Es, Self::Fr, Self::De];

    pub(crate) const fn words(self) -> Spoken {
        Spoken { tongue: self }
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

// Written by `build.rs`: the messages of `app/words/` as methods of `Spoken`.
#[cfg(not(test))]
include!(concat!(env!("OUT_DIR"), "/words.rs"));
#[cfg(test)]
include!(concat!(env!("OUT_DIR"), "/words_of_all.rs"));

#[cfg(test)]
mod tests;
