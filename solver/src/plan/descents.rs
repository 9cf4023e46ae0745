//! Cutting a road into descents.

use super::answer::Relief;
use super::margin::held_by_margin;
use crate::constants::{DRIVER_SHIFT_TIME, GRAVITY, SERVICE_SLOWING};
use crate::motion::{Trip, pulling_gear};
use crate::road::{Road, Unassessed};
use crate::truck::Gear;
use crate::units::{Grade, Metres, MetresPerSecond};

/// Shallower drops are rolling country, driven without choosing a gear for them, m. Assumed.
const LEAST_DROP: f64 = 20.0;

/// A break in the push shorter than this is no relief, whatever the truck, m. Assumed.
const LEAST_RELIEF: f64 = 150.0;

/// Steps of one hill lie no farther apart than this, m. Assumed.
const STEPS_WITHIN: f64 = 300.0;

/// Hills that no gear holds are one within this, m. Assumed.
const UNHELD_WITHIN: f64 = 500.0;

/// Rounds of joining; each joins all that can be joined with the gears known so far.
const JOINING_ROUNDS: usize = 8;

/// A descent by its place on the road.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stretch {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) reliefs: Vec<Relief>,
    pub(super) cut_short: bool,
    /// Its highest road: where an engine holds least.
    pub(super) highest: Metres,
}

impl Stretch {
    fn drop_m(&self, road: &Road) -> f64 {
        road.heights_m()[self.from] - road.heights_m()[self.to]
    }

    /// The grade of the steepest stretch that falls at its head or foot and is not assessed because it is
    /// steeper than a road is believed to be: whoever comes down here may have to come down there.
    pub(super) fn beyond(&self, road: &Road) -> Option<Grade> {
        let spans = road.unassessed();
        // Blank stretches of several reasons may lie end to end.
        let mut ends = (self.from, self.to);
        for span in spans.iter().rev().filter(|span| span.to <= self.from) {
            ends.0 = if span.to == ends.0 { span.from } else { break };
        }
        for span in spans.iter().filter(|span| span.from >= self.to) {
            ends.1 = if span.from == ends.1 { span.to } else { break };
        }
        let around = spans.iter().filter(|span| ends.0 <= span.from && span.to <= ends.1);
        let steep = around.filter(|span| span.why == Unassessed::TooSteep);
        let grades = steep.map(|span| road.mean_grade(span.from, span.to)).filter(|grade| *grade < 0.0);
        grades.min_by(f64::total_cmp).map(Grade)
    }

    /// The most that it falls from one of its points to a later one: a rise on the way takes nothing
    /// off the hill behind it.
    fn fall_m(&self, road: &Road) -> f64 {
        let (mut highest, mut most) = (f64::NEG_INFINITY, 0.0_f64);
        for height in &road.heights_m()[self.from..=self.to] {
            highest = highest.max(*height);
            most = most.max(highest - height);
        }
        most
    }
}

/// The descents of a road: stretches on which the truck, at the fastest it may go, is still
/// pushed, joined over reliefs too short to shift up and down again.
pub(super) fn cut(trip: Trip<'_>, road: &Road) -> Vec<Stretch> {
    let mut stretches = pushed(trip, road);
    for _ in 0..JOINING_ROUNDS {
        let before = stretches.len();
        stretches = join(trip, road, stretches);
        if stretches.len() == before {
            break;
        }
    }
    stretches.retain(|stretch| stretch.fall_m(road) >= LEAST_DROP);
    stretches
}

/// Maximal runs of assessed cells that push the truck at its top speed.
fn pushed(trip: Trip<'_>, road: &Road) -> Vec<Stretch> {
    let top = trip.top_speed();
    let pushes = |cell: usize| {
        let air = trip.air_on(road, cell);
        road.assessed()[cell] && trip.demand(top, Grade(road.grades()[cell]), air).0 > 0.0
    };
    let mut stretches = Vec::new();
    let mut from = None;
    for cell in 0..=road.cells() {
        let on = cell < road.cells() && pushes(cell);
        match (from, on) {
            (None, true) => from = Some(cell),
            (Some(start), false) => {
                let cut_short = cell == road.cells() || !road.assessed()[cell];
                let highest = Metres(road.heights_m()[start]);
                stretches.push(Stretch { from: start, to: cell, reliefs: Vec::new(), cut_short, highest });
                from = None;
            }
            (None, false) | (Some(_), true) => {}
        }
    }
    stretches
}

fn join(trip: Trip<'_>, road: &Road, stretches: Vec<Stretch>) -> Vec<Stretch> {
    let mut joined: Vec<Stretch> = Vec::with_capacity(stretches.len());
    for next in stretches {
        match joined.last_mut() {
            Some(last) if linked(trip, road, last, &next) => {
                let relief = Relief { from: last.to, to: next.from };
                if (relief.to - relief.from) as f64 * road.step_m() >= LEAST_RELIEF {
                    last.reliefs.push(relief);
                }
                last.reliefs.extend(next.reliefs);
                last.to = next.to;
                last.cut_short = next.cut_short;
                last.highest = Metres(
                    road.heights_m()[last.from..=last.to].iter().copied().fold(f64::NEG_INFINITY, f64::max),
                );
            }
            Some(_) | None => joined.push(next),
        }
    }
    joined
}

/// Whether the relief between two stretches is too short to shift up on.
fn linked(trip: Trip<'_>, road: &Road, first: &Stretch, second: &Stretch) -> bool {
    if (first.to..second.from).any(|cell| !road.assessed()[cell]) {
        return false;
    }
    let length = (second.from - first.to) as f64 * road.step_m();
    if length < LEAST_RELIEF {
        return true;
    }
    let rise = road.heights_m()[second.from] - road.heights_m()[first.to];
    let small = first.drop_m(road).min(second.drop_m(road));
    if small < LEAST_DROP {
        // Steps of one hill, each too small to be a descent; where the road climbs between it is rolling country.
        return length < STEPS_WITHIN && rise < 0.5 * small;
    }
    let speed = |stretch: &Stretch| {
        let grade = Grade(road.mean_grade(stretch.from, stretch.to));
        held_by_margin(trip, grade, trip.air(stretch.highest))
    };
    match (speed(first), speed(second)) {
        (Some(a), Some(b)) => {
            let (gear, held) = if a.1 < b.1 { a } else { b };
            length < relief_to_shift(trip, gear, held, Metres(road.heights_m()[first.to]))
        }
        // Where no gear holds one of them, nobody should shift up before it.
        (None, _) | (_, None) => length < UNHELD_WITHIN,
    }
}

/// Length of level road on which a driver gains one gear and comes back: two shifts, full
/// load up to the speed of the next gear, slowing back down.
fn relief_to_shift(trip: Trip<'_>, gear: Gear, held: MetresPerSecond, height: Metres) -> f64 {
    let truck = trip.truck;
    let Some(next) = truck.gears().find(|g| *g > gear) else {
        return 0.0;
    };
    let faster = (held.0 * truck.ratio(gear) / truck.ratio(next)).min(trip.top_speed().0);
    let level = Grade(0.0);
    let (_, pull) = pulling_gear(trip, held);
    let gaining = (pull + trip.demand(held, level, trip.air(height))).0 / truck.inertial_mass(gear).0;
    // A truck that hardly gains on the level never makes a shift pay.
    let gaining = gaining.max(1e-3 * GRAVITY);
    let change = 0.5 * (faster * faster - held.0 * held.0);
    change.max(0.0) * (1.0 / gaining + 1.0 / SERVICE_SLOWING) + 2.0 * DRIVER_SHIFT_TIME * faster
}
