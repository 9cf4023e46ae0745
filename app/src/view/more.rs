//! What is one tap further: settings, languages, use without a network, evidence.

use super::bar::to_class;
use super::choice::labelled_choice;
use super::evidence::evidence;
use super::{bar, offline};
use crate::browser::theme::Theme;
use crate::format::Units;
use crate::state::{State, View};
use crate::words::words;
use leptos::prelude::*;

/// The view.
pub(super) fn more(state: State) -> AnyView {
    let w = words();
    let units = vec![(Units::Metric, "metric", w.metric()), (Units::Imperial, "imperial", w.imperial())];
    let themes = vec![
        (Theme::Light, "light", w.light()),
        (Theme::Night, "night", w.night()),
        (Theme::System, "system", w.system()),
    ];
    let targets = vec![(false, "usual", w.usual_targets()), (true, "large", w.large_targets())];
    view! {
        // On a phone the row at the foot has no room for these.
        <nav class="card further" aria-label=w.sections()>
            <a class="button" href="#two" data-testid="further-two">{bar::name(View::Two)}</a>
            {to_class()}
        </nav>
        <section class="card settings">
            <h2>{w.settings_head()}</h2>
            {labelled_choice(w.units(), "units", units, move || state.units.get(), move |it| state.set_units(it))}
            {labelled_choice(w.theme(), "theme", themes, move || state.settings.theme.get(), move |it| state.set_theme(it))}
            <div class="targets">
                {labelled_choice(w.targets(), "targets", targets, move || state.settings.gloves.get(), move |it| state.set_gloves(it))}
            </div>
            {offline::foot(state)}
        </section>
        {evidence()}
    }
    .into_any()
}
