//! Few choices side by side, one of them pressed.

use leptos::prelude::*;

/// A row of buttons; `chosen` says which one is pressed.
pub(super) fn choice<T: Copy + PartialEq + Send + Sync + 'static>(
    label: &'static str,
    testid: &'static str,
    options: Vec<(T, &'static str, &'static str)>,
    chosen: impl Fn() -> T + Copy + Send + Sync + 'static,
    choose: impl Fn(T) + Copy + 'static,
) -> AnyView {
    let button = move |(value, key, text): (T, &'static str, &'static str)| {
        view! {
            <button
                type="button"
                data-testid=format!("{testid}-{key}")
                aria-pressed=move || if chosen() == value { "true" } else { "false" }
                on:click=move |_| choose(value)
            >
                {text}
            </button>
        }
    };
    view! {
        <div class="choice" role="group" aria-label=label data-testid=testid>
            {options.into_iter().map(button).collect_view()}
        </div>
    }
    .into_any()
}

/// The same row below its label, as one of a panel's entries.
pub(super) fn labelled_choice<T: Copy + PartialEq + Send + Sync + 'static>(
    label: &'static str,
    testid: &'static str,
    options: Vec<(T, &'static str, &'static str)>,
    chosen: impl Fn() -> T + Copy + Send + Sync + 'static,
    choose: impl Fn(T) + Copy + 'static,
) -> AnyView {
    let row = choice(label, testid, options, chosen, choose);
    view! { <div class="entry"><span class="label">{label}</span>{row}</div> }.into_any()
}
