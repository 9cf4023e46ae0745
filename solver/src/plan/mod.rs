//! The plan: where the descents are, and how to come down each.
//!
//! The plan is decided by driving the hill. `ground` reads the road as recorded, under plain averages.
//! `descents` finds where the hill pushes the truck. `hill` says how much must be held, and `ladder` how much
//! each speed holds. What holds is driven in one gear or in legs (`choose`, `legs`, `drive`), and proved by
//! rolling down without the service brakes (`free_run`). Every number told comes from the run along the whole
//! road.

mod alone;
mod answer;
mod approach;
mod ask;
mod change;
mod choose;
mod descents;
mod describe;
mod drive;
mod free_run;
mod ground;
mod hill;
mod ladder;
mod lanes;
mod legs;
mod none;
mod notes;
mod reach;
mod stages;
mod table;
mod totals;
mod touched;
mod ways;

pub use answer::{
    Advice, Carried, Change, Choice, Descent, Governs, Note, Plan, SlowCurve, Snub, Steepest, Sustained,
    Verdict,
};
pub use ladder::HOLD_SHARE;
pub use lanes::{HeatStep, Lanes};
pub use none::{FallsShort, NoSafeSpeed};
pub use stages::StageSpan;
pub(crate) use stages::stage_spans;
pub use table::{GearRow, Table, table};
pub use totals::Totals;
pub(crate) use touched::warm;
pub use ways::{ChangeHow, Leg, LegChange, Proof, Relief, Touch, WayDown};

use crate::day::{Day, ServiceBrakes};
use crate::motion::{Hold, Run, State, Trip, curves_between};
use crate::road::Road;
use crate::truck::Truck;
use approach::Approach;
use ask::Ask;
use choose::Chosen;
use drive::Ahead;
use ground::Ground;

/// Mass of the truck, over its own, for the second answer of each descent.
pub(crate) const HEAVIER: f64 = 1.10;

/// Plans a road: every descent in road order, then the run along the whole.
///
/// `progress` receives the share done, 0 to 1. Where it answers `false`, there is no plan. Equal road, truck
/// and day give an equal plan, bit for bit, on every machine.
pub fn plan(
    road: &Road,
    truck: &Truck,
    day: &Day,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<(Plan, Lanes)> {
    let trip = Trip { truck, day };
    let ground = Ground::of(road, alone::fastest(road, truck, day, progress)?);
    let stretches = descents::cut(trip, road, &ground);
    let mut way = Way::from_start(trip, road, &ground, &stretches);
    // The heavier truck comes to each descent with its own speed and heat.
    let heavier = truck.heavier(HEAVIER);
    let heavier = heavier.as_ref().map(|truck| Trip { truck, day });
    let mut heavy = heavier.map(|trip| Way::from_start(trip, road, &ground, &stretches));
    let mut told = Vec::with_capacity(stretches.len());
    for index in 0..stretches.len() {
        let mut descent = way.describe(index);
        // In legs only where the truck itself is: more mass is no reason to be sooner at the foot.
        let in_legs = descent.legs.len() > 1;
        descent.heavier = heavy.as_mut().map(|heavy| {
            let reserve = heavy.reserve(index, in_legs);
            let chosen = match day.service_brakes {
                ServiceBrakes::InReserve => reserve,
                ServiceBrakes::MaySnub => heavy.snubs(index, &reserve).unwrap_or(reserve),
            };
            heavy.go_on(index, &chosen);
            describe::choice(&heavy.asks[index], &chosen)
        });
        told.push(descent);
        if !progress((index + 1) as f32 / (stretches.len() + 1) as f32) {
            return None;
        }
    }
    let holds: Vec<Hold> = told.iter().flat_map(Descent::holds).collect();
    let start = start_state(trip, road);
    let mut run = Run::along(trip, road, 0, road.cells(), &holds, start);
    touched::warm(trip, road, &mut run, &told);
    for descent in &mut told {
        touched::as_driven(road, &run, descent);
    }
    let lanes = Lanes::of(trip, road, &run, &told);
    let curves = curves_between(trip, road, 0, road.cells());
    let slow = curves.filter(|(_, speed)| *speed < trip.top_speed());
    let curves = slow.map(|(curve, speed)| SlowCurve { curve: *curve, speed }).collect();
    notes::carry(road, &run, &mut told);
    let plan = Plan {
        curves,
        totals: notes::totals(road, &run),
        notes: notes::notes(trip, road, &run, &told, &stretches),
        descents: told,
    };
    progress(1.0).then_some((plan, lanes))
}

/// State in which a truck comes onto a road: at the speed that it would keep there, with the brakes as
/// entered.
#[must_use]
pub fn start_state(trip: Trip<'_>, road: &Road) -> State {
    Approach::start_state(trip, road)
}

/// A truck on its way along a road, descent by descent.
struct Way<'a> {
    asks: Vec<Ask<'a>>,
    /// The holds with which each descent would be driven, heat left aside.
    expected: Vec<Vec<Hold>>,
    approach: Approach,
}

impl<'a> Way<'a> {
    fn from_start(
        trip: Trip<'a>,
        road: &'a Road,
        ground: &'a Ground,
        stretches: &[descents::Stretch],
    ) -> Self {
        let asks: Vec<Ask<'a>> =
            stretches.iter().map(|stretch| Ask::of(trip, road, ground, *stretch)).collect();
        let expected = asks.iter().map(Ask::expected).collect();
        Self { asks, expected, approach: Approach::from_start(trip, road) }
    }

    fn ahead(&self, index: usize) -> Ahead {
        let ask = &self.asks[index];
        let near = ask.stretch.to + approach::slowing_cells(ask.road);
        match self.asks.get(index + 1) {
            Some(next) if next.stretch.from < near => {
                Ahead { holds: self.expected[index + 1].clone(), end: next.stretch.from }
            }
            Some(_) | None => Ahead { holds: Vec::new(), end: ask.stretch.to },
        }
    }

    /// The way with the service brakes in reserve.
    fn reserve(&mut self, index: usize, in_legs: bool) -> Chosen {
        let ask = &self.asks[index];
        self.approach.drive_towards(ask.trip, ask.road, ask.stretch.from);
        ask.in_reserve(&self.approach, &self.ahead(index), in_legs)
    }

    /// The way that snubs make faster than the one in reserve, where there is one.
    fn snubs(&self, index: usize, reserve: &Chosen) -> Option<Chosen> {
        self.asks[index].with_snubs(&self.approach, &self.ahead(index), reserve)
    }

    /// To the foot.
    fn go_on(&mut self, index: usize, chosen: &Chosen) {
        self.approach.at = self.asks[index].stretch.to;
        self.approach.state = match chosen {
            Chosen::Down(down) => down.driven.at_foot,
            Chosen::None(_, state) => *state,
        };
    }

    fn describe(&mut self, index: usize) -> Descent {
        let reserve = self.reserve(index, true);
        let snubs = self.snubs(index, &reserve);
        let ask = &self.asks[index];
        let in_reserve = describe::choice(ask, &reserve);
        let snubbing = snubs.as_ref().map_or(in_reserve, |snubs| describe::choice(ask, snubs));
        let (chosen, choice) = match ask.trip.day.service_brakes {
            ServiceBrakes::InReserve => (reserve, in_reserve),
            ServiceBrakes::MaySnub => (snubs.unwrap_or(reserve), snubbing),
        };
        let mut descent =
            describe::descent(ask, (&self.approach, &self.ahead(index)), index + 1, &chosen, choice);
        (descent.in_reserve, descent.snubbing) = (in_reserve, snubbing);
        self.go_on(index, &chosen);
        descent
    }
}
