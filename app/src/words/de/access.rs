//! German words of the notice before the page, and of what the pictures say in words.

use super::German;
use crate::words::AccessWords;

impl AccessWords for German {
    fn i_am_parked(&self) -> &'static str {
        "Ich parke"
    }
}
