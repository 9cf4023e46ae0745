//! The buttons of the descents, above the hill: each stands over its stretch of road.

use super::look::Look;
use crate::chart::bars::{Bar, bars};
use crate::chart::picture::RoadPicture;
use crate::words::words;
use leptos::html::Button;
use leptos::prelude::*;
use solver::Verdict;

/// The buttons, as parts of an SVG sheet. `focus_picture` gives the keyboard back to the picture when a
/// button that had it goes.
pub(super) fn view(look: Look, focus_picture: Callback<()>) -> AnyView {
    let all = Memo::new(move |_| look.scene(bars).unwrap_or_default());
    let keys = move || all.with(|all| all.iter().map(|it| it.numbers).collect::<Vec<_>>());
    view! {
        <For each=keys key=|numbers| *numbers let:numbers>
            {button(look, all, numbers, focus_picture)}
        </For>
    }
    .into_any()
}

fn button(look: Look, all: Memo<Vec<Bar>>, numbers: (usize, usize), focus_picture: Callback<()>) -> AnyView {
    let own = Memo::new(move |_| all.with(|all| all.iter().find(|it| it.numbers == numbers).cloned()));
    let number = move |pick: fn(&Bar) -> f64| own.with(|it| it.as_ref().map_or(0.0, pick));
    let is = move |pick: fn(&Bar) -> bool| own.with(|it| it.as_ref().is_some_and(pick));
    let single = numbers.0 == numbers.1;
    let element = NodeRef::<Button>::new();
    let name = move || {
        look.prepared
            .with(|it| it.as_ref().map(|it| name(&it.picture, numbers, it.units)).unwrap_or_default())
    };
    let press = move |_| {
        if single {
            look.chosen.set(Some(numbers.0));
        } else {
            look.show_descents(numbers);
            focus_picture.run(());
        }
    };
    let text = move || own.with(|it| it.as_ref().map(|it| it.text.clone()).unwrap_or_default());
    let label = move || own.with(|it| it.as_ref().map(Bar::label).unwrap_or_default());
    let row = move || look.layout().bars;
    // Higher than it is drawn, where fingers need that: what is added lies over the sky.
    let height = move || look.layout().target.max(row().height);
    let drawn = view! {
        <span class="bar-box" aria-hidden="true">
            <span class="bar-number">{label}</span>
            <span class="bar-text">{text}</span>
        </span>
    };
    view! {
        <foreignObject
            x=move || number(|it| it.x0)
            y=move || row().top
            width=move || number(|it| it.x1 - it.x0)
            height=height
        >
            <button
                type="button"
                class="descent-bar"
                class:chosen=move || is(|it| it.chosen)
                class:disc=move || is(|it| it.disc)
                class:braked=move || is(|it| it.verdict == Verdict::NeedsServiceBrakes)
                class:no-speed=move || is(|it| it.verdict == Verdict::NoSafeSpeed)
                data-testid=if single { format!("bar-{}", numbers.0) } else { format!("bar-{}-{}", numbers.0, numbers.1) }
                aria-pressed=move || single.then(|| if is(|it| it.chosen) { "true" } else { "false" })
                node_ref=element
                on:click=press
            >
                <span class="unseen">{name}</span>
                {drawn}
            </button>
        </foreignObject>
    }
    .into_any()
}

fn name(picture: &RoadPicture, (first, last): (usize, usize), units: crate::format::Units) -> String {
    let Some(descent) = picture.descent(first) else { return String::new() };
    if first == last {
        words().bar_name(descent, [descent.from, descent.to].map(|it| picture.place_of(it)), units)
    } else {
        words().descents_joined(&first.to_string(), &last.to_string())
    }
}
