//! French words of the notice before the page, and of what the pictures say in words.

use super::French;
use crate::words::AccessWords;

impl AccessWords for French {
    fn i_am_parked(&self) -> &'static str {
        "Je suis en stationnement"
    }
}
