//! The bar above the picture: what fills the profile, its colours, and the zoom buttons.

use super::look::Look;
use crate::chart::reading::Reading;
use crate::chart::window::Window;
use crate::words::words;
use leptos::prelude::*;

/// The bar.
pub(super) fn view(look: Look, take_part: Callback<(usize, usize)>) -> AnyView {
    let w = words();
    let fills = Reading::ALL.into_iter().map(|reading| fill(look, reading)).collect::<Vec<_>>();
    view! {
        <div class="picture-bar">
            <div class="fill-by" role="group" aria-label=w.fill_by()>
                <span class="bar-name" aria-hidden="true">{w.fill_by()}</span>
                <div class="choice">{fills}</div>
            </div>
            <div class="zoom" role="group" aria-label=w.zoom()>
                {zoom(look, "zoom-out", "−", w.zoom_out(), |look| look.zoom(1.0 / Window::ZOOM_STEP))}
                {zoom(look, "zoom-in", "+", w.zoom_in(), |look| look.zoom(Window::ZOOM_STEP))}
                {only_this(look, take_part)}
                {zoom(look, "zoom-all", w.zoom_all(), w.zoom_all(), Look::show_all)}
            </div>
        </div>
        {legend(look)}
    }
    .into_any()
}

/// Works out only the stretch between the strip's two handles.
fn only_this(look: Look, take_part: Callback<(usize, usize)>) -> AnyView {
    let length = move || look.prepared.with(|it| it.as_ref().map_or(0.0, |it| it.picture.length_m()));
    let whole = move || look.window.get().is_whole(length());
    let take = move |_| {
        if let Some(picture) = look.picture() {
            let window = look.window.get_untracked();
            take_part.run((picture.nearest(window.from), picture.nearest(window.to)));
        }
    };
    view! {
        <button type="button" class="zoom-button" data-testid="only-this" disabled=whole on:click=take>
            {words().only_this()}
        </button>
    }
    .into_any()
}

fn fill(look: Look, reading: Reading) -> AnyView {
    let pressed = move || if look.reading.get() == reading { "true" } else { "false" };
    view! {
        <button
            type="button"
            data-testid=format!("fill-{}", reading.key())
            aria-pressed=pressed
            on:click=move |_| look.reading.set(reading)
        >
            {words().reading(reading)}
        </button>
    }
    .into_any()
}

fn zoom(look: Look, mark: &'static str, text: &'static str, name: &'static str, does: fn(Look)) -> AnyView {
    view! {
        <button type="button" class="zoom-button" data-testid=mark aria-label=name title=name on:click=move |_| does(look)>
            {text}
        </button>
    }
    .into_any()
}

/// The colours of the reading, each with its value on it: never a colour alone.
fn legend(look: Look) -> AnyView {
    let items = move || {
        let prepared = look.prepared.get()?;
        let tones = &prepared.fill_tones;
        let chip = |value: &u8| {
            let class = tones.class(*value);
            let text = words().step(tones.reading(), *value, prepared.units);
            view! { <li class=format!("chip {class}")>{text}</li> }
        };
        let known: Vec<_> = tones.used().iter().map(chip).collect();
        let blank = prepared.picture.assessed.contains(&false);
        let unknown = blank.then(|| view! { <li class="chip unknown">{words().not_assessed()}</li> });
        Some(view! { {known} {unknown} })
    };
    view! { <ul class="chips" data-testid="legend">{items}</ul> }.into_any()
}
