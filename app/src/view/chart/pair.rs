//! Two road views on one scale, with one cursor.

use super::look::Look;
use super::{picture, readout, table};
use crate::chart::picture::RoadPicture;
use crate::format::Units;
use leptos::prelude::*;
use std::sync::Arc;

/// Two pictures, one below the other: the same length, and the same heights to the px. A cursor
/// moved on one stands on the other at the same distance from the start, and zooming goes along.
/// `names` stand above them. Both together fill the height of their parent; the tables of both stand below.
pub(crate) fn pair(
    pictures: Signal<Option<[Arc<RoadPicture>; 2]>>,
    names: Signal<[String; 2]>,
    units: Signal<Units>,
) -> AnyView {
    let one = move |index: usize| {
        let picture = Signal::derive(move || pictures.get().map(|both| both[index].clone()));
        Look::new(picture, units, RwSignal::new(None))
    };
    let looks = [one(0), one(1)];
    follow(looks[0], looks[1]);
    follow(looks[1], looks[0]);
    let view_one = move |index: usize| {
        let look = looks[index];
        view! {
            <div class="road-view one-of-two" data-testid=format!("two-{index}")>
                <h3>{move || names.with(|names| names[index].clone())}</h3>
                {picture::view(look, None)}
                {readout::view(look, None)}
            </div>
        }
        .into_any()
    };
    view! {
        <div class="pair">{view_one(0)}{view_one(1)}</div>
        <div class="pair-tables">{looks.map(table::road).into_iter().collect_view()}</div>
    }
    .into_any()
}

/// Moves `other` to where `look` is moved. A cursor that stands at the end of a shorter road says
/// nothing about the longer one.
fn follow(look: Look, other: Look) {
    Effect::new(move |_| {
        let (window, cursor) = (look.window.get(), look.cursor.get());
        let (Some(own), Some(picture)) = (look.picture(), other.picture()) else { return };
        if other.window.get_untracked() != window {
            other.show(window);
        }
        let at = own.place_of(cursor);
        let there = picture.place_of(other.cursor.get_untracked());
        let past_end = cursor + 1 == own.points() && there > at;
        let wanted = picture.nearest(at);
        if !past_end && other.cursor.get_untracked() != wanted {
            other.point(wanted);
        }
    });
}
