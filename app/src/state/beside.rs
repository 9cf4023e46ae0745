//! A road kept beside the one shown.

use super::entered::Entered;
use super::result::Worked;
use std::sync::Arc;

/// A road kept beside the one shown: worked out, and as it can be shown again.
#[derive(Clone)]
pub(crate) struct Beside {
    /// The result of the road.
    pub(crate) worked: Arc<Worked>,
    pub(super) entered: Entered,
}

impl Beside {
    /// The road with what was entered for it.
    pub(super) fn entered(&self) -> Entered {
        self.entered.clone()
    }
}
