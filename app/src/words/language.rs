//! What a language says of itself.

use crate::format::Numerals;

/// The languages there are: tag, and the page offered in that language.
pub const LANGUAGES: [(&str, &str); 4] = [
    ("en", "This page in English"),
    ("es", "Esta página en español"),
    ("fr", "Cette page en français"),
    ("de", "Diese Seite auf Deutsch"),
];

/// A language.
pub trait LanguageWords {
    /// Its tag, as in `lang="en"`.
    fn tag(&self) -> &'static str;
    /// How it writes numbers.
    fn numerals(&self) -> Numerals;
    /// Between a label and what it is the label of.
    fn colon(&self) -> &'static str {
        ": "
    }
    /// Between a line and what is said of it.
    fn semicolon(&self) -> &'static str {
        "; "
    }
    /// Name of the links to the other languages.
    fn languages(&self) -> &'static str;
    /// Where no one of the trade has read the translation yet: that, and what to do in doubt.
    fn unread(&self) -> Option<&'static str>;
}
