//! The driver: the decisions in one cell of the forward pass.

use super::drive::{cruising_gear, pull_in, pulling_gear};
use super::forces::{Air, Trip};
use super::fuel::fuel_power;
use super::ledger::Ledger;
use super::step::{Hold, Sample, Shift, State};
use crate::constants::{SNUB_TIME, SPEED_SLACK, WALKING_SPEED};
use crate::truck::{Gear, Stage, Warmth};
use crate::units::{Grade, Joules, Metres, MetresPerSecond, Newtons, Seconds, Watts};

/// The driver shifts up only to a gear with this much pull over the need. Assumed.
const PULL_TO_SPARE: f64 = 1.1;

/// At full load a gear is kept while it pulls at least this share of the best gear's pull. Assumed: steps of
/// common gearboxes are 1.2 to 1.4.
const NEAR_BEST: f64 = 0.75;

/// After a change the driver waits this long before shifting up for comfort, s. Assumed.
const DWELL_S: f64 = 10.0;

/// While slowing, a gear is kept down to this share of the highest engine speed. Each change interrupts the
/// retarder, so gears are skipped. Assumed.
const SLOW_IN_GEAR: f64 = 0.6;

/// At this share of its governed speed an engine gains no more speed. Assumed.
const REVVED_OUT: f64 = 0.97;

/// Above its lowest useful speed by this factor the engine is ready for a higher gear. Assumed.
const TURNS_AGAIN: f64 = 1.1;

/// Within this of its cap, m/s, the truck cruises.
const AT_CAP: f64 = 0.3;

/// One cell and what is asked there.
pub(super) struct Scene<'a> {
    pub(super) grade: Grade,
    pub(super) air: Air,
    pub(super) step: f64,
    pub(super) hold: Option<&'a Hold>,
    /// The hold that the driver prepares for.
    pub(super) ahead: Option<&'a Hold>,
    pub(super) cap: f64,
    /// What a curve or a posted limit allows at the end of the cell; the slack does not go beyond it.
    pub(super) bound: f64,
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
        if gear != self.state.gear {
            let demand = self.trip.demand(self.state.speed, scene.grade, scene.air);
            self.change_to(gear, demand.0 <= 0.0);
        }
        let next = self.next_speed(scene);
        self.book(scene, next)
    }

    /// The truck stands for a while, and the brakes cool.
    pub(super) fn rest(&mut self, time: Seconds) {
        let still = MetresPerSecond(0.0);
        self.state.brakes = self.state.brakes.after(self.trip, Watts(0.0), still, time);
        self.ledger.time = self.ledger.time + time;
    }

    /// A sample for a cell of which nothing is known: the brakes are not credited with cooling, and nothing
    /// is booked.
    pub(super) fn stand_in(&self) -> Sample {
        let hottest = self.state.brakes.hottest(self.trip);
        Sample {
            speed: self.state.speed,
            gear: self.state.gear,
            to_hold: Newtons(0.0),
            pull: Newtons(0.0),
            hottest,
            after_stop: hottest,
            carried: 1.0,
            time: self.ledger.time,
        }
    }

    /// The gear of the hold; elsewhere a gear that suits what must be pulled or held. It is kept as long as
    /// it is good enough, so that the driver does not hunt.
    fn gear_for(&self, scene: &Scene<'_>) -> Gear {
        let (trip, now) = (self.trip, self.state);
        if let Some(hold) = scene.hold {
            return self.gear_in_hold(hold);
        }
        if now.shift.open.0 > 0.0 {
            return now.gear;
        }
        let demand = trip.demand(now.speed, scene.grade, scene.air);
        if scene.cap < now.speed.0 {
            return if demand.0 > 0.0 || scene.ahead.is_some() {
                self.gear_to_slow(scene)
            } else {
                // Uphill: the gear that will pull at the lower speed, changed to once.
                self.gear_to_pull_at(MetresPerSecond(scene.cap.max(WALKING_SPEED)))
            };
        }
        let suits =
            if demand.0 > 0.0 { self.gear_to_hold(scene, demand) } else { self.gear_to_pull(scene, -demand) };
        // The driver does not shift up on the last metres before a change down.
        scene.ahead.map_or(suits, |hold| suits.min(now.gear.max(hold.gear)))
    }

    /// The gear of the hold. In a bend too slow for it, the highest gear in which the engine still turns,
    /// until the truck is faster again.
    fn gear_in_hold(&self, hold: &Hold) -> Gear {
        let (truck, now) = (self.trip.truck, self.state);
        let back = if now.gear < hold.gear { TURNS_AGAIN } else { 1.0 };
        let lowest = truck.lowest_engine_speed(Stage::OFF);
        let turns = |gear: Gear, more: f64| truck.engine_speed(gear, now.speed) >= lowest * more;
        if turns(hold.gear, back) {
            return hold.gear;
        }
        let mut below = truck.gears().filter(|gear| *gear < hold.gear).rev();
        let slower = below.find(|gear| turns(*gear, if *gear > now.gear { back } else { 1.0 }));
        slower.or_else(|| truck.gears().next()).unwrap_or(hold.gear)
    }

    /// Changes gear. A change while pulling costs time on the clock, not speed: on cells of ten metres an
    /// interrupted pull would make a crawling truck hunt. A change while holding leaves the work to the
    /// service brakes until the retarder is back.
    fn change_to(&mut self, gear: Gear, pulling: bool) {
        let spec = self.trip.truck.spec();
        let open = spec.transmission.shift_time();
        let changed = Shift { since: Seconds(0.0), ..Shift::NONE };
        self.state.gear = gear;
        self.state.shift = if pulling {
            self.ledger.time = self.ledger.time + open;
            changed
        } else {
            Shift { open, delay: open + Seconds(spec.retarder_delay_s), ..changed }
        };
    }

    /// Slowing with the retarder: down in few steps, never below the gear of the hold ahead. That gear is
    /// engaged as soon as the engine speed allows it.
    fn gear_to_slow(&self, scene: &Scene<'_>) -> Gear {
        let (trip, now) = (self.trip, self.state);
        let lowest = trip.lowest_gear_within(now.speed, 1.0).unwrap_or(now.gear);
        let wanted = scene.ahead.map_or(lowest, |hold| lowest.max(hold.gear));
        let engine = trip.truck.engine_speed(now.gear, now.speed);
        let kept = engine >= trip.truck.highest_engine_speed() * SLOW_IN_GEAR && now.gear > wanted;
        let engages = scene.ahead.is_some_and(|hold| wanted == hold.gear);
        if kept && !engages { now.gear } else { wanted }
    }

    /// The gear that pulls most at a speed, or the present one while it pulls nearly as much.
    fn gear_to_pull_at(&self, speed: MetresPerSecond) -> Gear {
        let (best, most) = pulling_gear(self.trip, speed);
        let now = self.state.gear;
        if pull_in(self.trip, now, speed).0 >= NEAR_BEST * most.0 { now } else { best }
    }

    /// At full load the gear that pulls most, changed only where another pulls clearly more; at the cap the
    /// highest that is enough.
    fn gear_to_pull(&self, scene: &Scene<'_>, need: Newtons) -> Gear {
        let (trip, now) = (self.trip, self.state);
        let engine = trip.truck.engine_speed(now.gear, now.speed);
        if now.speed.0 < scene.cap - AT_CAP {
            if engine >= trip.truck.governed_speed() * REVVED_OUT {
                // Up into the next gear that still climbs; without one the engine stays revved out.
                let pulls = |gear: &Gear| trip.truck.pulling_force(*gear, now.speed) > need;
                let next = trip.truck.gears().filter(|gear| *gear > now.gear).find(pulls);
                return next.unwrap_or(now.gear);
            }
            return self.gear_to_pull_at(now.speed);
        }
        let in_range = engine.0 >= trip.truck.spec().lowest_rpm && engine <= trip.truck.governed_speed();
        let pulls = trip.truck.pulling_force(now.gear, now.speed) >= need;
        let wanted = cruising_gear(trip, now.speed, need * PULL_TO_SPARE);
        let far = wanted.number().abs_diff(now.gear.number()) >= 2;
        let early = now.shift.since.0 < DWELL_S;
        if in_range && pulls && (!far || early) { now.gear } else { wanted }
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

    /// Shares of a cell during which a gear change leaves the engine uncoupled, and during which a retarder
    /// at the engine is not back yet.
    fn away(&self, scene: &Scene<'_>, speed: MetresPerSecond) -> (f64, f64) {
        let shift = self.state.shift;
        let time = scene.step / speed.0.max(WALKING_SPEED);
        let share = |left: Seconds| (left.0 / time).min(1.0);
        (share(shift.open), share(shift.delay))
    }

    /// Force that holds back without the service brakes: the whole, or what a gear change leaves of it.
    fn able(&self, scene: &Scene<'_>, speed: MetresPerSecond) -> Newtons {
        let State { gear, retarder, .. } = self.state;
        let trip = self.trip;
        let full = trip.retarding_as_warm(gear, speed, scene.grade, scene.air, retarder);
        let (open, delayed) = self.away(scene, speed);
        if delayed <= 0.0 {
            return full;
        }
        let motoring = trip.holding(gear, Stage::OFF, speed, scene.air);
        if trip.truck.spec().retarder.is_at_engine() {
            full * (1.0 - delayed) + motoring * (delayed - open)
        } else {
            full - motoring * open
        }
    }

    /// Speed at the end of the cell, limited by full load and the cap. In a hold that the retarder cannot
    /// keep, the truck may be faster by the slack.
    fn next_speed(&mut self, scene: &Scene<'_>) -> f64 {
        let (trip, State { speed: v, gear, .. }) = (self.trip, self.state);
        let mass = trip.truck.inertial_mass(gear).0;
        let way = scene.step / scene.grade.sin_cos().1;
        let reach = |force: f64| (v.0 * v.0 + 2.0 * force / mass * way).max(0.0).sqrt();
        // Air drag is taken in the middle of the cell: that makes the step exact to second order.
        let demand = |force: f64| {
            let middle = MetresPerSecond(0.5 * (v.0 + reach(force)));
            trip.demand(middle, scene.grade, scene.air).0
        };
        let first = trip.demand(v, scene.grade, scene.air).0;
        let rolling = reach(demand(first));
        // The driver uses the throttle only where gravity alone does not bring the truck to the cap.
        let fastest = if rolling >= scene.cap {
            rolling
        } else {
            let pull = pull_in(trip, gear, v).0;
            let governed = trip.truck.road_speed(gear, trip.truck.governed_speed()).0;
            reach(demand(first + pull) + pull).min(governed.max(rolling).max(v.0))
        };
        if fastest < WALKING_SPEED {
            self.stalled = true;
        }
        let Some(hold) = scene.hold else {
            return fastest.min(scene.cap).max(WALKING_SPEED);
        };
        if let Some(to) = hold.snub.filter(|_| scene.cap >= hold.speed.0) {
            let pushing = first - self.able(scene, v).0;
            if pushing > 0.0 {
                return self.snub(hold.speed, to, way, reach(pushing));
            }
            self.state.snubbing = false;
        }
        // The slack is for a hold that the retarder cannot keep; it is not taken into a curve.
        if fastest <= scene.cap || scene.cap < hold.speed.0 {
            return fastest.min(scene.cap).max(WALKING_SPEED);
        }
        let held = first - self.able(scene, v).0;
        // The retarder does not slow the truck below the cap: at half of a slow speed the engine would turn
        // too slowly to hold at all.
        let lowest = scene.cap.min(fastest);
        let middle = MetresPerSecond(0.5 * (v.0 + reach(held).max(lowest)));
        let slowed = reach(demand(held) - self.able(scene, middle).0);
        let overspeed = trip.truck.road_speed(gear, trip.truck.highest_engine_speed()).0;
        let slack = (hold.speed.0 + SPEED_SLACK).min(overspeed).min(scene.bound).max(scene.cap);
        slowed.clamp(lowest, slack.min(fastest))
    }

    /// Speed at the end of a cell in which the service brakes are used in snubs: down in one go, then
    /// released until the truck is back at its speed.
    fn snub(&mut self, hold: MetresPerSecond, to: MetresPerSecond, way: f64, rolled: f64) -> f64 {
        let v = self.state.speed.0;
        let begins = v >= hold.0 * (1.0 - 1e-9);
        if !(self.state.snubbing || begins) {
            return rolled.min(hold.0);
        }
        let slowing = (hold.0 - to.0) / SNUB_TIME;
        let next = (v * v - 2.0 * slowing * way).max(0.0).sqrt();
        self.state.snubbing = next > to.0;
        next.max(to.0)
    }

    /// Passes a cell of which only the ends are known. The work that a hold leaves to the service brakes
    /// there warms them, and nothing cools them.
    pub(super) fn pass_unknown(&mut self, scene: &Scene<'_>) {
        if scene.hold.is_none() {
            return;
        }
        let speed = self.state.speed;
        let lacking = self.trip.demand(speed, scene.grade, scene.air) - self.able(scene, speed);
        if lacking.0 > 0.0 {
            let time = Metres(scene.step) / speed;
            let warmed = self.state.brakes.after(self.trip, lacking * speed, speed, time);
            self.state.brakes = self.state.brakes.at_least(warmed);
        }
    }

    /// Books the cell: the forces that gave the truck this speed, and their heat.
    fn book(&mut self, scene: &Scene<'_>, next: f64) -> Sample {
        let (trip, v, gear) = (self.trip, self.state.speed.0, self.state.gear);
        let way = Metres(scene.step / scene.grade.sin_cos().1);
        let mean = MetresPerSecond(0.5 * (v + next));
        let time = way / mean;
        let mass = trip.truck.inertial_mass(gear).0;
        let kinetic = Joules(0.5 * mass * (next * next - v * v));
        let demand = trip.demand(mean, scene.grade, scene.air);
        // Positive: the truck was held back with this force. Negative: it was pulled.
        let control = Newtons(demand.0 - kinetic.0 / way.0);
        let to_hold = Newtons(control.0.max(0.0));
        let pull = Newtons((-control.0).max(0.0));
        let held = Newtons(to_hold.0.min(self.able(scene, mean).0));
        let braked = to_hold - held;
        let l = &mut self.ledger;
        l.gravity = l.gravity + trip.gravity(scene.grade) * way;
        l.rolling = l.rolling - trip.rolling(scene.grade) * way;
        l.air = l.air - trip.air_drag(mean, scene.air) * way;
        l.holding = l.holding - held * way;
        l.service = l.service - braked * way;
        l.pulling = l.pulling + pull * way;
        l.fuel = l.fuel + fuel_power(trip, gear, mean, pull) * time;
        l.kinetic = l.kinetic + kinetic;
        l.time = l.time + time;
        let brakes = self.state.brakes.after(trip, braked * mean, mean, time);
        let retarder = self.warmed(scene, held, mean, time);
        let shift = self.state.shift.after(time);
        self.state = State { speed: MetresPerSecond(next), gear, brakes, retarder, shift, ..self.state };
        Sample {
            speed: self.state.speed,
            gear,
            to_hold,
            pull,
            hottest: brakes.hottest(trip),
            after_stop: brakes.hottest_after_stop(trip, self.state.speed, scene.grade),
            carried: if to_hold.0 > 0.0 { held / to_hold } else { 1.0 },
            time: self.ledger.time,
        }
    }

    /// How warm the retarder on the shaft becomes. The holding force beyond motoring is shared with a brake
    /// at the engine in proportion to their full forces.
    fn warmed(&self, scene: &Scene<'_>, held: Newtons, speed: MetresPerSecond, time: Seconds) -> Warmth {
        let State { gear, retarder: from, .. } = self.state;
        let truck = self.trip.truck;
        if truck.spec().retarder.driveline().is_none() {
            return from;
        }
        let force = |stage| truck.holding_force(gear, stage, speed, scene.air.ambient, from).0;
        let (off, full) = (force(Stage::OFF), force(truck.full_stage()));
        let share = if full > off { ((held.0 - off) / (full - off)).clamp(0.0, 1.0) } else { 0.0 };
        let power = truck.shaft_power(gear, truck.full_stage(), speed, scene.air.ambient, from) * share;
        truck.warmed(from, power, truck.engine_speed(gear, speed), scene.air.ambient, time)
    }
}
