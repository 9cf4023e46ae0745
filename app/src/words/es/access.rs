//! Spanish words of the notice before the page, and of what the pictures say in words.

use super::Spanish;
use crate::words::AccessWords;

impl AccessWords for Spanish {
    fn i_am_parked(&self) -> &'static str {
        "Estoy estacionado"
    }
}
