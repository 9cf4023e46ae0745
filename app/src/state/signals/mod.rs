//! The signals of the page, grouped by what they are about. They live as long as the page does.

mod answer;
mod beside;
mod entered;
mod files;
mod ranking;
mod roadside;
mod settings;
mod studied;
mod talk;
mod views;

pub(crate) use answer::AnswerSignals;
pub(crate) use beside::BesideSignals;
pub(super) use beside::ToCome;
pub(crate) use entered::{Carried, EnteredSignals, FieldState, Written};
pub(crate) use files::{Choice, FileSignals};
pub(super) use ranking::{Pool, Slot};
pub(crate) use ranking::{Ranked, RankingSignals, Ways};
pub(crate) use roadside::RoadsideSignals;
pub(crate) use settings::Settings;
pub(crate) use studied::{Ride, Stage, StudiedSignals, WorthTold};
pub(crate) use talk::{Progress, TalkSignals};
pub(crate) use views::{View, ViewSignals};

use super::kept::Kept;
use crate::format::Units;
use leptos::prelude::*;

/// All signals.
pub(crate) struct Signals {
    /// Units shown and typed.
    pub(crate) units: RwSignal<Units>,
    /// How the page is shown, and what the browser keeps of it.
    pub(crate) settings: Settings,
    /// Truck and day.
    pub(crate) entered: EnteredSignals,
    /// Files in hand.
    pub(crate) files: FileSignals,
    /// The conversation with the worker.
    pub(crate) talk: TalkSignals,
    /// The result shown.
    pub(crate) shown: AnswerSignals,
    /// Places, limits and markers along the road.
    pub(crate) roadside: RoadsideSignals,
    /// What follows from the result shown.
    pub(crate) studied: StudiedSignals,
    /// A road kept beside the one shown.
    pub(crate) beside: BesideSignals,
    /// Many roads.
    pub(crate) ranking: RankingSignals,
    /// Which view is in front.
    pub(crate) views: ViewSignals,
}

/// A handle that is passed around.
pub(crate) type State = &'static Signals;

impl Signals {
    /// As they are at the start, from what this machine remembers.
    pub(super) fn new(kept: Kept, gloves: bool, rates: [String; 2], example_is_mine: bool) -> Self {
        Self {
            units: RwSignal::new(kept.units),
            settings: Settings::new(kept.theme, gloves),
            entered: EnteredSignals::new(kept.entries, kept.units, kept.trucks, example_is_mine),
            files: FileSignals::new(),
            talk: TalkSignals::new(),
            shown: AnswerSignals::new(),
            roadside: RoadsideSignals::new(),
            studied: StudiedSignals::new(),
            beside: BesideSignals::new(rates),
            ranking: RankingSignals::new(),
            views: ViewSignals::new(),
        }
    }
}
