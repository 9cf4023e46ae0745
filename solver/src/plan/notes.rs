//! Notes on the whole plan, and the sums over it.

use super::answer::{Carried, Choice, Descent, Note};
use super::descents::Stretch;
use super::totals::Totals;
use crate::motion::{Run, Trip};
use crate::road::{Class, Road};
use crate::units::{Metres, MetresPerSecond};

/// Enters for each descent the speed that it carries into a rise.
pub(super) fn carry(road: &Road, run: &Run, list: &mut [Descent]) {
    /// Least grade of a rise. Assumed.
    const RISE: f64 = 0.02;
    /// Length over which the grade of a rise is taken, m. Assumed.
    const OVER_M: f64 = 200.0;
    /// Largest distance of a rise behind the foot, m. Assumed.
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

pub(super) fn totals(road: &Road, run: &Run) -> Totals {
    /// A road is called climbing above this grade. Assumed.
    const CLIMBING: f64 = 0.02;
    let assessed = |cell: &usize| road.assessed()[*cell];
    let falls = |from: usize, to: usize| (road.heights_m()[from] - road.heights_m()[to]).max(0.0);
    let fall: f64 = (0..road.cells()).filter(assessed).map(|cell| falls(cell, cell + 1)).sum();
    let fall_unassessed: f64 = road.unassessed().iter().map(|span| falls(span.from, span.to)).sum();
    let unassessed: usize = road.unassessed().iter().map(|span| span.to - span.from).sum();
    let crawl = (0..road.cells())
        .filter(assessed)
        .filter(|cell| road.grades()[*cell] > CLIMBING)
        .map(|cell| run.samples[cell].speed.0)
        .min_by(f64::total_cmp);
    Totals {
        time: run.ledger.time,
        fall: Metres(fall + fall_unassessed),
        fall_unassessed: Metres(fall_unassessed),
        unassessed: Metres(unassessed as f64 * road.step_m()),
        holding_work: -run.ledger.holding,
        service_work: -run.ledger.service,
        hottest: run.hottest(),
        hottest_after_stop: run.hottest_after_stop(),
        crawl: crawl.map(MetresPerSecond),
        fuel: run.ledger.fuel,
    }
}

/// The place away from the descents where one hard stop would take the brakes furthest over the limit.
fn hot_elsewhere(trip: Trip<'_>, road: &Road, run: &Run, descents: &[Descent]) -> Option<Metres> {
    let on_descent = |cell: &usize| descents.iter().any(|it| (it.from..it.to).contains(cell));
    let after_stop = |cell: &usize| run.samples[*cell].after_stop.0;
    let over = (0..road.cells()).filter(|cell| after_stop(cell) > trip.day.heat_limit_c && !on_descent(cell));
    let hottest = over.max_by(|a, b| after_stop(a).total_cmp(&after_stop(b)));
    hottest.map(|cell| Metres(cell as f64 * road.step_m()))
}

pub(super) fn notes(
    trip: Trip<'_>,
    road: &Road,
    run: &Run,
    descents: &[Descent],
    stretches: &[Stretch],
) -> Vec<Note> {
    let first_assessed = road.assessed().iter().position(|assessed| *assessed).unwrap_or(0);
    let starts_in_descent = stretches.first().is_some_and(|it| it.from <= first_assessed);
    let wet = trip.day.withheld().is_none() && trip.day.retarding_share() < 1.0;
    let has_retarder = !trip.truck.full_stage().is_off();
    let withheld = trip.day.withheld().filter(|_| has_retarder).map(Note::StagesWithheld);
    let by_hand = trip.truck.spec().transmission.chooses_gears() && !descents.is_empty();
    let told = [
        (Note::WetCap, wet && has_retarder),
        (Note::HoldByHand, by_hand),
        (Note::ShiftsUpByItself, by_hand && trip.truck.shifts_up_early()),
        (Note::StartsInDescent, starts_in_descent),
        (Note::PartlyUnassessed, road.assessed().iter().any(|assessed| !assessed)),
        (Note::PoorHeights, road.quality().class == Class::Poor),
    ];
    let told = told.into_iter().filter(|(_, holds)| *holds).map(|(note, _)| note);
    let hot = hot_elsewhere(trip, road, run, descents).map(|at| Note::HotElsewhere { at });
    let stalled = run.stalled.then_some(Note::CannotClimb);
    withheld.into_iter().chain(told).chain(hot).chain(stalled).collect()
}
