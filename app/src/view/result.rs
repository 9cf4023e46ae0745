//! Views of the result shown.

use crate::state::{State, Worked};
use leptos::prelude::*;
use std::sync::Arc;

/// A view of the last result, made anew when result or units change.
pub(super) fn of_result<V: IntoView + 'static>(
    state: State,
    make: impl Fn(Arc<Worked>) -> V + Send + Sync + 'static,
) -> impl Fn() -> Option<AnyView> + Send + Sync + 'static {
    move || {
        state.units.track();
        state.shown.worked.get().map(|worked| make(worked).into_any())
    }
}
