//! Few choices side by side, one of them pressed.

use leptos::prelude::*;
use std::rc::Rc;
use std::sync::Arc;

/// A row of buttons; `chosen` says which one is pressed.
pub(super) fn choice<T: Copy + PartialEq + Send + Sync + 'static>(
    label: &'static str,
    testid: &'static str,
    options: Vec<(T, &'static str, &'static str)>,
    chosen: impl Fn() -> T + Send + Sync + 'static,
    choose: impl Fn(T) + 'static,
) -> AnyView {
    let texts = options.iter().map(|(_, key, text)| (*key, *text)).collect();
    let values: Arc<[T]> = options.into_iter().map(|(value, _, _)| value).collect();
    let all = values.clone();
    let pressed = move |index: usize| all[index] == chosen();
    row(label, testid, texts, Arc::new(pressed), Rc::new(move |index| choose(values[index])))
}

/// Not generic: one type of view for all rows keeps the page small.
fn row(
    label: &'static str,
    testid: &'static str,
    texts: Vec<(&'static str, &'static str)>,
    pressed: Arc<dyn Fn(usize) -> bool + Send + Sync>,
    choose: Rc<dyn Fn(usize)>,
) -> AnyView {
    let button = |(index, (key, text)): (usize, (&'static str, &'static str))| {
        let (pressed, choose) = (pressed.clone(), choose.clone());
        view! {
            <button
                type="button"
                data-testid=format!("{testid}-{key}")
                aria-pressed=move || if pressed(index) { "true" } else { "false" }
                on:click=move |_| choose(index)
            >
                {text}
            </button>
        }
        .into_any()
    };
    let buttons: Vec<AnyView> = texts.into_iter().enumerate().map(button).collect();
    view! { <div class="choice" role="group" aria-label=label data-testid=testid>{buttons}</div> }.into_any()
}

/// A row of buttons below its label, as one of a panel's entries.
pub(super) fn labelled_choice<T: Copy + PartialEq + Send + Sync + 'static>(
    label: &'static str,
    testid: &'static str,
    options: Vec<(T, &'static str, &'static str)>,
    chosen: impl Fn() -> T + Send + Sync + 'static,
    choose: impl Fn(T) + 'static,
) -> AnyView {
    labelled(label, "", choice(label, testid, options, chosen, choose))
}

/// A labelled row of buttons with a sentence of help.
pub(super) fn helped_choice<T: Copy + PartialEq + Send + Sync + 'static>(
    [label, hint]: [&'static str; 2],
    testid: &'static str,
    options: Vec<(T, &'static str, &'static str)>,
    chosen: impl Fn() -> T + Send + Sync + 'static,
    choose: impl Fn(T) + 'static,
) -> AnyView {
    labelled(label, hint, choice(label, testid, options, chosen, choose))
}

fn labelled(label: &'static str, hint: &'static str, row: AnyView) -> AnyView {
    let help = (!hint.is_empty()).then(|| view! { <p class="about">{hint}</p> });
    view! { <div class="entry"><span class="label">{label}</span>{row}{help}</div> }.into_any()
}
