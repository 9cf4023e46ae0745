//! Roads of the page's own: the demo and the teaching roads, fetched when they are asked for and
//! worked out by the same way as any file.

use super::asked::{Leg, Origin};
use super::signals::{Signals, State};
use super::work;
use crate::browser::file;
use crate::lesson::Lesson;
use crate::trouble::WorkTrouble;
use leptos::prelude::*;
use std::sync::atomic::{AtomicU32, Ordering};

/// The demo, as the page names it.
const DEMO: &str = "demo-file";
/// The name of the demo's file.
const DEMO_NAME: &str = "demo.gpx";

/// How many roads were asked for. Of several the last one is meant, whichever arrives first.
static ASKED: AtomicU32 = AtomicU32::new(0);

impl Signals {
    /// Opens the demo.
    pub(crate) fn open_demo(&'static self) {
        open(self, DEMO, DEMO_NAME, Origin::Demo);
    }

    /// Opens a teaching road. The road that the person gave comes back at the next visit.
    pub(crate) fn open_lesson(&'static self, lesson: Lesson) {
        open(self, lesson.file(), lesson.file_name(), Origin::Lesson(lesson));
    }
}

fn open(state: State, file: &'static str, name: &'static str, origin: Origin) {
    let turn = ASKED.fetch_add(1, Ordering::Relaxed) + 1;
    let opened = work::opened(state);
    leptos::task::spawn_local(async move {
        let fetched = file::fetch(file, name).await;
        // A file that a person gave meanwhile is not put aside for what arrives late.
        if ASKED.load(Ordering::Relaxed) != turn || work::opened(state) != opened {
            return;
        }
        match fetched {
            Some(file) => work::open(state, vec![Leg { file, turned: false }], origin),
            None => state.talk.trouble.set(Some(WorkTrouble::BuiltInMissing)),
        }
    });
}
