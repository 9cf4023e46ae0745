//! The driver: what is done in one cell of the forward pass.

use super::drive::{cruising_gear, pulling_gear};
use super::forces::{Air, Trip};
use super::ledger::Ledger;
use super::step::{Hold, Sample, State};
use crate::constants::{SPEED_SLACK, WALKING_SPEED};
use crate::truck::{Gear, Stage};
use crate::units::{Grade, Joules, Metres, MetresPerSecond, Newtons};

/// Pull that a gear must have to spare before the driver shifts up to it. Assumed.
const PULL_TO_SPARE: f64 = 1.1;

/// One cell and what is asked there.
pub(super) struct Scene<'a> {
    pub(super) grade: Grade,
    pub(super) air: Air,
    pub(super) step: f64,
    pub(super) hold: Option<&'a Hold>,
    /// The next hold on the way.
    pub(super) ahead: Option<&'a Hold>,
    pub(super) cap: f64,
}

pub(super) struct Driver<'a> {
    pub(super) trip: Trip<'a>,
    pub(super) state: State,
    pub(super) ledger: Ledger,
    pub(super) stalled: bool,
}

impl Driver<'_> {
    /// Drives one cell.
    pub(super) fn step(&mut self, scene: &Scene<'_>) -> Sample {
        let gear = self.gear_for(scene);
        let next = self.next_speed(scene, gear);
        self.book(scene, gear, next)
    }

    /// A cell of which nothing is known: the brakes are not credited with cooling there, and
    /// nothing is booked.
    pub(super) fn stand_in(&self) -> Sample {
        let hottest = self.state.brakes.hottest(self.trip);
        Sample {
            speed: self.state.speed,
            gear: self.state.gear,
            to_hold: Newtons(0.0),
            hottest,
            after_stop: hottest,
            carried: 1.0,
        }
    }

    /// The gear of the hold; else one that suits what must be pulled or held, kept while it
    /// will do, so that the driver does not shift from one moment to the next.
    fn gear_for(&self, scene: &Scene<'_>) -> Gear {
        if let Some(hold) = scene.hold {
            return hold.gear;
        }
        let (trip, now) = (self.trip, self.state);
        if scene.cap < now.speed.0 {
            return self.gear_to_slow(scene);
        }
        let demand = trip.demand(now.speed, scene.grade, scene.air);
        if demand.0 > 0.0 { self.gear_to_hold(scene, demand) } else { self.gear_to_pull(-demand) }
    }

    /// Ahead of a hold: down through the gears as speed falls, to that of the hold, so that it
    /// is engaged before the crest.
    fn gear_to_slow(&self, scene: &Scene<'_>) -> Gear {
        let now = self.state;
        let lowest = self.trip.lowest_gear_within(now.speed, 1.0).unwrap_or(now.gear);
        scene.ahead.map_or(lowest, |hold| lowest.max(hold.gear))
    }

    fn gear_to_pull(&self, need: Newtons) -> Gear {
        let (truck, now) = (self.trip.truck, self.state);
        let engine = truck.engine_speed(now.gear, now.speed);
        let in_range = engine.0 >= truck.spec().lowest_rpm && engine <= truck.governed_speed();
        let pulls = truck.pulling_force(now.gear, now.speed) >= need;
        let wanted = cruising_gear(self.trip, now.speed, need * PULL_TO_SPARE);
        let far = wanted.number().abs_diff(now.gear.number()) >= 2;
        if in_range && pulls && !far { now.gear } else { wanted }
    }

    fn gear_to_hold(&self, scene: &Scene<'_>, demand: Newtons) -> Gear {
        let (trip, now) = (self.trip, self.state);
        let able = |gear: &Gear| {
            let engine = trip.truck.engine_speed(*gear, now.speed);
            (trip.truck.lowest_engine_speed(Stage::OFF)..=trip.truck.highest_engine_speed()).contains(&engine)
                && trip.retarding(*gear, now.speed, scene.grade, scene.air) >= demand
        };
        if able(&now.gear) {
            return now.gear;
        }
        let found = trip.truck.gears().rev().find(able);
        found.or_else(|| trip.lowest_gear_within(now.speed, 1.0)).unwrap_or(now.gear)
    }

    /// Speed at the end of the cell: as fast as full load brings it and the cap lets it; in a
    /// hold that the retarder does not manage, faster by the slack at most.
    fn next_speed(&mut self, scene: &Scene<'_>, gear: Gear) -> f64 {
        let (trip, v) = (self.trip, self.state.speed);
        let mass = trip.truck.rotating_factor(gear) * trip.truck.mass().0;
        let way = scene.step / scene.grade.sin_cos().1;
        let demand = trip.demand(v, scene.grade, scene.air);
        let reach = |force: f64| (v.0 * v.0 + 2.0 * force / mass * way).max(0.0).sqrt();
        let rolling = reach(demand.0);
        // On the throttle only where gravity alone does not bring it to the cap.
        let fastest =
            if rolling >= scene.cap { rolling } else { reach((demand + pulling_gear(trip, v).1).0) };
        if fastest < WALKING_SPEED {
            self.stalled = true;
        }
        let Some(hold) = scene.hold else {
            return fastest.min(scene.cap).max(WALKING_SPEED);
        };
        // The slack is for a hold that the retarder does not manage; nobody takes it into a curve.
        if fastest <= scene.cap || scene.cap < hold.speed.0 {
            return fastest.min(scene.cap).max(WALKING_SPEED);
        }
        let slowed = reach((demand - trip.retarding(gear, v, scene.grade, scene.air)).0);
        let overspeed = trip.truck.road_speed(gear, trip.truck.highest_engine_speed()).0;
        let slack = (hold.speed.0 + SPEED_SLACK).min(overspeed).max(scene.cap);
        slowed.clamp(scene.cap.min(fastest), slack.min(fastest))
    }

    /// Books the cell: what kept the truck at that pace, and the heat of it.
    fn book(&mut self, scene: &Scene<'_>, gear: Gear, next: f64) -> Sample {
        let (trip, v) = (self.trip, self.state.speed.0);
        let way = Metres(scene.step / scene.grade.sin_cos().1);
        let mean = MetresPerSecond(0.5 * (v + next));
        let time = way / mean;
        let mass = trip.truck.rotating_factor(gear) * trip.truck.mass().0;
        let kinetic = Joules(0.5 * mass * (next * next - v * v));
        let demand = trip.demand(mean, scene.grade, scene.air);
        // Positive: this much held the truck back. Negative: this much pulled it.
        let control = Newtons(demand.0 - kinetic.0 / way.0);
        let to_hold = Newtons(control.0.max(0.0));
        let able = trip.retarding(gear, mean, scene.grade, scene.air);
        let held = Newtons(to_hold.0.min(able.0));
        let braked = to_hold - held;
        let l = &mut self.ledger;
        l.gravity = l.gravity + trip.gravity(scene.grade) * way;
        l.rolling = l.rolling - trip.rolling(scene.grade) * way;
        l.air = l.air - trip.air_drag(mean, scene.air) * way;
        l.holding = l.holding - held * way;
        l.service = l.service - braked * way;
        l.pulling = l.pulling + Newtons((-control.0).max(0.0)) * way;
        l.kinetic = l.kinetic + kinetic;
        l.time = l.time + time;
        let brakes = self.state.brakes.after(trip, braked * mean, mean, time);
        self.state = State { speed: MetresPerSecond(next), gear, brakes };
        Sample {
            speed: self.state.speed,
            gear,
            to_hold,
            hottest: brakes.hottest(trip),
            after_stop: brakes.hottest_after_stop(trip, self.state.speed, scene.grade),
            carried: if to_hold.0 > 0.0 { held / to_hold } else { 1.0 },
        }
    }
}
