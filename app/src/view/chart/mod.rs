//! The road view on the page: the parts of the chart, mounted and moved.

mod bar;
mod look;
mod pair;
mod picture;
mod plan;
mod readout;
mod strip;
mod table;

use crate::chart::RoadPicture;
use crate::format::Units;
use crate::words::words;
use leptos::prelude::*;
use look::Look;
pub(crate) use pair::pair;
use std::sync::Arc;
pub(crate) use table::power as power_table;

/// The road view.
///
/// `picture` is what is drawn, `None` before the first answer; `chosen_descent` is the number
/// of the descent that is looked at: set from outside it brings that descent into view, and a
/// click on a bracket sets it. `look_at` brings a stretch into view, m from the start;
/// `take_part` is told the grid points of a stretch that is to be worked out alone, `put_place`
/// the grid point at which a place is to be put.
pub(crate) fn road_view(
    picture: Signal<Option<Arc<RoadPicture>>>,
    units: Signal<Units>,
    chosen_descent: RwSignal<Option<usize>>,
    look_at: RwSignal<Option<(f64, f64)>>,
    take_part: Callback<(usize, usize)>,
    put_place: Callback<usize>,
) -> impl IntoView {
    let look = Look::new(picture, units, chosen_descent);
    look.follow(look_at);
    let known = Memo::new(move |_| look.prepared.with(Option::is_some));
    view! {
        <section class="road-view" data-testid="road-view" aria-label=words().picture()>
            {move || known.get().then(|| view! {
                {bar::view(look, take_part)}
                {picture::view(look)}
                {strip::view(look)}
                <div class="road-below">
                    {readout::view(look, Some(put_place))}
                    {plan::view(look)}
                </div>
                {table::view(look)}
            })}
        </section>
    }
}
