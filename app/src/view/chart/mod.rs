//! The road view on the page: the parts of the chart, mounted and moved.

mod bar;
mod bars;
mod keys;
mod look;
mod pad;
mod pair;
mod picture;
mod plan;
mod readout;
mod strip;
mod table;

use crate::words::words;
pub(crate) use bar::colour_select;
use leptos::prelude::*;
pub(crate) use look::Look;
pub(crate) use pair::pair;
pub(crate) use table::{power as power_table, road as every_stretch};

/// What the picture asks the page for.
#[derive(Clone, Copy)]
pub(crate) struct Asks {
    /// A stretch is to be worked out alone, by the grid points of its ends.
    pub(crate) take_part: Callback<(usize, usize)>,
    /// A place is to be put at a grid point.
    pub(crate) put_place: Callback<usize>,
    /// Whether the picture is shown alone; the page hides the rest.
    pub(crate) alone: RwSignal<bool>,
}

/// The picture to work with: the bar above it, the picture and the readout. Together they fill the height of
/// their parent, a flex column.
pub(crate) fn work(look: Look, asks: Asks) -> AnyView {
    let known = Memo::new(move |_| look.prepared.with(Option::is_some));
    view! {
        <section
            class="road-view work"
            class:alone=move || asks.alone.get()
            data-testid="road-view"
            aria-label=words().picture()
        >
            {move || known.get().then(|| view! {
                {bar::view(look, asks.take_part)}
                {picture::view(look, Some(asks))}
                {readout::view(look, Some(asks.put_place))}
            })}
        </section>
    }
    .into_any()
}
