//! What is on the page: panels, lists and the answer. Figures come from the state, sentences
//! from [`crate::words`]; nothing is worked out here.

mod answer;
mod ask;
mod card;
mod chart;
mod choice;
mod day;
mod descents;
mod detail;
mod drawer;
mod entry;
mod evidence;
mod header;
mod link;
mod measured;
mod offline;
mod part;
mod pick;
mod ranked;
mod result;
mod road;
mod roadside;
mod study;
mod table;
mod trouble;
mod truck;
mod trucks;
mod two;
mod verdict;

use crate::browser::file;
use crate::format::Units;
use crate::state::{self, State, Worked};
use crate::words::words;
use leptos::prelude::*;

/// The whole page.
pub(crate) fn page() -> impl IntoView {
    let state = state::start();
    let hovers = move |hovering: bool| {
        if state.files.hovering.get_untracked() != hovering {
            state.files.hovering.set(hovering);
        }
    };
    view! {
        <div
            class="page"
            class:hovering=move || state.files.hovering.get()
            data-testid="drop-zone"
            on:dragover=move |event| {
                event.prevent_default();
                hovers(file::holds_files(&event));
            }
            on:dragleave=move |event| {
                if file::left_the_page(&event) {
                    hovers(false);
                }
            }
            on:drop=move |event| {
                event.prevent_default();
                hovers(false);
                state.open(file::dropped(&event));
            }
        >
            <span class="unseen" id="begin" tabindex="-1"></span>
            <a class="skip" id="skip" href="#answer">{words().skip_to_answer()}</a>
            {offline::offered()}
            {header::header(state)}
            {header::road_bar(state)}
            {trouble::trouble(state)}
            {link::carried(state)}
            {ask::ask(state)}
            <main>
                <div class="results" class:stale=move || state.shown.stale.get() aria-busy=move || busy(state)>
                    {trouble::progress(state)}
                    {ranked::ranked(state)}
                    {answer::answer(state)}
                    {road_section(state)}
                    {descents::descents(state)}
                    {study::ahead(state)}
                    {two::two(state)}
                    {roadside::roadside(state)}
                    {card::card(state)}
                    {evidence::evidence()}
                </div>
                <aside class="entries">
                    {drawer::opener(state)}
                    {road::facts(state)}
                </aside>
            </main>
            {drawer::drawer(state, state.entered.drawer)}
            {offline::foot(state)}
            {offline::newer(state)}
            <p class="drop-hint" aria-hidden="true">{words().drop_here()}</p>
        </div>
    }
}

/// The button for a file of one's own.
pub(crate) fn file_field(state: State) -> AnyView {
    header::file_field(state).into_any()
}

/// Road, truck and day in one line.
pub(crate) fn made_for(worked: &Worked, units: Units) -> String {
    format!("{} · {}", two::name(worked), card::facts(worked, units))
}

/// What the class view shows of a road that is being opened: trouble, questions, progress.
pub(crate) fn of_class(state: State) -> AnyView {
    view! {
        {trouble::trouble(state)}
        {ask::ask(state)}
        {trouble::progress(state)}
    }
    .into_any()
}

fn busy(state: State) -> &'static str {
    if state.talk.progress.with(Option::is_some) { "true" } else { "false" }
}

fn road_section(state: State) -> impl IntoView {
    let units = Signal::derive(move || state.units.get());
    let hidden = move || state.shown.picture.with(Option::is_none);
    let chart = chart::road_view(
        state.shown.picture.into(),
        units,
        state.shown.chosen_descent,
        state.shown.look_at,
        Callback::new(move |(from, to)| state.take_part(from, to)),
        Callback::new(move |index| roadside::put_at(state, index)),
    );
    view! {
        <section class="card road" id="road" aria-label=words().road_section() hidden=hidden>
            {chart}
        </section>
    }
}
