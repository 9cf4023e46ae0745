//! The road view on the page: the parts of the chart, mounted and moved.

mod asks;
mod bar;
mod bars;
mod keys;
mod look;
mod pad;
mod pair;
mod picture;
mod plan;
mod readout;
mod sheet;
mod strip;
mod table;

use crate::words::words;
pub(crate) use asks::Asks;
pub(crate) use bar::colour_select;
use leptos::prelude::*;
pub(crate) use look::Look;
pub(crate) use pair::pair;
pub(crate) use readout::put_here;
pub(crate) use table::{power as power_table, road as every_stretch};

/// The picture to work with: the bar above it, the picture and the readout. Together they fill the height of
/// their parent, a flex column.
pub(crate) fn work(look: Look, asks: Asks) -> AnyView {
    let known = Memo::new(move |_| look.prepared.with(Option::is_some));
    view! {
        <section
            class="road-view work"
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
