//! What a language says of itself.

use crate::Spoken;
use crate::format::Numerals;

impl Spoken {
    /// How it writes numbers.
    #[must_use]
    pub fn numerals(&self) -> Numerals {
        let sign = |text: &'static str| text.chars().next().unwrap_or(' ');
        Numerals {
            decimal: sign(self.decimal_sign()),
            thousands: sign(self.thousands_sign()),
            to: self.number_to(),
        }
    }

    /// That no one of the trade has read the translation yet, where that is so.
    #[must_use]
    pub fn unread(&self) -> Option<&'static str> {
        Some(self.translation_unread()).filter(|it| !it.is_empty())
    }
}
