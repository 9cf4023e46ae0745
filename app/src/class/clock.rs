//! The clock of a run: it goes at a rate, stops, and is stepped.

use crate::browser::{self, frame::Frame};
use leptos::prelude::*;

/// Seconds of the road in a second of the class.
pub(super) const RATES: [f64; 6] = [1.0, 5.0, 10.0, 20.0, 60.0, 200.0];
/// The rate that the clock begins with, by its place in [`RATES`].
const FIRST_RATE: usize = 3;
/// No frame moves the clock by more than this much of real time, s: a window that was hidden does
/// not leap.
const LONGEST_FRAME_S: f64 = 0.1;
/// Where motion is to be reduced, the picture changes once in this time, s.
const STILL_S: f64 = 1.0;

/// A clock.
pub(crate) struct Clock {
    /// Time of the run, s.
    pub(crate) time: RwSignal<f64>,
    /// Whether it goes.
    pub(crate) goes: RwSignal<bool>,
    /// Place of its rate in [`RATES`].
    pub(crate) rate: RwSignal<usize>,
    /// Where it stops, s.
    pub(crate) ends: RwSignal<f64>,
    last: StoredValue<f64>,
    frame: StoredValue<Option<Frame>, LocalStorage>,
}

impl Clock {
    /// A clock at zero that stands.
    pub(crate) fn new() -> Self {
        Self {
            time: RwSignal::new(0.0),
            goes: RwSignal::new(false),
            rate: RwSignal::new(FIRST_RATE),
            ends: RwSignal::new(0.0),
            last: StoredValue::new(0.0),
            frame: StoredValue::new_local(None),
        }
    }

    /// Starts or stops; from the end it starts over.
    pub(crate) fn press(&'static self) {
        let goes = !self.goes.get_untracked();
        if goes && self.time.get_untracked() >= self.ends.get_untracked() {
            self.time.set(0.0);
        }
        self.goes.set(goes);
        if goes {
            self.last.set_value(browser::now_s());
            self.next();
        }
    }

    /// Stops, and moves by so much time of the run, s.
    pub(crate) fn step(&self, by: f64) {
        self.goes.set(false);
        self.to(self.time.get_untracked() + by);
    }

    /// To a time of the run, s.
    pub(crate) fn to(&self, time: f64) {
        self.time.set(time.clamp(0.0, self.ends.get_untracked()));
    }

    /// Faster, or slower where negative.
    pub(crate) fn faster(&self, by: isize) {
        self.rate.update(|rate| *rate = rate.saturating_add_signed(by).min(RATES.len() - 1));
    }

    /// A step of the run that is seen: a second and a half of the class.
    pub(crate) fn stride(&self) -> f64 {
        1.5 * RATES[self.rate.get_untracked()]
    }

    fn next(&'static self) {
        if self.frame.with_value(Option::is_none) {
            self.frame.set_value(Some(Frame::new(move || self.draw())));
        }
        self.frame.with_value(|frame| frame.iter().for_each(Frame::ask));
    }

    fn draw(&'static self) {
        if !self.goes.get_untracked() {
            return;
        }
        let (now, before) = (browser::now_s(), self.last.get_value());
        let gone = now - before;
        let still = browser::wants_little_motion();
        if !still || gone >= STILL_S {
            self.last.set_value(now);
            let real = if still { gone.min(2.0 * STILL_S) } else { gone.clamp(0.0, LONGEST_FRAME_S) };
            let time = self.time.get_untracked() + real * RATES[self.rate.get_untracked()];
            self.to(time);
            if time >= self.ends.get_untracked() {
                self.goes.set(false);
                return;
            }
        }
        self.next();
    }
}
