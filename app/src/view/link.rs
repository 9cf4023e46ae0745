//! The link that carries truck and day: made here, and offered where one was opened.

use crate::format;
use crate::state::{Carried, State};
use crate::words::words;
use leptos::prelude::*;

/// What a link that was opened brings, until it is decided.
pub(super) fn carried(state: State) -> AnyView {
    let w = words();
    let line = move || {
        let carried = state.entered.carried.get()?;
        let (testid, text) = match &carried {
            Carried::Offered(_) => ("link-offered", w.link_offered()),
            Carried::Taken(_) => ("link-taken", w.link_taken()),
            Carried::Opened(_) => ("project-opened", w.project_opened()),
            Carried::Broken => ("link-broken", w.link_broken()),
        };
        let offered = matches!(carried, Carried::Offered(_));
        let brings = match &carried {
            Carried::Offered(brought) => {
                let (truck, day) = &**brought;
                let mass = format::mass(truck.gross_mass_kg, state.units.get());
                let day = format!("{}, {}", w.surface(day.surface), w.load(day.load));
                Some(format!("{} · {mass} · {day}", truck.name))
            }
            Carried::Taken(_) | Carried::Opened(_) | Carried::Broken => None,
        };
        let leave = match &carried {
            Carried::Offered(_) => w.keep_mine(),
            Carried::Taken(_) | Carried::Opened(_) => w.back_to_mine(),
            Carried::Broken => w.close(),
        };
        let keep = matches!(carried, Carried::Taken(_) | Carried::Opened(_));
        Some(view! {
            <section class="trouble card" data-testid=testid>
                {brings.map(|brings| view! { <p><strong data-testid="link-brings">{brings}</strong></p> })}
                <p>{text}</p>
                <div class="buttons">
                    {offered.then(|| view! {
                        <button type="button" class="button primary" data-testid="take-link" on:click=move |_| state.take_carried()>
                            {w.use_link()}
                        </button>
                    })}
                    <button type="button" class="button" data-testid="leave-link" on:click=move |_| state.leave_carried()>
                        {leave}
                    </button>
                    {keep.then(|| view! {
                        <button type="button" class="button" data-testid="close-link" on:click=move |_| state.entered.carried.set(None)>
                            {w.close()}
                        </button>
                    })}
                </div>
            </section>
        })
    };
    view! { <div class="troubles" role="status">{line}</div> }.into_any()
}

/// The button that makes one, and the link when it is made.
pub(super) fn make(state: State) -> AnyView {
    let w = words();
    let made = move || {
        state.entered.link.get().map(|link| {
            let said = if link.copied { w.link_copied() } else { w.link_made() };
            view! {
                <p class="about" data-testid="link-said">{said}</p>
                <input
                    type="text"
                    readonly
                    class="address"
                    data-testid="link"
                    aria-label=w.link_label()
                    prop:value=link.address
                />
            }
        })
    };
    view! {
        <div class="make-link">
            <button type="button" class="button small" data-testid="make-link" on:click=move |_| state.write_link()>
                {w.make_link()}
            </button>
            <div role="status">{made}</div>
        </div>
    }
    .into_any()
}
