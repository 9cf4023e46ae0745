//! How the road is looked at: reading, window, cursor, and the one place that moves them.

use crate::browser::frame::Frame;
use crate::browser::timer::Timer;
use crate::chart::corner::{Corner, area, corner};
use crate::chart::here::Here;
use crate::chart::label::text_width;
use crate::chart::layout::{Contents, Lane, Layout, Space};
use crate::chart::picture::RoadPicture;
use crate::chart::profile::height_scale;
use crate::chart::reading::Reading;
use crate::chart::scale::Scale;
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
pub(crate) struct Look {
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
    /// The space of the drawing, and the least size of what is pressed, px.
    pub(super) space: RwSignal<Space>,
    /// Where the parts of the drawing stand, and its heights, m, in px.
    pub(super) places: Memo<(Layout, Scale)>,
    /// Corner of the plan shape.
    pub(super) corner: Memo<Corner>,
    /// Whether the plan shape is enlarged.
    pub(super) plan_large: RwSignal<bool>,
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
    /// How a road is looked at. `picture` is what is drawn, `None` before the first answer. `chosen` is the
    /// number of the descent that is looked at: set from outside it brings the cursor there, and a press on
    /// a bar or on the hill sets it.
    pub(crate) fn new(
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
        let space = RwSignal::new(Space { width: 0.0, height: 0.0, target: 36.0 });
        let places = Memo::new(move |_| {
            prepared.with(|prepared| places(prepared.as_deref(), space.get(), window.get(), reading.get()))
        });
        let corner = Memo::new(move |before: Option<&Corner>| {
            let (layout, up) = places.get();
            let size = layout.plan_size(false);
            let at = |it: &Arc<RoadPicture>| corner(it, window.get(), (&layout, &up), size, before.copied());
            picture.with(|picture| picture.as_ref().map_or(Corner::Left, at))
        });
        let look = Self {
            prepared,
            settled: RwSignal::new(None),
            here: Memo::new(move |_| picture.get().map(|it| Here::at(&it, cursor.get()))),
            reading,
            window,
            cursor,
            space,
            places,
            corner,
            plan_large: RwSignal::new(false),
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

    /// The cursor goes to the steepest 200 m of a descent that is chosen, unless it is inside already. Scale
    /// and zoom stay; a window that does not show it moves along.
    fn follow_choice(self, picture: Signal<Option<Arc<RoadPicture>>>) {
        Effect::new(move |_| {
            let Some(number) = self.chosen.get() else { return };
            let Some(picture) = picture.get_untracked() else { return };
            let Some(descent) = picture.descent(number) else { return };
            let cursor = self.cursor.get_untracked();
            let inside = descent.from <= cursor && cursor <= descent.to;
            let steepest = picture.pitch(descent).map_or(descent.from, |it| (it.from + it.to) / 2);
            let at = if inside { cursor } else { steepest };
            // In the next frame, so that a move that still waits does not undo it.
            if !inside {
                self.point(at);
            }
            let window = self.coming_window();
            let shown = window.showing(picture.place_of(at), picture.length_m());
            if shown != window {
                self.show(shown);
            }
        });
    }

    /// A stretch named outside comes into view with the cursor on its start.
    pub(crate) fn follow(self, look_at: RwSignal<Option<(f64, f64)>>) {
        Effect::new(move |_| {
            let Some((from, to)) = look_at.get() else { return };
            let Some(picture) = self.picture() else { return };
            self.show(Window::around(from, to, picture.length_m()));
            self.point(picture.nearest(from));
        });
    }

    /// The layout for the space that there is.
    pub(super) fn layout(self) -> Layout {
        self.places.get().0
    }

    /// Whether a part of the road is shown.
    pub(super) fn is_zoomed(self) -> bool {
        let window = self.window.get();
        self.prepared.with(|it| it.as_ref().is_some_and(|it| !window.is_whole(it.picture.length_m())))
    }

    /// Calls `work` with the scene as it is; `None` without a road.
    pub(super) fn scene<T>(self, work: impl FnOnce(&Scene) -> T) -> Option<T> {
        let prepared = self.prepared.get()?;
        let ids = self.ids.get_value();
        let (layout, up) = self.places.get();
        let has_shape = !prepared.picture.east_m.is_empty();
        let corner = self.corner.get();
        Some(work(&Scene {
            prepared: &prepared,
            window: self.window.get(),
            layout,
            up,
            kept_free: has_shape.then(|| area(corner, &layout, layout.plan_size(false))),
            chosen: self.chosen.get(),
            ids: &ids,
            labels: &words(),
        }))
    }

    /// The picture, read without following it.
    pub(crate) fn picture(self) -> Option<Arc<RoadPicture>> {
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

    /// Shows descents, from the first number to the last.
    pub(super) fn show_descents(self, (first, last): (usize, usize)) {
        let Some(picture) = self.picture() else { return };
        if let (Some(first), Some(last)) = (picture.descent(first), picture.descent(last)) {
            let (from, to) = (picture.place_of(first.from), picture.place_of(last.to));
            self.show(Window::around(from, to, picture.length_m()));
        }
    }

    /// Fills the profile by the next reading.
    pub(super) fn next_reading(self) {
        let now = self.reading.get_untracked();
        let next = Reading::ALL.iter().cycle().skip_while(|it| **it != now).nth(1);
        self.reading.set(next.copied().unwrap_or(now));
    }

    /// The class of a gear's colour on the picture.
    pub(crate) fn gear_class(self, gear: u8) -> String {
        self.prepared.with_untracked(|it| {
            it.as_ref().map_or_else(String::new, |it| it.gear_tones.class(gear).to_owned())
        })
    }

    /// Shows the whole road.
    pub(super) fn show_all(self) {
        if let Some(picture) = self.picture() {
            self.show(Window::whole(picture.length_m()));
        }
    }
}

/// Where the parts stand, and the scale of heights.
fn places(prepared: Option<&Prepared>, space: Space, window: Window, reading: Reading) -> (Layout, Scale) {
    let w = words();
    let widest =
        Lane::TITLED.map(|lane| 0.9 * text_width(w.lane_title(lane), 13.0)).into_iter().fold(0.0, f64::max);
    let picture = prepared.map(|it| &it.picture);
    let has = Contents {
        descents: picture.is_some_and(|it| !it.descents.is_empty()),
        zoomed: picture.is_some_and(|it| !window.is_whole(it.length_m())),
        heat: reading == Reading::Heat,
        titles: widest,
    };
    let layout = Layout::new(space, has);
    let up = picture.map_or_else(
        || Scale::new((0.0, 1.0), (layout.profile.bottom(), layout.profile.top)),
        |it| height_scale(it, window, &layout),
    );
    (layout, up)
}
