//! What Spanish says of itself.

use super::Spanish;
use crate::format::Numerals;
use crate::words::LanguageWords;

impl LanguageWords for Spanish {
    fn tag(&self) -> &'static str {
        "es"
    }
    fn numerals(&self) -> Numerals {
        Numerals::comma("a")
    }
    fn languages(&self) -> &'static str {
        "Otros idiomas"
    }
    fn unread(&self) -> Option<&'static str> {
        Some(
            "Ningún profesional del transporte ha revisado todavía esta traducción. En caso de duda, vale la página en inglés.",
        )
    }
}
