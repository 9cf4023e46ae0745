//! The picture itself: two layers, the cursor between them, and the pad that takes keys,
//! fingers and the mouse.

use super::look::Look;
use crate::browser::frame::{WidthWatch, hold_pointer, place_on};
use crate::chart::picture::{RoadPicture, value};
use crate::chart::pointer::{Fingers, Gesture};
use crate::chart::profile::height_scale;
use crate::chart::scale::Scale;
use crate::chart::scene::Scene;
use crate::chart::speed::speed_scale;
use crate::chart::temperature::temperature_scale;
use crate::chart::window::Window;
use crate::chart::{brackets, cursor, drawing};
use crate::words::words;
use leptos::ev::{KeyboardEvent, PointerEvent, WheelEvent};
use leptos::html::Div;
use leptos::prelude::*;

/// Px that one line of a wheel scrolls, where the browser counts lines. Common value, no source.
const WHEEL_LINE_PX: f64 = 16.0;
/// Zoom of one px of the wheel.
const WHEEL_ZOOM: f64 = 0.0022;

/// The picture.
pub(super) fn view(look: Look) -> AnyView {
    let frame = NodeRef::<Div>::new();
    watch_width(frame, look.width);
    let layers = Memo::new(move |_| {
        if look.width.get() <= 0.0 {
            return (String::new(), String::new());
        }
        let drawn = look.scene(drawing::draw).unwrap_or_default();
        (drawn.under.into_string(), drawn.over.into_string())
    });
    let patterns = drawing::patterns(&look.ids.get_value()).into_string();
    let size = Signal::derive(move || {
        let layout = look.layout();
        (layout.width, layout.height)
    });
    // Three sheets: the cursor moves between the areas and the labels.
    let under = view! {
        <defs inner_html=patterns></defs>
        <g aria-hidden="true" inner_html=move || layers.with(|it| it.0.clone())></g>
    };
    let over = view! {
        <g aria-hidden="true" inner_html=move || layers.with(|it| it.1.clone())></g>
        {pad(look, frame)}
    };
    view! {
        <div class="drawing" node_ref=frame>
            {sheet("under", size, under.into_any())}
            {sheet("between", size, marker(look))}
            {sheet("over", size, over.into_any())}
        </div>
    }
    .into_any()
}

/// One sheet of a drawing. Each is a layer of its own to the browser (`chart.css`), so that what
/// moves with the pointer repaints its own sheet alone, however much stands on the others.
pub(super) fn sheet(class: &'static str, size: Signal<(f64, f64)>, content: AnyView) -> AnyView {
    view! {
        <svg
            class=format!("sheet {class}")
            width=move || size.get().0
            height=move || size.get().1
            viewBox=move || format!("0 0 {} {}", size.get().0, size.get().1)
        >
            {content}
        </svg>
    }
    .into_any()
}

/// Follows the width of an element.
pub(super) fn watch_width(element: NodeRef<Div>, width: RwSignal<f64>) {
    let watch = StoredValue::new_local(None::<WidthWatch>);
    Effect::new(move |_| {
        if let Some(element) = element.get() {
            let told = move |px| {
                let _ = width.try_set(px);
            };
            watch.set_value(WidthWatch::new(&element, told));
        }
    });
}

/// Where the cursor's line and dots are, px; `None` where the cursor is outside the window.
#[derive(Clone, Copy, PartialEq)]
struct Marks {
    x: f64,
    top: f64,
    bottom: f64,
    dots: [Option<f64>; 3],
}

/// Scales of the parts on which the cursor has a dot, and where its line runs.
#[derive(Clone, Copy, PartialEq)]
struct Rails {
    across: Scale,
    window: Window,
    ends: (f64, f64),
    dots: [Scale; 3],
}

fn rails(scene: &Scene) -> Rails {
    Rails {
        across: scene.across(),
        window: scene.window,
        ends: (scene.layout.flags.bottom(), scene.layout.axis.top),
        dots: [height_scale(scene), speed_scale(scene), temperature_scale(scene)],
    }
}

fn marks(rails: &Rails, picture: &RoadPicture, index: usize) -> Option<Marks> {
    let lanes = [&picture.heights_m, &picture.speed, &picture.temperature];
    let dot = |number: usize| {
        let scale: Scale = rails.dots[number];
        let (bottom, top) = scale.range();
        // What is beyond its scale is drawn at the scale's end; see the lane's own drawing.
        value(lanes[number], index).map(|it| scale.at(it).clamp(top.min(bottom), bottom))
    };
    rails.window.shows(picture.place_of(index)).then(|| Marks {
        x: rails.across.at(picture.place_of(index)),
        top: rails.ends.0,
        bottom: rails.ends.1,
        dots: [dot(0), dot(1), dot(2)],
    })
}

/// The cursor: one group that moves, between the layers.
fn marker(look: Look) -> AnyView {
    // What a zoom changes is worked out apart from what the pointer changes: a hover must not
    // go over the whole road.
    let rails = Memo::new(move |_| look.scene(rails));
    let marks = Memo::new(move |_| {
        let (rails, prepared) = (rails.get()?, look.prepared.get()?);
        marks(&rails, &prepared.picture, look.cursor.get())
    });
    let dot = move |number: usize| {
        let y = move || marks.get().and_then(|it| it.dots[number]);
        view! { <circle r="4.5" cy=move || y().unwrap_or(0.0) visibility=move || y().map_or("hidden", |_| "inherit")></circle> }
    };
    let line = move |class: &'static str| {
        let end = move |pick: fn(&Marks) -> f64| marks.get().as_ref().map_or(0.0, pick);
        view! { <line class=class y1=move || end(|it| it.top) y2=move || end(|it| it.bottom)></line> }
    };
    view! {
        <g
            class="cursor"
            transform=move || format!("translate({:.1} 0)", marks.get().map_or(0.0, |it| it.x))
            visibility=move || if marks.get().is_some() { "visible" } else { "hidden" }
        >
            {line("casing")}
            {line("needle")}
            {dot(0)}
            {dot(1)}
            {dot(2)}
        </g>
    }
    .into_any()
}

/// The pad over the picture: a slider to keys and screen readers.
fn pad(look: Look, frame: NodeRef<Div>) -> AnyView {
    let fingers = StoredValue::new(Fingers::default());
    let place = move |event: &PointerEvent| {
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        frame.get_untracked().map_or((x, y), |element| place_on(&element, x, y))
    };
    let down = move |event: PointerEvent| {
        if event.pointer_type() != "mouse" {
            hold_pointer(&event);
        }
        fingers.update_value(|it| it.press(event.pointer_id(), place(&event).0));
    };
    let travel = move |event: PointerEvent| {
        let x = place(&event).0;
        let gesture = fingers.try_update_value(|it| it.travel(event.pointer_id(), x));
        obey(look, gesture.unwrap_or(Gesture::None));
    };
    let up = move |event: PointerEvent| {
        let gesture = fingers.try_update_value(|it| it.lift(event.pointer_id())).unwrap_or(Gesture::None);
        match gesture {
            Gesture::Point(x) => {
                obey(look, gesture);
                choose(look, x, place(&event).1);
            }
            Gesture::Pinch { .. } | Gesture::None => {}
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
            x=move || layout.get().left
            y="1"
            width=move || layout.get().plot_width()
            height=move || layout.get().axis.bottom() - 2.0
            on:pointerdown=down
            on:pointermove=travel
            on:pointerup=up
            on:pointercancel=lost
            on:keydown=move |event: KeyboardEvent| press(look, &event)
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
    match gesture {
        Gesture::None => {}
        Gesture::Point(x) => look.point(picture.nearest(metres(look, x))),
        Gesture::Pinch { before, now, factor } => {
            let window = look.coming_window();
            let length = picture.length_m();
            let zoomed = window.zoomed(metres(look, before), factor, length);
            let layout = untrack(|| look.layout());
            let by = (before - now) / layout.plot_width() * zoomed.length();
            look.show(zoomed.moved(by, length));
        }
    }
}

/// A tap on a bracket chooses its descent.
fn choose(look: Look, x: f64, y: f64) {
    let found = untrack(|| {
        look.scene(|scene| (y <= scene.layout.brackets.bottom()).then(|| brackets::at(scene, x)).flatten())
            .flatten()
    });
    if let Some(number) = found {
        look.chosen.set(Some(number));
    }
}

fn press(look: Look, event: &KeyboardEvent) {
    // Browser and system shortcuts stay theirs.
    if event.ctrl_key() || event.meta_key() || event.alt_key() {
        return;
    }
    let Some(wish) = cursor::wish(&event.key(), event.shift_key()) else { return };
    let Some(picture) = look.picture() else { return };
    event.prevent_default();
    let window = look.coming_window();
    let width = untrack(|| look.layout().plot_width());
    let step = cursor::step_points(&picture, window, width);
    let (to, shown) = cursor::moved(&picture, look.cursor.get_untracked(), window, wish, step);
    look.point_now(to);
    look.show(shown);
}

/// Ctrl and the wheel (or a pinch on a touch pad, which browsers report so) zooms, sideways
/// moves along the road; the plain wheel scrolls the page, which must not be trapped.
fn wheel(look: Look, event: &WheelEvent, x: f64) {
    let Some(picture) = look.picture() else { return };
    let unit = if event.delta_mode() == WheelEvent::DOM_DELTA_LINE { WHEEL_LINE_PX } else { 1.0 };
    let (across, along) = (event.delta_x() * unit, event.delta_y() * unit);
    let window = look.coming_window();
    let length = picture.length_m();
    if event.ctrl_key() {
        event.prevent_default();
        let factor = (-along.clamp(-400.0, 400.0) * WHEEL_ZOOM).exp();
        look.show(window.zoomed(metres(look, x), factor, length));
    } else if across.abs() > along.abs() && !window.is_whole(length) {
        event.prevent_default();
        let width = untrack(|| look.layout().plot_width());
        look.show(Window::moved(window, across / width * window.length(), length));
    }
}
