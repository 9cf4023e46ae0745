//! The plan shape beside or below the readout.

use super::look::Look;
use super::picture::{sheet, watch_width};
use crate::browser::frame::place_on;
use crate::chart::plan_shape::Shape;
use crate::words::words;
use leptos::ev::PointerEvent;
use leptos::html::Div;
use leptos::prelude::*;
use std::sync::Arc;

/// Height of the drawing, px.
const HEIGHT: f64 = 196.0;

/// The plan shape; nothing where the road has none.
pub(super) fn view(look: Look) -> AnyView {
    let frame = NodeRef::<Div>::new();
    let width = RwSignal::new(0.0);
    watch_width(frame, width);
    let shape: Memo<Option<Arc<Shape>>> = Memo::new(move |_| {
        let px = width.get();
        let prepared = look.settled.get()?;
        if px > 0.0 { Shape::new(&prepared, (px, HEIGHT)).map(Arc::new) } else { None }
    });
    let layer = Memo::new(move |_| {
        let (shape, prepared) = (shape.get()?, look.settled.get()?);
        Some(shape.draw(&prepared, look.window.get(), &words()).into_string())
    });
    let cursor = Memo::new(move |_| {
        let (shape, prepared) = (shape.get()?, look.settled.get()?);
        Some(shape.point(&prepared, look.cursor.get()))
    });
    let to = move |event: &PointerEvent| {
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        let place = frame.get_untracked().map(|element| place_on(&element, x, y));
        if let (Some((x, y)), Some(shape)) = (place, shape.get_untracked()) {
            look.point(shape.nearest(x, y));
        }
    };
    let drag = move |event: PointerEvent| {
        if event.buttons() != 0 {
            to(&event);
        }
    };
    // Asked of the picture, not of the shape: a hidden frame has no width to draw a shape in.
    let flat = move || look.prepared.with(|it| it.as_ref().is_none_or(|it| it.picture.east_m.is_empty()));
    let name = move || {
        let leads = look.prepared.with(|it| it.as_ref().and_then(|it| it.picture.leads()));
        let units = look.units.get();
        let leads = leads.map(|(straight_m, towards)| words().leads(straight_m, towards, units));
        format!("{}. {}", words().plan_shape(), leads.unwrap_or_default())
    };
    let size = Signal::derive(move || (width.get(), HEIGHT));
    let road = view! { <g aria-hidden="true" inner_html=move || layer.get().unwrap_or_default()></g> };
    let dot = view! {
        <circle
            class="plan-cursor"
            r="6"
            cx=move || cursor.get().map_or(0.0, |it| it.0)
            cy=move || cursor.get().map_or(0.0, |it| it.1)
            visibility=move || if cursor.get().is_some() { "visible" } else { "hidden" }
        ></circle>
    };
    view! {
        <div
            class="plan-shape"
            data-testid="plan-shape"
            node_ref=frame
            role="img"
            aria-label=name
            hidden=flat
            on:pointerup=move |event: PointerEvent| to(&event)
            on:pointermove=drag
        >
            {sheet("under", size, road.into_any())}
            {sheet("over", size, dot.into_any())}
        </div>
    }
    .into_any()
}
