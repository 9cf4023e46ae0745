//! One candidate: a gear at a speed, what it has to spare, driven down, and told.

use super::answer::{Advice, Choice, Governs, Snub, Verdict};
use super::ask::{Ask, Chosen};
use super::margin::{HOLD_SHARE, Point, best_gear, least_margin, turns_over};
use super::stages::stage_spans;
use crate::constants::MPH;
use crate::motion::{Hold, Run};
use crate::truck::{Gear, Stage};
use crate::units::{Celsius, Joules, MetresPerSecond, Newtons, Seconds};

/// Share of the demand on the steepest sustained grade that engine and retarder must carry
/// even where snubs are allowed. Assumed: on a short steep hill the heat limit alone would let
/// the service brakes do nearly all of it, at the speed limit, and practice does not.
const LEAST_CARRIED: f64 = 0.5;

/// A snub takes 5 mph off the speed (printed in the US licence manual)…
const SNUB_BY: f64 = 5.0 * MPH;

/// …in about 3 s.
const SNUB_TIME: f64 = 3.0;

/// Share of the braking work on the way down that the service brakes may take where the retarder is said
/// to hold: changing gear at the crest, short steep bits, slowing for a hairpin. Assumed.
pub(super) const MOST_SERVICE: f64 = 0.25;

/// How much is asked of a candidate.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Demanding {
    /// The retarder holds with this much to spare.
    Margin(f64),
    /// The service brakes may help.
    ServiceBrakes,
}

/// What rules speeds out, from fast to slow.
pub(super) struct Ruled {
    pub(super) last: Governs,
    /// A posted limit ruled out a speed that would have done without it.
    pub(super) posted: bool,
}

impl Ruled {
    pub(super) fn out(&mut self, by: Governs) {
        self.last = by;
        self.posted |= by == Governs::Posted;
    }

    /// What keeps the speed found from being higher.
    pub(super) fn governs(&self) -> Governs {
        if self.posted { Governs::Posted } else { self.last }
    }
}

/// A gear at a speed and what it has to spare on the steepest sustained grade, or where a posted
/// limit asks for less speed and leaves it less.
#[derive(Clone, Copy)]
pub(super) struct Candidate {
    pub(super) gear: Gear,
    pub(super) speed: MetresPerSecond,
    pub(super) margin: f64,
    pub(super) least: Point,
}

/// The way down of one candidate.
pub(super) struct Driven {
    pub(super) to_crest: Run,
    pub(super) down: Run,
}

impl Driven {
    /// Share of the work on the way down that the service brakes take.
    pub(super) fn service_share(&self) -> f64 {
        let (held, braked) = (-self.down.ledger.holding.0, -self.down.ledger.service.0);
        if held + braked > 0.0 { braked / (held + braked) } else { 0.0 }
    }

    pub(super) fn fastest(&self) -> MetresPerSecond {
        MetresPerSecond(self.down.samples.iter().map(|sample| sample.speed.0).fold(0.0, f64::max))
    }
}

impl Ask<'_> {
    /// The slowest that a curve or a posted limit asks for.
    pub(super) fn slowest(&self) -> MetresPerSecond {
        MetresPerSecond(self.slowest_curve.0.min(self.slowest_posted().0))
    }

    pub(super) fn slippery(&self) -> bool {
        self.trip.day.retarding_share() <= 0.0
    }

    /// What must be held: the hold speed on the steepest sustained grade, each lower limit that is
    /// posted on the way on the steepest grade there, and what lies at its ends steeper than a road
    /// is believed to be. A retarder at the engine holds less in the same gear at less speed.
    pub(super) fn points(&self, speed: MetresPerSecond) -> Vec<Point> {
        let mut points = vec![Point { speed, grade: self.sustained(speed).grade }];
        points.extend(self.posted().filter(|limit| limit.speed() < speed).map(|limit| {
            let speed = limit.speed();
            Point { speed, grade: self.sustained_between(limit.from, limit.to, speed).grade }
        }));
        points.extend(self.beyond.map(|grade| Point { speed, grade }));
        points
    }

    /// The highest gear that is good enough at this speed. Where there is none: the gear that
    /// holds most if the service brakes may help, else nothing, and `ruled` says why.
    pub(super) fn candidate(
        &self,
        speed: MetresPerSecond,
        demanding: Demanding,
        ruled: &mut Ruled,
    ) -> Option<Candidate> {
        if self.mostly_posted(speed) {
            ruled.out(Governs::Posted);
            return None;
        }
        let points = self.points(speed);
        let air = self.trip.air(self.stretch.highest);
        let wanted = match demanding {
            Demanding::Margin(margin) => margin,
            Demanding::ServiceBrakes => self.trip.day.reserve,
        };
        let slowest = MetresPerSecond(self.slowest().0.min(speed.0));
        if let Some((gear, least, margin)) = best_gear(self.trip, &points, air, wanted, slowest) {
            return Some(Candidate { gear, speed, margin, least });
        }
        let strongest = self.trip.lowest_gear_within(speed, HOLD_SHARE)?;
        if !turns_over(self.trip, strongest, slowest) {
            let posted = self.slowest_posted() < self.slowest_curve;
            ruled.out(if posted { Governs::Posted } else { Governs::Curve });
            return None;
        }
        let (least, margin) = least_margin(self.trip, strongest, &points, air);
        // Nobody should snub on snow or ice, whatever the heat limit says.
        let slippery = self.slippery();
        if demanding == Demanding::ServiceBrakes && !slippery && margin >= LEAST_CARRIED - 1.0 {
            return Some(Candidate { gear: strongest, speed, margin, least });
        }
        if best_gear(self.trip, &points[..1], air, wanted, slowest).is_some() {
            ruled.out(Governs::Posted);
            return None;
        }
        let full = self.trip.holding(strongest, self.trip.strongest_stage(), speed, air);
        let demand = self.trip.demand(speed, points[0].grade, air);
        let by_grip = slippery || full >= demand * (1.0 + wanted);
        ruled.out(if by_grip { Governs::Grip } else { Governs::Control });
        None
    }

    /// Drives a candidate to the crest and down; `None` where brake heat would pass `limit`.
    pub(super) fn drive(&self, candidate: Candidate, limit: Celsius) -> Option<Driven> {
        let hold = self.hold(candidate);
        let (trip, road) = (self.trip, self.road);
        let to_crest = Run::along(trip, road, self.approach.at, hold.from, &[hold], self.approach.state);
        let down = Run::within(trip, road, hold.from, hold.to, &[hold], to_crest.end, limit)?;
        Some(Driven { to_crest, down })
    }

    pub(super) fn hold(&self, candidate: Candidate) -> Hold {
        let Candidate { gear, speed, .. } = candidate;
        Hold { from: self.stretch.from, to: self.stretch.to, gear, speed }
    }

    pub(super) fn advise(&self, candidate: Candidate, driven: &Driven, governs: Governs) -> Chosen {
        let hold = self.hold(candidate);
        let verdict = if driven.service_share() > MOST_SERVICE {
            Verdict::NeedsServiceBrakes
        } else if candidate.margin >= self.trip.day.reserve {
            Verdict::RetarderHolds
        } else if candidate.margin >= 0.0 {
            Verdict::LittleInReserve
        } else {
            Verdict::NeedsServiceBrakes
        };
        let strongest = stage_spans(self.trip, self.road, &hold).iter().map(|span| span.stage).max();
        let advice = Advice {
            verdict,
            gear: candidate.gear,
            stage: strongest.unwrap_or(Stage::OFF),
            speed: candidate.speed,
            engine_speed: self.trip.truck.engine_speed(candidate.gear, candidate.speed),
            margin: candidate.margin,
            governs,
            hottest: driven.down.hottest(),
            hottest_after_stop: driven.down.hottest_after_stop(),
            holding_work: -driven.down.ledger.holding,
            service_work: -driven.down.ledger.service,
            time: driven.down.ledger.time,
            snub: self.snub(candidate, -driven.down.ledger.service),
        };
        Chosen {
            choice: Choice::Held(advice),
            hold,
            brakes_at_crest: driven.to_crest.end.brakes.hottest(self.trip),
        }
    }

    /// Snubs where the retarder does not hold and has least to spare; so many that
    /// together they do `work`, what the service brakes take on the way down.
    pub(super) fn snub(&self, candidate: Candidate, work: Joules) -> Option<Snub> {
        if candidate.margin >= 0.0 {
            return None;
        }
        let Candidate { gear, least: Point { speed, grade }, .. } = candidate;
        let to = MetresPerSecond((speed.0 - SNUB_BY).max(0.5 * speed.0));
        let air = self.trip.air(self.stretch.highest);
        let mass = self.trip.truck.inertial_mass(gear).0;
        let demand = self.trip.demand(speed, grade, air);
        let held = self.trip.retarding(gear, speed, grade, air);
        let pushing = (demand - held).0;
        let braking = Newtons(pushing + mass * (speed - to).0 / SNUB_TIME);
        let each = braking * ((speed + to) * 0.5) * Seconds(SNUB_TIME);
        let count = (work / each).ceil().max(1.0);
        let off = Seconds((speed - to).0 * mass / pushing);
        Some(Snub { from: speed, to, on: Seconds(SNUB_TIME), off, count: count as u32 })
    }
}
