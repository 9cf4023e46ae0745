//! One sheet of a drawing.

use leptos::prelude::*;

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
