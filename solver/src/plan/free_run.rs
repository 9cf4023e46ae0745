//! The proof: the hill rolled down with the retarder alone.
//!
//! The service brakes are not used. The retarder works at one stage whenever the truck is faster than its
//! hold speed, on recorded heights averaged over no more than a truck can feel. Where the truck gains speed,
//! it needs the service brakes, provided that the heights are right.

use super::hill::{Hill, joules_per_kelvin};
use super::ladder::Ladder;
use super::ways::Touch;
use crate::constants::GRAVITY;
use crate::truck::Gear;
use crate::units::{Metres, MetresPerSecond};

/// Largest gain of speed at which a truck counts as held, m/s (4 km/h). Assumed.
pub(super) const HELD: f64 = 4.0 / 3.6;

/// A larger gain than this needs the service brakes, m/s (10 km/h). Assumed.
pub(super) const NEEDED: f64 = 10.0 / 3.6;

/// With a larger gain than this the truck runs away, m/s (20 km/h). It needs the service brakes even where
/// the heights may be wrong. Assumed.
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
    /// Stretches on which the truck gains more than it may, in order. It is held by the ladder's stages.
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

    /// Whether the truck gains no more than this anywhere, m/s.
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
            // A stretch that is not held even on the average is no question of a pitch.
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
        // The work of brakes that let the truck gain no more than counts as held.
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
            // Brakes keep the truck no faster than it would roll. Until they take any work both speeds are
            // equal.
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
    /// Largest gain, m/s.
    most: f64,
    /// Height held at the hold speed up to the peak, m.
    held_m: f64,
    /// Height taken by service brakes that let the truck gain no more than counts as held, m.
    braked_m: f64,
}
