//! The teacher's desk: what is on the screens, and what is set there.

use super::clock::Clock;
use crate::screen::Screen;
use crate::state::{self, State};
use leptos::prelude::*;
use solver::study::Slip;

/// What is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Printed {
    /// The screen.
    Screen,
    /// Questions with room to write.
    Blank,
    /// Questions, steps and answers.
    Answers,
}

/// What is on the screens.
pub(crate) struct Desk {
    /// Road, truck, day.
    pub(crate) state: State,
    /// The screen shown.
    pub(crate) screen: RwSignal<Screen>,
    /// Whether the notes are shown.
    pub(crate) notes: RwSignal<bool>,
    /// The hill of the picture of forces, % downhill.
    pub(crate) downgrade: RwSignal<f64>,
    /// The mass in the picture of forces, kg; `None`: as entered.
    pub(crate) mass_kg: RwSignal<Option<f64>>,
    /// The stage in the picture of forces; `None`: full.
    pub(crate) stage: RwSignal<Option<u8>>,
    /// What the second truck does differently.
    pub(crate) slip: RwSignal<Slip>,
    /// The clock of the runs.
    pub(crate) clock: &'static Clock,
    /// Whether the page tells what happens on the teaching road.
    pub(crate) told: RwSignal<bool>,
    /// What the exercises are drawn with.
    pub(crate) seed: RwSignal<u32>,
    /// The exercise shown, from 0.
    pub(crate) exercise: RwSignal<usize>,
    /// Whether the steps of the exercise are shown.
    pub(crate) steps: RwSignal<bool>,
    /// What goes on paper.
    pub(crate) printed: RwSignal<Printed>,
}

/// The part of a screen whose text may be longer than there is room: page keys leaf through it.
pub(super) const LEAF: &str = "leaf";

/// A handle that is passed around.
pub(crate) type Class = &'static Desk;

/// Begins where a class does: with a road.
pub(super) fn start() -> Class {
    let desk = Desk {
        state: state::start(),
        screen: RwSignal::new(Screen::Roads),
        notes: RwSignal::new(false),
        downgrade: RwSignal::new(6.0),
        mass_kg: RwSignal::new(None),
        stage: RwSignal::new(None),
        slip: RwSignal::new(Slip::GearHigh),
        clock: Box::leak(Box::new(Clock::new())),
        told: RwSignal::new(false),
        seed: RwSignal::new(1),
        exercise: RwSignal::new(0),
        steps: RwSignal::new(false),
        printed: RwSignal::new(Printed::Screen),
    };
    // Leaked on purpose, as the state is.
    Box::leak(Box::new(desk))
}
