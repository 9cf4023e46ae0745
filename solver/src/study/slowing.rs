//! Slowing for what lies ahead: where to lift off so that the retarder alone is enough.

use crate::constants::SERVICE_SLOWING;
use crate::motion::{Run, State, Trip};
use crate::plan::Plan;
use crate::road::{Place, PlaceKind, Road};
use crate::truck::Gear;
use crate::units::{Celsius, Grade, Joules, Metres, MetresPerSecond};
use serde::{Deserialize, Serialize};

/// Speed in a village or town where nothing is posted in the file, km/h. Assumed; signs decide.
const TOWN_KMH: f64 = 50.0;

/// A lower speed is told where it is lower by at least this, m/s (10 km/h).
const WORTH_TELLING: f64 = 10.0 / 3.6;

/// A curve governs where the plan comes within this of the curve's speed, m/s.
const AT_ITS_CAP: f64 = 0.3;

/// Most entries that are told for one road.
const MOST: usize = 60;

/// Largest distance from a place within which the point of lifting off is sought, m.
const FARTHEST_M: f64 = 4_000.0;

/// A reason for a lower speed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum SlowFor {
    /// A curve of this radius, m.
    Curve(f64),
    /// A posted limit.
    Limit,
    /// A place of the file where a stop may be needed.
    Stop(String),
    /// A village or town.
    Town(String),
    /// A brake check where the truck stops.
    BrakeCheck(String),
}

/// How to slow for one place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Slowing {
    /// Reason for slowing.
    pub what: SlowFor,
    /// Where it begins, from the start of the road.
    pub at: Metres,
    /// Speed there; zero for a stop.
    pub to: MetresPerSecond,
    /// Gear.
    pub gear: Gear,
    /// Where to lift off so that the full stage alone slows the truck, and the speed there. `None` where the
    /// hill is stronger, or the place too near.
    pub lift_off: Option<(Metres, MetresPerSecond)>,
    /// For a stop: the speed at which the retarder cuts out and the service brakes take over.
    pub cut_out: Option<MetresPerSecond>,
    /// Distance that the service brakes alone need, at half a metre per second squared.
    pub brakes_need: Metres,
    /// Hottest brakes after slowing.
    pub brakes_after: Celsius,
}

/// All entries for a road, in its order.
pub(super) fn all(trip: Trip<'_>, road: &Road, plan: &Plan, run: &Run, states: &[State]) -> Vec<Slowing> {
    let ahead = Ahead { trip, road, run, states };
    let curves =
        plan.curves.iter().map(|slow| (slow.curve.from, slow.speed, SlowFor::Curve(slow.curve.radius_m)));
    let limits = road.limits().iter().map(|limit| (limit.from, limit.speed(), SlowFor::Limit));
    let places = road.places().iter().filter_map(asked_by);
    let mut asked: Vec<(usize, MetresPerSecond, SlowFor)> = Vec::new();
    for it in curves.chain(limits).chain(places) {
        let at = asked.partition_point(|other| other.0 <= it.0);
        asked.insert(at, it);
    }
    let told = asked.into_iter().filter_map(|(at, to, what)| ahead.slowing(at, to, what));
    told.take(MOST).collect()
}

fn asked_by(place: &Place) -> Option<(usize, MetresPerSecond, SlowFor)> {
    let stand = MetresPerSecond(0.0);
    let name = || place.name.clone();
    match place.kind {
        PlaceKind::Stop => Some((place.index, stand, SlowFor::Stop(name()))),
        PlaceKind::BrakeCheck => Some((place.index, stand, SlowFor::BrakeCheck(name()))),
        PlaceKind::Settlement => {
            Some((place.index, MetresPerSecond::from_kmh(TOWN_KMH), SlowFor::Town(name())))
        }
        PlaceKind::Summit
        | PlaceKind::EscapeRamp
        | PlaceKind::Parking
        | PlaceKind::Tunnel
        | PlaceKind::Bridge
        | PlaceKind::Danger
        | PlaceKind::ChainUp
        | PlaceKind::QuietZone
        | PlaceKind::Exit
        | PlaceKind::Other => None,
    }
}

struct Ahead<'a> {
    trip: Trip<'a>,
    road: &'a Road,
    run: &'a Run,
    states: &'a [State],
}

impl Ahead<'_> {
    fn slowing(&self, at: usize, to: MetresPerSecond, what: SlowFor) -> Option<Slowing> {
        let (trip, road) = (self.trip, self.road);
        let reach = (FARTHEST_M / road.step_m()) as usize;
        let first = at.saturating_sub(reach);
        let before = match what {
            SlowFor::Curve(_) | SlowFor::Limit => self.peak_before(first, at, to)?,
            // The plan drives past a place at its own speed.
            SlowFor::Stop(_) | SlowFor::Town(_) | SlowFor::BrakeCheck(_) => at.checked_sub(1)?,
        };
        let from = self.run.samples[before].speed;
        if from.0 < to.0 + WORTH_TELLING {
            return None;
        }
        if (first..at).any(|cell| !road.assessed()[cell]) {
            return None;
        }
        let gear = trip.lowest_gear_within(from, 1.0)?;
        let gear = gear.max(self.states[at - 1].gear);
        let off_at = trip.truck.road_speed(gear, trip.truck.lowest_engine_speed(trip.truck.full_stage()));
        let cut_out = (off_at > to).then_some(off_at);
        let mass = trip.truck.mass().0;
        let need = Metres((from.0 * from.0 - to.0 * to.0) / (2.0 * SERVICE_SLOWING));
        let grade = Grade(road.mean_grade(at.saturating_sub((need.0 / road.step_m()) as usize), at));
        let hill = trip.gravity(grade).0.max(0.0) * need.0;
        let work = Joules(0.5 * mass * (from.0 * from.0 - to.0 * to.0) + hill);
        let brakes = self.states[before].brakes;
        Some(Slowing {
            what,
            at: Metres(at as f64 * road.step_m()),
            to,
            gear,
            lift_off: self.lift_off((before, at), cut_out.unwrap_or(to), to, gear, from),
            cut_out,
            brakes_need: need,
            brakes_after: brakes.hottest_with(trip, work),
        })
    }

    /// For a curve or a limit, which the plan slows for by itself: where it was fastest just before. `None`
    /// where something else already keeps it slower there.
    fn peak_before(&self, first: usize, at: usize, to: MetresPerSecond) -> Option<usize> {
        let speed = |cell: usize| self.run.samples[cell].speed.0;
        let last = at.checked_sub(1)?;
        if speed(last) < to.0 - AT_ITS_CAP {
            return None;
        }
        let mut peak = last;
        while peak > first && speed(peak - 1) >= speed(peak) {
            peak -= 1;
        }
        Some(peak)
    }

    /// Backwards from the place: first the service brakes' part, then the full stage, until the plan's speed
    /// is met.
    fn lift_off(
        &self,
        (before, at): (usize, usize),
        held_to: MetresPerSecond,
        to: MetresPerSecond,
        gear: Gear,
        from: MetresPerSecond,
    ) -> Option<(Metres, MetresPerSecond)> {
        let (trip, road) = (self.trip, self.road);
        let braked = (held_to.0 * held_to.0 - to.0 * to.0).max(0.0) / (2.0 * SERVICE_SLOWING);
        let mut cell = at.checked_sub((braked / road.step_m()).ceil() as usize)?;
        let last = at.saturating_sub((FARTHEST_M / road.step_m()) as usize);
        let mass = trip.truck.inertial_mass(gear).0;
        let mut speed = held_to.0;
        while cell > last {
            cell -= 1;
            let (grade, air) = (Grade(road.grades()[cell]), trip.air_on(road, cell));
            let now = MetresPerSecond(speed);
            let slowing = (trip.retarding(gear, now, grade, air) - trip.demand(now, grade, air)).0 / mass;
            if slowing <= 0.0 {
                return None;
            }
            let way = road.step_m() / grade.sin_cos().1;
            speed = (speed * speed + 2.0 * slowing * way).sqrt();
            // From its fastest point on the plan slows by itself, perhaps with the service brakes.
            let planned = if cell > before { from.0 } else { self.run.samples[cell].speed.0.min(from.0) };
            if speed >= planned {
                return Some((Metres(cell as f64 * road.step_m()), MetresPerSecond(planned)));
            }
        }
        None
    }
}
