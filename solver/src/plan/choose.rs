//! Choosing gear and speed for one descent.
//!
//! Speeds from fast to slow, gears from high to low, all of a bounded list. The fastest
//! candidate is taken that keeps engine speed, the reserve on the steepest sustained grade,
//! grip, and brake heat with one hard stop in hand. Where there is none the same is asked
//! without the reserve, then with the service brakes, and then it is said that there is none.

use super::answer::{Choice, Governs, NoSafeSpeed};
use super::ask::{Ask, Chosen};
use super::candidate::{Candidate, Demanding, Driven, MOST_SERVICE, Ruled};
use super::margin::{HOLD_SHARE, Point, speeds};
use crate::day::{Day, ServiceBrakes, Surface};
use crate::motion::Trip;
use crate::units::{Celsius, MetresPerSecond};

/// Steps of the hold speed in one stride of the search.
const STRIDE: usize = 4;

/// In need, speeds are taken whose margin is this near to the best. Assumed.
const NEAR_BEST_MARGIN: f64 = 0.05;

/// A hold speed that is missed by less than this, 1 km/h, is reached.
const NEARLY: f64 = 1.0 / 3.6;

impl Ask<'_> {
    /// The fastest way down that keeps the limits, with the service brakes used so.
    pub(super) fn choose(&self, mode: ServiceBrakes) -> Chosen {
        if self.trip.day.surface == Surface::Dry {
            return self.choose_up_to(mode);
        }
        // No slippery road is taken faster than the same road dry, and where nothing slows it more
        // it is for the same reason.
        let day = Day { surface: Surface::Dry, ..*self.trip.day };
        let dry = Ask { trip: Trip { day: &day, ..self.trip }, ..*self }.choose_up_to(mode);
        let mut chosen = Ask { at_most: dry.hold.speed, ..*self }.choose_up_to(mode);
        if let (Choice::Held(advice), Some(dry)) = (&mut chosen.choice, dry.choice.advice())
            && advice.speed >= dry.speed
        {
            advice.governs = dry.governs;
        }
        chosen
    }

    fn choose_up_to(&self, mode: ServiceBrakes) -> Chosen {
        let stages = match mode {
            ServiceBrakes::InReserve => {
                &[Demanding::Margin(self.trip.day.reserve), Demanding::Margin(0.0), Demanding::ServiceBrakes]
                    [..]
            }
            ServiceBrakes::MaySnub => &[Demanding::ServiceBrakes][..],
        };
        let [first, others @ ..] = stages else { return self.none_found(Governs::SpeedLimit) };
        // In need the way down that engine and retarder hold best, not the fastest: a worse truck or
        // road must not come down faster than a better one.
        let mut because = match self.fastest(*first) {
            Ok(chosen) => return chosen,
            Err(governs) => governs,
        };
        for demanding in others {
            // In the wet the driven axles' grip caps all gears alike, the least the slowest; there the
            // answer for the dry road is bound enough.
            let found = if self.trip.day.surface == Surface::Wet {
                self.fastest(*demanding)
            } else {
                self.surest(*demanding, because)
            };
            match found {
                Ok(chosen) => return chosen,
                Err(governs) => because = governs,
            }
        }
        self.none_found(because)
    }

    /// The fastest candidate that is demanding enough, or what ruled out the slowest.
    ///
    /// Speeds are tried in strides, then the faster ones up to the stride before. A faster
    /// speed that would keep the limits between two that do not is passed over: the slower
    /// answer is the cautious one.
    fn fastest(&self, demanding: Demanding) -> Result<Chosen, Governs> {
        let speeds: Vec<MetresPerSecond> = self.speeds().collect();
        let mut ruled = Ruled { last: self.top_governs(), posted: false };
        let mut tried = None;
        for stride in (0..speeds.len()).step_by(STRIDE).chain(speeds.len().checked_sub(1)) {
            let found = self.attempt(speeds[stride], demanding, &mut ruled);
            let Some(found) = found else {
                tried = Some(stride);
                continue;
            };
            let finer = tried.map_or(stride..stride, |tried| tried + 1..stride);
            for speed in &speeds[finer] {
                if let Some((candidate, driven)) = self.attempt(*speed, demanding, &mut ruled) {
                    return Ok(self.advise(candidate, &driven, ruled.governs()));
                }
            }
            let (candidate, driven) = found;
            return Ok(self.advise(candidate, &driven, ruled.governs()));
        }
        // A speed between two strides may be the only one.
        let between = (0..speeds.len()).filter(|index| index % STRIDE != 0);
        for index in between {
            if let Some((candidate, driven)) = self.attempt(speeds[index], demanding, &mut ruled) {
                return Ok(self.advise(candidate, &driven, ruled.governs()));
            }
        }
        Err(ruled.last)
    }

    /// The fastest of the candidates that have about most to spare; or what ruled out the slowest.
    /// `because` is why more was not to be had.
    fn surest(&self, demanding: Demanding, because: Governs) -> Result<Chosen, Governs> {
        let mut ruled = Ruled { last: self.top_governs(), posted: false };
        let mut left: Vec<Candidate> =
            self.speeds().filter_map(|speed| self.candidate(speed, demanding, &mut ruled)).collect();
        while !left.is_empty() {
            let best = left.iter().map(|it| it.margin).fold(f64::NEG_INFINITY, f64::max);
            let Some(at) = left.iter().position(|it| it.margin >= best - NEAR_BEST_MARGIN) else { break };
            let candidate = left.remove(at);
            if let Some(driven) = self.kept(candidate, demanding, &mut ruled) {
                return Ok(self.advise(candidate, &driven, because));
            }
        }
        Err(ruled.last)
    }

    /// A speed that is kept, or `None`, and then it is ruled out.
    fn attempt(
        &self,
        speed: MetresPerSecond,
        demanding: Demanding,
        ruled: &mut Ruled,
    ) -> Option<(Candidate, Driven)> {
        let candidate = self.candidate(speed, demanding, ruled)?;
        Some((candidate, self.kept(candidate, demanding, ruled)?))
    }

    /// The way down of a candidate, or `None` where it is not kept, and then it is ruled out.
    fn kept(&self, candidate: Candidate, demanding: Demanding, ruled: &mut Ruled) -> Option<Driven> {
        let Some(driven) = self.drive(candidate, self.heat_limit()) else {
            ruled.out(Governs::Heat);
            return None;
        };
        let (speed, slippery) = (candidate.speed, self.slippery());
        let in_curves = self.slowest_curve < speed;
        // What is said to be held must be held on the way too: in curves, in thicker air, a little faster.
        let is_held = driven.service_share() <= MOST_SERVICE;
        let ruled_out = if in_curves && driven.fastest().0 < speed.0 - NEARLY {
            // A speed that the curves never let it reach is no speed to hold.
            Some(Governs::Curve)
        } else if is_held || (demanding == Demanding::ServiceBrakes && !slippery) {
            None
        } else if slippery {
            Some(Governs::Grip)
        } else {
            Some(if in_curves { Governs::Curve } else { Governs::Control })
        };
        if let Some(by) = ruled_out {
            ruled.out(by);
            return None;
        }
        Some(driven)
    }

    /// What would govern if the fastest speed of all were accepted.
    fn top_governs(&self) -> Governs {
        if self.trip.top_speed() < self.trip.day.speed_limit() {
            Governs::EngineSpeed
        } else {
            Governs::SpeedLimit
        }
    }

    /// Hold speeds from fast to slow.
    fn speeds(&self) -> impl Iterator<Item = MetresPerSecond> {
        let at_most = self.at_most.0 * (1.0 + 1e-9);
        speeds(self.trip).filter(move |speed| speed.0 <= at_most)
    }

    fn heat_limit(&self) -> Celsius {
        Celsius(self.trip.day.heat_limit_c)
    }

    /// No speed keeps the limits: how near the slowest came.
    fn none_found(&self, because: Governs) -> Chosen {
        let slowest = speeds(self.trip).last().unwrap_or(self.trip.top_speed());
        let first = self.trip.truck.gears().next();
        let gear = self.trip.lowest_gear_within(slowest, HOLD_SHARE).or(first);
        let gear = gear.unwrap_or_else(|| unreachable!("a truck has at least one gear"));
        let least = Point { speed: slowest, grade: self.sustained(slowest).grade };
        let candidate = Candidate { gear, speed: slowest, margin: f64::NAN, least };
        let driven = self.drive(candidate, Celsius(f64::INFINITY));
        let (hottest, crest) = driven.map_or((Celsius(f64::INFINITY), Celsius(f64::NAN)), |driven| {
            (driven.down.hottest_after_stop(), driven.to_crest.end.brakes.hottest(self.trip))
        });
        Chosen {
            choice: Choice::NoSafeSpeed(NoSafeSpeed { because, slowest, gear, hottest_after_stop: hottest }),
            hold: self.hold(candidate),
            brakes_at_crest: crest,
        }
    }
}
