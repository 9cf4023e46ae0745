//! Places and posted limits: put on the road, moved, named, taken off.

use super::chart::{Look, put_here};
use super::later::Later;
use super::part::{once, text_field};
use super::pick::pick;
use crate::browser;
use crate::format::{Units, parse_number, shown_as, typed};
use crate::state::{End, MOST_THINGS, State, Thing, Things};
use crate::words::words;
use leptos::prelude::*;
use solver::limits::{self, Entry};
use solver::road::PlaceKind;

/// The key of a posted limit among the kinds.
const LIMIT: &str = "limit";

/// So many rows are drawn at first: a file may bring thousands of waypoints.
const DRAWN: usize = 100;

/// The section.
pub(super) fn roadside(state: State, look: Look, later: Later) -> AnyView {
    let count = Memo::new(move |_| state.roadside.things.with(|it| it.list.len()));
    let made = once(move || state.shown.listed.with(Option::is_some));
    let content = move || made.get().then(|| later.views.place(move |part| (part.roadside)(state, look)));
    view! {
        <details class="question roadside" id="places" data-testid="roadside" hidden=move || state.shown.worked.with(Option::is_none)>
            <summary>
                <span class="asked">{words().places_head()}</span>
                <span class="short">{move || count.get().to_string()}</span>
            </summary>
            {content}
        </details>
    }
    .into_any()
}

/// The list, and how something is put into it.
pub(super) fn content(state: State, look: Look) -> AnyView {
    let w = words();
    let all = RwSignal::new(false);
    let ids = Memo::new(move |_| {
        state.roadside.things.with(|it| it.list.iter().map(|put| put.id).collect::<Vec<_>>())
    });
    let rows = move || {
        let most = if all.get() { usize::MAX } else { DRAWN };
        ids.get().into_iter().take(most).map(|id| row(state, id)).collect_view()
    };
    let rest = move || {
        let count = ids.with(Vec::len);
        (count > DRAWN && !all.get()).then(|| {
            view! {
                <button type="button" class="button small" data-testid="all-places" on:click=move |_| all.set(true)>
                    {w.show_all_places(count)}
                </button>
            }
        })
    };
    let sentence = move || {
        let count = ids.with(Vec::len);
        if count < MOST_THINGS { w.places_sentence(count) } else { w.too_many_things().to_owned() }
    };
    let undo = move || {
        state.roadside.things.with(Things::can_undo).then(|| {
            view! {
                <button type="button" class="button small" data-testid="undo-places" on:click=move |_| state.undo_things()>
                    {w.undo()}
                </button>
            }
        })
    };
    view! {
            {undo}
            <p class="about" data-testid="places-sentence">{sentence}</p>
            <ul class="things" data-testid="places">{rows}</ul>
            {rest}
            // Below the picture of a phone there is no room for this button.
            {put_here(look, ["button at-cursor", "put-at-cursor"], Callback::new(move |index| put_at(state, index)))}
            {put(state)}
    }
    .into_any()
}

/// Puts a place by its distance.
fn put(state: State) -> impl IntoView {
    let w = words();
    let text = RwSignal::new(String::new());
    let problem = RwSignal::new(String::new());
    let unit = Signal::derive(move || state.units.get().distance());
    let add = move |_| match read_place(state, &text.get_untracked()) {
        Ok(index) => {
            text.set(String::new());
            problem.set(String::new());
            put_at(state, index);
        }
        Err(sentence) => problem.set(sentence),
    };
    view! {
        <div class="put">
            <div class="entry">{text_field("put-at".to_owned(), w.put_at(), "decimal", text.into(), unit, Box::new(move |it| text.set(it)))}</div>
            <button type="button" class="button" data-testid="put" on:click=add>{w.put()}</button>
            <p class="problem" role="status">{move || problem.get()}</p>
        </div>
    }
}

/// Puts a place on the road and goes to its row.
pub(super) fn put_at(state: State, index: usize) {
    browser::unfold("places");
    match state.put_place(index) {
        Some(id) => browser::focus(format!("kind-{id}")),
        // The list says that it is full.
        None => browser::focus("places".to_owned()),
    }
}

/// A grid point of the road shown from a distance as on the markers, or what is wrong with it.
fn read_place(state: State, text: &str) -> Result<usize, String> {
    let units = state.units.get_untracked();
    let marker = untrack(|| state.marker());
    let worked = state.shown.worked.get_untracked();
    let length = worked.as_ref().map_or(0.0, |it| it.road.length_m);
    let at = parse_number(text).map(|typed| marker.place_of(typed * units.metres_per_distance()));
    // A hair for what is typed as it was rounded.
    let on_road = |at: &f64| (-10.0..=length + 10.0).contains(at);
    match (at.filter(on_road), worked) {
        (Some(at), Some(worked)) => Ok(worked.picture.nearest(at)),
        (Some(_) | None, _) => {
            let [first, last] = [0.0, length].map(|at| written(marker.at(at), units));
            Err(words().off_road(&first, &last, units.distance()))
        }
    }
}

/// A distance as it is typed: to a grid point.
fn written(metres: f64, units: Units) -> String {
    typed(metres / units.metres_per_distance())
}

/// One thing.
fn row(state: State, id: u32) -> AnyView {
    let w = words();
    let row = Row { state, id, problem: RwSignal::new(String::new()) };
    let kind = move || row.kind();
    // Another kind of place leaves the fields, and the keyboard in them, where they are.
    let is_place = Memo::new(move |_| kind().is_some());
    let fields = move || {
        let [at, from, to] = w.at_label();
        if is_place.get() {
            view! { {row.distance(End::From, at)} {row.name()} }.into_any()
        } else {
            view! { {row.distance(End::From, from)} {row.distance(End::To, to)} {row.speed()} }.into_any()
        }
    };
    let caution = move || match kind() {
        Some(kind) => w.kind_caution(kind),
        None if state.roadside.things.with(|things| things.is_assumed(id)) => w.set_the_limit(),
        None => "",
    };
    view! {
        <li data-testid="place">
            {row.kinds()}
            {fields}
            <button type="button" class="button small" data-testid="remove-place" on:click=move |_| state.remove_thing(id)>
                {w.take_off()}
            </button>
            <p class="problem" role="status">{move || row.problem.get()}</p>
            <p class="kind-caution" role="status">{caution}</p>
        </li>
    }
    .into_any()
}

/// A row of the list.
#[derive(Clone, Copy)]
struct Row {
    state: State,
    id: u32,
    problem: RwSignal<String>,
}

impl Row {
    fn thing(self) -> Option<Thing> {
        self.state.roadside.things.with(|things| things.get(self.id).cloned())
    }

    fn kind(self) -> Option<PlaceKind> {
        self.state.roadside.things.with(|things| things.get(self.id).and_then(Thing::kind))
    }

    fn kinds(self) -> AnyView {
        let w = words();
        let key = |kind: PlaceKind| format!("{kind:?}");
        let options = Signal::derive(move || {
            let limit = (LIMIT.to_owned(), w.posted_limit().to_owned());
            let places = PlaceKind::ALL.into_iter().map(|it| (key(it), w.place_kind(it).to_owned()));
            places.chain([limit]).collect()
        });
        let chosen = Signal::derive(move || self.kind().map_or_else(|| LIMIT.to_owned(), key));
        let choose = move |chosen: String| {
            let kind = PlaceKind::ALL.into_iter().find(|it| key(*it) == chosen);
            self.state.take_kind(self.id, kind);
        };
        pick(format!("kind-{}", self.id), w.kind_label(), "", options, chosen, choose)
    }

    fn name(self) -> AnyView {
        let name = Signal::derive(move || match self.thing() {
            Some(Thing::Place(place)) => place.name,
            Some(Thing::Limit(_)) | None => String::new(),
        });
        let rename = move |text: String| {
            self.state.change_thing(self.id, |thing| {
                if let Thing::Place(place) = thing {
                    text.trim().clone_into(&mut place.name);
                }
            });
        };
        field(
            format!("name-{}", self.id),
            words().name_label(),
            "text",
            name,
            Signal::stored(""),
            Box::new(rename),
        )
    }

    fn distance(self, end: End, label: &'static str) -> AnyView {
        let state = self.state;
        let text = Signal::derive(move || {
            let shown = self.shown(end)?;
            Some(written(state.marker().at(shown), state.units.get()))
        });
        let text = Signal::derive(move || text.get().unwrap_or_else(|| words().not_on_part().to_owned()));
        let moved = move |typed: String| {
            let taken = read_place(state, &typed).and_then(|index| {
                let moved = state.move_thing(self.id, end, index);
                moved.then_some(()).ok_or_else(|| words().no_stretch().to_owned())
            });
            self.problem.set(taken.err().unwrap_or_default());
        };
        let unit = Signal::derive(move || state.units.get().distance());
        field(format!("{}-{}", end.key(), self.id), label, "decimal", text, unit, Box::new(moved))
    }

    /// Where an end lies on the road shown, m from its start.
    fn shown(self, end: End) -> Option<f64> {
        let worked = self.state.shown.worked.get()?;
        let recorded = self.thing()?.end(end, worked.road.reversed);
        worked.shown(recorded).map(|index| worked.place_m(index))
    }

    fn speed(self) -> AnyView {
        let state = self.state;
        let limit = limits::of(Entry::SpeedLimit);
        let shown = move || shown_as(limit.quantity, state.units.get());
        let text = Signal::derive(move || match self.thing() {
            Some(Thing::Limit(limit)) => shown().text(limit.kmh),
            Some(Thing::Place(_)) | None => String::new(),
        });
        let set = move |typed: String| {
            let shown = untrack(shown);
            let kmh = parse_number(&typed).and_then(|typed| limit.check(shown.stored(typed)).ok());
            let (low, high) = shown.range(limit);
            self.problem.set(match kmh {
                Some(_) => String::new(),
                None => format!("{}.", words().range(&low, &high, shown.unit)),
            });
            state.change_thing(self.id, |thing| {
                if let (Thing::Limit(limit), Some(kmh)) = (thing, kmh) {
                    limit.kmh = kmh;
                }
            });
        };
        let unit = Signal::derive(move || shown().unit);
        field(format!("limit-{}", self.id), words().limit_label(), "decimal", text, unit, Box::new(set))
    }
}

/// A labelled field that is taken when it is left: what is half typed moves nothing.
fn field(
    id: String,
    label: &'static str,
    inputmode: &'static str,
    text: Signal<String>,
    unit: Signal<&'static str>,
    changed: Box<dyn Fn(String)>,
) -> AnyView {
    // Written only when it is another text: an answer that comes must not undo what is being typed.
    let text = Memo::new(move |_| text.get());
    view! {
        <div class="entry">
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
                    on:change=move |event| changed(event_target_value(&event))
                />
                <span class="unit">{move || unit.get()}</span>
            </span>
        </div>
    }
    .into_any()
}
