//! What is said of roads, trucks and plans, in the language of this build.
//!
//! The texts stand beside this crate's `Cargo.toml`, a catalogue for each language; while building, each message
//! becomes a method of [`Spoken`]. What is put together of messages are its methods in the modules here, which
//! have no language in them. Quantities become text in [`format`].
//!
//! What only the page says stands in catalogues of its own (`page/`), with the page.

mod descent;
pub mod down;
mod entry;
mod export;
mod file;
mod finding;
pub mod format;
mod language;
mod plan;
mod road;
pub mod say;
mod short;
mod study;
mod time;
mod way;
mod why;

pub use descent::Curves;
pub use export::captions;

/// The language of this build, by its feature. Choosing the language at run time would stop the compiler from
/// inlining these calls: 3 KB more of the compressed page. Tests ask all languages.
#[derive(Debug, Clone, Copy)]
pub struct Spoken {
    #[cfg(any(test, feature = "all"))]
    tongue: Tongue,
}

/// The words of the language that this is built in; with all languages they are English.
#[must_use]
pub const fn words() -> Spoken {
    Spoken {
        #[cfg(any(test, feature = "all"))]
        tongue: Tongue::En,
    }
}

/// A language, where all of them are asked.
#[cfg(any(test, feature = "all"))]
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tongue {
    /// English.
    En,
    /// Spanish.
    Es,
    /// French.
    Fr,
    /// German.
    De,
}

#[cfg(any(test, feature = "all"))]
impl Tongue {
    /// All languages.
    pub const ALL: [Self; 4] = [Self::En, Self::Es, Self::Fr, Self::De];

    /// What is said in this language.
    #[must_use]
    pub const fn words(self) -> Spoken {
        Spoken { tongue: self }
    }
}

#[cfg(any(test, feature = "all"))]
impl Spoken {
    /// Which language it is.
    #[must_use]
    pub const fn tongue(self) -> Tongue {
        self.tongue
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

/// The sentence without its marks, for a screen reader, a terminal or a test.
#[must_use]
pub fn joined(pieces: &[Piece]) -> String {
    pieces
        .iter()
        .map(|piece| match piece {
            Piece::Plain(text) | Piece::Strong(text) => text.as_str(),
        })
        .collect()
}

// Written by `build.rs`: the messages as methods of `Spoken`.
#[cfg(not(any(test, feature = "all")))]
include!(concat!(env!("OUT_DIR"), "/words.rs"));
#[cfg(any(test, feature = "all"))]
include!(concat!(env!("OUT_DIR"), "/words_of_all.rs"));

#[cfg(test)]
mod tests;
