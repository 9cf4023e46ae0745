//! One of a list: a labelled select. One type of view for all of them keeps the page small.

use leptos::prelude::*;

/// `options` are keys and what is read; `chosen` is the key of now, empty for none of them, which
/// then reads `otherwise`.
pub(super) fn pick(
    id: String,
    label: &'static str,
    otherwise: &'static str,
    options: Signal<Vec<(String, String)>>,
    chosen: Signal<String>,
    choose: impl Fn(String) + 'static,
) -> AnyView {
    select(id, label, "", otherwise, options, chosen, Box::new(choose))
}

/// A list with a sentence of help, for entries of a truck.
pub(super) fn helped_pick(
    id: &str,
    [label, hint]: [&'static str; 2],
    otherwise: &'static str,
    options: Signal<Vec<(String, String)>>,
    chosen: Signal<String>,
    choose: impl Fn(String) + 'static,
) -> AnyView {
    select(id.to_owned(), label, hint, otherwise, options, chosen, Box::new(choose))
}

fn select(
    id: String,
    label: &'static str,
    hint: &'static str,
    otherwise: &'static str,
    options: Signal<Vec<(String, String)>>,
    chosen: Signal<String>,
    choose: Box<dyn Fn(String)>,
) -> AnyView {
    let option = |(key, text): (String, String)| view! { <option value=key>{text}</option> }.into_any();
    let about = (!hint.is_empty()).then(|| format!("{id}-about"));
    let help = about.clone().map(|about| view! { <p class="about" id=about>{hint}</p> }.into_any());
    let all = move || options.get().into_iter().map(option).collect_view();
    view! {
        <div class="entry">
            <label for=id.clone()>{label}</label>
            <select
                id=id.clone()
                data-testid=id
                aria-describedby=about
                prop:value=move || {
                    // Set anew when the options are, which are put in before this is set.
                    options.track();
                    chosen.get()
                }
                on:change=move |event| choose(event_target_value(&event))
            >
                {(!otherwise.is_empty()).then(|| view! { <option value="" disabled>{otherwise}</option> })}
                {all}
            </select>
            {help}
        </div>
    }
    .into_any()
}
