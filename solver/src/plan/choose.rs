//! Choosing the way down one descent, by driving it.
//!
//! Of all ways, the fastest is taken that holds, that the road lets the truck reach, and whose drive keeps
//! the brakes below the limit with one hard stop in hand.

use super::answer::{Governs, Verdict};
use super::approach::Approach;
use super::ask::{Ask, Way};
use super::describe::proof;
use super::drive::{Ahead, Driven};
use super::ladder::SLOWEST_KMH;
use super::legs::{Part, legs};
use super::none::{FallsShort, NoSafeSpeed};
use super::ways::{Proof, Touch};
use crate::constants::MPH;
use crate::day::{Lead, Surface};
use crate::motion::{Hold, State};
use crate::truck::Gear;
use crate::units::{Celsius, MetresPerSecond, Newtons};

/// Slowest speed at which snubs are recommended on a public road, km/h. Assumed.
const SLOWEST_SNUB_KMH: f64 = 20.0;

/// A snub takes 5 mph off the speed (printed in the US licence manual).
const SNUB_BY: f64 = 5.0 * MPH;

/// With snubs no speed is told above this multiple of the speed told without. Assumed: a driver who may use
/// the brakes goes somewhat faster, not many times as fast. With heat as the only bound, 36 t with an
/// electromagnetic retarder would go 80 km/h where it holds 10.
const MOST_BY_SNUBS: f64 = 4.0;

/// Up to this speed, km/h, heat alone bounds the snubs: type approval lets brakes hold a truck at 30 km/h
/// down 6 km of −6 % (R13).
const SNUBBED_ANYWAY_KMH: f64 = 30.0;

/// Share of the braking work on the way down that the service brakes may take where the retarder is said to
/// hold. It covers changing gear at the crest, short steep bits and slowing for a hairpin. Assumed.
pub(super) const MOST_SERVICE: f64 = 0.25;

/// Largest warming of the brakes by pitches, K, on a way that the retarder is said to hold. Assumed.
const TOUCHES_K: f64 = 60.0;

/// Brakes that come cold are warmed by no more than this, K, on such a way, with all that they do: slowing for
/// curves and pitches, cooling between. Brakes that come hot cool on the way and would take more; that is no
/// reason to go faster. Assumed.
const WARMS_K: f64 = 100.0;

/// How often legs are found again, slower where their drive failed. Assumed.
const TRIES: usize = 16;

/// What was chosen.
pub(super) enum Chosen {
    Down(Down),
    /// How close the slowest try came, and the state in which it ends.
    None(NoSafeSpeed, State),
}

/// A way down that was driven.
pub(super) struct Down {
    pub(super) way: Way,
    /// Its legs; empty where one gear is kept.
    pub(super) parts: Vec<Part>,
    pub(super) driven: Driven,
    /// Stretches on which the retarder alone does not hold the truck.
    pub(super) touches: Vec<Touch>,
    /// Warming of the brakes by these touches, K.
    pub(super) touched_k: f64,
}

impl Chosen {
    pub(super) fn holds(&self, ask: &Ask<'_>) -> Vec<Hold> {
        match self {
            Self::Down(down) => down.driven.holds.clone(),
            Self::None(none, _) => vec![ask.hold(none.gear, none.slowest, None)],
        }
    }
}

impl Ask<'_> {
    /// The holds with which the descent would be driven, heat left aside: what lies ahead of the descent
    /// before.
    pub(super) fn expected(&self) -> Vec<Hold> {
        let way = self.held().next().or_else(|| self.in_need().next());
        way.map(|way| self.hold(way.gear, way.speed, None)).into_iter().collect()
    }

    /// The way down that help from the service brakes makes faster; `None` where it makes none faster.
    pub(super) fn with_snubs(&self, approach: &Approach, ahead: &Ahead, reserve: &Chosen) -> Option<Chosen> {
        let limit = Celsius(self.trip.day.heat_limit_c);
        // Nobody should snub on snow or ice, whatever the heat limit says.
        if self.trip.day.retarding_share() <= 0.0 || self.reach.slowest_curve.kmh() < SLOWEST_KMH {
            return None;
        }
        let least = match reserve {
            Chosen::Down(down) => down.way.speed,
            Chosen::None(..) => MetresPerSecond(0.0),
        };
        let most = self.snubbed_without_limits(approach, ahead, limit);
        let most =
            MetresPerSecond(most.0.min((least.0 * MOST_BY_SNUBS).max(SNUBBED_ANYWAY_KMH / 3.6 + 1e-9)));
        let snubbed = self.snubbed(approach, ahead, limit, (least, most))?;
        // A faster speed in one gear may still take longer to the foot than legs.
        let sooner = match reserve {
            Chosen::Down(down) => snubbed.driven.figures.time.0 < down.driven.figures.time.0,
            Chosen::None(..) => true,
        };
        sooner.then_some(Chosen::Down(snubbed))
    }

    /// The fastest speed with snubs if no limits were posted. A posted limit must not make the speed elsewhere
    /// faster, as the cooler brakes behind it would.
    fn snubbed_without_limits(&self, approach: &Approach, ahead: &Ahead, limit: Celsius) -> MetresPerSecond {
        let any = (MetresPerSecond(0.0), MetresPerSecond(f64::INFINITY));
        if self.posted.is_empty() {
            return any.1;
        }
        let road = self.road.without_limits();
        let open = Ask::of(self.trip, &road, self.hill.ground, self.stretch);
        let snubbed = open.snubbed(approach, ahead, limit, any).map(|down| down.way.speed);
        snubbed.or_else(|| open.held().next().map(|way| way.speed)).unwrap_or(any.1)
    }

    /// The way with the service brakes in reserve, in legs where it may be.
    pub(super) fn in_reserve(&self, approach: &Approach, ahead: &Ahead, in_legs: bool) -> Chosen {
        let limit = Celsius(self.trip.day.heat_limit_c);
        if self.reach.slowest_curve.kmh() < SLOWEST_KMH {
            return self.none(approach, ahead, Governs::Curve);
        }
        let lead = self.trip.day.lead;
        let mut rejected = None;
        let ways: Vec<Way> = match lead {
            Lead::Untouched => self.untouched().into_iter().collect(),
            Lead::Usual | Lead::OneGear => Vec::new(),
        };
        for way in ways.into_iter().chain(self.held()) {
            // What ruled out the faster speed governs.
            let way = Way { governs: rejected.unwrap_or(way.governs), ..way };
            if in_legs
                && lead == Lead::Usual
                && self.trip.day.surface == Surface::Dry
                && let Some(down) = self.in_legs(&way, approach, ahead, limit)
            {
                return Chosen::Down(down);
            }
            match self.in_a_gear(way, approach, ahead, limit) {
                Ok(down) => return Chosen::Down(down),
                Err(by) => rejected = Some(by),
            }
        }
        for way in self.in_need() {
            let way = Way { governs: rejected.unwrap_or(way.governs), ..way };
            match self.one_gear(way, approach, ahead, limit) {
                Ok(down) => return Chosen::Down(down),
                Err(by) => rejected = Some(by),
            }
        }
        self.none(approach, ahead, rejected.unwrap_or(Governs::Control))
    }

    /// Drives a way in its gear. Where the drive rules that gear out, it takes the gear that holds most at
    /// this speed.
    fn in_a_gear(
        &self,
        way: Way,
        approach: &Approach,
        ahead: &Ahead,
        limit: Celsius,
    ) -> Result<Down, Governs> {
        let driven = self.one_gear(way, approach, ahead, limit);
        let strongest = self.ladder.rung_at(way.speed).map_or(way.gear, |rung| rung.gear);
        match driven {
            Err(_) if strongest != way.gear => {
                self.one_gear(Way { gear: strongest, ..way }, approach, ahead, limit)
            }
            driven => driven,
        }
    }

    fn in_legs(&self, one: &Way, approach: &Approach, ahead: &Ahead, limit: Celsius) -> Option<Down> {
        // Posted limits bind the gear of a whole descent; in legs they would bind each leg.
        if !self.posted.is_empty() {
            return None;
        }
        // No minute is worth a worse word.
        let word = proof(&self.touches(&[self.hold(one.gear, one.speed, None)]));
        let mut fastest = vec![f64::INFINITY; self.hill.cells()];
        for _ in 0..TRIES {
            let parts = legs(self, one, &fastest)?;
            let holds = parts.iter().map(|part| self.leg(part)).collect();
            let blamed = match self.drive(approach, holds, ahead, limit) {
                None => last_max(parts.iter().map(|part| part.rung.speed.0)),
                Some(driven) => {
                    let most = last_max(self.service_work_by_hold(&driven).iter().map(|work| work.0));
                    match self.down(*one, parts.clone(), driven, limit) {
                        Ok(down) if proof(&down.touches) <= word => return Some(down),
                        Ok(down) => self.worst_touched(&down).or(most),
                        Err(_) => most,
                    }
                }
            };
            let part = parts.get(blamed?).filter(|part| part.rung.speed > one.speed)?;
            let (from, to) = (part.from - self.hill.from, part.to - self.hill.from);
            let slower = part.rung.speed.0 - 1e-9;
            fastest[from..to].iter_mut().for_each(|fastest| *fastest = fastest.min(slower));
        }
        None
    }

    /// A leg in the highest gear that is enough for it.
    fn leg(&self, part: &Part) -> Hold {
        let (from, to) = (part.from - self.hill.from, part.to - self.hill.from);
        let asked = self.hill.asks(from, to).holds;
        let reserve = self.trip.day.reserve;
        let enough = |gear: Gear| self.ladder.holds(gear, part.rung.speed, reserve) >= asked;
        let gear = self.ladder.highest(&part.rung, enough);
        Hold { from: part.from, to: part.slows_from, gear, speed: part.rung.speed, snub: None }
    }

    /// The leg in which the truck gains most without its service brakes.
    fn worst_touched(&self, down: &Down) -> Option<usize> {
        let worst = down.touches.iter().max_by(|a, b| a.gains.0.total_cmp(&b.gains.0))?;
        let at = (worst.from.0 / self.road.step_m()).round() as usize;
        down.parts.iter().rposition(|part| part.from <= at)
    }

    /// A way that is said to be held must be held on the drive too, in curves and in thicker air. And with
    /// every recorded pitch the brakes must stay below their limit.
    fn down(&self, way: Way, parts: Vec<Part>, driven: Driven, limit: Celsius) -> Result<Down, Governs> {
        let held = way.verdict <= Verdict::LittleInReserve;
        let touches = self.touches(&driven.holds);
        let (touched_k, left) = if held { self.touched(&touches, &driven) } else { self.uneven(&driven) };
        let figures = &driven.figures;
        if figures.hottest_after_stop.0 + touched_k > limit.0 {
            return Err(Governs::Heat);
        }
        // On snow and ice the plan does not count on the service brakes.
        if self.trip.day.retarding_share() <= 0.0 && proof(&touches) != Proof::Holds {
            return Err(Governs::Grip);
        }
        let warm = || touched_k > TOUCHES_K || self.warms_k(&driven, WARMS_K) + touched_k > WARMS_K;
        if held && (figures.service_share() > MOST_SERVICE || warm()) {
            return Err(if self.reach.slowest_curve < way.speed { Governs::Curve } else { Governs::Control });
        }
        let mut driven = driven;
        driven.at_foot.brakes = driven.at_foot.brakes.warmer_by(left, self.trip.day.air());
        Ok(Down { way, parts, driven, touches, touched_k })
    }

    /// The way in one gear, or what rules it out.
    pub(super) fn one_gear(
        &self,
        way: Way,
        approach: &Approach,
        ahead: &Ahead,
        limit: Celsius,
    ) -> Result<Down, Governs> {
        let held = way.verdict <= Verdict::LittleInReserve;
        if !held && (way.speed.kmh() < SLOWEST_SNUB_KMH || self.trip.day.retarding_share() <= 0.0) {
            return Err(if self.trip.day.retarding_share() <= 0.0 { Governs::Grip } else { way.governs });
        }
        let snub = (!held).then(|| snub_to(way.speed));
        let holds = vec![self.hold(way.gear, way.speed, snub)];
        let driven = self.drive(approach, holds, ahead, limit).ok_or(Governs::Heat)?;
        self.down(way, Vec::new(), driven, limit)
    }

    /// The fastest way with snubs, faster than the one speed and up to the other.
    fn snubbed(
        &self,
        approach: &Approach,
        ahead: &Ahead,
        limit: Celsius,
        (least, most): (MetresPerSecond, MetresPerSecond),
    ) -> Option<Down> {
        let least = MetresPerSecond(least.0.max(SLOWEST_SNUB_KMH / 3.6 - 1e-9));
        // In one gear the engine holds less at a slower speed, and the brakes get hotter. A speed that holds
        // no more than a faster one is left out.
        let mut holds = f64::NEG_INFINITY;
        let mut ways: Vec<Way> = Vec::new();
        for (rung, governs) in self.reached().filter(|(rung, _)| rung.speed > least && rung.speed <= most) {
            if rung.holds > holds {
                holds = rung.holds;
                ways.push(self.way(rung, self.verdict(rung), governs));
            }
        }
        // Among these speeds slower is nearly always cooler. Whatever the search finds has been driven.
        let (mut found, mut low, mut high) = (None, 0, ways.len());
        while low < high {
            let middle = (low + high) / 2;
            match self.one_gear(ways[middle], approach, ahead, limit) {
                Ok(down) => {
                    found = Some(down);
                    high = middle;
                }
                Err(_) => low = middle + 1,
            }
        }
        let mut found = found?;
        if low > 0 {
            found.way.governs = Governs::Heat;
        }
        Some(found)
    }

    /// No speed keeps the limits: how close the slowest came.
    fn none(&self, approach: &Approach, ahead: &Ahead, because: Governs) -> Chosen {
        let slowest = self.ladder.rungs.last();
        let first = self.trip.truck.gears().next();
        let (gear, speed): (Gear, MetresPerSecond) = match slowest {
            Some(rung) => (rung.gear, rung.speed),
            None => (
                first.unwrap_or_else(|| unreachable!("a truck has at least one gear")),
                MetresPerSecond::from_kmh(SLOWEST_KMH),
            ),
        };
        let driven = self.drive(approach, vec![self.hold(gear, speed, None)], ahead, Celsius(f64::INFINITY));
        let hottest = driven.as_ref().map_or(Celsius(f64::INFINITY), |it| it.figures.hottest_after_stop);
        let end = driven.map_or(approach.state, |it| it.at_foot);
        let none = NoSafeSpeed {
            because,
            slowest: speed,
            gear,
            hottest_after_stop: hottest,
            falls_short: self.falls_short(),
        };
        Chosen::None(none, end)
    }

    fn falls_short(&self) -> Option<FallsShort> {
        let most = self.ladder.rungs.iter().max_by(|a, b| a.holds.total_cmp(&b.holds))?;
        let air = most.holds - most.by_gear;
        let weight = self.trip.weight().0;
        (most.holds < self.asked.holds).then_some(FallsShort {
            gear: most.gear,
            speed: most.speed,
            holds: Newtons(most.by_gear * weight),
            asks: Newtons((self.asked.holds - air) * weight),
        })
    }
}

/// The place of the greatest value, the last of equal ones.
fn last_max(values: impl Iterator<Item = f64>) -> Option<usize> {
    values.enumerate().max_by(|a, b| a.1.total_cmp(&b.1)).map(|(place, _)| place)
}

/// Where a snub ends that begins at this speed.
pub(super) fn snub_to(speed: MetresPerSecond) -> MetresPerSecond {
    MetresPerSecond((speed.0 - SNUB_BY).max(0.5 * speed.0))
}
