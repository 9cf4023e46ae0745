//! A road kept beside the one shown.

use super::entered::Entered;
use super::result::Worked;
use std::sync::Arc;

/// A road kept beside the one shown: worked out, and as it can be shown again.
#[derive(Clone)]
pub(crate) struct Beside {
    /// What it came to.
    pub(crate) worked: Arc<Worked>,
    pub(super) entered: Entered,
}

impl Beside {
    /// With what was entered for it.
    pub(super) fn entered(&self) -> Entered {
        self.entered.clone()
    }
}
