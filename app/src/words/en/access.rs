//! English words of the notice before the page, and of what the pictures say in words.

use super::English;
use crate::words::AccessWords;

impl AccessWords for English {
    fn i_am_parked(&self) -> &'static str {
        "I am parked"
    }
}
