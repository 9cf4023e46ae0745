//! The strip of the whole road, its window and handles. It stands only while a part of the road is shown.

use super::look::Look;
use super::sheet::sheet;
use crate::browser::frame::{hold_pointer, place_on, slide};
use crate::chart::cursor;
use crate::chart::scale::Scale;
use crate::chart::strip::{self, Grip};
use crate::format;
use crate::words::words;
use leptos::ev::{KeyboardEvent, PointerEvent};
use leptos::html::Div;
use leptos::prelude::*;
use leptos::svg::G;

/// The strip.
pub(super) fn view(look: Look) -> AnyView {
    let frame = NodeRef::<Div>::new();
    let layer = Memo::new(move |_| {
        let layout = look.layout();
        let prepared = look.settled.get()?;
        let ends = (layout.left, layout.right);
        Some(strip::draw(&prepared, ends, layout.strip.height, &look.ids.get_value()).into_string())
    });
    let size = Signal::derive(move || (look.layout().width, height(look)));
    let road = view! { <g aria-hidden="true" inner_html=move || layer.get().unwrap_or_default()></g> };
    let over = view! {
        {window(look)}
        {pad(look, frame)}
    };
    view! {
        <div class="strip" data-testid="strip" node_ref=frame role="group" aria-label=words().strip()>
            {sheet("under", size, road.into_any())}
            {sheet("over", size, over.into_any())}
        </div>
    }
    .into_any()
}

/// Height of the strip, px.
fn height(look: Look) -> f64 {
    look.layout().strip.height
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
    view! {
        <rect class="veil" x=move || ends.get().0 y="0" height=move || height(look)
            width=move || (ends.get().1 - ends.get().0).max(0.0)></rect>
        <rect class="veil" x=move || ends.get().2 y="0" height=move || height(look)
            width=move || (ends.get().3 - ends.get().2).max(0.0)></rect>
        <rect class="strip-window" x=move || ends.get().1 y="1" height=move || (height(look) - 2.0).max(0.0)
            width=move || (ends.get().2 - ends.get().1).max(0.0)></rect>
        <line class="strip-cursor" x1=cursor x2=cursor y1="0" y2=move || height(look)></line>
        {handle(look, false)}
        {handle(look, true)}
    }
    .into_any()
}

/// A handle of the window, which takes keys; the pad above it takes fingers and the mouse.
fn handle(look: Look, last: bool) -> AnyView {
    let element = NodeRef::<G>::new();
    Effect::new(move |_| {
        let Some(element) = element.get() else { return };
        let (window, units, across) = (look.window.get(), look.units.get(), across(look));
        let at = if last { window.to } else { window.from };
        let distance = |metres: f64| format!("{:.2}", metres / units.metres_per_distance());
        let drawn = strip::handle(window, &across, (look.layout().width, height(look)), last).into_string();
        slide(&element, [distance(across.domain().1), distance(at), format::distance(at, units)], &drawn);
    });
    let press = move |event: KeyboardEvent| {
        if event.ctrl_key() || event.meta_key() || event.alt_key() {
            return;
        }
        let Some(wish) = cursor::wish(&event.key(), event.shift_key()) else { return };
        let Some(picture) = look.picture() else { return };
        if let Some(window) = strip::pressed(last, wish, &picture, look.coming_window()) {
            look.show(window);
        }
        event.prevent_default();
    };
    view! {
        <g
            class="handle"
            data-testid=if last { "window-to" } else { "window-from" }
            role="slider"
            tabindex="0"
            aria-label=words().window_ends()[usize::from(last)]
            aria-valuemin="0"
            node_ref=element
            on:keydown=press
        ></g>
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
        let grip = untrack(|| {
            strip::grip_at(place(&event), look.coming_window(), &across(look), look.layout().width)
        });
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
            x="0"
            y="0"
            width=move || layout.get().width
            height=move || height(look)
            on:pointerdown=down
            on:pointermove=travel
            on:pointerup=up
            on:pointercancel=up
        ></rect>
    }
    .into_any()
}
