//! Use without a network: the page's quiet end, and the line for a newer version.

use crate::browser;
use crate::browser::offline::{self, Stored};
use crate::state::State;
use crate::words::{LANGUAGES, words};
use leptos::prelude::*;

/// The end of the page: whether it works without a network, and the page as one file.
pub(super) fn foot(state: State) -> AnyView {
    let w = words();
    let kept = move || {
        let stored = state.settings.stored.get() != Stored::Nothing;
        stored.then(|| view! { <span data-testid="kept">{w.works_offline()}</span> })
    };
    // The one file does not name itself.
    let link = browser::named("standalone-file").map(|address| {
        view! { <a href=address download="steadygrade.html" data-testid="save-page">{w.save_page()}</a> }
    });
    let languages = others(&browser::languages());
    view! { <footer class="foot">{languages}{kept}{link}{forget(state)}</footer> }.into_any()
}

/// The page in its other languages, as far as there are such pages beside it.
fn others(pages: &[(String, String)]) -> AnyView {
    let w = words();
    let links = pages.iter().filter(|(tag, _)| tag != w.tag()).filter_map(|(tag, address)| {
        let (tag, offer) = LANGUAGES.iter().find(|(known, _)| known == tag)?;
        Some(view! { <a href=address.clone() lang=*tag hreflang=*tag>{*offer}</a> })
    });
    view! { <nav class="languages" aria-label=w.languages()>{links.collect_view()}</nav> }.into_any()
}

/// The page in the language that the browser is set to, where that is another one.
pub(super) fn offered() -> AnyView {
    let preferred = browser::preferred_language();
    let pages = browser::languages();
    let page = pages.iter().find(|(tag, _)| preferred.starts_with(tag.as_str()) && tag != words().tag());
    page.map(|page| others(std::slice::from_ref(page))).into_any()
}

/// Forgets all that is kept, once it is pressed again.
fn forget(state: State) -> AnyView {
    let w = words();
    let asked = RwSignal::new(false);
    let press = move |_| if asked.get_untracked() { state.forget_all() } else { asked.set(true) };
    let text = move || if asked.get() { w.forget_really() } else { w.forget_all() };
    view! {
        <button type="button" class="button small plain" data-testid="forget" on:click=press on:blur=move |_| asked.set(false)>
            {text}
        </button>
    }
    .into_any()
}

/// The line for a newer version. It lies at the lower edge of the window, so that nothing moves
/// under a finger when it comes.
pub(super) fn newer(state: State) -> AnyView {
    let w = words();
    let line = move || {
        (state.settings.stored.get() == Stored::Newer).then(|| {
            view! {
                <p>{w.newer()}</p>
                <button type="button" class="button" data-testid="load-newer" on:click=move |_| offline::load_newer()>
                    {w.load_newer()}
                </button>
                <button type="button" class="button" on:click=move |_| state.settings.stored.set(Stored::Whole)>
                    {w.later()}
                </button>
            }
        })
    };
    view! { <div class="newer" role="status" data-testid="newer">{line}</div> }.into_any()
}
