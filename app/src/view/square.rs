//! Gears and stages as squares, as the picture shows them.

use super::chart::Look;
use crate::words::words;
use leptos::prelude::*;
use solver::truck::{Gear, Stage};

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
