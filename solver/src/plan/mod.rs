//! The plan: where the descents are, and how to come down each.

mod answer;
mod approach;
mod ask;
mod candidate;
mod change;
mod choose;
mod descents;
mod lanes;
mod margin;
mod posted;
mod stages;
mod sustained;
mod table;
mod totals;

pub use answer::{
    Advice, Carried, Change, Choice, Descent, GearRow, Governs, NoSafeSpeed, Note, Plan, Relief, SlowCurve,
    Snub, StageSpan, Steepest, Sustained, Table, Verdict,
};
pub use lanes::{HeatStep, Lanes};
pub use margin::HOLD_SHARE;
pub(crate) use stages::stage_spans;
pub use table::table;
pub use totals::Totals;

use crate::day::{Day, ServiceBrakes};
use crate::motion::{Hold, Run, State, Trip, crawl, curves_between};
use crate::road::{Class, Road};
use crate::truck::Truck;
use crate::units::{Grade, Metres, MetresPerSecond};
use approach::Approach;
use ask::Ask;
use descents::Stretch;

/// How much heavier the second answer of each descent is.
pub(crate) const HEAVIER: f64 = 1.10;

/// Plans a road: every descent in road order, then the run along the whole.
///
/// `progress` is told the share done, 0 to 1, and answers `false` to stop; then there is no
/// plan. The same road, truck and day give the same plan, bit for bit, on every machine.
pub fn plan(
    road: &Road,
    truck: &Truck,
    day: &Day,
    progress: &mut dyn FnMut(f32) -> bool,
) -> Option<(Plan, Lanes)> {
    let trip = Trip { truck, day };
    let stretches = descents::cut(trip, road);
    let heavier = truck.heavier(HEAVIER);
    let mut approach = Approach::from_start(trip, road);
    // The heavier truck comes to each descent with its own speed and heat.
    let mut heavy = heavier
        .as_ref()
        .map(|truck| Trip { truck, day })
        .map(|trip| (trip, Approach::from_start(trip, road)));
    let mut holds: Vec<Hold> = Vec::with_capacity(stretches.len());
    let mut list = Vec::with_capacity(stretches.len());
    for (index, stretch) in stretches.iter().enumerate() {
        approach.drive_towards(trip, road, stretch.from);
        let heavier = heavy.as_mut().map(|(trip, approach)| {
            approach.drive_towards(*trip, road, stretch.from);
            let chosen = Ask::of(*trip, road, stretch, approach).choose(day.service_brakes);
            approach.drive_down(*trip, road, chosen.hold);
            chosen.choice
        });
        let (descent, hold) = describe(trip, heavier, road, stretch, &approach, index + 1);
        approach.drive_down(trip, road, hold);
        list.push(descent);
        holds.push(hold);
        if !progress((index + 1) as f32 / (stretches.len() + 1) as f32) {
            return None;
        }
    }
    let start = start_state(trip, road);
    let run = Run::along(trip, road, 0, road.cells(), &holds, start);
    let lanes = Lanes::of(trip, road, &run, &list);
    let curves = curves_between(trip, road, 0, road.cells());
    let slow = curves.filter(|(_, speed)| *speed < trip.top_speed());
    let curves = slow.map(|(curve, speed)| SlowCurve { curve: *curve, speed }).collect();
    carry(road, &run, &mut list);
    let plan = Plan {
        curves,
        totals: totals(road, &run),
        notes: notes(trip, road, &run, &list, &stretches),
        descents: list,
    };
    progress(1.0).then_some((plan, lanes))
}

/// How a truck comes onto a road: at the speed that it would keep there, with the brakes as
/// entered.
#[must_use]
pub fn start_state(trip: Trip<'_>, road: &Road) -> State {
    Approach::start_state(trip, road)
}

/// Everything that is said of one descent, and the hold that the run is driven with.
fn describe(
    trip: Trip<'_>,
    heavier: Option<Choice>,
    road: &Road,
    stretch: &Stretch,
    approach: &Approach,
    number: usize,
) -> (Descent, Hold) {
    let ask = Ask::of(trip, road, stretch, approach);
    let in_reserve = ask.choose(ServiceBrakes::InReserve);
    let snubbing = ask.choose(ServiceBrakes::MaySnub);
    let chosen = match trip.day.service_brakes {
        ServiceBrakes::InReserve => &in_reserve,
        ServiceBrakes::MaySnub => &snubbing,
    };
    let (choice, hold) = (chosen.choice, chosen.hold);
    let sustained = ask.sustained(hold.speed);
    let mean = Grade(road.mean_grade(stretch.from, stretch.to));
    let metre = |point: usize| Metres(point as f64 * road.step_m());
    let descent = Descent {
        number,
        from: stretch.from,
        to: stretch.to,
        crest: metre(stretch.from),
        foot: metre(stretch.to),
        drop: Metres(road.heights_m()[stretch.from] - road.heights_m()[stretch.to]),
        mean,
        steepest: steepest(road, stretch),
        sustained,
        brakes_at_crest: chosen.brakes_at_crest,
        choice,
        in_reserve: in_reserve.choice,
        snubbing: snubbing.choice,
        heavier,
        table: table(trip, sustained.grade, sustained.height),
        stages: stage_spans(trip, road, &hold),
        reliefs: stretch.reliefs.clone(),
        change: ask.change(chosen),
        carried: None,
        climbs_in: crawl(trip, -mean, sustained.height),
        cut_short: stretch.cut_short,
    };
    (descent, hold)
}

/// Lengths over which the steepest grade of a descent is told, m.
const STEEPEST_OVER: [f64; 3] = [100.0, 500.0, 1_000.0];

fn steepest(road: &Road, stretch: &Stretch) -> Vec<Steepest> {
    let over = |length: f64| {
        let (at, grade) = road.steepest(stretch.from, stretch.to, length)?;
        let from = Metres(at as f64 * road.step_m());
        Some(Steepest { length: Metres(length), from, grade: Grade(grade) })
    };
    STEEPEST_OVER.into_iter().filter_map(over).collect()
}

/// Tells of each descent what speed it carries into a rise.
fn carry(road: &Road, run: &Run, list: &mut [Descent]) {
    /// A rise is as steep as this…
    const RISE: f64 = 0.02;
    /// …over this length, m,…
    const OVER_M: f64 = 200.0;
    /// …and begins this far behind the foot at most, m. All assumed.
    const WITHIN_M: f64 = 1_000.0;
    let cells = |metres: f64| (metres / road.step_m()) as usize;
    for descent in list {
        let last = (descent.to + cells(WITHIN_M)).min(road.cells().saturating_sub(cells(OVER_M)));
        let rises = |at: &usize| {
            let to = at + cells(OVER_M);
            road.assessed()[*at..to].iter().all(|it| *it) && road.mean_grade(*at, to) >= RISE
        };
        let held = matches!(descent.choice, Choice::Held(_));
        let found = (descent.to..last).find(rises).filter(|_| held && !descent.cut_short);
        descent.carried = found.map(|at| Carried {
            at: Metres(at as f64 * road.step_m()),
            speed: run.samples[at.saturating_sub(1)].speed,
        });
    }
}

fn totals(road: &Road, run: &Run) -> Totals {
    /// A road is called climbing above this grade. Assumed.
    const CLIMBING: f64 = 0.02;
    let assessed = |cell: &usize| road.assessed()[*cell];
    let fall = (0..road.cells())
        .filter(assessed)
        .map(|cell| (road.heights_m()[cell] - road.heights_m()[cell + 1]).max(0.0))
        .sum();
    let crawl = (0..road.cells())
        .filter(assessed)
        .filter(|cell| road.grades()[*cell] > CLIMBING)
        .map(|cell| run.samples[cell].speed.0)
        .min_by(f64::total_cmp);
    Totals {
        time: run.ledger.time,
        fall: Metres(fall),
        holding_work: -run.ledger.holding,
        service_work: -run.ledger.service,
        hottest: run.hottest(),
        hottest_after_stop: run.hottest_after_stop(),
        crawl: crawl.map(MetresPerSecond),
        fuel: run.ledger.fuel,
    }
}

/// Whether brakes would pass the limit after a hard stop on a falling stretch that is no descent.
fn hot_elsewhere(trip: Trip<'_>, road: &Road, run: &Run, descents: &[Descent]) -> bool {
    /// Less is as good as level. Assumed.
    const FALLING: f64 = -0.01;
    let on_descent = |cell: usize| descents.iter().any(|it| (it.from..it.to).contains(&cell));
    (0..road.cells()).any(|cell| {
        road.assessed()[cell]
            && road.grades()[cell] < FALLING
            && run.samples[cell].after_stop.0 > trip.day.heat_limit_c
            && !on_descent(cell)
    })
}

fn notes(trip: Trip<'_>, road: &Road, run: &Run, descents: &[Descent], stretches: &[Stretch]) -> Vec<Note> {
    let steeper_beyond = stretches.iter().any(|stretch| stretch.beyond(road).is_some());
    let first_assessed = road.assessed().iter().position(|assessed| *assessed).unwrap_or(0);
    let starts_in_descent = descents.first().is_some_and(|d| d.from <= first_assessed);
    let wet = trip.day.withheld().is_none() && trip.day.retarding_share() < 1.0;
    let has_retarder = !trip.truck.full_stage().is_off();
    let withheld = trip.day.withheld().filter(|_| has_retarder).map(Note::StagesWithheld);
    let by_hand = trip.truck.spec().transmission.chooses_gears() && !descents.is_empty();
    let told = [
        (Note::WetCap, wet && has_retarder),
        (Note::HoldByHand, by_hand),
        (Note::StartsInDescent, starts_in_descent),
        (Note::PartlyUnassessed, road.assessed().iter().any(|assessed| !assessed)),
        (Note::PoorHeights, road.quality().class == Class::Poor),
        (Note::SteeperBeyond, steeper_beyond),
        (Note::HotElsewhere, hot_elsewhere(trip, road, run, descents)),
        (Note::CannotClimb, run.stalled),
    ];
    let told = told.into_iter().filter(|(_, holds)| *holds).map(|(note, _)| note);
    withheld.into_iter().chain(told).collect()
}
