//! What would change the answer where the retarder does not hold a descent with the reserve.

use super::answer::{Change, Choice, Governs, Verdict};
use super::ask::{Ask, Chosen};
use super::margin::{best_reserve, held_by_margin, speeds};
use crate::motion::{BrakeHeat, Run, State, Trip};
use crate::truck::Truck;
use crate::units::{Celsius, Kilograms, MetresPerSecond};

/// Halvings in each search.
const HALVINGS: usize = 20;
/// Halvings in the search for a temperature: each drives the descent.
const HEAT_HALVINGS: usize = 8;
/// Lightest truck tried, as a share of the mass entered.
const LIGHTEST: f64 = 0.25;
/// Most retarding tried, as a multiple of what the truck has.
const STRONGEST: f64 = 3.0;

impl Ask<'_> {
    /// What would change it; `None` where the retarder holds with the reserve.
    pub(super) fn change(&self, chosen: &Chosen) -> Option<Change> {
        if chosen.choice.verdict() == Verdict::RetarderHolds {
            return None;
        }
        let heavier = |factor: f64| self.trip.truck.heavier(factor);
        let mass = largest_that_holds(LIGHTEST, 1.0, |factor| self.holds(heavier(factor)));
        let stronger = |factor: f64| self.trip.truck.with_retarding(factor);
        let needed = smallest_that_holds(1.0, STRONGEST, |factor| self.holds(Some(stronger(factor))));
        let because_of_heat = match &chosen.choice {
            Choice::Held(_) => false,
            Choice::NoSafeSpeed(none) => none.because == Governs::Heat,
        };
        Some(Change {
            mass: mass.map(|factor| Kilograms(self.trip.truck.mass().0 * factor)),
            retarding: needed.filter(|_| !self.trip.strongest_stage().is_off()),
            reserve: self.kept_reserve(),
            cool_to: if because_of_heat { self.cool_to(chosen) } else { None },
        })
    }

    /// Whether the retarder of this truck holds the descent with the reserve at some speed.
    fn holds(&self, truck: Option<Truck>) -> bool {
        truck.is_some_and(|truck| {
            let trip = Trip { truck: &truck, ..self.trip };
            let sustained = Ask { trip, ..*self }.sustained(slowest(trip));
            held_by_margin(trip, sustained.grade, trip.air(sustained.height)).is_some()
        })
    }

    fn kept_reserve(&self) -> Option<f64> {
        let sustained = self.sustained(slowest(self.trip));
        let most = best_reserve(self.trip, sustained.grade, self.trip.air(sustained.height));
        most.filter(|margin| *margin >= 0.0)
    }

    /// The warmest brakes at the crest with which the slowest speed keeps the limit.
    fn cool_to(&self, chosen: &Chosen) -> Option<Celsius> {
        let limit = Celsius(self.trip.day.heat_limit_c);
        let keeps = |at: f64| {
            let start = State::settled(chosen.hold.speed, chosen.hold.gear, BrakeHeat::uniform(Celsius(at)));
            let (from, to) = (chosen.hold.from, chosen.hold.to);
            Run::within(self.trip, self.road, from, to, &[chosen.hold], start, limit).is_some()
        };
        bisect(self.trip.day.air_c, limit.0, HEAT_HALVINGS, keeps).map(Celsius)
    }
}

/// The slowest speed that is tried.
fn slowest(trip: Trip<'_>) -> MetresPerSecond {
    speeds(trip).last().unwrap_or(trip.top_speed())
}

/// The largest value between `low` and `high` that holds, as far as it is known that smaller
/// ones hold too; `None` where `low` does not.
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
