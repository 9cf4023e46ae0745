//! Small parts that many panels share. Each is one type of view, which keeps the page small.

use crate::words::Piece;
use leptos::prelude::*;

/// True from the first time on that `when` is: what is made then stays.
pub(super) fn once(when: impl Fn() -> bool + Send + Sync + 'static) -> Memo<bool> {
    Memo::new(move |made: Option<&bool>| made == Some(&true) || when())
}

/// A label and the lines below it, for a `<dl>`.
pub(super) fn fact(label: &'static str, testid: &'static str, lines: Vec<String>) -> AnyView {
    let lines: Vec<AnyView> = lines.into_iter().map(line).collect();
    view! { <div data-testid=mark(testid)><dt>{label}</dt><dd>{lines}</dd></div> }.into_any()
}

fn line(text: String) -> AnyView {
    view! { <p>{text}</p> }.into_any()
}

/// A list of sentences; nothing where there are none.
pub(super) fn list(class: &'static str, testid: &'static str, lines: Vec<String>) -> AnyView {
    if lines.is_empty() {
        return ().into_any();
    }
    let items: Vec<AnyView> = lines.into_iter().map(item).collect();
    view! { <ul class=class data-testid=mark(testid)>{items}</ul> }.into_any()
}

fn item(text: String) -> AnyView {
    view! { <li>{text}</li> }.into_any()
}

/// A labelled field of one line whose entry is no truck's or day's: see `entry` for those.
/// `unit` is empty for a name; `inputmode` is what a phone's keyboard is to offer.
pub(super) fn text_field(
    id: String,
    label: &'static str,
    inputmode: &'static str,
    text: Signal<String>,
    unit: Signal<&'static str>,
    typed: Box<dyn Fn(String)>,
) -> AnyView {
    view! {
        <label for=id.clone()>{label}</label>
        <span class="box">
            <input
                id=id.clone()
                data-testid=id
                type="text"
                inputmode=inputmode
                maxlength="80"
                autocomplete="off"
                prop:value=move || text.get()
                on:input=move |event| typed(event_target_value(&event))
            />
            <span class="unit">{move || unit.get()}</span>
        </span>
    }
    .into_any()
}

fn mark(testid: &'static str) -> Option<&'static str> {
    (!testid.is_empty()).then_some(testid)
}

/// A sentence with what matters in it strong.
pub(super) fn pieces(all: impl IntoIterator<Item = Piece>) -> Vec<AnyView> {
    all.into_iter().map(piece).collect()
}

fn piece(piece: Piece) -> AnyView {
    match piece {
        Piece::Plain(text) => text.into_any(),
        Piece::Strong(text) => view! { <strong>{text}</strong> }.into_any(),
    }
}
