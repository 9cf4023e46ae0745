//! What English says of itself.

use super::English;
use crate::format::Numerals;
use crate::words::LanguageWords;

impl LanguageWords for English {
    fn tag(&self) -> &'static str {
        "en"
    }
    fn numerals(&self) -> Numerals {
        Numerals::POINT
    }
    fn languages(&self) -> &'static str {
        "Other languages"
    }
    fn unread(&self) -> Option<&'static str> {
        None
    }
}
