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
    let whole = Memo::new(move |_| !look.is_zoomed());
    let closest = Memo::new(move |_| look.window.with(|it| it.length() <= Window::SHORTEST_M + 1.0));
    view! {
        <div class="picture-bar">
            <div class="fill-by" role="group" aria-label=w.fill_by()>
                <span class="bar-name" aria-hidden="true">{w.fill_by()}</span>
                <div class="choice">{fills}</div>
            </div>
            {legend(look)}
            <div class="zoom" role="group" aria-label=w.zoom()>
                {zoom("zoom-out", "−", w.zoom_out(), whole.into(), move || look.zoom(1.0 / Window::ZOOM_STEP))}
                {zoom("zoom-in", "+", w.zoom_in(), closest.into(), move || look.zoom(Window::ZOOM_STEP))}
                {only_this(look, whole, take_part)}
                {chosen(look)}
                {zoom("zoom-all", w.zoom_all(), w.zoom_all(), whole.into(), move || look.show_all())}
            </div>
        </div>
    }
    .into_any()
}

/// What fills the profile, as a list: where there is no room for the bar.
pub(crate) fn colour_select(look: Look) -> AnyView {
    let w = words();
    let option = |reading: Reading| view! { <option value=reading.key()>{w.reading(reading)}</option> };
    let choose = move |key: String| {
        if let Some(reading) = Reading::ALL.into_iter().find(|it| it.key() == key) {
            look.reading.set(reading);
        }
    };
    view! {
        <select
            class="colour-select"
            data-testid="fill-select"
            aria-label=w.fill_by()
            prop:value=move || look.reading.get().key()
            on:change=move |event| choose(event_target_value(&event))
        >
            {Reading::ALL.into_iter().map(option).collect_view()}
        </select>
    }
    .into_any()
}

/// Works out only the stretch that is shown: while it is a part.
fn only_this(look: Look, whole: Memo<bool>, take_part: Callback<(usize, usize)>) -> AnyView {
    let take = move |_| {
        if let Some(picture) = look.picture() {
            let window = look.window.get_untracked();
            take_part.run((picture.nearest(window.from), picture.nearest(window.to)));
        }
    };
    view! {
        <button type="button" class="zoom-button" data-testid="only-this" hidden=move || whole.get() on:click=take>
            {words().only_this()}
        </button>
    }
    .into_any()
}

/// Shows the chosen descent.
fn chosen(look: Look) -> AnyView {
    let number = move || look.chosen.get();
    let show = move |_| {
        if let Some(number) = look.chosen.get_untracked() {
            look.show_descents((number, number));
        }
    };
    view! {
        <button
            type="button"
            class="zoom-button"
            data-testid="zoom-descent"
            hidden=move || number().is_none()
            on:click=show
        >
            {move || number().map(|number| words().descent(number))}
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

fn zoom(
    mark: &'static str,
    text: &'static str,
    name: &'static str,
    disabled: Signal<bool>,
    does: impl Fn() + 'static,
) -> AnyView {
    view! {
        <button
            type="button"
            class="zoom-button"
            data-testid=mark
            aria-label=name
            title=name
            disabled=move || disabled.get()
            on:click=move |_| does()
        >
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
            let full = words().step(tones.reading(), *value, prepared.units);
            let text = words().short_step(tones.reading(), *value, prepared.units);
            view! { <li class=format!("chip {class}") title=full>{text}</li> }
        };
        let known: Vec<_> = tones.used().iter().map(chip).collect();
        let blank = prepared.picture.assessed.contains(&false);
        let unknown = blank.then(|| view! { <li class="chip unknown">{words().not_assessed()}</li> });
        Some(view! { {known} {unknown} })
    };
    view! { <ul class="chips" data-testid="legend">{items}</ul> }.into_any()
}
