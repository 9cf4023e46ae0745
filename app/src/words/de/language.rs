//! What German says of itself.

use super::German;
use crate::format::Numerals;
use crate::words::LanguageWords;

impl LanguageWords for German {
    fn tag(&self) -> &'static str {
        "de"
    }
    fn numerals(&self) -> Numerals {
        Numerals::comma("bis")
    }
    fn languages(&self) -> &'static str {
        "Andere Sprachen"
    }
    fn unread(&self) -> Option<&'static str> {
        Some(
            "Diese Übersetzung hat noch niemand aus dem Fahrberuf gelesen. Im Zweifel gilt die englische Seite.",
        )
    }
}
