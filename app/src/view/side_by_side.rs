//! Two roads, or the list of many that any two can be taken from.

use super::{ranked, two};
use crate::state::State;
use leptos::prelude::*;

/// The view.
pub(super) fn side_by_side(state: State) -> AnyView {
    let many = move || state.ranking.in_front.get() && state.ranking.rows.with(|rows| !rows.is_empty());
    view! {
        <div class="of-many" hidden=move || !many()>{ranked::ranked(state)}</div>
        <div class="of-pair" hidden=many>{two::two(state)}</div>
    }
    .into_any()
}
