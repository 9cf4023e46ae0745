//! What is on the page: panels, lists and the answer. Figures come from the state, sentences
//! from [`crate::words`]; nothing is worked out here.

mod answer;
mod ask;
mod bar;
mod card;
mod card_sheet;
mod chart;
mod choice;
mod day;
mod descents;
mod drawer;
mod entry;
mod evidence;
pub(crate) mod later;
mod link;
mod measured;
mod more;
mod notice;
mod offline;
mod part;
pub(crate) mod parts;
mod pick;
mod questions;
mod ranked;
mod result;
mod road;
mod roadside;
mod side_by_side;
mod square;
mod study;
mod table;
mod trouble;
mod truck;
mod trucks;
mod two;
mod verdict;

use crate::browser::{self, file};
use crate::format::Units;
use crate::state::{self, State, View, Worked};
use crate::words::words;
use later::{Later, Parts, Views};
use leptos::prelude::*;

/// The whole page. It has the height of the window; what is longer scrolls within its part.
pub(crate) fn page(parts: Parts) -> impl IntoView {
    let state = state::start();
    let later = Later::new(parts, state);
    let look = look(state);
    let hovers = move |hovering: bool| {
        if state.files.hovering.get_untracked() != hovering {
            state.files.hovering.set(hovering);
        }
    };
    let skip = move |event: leptos::ev::MouseEvent| {
        event.prevent_default();
        state.go(View::Road);
        browser::focus("answer".to_owned());
    };
    let came_back = move |event: leptos::ev::FocusEvent| {
        state.views.road.set(false);
        if browser::is_by_keyboard(&event) {
            state.entered.drawer.set(false);
        }
    };
    view! {
        <div
            class="page"
            class:hovering=move || state.files.hovering.get()
            class:alone=move || state.views.alone.get()
            data-view=move || state.views.front.get().key()
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
            <a class="skip" id="skip" href="#road" on:click=skip>{words().skip_to_answer()}</a>
            {bar::bar(state, look)}
            {road::panel(state, later)}
            <div class="notices">
                {offline::offered()}
                {trouble::trouble(state)}
                {link::carried(state)}
                {ask::ask(state)}
            </div>
            // What lies over the page goes where the keyboard comes back to that; the picture can be pointed at beside
            // truck and day.
            <main on:pointerdown=move |_| state.views.road.set(false) on:focusin=came_back>
                {front(state, look, later)}
                {in_view(state, later, View::Descents, move |part| (part.descents)(state, look))}
                {in_view(state, later, View::Two, move |part| (part.two)(state))}
                {in_view(state, later, View::Card, move |part| (part.card)(state))}
                {in_view(state, later, View::More, move |part| (part.more)(state))}
            </main>
            {drawer::drawer(state, look, later)}
            {trouble::progress(state)}
            {offline::newer(state)}
            {bar::tabs(state)}
            <p class="drop-hint" aria-hidden="true">{words().drop_here()}</p>
        </div>
    }
}

/// The road: the picture, what its heights leave in doubt, the descents; and the answer beside them.
fn front(state: State, look: chart::Look, later: Later) -> AnyView {
    let empty = move || {
        let nothing = state.shown.worked.with(Option::is_none) && state.talk.progress.with(Option::is_none);
        nothing.then(|| {
            view! {
                <div class="empty">
                    <p class="say">{words().drop_here()}</p>
                    <p>{words().no_road_sentence()}</p>
                    {road::others(state)}
                </div>
            }
        })
    };
    view! {
        <div class="front" hidden=move || state.views.front.get() != View::Road>
            <section class="picture-part" class:stale=move || state.shown.stale.get() aria-label=words().road_section()>
                {empty}
                {picture(state, look)}
                {notice::notice(state, true)}
                {descents::rail(state, look)}
            </section>
            {answer::answer(state, look, later)}
        </div>
    }
    .into_any()
}

/// A view that is made when it is first in front, and then stays. The card is made with the first result: it is
/// what the browser prints, whatever is in front. A part of the program that did not arrive is asked for again
/// whenever one of its views comes to the front.
fn in_view(
    state: State,
    later: Later,
    view: View,
    make: impl Fn(&'static Views) -> AnyView + Clone + Send + Sync + 'static,
) -> AnyView {
    let made = part::once(move || {
        let printed = view == View::Card && state.shown.listed.with(Option::is_some);
        state.views.front.get() == view || printed
    });
    Effect::new(move |_| {
        if state.views.front.get() == view {
            later.views.ask();
        }
    });
    view! {
        <div class=format!("view of-{}", view.key()) hidden=move || state.views.front.get() != view>
            {move || made.get().then(|| later.views.place(make.clone()))}
        </div>
    }
    .into_any()
}

/// The button for a file of one's own.
pub(crate) fn file_field(state: State) -> AnyView {
    road::file_field(state)
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

/// How the road is looked at: made once, for the picture and for what stands apart from it.
fn look(state: State) -> chart::Look {
    let units = Signal::derive(move || state.units.get());
    let look = chart::Look::new(state.shown.picture.into(), units, state.shown.chosen_descent);
    look.follow(state.shown.look_at);
    look
}

fn picture(state: State, look: chart::Look) -> AnyView {
    let asks = chart::Asks {
        take_part: Callback::new(move |(from, to)| state.take_part(from, to)),
        put_place: Callback::new(move |index| roadside::put_at(state, index)),
        alone: state.views.alone,
    };
    chart::work(look, asks)
}
