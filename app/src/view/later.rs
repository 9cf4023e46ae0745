//! What the first screen does not need: parts of the program that arrive after it.
//!
//! The build cuts them out of the page's module ([`Parts`] is the list) and the page loads them once the first
//! answer stands, or earlier where somebody asks for one. Where a part does not arrive, a sentence and a way to
//! try again stand in its place. What is in each is said by the file `parts`.

use super::chart::Look;
use crate::format::Units;
use crate::state::{State, Worked};
use crate::words::words;
use leptos::prelude::*;
use leptos::wasm_split::SplitLoaderError;
use solver::plan::Descent;
use std::future::Future;
use std::pin::Pin;

/// A part on its way.
pub type Arriving<T> = Pin<Box<dyn Future<Output = Result<&'static T, SplitLoaderError>>>>;

/// How each part is loaded. The program says it, so that only there code is cut.
#[derive(Debug, Clone, Copy)]
pub struct Parts {
    /// Truck and day.
    pub truck: fn() -> Arriving<Truck>,
    /// All else.
    pub views: fn() -> Arriving<Views>,
}

/// Truck and day.
#[derive(Debug)]
pub struct Truck {
    pub(super) content: fn(State) -> AnyView,
    pub(super) answer: fn(State, Look) -> AnyView,
}

/// The views behind the first one, and what is folded in that.
#[derive(Debug)]
pub struct Views {
    pub(super) descents: fn(State, Look) -> AnyView,
    pub(super) two: fn(State) -> AnyView,
    pub(super) card: fn(State) -> AnyView,
    pub(super) more: fn(State) -> AnyView,
    pub(super) road: fn(State) -> AnyView,
    pub(super) roadside: fn(State, Look) -> AnyView,
    pub(super) about: Text,
    pub(super) gears: Text,
}

/// A long text about a descent.
pub(super) type Text = fn(&Worked, &Descent, Units) -> AnyView;

/// Both parts, as far as they are here.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Later {
    pub(super) truck: Part<Truck>,
    pub(super) views: Part<Views>,
}

impl Later {
    /// Loads the parts one after the other once the first answer stands. What fails is asked for again where it
    /// is wanted.
    pub(super) fn new(parts: Parts, state: State) -> Self {
        let later = Self { truck: Part::new(parts.truck), views: Part::new(parts.views) };
        let answered = Memo::new(move |_| state.shown.listed.with(Option::is_some));
        Effect::new(move |_| {
            if answered.get() {
                leptos::task::spawn_local(async move {
                    later.views.load().await;
                    later.truck.load().await;
                });
            }
        });
        later
    }
}

/// One part.
#[derive(Debug)]
pub(super) struct Part<T: 'static> {
    fetch: fn() -> Arriving<T>,
    stands: RwSignal<Standing<T>>,
}

impl<T> Clone for Part<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Part<T> {}

/// How far a part is.
#[derive(Debug)]
enum Standing<T: 'static> {
    Away,
    Underway,
    Failed,
    Here(&'static T),
}

impl<T> Clone for Standing<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Standing<T> {}

impl<T: Sync> Part<T> {
    fn new(fetch: fn() -> Arriving<T>) -> Self {
        Self { fetch, stands: RwSignal::new(Standing::Away) }
    }

    /// The part, once it is here. Tracked.
    pub(super) fn here(self) -> Option<&'static T> {
        match self.stands.get() {
            Standing::Here(part) => Some(part),
            Standing::Away | Standing::Underway | Standing::Failed => None,
        }
    }

    /// Asks for the part, unless it is here or on its way.
    pub(super) fn ask(self) {
        leptos::task::spawn_local(self.load());
    }

    async fn load(self) {
        if matches!(self.stands.get_untracked(), Standing::Underway | Standing::Here(_)) {
            return;
        }
        self.stands.set(Standing::Underway);
        let part = (self.fetch)().await;
        self.stands.set(part.map_or(Standing::Failed, Standing::Here));
    }

    /// Where something of the part stands: it is asked for when the place is made. Until it is here the place
    /// says so.
    pub(super) fn place(self, make: impl Fn(&'static T) -> AnyView + Send + Sync + 'static) -> AnyView {
        self.ask();
        let content = move || match self.stands.get() {
            Standing::Here(part) => make(part),
            Standing::Failed => failed(Box::new(move || self.ask())),
            Standing::Away | Standing::Underway => {
                view! { <p class="part-to-come" role="status">{words().part_to_come()}</p> }.into_any()
            }
        };
        content.into_any()
    }
}

fn failed(again: Box<dyn Fn()>) -> AnyView {
    let w = words();
    view! {
        <div class="part-to-come" role="alert" data-testid="part-failed">
            <p>{w.part_failed()}</p>
            <button type="button" class="button" data-testid="part-again" on:click=move |_| again()>{w.try_again()}</button>
        </div>
    }
    .into_any()
}
