//! The strip of the whole road, its window and handles.

use super::look::Look;
use super::picture::sheet;
use crate::browser::frame::{hold_pointer, place_on};
use crate::chart::scale::Scale;
use crate::chart::strip::{self, Grip};
use crate::words::words;
use leptos::ev::PointerEvent;
use leptos::html::Div;
use leptos::prelude::*;

/// The strip.
pub(super) fn view(look: Look) -> AnyView {
    let frame = NodeRef::<Div>::new();
    let layer = Memo::new(move |_| {
        let layout = look.layout();
        let prepared = look.settled.get()?;
        Some(strip::draw(&prepared, (layout.left, layout.right), &look.ids.get_value()).into_string())
    });
    let size = Signal::derive(move || (look.layout().width, strip::HEIGHT));
    let road = view! { <g aria-hidden="true" inner_html=move || layer.get().unwrap_or_default()></g> };
    let over = view! {
        {window(look)}
        {pad(look, frame)}
    };
    view! {
        <div class="strip" data-testid="strip" node_ref=frame role="img" aria-label=words().strip()>
            {sheet("under", size, road.into_any())}
            {sheet("over", size, over.into_any())}
        </div>
    }
    .into_any()
}

/// Metres of the whole road to px, as the strip is drawn now.
fn across(look: Look) -> Scale {
    let layout = look.layout();
    let length = look.prepared.with(|it| it.as_ref().map_or(0.0, |it| it.picture.length_m()));
    strip::across(length, (layout.left, layout.right))
}

/// What is not shown is veiled; the window has a frame and two handles; the cursor is a line.
fn window(look: Look) -> AnyView {
    let ends = Memo::new(move |_| {
        let (across, window) = (across(look), look.window.get());
        (across.range().0, across.at(window.from), across.at(window.to), across.range().1)
    });
    let cursor = move || across(look).at(look.here.with(|it| it.as_ref().map_or(0.0, |it| it.at_m)));
    let handle = move |x: Signal<f64>| {
        view! {
            <g class="handle" transform=move || format!("translate({:.1} 0)", x.get())>
                <rect x="-4" y=0.5 * strip::HEIGHT - 11.0 width="8" height="22" rx="3"></rect>
                <line x1="0" x2="0" y1=0.5 * strip::HEIGHT - 6.0 y2=0.5 * strip::HEIGHT + 6.0></line>
            </g>
        }
    };
    view! {
        <rect class="veil" x=move || ends.get().0 y="0" height=strip::HEIGHT
            width=move || (ends.get().1 - ends.get().0).max(0.0)></rect>
        <rect class="veil" x=move || ends.get().2 y="0" height=strip::HEIGHT
            width=move || (ends.get().3 - ends.get().2).max(0.0)></rect>
        <rect class="strip-window" x=move || ends.get().1 y="1" height=strip::HEIGHT - 2.0
            width=move || (ends.get().2 - ends.get().1).max(0.0)></rect>
        <line class="strip-cursor" x1=cursor x2=cursor y1="0" y2=strip::HEIGHT></line>
        {handle(Signal::derive(move || ends.get().1))}
        {handle(Signal::derive(move || ends.get().2))}
    }
    .into_any()
}

fn pad(look: Look, frame: NodeRef<Div>) -> AnyView {
    let held = StoredValue::new(None::<Grip>);
    let place = move |event: &PointerEvent| {
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        frame.get_untracked().map_or(x, |element| place_on(&element, x, y).0)
    };
    let down = move |event: PointerEvent| {
        hold_pointer(&event);
        let grip = untrack(|| strip::grip_at(place(&event), look.coming_window(), &across(look)));
        held.set_value(Some(grip));
    };
    let travel = move |event: PointerEvent| {
        if let Some(grip) = held.get_value() {
            look.show(untrack(|| strip::drawn(grip, place(&event), look.coming_window(), &across(look))));
        }
    };
    let up = move |_: PointerEvent| held.set_value(None);
    let layout = Memo::new(move |_| look.layout());
    view! {
        <rect
            class="strip-pad"
            x=move || layout.get().left - 14.0
            y="0"
            width=move || layout.get().plot_width() + 28.0
            height=strip::HEIGHT
            on:pointerdown=down
            on:pointermove=travel
            on:pointerup=up
            on:pointercancel=up
        ></rect>
    }
    .into_any()
}
