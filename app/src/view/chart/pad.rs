//! The pad over the picture, which takes keys, fingers and the mouse: a slider to a screen reader.

use super::asks::Asks;
use super::keys;
use super::look::Look;
use crate::browser::frame::{hold_pointer, place_on};
use crate::chart::pointer::{Fingers, Gesture};
use crate::chart::window::Window;
use crate::words::words;
use leptos::ev::{KeyboardEvent, PointerEvent, WheelEvent};
use leptos::html::Div;
use leptos::prelude::*;
use leptos::svg::Rect;

/// Px that one line of a wheel scrolls, where the browser counts lines. Common value, no source.
const WHEEL_LINE_PX: f64 = 16.0;
/// Zoom of one px of the wheel.
const WHEEL_ZOOM: f64 = 0.0022;

/// The pad. `element` becomes what has the keyboard.
pub(super) fn view(
    look: Look,
    asks: Option<Asks>,
    frame: NodeRef<Div>,
    element: NodeRef<Rect>,
    listed: RwSignal<bool>,
) -> AnyView {
    let fingers = StoredValue::new(Fingers::default());
    let place = move |event: &PointerEvent| {
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        frame.get_untracked().map_or((x, y), |element| place_on(&element, x, y))
    };
    let down = move |event: PointerEvent| {
        hold_pointer(&event);
        fingers.update_value(|it| it.press(event.pointer_id(), place(&event).0));
    };
    let travel = move |event: PointerEvent| {
        let x = place(&event).0;
        let zoomed = untrack(|| look.is_zoomed());
        let gesture = fingers.try_update_value(|it| it.travel(event.pointer_id(), x, zoomed));
        obey(look, gesture.unwrap_or(Gesture::None));
    };
    let up = move |event: PointerEvent| {
        let gesture = fingers.try_update_value(|it| it.lift(event.pointer_id())).unwrap_or(Gesture::None);
        if let Gesture::Point(x) = gesture {
            obey(look, gesture);
            choose(look, x);
        }
    };
    let lost = move |event: PointerEvent| fingers.update_value(|it| it.lose(event.pointer_id()));
    let layout = Memo::new(move |_| look.layout());
    let kilometres = move |metres: f64| format!("{:.2}", metres / look.units.get().metres_per_distance());
    let length = move || look.prepared.with(|it| it.as_ref().map_or(0.0, |it| it.picture.length_m()));
    let here = move || look.here.with(|it| it.as_ref().map_or(0.0, |it| it.at_m));
    let spoken = move || {
        look.here.with(|it| it.as_ref().map(|it| words().spoken(it, look.units.get()))).unwrap_or_default()
    };
    view! {
        <rect
            class="pad"
            data-testid="cursor"
            role="slider"
            tabindex="0"
            aria-label=words().cursor()
            aria-valuemin="0"
            aria-valuemax=move || kilometres(length())
            aria-valuenow=move || kilometres(here())
            aria-valuetext=spoken
            node_ref=element
            x=move || layout.get().left
            y=move || layout.get().bars.top
            width=move || layout.get().plot_width()
            height=move || layout.get().axis.bottom() - layout.get().bars.top - 2.0
            on:pointerdown=down
            on:pointermove=travel
            on:pointerup=up
            on:pointercancel=lost
            on:keydown=move |event: KeyboardEvent| keys::press(look, asks, listed, &event)
            on:wheel=move |event: WheelEvent| {
                let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
                let x = frame.get_untracked().map_or(x, |element| place_on(&element, x, y).0);
                wheel(look, &event, x);
            }
        ></rect>
    }
    .into_any()
}

/// Metres along the road at a px of the drawing, as it will be in the next frame.
fn metres(look: Look, x: f64) -> f64 {
    untrack(|| look.layout().across(look.coming_window()).back(x))
}

fn obey(look: Look, gesture: Gesture) {
    let Some(picture) = look.picture() else { return };
    let window = look.coming_window();
    let length = picture.length_m();
    let width = untrack(|| look.layout().plot_width());
    match gesture {
        Gesture::None => {}
        Gesture::Point(x) => look.point(picture.nearest(metres(look, x))),
        Gesture::Pan(by) => look.show(window.moved(-by / width * window.length(), length)),
        Gesture::Pinch { before, now, factor } => {
            let zoomed = window.zoomed(metres(look, before), factor, length);
            let by = (before - now) / width * zoomed.length();
            look.show(zoomed.moved(by, length));
        }
    }
}

/// A tap inside a descent chooses it.
fn choose(look: Look, x: f64) {
    let Some(picture) = look.picture() else { return };
    let found = picture.descent_at(picture.nearest(metres(look, x))).map(|it| it.number);
    if found.is_some() && found != look.chosen.get_untracked() {
        look.chosen.set(found);
    }
}

/// The wheel zooms about the pointer, sideways it moves along the road. A wheel that can zoom no further out
/// scrolls the page, where that scrolls.
fn wheel(look: Look, event: &WheelEvent, x: f64) {
    let Some(picture) = look.picture() else { return };
    let unit = if event.delta_mode() == WheelEvent::DOM_DELTA_LINE { WHEEL_LINE_PX } else { 1.0 };
    let (across, along) = (event.delta_x() * unit, event.delta_y() * unit);
    let window = look.coming_window();
    let length = picture.length_m();
    let to = if across.abs() > along.abs() {
        let width = untrack(|| look.layout().plot_width());
        Window::moved(window, across / width * window.length(), length)
    } else {
        let factor = (-along.clamp(-400.0, 400.0) * WHEEL_ZOOM).exp();
        window.zoomed(metres(look, x), factor, length)
    };
    if to != window || event.ctrl_key() {
        event.prevent_default();
        look.show(to);
    }
}
