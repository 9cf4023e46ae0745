//! What French says of itself.

use super::French;
use crate::format::Numerals;
use crate::words::LanguageWords;

impl LanguageWords for French {
    fn tag(&self) -> &'static str {
        "fr"
    }
    fn numerals(&self) -> Numerals {
        Numerals::comma("à")
    }
    fn colon(&self) -> &'static str {
        "\u{a0}: "
    }
    fn semicolon(&self) -> &'static str {
        "\u{a0}; "
    }
    fn languages(&self) -> &'static str {
        "Autres langues"
    }
    fn unread(&self) -> Option<&'static str> {
        Some(
            "Cette traduction n’a encore été relue par aucun professionnel du transport. En cas de doute, la page en anglais fait foi.",
        )
    }
}
