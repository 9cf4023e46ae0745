//! The ride: the plan driven from start to end, as it says or with one thing otherwise, so that two can be
//! compared.
//!
//! The difference is a [`Slip`]. All else follows the card: hold speeds, the points where the driver slows,
//! curves, posted limits and stops. Where the retarder falls short the service brakes hold the truck, however
//! hot they are. So a ride is milder than what could happen; it says from where on the brakes are past their
//! limit.

mod lanes;
mod setting;

pub use lanes::RideLanes;

use crate::day::Day;
use crate::motion::{Run, Trip};
use crate::plan::{Choice, Plan, start_state, warm};
use crate::road::Road;
use crate::truck::Truck;
use crate::units::{Celsius, Grade, Joules, Metres, MetresPerSecond, Seconds};
use serde::{Deserialize, Serialize};
use setting::Setting;

/// What a driver does, or meets, differently from the plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Slip {
    /// Nothing: the plan as it is.
    Planned,
    /// Each descent in the next higher gear at the planned speed; in the highest gear where the plan has that
    /// already.
    GearHigh,
    /// 10 % more mass than entered, driven by the card of the truck as entered.
    Heavier,
    /// Each descent [`Slip::FASTER_KMH`] faster, above the day's limit too, but no faster than the highest
    /// gear allows. The gear is the planned one, or the lowest that the highest engine speed allows at that
    /// speed.
    Faster,
    /// The strongest retarder stage is lost from half-way down the deciding descent on; the whole retarder
    /// where it has one stage.
    StageLost,
    /// The brakes begin at [`Slip::HOT_SHARE`] of the way from the temperature entered to the limit.
    HotBrakes,
}

impl Slip {
    /// All slips; the plan as it is comes first.
    pub const ALL: [Self; 6] =
        [Self::Planned, Self::GearHigh, Self::Heavier, Self::Faster, Self::StageLost, Self::HotBrakes];

    /// Added speed of [`Slip::Faster`], km/h. Assumed.
    pub const FASTER_KMH: f64 = 10.0;

    /// Temperature at which the brakes of [`Slip::HotBrakes`] begin, as a share of the way to the limit.
    /// Assumed: the upper end of what is called warm.
    pub const HOT_SHARE: f64 = 0.6;
}

/// How a ride ends.
///
/// Figures cover the assessed parts of the road. They include a descent without a safe speed, which is driven
/// at the slowest speed tried.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct RideEnd {
    /// Time from start to end.
    pub time: Seconds,
    /// Brake temperature at the start of the road.
    pub brakes_at_start: Celsius,
    /// Hottest service brakes on the way.
    pub hottest: Celsius,
    /// Hottest service brakes after one hard stop at the worst place.
    pub hottest_after_stop: Celsius,
    /// Work of the service brakes, not negative.
    pub service_work: Joules,
    /// The part of that work done on the descents, from crest to foot.
    pub service_on_descents: Joules,
    /// Work of retarder and motoring, not negative.
    pub holding_work: Joules,
    /// Largest speed above the card's on a descent; zero where there is none.
    pub above_card: MetresPerSecond,
    /// The first place where one hard stop would take the brakes over the limit, from the start
    /// of the road.
    pub over_limit_from: Option<Metres>,
    /// The first place where the engine turns faster than allowed.
    pub overspeed_from: Option<Metres>,
    /// Where the stage is lost, for [`Slip::StageLost`].
    pub lost_at: Option<Metres>,
    /// Number of descents without a safe speed. With any of them, nobody should drive this ride.
    pub without_safe_speed: usize,
    /// The truck was slower than walking speed somewhere: it cannot climb this road.
    pub stalled: bool,
}

/// Drives the plan of this road, truck and day with a slip.
///
/// `None` where that cannot be driven: the mass is out of range, or there is no stage to lose, none
/// recommended on that day, or no descent to lose it on. Any slip but [`Slip::Planned`] also gives `None`
/// where the plan has a descent without a safe speed, since there is no right way to compare a wrong one
/// with.
#[must_use]
pub fn ride(road: &Road, truck: &Truck, day: &Day, plan: &Plan, slip: Slip) -> Option<(RideEnd, RideLanes)> {
    let setting = Setting::of(road, Trip { truck, day }, plan, slip)?;
    let trip = setting.trip_on(0);
    let start = start_state(trip, road);
    let mut run = Run::by_card_then(trip, road, &setting.caps, &setting.holds, start, setting.then());
    // Recorded pitches warm the brakes on this ride as they do on the plan's.
    warm(trip, road, &mut run, &plan.descents);
    let end = end(road, plan, &setting, &run);
    Some((end, RideLanes::of(road, plan, &setting, &run)))
}

fn end(road: &Road, plan: &Plan, setting: &Setting, run: &Run) -> RideEnd {
    let mut above = 0.0_f64;
    let mut braked = 0.0_f64;
    let mut without_safe_speed = 0;
    for descent in &plan.descents {
        for card in descent.holds() {
            let fastest = run.samples[card.from..card.to].iter().map(|sample| sample.speed.0);
            above = above.max(fastest.fold(0.0, f64::max) - card.speed.0);
        }
        for cell in descent.from..descent.to {
            let sample = &run.samples[cell];
            let way = road.step_m() / Grade(road.grades()[cell]).sin_cos().1;
            braked += sample.to_hold.0 * (1.0 - sample.carried) * way;
        }
        without_safe_speed += usize::from(matches!(descent.choice, Choice::NoSafeSpeed(_)));
    }
    RideEnd {
        time: run.ledger.time,
        brakes_at_start: Celsius(setting.day.brakes_at_start_c),
        hottest: run.hottest(),
        hottest_after_stop: run.hottest_after_stop(),
        service_work: -run.ledger.service,
        service_on_descents: Joules(braked),
        holding_work: -run.ledger.holding,
        above_card: MetresPerSecond(above),
        over_limit_from: over_limit_from(road, setting, run),
        overspeed_from: overspeed_from(road, setting, run),
        lost_at: setting.then().map(|(cell, _)| place(road, cell)),
        without_safe_speed,
        stalled: run.stalled,
    }
}

fn place(road: &Road, point: usize) -> Metres {
    Metres(point as f64 * road.step_m())
}

fn over_limit_from(road: &Road, setting: &Setting, run: &Run) -> Option<Metres> {
    let limit = Celsius(setting.day.heat_limit_c);
    let grade = Grade(road.grades().first().copied().unwrap_or(0.0));
    if run.start.brakes.hottest_after_stop(setting.trip_on(0), run.start.speed, grade) > limit {
        return Some(Metres(0.0));
    }
    let first = run.samples.iter().position(|sample| sample.after_stop > limit)?;
    Some(place(road, first + 1))
}

fn overspeed_from(road: &Road, setting: &Setting, run: &Run) -> Option<Metres> {
    let truck = &setting.truck;
    // Rounding may put a speed at the very limit on either side of it.
    let highest = truck.highest_engine_speed() * (1.0 + 1e-9);
    let first = run.samples.iter().position(|it| truck.engine_speed(it.gear, it.speed) > highest)?;
    Some(place(road, first + 1))
}

/// Two rides differ noticeably from this difference of speed on, m/s (2 km/h). Assumed.
const OTHER_SPEED: f64 = 2.0 / 3.6;

/// Two rides differ noticeably from this difference of brake temperature on, K. Assumed.
const OTHER_HEAT: f64 = 20.0;

/// The first grid point at which two rides along one road differ noticeably: in gear, by 2 km/h or by 20 K of
/// the brakes. `None` where they differ nowhere.
#[must_use]
pub fn part_at(right: &RideLanes, wrong: &RideLanes) -> Option<usize> {
    let apart = |a: f32, b: f32, by: f64| f64::from((a - b).abs()) >= by;
    let points = right.points().min(wrong.points());
    (0..points).find(|&at| {
        right.gear[at] != wrong.gear[at]
            || apart(right.speed[at], wrong.speed[at], OTHER_SPEED)
            || apart(right.temperature[at], wrong.temperature[at], OTHER_HEAT)
    })
}

#[cfg(test)]
mod tests;
