//! How the road is looked at: reading, window, cursor, and the one place that moves them.

use crate::browser::frame::Frame;
use crate::browser::timer::Timer;
use crate::chart::here::Here;
use crate::chart::layout::Layout;
use crate::chart::picture::RoadPicture;
use crate::chart::reading::Reading;
use crate::chart::scene::{Prepared, Scene};
use crate::chart::window::Window;
use crate::format::Units;
use crate::words::words;
use leptos::prelude::*;
use std::cell::Cell;
use std::rc::Rc;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

/// The signals of one road view.
#[derive(Clone, Copy)]
pub(super) struct Look {
    /// What is worked out once for a picture, a reading and units.
    pub(super) prepared: Memo<Option<Arc<Prepared>>>,
    /// What is worked out, a task later, for what stands below the picture. So a long road is drawn in pieces,
    /// and the page answers between them.
    pub(super) settled: RwSignal<Option<Arc<Prepared>>>,
    /// What the cursor stands on.
    pub(super) here: Memo<Option<Here>>,
    /// What fills the profile.
    pub(super) reading: RwSignal<Reading>,
    /// The stretch shown.
    pub(super) window: Memo<Window>,
    /// Grid point of the cursor.
    pub(super) cursor: Memo<usize>,
    /// Width of the drawing, px.
    pub(super) width: RwSignal<f64>,
    /// Number of the descent that is looked at.
    pub(super) chosen: RwSignal<Option<usize>>,
    /// The units read.
    pub(super) units: Signal<Units>,
    /// Prefix of the ids of the patterns: two views on one page must not share them.
    pub(super) ids: StoredValue<String>,
    stance: Stance,
    mover: StoredValue<Mover, LocalStorage>,
}

/// Window and cursor, as far as they were moved on the road that is shown.
///
/// Another road is shown whole, from the crest of its worst descent; the same road with another
/// plan stays as it is looked at. That follows from the picture: nothing is set when a road
/// comes, so that it is not drawn twice.
#[derive(Clone, Copy)]
struct Stance {
    picture: Signal<Option<Arc<RoadPicture>>>,
    held: RwSignal<Option<Held>>,
}

/// Where somebody moved to.
#[derive(Clone)]
struct Held {
    /// The heights of the road that it was on: kept, so that no other road has their address.
    road: Arc<[f32]>,
    window: Window,
    cursor: usize,
}

impl Stance {
    fn now(self) -> (Window, usize) {
        let Some(picture) = self.picture.get() else { return (Window::whole(0.0), 0) };
        let on_it = |held: &&Held| Arc::ptr_eq(&held.road, &picture.heights_m);
        self.held.with(|held| match held.as_ref().filter(on_it) {
            Some(held) => (held.window, held.cursor),
            None => (Window::whole(picture.length_m()), picture.first_look()),
        })
    }

    /// Moves what is given. The view may be gone by then, which is let pass.
    fn hold(self, window: Option<Window>, cursor: Option<usize>) {
        let Some(Some(picture)) = self.picture.try_get_untracked() else { return };
        let (before, at) = untrack(|| self.now());
        let road = picture.heights_m.clone();
        let held = Held { road, window: window.unwrap_or(before), cursor: cursor.unwrap_or(at) };
        let _ = self.held.try_set(Some(held));
    }
}

/// Moves that wait for the next frame: of many pointer events only the last is drawn.
struct Mover {
    cursor: Rc<Cell<Option<usize>>>,
    window: Rc<Cell<Option<Window>>>,
    frame: Frame,
}

impl Mover {
    fn new(stance: Stance) -> Self {
        let to_cursor = Rc::new(Cell::new(None));
        let to_window = Rc::new(Cell::new(None));
        let (point, stretch) = (Rc::clone(&to_cursor), Rc::clone(&to_window));
        let frame = Frame::new(move || stance.hold(stretch.take(), point.take()));
        Self { cursor: to_cursor, window: to_window, frame }
    }
}

impl Look {
    pub(super) fn new(
        picture: Signal<Option<Arc<RoadPicture>>>,
        units: Signal<Units>,
        chosen: RwSignal<Option<usize>>,
    ) -> Self {
        static VIEWS: AtomicUsize = AtomicUsize::new(0);
        let ids = format!("road{}", VIEWS.fetch_add(1, Ordering::Relaxed));
        let reading = RwSignal::new(Reading::Gear);
        let stance = Stance { picture, held: RwSignal::new(None) };
        let window = Memo::new(move |_| stance.now().0);
        let cursor = Memo::new(move |_| stance.now().1);
        let prepared = Memo::new_with_compare(
            move |_| Some(Arc::new(Prepared::new(picture.get()?, reading.get(), units.get()))),
            |old, new| match (old.and_then(Option::as_ref), new.and_then(Option::as_ref)) {
                (Some(old), Some(new)) => !Arc::ptr_eq(old, new),
                (None, None) => false,
                (Some(_), None) | (None, Some(_)) => true,
            },
        );
        let look = Self {
            prepared,
            settled: RwSignal::new(None),
            here: Memo::new(move |_| picture.get().map(|it| Here::at(&it, cursor.get()))),
            reading,
            window,
            cursor,
            width: RwSignal::new(0.0),
            chosen,
            units,
            ids: StoredValue::new(ids),
            stance,
            mover: StoredValue::new_local(Mover::new(stance)),
        };
        look.settle();
        look.follow_choice(picture);
        look
    }

    fn settle(self) {
        let waiting = StoredValue::new_local(None::<Timer>);
        Effect::new(move |_| {
            let now = self.prepared.get();
            let settle = move || {
                let _ = self.settled.try_set(now.clone());
            };
            waiting.set_value(Timer::after(0, settle));
        });
    }

    /// A descent chosen outside comes into view with the cursor on its crest.
    fn follow_choice(self, picture: Signal<Option<Arc<RoadPicture>>>) {
        Effect::new(move |_| {
            let Some(number) = self.chosen.get() else { return };
            let Some(picture) = picture.get_untracked() else { return };
            if let Some(descent) = picture.descent(number) {
                let (from, to) = (picture.place_of(descent.from), picture.place_of(descent.to));
                // In the next frame, so that a move that still waits does not undo it.
                self.show(Window::around(from, to, picture.length_m()));
                self.point(descent.from);
            }
        });
    }

    /// A stretch named outside comes into view with the cursor on its start.
    pub(super) fn follow(self, look_at: RwSignal<Option<(f64, f64)>>) {
        Effect::new(move |_| {
            let Some((from, to)) = look_at.get() else { return };
            let Some(picture) = self.picture() else { return };
            self.show(Window::around(from, to, picture.length_m()));
            self.point(picture.nearest(from));
        });
    }

    /// The layout for the width that there is.
    pub(super) fn layout(self) -> Layout {
        let has = self
            .prepared
            .with(|it| it.as_ref().map(|it| (it.picture.descents.len(), it.picture.places.len())));
        let (descents, places) = has.unwrap_or((0, 0));
        Layout::new(self.width.get(), descents, places)
    }

    /// Calls `work` with the scene as it is; `None` without a road.
    pub(super) fn scene<T>(self, work: impl FnOnce(&Scene) -> T) -> Option<T> {
        let prepared = self.prepared.get()?;
        let ids = self.ids.get_value();
        Some(work(&Scene {
            prepared: &prepared,
            window: self.window.get(),
            layout: self.layout(),
            chosen: self.chosen.get(),
            ids: &ids,
            labels: &words(),
        }))
    }

    /// The picture, read without following it.
    pub(super) fn picture(self) -> Option<Arc<RoadPicture>> {
        self.prepared.with_untracked(|it| it.as_ref().map(|it| Arc::clone(&it.picture)))
    }

    /// The window as it will be in the next frame.
    pub(super) fn coming_window(self) -> Window {
        let waiting = self.mover.with_value(|mover| mover.window.get());
        waiting.unwrap_or_else(|| self.window.get_untracked())
    }

    /// Moves the cursor at once: of several keys within a frame each counts.
    pub(super) fn point_now(self, index: usize) {
        self.stance.hold(None, Some(index));
    }

    /// Moves the cursor in the next frame.
    pub(super) fn point(self, index: usize) {
        self.mover.with_value(|mover| {
            mover.cursor.set(Some(index));
            mover.frame.ask();
        });
    }

    /// Shows another stretch in the next frame.
    pub(super) fn show(self, window: Window) {
        self.mover.with_value(|mover| {
            mover.window.set(Some(window));
            mover.frame.ask();
        });
    }

    /// Zooms about the cursor if it is shown, else about the middle.
    pub(super) fn zoom(self, factor: f64) {
        let Some(picture) = self.picture() else { return };
        let window = self.coming_window();
        let at = picture.place_of(self.cursor.get_untracked());
        let about = if window.shows(at) { at } else { 0.5 * (window.from + window.to) };
        self.show(window.zoomed(about, factor, picture.length_m()));
    }

    /// Shows the whole road.
    pub(super) fn show_all(self) {
        if let Some(picture) = self.picture() {
            self.show(Window::whole(picture.length_m()));
        }
    }
}
