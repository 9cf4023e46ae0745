//! The proof of what is said: the hill rolled down with the retarder alone.
//!
//! No service brake, the retarder at one stage whenever the truck is faster than its hold speed, on
//! heights as they were recorded, averaged over no more than can be felt. Where the truck gets faster,
//! the service brakes are needed there, if the heights are to be believed.

use super::hill::{Hill, joules_per_kelvin};
use super::ladder::Ladder;
use super::ways::Touch;
use crate::constants::GRAVITY;
use crate::truck::Gear;
use crate::units::{Metres, MetresPerSecond};

/// A truck that gains no more than this is held, m/s (4 km/h). Assumed.
pub(super) const HELD: f64 = 4.0 / 3.6;

/// A truck that gains more than this needs the service brakes there, m/s (10 km/h). Assumed.
pub(super) const NEEDED: f64 = 10.0 / 3.6;

/// A truck that gains more than this runs away, m/s (20 km/h): it needs the service brakes even where the
/// heights may be wrong. Assumed.
pub(super) const RUNS_AWAY: f64 = 20.0 / 3.6;

/// Lengths over which heights may be off, m.
const DOUBTED_OVER_M: [f64; 4] = [100.0, 200.0, 500.0, 1_000.0];

/// "Holds" is said where heights that are off by so many standard deviations still hold. Assumed: without
/// it 2.4 % of what a receiver's heights were said to hold ran away on the true road, with it 0.3 % of 291.
const DOUBTED: f64 = 1.0;

/// What a truck is asked to do where it rolls: a gear and a speed from one grid point to another.
#[derive(Debug, Clone, Copy)]
pub(super) struct Held {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) gear: Gear,
    pub(super) speed: MetresPerSecond,
}

impl Hill<'_> {
    /// Where the truck gains more than it may, in order; the stages of the ladder hold it.
    pub(super) fn touches(&self, ladder: &Ladder<'_>, held: &Held) -> Vec<Touch> {
        let mut found = Vec::new();
        self.roll(ladder, held, &mut |gained: Gained| {
            if gained.most > HELD {
                found.push(self.touch(&gained));
            }
            true
        });
        found
    }

    /// Whether the truck nowhere gains more than this, m/s.
    pub(super) fn gains_at_most(&self, ladder: &Ladder<'_>, held: &Held, most: f64) -> bool {
        let mut kept = true;
        self.roll(ladder, held, &mut |gained: Gained| {
            kept &= gained.most <= most;
            kept
        });
        kept
    }

    /// Whether the truck would somewhere gain more than is held if heights were off by their doubt.
    pub(super) fn may_gain(&self, ladder: &Ladder<'_>, held: &Held) -> bool {
        let (from, to) = (held.from - self.from, held.to - self.from);
        let at_hold = ladder.held(held.gear, held.speed, 0.0) * self.step_m;
        let (slow, fast) = (held.speed.0, held.speed.0 + HELD);
        let mass_factor = self.trip.truck.rotating_factor(held.gear);
        let bound = (fast * fast - slow * slow) * mass_factor / (2.0 * GRAVITY);
        let mut left = Vec::with_capacity(to - from + 1);
        let mut sum = 0.0;
        left.push(0.0);
        for push in &self.fine[from..to] {
            sum += push - at_hold;
            left.push(sum);
        }
        DOUBTED_OVER_M.into_iter().any(|length_m| {
            let cells = (length_m / self.step_m).round() as usize;
            let doubt = DOUBTED * self.ground.sigma_m(length_m);
            let most = left.windows(cells + 1).map(|it| it[cells] - it[0]).fold(f64::NEG_INFINITY, f64::max);
            most + doubt > bound
        })
    }

    fn touch(&self, gained: &Gained) -> Touch {
        let place = |cell: usize| Metres((self.from + cell) as f64 * self.step_m);
        let mean: f64 = self.pushes[gained.from..gained.peak].iter().sum();
        let fall: f64 = self.fine[gained.from..gained.peak].iter().sum();
        let (from, to) = (self.from + gained.from, self.from + gained.peak);
        let length_m = (to - from) as f64 * self.step_m;
        let rolling = self.trip.truck.spec().rolling_resistance;
        Touch {
            from: place(gained.from),
            to: place(gained.to),
            kelvin: gained.braked_m * self.trip.weight().0 / joules_per_kelvin(self.trip),
            gains: MetresPerSecond(gained.most),
            grade: crate::units::Grade(-(fall / length_m + rolling)),
            // What not even the average is held on is no matter of a pitch.
            certain: mean > gained.held_m || self.ground.stands_out(fall - mean, from, to),
        }
    }

    fn roll(&self, ladder: &Ladder<'_>, held: &Held, told: &mut dyn FnMut(Gained) -> bool) {
        let (gear, hold) = (held.gear, held.speed.0);
        let mass_factor = self.trip.truck.rotating_factor(gear);
        let at_hold = ladder.held(gear, held.speed, 0.0) * self.step_m;
        let rolled = |speed: f64, push: f64, holds: f64| {
            let squared = speed * speed + 2.0 * GRAVITY * (push - holds) / mass_factor;
            squared.max(hold * hold).sqrt()
        };
        let held_at = |speed: f64| ladder.held(gear, MetresPerSecond(speed), 0.0) * self.step_m;
        // What brakes would take that let the truck gain no more than is held.
        let most = hold + HELD;
        let (mut speed, mut kept) = (hold, hold);
        let mut now: Option<Gained> = None;
        for cell in held.from - self.from..held.to - self.from {
            let push = self.fine[cell];
            if speed <= hold && push <= at_hold {
                continue;
            }
            let goes = |speed: f64| rolled(speed, push, if speed > hold { held_at(speed) } else { at_hold });
            let next = goes(speed);
            // Brakes keep it no faster than it rolls; until they take something both are one.
            let let_go = if kept < speed { goes(kept) } else { next };
            speed = next;
            kept = let_go.min(most);
            let gained = now.get_or_insert(Gained {
                from: cell,
                to: cell,
                peak: cell,
                most: 0.0,
                held_m: 0.0,
                braked_m: 0.0,
            });
            gained.to = cell + 1;
            gained.braked_m += (let_go * let_go - kept * kept) * mass_factor / (2.0 * GRAVITY);
            if speed - hold > gained.most {
                (gained.most, gained.peak) = (speed - hold, cell + 1);
                gained.held_m = (cell + 1 - gained.from) as f64 * at_hold;
            }
            if speed <= hold {
                kept = hold;
                let whole = now.take();
                if whole.is_some_and(|gained| !told(gained)) {
                    return;
                }
            }
        }
        if let Some(gained) = now {
            let _ = told(gained);
        }
    }
}

/// A stretch on which the truck is faster than held, by cells.
#[derive(Debug, Clone, Copy)]
struct Gained {
    from: usize,
    to: usize,
    peak: usize,
    /// By how much at most, m/s.
    most: f64,
    /// What is held at the hold speed up to the peak, m of height.
    held_m: f64,
    /// Height that the service brakes take who let it gain no more than is held, m.
    braked_m: f64,
}
