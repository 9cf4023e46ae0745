//! The plan shape in a corner of the picture: one press enlarges it, another makes it small again.

use super::look::Look;
use super::sheet::sheet;
use crate::browser::frame::place_on;
use crate::chart::corner::area;
use crate::chart::plan_shape::Shape;
use crate::words::words;
use leptos::ev::PointerEvent;
use leptos::html::Button;
use leptos::prelude::*;
use std::sync::Arc;

/// The plan shape, as a part of an SVG sheet; nothing where the road has none.
pub(super) fn view(look: Look) -> AnyView {
    let has_shape = Memo::new(move |_| {
        look.prepared.with(|it| it.as_ref().is_some_and(|it| !it.picture.east_m.is_empty()))
    });
    view! { {move || has_shape.get().then(|| shape(look))} }.into_any()
}

fn shape(look: Look) -> AnyView {
    let frame = NodeRef::<Button>::new();
    let size = Memo::new(move |_| look.layout().plan_size(look.plan_large.get()));
    let place = Memo::new(move |_| area(look.corner.get(), &look.layout(), size.get()));
    let shape: Memo<Option<Arc<Shape>>> = Memo::new(move |_| {
        let prepared = look.settled.get()?;
        Shape::new(&prepared, size.get()).map(Arc::new)
    });
    let layer = Memo::new(move |_| {
        let (shape, prepared) = (shape.get()?, look.settled.get()?);
        let labels = words();
        Some(shape.draw(&prepared, look.window.get(), look.chosen.get(), Some(&labels)).into_string())
    });
    let cursor = Memo::new(move |_| {
        let (shape, prepared) = (shape.get()?, look.settled.get()?);
        Some(shape.point(&prepared, look.cursor.get()))
    });
    let drag = move |event: PointerEvent| {
        if event.buttons() == 0 {
            return;
        }
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        let place = frame.get_untracked().map(|element| place_on(&element, x, y));
        if let (Some((x, y)), Some(shape)) = (place, shape.get_untracked()) {
            look.point(shape.nearest(x, y));
        }
    };
    let name = move || {
        let leads = look.prepared.with(|it| it.as_ref().and_then(|it| it.picture.leads()));
        let units = look.units.get();
        let leads = leads.map(|(straight_m, towards)| words().leads(straight_m, towards, units));
        format!("{}. {}", words().plan_shape(), leads.unwrap_or_default())
    };
    let road = view! { <g aria-hidden="true" inner_html=move || layer.get().unwrap_or_default()></g> };
    let dot = view! {
        <circle
            class="plan-cursor"
            r="5.5"
            cx=move || cursor.get().map_or(0.0, |it| it.0)
            cy=move || cursor.get().map_or(0.0, |it| it.1)
            visibility=move || if cursor.get().is_some() { "visible" } else { "hidden" }
        ></circle>
    };
    let drawn = view! {
        {sheet("under", size.into(), road.into_any())}
        {sheet("over", size.into(), dot.into_any())}
    };
    view! {
        <foreignObject
            x=move || place.get()[0]
            y=move || place.get()[1]
            width=move || size.get().0
            height=move || size.get().1
        >
            <button
                type="button"
                class="plan-shape"
                class:large=move || look.plan_large.get()
                data-testid="plan-shape"
                aria-pressed=move || if look.plan_large.get() { "true" } else { "false" }
                node_ref=frame
                on:click=move |_| look.plan_large.update(|it| *it = !*it)
                on:pointermove=drag
            >
                <span class="unseen">{name}</span>
                {drawn}
            </button>
        </foreignObject>
    }
    .into_any()
}
