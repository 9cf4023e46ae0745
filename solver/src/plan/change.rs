//! What would change the answer where the retarder does not hold a descent with the reserve.

use super::answer::{Change, Choice, Governs, Verdict};
use super::approach::Approach;
use super::ask::Ask;
use super::hill::Hill;
use super::ladder::Ladder;
use super::none::NoSafeSpeed;
use crate::motion::{BrakeHeat, Run, State, Trip};
use crate::truck::Truck;
use crate::units::{Celsius, Kilograms};

/// Halvings in each search.
const HALVINGS: usize = 12;
/// Halvings in the search for a temperature; each of them drives the descent.
const HEAT_HALVINGS: usize = 8;
/// Lightest truck tried, as a share of the mass entered.
const LIGHTEST: f64 = 0.25;
/// Most retarding tried, as a multiple of the truck's own.
const STRONGEST: f64 = 3.0;

impl Ask<'_> {
    /// What would change the answer; `None` where the retarder holds with the reserve.
    pub(super) fn change(&self, choice: &Choice, approach: &Approach) -> Option<Change> {
        if self.held().next().is_some() && choice.verdict() <= Verdict::NeedsServiceBrakes {
            return None;
        }
        let heavier = |factor: f64| self.trip.truck.heavier(factor);
        let mass = largest_that_holds(LIGHTEST, 1.0, |factor| self.holds(heavier(factor)));
        let stronger = |factor: f64| self.trip.truck.with_retarding(factor);
        let needed = smallest_that_holds(1.0, STRONGEST, |factor| self.holds(Some(stronger(factor))));
        let cool_to = match choice {
            Choice::NoSafeSpeed(none) if none.because == Governs::Heat => self.cool_to(none, approach),
            Choice::NoSafeSpeed(_) | Choice::Held(_) => None,
        };
        Some(Change {
            mass: mass.map(|factor| Kilograms(self.trip.truck.mass().0 * factor)),
            retarding: needed.filter(|_| !self.trip.strongest_stage().is_off()),
            reserve: self.kept_reserve(),
            cool_to,
        })
    }

    /// Whether the retarder of this truck holds the descent with the reserve at some speed.
    fn holds(&self, truck: Option<Truck>) -> bool {
        truck.is_some_and(|truck| {
            let trip = Trip { truck: &truck, ..self.trip };
            let hill = Hill::of(trip, self.hill.ground, self.stretch.from, self.stretch.to);
            let asked = hill.asks(0, hill.cells()).holds;
            let ladder = Ladder::of(trip, trip.air(self.stretch.highest));
            ladder.rungs.iter().any(|rung| rung.with_reserve >= asked)
        })
    }

    /// The reserve that the unchanged truck has, at the speed that holds best.
    fn kept_reserve(&self) -> Option<f64> {
        let air = self.trip.air(self.stretch.highest);
        let reserve = |rung: &super::ladder::Rung| {
            let drag = self.trip.air_drag(rung.speed, air).0 / self.trip.weight().0;
            (rung.holds - drag) / (self.asked.holds - drag).max(1e-9) - 1.0
        };
        let most = self.reached().map(|(rung, _)| reserve(rung)).fold(f64::NEG_INFINITY, f64::max);
        Some(most).filter(|most| *most >= 0.0)
    }

    /// The warmest brakes at the crest with which the slowest speed keeps the limit.
    fn cool_to(&self, none: &NoSafeSpeed, approach: &Approach) -> Option<Celsius> {
        let limit = Celsius(self.trip.day.heat_limit_c);
        let hold = self.hold(none.gear, none.slowest, None);
        let keeps = |at: f64| {
            let start = State::settled(hold.speed, hold.gear, BrakeHeat::uniform(Celsius(at)));
            let start = State { retarder: approach.state.retarder, ..start };
            Run::within(self.trip, self.road, hold.from..hold.to, &[hold], start, limit, &mut |_| ())
                .is_some()
        };
        bisect(self.trip.day.air_c, limit.0, HEAT_HALVINGS, keeps).map(Celsius)
    }
}

/// The largest value between `low` and `high` that holds, provided that smaller ones hold too; `None` where
/// `low` does not.
fn largest_that_holds(low: f64, high: f64, holds: impl Fn(f64) -> bool) -> Option<f64> {
    bisect(low, high, HALVINGS, holds)
}

/// The smallest value that holds where larger ones do; `None` where not even `high` does.
fn smallest_that_holds(low: f64, high: f64, holds: impl Fn(f64) -> bool) -> Option<f64> {
    bisect(-high, -low, HALVINGS, |value| holds(-value)).map(|value| -value)
}

fn bisect(mut good: f64, mut bad: f64, rounds: usize, holds: impl Fn(f64) -> bool) -> Option<f64> {
    if !holds(good) {
        return None;
    }
    for _ in 0..rounds {
        let middle = 0.5 * (good + bad);
        if holds(middle) {
            good = middle;
        } else {
            bad = middle;
        }
    }
    Some(good)
}
