//! Files in hand: given, and not shown yet.

use crate::browser::timer::Timer;
use crate::state::asked::Leg;
use crate::state::beside::Beside;
use crate::state::lie::{Grounds, Meeting};
use crate::state::road_worker::RoadWorker;
use leptos::prelude::*;
use workers::message::CourseFacts;

/// Files, and the questions about them.
pub(crate) struct FileSignals {
    /// The question which track of a file is meant.
    pub(crate) choice: RwSignal<Option<Choice>>,
    /// Files that are being put in order before they are joined; empty when none are.
    pub(crate) legs: RwSignal<Vec<Leg>, LocalStorage>,
    /// Which of those files are known to be of one road.
    pub(in crate::state) grounds: RwSignal<Grounds, LocalStorage>,
    /// A road that was opened and lies on one before, until it is decided what they are to be.
    pub(crate) meeting: RwSignal<Option<Meeting>, LocalStorage>,
    /// Whether a file hovers over the page.
    pub(crate) hovering: RwSignal<bool>,
    pub(in crate::state) looking: StoredValue<Looking, LocalStorage>,
}

/// A file that holds several roads, until one is chosen.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Choice {
    /// Name of the file.
    pub(crate) file: String,
    /// The tracks and routes of the file.
    pub(crate) courses: Vec<CourseFacts>,
}

/// A worker that looks, and the roads that were there when the last file was opened.
#[derive(Default)]
pub(in crate::state) struct Looking {
    pub(in crate::state) worker: Option<RoadWorker>,
    pub(in crate::state) expected: Option<(u32, Vec<Beside>)>,
    pub(in crate::state) rest: Option<Timer>,
}

impl FileSignals {
    pub(super) fn new() -> Self {
        Self {
            choice: RwSignal::new(None),
            legs: RwSignal::new_local(Vec::new()),
            grounds: RwSignal::new_local(Vec::new()),
            meeting: RwSignal::new_local(None),
            hovering: RwSignal::new(false),
            looking: StoredValue::new_local(Looking::default()),
        }
    }
}
