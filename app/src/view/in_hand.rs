//! The descent in hand, and how gears and stages are shown beside the picture.

use super::chart::Look;
use crate::state::State;
use crate::words::words;
use leptos::prelude::*;
use solver::truck::{Gear, Stage};

/// Number of the descent in hand: the one chosen, else the one that asks for most.
pub(super) fn in_hand(state: State) -> Memo<Option<usize>> {
    Memo::new(move |_| {
        let chosen = state.shown.chosen_descent.get();
        state.shown.worked.with(|worked| {
            let plan = &worked.as_ref()?.plan;
            let there = |number: &usize| plan.descents.iter().any(|it| it.number == *number);
            chosen.filter(there).or_else(|| plan.deciding().map(|it| it.number))
        })
    })
}

/// A gear in its colour on the picture.
pub(super) fn gear_square(look: Look, gear: Gear) -> AnyView {
    let class = look.gear_class(gear.number());
    view! { <span class=format!("square gear {class}")>{gear.number()}</span> }.into_any()
}

/// The strongest stage from one grid point to another in its hatching; a range where it changes on the way.
pub(super) fn stage_square(look: Look, stage: Stage, from: usize, to: usize) -> AnyView {
    let text = look.picture().map(|picture| words().stage_range(&picture, from, to));
    view! { <span class=format!("square stage stage-{}", stage.number())><i>{text}</i></span> }.into_any()
}
