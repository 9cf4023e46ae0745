//! How the road is looked at: reading, window, cursor, and the one place that moves them.

use crate::browser::frame::Frame;
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
    /// What the cursor stands on.
    pub(super) here: Memo<Option<Here>>,
    /// What fills the profile.
    pub(super) reading: RwSignal<Reading>,
    /// The stretch shown.
    pub(super) window: RwSignal<Window>,
    /// Grid point of the cursor.
    pub(super) cursor: RwSignal<usize>,
    /// Width of the drawing, px.
    pub(super) width: RwSignal<f64>,
    /// Number of the descent that is looked at.
    pub(super) chosen: RwSignal<Option<usize>>,
    /// The units read.
    pub(super) units: Signal<Units>,
    /// Prefix of the ids of the patterns: two views on one page must not share them.
    pub(super) ids: StoredValue<String>,
    mover: StoredValue<Mover, LocalStorage>,
}

/// Moves that wait for the next frame: of many pointer events only the last is drawn.
struct Mover {
    cursor: Rc<Cell<Option<usize>>>,
    window: Rc<Cell<Option<Window>>>,
    frame: Frame,
}

impl Mover {
    fn new(cursor: RwSignal<usize>, window: RwSignal<Window>) -> Self {
        let to_cursor = Rc::new(Cell::new(None));
        let to_window = Rc::new(Cell::new(None));
        let (point, stretch) = (Rc::clone(&to_cursor), Rc::clone(&to_window));
        let frame = Frame::new(move || {
            // The view may be gone by the time the frame comes: try_set lets that pass.
            if let Some(to) = stretch.take() {
                let _ = window.try_set(to);
            }
            if let Some(to) = point.take() {
                let _ = cursor.try_set(to);
            }
        });
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
        let window = RwSignal::new(Window::whole(0.0));
        let cursor = RwSignal::new(0);
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
            here: Memo::new(move |_| picture.get().map(|it| Here::at(&it, cursor.get()))),
            reading,
            window,
            cursor,
            width: RwSignal::new(0.0),
            chosen,
            units,
            ids: StoredValue::new(ids),
            mover: StoredValue::new_local(Mover::new(cursor, window)),
        };
        look.follow_road(picture);
        look.follow_choice(picture);
        look
    }

    /// Another road is shown whole, from the crest of its worst descent. The same road with
    /// another plan stays as it is looked at.
    fn follow_road(self, picture: Signal<Option<Arc<RoadPicture>>>) {
        Effect::new(move |former: Option<Option<Arc<RoadPicture>>>| {
            let now = picture.get();
            let before = former.flatten();
            if let Some(picture) = &now {
                let same = before.is_some_and(|it| Arc::ptr_eq(&it.heights_m, &picture.heights_m));
                if !same {
                    self.window.set(Window::whole(picture.length_m()));
                    self.cursor.set(picture.first_look());
                }
            }
            now
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
            words: words(),
            ids: &ids,
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
