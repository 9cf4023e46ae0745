//! Truck and day as entered.

use crate::browser::timer::Timer;
use crate::entries::{Entries, EntryProblem, Field};
use crate::format::Units;
use crate::state::trucks::Trucks;
use leptos::prelude::*;
use solver::day::Day;
use solver::truck::TruckSpec;

/// Truck and day: what is typed, what is taken of it, and where else it may come from.
pub(crate) struct EnteredSignals {
    /// Entries taken.
    pub(crate) entries: RwSignal<Entries>,
    pub(in crate::state) fields: Vec<FieldState>,
    /// Whether a person said that the truck which the page begins with is theirs.
    pub(in crate::state) example_is_mine: RwSignal<bool>,
    /// Whether the drawer of truck and day is open.
    pub(crate) drawer: RwSignal<bool>,
    /// Id of what the drawer is to be opened at, until it has been.
    pub(crate) sought: RwSignal<Option<String>>,
    /// Trucks of one's own.
    pub(crate) trucks: RwSignal<Trucks>,
    /// A link that was opened, until it is decided.
    pub(crate) carried: RwSignal<Option<Carried>>,
    /// The link made last.
    pub(crate) link: RwSignal<Option<Written>>,
    /// Where something is not kept on this machine yet: until it is.
    pub(in crate::state) unkept: StoredValue<Option<Option<Timer>>, LocalStorage>,
}

/// One field: what is typed, and what is wrong with it.
#[derive(Clone, Copy)]
pub(crate) struct FieldState {
    /// The text, as typed.
    pub(crate) text: RwSignal<String>,
    /// Why the text is not taken.
    pub(crate) problem: RwSignal<Option<EntryProblem>>,
}

/// Where a link or a project that was opened stands.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Carried {
    /// The link waits for the person to decide.
    Offered(Box<(TruckSpec, Day)>),
    /// The link is in use; what was entered before is at hand.
    Taken(Box<Entries>),
    /// A project was opened; what was entered before is at hand.
    Opened(Box<Entries>),
    /// The link cannot be read.
    Broken,
}

/// What became of the link that was asked for.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Written {
    /// The link.
    pub(crate) address: String,
    /// Whether the link lies ready to be pasted.
    pub(crate) copied: bool,
}

impl EnteredSignals {
    pub(super) fn new(entries: Entries, units: Units, trucks: Vec<TruckSpec>, example_is_mine: bool) -> Self {
        let fields = Field::all().map(|field| FieldState {
            text: RwSignal::new(entries.text(field, units)),
            problem: RwSignal::new(None),
        });
        Self {
            fields: fields.collect(),
            entries: RwSignal::new(entries),
            example_is_mine: RwSignal::new(example_is_mine),
            drawer: RwSignal::new(false),
            sought: RwSignal::new(None),
            trucks: RwSignal::new(Trucks { kept: trucks, before: None }),
            carried: RwSignal::new(None),
            link: RwSignal::new(None),
            unkept: StoredValue::new_local(None),
        }
    }
}
