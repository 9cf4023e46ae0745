//! The question put to the choice (this truck, down this stretch), and the speeds that hold it.
//!
//! [`Hill::asks`] says how much must be held, [`Ladder`] how much each speed holds. More mass, a steeper
//! road, less grip or a weaker retarder asks for more or holds less. So nothing that gets worse ever makes a
//! faster speed hold.

use super::answer::{Governs, Sustained, Verdict};
use super::descents::Stretch;
use super::free_run::{HELD, Held};
use super::ground::Ground;
use super::hill::{Asked, Hill};
use super::ladder::{Ladder, Rung};
use super::reach::Reach;
use crate::constants::GRAVITY;
use crate::day::{Day, Surface};
use crate::motion::{Hold, Trip};
use crate::road::Road;
use crate::truck::Gear;
use crate::units::{Grade, Metres, MetresPerSecond};

/// On a slippery road the truck must be able to stop within this distance, m. Assumed.
const IN_SIGHT_M: f64 = 100.0;

/// The question: this truck, down this stretch.
pub(super) struct Ask<'a> {
    pub(super) trip: Trip<'a>,
    pub(super) road: &'a Road,
    pub(super) stretch: Stretch,
    pub(super) ladder: Ladder<'a>,
    pub(super) hill: Hill<'a>,
    pub(super) asked: Asked,
    pub(super) reach: Reach,
    /// Upper bound of the speed: that of the same road dry, and that of its recordings alone.
    pub(super) at_most: MetresPerSecond,
    /// Limits posted on the stretch below its fastest allowed speed, each with the hold that the hill asks
    /// for there.
    pub(super) posted: Vec<(MetresPerSecond, f64)>,
}

/// A gear and a speed, and what holds the truck in it as far as the hill's demand tells.
#[derive(Debug, Clone, Copy)]
pub(super) struct Way {
    pub(super) verdict: Verdict,
    pub(super) gear: Gear,
    pub(super) speed: MetresPerSecond,
    pub(super) governs: Governs,
}

impl<'a> Ask<'a> {
    pub(super) fn of(trip: Trip<'a>, road: &'a Road, ground: &'a Ground, stretch: Stretch) -> Self {
        let (from, to) = (stretch.from, stretch.to);
        let hill = Hill::of(trip, ground, from, to);
        let limits = road.limits().iter().filter_map(|limit| limit.within(from, to));
        let limits = limits.filter(|it| it.speed() < trip.top_speed());
        let posted = limits.map(|it| (it.speed(), hill.asks(it.from - from, it.to - from).holds)).collect();
        let mut ask = Self {
            at_most: MetresPerSecond(ground.at_most(from, to)),
            posted,
            trip,
            road,
            stretch,
            ladder: Ladder::of(trip, trip.air(stretch.highest)),
            asked: hill.asks(0, hill.cells()),
            hill,
            reach: Reach::of(trip, road, &stretch),
        };
        if trip.day.surface != Surface::Dry {
            let slippery = ask.dry_speed().0.min(ask.stopping_speed());
            ask.at_most = MetresPerSecond(ask.at_most.0.min(slippery));
        }
        ask
    }

    /// The fastest speed from which the tyres still stop the truck in sight, on the grade that the gear is
    /// chosen for.
    fn stopping_speed(&self) -> f64 {
        let room = (self.trip.day.surface.friction() + self.sustained().grade.0) * GRAVITY;
        (2.0 * room.max(0.0) * IN_SIGHT_M).sqrt()
    }

    /// The speed of the same stretch on a dry road; a slippery road is never taken faster.
    fn dry_speed(&self) -> MetresPerSecond {
        let day = Day { surface: Surface::Dry, ..*self.trip.day };
        let trip = Trip { day: &day, ..self.trip };
        let asked = self.asked.holds;
        let ladder = Ladder::of(trip, trip.air(self.stretch.highest));
        let reached = || ladder.rungs.iter().filter(|rung| self.allows(&ladder, rung).is_ok());
        let held = reached().find(|rung| rung.with_reserve >= asked).map(|rung| rung.speed);
        held.or_else(|| held_most(reached())).unwrap_or(self.at_most)
    }

    /// Speeds from fast to slow that the road lets the truck reach, each with what rules out the next
    /// faster one.
    pub(super) fn reached(&self) -> impl Iterator<Item = (&Rung, Governs)> + Clone {
        let mut governs = self.top_governs();
        self.ladder.rungs.iter().filter_map(move |rung| match self.allows(&self.ladder, rung) {
            Ok(()) if rung.speed > self.at_most => {
                governs = Governs::Control;
                None
            }
            Ok(()) => {
                let found = (rung, governs);
                governs = self.held_back_by(rung);
                Some(found)
            }
            Err(by) => {
                governs = by;
                None
            }
        })
    }

    /// Whether the road lets a speed of a ladder be reached. A torque converter creeps through bends that are
    /// slower than its slowest hold; between them it is held at that hold.
    fn allows(&self, ladder: &Ladder<'_>, rung: &Rung) -> Result<(), Governs> {
        let slowest = ladder.rungs.last().is_some_and(|last| last.speed.0 >= rung.speed.0);
        match self.reach.allows(rung.speed) {
            Err(Governs::Curve) if slowest && self.trip.truck.creeps() => Ok(()),
            allowed => allowed,
        }
    }

    /// Ways that the retarder holds with the reserve, from fast to slow.
    pub(super) fn held(&self) -> impl Iterator<Item = Way> {
        let mut posted = false;
        self.reached().filter_map(move |(rung, governs)| {
            if rung.with_reserve < self.asked.holds {
                return None;
            }
            let way = self.way(rung, Verdict::RetarderHolds, if posted { Governs::Posted } else { governs });
            let holds = self.holds_posted(way.gear, rung.speed);
            posted |= !holds;
            holds.then_some(way)
        })
    }

    /// Whether a gear keeps, with the reserve, the limits posted below a speed. A retarder at the engine
    /// holds less at a lower speed in one gear.
    fn holds_posted(&self, gear: Gear, speed: MetresPerSecond) -> bool {
        let reserve = self.trip.day.reserve;
        let lower = self.posted.iter().filter(|(limit, _)| *limit < speed);
        lower.into_iter().all(|(limit, asked)| self.ladder.holds(gear, *limit, reserve) >= *asked)
    }

    /// Where none is held with the reserve: from the speed whose gear holds most to slower ones. Never a
    /// faster one: what failed with more in hand is not taken faster with less.
    pub(super) fn in_need(&self) -> impl Iterator<Item = Way> {
        let from = held_most(self.reached().map(|(rung, _)| rung)).unwrap_or(self.at_most);
        let ways = self.reached().skip_while(move |(rung, _)| rung.speed > from);
        ways.map(|(rung, governs)| self.way(rung, self.verdict(rung), governs))
    }

    /// Verdict on a speed, as far as the hill's demand tells.
    pub(super) fn verdict(&self, rung: &Rung) -> Verdict {
        if rung.with_reserve >= self.asked.holds {
            Verdict::RetarderHolds
        } else if rung.holds >= self.asked.holds {
            Verdict::LittleInReserve
        } else {
            Verdict::NeedsServiceBrakes
        }
    }

    /// The fastest way that is held and on which no recorded pitch needs a touch, in the highest gear that
    /// allows this.
    pub(super) fn untouched(&self) -> Option<Way> {
        let holds = |gear: Gear, speed| {
            let held = Held { from: self.stretch.from, to: self.stretch.to, gear, speed };
            self.hill.gains_at_most(&self.ladder, &held, HELD)
        };
        let enough = |(rung, _): &(&Rung, Governs)| rung.with_reserve >= self.asked.holds;
        let (rung, governs) = self.reached().filter(enough).find(|(rung, _)| holds(rung.gear, rung.speed))?;
        let mut way = self.way(rung, Verdict::RetarderHolds, governs);
        while way.gear != rung.gear && !holds(way.gear, way.speed) {
            way.gear = self.trip.truck.gears().rev().find(|gear| *gear < way.gear)?;
        }
        Some(way)
    }

    pub(super) fn way(&self, rung: &Rung, verdict: Verdict, governs: Governs) -> Way {
        let gear = match verdict {
            Verdict::RetarderHolds => {
                let reserve = self.trip.day.reserve;
                let enough = |gear: Gear| {
                    self.ladder.holds(gear, rung.speed, reserve) >= self.asked.holds
                        && self.holds_posted(gear, rung.speed)
                };
                self.ladder.highest(rung, enough)
            }
            Verdict::LittleInReserve | Verdict::NeedsServiceBrakes | Verdict::NoSafeSpeed => rung.gear,
        };
        Way { verdict, gear, speed: rung.speed, governs }
    }

    pub(super) fn hold(&self, gear: Gear, speed: MetresPerSecond, snub: Option<MetresPerSecond>) -> Hold {
        Hold { from: self.stretch.from, to: self.stretch.to, gear, speed, snub }
    }

    /// Why a speed that holds too little is ruled out.
    fn held_back_by(&self, rung: &Rung) -> Governs {
        let trip = self.trip;
        let air = trip.air(self.stretch.highest);
        let full = trip.holding(rung.gear, trip.truck.full_stage(), rung.speed, air);
        let dry = (full.0 / (1.0 + trip.day.reserve) + trip.air_drag(rung.speed, air).0) / trip.weight().0;
        if rung.with_reserve < self.asked.holds && dry >= self.asked.holds {
            Governs::Grip
        } else {
            Governs::Control
        }
    }

    /// What would govern if the fastest speed of all were accepted.
    fn top_governs(&self) -> Governs {
        if self.trip.top_speed() < self.trip.day.speed_limit() {
            Governs::EngineSpeed
        } else {
            Governs::SpeedLimit
        }
    }

    /// The even grade that the gear is chosen for.
    pub(super) fn sustained(&self) -> Sustained {
        let step_m = self.road.step_m();
        let rolling = self.trip.truck.spec().rolling_resistance;
        Sustained {
            from: Metres(self.asked.from as f64 * step_m),
            length: Metres((self.asked.to - self.asked.from) as f64 * step_m),
            grade: Grade(-(self.asked.holds + rolling)),
            height: self.stretch.highest,
        }
    }
}

/// Gears that hold this share of the most hold as much: where the tyres bound the retarder, a thousandth of a
/// force would otherwise choose between 12 and 40 km/h. Assumed.
const AS_MUCH: f64 = 0.9;

/// The speed whose gear holds most, the fastest of those that hold as much, of rungs from fast to slow.
fn held_most<'r>(mut rungs: impl Iterator<Item = &'r Rung> + Clone) -> Option<MetresPerSecond> {
    let most = rungs.clone().map(|rung| rung.by_gear).fold(f64::NEG_INFINITY, f64::max);
    rungs.find(|rung| rung.by_gear >= AS_MUCH * most).map(|rung| rung.speed)
}
